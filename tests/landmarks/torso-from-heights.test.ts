import { landmarksIssues, torsoFromHeights } from "@tapewise/landmarks";
import { InvalidArgumentError, translateIssue, unwrap } from "@tapewise/outcome";
import { type Millimetres, millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

const mm = millimetres;

describe("torsoFromHeights", () => {
  test("is the difference of the heights", () => {
    expect(unwrap(torsoFromHeights(mm(1440), mm(1015)))).toBe(425);
  });

  test("always says that straight is shorter than along the curve, and by how much on average", () => {
    expect(torsoFromHeights(mm(1440), mm(1015)).issues).toEqual([
      {
        code: "torso-length-straight",
        severity: "warning",
        path: [],
        message:
          "425 mm is the straight height from the iliac crest to C7; along the curve of the back it is a little longer, by about 10 mm on average",
        received: 425,
        expected: "a torso length read along the back, where one can be taken",
        facts: { torsoLengthMm: 425, curveSurplusMm: 10 },
      },
    ]);
  });

  test("writes a length with many decimals to a tenth in the note, and exactly in the value", () => {
    const torso = torsoFromHeights(mm(1440.18), mm(1015.2));
    expect(unwrap(torso)).toBe(1440.18 - 1015.2);
    expect(torso.issues[0]?.facts).toEqual({ torsoLengthMm: 425, curveSurplusMm: 10 });
  });

  test.each([
    [1015, 1440],
    [1200, 1200],
  ])("refuses C7 at %i and the crest at %i", (cervicale, crest) => {
    const outcome = torsoFromHeights(mm(cervicale), mm(crest));
    expect(outcome.ok).toBe(false);
    expect(outcome.issues.map(({ code, path, received }) => ({ code, path, received }))).toEqual([
      { code: "torso-heights-reversed", path: ["cervicaleHeight"], received: cervicale },
    ]);
    expect(outcome.issues[0]?.message).toBe(
      `C7 at ${cervicale} mm is not above the iliac crest at ${crest} mm`,
    );
  });

  test("refuses heights that are not above the floor, each by name", () => {
    const outcome = torsoFromHeights(mm(0), mm(-3));
    expect(outcome.issues.map(({ code, path }) => `${code} ${path.join(".")}`)).toEqual([
      "torso-height-not-positive cervicaleHeight",
      "torso-height-not-positive iliacCrestHeight",
    ]);
  });

  test("what is not a number is a programmer's mistake", () => {
    expect(() => torsoFromHeights(Number.NaN as Millimetres, mm(1000))).toThrow(InvalidArgumentError);
    expect(() => torsoFromHeights(mm(1000), Number.POSITIVE_INFINITY as Millimetres)).toThrow(
      "iliacCrestHeight",
    );
  });
});

describe("landmarksIssues", () => {
  test("another language can word every issue from its facts", () => {
    const german = {
      "torso-heights-reversed": {
        message: "C7 in {cervicaleHeightMm} mm liegt nicht über dem Beckenkamm in {iliacCrestHeightMm} mm",
        expected: "eine C7-Höhe über der Beckenkammhöhe",
      },
    };
    const [issue] = torsoFromHeights(mm(900), mm(1000)).issues;
    expect(issue && translateIssue(issue, german).message).toBe(
      "C7 in 900 mm liegt nicht über dem Beckenkamm in 1000 mm",
    );
  });

  test("only the straightness of the stand-in is a warning", () => {
    const warnings = Object.entries(landmarksIssues).filter(([, { severity }]) => severity === "warning");
    expect(warnings.map(([code]) => code)).toEqual(["torso-length-straight"]);
  });
});
