import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { folderWith, PLAIN_CHART, runCommand } from "../../run-command.ts";

const at = folderWith({
  "plain.csv": PLAIN_CHART,
  "mixed.csv": "size,torso (in),capacity (L)\nS/M,<17,40\nL,18,45\nXL,20,50\n",
  "belts.json": JSON.stringify({
    chart: "Belts",
    swappable: ["hip-belt"],
    sizes: [
      { size: "S", "torso-length": { to: "43 cm" } },
      { size: "L", "torso-length": { from: "43 cm" } },
    ],
    belts: [{ belt: "1", "hip-belt-girth": { from: "70 cm", to: "100 cm" } }],
  }),
});

const compile = async (what: string) => {
  const { stdout } = await runCommand(["schema", what]);
  return new Ajv2020({ strict: false }).compile(JSON.parse(stdout));
};

describe("tapewise schema", () => {
  test.each(["chart", "person", "choice", "outcome"])(
    "%s is a JSON Schema of draft 2020-12",
    async (what) => {
      const { status, stdout } = await runCommand(["schema", what]);
      expect(status).toBe(0);
      expect(JSON.parse(stdout)).toMatchObject({
        $schema: "https://json-schema.org/draft/2020-12/schema",
        $id: `urn:tapewise:${what}`,
      });
    },
  );

  test("charts that audit prints are charts of the schema", async () => {
    const validate = await compile("chart");
    const { stdout } = await runCommand(["audit", "--json", at("plain.csv"), at("mixed.csv")]);
    for (const { chart } of JSON.parse(stdout)) {
      expect(validate(chart), JSON.stringify(validate.errors)).toBe(true);
    }
    expect(validate({ chart: "x", sizes: [{ size: "S", "torso-length": 43 }] })).toBe(false);
  });

  test("answers of choose are choices of the schema", async () => {
    const validate = await compile("choice");
    const good = await runCommand([
      "choose",
      "--torso-length",
      "44 cm",
      "--hip-belt-girth",
      "90 cm",
      "--json",
      "--chart",
      at("plain.csv"),
      at("belts.json"),
    ]);
    const answer = JSON.parse(good.stdout);
    expect(validate(answer), JSON.stringify(validate.errors)).toBe(true);
    expect(answer.choices.some((choice: object) => "belt" in choice)).toBe(true);
    const bad = await runCommand(["choose", "--torso-length", "44", "--json", "--chart", at("plain.csv")]);
    expect(validate(JSON.parse(bad.stdout)), JSON.stringify(validate.errors)).toBe(true);
    expect(validate({ ...answer, estimates: { "arm-length": { mm: 1, uncertaintyMm: 1 } } })).toBe(false);
  });
});
