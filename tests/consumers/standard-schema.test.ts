import { chartSchema, outcomeSchema, personSchema } from "tapewise/schema";
import { describe, expect, expectTypeOf, test } from "vitest";

/**
 * What any library that accepts validators expects of one: the interface of Standard Schema 1 (standardschema.dev),
 * written out here as its users copy it, so that nothing but the specification joins the two.
 */
interface StandardSchema<Output = unknown> {
  readonly "~standard": {
    readonly version: 1;
    readonly vendor: string;
    readonly validate: (value: unknown) => Result<Output> | Promise<Result<Output>>;
    readonly types?: { readonly input: unknown; readonly output: Output } | undefined;
  };
}

type Result<Output> =
  | { readonly value: Output; readonly issues?: undefined }
  | {
      readonly issues: readonly {
        readonly message: string;
        readonly path?: readonly (PropertyKey | { readonly key: PropertyKey })[] | undefined;
      }[];
    };

/** A form, an endpoint, a queue: takes any schema and gives the value or the places where it is wrong. */
async function accept<Output>(schema: StandardSchema<Output>, value: unknown): Promise<Output | string> {
  const result = await schema["~standard"].validate(value);
  if (result.issues === undefined) return result.value;
  const places = result.issues.map(({ path = [] }) =>
    path.map((part) => String(typeof part === "object" ? part.key : part)).join("."),
  );
  return `wrong at ${places.join(", ")}`;
}

const chart = { chart: "Crew pack", sizes: [{ size: "M", "torso-length": "43-48 cm" }] };
const person = { id: "p1", readings: { "torso-length": ["45 cm"] } };
const row = { v: 1, at: "2026-05-03", product: { chart: "Crew pack" }, size: "M", outcome: "kept" };

describe("the schemas are accepted where a validator is expected", () => {
  test.each([
    ["chart", chartSchema, chart, { ...chart, sizes: [{ size: 5 }] }, "wrong at sizes.0.size"],
    ["person", personSchema, person, { ...person, tool: "string" }, "wrong at tool"],
    ["outcome", outcomeSchema, row, { ...row, size: "" }, "wrong at size"],
  ] as const)("%s", async (_, schema, right, wrong, complaint) => {
    expect(schema["~standard"].version).toBe(1);
    expect(schema["~standard"].vendor).toBe("zod");
    expect(await accept(schema, right)).toEqual(right);
    expect(await accept(schema, wrong)).toBe(complaint);
  });

  test("the type of what comes out is known", async () => {
    const accepted = await accept(chartSchema, chart);
    if (typeof accepted === "string") throw new Error(accepted);
    expectTypeOf(accepted.chart).toEqualTypeOf<string>();
    expect(accepted.chart).toBe("Crew pack");
  });
});
