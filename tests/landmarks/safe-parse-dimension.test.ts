import { parseDimension, safeParseDimension } from "@tapewise/landmarks";
import { IssuesError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

describe("safeParseDimension", () => {
  test("returns the id of a known name, without issues", () => {
    expect(safeParseDimension("Hip-Belt")).toEqual({ ok: true, value: "hip-belt-girth", issues: [] });
  });

  test("reports an ambiguous name with what it may mean", () => {
    const { ok, issues } = safeParseDimension("Hips");
    expect(ok).toBe(false);
    expect(issues).toHaveLength(1);
    expect(issues[0]).toMatchObject({
      code: "dimension-name-ambiguous",
      severity: "error",
      message: "“Hips” can mean more than one dimension: hip-belt-girth, hip-girth",
      received: "Hips",
      expected: "a name that says which one, such as “hip-belt girth”",
      facts: { candidates: "hip-belt-girth, hip-girth" },
    });
  });

  test("reports an unknown name with suggestions", () => {
    expect(safeParseDimension("torso lenght").issues[0]).toMatchObject({
      code: "dimension-name-unknown",
      message: "“torso lenght” names no dimension that is known here",
      expected: "the name of a dimension, such as torso-length",
    });
  });

  test("names some dimensions where none is similar", () => {
    expect(safeParseDimension("capacity").issues[0]?.expected).toBe(
      "the name of a dimension, such as torso-length, hip-belt-girth, hip-girth",
    );
  });
});

describe("parseDimension", () => {
  test("throws what safeParseDimension returns", () => {
    expect(parseDimension("seat")).toBe("hip-girth");
    try {
      parseDimension("hips");
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(IssuesError);
      expect((error as IssuesError).issues).toEqual(safeParseDimension("hips").issues);
    }
  });
});
