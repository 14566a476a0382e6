// Simulated makers whose charts are off, learned from what becomes of their packs.
//   npm run check:evidence -- [--makers N] [--honest N] [--drawn N] [--seed N] [--write]
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { findingsOf, reportStudy } from "./report.ts";
import { runStudy } from "./study.ts";

const { values } = parseArgs({
  options: {
    makers: { type: "string", default: "100" },
    honest: { type: "string", default: "400" },
    drawn: { type: "string", default: "400" },
    seed: { type: "string", default: "1" },
    write: { type: "boolean", default: false },
  },
});

const size = {
  seed: wholeNumber("--seed", values.seed),
  crew: 4000,
  judged: 400,
  checkpoints: [10, 30, 100, 300],
  makers: wholeNumber("--makers", values.makers),
  honestMakers: wholeNumber("--honest", values.honest),
  drawnMakers: wholeNumber("--drawn", values.drawn),
};
const study = runStudy(size, ({ offsetMm, widthFactor }) => {
  process.stderr.write(`offset ${offsetMm} mm, width ${widthFactor}\n`);
});
const text = [
  "# Exchanges as evidence, measured",
  "",
  "Written by `npm run check:evidence -- --write`.",
  "",
  `Simulated people of the reference population (half women, half men) read their torso length twice with the library's default error of readings of one's own, to half centimetres, and state cut and stature. One after the other they are given a size of an invented chart by the library's rule, by what was learned until then (anew after every ten outcomes), and keep it or send it back by the true ranges, with a tolerance and slips as the model has them. Wrong sizes are counted on ${size.judged} others. ${size.makers} makers for each truth; seed ${size.seed}; Node ${process.version}; commit ${commit()}.`,
  "",
  reportStudy(study),
  "",
].join("\n");
process.stdout.write(text);
if (values.write) writeFileSync(new URL("RESULTS.md", import.meta.url), text);
process.exitCode = findingsOf(study).every(({ holds }) => holds) ? 0 : 1;

function wholeNumber(option: string, text: string): number {
  const value = Number(text);
  if (!Number.isSafeInteger(value) || value < 1) throw new Error(`${option} takes a whole number above 0`);
  return value;
}

function commit(): string {
  try {
    return execFileSync("git", ["rev-parse", "--short", "HEAD"], { encoding: "utf8" }).trim();
  } catch {
    return "unknown";
  }
}
