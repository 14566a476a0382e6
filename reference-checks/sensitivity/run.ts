// How the choice changes with each assumption of the defaults.
//   npm run check:sensitivity [-- --write] [--people N] [--seed N]
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { type Study, sensitivityPage, sensitivityReport } from "./page.ts";
import { demoCharts, measureEffects, representativePeople } from "./study.ts";

const { values } = parseArgs({
  options: {
    people: { type: "string", default: "800" },
    seed: { type: "string", default: "1" },
    write: { type: "boolean", default: false },
  },
});
const [people, seed] = [Number(values.people), Number(values.seed)];
const study: Study = {
  people,
  seed,
  charts: demoCharts().length,
  effects: measureEffects(people, seed),
  persons: representativePeople(),
};
const percent = (share: number | undefined): string =>
  (share === undefined ? "–" : (100 * share).toFixed(1)).padStart(6);
for (const { assumption, wrong, ends } of study.effects) {
  for (const { end, picksChanged, statedChange, wrongIfTold, wrongIfSo, overstatedIfSo } of ends) {
    process.stdout.write(
      `${`${assumption.name}, ${assumption[end]} ${assumption.unit}`.padEnd(62)} picks ${percent(picksChanged)} stated ${percent(statedChange)} wrong ${percent(wrong)} told ${percent(wrongIfTold)} so ${percent(wrongIfSo)} overstated ${percent(overstatedIfSo)}\n`,
    );
  }
}
if (values.write) {
  writeFileSync(join(import.meta.dirname, "results.json"), `${JSON.stringify(study)}\n`);
  writeFileSync(join(import.meta.dirname, "RESULTS.md"), sensitivityReport(study));
  const site = "../../site/src/content/docs/explanation/sensitivity.md";
  writeFileSync(join(import.meta.dirname, site), sensitivityPage(study));
}
