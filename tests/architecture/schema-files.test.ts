import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { charts } from "tapewise";
import { chartSchema, personSchema } from "tapewise/schema";
import { describe, expect, test } from "vitest";
import { schemaFiles } from "../../scripts/schema-files.ts";
import { readWorkspace, root } from "./workspace.ts";

const read = (path: string): unknown => JSON.parse(readFileSync(join(root, path), "utf8"));
const files = [...schemaFiles()];

describe.each(files)("%s", (path, schema) => {
  test('is what the code makes (else: "npm run write:schemas")', () => {
    expect(read(path)).toEqual(JSON.parse(JSON.stringify(schema)));
  });

  test("names itself and its draft", () => {
    const what = /([a-z]+)\.schema\.json$/.exec(path)?.[1];
    expect(read(path)).toMatchObject({
      $schema: "https://json-schema.org/draft/2020-12/schema",
      $id: `urn:tapewise:${what}`,
    });
  });
});

test("every schema file is made from code, and is an entry point of its package", () => {
  const published = readWorkspace().flatMap(({ folder, manifest, files: own }) => {
    const targets = Object.values(manifest.exports ?? {});
    return own
      .filter((file) => file.path.endsWith(".schema.json"))
      .map((file) => ({ path: `${folder}/${file.path}`, isExported: targets.includes(`./${file.path}`) }));
  });
  expect(published.filter(({ isExported }) => !isExported)).toEqual([]);
  expect(published.map(({ path }) => path).sort()).toEqual(files.map(([path]) => path).sort());
});

describe("the demo passes the schema files and zod", () => {
  const demo = "packages/tapewise/demo";
  const compile = (path: string) => new Ajv2020({ strictTypes: false }).compile(read(path) as object);
  const chart = compile("packages/charts/src/chart.schema.json");
  const person = compile("packages/tapewise/src/schema/person.schema.json");

  test.each(readdirSync(join(root, demo, "charts")))("%s", (name) => {
    const text = readFileSync(join(root, demo, "charts", name), "utf8");
    const data: unknown = name.endsWith(".json")
      ? JSON.parse(text)
      : JSON.parse(JSON.stringify(charts.chartToData(charts.parseChart(text, { chart: name }))));
    expect(chart(data), JSON.stringify(chart.errors)).toBe(true);
    expect(chartSchema.safeParse(data).success).toBe(true);
  });

  test("the crew", () => {
    const lines = readFileSync(join(root, demo, "crew.ndjson"), "utf8")
      .trim()
      .split("\n");
    for (const line of lines) {
      expect(person(JSON.parse(line)), line).toBe(true);
      expect(personSchema.safeParse(JSON.parse(line)).success).toBe(true);
    }
  });
});
