import { createEvidence, priorAfter, recommendWithEvidence } from "@tapewise/afterwards";
import { recommend } from "@tapewise/fit";
import { parseEstimate } from "@tapewise/measurement";
import { parseLength } from "@tapewise/units";
import { expect, test } from "vitest";
import { add, gingham, ofM } from "./gingham.ts";

const torso = parseEstimate({
  dimension: "torso-length",
  readings: [parseLength("436 mm")],
  error: { biasMm: 6, repeatMm: 0, resolutionMm: 0 },
});
const person = { estimates: [torso] };

test("without evidence it is what the printed chart gives", () => {
  const plain = recommend(person, gingham, { unit: "cm" });
  const outcome = recommendWithEvidence(person, gingham, createEvidence(), { unit: "cm", doubt: "include" });
  expect(outcome.ok && outcome.value.corrected).toEqual(plain.ok && plain.value);
  expect(outcome.ok && outcome.value.isChanged).toBe(false);
});

test("with it the pick changes, and the doubt makes it humbler", () => {
  const evidence = createEvidence();
  add(evidence, { ...ofM, side: "below", meanMm: 443 }, 25);
  const choose = (doubt: "include" | "leave-out") => {
    const outcome = recommendWithEvidence(person, gingham, evidence, { unit: "cm", doubt });
    if (!outcome.ok) throw new Error(outcome.issues[0].message);
    return outcome.value;
  };
  const [plain, humble] = [choose("leave-out"), choose("include")];
  expect([plain.printed.pick, plain.corrected.pick, plain.isChanged]).toEqual(["M", "S", true]);
  expect(humble.corrected.pick).toBe("S");
  expect(humble.corrected.probability).toBeLessThan(plain.corrected.probability);
});

test("what keeps a choice from being made is told as it is", () => {
  const outcome = recommendWithEvidence({ estimates: [] }, gingham, createEvidence(), {
    unit: "cm",
    doubt: "include",
  });
  expect(outcome.issues.map(({ code }) => code)).toEqual(["chart-not-judged"]);
});

test("the doubt about a chart is none about a reading: nothing more is questioned, and what was read is shown", () => {
  const evidence = createEvidence();
  add(evidence, { ...ofM, side: "below", meanMm: 443 }, 25);
  // Torso lengths are questioned from 61 cm on. Seen from the chart, the doubt takes this one beyond that end.
  const estimates = [
    parseEstimate({
      dimension: "torso-length",
      readings: [parseLength("609.9 mm")],
      error: { biasMm: 6, repeatMm: 0, resolutionMm: 0 },
    }),
  ];
  const prior = priorAfter("torso-length", {
    meanMm: 550,
    sdMm: 30,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  });
  const outcome = recommendWithEvidence({ estimates, prior }, gingham, evidence, {
    unit: "cm",
    doubt: "include",
  });
  expect(outcome.issues).toEqual([]);
  expect(outcome.ok && outcome.value.corrected.estimates).toEqual(estimates);
  expect(outcome.ok && outcome.value.corrected.questions).toEqual([]);
});

test("what both choices question in the same place is told once", () => {
  const evidence = createEvidence();
  add(evidence, { ...ofM, side: "below", meanMm: 443 }, 25);
  const prior = priorAfter("torso-length", {
    meanMm: 550,
    sdMm: 15,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  });
  const outcome = recommendWithEvidence({ ...person, prior }, gingham, evidence, {
    unit: "cm",
    doubt: "include",
  });
  expect(outcome.issues.map(({ code }) => code)).toEqual(["estimate-unlikely"]);
});
