import {
  chooseColumns,
  columnReasons,
  columnVerdicts,
  createChoiceColumns,
  type PeopleColumns,
  safeCompileColumns,
} from "@tapewise/fit";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { chartOf, sizeOf, torsoChart } from "../cases.ts";

const plan = unwrap(
  safeCompileColumns(torsoChart({ S: [380, 430], M: [420, 480] }), { read: ["torso-length"] }),
);

/** Φ(1), from memory: Abramowitz & Stegun (1964), table 26.1. */
const PHI_1 = 0.841344746068543;
/** What lies beyond five standard deviations, from memory. */
const BEYOND_5 = 2.866515718791939e-7;

const column = (...figures: readonly number[]) => Float64Array.from(figures);

function choose(people: PeopleColumns) {
  const count = people.meansMm.length;
  const out = createChoiceColumns(count, 2);
  chooseColumns(plan, people, out);
  return {
    ...out,
    picks: Array.from(out.pick, (pick) => plan.sizes[pick]),
    verdicts: Array.from(out.verdict, (verdict) => columnVerdicts[verdict]),
    told: Array.from(out.reasons, (bits) => columnReasons.filter((_, bit) => ((bits >> bit) & 1) === 1)),
  };
}

describe("one dimension", () => {
  test("the chances are those of the normal distribution between the ends", () => {
    // 430 ± 10: S from −5 to 0, M from −1 to 5 standard deviations.
    const { picks, verdicts, told, probability, sizeProbabilities } = choose({
      meansMm: column(430),
      sdsMm: column(10),
    });
    expect([picks, verdicts, told]).toEqual([["M"], ["fits"], [["most-probable"]]]);
    expect(sizeProbabilities?.[0]).toBeCloseTo(0.5 - BEYOND_5, 13);
    expect(sizeProbabilities?.[1]).toBeCloseTo(PHI_1 - BEYOND_5, 13);
    expect(probability[0]).toBe(sizeProbabilities?.[1]);
  });

  test("known lengths fit or miss by a distance", () => {
    const { picks, verdicts, sizeProbabilities, sizeMisfitsMm } = choose({
      meansMm: column(400, 450, 500, 300),
      sdsMm: column(0, 0, 0, 0),
    });
    expect(picks).toEqual(["S", "M", "M", "S"]);
    expect(verdicts).toEqual(["fits", "fits", "outside-the-range", "outside-the-range"]);
    expect([...(sizeProbabilities ?? [])]).toEqual([1, 0, 0, 1, 0, 0, 0, 0]);
    expect([...(sizeMisfitsMm ?? [])]).toEqual([0, 20, 20, 0, 70, 20, 80, 120]);
  });

  test("a body where two ranges overlap has two sizes", () => {
    // 425 ± 1 lies 5 standard deviations inside both.
    expect(choose({ meansMm: column(425), sdsMm: column(1) }).verdicts).toEqual(["two-sizes-fit"]);
  });

  test("a body in a gap is between the sizes", () => {
    const gap = unwrap(
      safeCompileColumns(torsoChart({ S: [380, 420], M: [430, 470] }), { read: ["torso-length"] }),
    );
    const out = createChoiceColumns(1, 2);
    // 425 ± 5 lies one standard deviation outside both: each fits with a chance of 0.16.
    chooseColumns(gap, { meansMm: column(425), sdsMm: column(5) }, out);
    expect(columnVerdicts[out.verdict[0] ?? -1]).toBe("between-sizes");
    expect(out.sizeProbabilities?.[0]).toBeCloseTo(1 - PHI_1, 9);
    expect(out.sizeProbabilities?.[1]).toBeCloseTo(1 - PHI_1, 9);
    const between = columnReasons.indexOf("between-two-sizes");
    expect(((out.reasons[0] ?? 0) >> between) & 1).toBe(1);
  });

  test("build decides a tie, and only for those who have it", () => {
    // 424 ± 1 lies 6 standard deviations inside S and 4 inside M.
    const { picks, told } = choose({
      meansMm: column(424, 424),
      sdsMm: column(1, 1),
      hasBuild: Uint8Array.of(0, 1),
    });
    expect(picks).toEqual(["S", "M"]);
    expect(told[0]).not.toContain("build-takes-longer");
    expect(told[1]).toContain("build-takes-longer");
  });

  test("a questioned reading asks for another one", () => {
    const { picks, verdicts } = choose({
      meansMm: column(400, 400),
      sdsMm: column(1, 1),
      isQuestioned: Uint8Array.of(0, 1),
    });
    expect([picks, verdicts]).toEqual([
      ["S", "S"],
      ["fits", "measure-again"],
    ]);
  });

  test("a further look is asked for where it may change the pick, and not where it shows nothing", () => {
    // 430 ± 10: one in six lies below 420, where M does not fit and S does. A look that leaves no doubt finds
    // them, and gains as much; one that leaves all the doubt finds nobody.
    const people = { meansMm: column(430, 430), sdsMm: column(10, 10) };
    const { picks, verdicts } = choose({ ...people, afterLooksMm: column(0, 10) });
    expect(picks).toEqual(["M", "M"]);
    expect(verdicts).toEqual(["measure-again", "fits"]);
  });
});

