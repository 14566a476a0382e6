import { safeReadReadings } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";

const codesOf = (outcome: ReturnType<typeof safeReadReadings>) =>
  outcome.issues.map(({ code, path }) => [code, path]);

describe("safeReadReadings", () => {
  test("keeps what can be read, in order, and reports the rest by position", () => {
    const outcome = safeReadReadings("torso-length", ["43.2 cm", "long", "17 in", "", "431 mm"], {
      path: ["readings", "torso-length"],
    });
    expect(outcome.ok && outcome.value.map(({ mm }) => mm)).toEqual([432, 431.8, 431]);
    expect(codesOf(outcome)).toEqual([
      ["length-not-a-number", ["readings", "torso-length", 1]],
      ["length-empty", ["readings", "torso-length", 3]],
    ]);
  });

  test("a bare number is an issue unless the caller names the unit", () => {
    const bare = safeReadReadings("torso-length", ["43"]);
    expect(bare.ok).toBe(false);
    expect(codesOf(bare)).toEqual([["length-no-unit", [0]]]);
    const named = safeReadReadings("torso-length", ["43", "17 in"], { unit: "cm" });
    expect(named.ok && named.value.map(({ mm }) => mm)).toEqual([430, 431.8]);
  });

  test("fails with every reason when nothing can be read", () => {
    const outcome = safeReadReadings("waist-girth", ["wide", null, 12, {}]);
    expect(outcome.ok).toBe(false);
    expect(outcome.issues.map(({ path }) => path)).toEqual([[0], [1], [2], [3]]);
    expect(outcome.issues.every(({ severity }) => severity === "error")).toBe(true);
  });

  test("an empty list has no readings", () => {
    const outcome = safeReadReadings("waist-girth", [], { path: ["readings"] });
    expect(outcome.ok).toBe(false);
    expect(outcome.issues).toMatchObject([
      {
        code: "readings-missing",
        path: ["readings"],
        message: "there is no reading of the waist girth that can be used",
        expected: "at least one reading, such as “43.2 cm”",
      },
    ]);
  });

  test("a hole in a list is not passed over", () => {
    const list: unknown[] = ["43 cm"];
    list[2] = "44 cm";
    const outcome = safeReadReadings("torso-length", list);
    expect(outcome.ok && outcome.value.map(({ mm }) => mm)).toEqual([430, 440]);
    expect(codesOf(outcome)).toEqual([["length-not-text", [1]]]);
  });

  test.each([
    ["43 cm", "the readings of the torso length are 43 cm, not a list"],
    [null, "the readings of the torso length are null, not a list"],
    [undefined, "the readings of the torso length are nothing, not a list"],
    [{ 0: "43 cm", length: 1 }, "the readings of the torso length are an object, not a list"],
    [43, "the readings of the torso length are 43, not a list"],
  ])("%j is not a list", (texts, message) => {
    // Readings come from files, whose shape no compiler has seen.
    const outcome = safeReadReadings("torso-length", texts as unknown as string[], { path: ["readings"] });
    expect(outcome.ok).toBe(false);
    expect(outcome.issues).toMatchObject([{ code: "readings-not-a-list", path: ["readings"], message }]);
  });
});
