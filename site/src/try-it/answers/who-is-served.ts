import { answerWith, type TryAnswer } from "../answer.ts";
import { whoIsServed } from "../calls/who-is-served.ts";
import type { Entries } from "../examples.ts";

export const answerWhoIsServed: (entries: Entries) => TryAnswer = answerWith({
  id: "who-is-served",
  run: whoIsServed,
  argsOf: ({ chart = "", people }): Parameters<typeof whoIsServed> => [
    chart,
    people === "men" ? "men" : "women",
  ],
  readingOf: ({ served }, _issues, { people = "" }) => ({ sentence: "served", facts: { served, people } }),
});
