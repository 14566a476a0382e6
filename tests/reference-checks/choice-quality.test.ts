import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { defaultPolicy, recommend } from "@tapewise/fit";
import { interval } from "@tapewise/intervals";
import { parseEstimate } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { referencePrior } from "@tapewise/population";
import { createRandom, normalCdf } from "@tapewise/statistics";
import { parseLength } from "@tapewise/units";
import { describe, expect, test } from "vitest";
import { calibrate } from "../../reference-checks/choice-quality/calibration.ts";
import { clusteredRatio, difference } from "../../reference-checks/choice-quality/clustered.ts";
import { compareRules, nameOf } from "../../reference-checks/choice-quality/compare-rules.ts";
import { drawTrial } from "../../reference-checks/choice-quality/draw-readings.ts";
import {
  fitExactly,
  leastMisfit,
  likeliest,
  likelihoodOf,
} from "../../reference-checks/choice-quality/exact-posterior.ts";
import {
  judgeAgainstCentre,
  judgeAgainstFirst,
  judgeAgainstFloor,
  judgeCalibration,
} from "../../reference-checks/choice-quality/judge.ts";
import { peopleOf, redrawTorsos, syntheticPeople } from "../../reference-checks/choice-quality/people.ts";
import { reportRun } from "../../reference-checks/choice-quality/report.ts";
import { otherHalfDensities } from "../../reference-checks/choice-quality/residual-density.ts";
import {
  type Cell,
  cellFilter,
  charts,
  type ReadingSetting,
  readingSettings,
} from "../../reference-checks/choice-quality/settings.ts";
import { firstMatch, nearestCentre } from "../../reference-checks/choice-quality/simple-rules.ts";
import { runSetting, type StudyOptions } from "../../reference-checks/choice-quality/study.ts";
import { rules } from "../../reference-checks/choice-quality/tally.ts";

const options: StudyOptions = {
  repeats: 2,
  seed: 5,
  dither: false,
  draws: 100,
  mistaken: true,
  wants: () => true,
};

function settingOf(error: string, rounding: string, count: number): ReadingSetting {
  const found = readingSettings().find(
    (one) => one.error.name === error && one.rounding.name === rounding && one.count === count,
  );
  if (found === undefined) throw new Error("no such way of reading");
  return found;
}

function handSetting(biasMm: number, noiseMm: number, stepMm: number, count: number): ReadingSetting {
  return {
    error: { name: "by hand", biasMm, noiseMm },
    rounding: { name: "by hand", stepMm, write: (mark) => `${mark * stepMm} mm` },
    count,
  };
}

