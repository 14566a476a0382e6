import { readFileSync } from "node:fs";
import { chartDimensions, chartToData, cuts } from "@tapewise/charts";
import { chartJsonSchema, chartSchema } from "@tapewise/charts/schema";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { read } from "./charts-in-tests.ts";

const schema = chartJsonSchema();
const validate = new Ajv2020({ strict: true }).compile(schema);

test("names its draft, itself and what is not in it", () => {
  expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
  expect(schema.$id).toBe("urn:tapewise:chart");
  expect(schema.description).toContain("not in this schema");
});

test("its own example is valid, and can be read", () => {
  const examples = schema.examples as readonly unknown[];
  expect(examples.length).toBeGreaterThan(0);
  for (const example of examples) {
    expect(validate(example), JSON.stringify(validate.errors)).toBe(true);
    expect(read(JSON.stringify(example)).issues).toEqual([]);
  }
});

test("the README's example is valid, and can be read", () => {
  const readme = readFileSync(new URL("../../packages/charts/README.md", import.meta.url), "utf8");
  const text = /```json\n(.*?)```/s.exec(readme)?.[1] ?? "";
  expect(validate(JSON.parse(text)), JSON.stringify(validate.errors)).toBe(true);
  expect(read(text).issues).toEqual([]);
});

test("knows every dimension and every cut", () => {
  const sizes = chartDimensions.map((dimension) => ({ size: dimension, [dimension]: "30-40 in" }));
  for (const cut of cuts) expect(validate({ chart: "c", cut, sizes })).toBe(true);
});

describe("agrees with the zod schema", () => {
  const size = { size: "M", "torso-length": "43-48 cm" };
  test.each([
    [chartToData(read("size,torso (cm)\nS,38-43\nM,46").chart), true],
    [{ chart: "c", sizes: [size], belts: [] }, true],
    [{ chart: "c", sizes: [] }, false],
    [{ chart: "c", sizes: [{ ...size, hip: "1" }] }, false],
    [{ chart: "c", sizes: [{ ...size, massGrams: 0 }] }, false],
    [{ chart: " ", sizes: [size] }, false],
    [[], false],
  ])("%j", (data, valid) => {
    expect(validate(data)).toBe(valid);
    expect(chartSchema.safeParse(data).success).toBe(valid);
  });
});
