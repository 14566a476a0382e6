export { type Millimetres, millimetres } from "./millimetres.ts";