test("chances of two dimensions multiply, and misfits add", () => {
  const chart = chartOf([
    sizeOf("S", { "torso-length": [380, 430], "hip-belt-girth": [700, 980] }),
    sizeOf("M", { "torso-length": [420, 470], "hip-belt-girth": [760, 1040] }),
  ]);
  const both = unwrap(safeCompileColumns(chart, { read: ["torso-length", "hip-belt-girth"] }));
  const out = createChoiceColumns(1, 2);
  // 425 ± 5 and 760 ± 10: the torso one standard deviation inside either size, the belt at an end of M.
  chooseColumns(both, { meansMm: column(425, 760), sdsMm: column(5, 10) }, out);
  expect(out.sizeProbabilities?.[0]).toBeCloseTo(PHI_1, 8);
  expect(out.sizeProbabilities?.[1]).toBeCloseTo(PHI_1 * 0.5, 8);
  // The loss one standard deviation off is φ(1) − (1 − Φ(1)), and at the end φ(0).
  const [ofOne, ofNone] = [Math.exp(-0.5) / Math.sqrt(2 * Math.PI), 1 / Math.sqrt(2 * Math.PI)];
  expect(out.sizeMisfitsMm?.[0]).toBeCloseTo(5 * (ofOne - (1 - PHI_1)), 6);
  expect(out.sizeMisfitsMm?.[1]).toBeCloseTo(5 * (ofOne - (1 - PHI_1)) + 10 * ofNone, 6);
  expect(both.sizes[out.pick[0] ?? -1]).toBe("S");
});

test("nobody is no fault", () => {
  expect(choose({ meansMm: column(), sdsMm: column() }).picks).toEqual([]);
});

describe("columns that do not go together", () => {
  const good = { meansMm: column(400, 450), sdsMm: column(5, 5) };

  test.each<[string, Partial<PeopleColumns>]>([
    ["sdsMm.length", { sdsMm: column(5) }],
    ["degreesOfFreedom.length", { degreesOfFreedom: column(5, 6, 7) }],
    ["afterLooksMm.length", { afterLooksMm: column(1, 2, 3) }],
    ["hasBuild.length", { hasBuild: Uint8Array.of(1) }],
    ["isQuestioned.length", { isQuestioned: Uint8Array.of(1, 0, 1) }],
    ["meansMm[1]", { meansMm: column(400, Number.NaN) }],
    ["sdsMm[0]", { sdsMm: column(-1, 5) }],
    ["sdsMm[1]", { sdsMm: column(5, Number.POSITIVE_INFINITY) }],
    ["degreesOfFreedom[0]", { degreesOfFreedom: column(1, 5) }],
    ["afterLooksMm[1]", { afterLooksMm: column(4, -1) }],
    ["afterLooksMm[2]", { afterLooksMm: column(4, 3, Number.NaN, 3) }],
    ["afterLooksMm[0]", { afterLooksMm: column(Number.POSITIVE_INFINITY, 4) }],
    ["afterLooksMm.length", { meansMm: column(), sdsMm: column(), afterLooksMm: column(4) }],
  ])("%s is a mistake", (name, more) => {
    const call = () => chooseColumns(plan, { ...good, ...more }, createChoiceColumns(2, 2));
    expect(call).toThrow(InvalidArgumentError);
    expect(call).toThrow(name);
  });

  test("so are columns for the answers of others", () => {
    expect(() => chooseColumns(plan, good, createChoiceColumns(3, 2))).toThrow("pick.length");
    expect(() => chooseColumns(plan, good, createChoiceColumns(2, 3))).toThrow("sizeProbabilities.length");
  });
});

test("columns for answers hold one for each person, or for each person and size", () => {
  const { pick, verdict, probability, reasons, isClose, sizeProbabilities, sizeMisfitsMm } =
    createChoiceColumns(3, 4);
  expect([pick, verdict, probability, reasons, isClose].map(({ length }) => length)).toEqual([3, 3, 3, 3, 3]);
  expect([sizeProbabilities?.length, sizeMisfitsMm?.length]).toEqual([12, 12]);
});