describe("the study on invented people, for whom the prior is right", () => {
  const people = syntheticPeople(300, 11);
  const cells = [
    ...runSetting(people, settingOf("6/8", "5mm", 1), options),
    ...runSetting(people, settingOf("10/12", "1/2in", 3), options),
    ...runSetting(people, settingOf("3/5", "1/4in", 2), options),
  ];

  test("has a cell for every chart and way of reading, and somebody fits no size of each chart", () => {
    expect(cells.map(nameOf)).toHaveLength(3 * charts.length);
    for (const cell of cells) {
      const { served } = compareRules("", [cell]);
      expect(served).toBeGreaterThan(0.85);
      expect(served).toBeLessThan(1);
    }
  });

  test("the choices meet what is asked of them", () => {
    for (const finding of [
      judgeAgainstCentre(cells),
      judgeAgainstFirst(cells),
      judgeAgainstFloor(cells, "floor"),
    ]) {
      expect(finding, finding.figures).toMatchObject({ holds: true });
    }
  });

  test("no rule is below the floor by more than sampling", () => {
    const { wrong, misfitMm, beyond } = compareRules("all", cells);
    for (const rule of rules) {
      expect(wrong[rule].value).toBeGreaterThan(wrong.floor.value - 3 * beyond.floor.error - 0.002);
      expect(misfitMm[rule]).toBeGreaterThan(misfitMm["floor-misfit"] - 0.01);
    }
    expect(wrong["first-match"].value).toBeGreaterThan(wrong.floor.value + 0.02);
  });

  test("stated probabilities come true within their sampling error", () => {
    const gaps = cells.map(({ calibration }) => {
      const { overall, overallError } = calibration["cut-stature"];
      return Math.abs(overall.observed - overall.stated) / overallError;
    });
    expect(Math.max(...gaps)).toBeLessThan(3.5);
    const beyond = cells.filter(({ calibration }) => {
      const { ece, ifPerfectByPerson } = calibration["cut-stature"];
      return ece > ifPerfectByPerson.upper;
    });
    // One in twenty is expected of fifteen cells, which hang together by threes.
    expect(beyond.length).toBeLessThanOrEqual(4);
  });

  test("an error stated too small makes for promises that are not kept, one stated too large for the opposite", () => {
    const narrow = cells.filter(({ cell }) => cell.error === "10/12" && cell.chart !== "wide");
    expect(narrow.length).toBeGreaterThan(0);
    for (const { mistaken } of narrow) {
      const overall = mistaken.find(({ stated }) => stated === "3/5")?.calibration.overall;
      expect(overall?.stated).toBeGreaterThan((overall?.observed ?? 1) + 0.03);
    }
    const careful = cells.find(({ cell }) => cell.error === "6/8" && cell.chart === "touching");
    const overall = careful?.mistaken.find(({ stated }) => stated === "10/12")?.calibration.overall;
    expect(overall?.stated).toBeLessThan(overall?.observed ?? 0);
  });

  test("the report names every rule and verdict", () => {
    const text = reportRun({ title: "Invented", note: "note", cells });
    expect(text).toContain("| cut + stature |");
    expect(text.match(/^- \*\*(?:holds|FALLS SHORT)\*\*/gm)).toHaveLength(6);
    expect(text).not.toContain("NaN");
  });

  test("the same seed gives the same figures, another one other figures", () => {
    const some = { ...options, wants: ({ chart }: Cell) => chart === "touching" };
    const run = (seed: number) =>
      runSetting(people.slice(0, 60), settingOf("6/8", "5mm", 1), { ...some, seed });
    expect(run(3)).toEqual(run(3));
    expect(run(3)).not.toEqual(run(4));
  });
});

describe("what the study takes for granted of the library", () => {
  const answer = (texts: readonly string[], policy = defaultPolicy) => {
    const error = { biasMm: 6, repeatMm: 8, resolutionMm: 5 };
    const estimate = parseEstimate({
      dimension: "torso-length",
      readings: texts.map((text) => parseLength(text)),
      error,
    });
    const prior = referencePrior({ cut: "women" });
    const chart = charts[0]?.chart;
    if (chart === undefined) throw new Error("no chart");
    const { pick, probability } = unwrap(
      recommend({ estimates: [estimate], prior }, chart, { unit: "cm", policy }),
    );
    return { pick, probability };
  };

  test("with a stated error only the mean of the readings counts", () => {
    expect(answer(["425 mm", "445 mm"])).toEqual(answer(["435 mm", "435 mm"]));
    expect(answer(["425 mm", "445 mm"])).not.toEqual(answer(["425 mm", "440 mm"]));
  });

  test("weighing further readings changes neither pick nor probability", () => {
    expect(answer(["405 mm"], { ...defaultPolicy, mostFurtherReadings: 0 })).toEqual(answer(["405 mm"]));
  });
});

