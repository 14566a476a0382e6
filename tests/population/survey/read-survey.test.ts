import { InvalidArgumentError, IssuesError } from "@tapewise/outcome";
import { readSurvey, type SurveyMapping, safeReadSurvey } from "@tapewise/population";
import { describe, expect, test } from "vitest";

const about = { label: "the crew", source: "the spring meeting", caveat: "a few people" };
const mapping: SurveyMapping = {
  about,
  dimensions: {
    "torso-length": { column: "c7", minus: "crest", unit: "mm" },
    "waist-girth": { column: "waist", unit: "cm" },
  },
};
const codes = (outcome: ReturnType<typeof safeReadSurvey>) => outcome.issues.map(({ code }) => code);

describe("safeReadSurvey", () => {
  test("maps columns to dimensions, differences too, each in its unit", () => {
    const text = "name,c7,crest,waist\nana,1440,1015,82.5\nbo,1502,1060,91\n";
    const outcome = safeReadSurvey(text, { ...mapping, id: "name" });
    expect(outcome.issues).toEqual([]);
    expect(outcome.ok && outcome.value).toEqual({
      about,
      variables: ["torso-length", "waist-girth"],
      weighted: false,
      people: [
        {
          line: 2,
          id: "ana",
          weight: 1,
          values: { "torso-length": 425, "waist-girth": 825 },
          readings: { "torso-length": [425], "waist-girth": [825] },
        },
        {
          line: 3,
          id: "bo",
          weight: 1,
          values: { "torso-length": 442, "waist-girth": 910 },
          readings: { "torso-length": [442], "waist-girth": [910] },
        },
      ],
    });
  });

  test("reads inches, fractions, decimal commas and body mass", () => {
    const text = "height;waist;mass\n5'7\";32 1/2;150,5\n";
    const outcome = safeReadSurvey(text, {
      about,
      dimensions: {
        stature: { column: "height", unit: "cm" },
        "waist-girth": { column: "waist", unit: "in" },
      },
      mass: { column: "mass", kilogramsPerUnit: 0.45359237 },
    });
    // 67 in, 32.5 in, 150.5 lb.
    expect(outcome.ok && outcome.value.people[0]?.values).toEqual({
      stature: 1701.8,
      "waist-girth": 825.5,
      "mass-kg": 150.5 * 0.45359237,
    });
  });

  test("takes the mean of several readings and keeps them", () => {
    const several: SurveyMapping = {
      about,
      dimensions: {
        "waist-girth": [
          { column: "w1", unit: "mm" },
          { column: "w2", unit: "mm" },
        ],
      },
    };
    const outcome = safeReadSurvey("w1,w2\n800,810\n905,\n", several);
    expect(outcome.ok && outcome.value.people.map(({ values }) => values["waist-girth"])).toEqual([805, 905]);
    expect(outcome.ok && outcome.value.people[0]?.readings["waist-girth"]).toEqual([800, 810]);
    expect(codes(outcome)).toEqual(["survey-cell-missing"]);
  });

  test("reports what is missing or unreadable with its place, and keeps the rest", () => {
    const text = "c7,crest,waist\n1440,1015,NA\n1502,ten,91\n1400,1410,88\n";
    const outcome = safeReadSurvey(text, mapping, { file: "crew.csv" });
    expect(outcome.ok && outcome.value.people.map(({ values }) => values)).toEqual([
      { "torso-length": 425 },
      { "waist-girth": 910 },
      { "waist-girth": 880 },
    ]);
    expect(outcome.issues.map(({ code, place, path }) => ({ code, place, path }))).toEqual([
      {
        code: "survey-cell-missing",
        place: { file: "crew.csv", line: 2, column: 11 },
        path: ["waist-girth"],
      },
      {
        code: "survey-cell-unreadable",
        place: { file: "crew.csv", line: 3, column: 6 },
        path: ["torso-length"],
      },
      {
        code: "survey-difference-not-positive",
        place: { file: "crew.csv", line: 4, column: 1 },
        path: ["torso-length"],
      },
    ]);
    expect(outcome.issues[1]?.message).toContain("ten under crest cannot be read");
    expect(outcome.issues[2]?.message).toBe("c7 less crest is -10 mm, which is no length");
  });

  test("takes weights, and leaves out whose weight cannot be used", () => {
    const text = "c7,crest,waist,w\n1440,1015,82,2.5\n1502,1060,91,0\n1480,1040,90,?\n";
    const outcome = safeReadSurvey(text, { ...mapping, weight: "w" });
    expect(outcome.ok && outcome.value.people.map(({ line, weight }) => [line, weight])).toEqual([[2, 2.5]]);
    expect(outcome.ok && outcome.value.weighted).toBe(true);
    expect(codes(outcome)).toEqual(["survey-weight-unreadable", "survey-weight-unreadable"]);
  });

  test("leaves out a line whose cells do not match the names, and says so", () => {
    const outcome = safeReadSurvey("c7,crest,waist\n1440,1015,82,5\n1502,1060,91\n", mapping);
    expect(outcome.ok && outcome.value.people.map(({ line }) => line)).toEqual([3]);
    expect(outcome.issues[0]?.message).toBe(
      "this line has 4 cells where 3 are named, so the person was left out",
    );
  });

  test("leaves out a variable whose column is missing or there twice", () => {
    const missing = safeReadSurvey("c7,waist\n1440,82\n", mapping);
    expect(missing.ok && missing.value.variables).toEqual(["waist-girth"]);
    expect(missing.issues[0]?.message).toBe("there is no column crest, so torso-length was left out");
    expect(missing.issues[0]?.expected).toBe("one of the columns c7, waist");
    const twice = safeReadSurvey("c7,crest,waist,waist\n1440,1015,82,83\n", mapping);
    expect(twice.ok && twice.value.variables).toEqual(["torso-length"]);
    expect(twice.issues[0]?.code).toBe("survey-column-repeated");
    expect(twice.issues[0]?.place).toEqual({ line: 1, column: 10 });
  });

  test("fails where weights were asked for and are not there", () => {
    const outcome = safeReadSurvey("c7,crest,waist\n1440,1015,82\n", { ...mapping, weight: "w" });
    expect(outcome.ok).toBe(false);
    expect(codes(outcome)).toEqual(["survey-column-missing"]);
  });

  test("questions implausible values one by one, and the unit where most are", () => {
    const only: SurveyMapping = { about, dimensions: { stature: { column: "height", unit: "cm" } } };
    const one = safeReadSurvey("height\n168\n1.72\n175\n181\n", only);
    expect(codes(one)).toEqual(["survey-value-implausible"]);
    expect(one.issues[0]?.place).toEqual({ line: 3, column: 1 });
    expect(one.ok && one.value.people).toHaveLength(4);
    const most = safeReadSurvey("height\n68\n72\n70\n66\n", only);
    expect(codes(most)).toEqual(["survey-unit-suspect"]);
    expect(most.issues[0]?.message).toBe(
      "4 of 4 values of stature are outside what is plausible for it in cm",
    );
    expect(most.ok && most.value.people[0]?.values.stature).toBe(680);
  });

  test("reports a person who is there twice, and keeps both", () => {
    const outcome = safeReadSurvey("id,waist\n7,82\n8,90\n7,91\n", {
      about,
      dimensions: { "waist-girth": { column: "waist", unit: "cm" } },
      id: "id",
    });
    expect(outcome.ok && outcome.value.people).toHaveLength(3);
    expect(outcome.issues[0]?.message).toBe("the person 7 is there already, in line 2");
    expect(outcome.issues[0]?.place?.line).toBe(4);
  });

  test("does not guess what a comma means", () => {
    const only: SurveyMapping = { about, dimensions: { stature: { column: "height", unit: "mm" } } };
    const unclear = safeReadSurvey("id;height\n1;1,750\n", only);
    expect(codes(unclear)).toContain("survey-cell-unreadable");
    const clear = safeReadSurvey("id;height\n1;1,750\n", only, { decimalMark: "." });
    expect(clear.ok && clear.value.people[0]?.values.stature).toBe(1750);
    const mass: SurveyMapping = { about, dimensions: {}, mass: { column: "m", kilogramsPerUnit: 1 } };
    expect(codes(safeReadSurvey("id;m\n1;1,750\n", mass))).toContain("survey-cell-unreadable");
    const comma = safeReadSurvey("id;m\n1;62,5\n2;70\n", mass, { decimalMark: "," });
    expect(comma.ok && comma.value.people.map(({ values }) => values["mass-kg"])).toEqual([62.5, 70]);
  });

  test("takes other marks of a missing value and another separator", () => {
    const only: SurveyMapping = { about, dimensions: { "waist-girth": { column: "a,b", unit: "cm" } } };
    const outcome = safeReadSurvey("a,b\tc\nk.A.\t1\n82\t2\n", only, {
      separator: "\t",
      missingMarks: ["k.A."],
    });
    expect(outcome.ok && outcome.value.people.map(({ values }) => values)).toEqual([
      {},
      { "waist-girth": 820 },
    ]);
    expect(codes(outcome)).toEqual(["survey-cell-missing"]);
  });

  test.each<[string, unknown, string[]]>([
    ["no text", 5, ["survey-not-text"]],
    ["an empty text", " \n", ["survey-empty"]],
    ["names only", "c7,crest,waist\n", ["survey-no-people"]],
    [
      "an open quotation mark in the names",
      '"c7,crest,waist\n1440,1015,82\n',
      ["survey-empty", "survey-quote-open"],
    ],
    [
      "columns of something else",
      "a,b\n1,2\n",
      ["survey-column-missing", "survey-column-missing", "survey-column-missing"],
    ],
  ])("fails for %s", (_, text, expected) => {
    const outcome = safeReadSurvey(text, mapping);
    expect(outcome.ok).toBe(false);
    expect(codes(outcome)).toEqual(expected);
  });

  test("refuses a mapping that is a slip of the program", () => {
    const wrong = (change: object) => () => safeReadSurvey("a\n1\n", { ...mapping, ...change });
    expect(wrong({ dimensions: { torso: { column: "a", unit: "mm" } } })).toThrow(InvalidArgumentError);
    expect(wrong({ dimensions: { stature: { column: "a", unit: "yd" } } })).toThrow(InvalidArgumentError);
    expect(wrong({ dimensions: { stature: [] } })).toThrow(InvalidArgumentError);
    expect(wrong({ mass: { column: "a", kilogramsPerUnit: 0 } })).toThrow(InvalidArgumentError);
    expect(wrong({ about: { label: "", source: "x", caveat: "" } })).toThrow(InvalidArgumentError);
  });
});

describe("readSurvey", () => {
  test("gives the survey, or throws what was wrong", () => {
    expect(readSurvey("c7,crest,waist\n1440,1015,82\n", mapping).people).toHaveLength(1);
    expect(() => readSurvey("", mapping)).toThrow(IssuesError);
  });
});
