import { fc, test } from "@fast-check/vitest";
import type { SizeChart } from "@tapewise/charts";
import { defaultPolicy, type Person, pickSizes, type Recommendation, recommend } from "@tapewise/fit";
import { contains, type Interval, interval } from "@tapewise/intervals";
import { plausibleLimits } from "@tapewise/landmarks";
import { unwrap } from "@tapewise/outcome";
import { parseLength, toMillimetres } from "@tapewise/units";
import { expect } from "vitest";
import { answer, codes, estimateOf, sureEstimate, torsoChart } from "../fit/cases.ts";
import {
  bodyMm,
  bounded,
  build,
  charts,
  estimates,
  priors,
  readEstimate,
  real,
  sdMm,
  withTorso,
} from "./fit-arbitraries.ts";

/** What a choice comes to, without words and without the last digits. */
function gist({ pick, verdict, probability, sizes, reasons, next }: Recommendation) {
  return {
    pick,
    verdict,
    probability: probability.toFixed(7),
    sizes: Object.fromEntries(sizes.map((fit) => [fit.size, fit.probability.toFixed(7)])),
    reasons: codes(reasons),
    next: codes(next),
  };
}

const people: fc.Arbitrary<Person> = fc.record(
  { estimates, build, prior: priors },
  { requiredKeys: ["estimates"] },
);

test.prop([people, charts, fc.infiniteStream(fc.nat())])(
  "law: the order of sizes is irrelevant",
  (person, chart, keys) => {
    const shuffled = chart.sizes
      .map((size) => ({ size, key: keys.next().value }))
      .toSorted((a, b) => a.key - b.key)
      .map(({ size }) => size);
    expect(gist(answer(person, { ...chart, sizes: shuffled }))).toEqual(gist(answer(person, chart)));
  },
);

test.prop([people, charts])("law: the order of estimates is irrelevant", (person, chart) => {
  const turned = { ...person, estimates: person.estimates.toReversed() };
  expect(gist(answer(turned, chart))).toEqual(gist(answer(person, chart)));
});

test.prop([people, charts])("law: the pick alone is that of the recommendation", (person, chart) => {
  const whole = recommend(person, chart, { unit: "cm" });
  const alone = pickSizes(person, chart);
  expect(alone.ok).toBe(whole.ok);
  if (!whole.ok || !alone.ok) {
    expect(alone.issues).toEqual(whole.issues);
    return;
  }
  const { pick, belt, beliefs } = whole.value;
  expect(alone.value).toEqual({ pick, ...(belt === undefined ? {} : { belt: belt.pick }), beliefs });
});

/** To a 64th of a millimetre: such lengths and whole millimetres add without rounding, so that no end is crossed. */
const snap = (mm: number) => Math.round(mm * 64) / 64;

test.prop([people, charts, fc.integer({ min: -100, max: 100 })])(
  "law: readings, prior and chart that shift together change nothing",
  (person, chart, by) => {
    // A length that nobody has is questioned, wherever the chart stands.
    const limits = plausibleLimits("torso-length", "child");
    const torso = person.estimates.find(({ dimension }) => dimension === "torso-length");
    fc.pre(torso === undefined || [0, by].every((shift) => contains(limits, snap(torso.mm) + shift)));
    const at = (shift: number) => {
      const { prior } = person;
      const moved: Person = {
        ...person,
        estimates: person.estimates.map((one) =>
          sureEstimate(
            one.dimension,
            snap(one.mm) + (one.dimension === "torso-length" ? shift : 0),
            one.uncertaintyMm,
            one.degreesOfFreedom,
          ),
        ),
        ...(prior === undefined
          ? {}
          : {
              prior: { ...prior, meanMm: prior.meanMm.map((mean, i) => snap(mean) + (i === 0 ? shift : 0)) },
            }),
      };
      const change = (one: Interval) => ({ ...one, from: snap(one.from) + shift, to: snap(one.to) + shift });
      return gist(answer(moved, withTorso(chart, change)));
    };
    expect(at(by)).toEqual(at(0));
  },
);

const eighths = fc.integer({ min: 100, max: 190 });

test.prop([
  fc.array(eighths, { minLength: 1, maxLength: 3 }),
  fc.array(fc.tuple(eighths, fc.integer({ min: 4, max: 40 })), { minLength: 1, maxLength: 4 }),
])(
  "law: neither the unit of the readings nor the chart's nor the answer's changes the choice",
  (readings, rows) => {
    const error = { biasMm: 6, repeatMm: 8, resolutionMm: 3.175 };
    const inCm = readings.map((n) => `${((n * 3175) / 10_000).toFixed(4)} cm`);
    const inInches = readings.map((n) => `${Math.floor(n / 8)} ${n % 8 === 0 ? "" : `${n % 8}/8 `}in`);
    const chartWith = (end: (n: number) => number) =>
      torsoChart(
        Object.fromEntries(rows.map(([from, width], i) => [`${i}`, [end(from), end(from + width)] as const])),
      );
    const metric = answer(
      { estimates: [estimateOf("torso-length", inCm, error)] },
      chartWith((n) => (n * 3175) / 1000),
    );
    const imperial = answer(
      { estimates: [estimateOf("torso-length", inInches, error)] },
      chartWith((n) => toMillimetres(n / 8, "in")),
      { unit: "in" },
    );
    expect(gist(imperial)).toEqual(gist(metric));
  },
);

