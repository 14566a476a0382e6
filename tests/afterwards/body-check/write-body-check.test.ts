import { bodyCheckItems, bodyCheckTexts, writeBodyCheck } from "@tapewise/afterwards";
import { expect, test } from "vitest";

test.each(["cm", "in"] as const)(
  "every question and answer is written without an empty place, in %s",
  (unit) => {
    for (const { id, answers } of bodyCheckItems) {
      const { sentences, choices } = writeBodyCheck({ kind: "ask", item: id }, { unit });
      expect(choices.map((choice) => choice.id)).toEqual(answers.map((answer) => answer.id));
      const words = [...sentences, ...choices.flatMap(({ answer, tells }) => [answer, tells])];
      for (const text of words) expect(text).toMatch(/^[A-Z].*[.:?]$/);
      expect(words.join(" ")).not.toMatch(/[{}]/);
    }
  },
);

test("lengths are in the reader's unit", () => {
  const ask = { kind: "ask", item: "back-panel" } as const;
  expect(writeBodyCheck(ask, { unit: "cm" }).sentences[0]).toContain("2 cm to 6 cm");
  // 20 and 60 mm are 0.79 and 2.36 in: by halves 1 and 2 1/2.
  expect(writeBodyCheck(ask, { unit: "in" }).sentences[0]).toContain("1 in to 2 1/2 in");
});

test("a contradiction is said before the item is asked again", () => {
  const step = { kind: "ask", item: "back-panel", because: "harness-long-and-short" } as const;
  const [why] = writeBodyCheck(step, { unit: "cm" }).sentences;
  expect(why).toBe(bodyCheckTexts.contradictions["harness-long-and-short"]);
});

test("an exchange names both sizes and both chances", () => {
  const exchange = {
    kind: "exchange",
    part: "harness",
    reason: "harness-too-long",
    from: "M",
    to: "S",
    probability: 0.714,
    fromProbability: 0.2,
    sizes: [],
  } as const;
  expect(writeBodyCheck(exchange, { unit: "cm" }).sentences).toEqual([
    "Exchange M for S: it fits with 71 %, and M with 20 %.",
  ]);
  expect(writeBodyCheck({ ...exchange, part: "belt" }, { unit: "cm" }).sentences[0]).toContain("hip belt");
});

test("pain, injury, pregnancy and children always end with a professional", () => {
  for (const reason of ["pain-or-numbness", "injury-or-surgery", "pregnancy", "growing-child"] as const) {
    expect(writeBodyCheck({ kind: "see-fitter", reason }, { unit: "cm" }).sentences.join(" ")).toContain(
      "professional fitter",
    );
  }
});

test("a translation replaces the texts", () => {
  const texts = { ...bodyCheckTexts, ends: { ...bodyCheckTexts.ends, sitsRight: "{size} passt." } };
  const step = { kind: "sits-right", size: "M" } as const;
  expect(writeBodyCheck(step, { unit: "cm", texts }).sentences).toEqual(["M passt."]);
});
