import { readFileSync } from "node:fs";
import { join } from "node:path";
import { errorDefaults } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";
import { asAssumed, assumptions } from "./assumptions.ts";
import { type Study, sensitivityPage, sensitivityReport } from "./page.ts";
import results from "./results.json" with { type: "json" };
import {
  demoCharts,
  drawPeople,
  measureEffects,
  readingsOf,
  representativePeople,
  tally,
  truthOf,
} from "./study.ts";
import { drawTornado } from "./tornado.ts";

const study = results as unknown as Study;
const site = join(import.meta.dirname, "../../site/src/content/docs/explanation/sensitivity.md");

describe("the committed study", () => {
  test("both pages are what it comes to", () => {
    expect(readFileSync(join(import.meta.dirname, "RESULTS.md"), "utf8")).toBe(sensitivityReport(study));
    expect(readFileSync(site, "utf8")).toBe(sensitivityPage(study));
  });

  test("moves every assumption there is, over the range that is stated", () => {
    expect(study.effects.map(({ assumption }) => ({ ...assumption, at: undefined }))).toEqual(
      assumptions.map((assumption) => ({ ...assumption, at: undefined })),
    );
    for (const { low, high, why, plan, name } of assumptions) {
      expect(low, name).not.toBe(high);
      expect(Math.min(why.length, plan.length), name).toBeGreaterThan(10);
    }
  });

  test("single people get the same answers now", () => {
    const now = representativePeople().map(({ person, chart, base }) => [person, chart, base.pick]);
    expect(now).toEqual(study.persons.map(({ person, chart, base }) => [person, chart, base.pick]));
  });

  test("shares are shares, and the plan goes by what not knowing costs", () => {
    for (const { wrong, ends } of study.effects) {
      for (const share of [
        wrong,
        ...ends.flatMap((end) => [end.picksChanged, end.wrongIfTold, end.wrongIfSo ?? 0]),
      ]) {
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThan(0.5);
      }
    }
  });
});

describe("a small part, made anew", () => {
  test("nothing moved changes nothing, and the same seed gives the same", () => {
    const people = drawPeople(12, 7);
    const charts = demoCharts();
    const once = tally(people, charts, "tape", asAssumed, asAssumed);
    expect(tally(people, charts, "tape", asAssumed, asAssumed)).toEqual(once);
    expect(once.pairs).toBeGreaterThan(20);
    expect(drawPeople(12, 7)).toEqual(people);
  });

  test("the figures are those of the table of defaults", () => {
    expect(asAssumed).toMatchObject(errorDefaults.hands["length along the body"].self);
    expect(asAssumed.degreesOfFreedom).toBe(errorDefaults.degreesOfFreedom);
  });

  test("readings carry the error of their world: bias 20 mm, no other, rounded to 5 mm", () => {
    const [someone] = drawPeople(1, 3);
    expect(someone).toBeDefined();
    if (someone === undefined) return;
    const world = {
      ...asAssumed,
      handlingMm: 0,
      findingMm: 0,
      lastingMm: 0,
      sharedBiasMm: 20,
      tape: { scaleHalfWidth: 0, transferMm: 0, jointMm: 0 },
    };
    const wanted = 5 * Math.round((truthOf(someone, world) + 20) / 5);
    expect(readingsOf(someone, world, "tape")).toEqual(new Array(3).fill(`${(wanted / 10).toFixed(1)} cm`));
  });

  test("a bias that nobody knows costs more than one that is taken off", () => {
    const people = drawPeople(40, 2);
    const charts = demoCharts();
    const biased = { ...asAssumed, sharedBiasMm: 25 };
    const unknown = tally(people, charts, "tape", biased, asAssumed);
    const known = tally(people, charts, "tape", biased, biased);
    expect(unknown.wrong).toBeGreaterThan(known.wrong);
    expect(unknown.stated - unknown.right).toBeGreaterThan(known.stated - known.right);
  });

  test("every assumption has both ends", () => {
    const effects = measureEffects(2, 1);
    expect(effects.map(({ ends }) => ends.map(({ end }) => end))).toEqual(
      assumptions.map(() => ["low", "high"]),
    );
    for (const { assumption, ends } of effects) {
      for (const { wrongIfSo } of ends) expect(wrongIfSo !== undefined).toBe(assumption.isFact);
    }
  });
});

test("a tornado has the longest bar on top, a title and a text in its place", () => {
  const svg = drawTornado({
    name: "x",
    title: "Title",
    description: "Words.",
    base: 5,
    bars: [
      { label: "short", low: 4.5, high: 5.5 },
      { label: "long", low: 2, high: 9 },
    ],
  });
  expect(svg.indexOf(">long<")).toBeLessThan(svg.indexOf(">short<"));
  expect(svg).toContain('role="img" aria-labelledby="x-title x-desc"');
  expect(svg).toContain('<title id="x-title">Title</title>');
  expect(svg).toContain('<desc id="x-desc">Words.</desc>');
  expect(svg).not.toContain("\n\n");
  expect(svg).not.toMatch(/#[0-9a-f]{3,6}"/i);
});
