import { dimensionIds } from "@tapewise/landmarks";
import { Ajv2020 } from "ajv/dist/2020.js";
import {
  chartJsonSchema,
  choiceJsonSchema,
  outcomeJsonSchema,
  personJsonSchema,
  personSchema,
} from "tapewise/schema";
import { describe, expect, test } from "vitest";

const validator = (schema: object) => new Ajv2020({ strict: true, strictTypes: false }).compile(schema);

describe.each([
  ["chart", chartJsonSchema],
  ["person", personJsonSchema],
  ["choice", choiceJsonSchema],
  ["outcome", outcomeJsonSchema],
])("the schema of a %s", (what, make) => {
  test("can be compiled, names itself and its draft", () => {
    const schema = make();
    expect(() => validator(schema)).not.toThrow();
    expect(Object.keys(schema).slice(0, 2)).toEqual(["$schema", "$id"]);
    expect(schema).toMatchObject({
      $schema: "https://json-schema.org/draft/2020-12/schema",
      $id: `urn:tapewise:${what}`,
    });
  });

  test("is made anew for each caller", () => {
    expect(make()).not.toBe(make());
    expect(make()).toEqual(make());
  });
});

describe("the schema of a person", () => {
  const readings = { "torso-length": ["43.2 cm"] };
  const validate = validator(personJsonSchema());
  const cases: readonly (readonly [unknown, boolean])[] = [
    // The line of the published contract.
    [
      {
        id: "p1",
        cut: "women",
        stature: "171 cm",
        measuredBy: "self",
        tool: "tape",
        readings: { "torso-length": ["43.2 cm", "44 cm", "43.6 cm"], "hip-belt-girth": ["91 cm"] },
      },
      true,
    ],
    [{ error: { biasMm: 6, repeatMm: 8, resolutionMm: 5 }, readings }, true],
    ...dimensionIds.map((id) => [{ readings: { [id]: ["1 m"] } }, true] as const),
    [{ cut: null, readings: { "hip-girth": null } }, true],
    [{ anything: 1, readings }, true],
    [{}, false],
    [{ readings: [] }, false],
    [{ readings: { "arm-length": ["1 m"] } }, false],
    [{ readings: { "torso-length": "43 cm" } }, false],
    [{ readings: { "torso-length": Array(201).fill("43 cm") } }, false],
    [{ cut: "unisex", readings }, false],
    [{ error: { biasMm: -1, repeatMm: 8, resolutionMm: 5 }, readings }, false],
    [{ error: { biasMm: 1, repeatMm: 8 }, readings }, false],
    [{ id: [], readings }, false],
  ];

  test.each(cases)("%j: %s", (person, isPerson) => {
    expect(validate(person)).toBe(isPerson);
    expect(personSchema.safeParse(person).success).toBe(isPerson);
  });
});

describe("the schema of a choice", () => {
  const validate = validator(choiceJsonSchema());
  const choice = {
    chart: "…",
    verdict: "two-sizes-fit",
    pick: "M",
    probability: 0.93,
    sizes: [{ size: "S", probability: 0.41, expectedMisfitMm: 3.2 }],
    reasons: ["most-probable"],
  };
  const line = {
    id: "p1",
    estimates: { "torso-length": { mm: 436, uncertaintyMm: 7.1 } },
    choices: [choice],
  };
  const issue = {
    code: "length-no-unit",
    severity: "error",
    path: ["readings", "torso-length", 1],
    message: "44 has no unit",
    received: "44",
    expected: "44 cm or 44 in",
  };

  test.each<[string, unknown, boolean]>([
    ["a choice", line, true],
    ["a choice with questions", { ...line, issues: [{ ...issue, severity: "warning" }] }, true],
    ["an issue line", { id: null, issues: [issue] }, true],
    ["an issue line without issues", { id: null, issues: [] }, false],
    ["a choice without an id", { estimates: {}, choices: [] }, false],
    ["a probability above one", { ...line, choices: [{ ...choice, probability: 1.01 }] }, false],
    ["a probability that is none", { ...line, choices: [{ ...choice, probability: null }] }, false],
    ["a verdict that nobody gives", { ...line, choices: [{ ...choice, verdict: "perfect" }] }, false],
    ["a reason without a code", { ...line, choices: [{ ...choice, reasons: ["Because."] }] }, false],
    ["more than the contract has", { ...line, more: 1 }, false],
  ])("%s", (_what, value, isLine) => {
    expect(validate(value), JSON.stringify(validate.errors)).toBe(isLine);
  });
});
