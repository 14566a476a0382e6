import { type SizeChart, safeParseChart } from "@tapewise/charts";
import { unwrap } from "@tapewise/outcome";
import { type ChoiceLine, choosePerson, type IssueLine } from "tapewise/batch";
import { batchLineSchema } from "tapewise/schema";
import { describe, expect, test } from "vitest";

const chartOf = (text: string, chart: string): SizeChart => unwrap(safeParseChart(text, { chart }));
const plain = chartOf("size,torso-length (cm)\nS,38-43\nM,42.4-50\n", "Plain");
const belts = chartOf("size,hip-belt-girth (cm)\nS,70-90\nM,88-110\n", "Belts");
const known = { biasMm: 6, repeatMm: 0, resolutionMm: 0 };

const choice = (value: unknown, charts: readonly SizeChart[] = [plain]) => {
  const answer = choosePerson(value, charts);
  if (!("choices" in answer)) throw new Error(JSON.stringify(answer.issues));
  return answer as ChoiceLine;
};
const issuesOf = (text: string, charts: readonly SizeChart[] = [plain]) => {
  const answer = choosePerson(JSON.parse(text), charts);
  expect(answer).not.toHaveProperty("choices");
  return answer as IssueLine;
};

describe("choosePerson", () => {
  /*
   * Readings of 432, 440 and 436 mm have the mean 436 mm. Their error is known to be normal with a
   * standard deviation of 6 mm, so that the body is N(436, 6²):
   *   S, up to 430 mm:   Φ((430 - 436) / 6) = Φ(-1) = 1 - 0.841344746
   *   M, from 424 mm on: 1 - Φ((424 - 436) / 6) = Φ(2) = 0.977249868
   * (printed: Abramowitz and Stegun 1964, Table 26.1; the far ends are more than 5 σ away). The expected
   * distance to S is σ (φ(1) + Φ(1)) = 6 (0.241970725 + 0.841344746) = 6.499892826 mm.
   */
  test("answers a person whose figures can be worked out by hand", () => {
    const answer = choice({
      id: "p1",
      error: known,
      readings: { "torso-length": ["43.2 cm", "44 cm", "43.6 cm"] },
    });
    expect(answer.id).toBe("p1");
    expect(answer.estimates).toEqual({ "torso-length": { mm: 436, uncertaintyMm: 6 } });
    const [only] = answer.choices;
    expect(only).toMatchObject({ chart: "Plain", verdict: "fits", pick: "M" });
    expect(only?.probability).toBeCloseTo(0.977249868, 8);
    expect(only?.sizes.map(({ size }) => size)).toEqual(["S", "M"]);
    expect(only?.sizes[0]?.probability).toBeCloseTo(0.158655254, 8);
    expect(only?.sizes[0]?.expectedMisfitMm).toBeCloseTo(6.499893, 6);
    expect(only?.reasons[0]).toBe("most-probable");
  });

  test("has exactly the fields of the contract, in its order", () => {
    const answer = choice({ id: "p1", error: known, readings: { "torso-length": ["43.6 cm", "43.6 cm"] } });
    expect(Object.keys(answer)).toEqual(["id", "estimates", "choices"]);
    expect(Object.keys(answer.choices[0] ?? {})).toEqual([
      "chart",
      "verdict",
      "pick",
      "probability",
      "sizes",
      "reasons",
    ]);
    expect(Object.keys(answer.choices[0]?.sizes[0] ?? {})).toEqual([
      "size",
      "probability",
      "expectedMisfitMm",
    ]);
  });

  test("keeps at least six digits of a probability", () => {
    const [only] = choice({ error: known, readings: { "torso-length": ["43.6 cm", "43.6 cm"] } }).choices;
    expect(String(only?.probability).length).toBeGreaterThanOrEqual("0.977250".length);
  });

  test.each(["text", 7, "", 0])("gives the id %j back", (id) => {
    expect(choice({ id, readings: { "torso-length": ["44 cm"] } }).id).toBe(id);
    expect(issuesOf(JSON.stringify({ id, readings: {} })).id).toBe(id);
  });

  test("gives null for an id that is none, or that is not there", () => {
    expect(choice({ readings: { "torso-length": ["44 cm"] } }).id).toBeNull();
    expect(issuesOf('{"id":{"a":1},"readings":{"torso-length":["44 cm"]}}').id).toBeNull();
  });

  test("warnings go along with a choice", () => {
    const { issues } = choice({ note: "tall", readings: { "torso-length": ["44 cm"] } });
    expect(issues?.map(({ code, severity }) => [code, severity])).toEqual([
      ["person-field-unknown", "warning"],
      ["reading-alone", "warning"],
    ]);
  });

  test("one bad reading among good ones keeps the line from being chosen for", () => {
    const answer = issuesOf('{"id":"p2","readings":{"torso-length":["43 cm","44"],"hip-girth":["91 cm"]}}');
    expect(answer.id).toBe("p2");
    expect(answer.issues[0]).toEqual({
      code: "length-no-unit",
      severity: "error",
      path: ["readings", "torso-length", 1],
      message: "44 has no unit",
      received: "44",
      expected: "44 cm or 44 in",
      facts: { number: "44" },
    });
  });

  test("judges the charts that can be judged, and says which cannot", () => {
    const answer = choice({ readings: { "torso-length": ["44 cm", "45 cm"] } }, [belts, plain]);
    expect(answer.choices.map(({ chart }) => chart)).toEqual(["Plain"]);
    expect(answer.issues?.map(({ code, severity, path }) => [code, severity, path])).toEqual([
      ["chart-not-judged", "warning", ["readings"]],
    ]);
  });

  test("tells the hip belt where belts are sized separately", () => {
    const egg = chartOf(
      JSON.stringify({
        chart: "Egg",
        sizes: [{ size: "M", "torso-length": "42-48 cm" }],
        belts: [
          { belt: "1", "hip-belt-girth": "70-88 cm" },
          { belt: "2", "hip-belt-girth": "88-102 cm" },
        ],
      }),
      "Egg",
    );
    const readings = { "torso-length": ["45 cm"], "hip-belt-girth": ["88.6 cm"] };
    const [only] = choice({ error: known, readings }, [egg]).choices;
    expect(only?.belt?.pick).toBe("2");
    // The girth is N(886, 6²): Φ((886 − 880) / 6) = Φ(1) = 0.841344746 (printed: Abramowitz and Stegun 1964, Table 26.1)
    expect(only?.belt?.probability).toBeCloseTo(0.841344746, 8);
    expect(only?.belt?.sizes.map(({ size }) => size)).toEqual(["1", "2"]);
    expect(only?.belt?.sizes[0]?.probability).toBeCloseTo(0.158655254, 8);
    expect(batchLineSchema.safeParse(choice({ error: known, readings }, [egg])).success).toBe(true);
  });

  test("has no choice where no chart can be judged", () => {
    expect(
      issuesOf('{"readings":{"chest-girth":["95 cm","96 cm"]}}', [belts, plain]).issues.map(
        ({ code }) => code,
      ),
    ).toEqual(["chart-not-judged", "chart-not-judged"]);
  });

  test("says once what the prior makes doubtful in every chart", () => {
    const person = { cut: "women", stature: "165 cm", readings: { "torso-length": ["52 cm", "52.5 cm"] } };
    const { issues } = choice(person, [plain, chartOf("size,torso-length (cm)\nL,46-52\n", "Long")]);
    expect(issues?.map(({ code }) => code)).toEqual(["estimate-unlikely"]);
  });

  test("has no number that JSON cannot hold, whatever the chart leaves open", () => {
    const open = chartOf("size,torso-length (cm)\nS,<43\nL,48+\n", "Open");
    const text = JSON.stringify(choosePerson({ readings: { "torso-length": ["46 cm"] } }, [open]));
    expect(text).not.toMatch(/null,"verdict|:null[,}](?!"estimates)/);
    expect(JSON.parse(text)).toEqual(choosePerson({ readings: { "torso-length": ["46 cm"] } }, [open]));
  });

  test("uses a stated stature for charts that size by it", () => {
    const heights = chartOf("size,stature (cm)\nS,150-170\nL,168-190\n", "Heights");
    const answer = choice({ stature: "180 cm", readings: { "torso-length": ["46 cm", "46 cm"] } }, [heights]);
    expect(answer.choices[0]?.pick).toBe("L");
    expect(answer.estimates.stature?.mm).toBe(1800);
  });
});