describe("the exact posterior", () => {
  const normal = (mean: number, sd: number) => (x: number) => Math.exp(-0.5 * ((x - mean) / sd) ** 2);

  test("without rounding it is the normal conjugate update", () => {
    // Three readings of mean 430.2 mm, u² = 6² + 8²/3, prior N(400, 18²).
    const marks = [42_020, 43_040, 44_000];
    const likelihood = likelihoodOf(handSetting(6, 8, 0.01, 3))(marks);
    const ownVariance = 36 + 64 / 3;
    const weight = 324 / (324 + ownVariance);
    const mean = 400 + weight * (430.2 - 400);
    const sd = Math.sqrt(ownVariance * weight);
    const [fit] = fitExactly(likelihood, normal(400, 18), [interval(410, 430)]);
    expect(fit?.chance).toBeCloseTo(normalCdf((430 - mean) / sd) - normalCdf((410 - mean) / sd), 5);
  });

  test("with coarse rounding it is what a fine double sum gives", () => {
    const setting = handSetting(3, 5, 12.7, 2);
    const marks = [33, 34];
    let inside = 0;
    let misfit = 0;
    let total = 0;
    for (let t = 340.125; t < 500; t += 0.25) {
      let likely = 0;
      for (let m = t - 24; m <= t + 24; m += 0.25) {
        const each = marks.map(
          (mark) => normalCdf(((mark + 0.5) * 12.7 - m) / 5) - normalCdf(((mark - 0.5) * 12.7 - m) / 5),
        );
        likely += Math.exp(-0.5 * ((m - t) / 3) ** 2) * each.reduce((a, b) => a * b, 1);
      }
      const weight = likely * Math.exp(-0.5 * ((t - 410) / 18) ** 2);
      total += weight;
      if (t > 420 && t < 430) inside += weight;
      misfit += weight * Math.max(0, 420 - t, t - 430);
    }
    const [fit] = fitExactly(likelihoodOf(setting)(marks), normal(410, 18), [interval(420, 430)]);
    // The double sum itself is off by about a ten-thousandth: it takes cells of a quarter millimetre.
    expect(fit?.chance).toBeCloseTo(inside / total, 3);
    // The grid of the study loses a twelfth of the density at each end, together about 0.008 mm.
    expect(Math.abs((fit?.misfitMm ?? 0) - misfit / total)).toBeLessThan(0.012);
  });

  test("picks go to the likeliest and to the least misfit; without any chance to the nearer size", () => {
    const fits = [
      { chance: 0.4, misfitMm: 2 },
      { chance: 0.5, misfitMm: 3 },
    ];
    expect([likeliest(fits), leastMisfit(fits)]).toEqual([1, 0]);
    expect(
      likeliest([
        { chance: 1e-9, misfitMm: 60 },
        { chance: 0, misfitMm: 20 },
      ]),
    ).toBe(1);
  });

  test("an end between the points of the grid is refused", () => {
    const likelihood = likelihoodOf(handSetting(6, 8, 5, 1))([84]);
    expect(() => fitExactly(likelihood, () => 1, [interval(410.5, 430)])).toThrow("not on the grid");
  });
});

describe("the simple rules", () => {
  const sizes = [interval(360, 410), interval(400, 450), interval(440, 490)];

  test.each([
    [405, 0, 0],
    // 445 lies in the second and third, 20 mm from both centres.
    [445, 1, 1],
    [449, 1, 2],
    [406, 0, 1],
    [350, 0, 0],
    [500, 2, 2],
  ])("a mean of %d mm", (mean, first, centre) => {
    expect([firstMatch(mean, sizes), nearestCentre(mean, sizes)]).toEqual([first, centre]);
  });
});

