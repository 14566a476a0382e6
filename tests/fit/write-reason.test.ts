import { nextStepTexts, reasonTexts } from "@tapewise/fit";
import { describe, expect, test } from "vitest";
import { writeReason } from "../../packages/fit/src/write-reason.ts";

const TEXTS = { any: "{aMm}, {bProbability}, {dimension}, {other}, {count}" };
const facts = {
  aMm: 127,
  bProbability: 0.25,
  dimension: "hip-belt-girth",
  other: "hip-belt-girth",
  count: 45.5,
};

describe("a sentence", () => {
  test.each([
    ["cm" as const, "12.7 cm, 25 %, hip-belt girth, hip-belt-girth, 45.5"],
    ["in" as const, "5 in, 25 %, hip-belt girth, hip-belt-girth, 45.5"],
  ])("puts each fact as its name asks for, in %s", (unit, sentence) => {
    expect(writeReason(TEXTS, { code: "any", facts }, unit)).toEqual({ code: "any", facts, sentence });
  });

  test.each([
    [0, "cm" as const, "0.0 cm"],
    [0.49, "cm" as const, "less than 0.1 cm"],
    [0.51, "cm" as const, "0.1 cm"],
    [1.5, "cm" as const, "0.2 cm"],
    [0, "in" as const, "0 in"],
    [1.58, "in" as const, "less than 1/8 in"],
    [1.6, "in" as const, "1/8 in"],
    [444.5, "in" as const, "17 1/2 in"],
  ])("writes %d mm in %s as %s", (aMm, unit, text) => {
    expect(writeReason({ any: "{aMm}" }, { code: "any", facts: { aMm } }, unit).sentence).toBe(text);
  });

  test("says an unstated girth as people do", () => {
    const reason = { code: "any" as const, facts: { otherDimension: "unstated-hip-girth" } };
    expect(writeReason({ any: "{otherDimension}" }, reason, "cm").sentence).toBe("hip girth");
  });
});

describe("the texts", () => {
  const all = Object.entries({ ...reasonTexts, ...nextStepTexts });

  test("have one sentence or a few for each code, and no code is in both lists", () => {
    expect(all).toHaveLength(Object.keys(reasonTexts).length + Object.keys(nextStepTexts).length);
    for (const [, text] of all) expect(text).toMatch(/^[A-Z{].*\.$/);
  });

  test("name a fact as what it is", () => {
    const places = all.flatMap(([, text]) => text.match(/\{\w+\}/g) ?? []);
    for (const place of places)
      expect(place).toMatch(/^\{(\w*(Mm|Probability|[dD]imension|Litres)|[a-z]+)\}$/);
  });
});
