export {toMillimetres} from "./index.ts"