describe("statistics of the study", () => {
  test("a ratio of sums with its clustered error", () => {
    // 3/6; left over 1 − 1, 0 − 1, 2 − 1; √2/6.
    const { value, error } = clusteredRatio(Float64Array.of(1, 0, 2), Float64Array.of(2, 2, 2));
    expect(value).toBe(0.5);
    expect(error).toBeCloseTo(Math.SQRT2 / 6, 12);
    expect(Array.from(difference(Float64Array.of(3, 1), Float64Array.of(1, 1)))).toEqual([2, 0]);
  });

  test("each tenth is off by five points, so the calibration error is", () => {
    // Ten forecasts each of 5 %, 15 % … 95 %, of which none, one … nine come true.
    const trials = Array.from({ length: 100 }, (_, i) => ({ tenth: Math.floor(i / 10), place: i % 10 }));
    const { ece, overall, deciles } = calibrate(
      {
        person: trials.map((_, i) => i),
        stated: trials.map(({ tenth }) => tenth / 10 + 0.05),
        observed: trials.map(({ tenth, place }) => (place < tenth ? 1 : 0)),
      },
      10,
      createRandom(1),
    );
    expect(ece).toBeCloseTo(0.05, 12);
    expect(overall.stated).toBeCloseTo(0.5, 12);
    expect(overall.observed).toBeCloseTo(0.45, 12);
    expect(deciles[3]?.observed).toBeCloseTo(0.3, 12);
  });

  test("perfect forecasts show the mean of a half normal distribution, twice as much where four trials are one", () => {
    // Groups of 400 forecasts of ½: √(2/π) · ½/√400; four trials of one person agree: doubled.
    const random = createRandom(2);
    const people = Array.from({ length: 1000 }, () => (random.uniform() < 0.5 ? 1 : 0));
    const trials = people.flatMap((outcome, person) => [0, 1, 2, 3].map(() => ({ outcome, person })));
    const { ifPerfect, ifPerfectByPerson, overallError } = calibrate(
      {
        person: trials.map(({ person }) => person),
        stated: trials.map(() => 0.5),
        observed: trials.map(({ outcome }) => outcome),
      },
      300,
      random,
    );
    const alone = Math.sqrt(2 / Math.PI) * (0.5 / 20);
    expect(ifPerfect.mean / alone).toBeCloseTo(1, 1);
    expect(ifPerfectByPerson.mean / (2 * alone)).toBeCloseTo(1, 1);
    expect(ifPerfectByPerson.upper).toBeGreaterThan(ifPerfectByPerson.mean);
    // √(p(1 − p)/1000) for a thousand people.
    expect(overallError / Math.sqrt(0.25 / 1000)).toBeCloseTo(1, 1);
  });

  test("one point is the limit of the verdict on calibration", () => {
    const [cell] = runSetting(syntheticPeople(60, 1), settingOf("6/8", "5mm", 1), options);
    if (cell === undefined) throw new Error("no cell");
    const withEce = (ece: number) => ({
      ...cell,
      calibration: { ...cell.calibration, cut: { ...cell.calibration.cut, ece } },
    });
    expect(judgeCalibration([withEce(0.01)], "cut").holds).toBe(true);
    expect(judgeCalibration([withEce(0.0101)], "cut")).toMatchObject({
      holds: false,
      failures: [expect.stringContaining("1.01 points")],
    });
  });
});

describe("trials", () => {
  const person = { id: 1, cut: "women", statureMm: 1700, torsoMm: 437 } as const;

  test("without error the nearest mark is read", () => {
    expect(drawTrial(person, handSetting(0, 0, 5, 2), 0, 1, false)).toEqual({ trueMm: 437, marks: [87, 87] });
  });

  test("two readings are the first two of three, on the same body", () => {
    const two = drawTrial(person, settingOf("6/8", "5mm", 2), 4, 1, true);
    const three = drawTrial(person, settingOf("6/8", "5mm", 3), 4, 1, true);
    expect(three.trueMm).toBe(two.trueMm);
    expect(three.marks.slice(0, 2)).toEqual(two.marks);
  });

  test("dithering adds two uniform errors of a millimetre's width", () => {
    const spreads = Array.from(
      { length: 5000 },
      (_, repeat) => drawTrial(person, handSetting(0, 0, 5, 1), repeat, 1, true).trueMm - 437,
    );
    expect(Math.max(...spreads.map(Math.abs))).toBeLessThan(1);
    // Variance 2 · 1/12; its sampling error is √((1/15 − 1/36)/5000), about 0.0028.
    const variance = spreads.reduce((sum, spread) => sum + spread ** 2, 0) / spreads.length;
    expect(Math.abs(variance - 1 / 6)).toBeLessThan(0.0112);
  });
});