test.prop([people, charts])(
  "law: the pick is the likeliest size, unless a reason says otherwise and costs at most the tie loss",
  (person, chart) => {
    const { pick, probability, sizes, reasons } = answer(person, chart);
    const best = Math.max(...sizes.map((fit) => fit.probability));
    expect(sizes.find((fit) => fit.size === pick)?.probability).toBe(probability);
    const [first] = codes(reasons);
    if (first === "most-probable" || first === "equal-chance") {
      expect(probability).toBeGreaterThanOrEqual(best - 1e-9);
    } else if (first === "nearest-size") {
      expect(best).toBeLessThan(defaultPolicy.hopelessProbability);
    } else {
      expect(["build-takes-longer", "harness-adjusts"]).toContain(first);
      expect(probability).toBeGreaterThanOrEqual(best - defaultPolicy.tieLoss - 1e-12);
      expect(probability).toBeGreaterThanOrEqual(defaultPolicy.fitProbability);
    }
  },
);

test.prop([people, charts])("law: build never matters without a tie", (person, chart) => {
  const plain = answer({ ...person, build: [] }, chart);
  const built = answer({ ...person, build: ["broad-shoulders"] }, chart);
  const fitting = plain.sizes.filter((fit) => fit.probability >= defaultPolicy.fitProbability);
  if (fitting.length < 2) expect(gist(built)).toEqual(gist(plain));
  expect(built.sizes).toEqual(plain.sizes);
});

test.prop([people, charts])("law: with build the pick is never a shorter size", (person, chart) => {
  const topOf = ({ pick, sizes }: Recommendation) =>
    sizes.find((fit) => fit.size === pick)?.dimensions.find((one) => one.dimension === "torso-length")?.range
      .interval.to ?? Number.NaN;
  const plainChart: SizeChart = {
    ...chart,
    harness: "fixed",
    sizes: chart.sizes.map(({ harness, ...size }) => size),
  };
  expect(topOf(answer({ ...person, build: ["large-chest"] }, plainChart))).toBeGreaterThanOrEqual(
    topOf(answer({ ...person, build: [] }, plainChart)),
  );
});

test.prop([people, charts, fc.nat(), real(0, 60), real(0, 60)])(
  "law: widening a size never lowers its probability",
  (person, chart, which, down, up) => {
    const target = chart.sizes[which % chart.sizes.length]?.name;
    const wider = {
      ...chart,
      sizes: chart.sizes.map((size) =>
        size.name === target
          ? (withTorso({ ...chart, sizes: [size] }, (one) => ({
              ...one,
              from: one.from - down,
              to: one.to + up,
            })).sizes[0] ?? size)
          : size,
      ),
    };
    const of = (one: SizeChart) => answer(person, one).sizes.find((fit) => fit.size === target)?.probability;
    expect(of(wider)).toBeGreaterThanOrEqual((of(chart) ?? Number.NaN) - 1e-9);
  },
);

test.prop([bodyMm, sdMm, fc.array(bounded, { minLength: 1, maxLength: 4 })])(
  "law: more uncertainty never raises the best probability above what certainty gives a body that fits",
  (mm, sd, ranges) => {
    const chart = torsoChart(
      Object.fromEntries([...ranges, interval(mm - 1, mm + 1)].map((one, i) => [`${i}`, one])),
    );
    const best = (uncertaintyMm: number) =>
      answer({ estimates: [sureEstimate("torso-length", mm, uncertaintyMm)] }, chart).probability;
    expect(best(0)).toBe(1);
    expect(best(sd)).toBeLessThanOrEqual(1);
  },
);

test.prop([bodyMm, charts])(
  "law: with certainty every probability is 0 or 1, and no further reading is asked for",
  (mm, chart) => {
    const { sizes, verdict, next } = answer({ estimates: [sureEstimate("torso-length", mm, 0)] }, chart);
    for (const { probability } of sizes) expect([0, 1]).toContain(probability);
    expect(verdict).not.toBe("measure-again");
    expect(codes(next)).not.toContain("measure-again");
  },
);

test.prop([people, charts])("law: a verdict means what it says", (person, chart) => {
  const { verdict, sizes, pick, probability } = answer(person, chart);
  const others = sizes.filter((fit) => fit.size !== pick).map((fit) => fit.probability);
  const areTwo = others.some((other) => other >= 0.5 && other + probability > 1 + 1e-9);
  const isTossUp = others.some((other) => other >= probability - 0.05 && other + probability <= 1 + 1e-9);
  if (verdict === "two-sizes-fit") expect([probability >= 0.5, areTwo]).toEqual([true, true]);
  if (verdict === "fits") expect([probability >= 0.5, areTwo, isTossUp]).toEqual([true, false, false]);
  if (verdict === "between-sizes") expect(probability < 0.5 || (isTossUp && !areTwo)).toBe(true);
  if (verdict === "outside-the-range") expect(Math.max(probability, ...others)).toBeLessThanOrEqual(0.5);
});

