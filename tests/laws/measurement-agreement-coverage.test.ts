import { describe, expect, test } from "vitest";
import { cases as estimates } from "../../reference-checks/reliability-coverage/estimate.ts";
import { cases as correlations } from "../../reference-checks/reliability-coverage/icc.ts";
import { cases as limits } from "../../reference-checks/reliability-coverage/limits-of-agreement.ts";

/**
 * How often intervals of agreement hold the true value, counted in short. A count of N runs has the standard deviation
 * √(p (1 − p) / N); four of them are allowed, on top of one to one and a half percent for the methods that are approximate. The long
 * count is among the reference checks.
 */
const SEED = 20260229;

const all = [...correlations, ...limits, ...estimates];

test.each([
  ["ICC(1,1), 30 x 4 x 1, SD 30/4/0/8", 1500, 0],
  ["ICC(2,1), 30 x 4 x 1, SD 30/4/0/8", 1500, 0.01],
  ["ICC(3,1), 30 x 4 x 1, SD 30/4/0/8", 1500, 0],
  ["component ICC, agreement, 20 x 3 x 1, 20 % missing, SD 30/15/0/8", 250, 0.01],
  ["component ICC, consistency, 20 x 3 x 1, 30 % missing, SD 30/4/0/8", 250, 0.01],
  ["bias, 20 pairs", 400, 0],
  ["upper limit, exact, 20 pairs", 600, 0],
  ["upperLimit, constant true value, 12 subjects x 3", 1500, 0.015],
  ["upperLimit, varying true value, 12 subjects x 1/2/5", 1500, 0.015],
  ["repeatability coefficient, 15 subjects x 2", 2000, 0],
  ["estimate, 3 readings, stated error, nominal 0.95", 2000, 0],
] as const)("law: the interval holds what it states: %s", (name, runs, granted) => {
  const found = all.filter((one) => one.name === name);
  expect(found.length).toBe(1);
  for (const { nominal, run } of found) {
    const share = run(runs, SEED).covered / runs;
    const deviation = Math.sqrt((nominal * (1 - nominal)) / runs);
    expect(Math.abs(share - nominal)).toBeLessThan(4 * deviation + granted);
  }
});

describe("a count that can fail", () => {
  test("the interval of ICC(2,1) misses where few measurers differ much, as its docstring says", () => {
    const found = correlations.find(({ name }) => name === "ICC(2,1), 20 x 3 x 1, SD 30/15/0/8");
    const share = (found?.run(1000, SEED).covered ?? 0) / 1000;
    expect(share).toBeGreaterThan(0.8);
    expect(share).toBeLessThan(0.9);
  });
});
