export { asWritten } from "./as-written.ts";
export { readDelimitedText } from "./delimited-text.ts";
export { detectSeparator } from "./detect-separator.ts";
export { readTable, type Table, type TableOptions } from "./read-table.ts";
export type {
  Cell,
  DelimitedText,
  DelimitedTextOptions,
  QuoteFault,
  Row,
  Separator,
} from "./table-rows.ts";
export { type PlaceAt, placeOf, placesIn } from "./text-lines.ts";