describe("people", () => {
  const header = "subjectid,sex,stature,cervicaleheight,iliocristaleheight";

  test("torso length is the height of C7 less that of the iliac crest", () => {
    expect(peopleOf(`${header}\r\n7,female,1650,1420,1019\r\n`, "women", "x.csv")).toEqual([
      { id: 7, cut: "women", statureMm: 1650, torsoMm: 401 },
    ]);
  });

  test.each([
    [`${header}\n7,female,1650,,1019`],
    [`${header}\n7,female,1650,x,1019`],
    ["subjectid,stature\n7,1650"],
  ])("a figure that is missing is named (%#)", (text) => {
    expect(() => peopleOf(text, "women", "x.csv")).toThrow("x.csv, line 2: no figure for cervicaleheight");
  });

  test("redrawn torsos keep cut and stature", () => {
    const people = syntheticPeople(20, 3);
    const redrawn = redrawTorsos(people, 4);
    expect(redrawn.map(({ id, cut, statureMm }) => [id, cut, statureMm])).toEqual(
      people.map(({ id, cut, statureMm }) => [id, cut, statureMm]),
    );
    expect(redrawn.map(({ torsoMm }) => torsoMm)).not.toEqual(people.map(({ torsoMm }) => torsoMm));
  });

  test("the density from the other half knows nothing of the person", () => {
    const people = syntheticPeople(80, 2);
    const [first, ...others] = people;
    if (first === undefined) throw new Error("nobody");
    const changed = { ...first, torsoMm: first.torsoMm + 100 };
    const before = otherHalfDensities(people, 1)(first);
    const after = otherHalfDensities([changed, ...others], 1)(changed);
    const lengths = [360, 400, 440.3, 480];
    expect(lengths.map(after)).toEqual(lengths.map(before));
    expect(before(first.torsoMm)).toBeGreaterThan(0);
  });
});

describe("the command", () => {
  const script = fileURLToPath(new URL("../../reference-checks/choice-quality/run.ts", import.meta.url));
  const run = (...args: readonly string[]) =>
    spawnSync(
      process.execPath,
      ["--experimental-strip-types", "--conditions=@tapewise/source", script, ...args],
      { encoding: "utf8" },
    );

  test("without people it says that it did not run, and fails", () => {
    const { status, stderr, stdout } = run();
    expect(stderr).toContain("did NOT run");
    expect(stdout).toBe("");
    expect(status).toBe(2);
  });

  test("with people it gives the figures that the study gives", () => {
    const folder = mkdtempSync(join(tmpdir(), "tapewise-people-"));
    try {
      const people = syntheticPeople(40, 9).map((person) => ({
        ...person,
        statureMm: Math.round(person.statureMm),
        torsoMm: Math.round(person.torsoMm),
      }));
      for (const [cut, name] of [
        ["women", "female"],
        ["men", "male"],
      ] as const) {
        const lines = people
          .filter((person) => person.cut === cut)
          .map(({ id, statureMm, torsoMm }) => `${id},${name},${statureMm},${1000 + torsoMm},1000`);
        writeFileSync(
          join(folder, `ansur-ii-${name}-even-subjects.csv`),
          ["subjectid,sex,stature,cervicaleheight,iliocristaleheight", ...lines].join("\n"),
        );
      }
      const cells = "error=6/8,rounding=5mm,readings=1,chart=overlap-1cm";
      const { stdout, stderr } = run(
        ...["--people", folder, "--cells", cells, "--repeats", "2", "--seed", "5", "--threads", "1"],
        ...["--main-only", "--json"],
      );
      const [data]: { cells: { wrong: Record<string, { value: number }> }[] }[] = JSON.parse(stdout || "[]");
      const ordered = people.toSorted((a, b) => (a.cut === b.cut ? 0 : a.cut === "women" ? -1 : 1));
      const [cell] = runSetting(ordered, settingOf("6/8", "5mm", 1), {
        ...options,
        dither: true,
        wants: cellFilter(cells),
      });
      expect(data?.cells, stderr).toHaveLength(1);
      if (cell === undefined) throw new Error("no cell");
      const { wrong } = compareRules("", [cell]);
      for (const rule of rules) expect(data?.cells[0]?.wrong[rule]?.value).toBe(wrong[rule].value);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test("cells that do not exist are refused", () => {
    expect(() => cellFilter("chart=round")).toThrow('"chart=round" is no cell');
    expect(() => cellFilter("colour=red")).toThrow('"colour=red" is no cell');
    const wants = cellFilter("chart=wide,chart=touching,readings=3");
    expect(wants({ chart: "touching", error: "6/8", rounding: "5mm", readings: 3 })).toBe(true);
    expect(wants({ chart: "nominal", error: "6/8", rounding: "5mm", readings: 3 })).toBe(false);
    expect(wants({ chart: "wide", error: "6/8", rounding: "5mm", readings: 1 })).toBe(false);
  });
});
