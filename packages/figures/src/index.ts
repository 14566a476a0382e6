export { drawSheet, type Sheet } from "./draw-sheet.ts";
export { type Attributes, element } from "./element.ts";
export { label } from "./label.ts";
export { line } from "./line.ts";
export { path } from "./path.ts";
export { shorten } from "./shorten.ts";
export { words } from "./words.ts";