test.prop([people, charts])("law: an end that is passed is named with what it takes", (person, chart) => {
  const { verdict, outside } = answer(person, chart);
  if (verdict === "outside-the-range") expect(outside).toBeDefined();
  if (outside !== undefined) {
    expect(outside.probability).toBeGreaterThanOrEqual(defaultPolicy.fitProbability);
    expect(outside.byMm).toBeGreaterThanOrEqual(0);
  }
});

/** Where a number is not finite, as a path with `*` for positions. */
function oddNumbers(value: unknown, path = ""): readonly string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} ${value}`];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) =>
    oddNumbers(one, Array.isArray(value) ? `${path}*` : `${path}.${key}`),
  );
}

const MAY_BE_INFINITE = /\.(interval\.(from -Infinity|to Infinity)|degreesOfFreedom Infinity)$/;

test.prop([people, charts])(
  "law: no number of an answer is NaN, and only open ends and degrees of freedom are infinite",
  (person, chart) => {
    const recommendation = answer(person, chart);
    expect(oddNumbers(recommendation).filter((path) => !MAY_BE_INFINITE.test(path))).toEqual([]);
    // What JSON turns into null is just that: everything else comes back as it was.
    const nulls = JSON.stringify(recommendation).match(/:null/g)?.length ?? 0;
    expect(nulls).toBe(oddNumbers(recommendation).length);
  },
);

test.prop([people, charts, fc.constantFrom("cm" as const, "in" as const)])(
  "law: every sentence is complete, and its facts are data",
  (person, chart, unit) => {
    const { reasons, next } = answer(person, chart, { unit });
    for (const { sentence, facts } of [...reasons, ...next]) {
      expect(sentence).not.toMatch(/[{}]|undefined|NaN|Infinity|null/);
      expect(sentence).toMatch(/^[A-Z0-9].*\.$/s);
      for (const [name, value] of Object.entries(facts)) {
        if (name.endsWith("Mm")) expect(Number.isFinite(value)).toBe(true);
        if (name.endsWith("Probability")) expect(Number(value)).toSatisfy((p) => p >= 0 && p <= 1);
      }
    }
    expect(codes(next).slice(-2)).toEqual(["check-on-body", "see-fitter"]);
  },
);

test.prop([readEstimate, charts, fc.constantFrom("cm" as const, "in" as const)])(
  "law: the unit of the sentences changes nothing else",
  (estimate, chart, unit) => {
    const strip = (recommendation: Recommendation) => ({
      ...recommendation,
      reasons: recommendation.reasons.map(({ code, facts }) => ({ code, facts })),
      next: recommendation.next.map(({ code, facts }) => ({ code, facts })),
    });
    const person = { estimates: [estimate] };
    expect(strip(unwrap(recommend(person, chart, { unit })))).toEqual(strip(answer(person, chart)));
  },
);

test.prop([people, charts])(
  "law: a questioned reading that the size hangs on leaves nothing to do before it is looked at again",
  (person, chart) => {
    const { questions, sizes, verdict, next } = answer(person, chart);
    const judged = sizes.flatMap((fit) => fit.dimensions.map(({ dimension }) => dimension));
    const isDoubted = questions.some(({ path }) => judged.some((dimension) => dimension === path.at(-1)));
    if (questions.length > 0) expect(codes(next)[0]).toBe("check-reading");
    if (!isDoubted) return;
    expect(verdict).toBe("measure-again");
    for (const code of ["other-chart", "consider-other-chart", "confirm-reading", "swap-hip-belt"]) {
      expect(codes(next)).not.toContain(code);
    }
  },
);

test.prop([people, charts])(
  "law: whoever is told to take a size that is not sure is told what to do about it",
  (person, chart) => {
    const { verdict, probability, next } = answer(person, chart);
    if (verdict !== "fits" || probability >= defaultPolicy.sureProbability) return;
    const advice = ["confirm-reading", "measure-dimension"];
    expect(codes(next).some((code) => advice.includes(code))).toBe(true);
  },
);

test.prop([people, charts])("law: no reading is altered, whatever the prior says", (person, chart) => {
  expect(answer(person, chart).estimates).toEqual(person.estimates);
});

test.prop([fc.integer({ min: 350, max: 550 })])(
  "law: the same question gets the same answer, and one reading is believed as it stands",
  (mm) => {
    const person = { estimates: [estimateOf("torso-length", [`${mm} mm`])] };
    const chart = torsoChart({ S: [380, 440], M: [430, 490] });
    expect(answer(person, chart)).toEqual(answer(person, chart));
    expect(parseLength(`${mm} mm`).mm).toBe(answer(person, chart).beliefs[0]?.meanMm);
  },
);
