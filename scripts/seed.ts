// Runs before every test file. The gate draws the same cases every time, so that it never fails by
// chance; `TAPEWISE_SEED=random npm run test:unit` wanders, and a number repeats a run that failed.
// The library of generated cases is loaded for those files only that use it: there are hundreds of others.
import { readFileSync } from "node:fs";
import { expect } from "vitest";

const { testPath } = expect.getState();
if (testPath === undefined || /fast-check|arbitraries/.test(readFileSync(testPath, "utf8"))) {
  const { fc } = await import("@fast-check/vitest");
  const wanted = process.env.TAPEWISE_SEED ?? "20260229";
  const runs = Number(process.env.TAPEWISE_RUNS);
  fc.configureGlobal({
    ...fc.readConfigureGlobal(),
    ...(wanted === "random" ? {} : { seed: Number(wanted) }),
    ...(runs > 0 ? { numRuns: runs } : {}),
  });
}
