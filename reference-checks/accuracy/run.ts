// Measures the numeric kernels against fifty-digit arithmetic, and prints where each is worst.
//   npm run check:accuracy [-- --write]
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { measureAccuracy } from "./measure.ts";
import { accuracyPage, accuracyReport } from "./page.ts";

const worst = measureAccuracy();
for (const { name, part, kind, points, worst: error, at } of worst) {
  const size =
    kind === "relative"
      ? `${error.relative.toExponential(1)} ${error.ulp.toFixed(1)} ulp`
      : `${error.absolute.toExponential(1)} absolute`;
  process.stdout.write(
    `${name.padEnd(30)} ${part.padEnd(15)} ${String(points).padStart(4)}  ${size.padEnd(22)} at ${at}\n`,
  );
}
if (process.argv.includes("--write")) {
  writeFileSync(join(import.meta.dirname, "ACCURACY.md"), accuracyReport(worst));
  const site = "../../site/src/content/docs/reference/accuracy.md";
  writeFileSync(join(import.meta.dirname, site), accuracyPage(worst));
}
