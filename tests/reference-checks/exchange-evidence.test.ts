import { expect, test } from "vitest";
import { coverage, findingsOf } from "../../reference-checks/exchange-evidence/report.ts";
import { runStudy } from "../../reference-checks/exchange-evidence/study.ts";

// The whole study runs on its own, for minutes; this is a small one with the same code.
const study = runStudy({
  seed: 2,
  crew: 400,
  judged: 60,
  checkpoints: [10, 60],
  makers: 2,
  honestMakers: 4,
  drawnMakers: 1,
});

test("the 90 % interval of the offset holds the truth for most of thirty makers", () => {
  expect(study.truths.flatMap(({ runs }) => runs)).toHaveLength(30);
  // Of 30 intervals that hold with a chance of 0.9 each, 22 or fewer do once in 128 times (binomial distribution).
  expect(coverage(study.truths, 60, "offset").share * 30).toBeGreaterThan(22);
});

test("wrong sizes get fewer with the outcomes, and do not rise where a chart is as printed", () => {
  const [, , falls, honest] = findingsOf(study);
  expect([falls?.requirement, falls?.holds]).toEqual([
    "wrong sizes beyond the floor of a known offset get fewer with the outcomes",
    true,
  ]);
  expect([honest?.requirement, honest?.holds]).toEqual([
    "where a chart is as printed, wrong sizes rise by no more than 2 % of themselves",
    true,
  ]);
});
