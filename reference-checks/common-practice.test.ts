// What the trade does, without a publication behind it: common practice, no source. Each row says so in the table.
import { recommend } from "@tapewise/fit";
import { dimension, readingPractice } from "@tapewise/landmarks";
import { errorDefaults, parseEstimate, runningMean } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { parseLength } from "@tapewise/units";
import { expect, test } from "vitest";
import { chartOf, sizeOf, sureEstimate, torsoChart } from "../tests/fit/cases.ts";
import { type Against, against } from "./table/against.ts";

const practice = (of: string, source: string, why: string): Against =>
  against({ of, source, origin: "common practice, no source", why });

test("torso length goes from C7 to the crest line, along the back", () => {
  const { landmarks } = dimension("torso-length");
  practice(
    "landmarks.dimension",
    "a torso is read from C7 down to the line between the iliac crests",
    "names",
  ).same([landmarks.at(0), landmarks.at(-1)], ["cervicale", "crest-line-at-spine"], 2);
});

test("three readings, and their mean", () => {
  expect(readingPractice.find(({ code }) => code === "three-or-more")?.text).toContain("three readings");
  const readings = ["43.2 cm", "44 cm", "43.6 cm"];
  // (432 + 440 + 436) / 3 = 436
  const source = "three readings are taken, and their mean counts";
  const { mm } = parseEstimate({
    dimension: "torso-length",
    readings: readings.map((text) => parseLength(text)),
  });
  practice("measurement.parseEstimate", source, "a mean of whole millimetres").same(mm, 436);
  practice("measurement.runningMean", source, "a mean of whole millimetres").same(
    runningMean([432, 440, 436]).at(-1)?.meanMm,
    436,
  );
});

test("two readings on oneself differ by a centimetre or more, a helper's by less", () => {
  // The root mean square difference of two readings, each with the landmarks found afresh, is √2 √(handling² + finding²):
  // √2 · √(36 + 25) = 11.05 mm by oneself, √2 · √(16 + 9) = 7.07 mm by a helper.
  const hands = errorDefaults.hands["length along the body"];
  const difference = (by: "self" | "helper"): number =>
    Math.SQRT2 * Math.hypot(hands[by].handlingMm, hands[by].findingMm);
  practice(
    "measurement.anticipateError",
    "readings on oneself differ by a centimetre or more, those of a helper by less",
    "an order of size",
  ).same([difference("self") >= 10, difference("helper") < 10], [true, true], 2);
});

test("a broad chest takes the longer harness where two fit", () => {
  const chart = torsoChart({ S: [380, 440], M: [420, 480] });
  const pick = (build: readonly ("large-chest" | "broad-shoulders")[]): string => {
    const person = { estimates: [sureEstimate("torso-length", 429, 1)], build };
    return unwrap(recommend(person, chart, { unit: "cm" })).pick;
  };
  practice("fit.recommend", "in an overlap a broad chest takes the longer harness", "names").same(
    [pick([]), pick(["large-chest"]), pick(["broad-shoulders"])],
    ["S", "M", "M"],
    3,
  );
});

test("the hip belt decides where the torso does not", () => {
  const chart = chartOf([
    sizeOf("S", { "torso-length": [380, 440], "hip-belt-girth": [700, 850] }),
    sizeOf("M", { "torso-length": [420, 480], "hip-belt-girth": [830, 980] }),
  ]);
  const pick = (girthMm: number): string => {
    const estimates = [sureEstimate("torso-length", 430, 1), sureEstimate("hip-belt-girth", girthMm, 3)];
    return unwrap(recommend({ estimates }, chart, { unit: "cm" })).pick;
  };
  practice("fit.recommend", "the hip belt decides where the torso does not", "names").same(
    [pick(780), pick(900)],
    ["S", "M"],
    2,
  );
});
