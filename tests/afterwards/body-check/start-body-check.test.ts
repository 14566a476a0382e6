import { bodyCheckItems, bodyCheckTexts, startBodyCheck } from "@tapewise/afterwards";
import { InvalidArgumentError } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { fixedChart, middling } from "./walk.ts";

test("a check begins with the cautions", () => {
  const started = startBodyCheck({ chart: fixedChart, size: "M", length: middling });
  expect(started.ok && [started.value.look, started.value.step]).toEqual([
    1,
    { kind: "ask", item: "cautions" },
  ]);
});

test("a size or a belt that the chart has not is an issue that names those it has", () => {
  const started = startBodyCheck({ chart: fixedChart, size: "XXL", belt: "wide", length: middling });
  expect(started.ok).toBe(false);
  expect(started.issues.map(({ code, path, facts }) => [code, path, facts.known])).toEqual([
    ["check-size-unknown", ["size"], "S, M, L"],
    ["check-size-unknown", ["belt"], "none"],
  ]);
});

test.each([
  { length: { ...middling, meanMm: Number.NaN } },
  { length: { ...middling, sdMm: -1 } },
  { length: middling, girth: { ...middling, sdMm: Number.POSITIVE_INFINITY } },
  { length: middling, chartDoubtMm: { length: -1, girth: 0 } },
  { length: middling, chartDoubtMm: { length: 0, girth: 1e300 } },
  { length: { ...middling, meanMm: -1 } },
  { length: { ...middling, meanMm: 0 } },
  { length: { ...middling, meanMm: 1e308 } },
  { length: { ...middling, meanMm: 1_000_001 } },
  { length: { ...middling, sdMm: 1e300 } },
  { length: { ...middling, sdMm: 1_000_001 } },
  { length: { ...middling, degreesOfFreedom: 0 } },
  { length: { ...middling, degreesOfFreedom: -3 } },
  { length: { ...middling, degreesOfFreedom: 1 } },
  { length: { ...middling, degreesOfFreedom: Number.NaN } },
  { length: middling, girth: { ...middling, meanMm: 0 } },
  { length: middling, girth: { ...middling, degreesOfFreedom: Number.NaN } },
])("%j is no belief", (wrong) => {
  expect(() => startBodyCheck({ chart: fixedChart, size: "M", ...wrong })).toThrow(InvalidArgumentError);
});

test("a length at either end of what is allowed is a belief, and so is none", () => {
  const lengths = [
    { meanMm: 1_000_000, sdMm: 1_000_000, degreesOfFreedom: Number.POSITIVE_INFINITY },
    { meanMm: 0.1, sdMm: 0, degreesOfFreedom: 1.5 },
  ];
  for (const length of lengths)
    expect(startBodyCheck({ chart: fixedChart, size: "M", length }).ok).toBe(true);
  expect(startBodyCheck({ chart: fixedChart, size: "M" }).ok).toBe(true);
});

test("every item and answer has its texts, every distance says that it is common practice", () => {
  for (const { id, answers, facts, basis } of bodyCheckItems) {
    expect(Object.keys(bodyCheckTexts.answers[id])).toEqual(answers.map((answer) => answer.id));
    const measured = Object.keys(facts).filter((name) => /Mm$|Degrees$|Minutes$/.test(name));
    for (const name of measured) {
      const everywhere = [
        bodyCheckTexts.look[id],
        ...Object.values(bodyCheckTexts.answers[id]).map((text) => text.answer),
      ];
      expect(everywhere.join(" ")).toContain(`{${name}}`);
    }
    if (measured.length > 0) expect(bodyCheckTexts.look[id]).toContain("common practice");
    expect(["common practice, no source", "caution"]).toContain(basis);
  }
});

test("all that is looked at and is not a caution can be answered with not being able to tell", () => {
  const looked = bodyCheckItems.filter(({ basis }) => basis !== "caution");
  expect(looked.length).toBe(7);
  for (const { answers } of looked) expect(answers.map(({ id }) => id)).toContain("cannot-tell");
});
