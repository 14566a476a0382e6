import { assumeConditions, type Conditions } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

describe("assumeConditions", () => {
  test("assumes and names what nobody stated", () => {
    expect(assumeConditions({}, 300)).toEqual({
      tool: "tape",
      measuredBy: "self",
      landmarksFoundAfresh: false,
      ruleLengthMm: 300,
      assumed: ["tool", "measured-by", "landmarks-found-afresh"],
    });
  });

  test("keeps what is stated, a stated no included", () => {
    const stated = {
      tool: "short-rule",
      measuredBy: "helper",
      landmarksFoundAfresh: false,
      ruleLengthMm: 150,
    } as const;
    expect(assumeConditions(stated, 300)).toEqual({ ...stated, assumed: [] });
  });

  test.each<[unknown, number, string]>([
    [{ tool: "laser" }, 300, "tool must be tape, cord-and-ruler or short-rule, but received laser"],
    [{ measuredBy: "cat" }, 300, "measuredBy must be self or helper, but received cat"],
    [{ landmarksFoundAfresh: "yes" }, 300, "landmarksFoundAfresh must be true or false, but received yes"],
    [
      { ruleLengthMm: 9 },
      300,
      "ruleLengthMm must be a finite number of millimetres, 10 or more, but received 9",
    ],
    [{}, 0, "ruleLengthMm must be"],
    [{}, Number.NaN, "ruleLengthMm must be"],
    [{}, Number.POSITIVE_INFINITY, "ruleLengthMm must be"],
    [null, 300, "conditions must be"],
    ["tape", 300, "conditions must be"],
  ])("refuses %j with a rule of %f mm", (conditions, rule, message) => {
    expect(() => assumeConditions(conditions as Conditions, rule)).toThrow(InvalidArgumentError);
    expect(() => assumeConditions(conditions as Conditions, rule)).toThrow(message);
  });
});
