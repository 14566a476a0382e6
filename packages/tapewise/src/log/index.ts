export { type FileOutcomeStoreOptions, fileOutcomeStore } from "./file-outcome-store.ts";
