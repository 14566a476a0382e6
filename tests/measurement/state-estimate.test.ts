import {
  type EstimateInput,
  parseEstimate,
  type StatementOptions,
  stateEstimate,
} from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { readingsOf } from "./readings.ts";

const bias = (biasMm: number) => ({ error: { biasMm, repeatMm: 0, resolutionMm: 0 } });
const say = (texts: string, input: Partial<EstimateInput>, unit: StatementOptions["unit"]) =>
  stateEstimate(parseEstimate({ dimension: "torso-length", readings: readingsOf(texts), ...input }), {
    unit,
  });

describe("stateEstimate", () => {
  test("says value, standard uncertainty, interval, probability and factor (GUM 7.2.3)", () => {
    // 440 ± 1.96 · 10 mm
    expect(say("43 cm, 44 cm, 45 cm", bias(10), "cm")).toBe(
      "torso length 44.0 cm from 3 readings, standard uncertainty 1.0 cm; 95 % interval 42.0 cm to 46.0 cm (k = 1.96)",
    );
    // 17.3228 in, 0.3937 in, 1.95996 · 0.3937 = 0.7716
    expect(say("44 cm", bias(10), "in")).toBe(
      "torso length 17.32 in from 1 reading, standard uncertainty 0.39 in; 95 % interval 16.55 in to 18.09 in (k = 1.96)",
    );
  });

  test("says the degrees of freedom, rounded down, where they are few", () => {
    // ν = 23.505, k = 2.0662, u = 7.9997 (worked out among the tests of the estimate): 437 ± 16.53
    expect(say("430 mm, 436 mm, 445 mm", {}, "cm")).toBe(
      "torso length 43.7 cm from 3 readings, standard uncertainty 0.8 cm with 23 effective degrees of freedom; " +
        "95 % interval 42.0 cm to 45.4 cm (k = 2.07)",
    );
  });

  test("has a second decimal below a millimetre, and more where the uncertainty would read as nothing", () => {
    expect(say("44 cm", bias(0.9), "cm")).toContain("44.00 cm from 1 reading, standard uncertainty 0.09 cm;");
    expect(say("44 cm", bias(0.04), "cm")).toContain(
      "44.000 cm from 1 reading, standard uncertainty 0.004 cm;",
    );
    expect(say("44 cm", bias(0.0254), "in")).toContain(
      "17.323 in from 1 reading, standard uncertainty 0.001 in;",
    );
    expect(say("44 cm", bias(1e-12), "cm")).toContain("standard uncertainty 0.0000000 cm;");
    expect(say("44 cm", bias(0), "cm")).toContain("44.00 cm from 1 reading, standard uncertainty 0.00 cm;");
  });

  test.each([
    [0.5, "50 % interval"],
    [0.29, "29 % interval"],
    [0.9545, "95.45 % interval"],
    [0.99999, "99.999 % interval"],
  ])("says the probability %f as it is", (coverageProbability, text) => {
    expect(say("44 cm", { ...bias(1), coverageProbability }, "cm")).toContain(text);
  });

  test("writes a bound below zero with a minus sign", () => {
    expect(say("1 cm", bias(10), "cm")).toContain("interval −1.0 cm to 3.0 cm");
  });

  test("refuses a unit that is none", () => {
    expect(() => say("44 cm", bias(1), "ell" as "cm")).toThrow(InvalidArgumentError);
  });
});
