import { readFileSync } from "node:fs";
import { join } from "node:path";
import { answers } from "../src/try-it/answers/index.ts";
import { type ExampleId, examples, startOf } from "../src/try-it/examples.ts";
import { site } from "./run.ts";

/** The names of all functions that a page can show and let its reader try. */
export const exampleIds: readonly ExampleId[] = Object.keys(examples) as ExampleId[];

/**
 * What a page shows of a function: the whole text of its file, which is the one that runs in the reader's
 * browser, and its call with the first entries and what that returns.
 */
export function writeExample(id: ExampleId): string {
  const text = readFileSync(join(site, "src/try-it/calls", `${id}.ts`), "utf8").trimEnd();
  const { call, returned } = answers[id](startOf(id));
  const claim = returned.split("\n").map((line, index) => `${index === 0 ? "// => " : "// "}${line}`);
  return ["```ts", text, "", call, ...claim, "```"].join("\n");
}
