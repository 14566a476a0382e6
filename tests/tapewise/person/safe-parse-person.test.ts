import { safeParsePerson } from "tapewise/batch";
import { describe, expect, test } from "vitest";

const readings = { "torso-length": ["43 cm"] };
const parse = (value: unknown) => {
  const outcome = safeParsePerson(value);
  return outcome.issues.map((issue) => [issue.code, issue.path, issue.severity]);
};

describe("safeParsePerson", () => {
  test("keeps every field that is given", () => {
    const person = {
      id: 7,
      cut: "men",
      stature: "183 cm",
      measuredBy: "self",
      tool: "short-rule",
      ruleLength: "30 cm",
      landmarksFoundAfresh: true,
      unit: "cm",
      error: { biasMm: 6, repeatMm: 8, resolutionMm: 5 },
      build: ["large-chest"],
      firstPack: false,
      readings: { "torso-length": [43.2, "44 cm"], stature: ["183 cm"] },
    };
    expect(safeParsePerson(person)).toEqual({ ok: true, value: person, issues: [] });
  });

  test("takes null for a field that is left out", () => {
    const outcome = safeParsePerson({ id: null, cut: null, readings: { ...readings, "hip-girth": null } });
    expect(outcome).toEqual({ ok: true, value: { readings }, issues: [] });
  });

  test.each([null, [], "text", 5, undefined])("refuses %j as a person", (value) => {
    expect(parse(value)).toEqual([["person-not-an-object", [], "error"]]);
  });

  test("a misspelt field is an error, for it would be lost silently", () => {
    const outcome = safeParsePerson({ measuredby: "self", readings });
    expect(outcome.ok).toBe(false);
    expect(outcome.issues[0]?.message).toBe(
      "“measuredby” is no field of a person; did you mean “measuredBy”?",
    );
  });

  test("any other field is let through with a warning", () => {
    const outcome = safeParsePerson({ name: "Wren", readings });
    expect(outcome.ok).toBe(true);
    expect(parse({ name: "Wren", readings })).toEqual([["person-field-unknown", ["name"], "warning"]]);
  });

  test.each([
    [{ cut: "woman", readings }, "person-choice-unknown", ["cut"], "; did you mean “women”?"],
    [{ cut: 3, readings }, "person-choice-unknown", ["cut"], ""],
    [{ tool: "taep", readings }, "person-choice-unknown", ["tool"], "; did you mean “tape”?"],
    [{ unit: "furlong", readings }, "person-choice-unknown", ["unit"], ""],
    [
      { build: ["broad-shoulder"], readings },
      "person-choice-unknown",
      ["build", 0],
      "; did you mean “broad-shoulders”?",
    ],
  ])("%j: a word that is not known", (person, code, path, hint) => {
    const [issue] = safeParsePerson(person).issues;
    expect(issue?.code).toBe(code);
    expect(issue?.path).toEqual(path);
    expect(issue?.facts.hint).toBe(hint);
  });

  test.each([
    [{ id: {}, readings }, ["id"]],
    [{ id: 1.5, readings }, ["id"]],
    [{ stature: true, readings }, ["stature"]],
    [{ firstPack: "yes", readings }, ["firstPack"]],
    [{ build: "broad-shoulders", readings }, ["build"]],
    [{ error: { biasMm: -1, repeatMm: 0, resolutionMm: 0 }, readings }, ["error", "biasMm"]],
    [{ readings: [] }, ["readings"]],
    [{ readings: "43 cm" }, ["readings"]],
    [{ readings: { "torso-length": "43 cm" } }, ["readings", "torso-length"]],
    [{ readings: { "torso-length": [{}] } }, ["readings", "torso-length", 0]],
    [{ readings: { "torso-length": ["43 cm", null] } }, ["readings", "torso-length", 1]],
  ])("%j: a value of the wrong kind", (person, path) => {
    expect(parse(person)).toContainEqual(["person-field-invalid", path, "error"]);
  });

  test.each([[{}], [{ readings: {} }], [{ readings: null }], [{ readings: { "torso-length": [] } }]])(
    "%j has no readings",
    (person) => {
      expect(parse(person)).toEqual([["person-readings-missing", ["readings"], "error"]]);
    },
  );

  test.each([
    ["torso", "; did you mean “torso-length”?"],
    ["torso-lenght", "; did you mean “torso-length”?"],
    ["hip", "; did you mean “hip-belt-girth” or “hip-girth”?"],
    ["xyzzy", ""],
  ])("the dimension %j is not known", (name, hint) => {
    const [issue] = safeParsePerson({ readings: { [name]: ["43 cm"] } }).issues;
    expect(issue?.code).toBe("person-dimension-unknown");
    expect(issue?.path).toEqual(["readings", name]);
    expect(issue?.facts.hint).toBe(hint);
  });

  test("a part that is not there is called missing", () => {
    const [issue] = safeParsePerson({ error: { biasMm: 1, repeatMm: 0 }, readings }).issues;
    expect(issue).toMatchObject({ code: "person-field-missing", path: ["error", "resolutionMm"] });
    expect(issue?.message).toBe("“error.resolutionMm” is missing");
  });

  test("an id that a number cannot hold is refused, with the way out", () => {
    // 2^53 + 2: the next whole number that JSON.parse gives back, but not the only one that it gives it for.
    const [issue] = safeParsePerson(
      JSON.parse('{"id":9007199254740994,"readings":{"torso-length":["43 cm"]}}'),
    ).issues;
    expect(issue).toMatchObject({ code: "person-field-invalid", path: ["id"] });
    expect(issue?.expected).toContain("in quotation marks");
  });

  test("ten thousand readings of a dimension are refused before they are read", () => {
    const many = { readings: { "torso-length": Array.from({ length: 10_000 }, () => "43 cm") } };
    const [issue] = safeParsePerson(many).issues;
    expect(issue?.code).toBe("person-readings-too-many");
    expect(issue?.message).toBe("there are 10000 readings of the torso length");
  });

  test("names that objects inherit are names like any other", () => {
    const person: unknown = JSON.parse('{"__proto__":{"cut":"men"},"readings":{"torso-length":["43 cm"]}}');
    const outcome = safeParsePerson(person);
    expect(outcome.ok && outcome.value.cut).toBeUndefined();
    expect(outcome.issues.map((issue) => [issue.code, issue.path])).toEqual([
      ["person-field-unknown", ["__proto__"]],
    ]);
    expect(parse(JSON.parse('{"readings":{"torso-length":["43 cm"],"__proto__":["44 cm"]}}'))).toEqual([
      ["person-dimension-unknown", ["readings", "__proto__"], "error"],
    ]);
    expect(parse({ readings: { ...readings, constructor: ["1 cm"] } })).toEqual([
      ["person-dimension-unknown", ["readings", "constructor"], "error"],
    ]);
  });

  test("tells everything that is wrong at once", () => {
    const codes = parse({ cut: "x", mesuredBy: "self", readings: { hips: [], "torso-length": [true] } }).map(
      ([code]) => code,
    );
    expect(codes.toSorted()).toEqual([
      "person-choice-unknown",
      "person-dimension-unknown",
      "person-field-invalid",
      "person-field-misspelt",
    ]);
  });
});
