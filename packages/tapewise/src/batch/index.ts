export type { PriorChoice } from "../person/choose-prior.ts";
export type { PersonCut, PersonLine } from "../person/person-line.ts";
export { type ReadPersonOptions, safeReadPerson } from "../person/read-person.ts";
export { safeParsePerson } from "../person/safe-parse-person.ts";
export { answerRawLine, LONGEST_LINE } from "./answer-raw-line.ts";
export type {
  BatchLine,
  BeltSummary,
  ChoiceLine,
  ChoiceSummary,
  EstimateSummary,
  IssueLine,
  IssueSummary,
  SizeSummary,
} from "./choice-line.ts";
export { type ChooseLineOptions, chooseLine } from "./choose-line.ts";
export { type ChooseOptions, choosePerson } from "./choose-person.ts";
export { type AnsweredLines, createLineAnswerer, type LineAnswerer } from "./create-line-answerer.ts";
export { isChoice } from "./is-choice.ts";
export { createLineSplitter, type LineSplitter, type RawLine } from "./line-splitter.ts";
