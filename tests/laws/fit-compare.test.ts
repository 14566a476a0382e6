import { fc, test } from "@fast-check/vitest";
import type { SizeChart } from "@tapewise/charts";
import { type Comparison, compare, defaultPolicy, type Person, type RankedChart } from "@tapewise/fit";
import { unwrap } from "@tapewise/outcome";
import { expect } from "vitest";
import { answer } from "../fit/cases.ts";
import { charts, estimates } from "./fit-arbitraries.ts";

const packs: fc.Arbitrary<readonly SizeChart[]> = fc
  .array(
    fc.record({
      chart: charts,
      cut: fc.constantFrom(undefined, "women" as const, "men" as const, "unisex" as const),
      harness: fc.constantFrom(undefined, "adjustable" as const, "fixed" as const),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map((list) =>
    list.map(({ chart, cut, harness }, i) => ({
      ...chart,
      chart: `Pack ${i}`,
      ...(cut === undefined ? {} : { cut }),
      ...(harness === undefined ? {} : { harness }),
    })),
  );

const people: fc.Arbitrary<Person> = fc.record(
  { estimates, cut: fc.constantFrom("women" as const, "men" as const), firstPack: fc.boolean() },
  { requiredKeys: ["estimates"] },
);

const run = (person: Person, list: readonly SizeChart[]): Comparison =>
  unwrap(compare(person, list, { unit: "cm" }));
const names = ({ ranked }: Comparison) => ranked.map(({ recommendation }) => recommendation.chart);
const probabilityOf = ({ recommendation }: RankedChart) => recommendation.probability;

test.prop([people, packs, fc.infiniteStream(fc.nat())])(
  "law: the order of the charts is irrelevant",
  (person, list, keys) => {
    const shuffled = list
      .map((chart) => ({ chart, key: keys.next().value }))
      .toSorted((a, b) => a.key - b.key)
      .map(({ chart }) => chart);
    // Only the position that each chart has in the list is another one.
    const order = ({ ranked }: Comparison) => ranked.map(({ index, ...one }) => one);
    expect(order(run(person, shuffled))).toEqual(order(run(person, list)));
  },
);

test.prop([people, packs])(
  "law: every pack that can be judged is ranked once, with the answer it gets alone",
  (person, list) => {
    const { ranked } = run(person, list);
    expect(ranked.map(({ rank }) => rank)).toEqual(list.map((_, i) => i + 1));
    expect(names({ ranked }).toSorted()).toEqual(list.map(({ chart }) => chart).toSorted());
    for (const { index, recommendation } of ranked) {
      const chart = list[index];
      if (chart === undefined) throw new Error("a chart that nobody gave");
      expect(chart.chart).toBe(recommendation.chart);
      expect(recommendation).toEqual(answer(person, chart));
    }
  },
);

test.prop([people, packs])(
  "law: what stands behind is at most the tie loss likelier to fit, and that only among packs that fit",
  (person, list) => {
    const { ranked } = run(person, list);
    ranked.forEach((one, index) => {
      for (const behind of ranked.slice(index + 1)) {
        const loss = probabilityOf(behind) - probabilityOf(one);
        expect(loss).toBeLessThanOrEqual(defaultPolicy.tieLoss + 1e-9);
        if (probabilityOf(one) < defaultPolicy.fitProbability) {
          expect(loss).toBeLessThanOrEqual(defaultPolicy.hopelessProbability);
        }
      }
    });
  },
);

test.prop([people, packs])(
  "law: each but the last says why it stands before the next, and only what holds",
  (person, list) => {
    const { ranked } = run(person, list);
    expect(ranked.map(({ beforeNext }) => beforeNext === undefined)).toEqual(
      ranked.map((_, i) => i === ranked.length - 1),
    );
    ranked.forEach(({ beforeNext, ...one }, index) => {
      const next = ranked[index + 1];
      if (beforeNext === undefined || next === undefined) return;
      expect(beforeNext.sentence).not.toMatch(/[{}]|undefined|NaN/);
      if (beforeNext.code === "likelier-fit") expect(probabilityOf(one)).toBeGreaterThan(probabilityOf(next));
      if (beforeNext.code === "cut-matches") {
        expect(list.find(({ chart }) => chart === one.recommendation.chart)?.cut).toBe(person.cut);
      }
      if (beforeNext.code === "adjustable-for-first-pack") expect(person.firstPack).toBe(true);
    });
  },
);

test.prop([people, packs])(
  "law: a pack more changes no answer and not the order of the others",
  (person, list) => {
    const [first, ...others] = list;
    if (first === undefined || others.length === 0) return;
    // What makes one of two close packs go first may depend on a third: the cut, the harness, the readings.
    const plain: Person = {
      estimates: person.estimates.filter(({ dimension }) => dimension === "torso-length"),
    };
    const all = names(run(plain, list)).filter((name) => name !== first.chart);
    expect(all).toEqual(names(run(plain, others)));
  },
);
