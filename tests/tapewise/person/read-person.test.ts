import { unwrap } from "@tapewise/outcome";
import { referencePrior } from "@tapewise/population";
import { millimetres } from "@tapewise/units";
import { type PersonLine, safeReadPerson } from "tapewise/batch";
import { describe, expect, test } from "vitest";

const line = (rest: Partial<PersonLine> = {}): PersonLine => ({
  readings: { "torso-length": ["43 cm", "45 cm"] },
  ...rest,
});
const codes = (issues: readonly { readonly code: string }[]) => issues.map((issue) => issue.code);

describe("safeReadPerson", () => {
  test("makes an estimate of each dimension", () => {
    const outcome = safeReadPerson({
      readings: { "hip-belt-girth": ["90 cm"], "torso-length": ["43 cm", "45 cm"] },
    });
    expect(outcome.ok && outcome.value.estimates.map(({ dimension, mm }) => [dimension, mm])).toEqual([
      ["torso-length", 440],
      ["hip-belt-girth", 900],
    ]);
    expect(codes(outcome.issues)).toEqual(["reading-alone"]);
  });

  test("keeps what can be read, and says where the rest was", () => {
    const outcome = safeReadPerson({
      readings: { "torso-length": ["43 cm", "long", "45"], "hip-girth": ["wide"] },
    });
    expect(outcome.ok && outcome.value.estimates.map(({ mm }) => mm)).toEqual([430]);
    expect(outcome.issues.filter(({ severity }) => severity === "error").map(({ path }) => path)).toEqual([
      ["readings", "torso-length", 1],
      ["readings", "torso-length", 2],
      ["readings", "hip-girth", 0],
    ]);
  });

  test("fails when nothing can be read", () => {
    const outcome = safeReadPerson({ readings: { "torso-length": ["43"] } });
    expect(outcome.ok).toBe(false);
    expect(codes(outcome.issues)).toEqual(["length-no-unit"]);
  });

  test("reads numbers only where the line names their unit", () => {
    expect(codes(safeReadPerson({ readings: { "torso-length": [43.2] } }).issues)).toEqual([
      "length-not-text",
    ]);
    const outcome = safeReadPerson({ unit: "cm", readings: { "torso-length": [43.2, "44", "17 in"] } });
    // (432 + 440 + 431.8) / 3 = 434.6
    expect(outcome.ok && outcome.value.estimates[0]?.mm).toBeCloseTo(434.6, 9);
  });

  test("takes over conditions, stated error, build, cut and first pack", () => {
    const outcome = safeReadPerson(
      line({
        tool: "short-rule",
        ruleLength: "20 cm",
        measuredBy: "helper",
        landmarksFoundAfresh: true,
        build: ["large-chest"],
        cut: "women",
        firstPack: true,
      }),
    );
    const person = outcome.ok ? outcome.value : undefined;
    expect(person?.estimates[0]?.conditions).toMatchObject({
      tool: "short-rule",
      measuredBy: "helper",
      assumed: [],
    });
    // 44 cm with a rule of 20 cm needs 2 joints: they are a line of the budget.
    expect(person?.estimates[0]?.budget.map(({ source }) => source)).toContain("rule-joints");
    expect([person?.build, person?.cut, person?.firstPack]).toEqual([["large-chest"], "women", true]);
    const stated = safeReadPerson(line({ error: { biasMm: 6, repeatMm: 0, resolutionMm: 0 } }));
    expect(stated.ok && stated.value.estimates[0]?.uncertaintyMm).toBe(6);
  });

  describe("the prior", () => {
    const priorOf = (...args: Parameters<typeof safeReadPerson>) => {
      const outcome = safeReadPerson(...args);
      return outcome.ok ? outcome.value.prior : undefined;
    };
    const tall = referencePrior({ cut: "men", statureMm: millimetres(1830) });

    test("comes from cut and stature", () => {
      expect(priorOf(line({ cut: "men", stature: "183 cm" }))).toEqual(tall);
      expect(priorOf(line({ cut: "men", stature: 183, unit: "cm" }))).toEqual(tall);
      expect(
        priorOf(line({ cut: "men", readings: { "torso-length": ["46 cm"], stature: ["182 cm", "184 cm"] } })),
      ).toEqual(tall);
    });

    test("is left out unless both are given, or when nobody wants it", () => {
      expect(priorOf(line())).toBeUndefined();
      expect(priorOf(line({ cut: "men" }))).toBeUndefined();
      expect(priorOf(line({ stature: "183 cm" }))).toBeUndefined();
      expect(priorOf(line({ cut: "men", stature: "183 cm" }), { prior: "none" })).toBeUndefined();
    });

    test("is that of the whole cut where it is asked for without a stature", () => {
      expect(priorOf(line({ cut: "men" }), { prior: "reference" })).toEqual(referencePrior({ cut: "men" }));
    });

    test("cannot be had without a cut, and says so", () => {
      expect(codes(safeReadPerson(line(), { prior: "reference" }).issues)).toEqual([
        "person-prior-needs-cut",
      ]);
    });

    test.each(["18.3 cm", "183 in", "5 m"])("concludes nothing from a stature of %s", (stature) => {
      const outcome = safeReadPerson(line({ cut: "men", stature }));
      expect(outcome.ok && outcome.value.prior).toBeUndefined();
      expect(codes(outcome.issues)).toContain("person-stature-implausible");
    });
  });

  test("two statures that contradict each other are a warning from 3 cm on", () => {
    const codesOf = (stature: string) =>
      codes(
        safeReadPerson(
          line({ stature, readings: { "torso-length": ["43 cm", "45 cm"], stature: ["180 cm", "180 cm"] } }),
        ).issues,
      );
    expect(codesOf("177 cm")).toEqual([]);
    expect(codesOf("176.9 cm")).toEqual(["person-statures-differ"]);
    expect(codesOf("183.1 cm")).toEqual(["person-statures-differ"]);
  });

  test("a rule that is too short is one issue, whatever it was used for", () => {
    const { issues } = safeReadPerson({
      tool: "short-rule",
      ruleLength: "0.5 cm",
      readings: { "torso-length": ["43 cm", "45 cm"], "hip-girth": ["95 cm", "96 cm"] },
    });
    expect(issues).toMatchObject([
      { code: "person-rule-unusable", severity: "error", path: ["ruleLength"], received: "0.5 cm" },
    ]);
  });

  test("makes an estimate of a stated stature only where a chart sizes by it", () => {
    const dimensions = (...args: Parameters<typeof safeReadPerson>) => {
      const outcome = safeReadPerson(...args);
      return outcome.ok ? outcome.value.estimates.map(({ dimension }) => dimension) : [];
    };
    expect(dimensions(line({ stature: "183 cm" }))).toEqual(["torso-length"]);
    expect(dimensions(line({ stature: "183 cm" }), { estimateStature: true })).toEqual([
      "torso-length",
      "stature",
    ]);
  });

  test("a stature that cannot be read is an error", () => {
    const outcome = safeReadPerson(line({ cut: "men", stature: "183" }));
    expect(outcome.issues.map(({ code, path }) => [code, path])).toEqual([["length-no-unit", ["stature"]]]);
  });

  test("two heights stand in for a torso length that was not read, with their warning", () => {
    const outcome = safeReadPerson({
      readings: { "cervicale-height": ["150 cm", "150.2 cm"], "iliac-crest-height": ["105 cm", "105.2 cm"] },
    });
    const torso = unwrap(outcome).estimates.find(({ dimension }) => dimension === "torso-length");
    // 1501 mm - 1051 mm, the means by hand.
    expect(torso?.mm).toBe(450);
    expect(outcome.issues.map(({ code }) => code)).toContain("torso-length-straight");
  });

  test("two heights the wrong way round are an error", () => {
    const { issues } = safeReadPerson({
      readings: { "cervicale-height": ["105 cm"], "iliac-crest-height": ["150 cm"] },
    });
    expect(issues).toContainEqual(
      expect.objectContaining({ code: "torso-heights-reversed", severity: "error" }),
    );
  });
});
