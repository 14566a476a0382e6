import { parseChart, type SizeChart } from "@tapewise/charts";
import { describe, expect, test } from "vitest";
import { answerPerson } from "../../../packages/tapewise/src/person/answer-person.ts";

const plain = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Plain" });
const long = parseChart("size,torso-length (cm)\nL,50-56\n", { chart: "Plain" });
const belts = parseChart("size,hip-belt-girth (cm)\nS,70-90\n", { chart: "Belts" });
const answer = (value: unknown, charts: readonly SizeChart[]) => {
  const outcome = answerPerson(value, charts);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.issues));
  return outcome.value;
};
const person = { readings: { "torso-length": ["45 cm", "45.2 cm"] } };

describe("answerPerson", () => {
  test("tells packs of one name apart by their index, the same chart twice as well", () => {
    const { packs } = answer(person, [long, plain, plain]);
    expect(packs.map(({ index, recommendation }) => [index, recommendation.pick])).toEqual([
      [1, "M"],
      [2, "M"],
      [0, "L"],
    ]);
  });

  test("a chart that cannot be judged is a warning beside one that can, and an error alone", () => {
    const severities = (charts: readonly SizeChart[]) =>
      answer(person, charts).issues.map(({ code, severity }) => [code, severity]);
    expect(severities([belts, plain])).toEqual([["chart-not-judged", "warning"]]);
    expect(severities([belts])).toEqual([["chart-not-judged", "error"]]);
  });

  test("answers nobody's question where there are no charts", () => {
    expect(answer(person, [])).toMatchObject({ packs: [], issues: [] });
  });

  test("a stature is enough for a chart that sizes by it, and for no other", () => {
    const heights = parseChart("size,stature (cm)\nS,150-170\nL,168-190\n", { chart: "Heights" });
    expect(answer({ stature: "180 cm" }, [heights]).packs[0]?.recommendation.pick).toBe("L");
    const outcome = answerPerson({ cut: "women", stature: "171 cm" }, [plain]);
    expect([outcome.ok, outcome.ok || outcome.issues.map(({ code }) => code)]).toEqual([
      false,
      ["person-readings-missing"],
    ]);
  });
});
