import { english } from "./en/index.ts";
import { tryIt } from "./en/try-it.ts";

/** Words of the documentation beside its text. It is in English only. */
export const docsWords = { tryIt, parts: english.parts };

export type DocsWords = typeof docsWords;
