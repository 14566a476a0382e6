import { InvalidArgumentError, type Issue, IssuesError } from "@tapewise/outcome";
import { type LengthUnit, parseLength, safeParseLength } from "@tapewise/units";
import { describe, expect, test } from "vitest";

function issueOf(text: unknown, options: Parameters<typeof safeParseLength>[1] = {}): Issue | undefined {
  const { ok, issues } = safeParseLength(text, options);
  expect(ok).toBe(false);
  expect(issues).toHaveLength(1);
  return issues[0];
}

describe("metric lengths", () => {
  test.each([
    ["43.2 cm", 432, "cm", 1],
    ["43,2cm", 432, "cm", 1],
    ["44 cm", 440, "cm", 10],
    ["43.20 cm", 432, "cm", 0.1],
    ["432 mm", 432, "mm", 1],
    ["0.432 m", 432, "m", 1],
    ["0,432 m", 432, "m", 1],
    ["1.75 M", 1750, "m", 10],
    ["43 CM", 430, "cm", 10],
    ["432 Mm", 432, "mm", 1],
    ["43 cms", 430, "cm", 10],
    ["43 centimetres", 430, "cm", 10],
    ["1 centimetre", 10, "cm", 10],
    ["43 centimeters", 430, "cm", 10],
    ["432 millimeters", 432, "mm", 1],
    ["2 metres", 2000, "m", 1000],
    ["43 cm.", 430, "cm", 10],
    ["+43 cm", 430, "cm", 10],
    ["½ m", 500, "m", 500],
    ["43 1/2 cm", 435, "cm", 5],
    ["1 m 75 cm", 1750, "cm", 10],
    ["1 m 75.5 cm", 1755, "cm", 1],
    ["1m75", 1750, "cm", 10],
    ["1 m 05", 1050, "cm", 10],
    ["43 cm 2 mm", 432, "mm", 1],
    ["1 m 7 cm 5 mm", 1075, "mm", 1],
    ["1,750.5 mm", 1750.5, "mm", 0.1],
    ["1.750,5 mm", 1750.5, "mm", 0.1],
    ["1,234,567 mm", 1234567, "mm", 1],
    ["1750,25 mm", 1750.25, "mm", 0.01],
    ["43.125 cm", 431.25, "cm", 0.01],
    ["1.750 m", 1750, "m", 1],
  ] as const)("%s", (text, mm, unit, stepMm) => {
    expect(parseLength(text)).toEqual({ mm, unit, stepMm, text });
  });
});

describe("inches and feet", () => {
  // 18 3/8 in = 18.375 * 25.4 mm = 466.725 mm; 1/8 in = 3.175 mm
  test.each([
    ["19 in", 482.6, "in", 25.4],
    ['19"', 482.6, "in", 25.4],
    ["19''", 482.6, "in", 25.4],
    ["19 inch", 482.6, "in", 25.4],
    ["19 in.", 482.6, "in", 25.4],
    ["19 ins", 482.6, "in", 25.4],
    ["17.25 in", 438.15, "in", 0.254],
    ["17,25 in", 438.15, "in", 0.254],
    ["17.375 in", 441.325, "in", 0.0254],
    ["17,375 in", 441.325, "in", 0.0254],
    [".5 in", 12.7, "in", 2.54],
    ["18 3/8 in", 466.725, "in", 3.175],
    ['18-3/8"', 466.725, "in", 3.175],
    ["18 6/16 in", 466.725, "in", 1.5875],
    ["147/8 in", 466.725, "in", 3.175],
    ["1 ft 6 3/8 in", 466.725, "in", 3.175],
    ["1'6\"", 457.2, "in", 25.4],
    ["5'7\"", 1701.8, "in", 25.4],
    ["5'7", 1701.8, "in", 25.4],
    ["5'-7\"", 1701.8, "in", 25.4],
    ["5 ft, 7 in", 1701.8, "in", 25.4],
    ["5 feet and 7 inches", 1701.8, "in", 25.4],
    ["5 ft.7 in.", 1701.8, "in", 25.4],
    ["0 ft 6 in", 152.4, "in", 25.4],
    ["5' 7.5''", 1714.5, "in", 2.54],
    ["2 feet", 609.6, "ft", 304.8],
    ["1 foot", 304.8, "ft", 304.8],
    ["5.75 ft", 1752.6, "ft", 3.048],
    ["5 1/2'", 1676.4, "ft", 152.4],
  ] as const)("%s", (text, mm, unit, stepMm) => {
    expect(parseLength(text)).toEqual({ mm, unit, stepMm, text });
  });
});

describe("what word processors and telephones make of it", () => {
  test.each([
    ["18⅜″", 466.725],
    ["18 ⅜ in", 466.725],
    ["18 3⁄8 in", 466.725],
    ["18 3∕8 in", 466.725],
    ["18³⁄₈ in", 466.725],
    ["18³/8 in", 466.725],
    ["18⅟8 in", 460.375],
    ["1’ 6⅜”", 466.725],
    ["1′6⅜″", 466.725],
    ["1ʹ6ʺ", 457.2],
    ["1´6´´", 457.2],
    ["19’’", 482.6],
    ["19′′", 482.6],
    ["19“", 482.6],
    ["18–3/8 in", 466.725],
    ["４３．２ｃｍ", 432],
    ["１８　３／８　ｉｎ", 466.725],
    ["43㎝", 430],
    ["432 ㎜", 432],
    ["43\u00a0cm", 430],
    ["43\u2009cm", 430],
    ["43\u202fcm", 430],
    ["\ufeff43 cm\r\n", 430],
    ["43\u00adcm", 430],
  ])("%s", (text, mm) => {
    expect(parseLength(text).mm).toBe(mm);
  });

  test("a zero-width space parts a number and does not vanish from it", () => {
    expect(issueOf("4\u200b3 cm")?.code).toBe("length-several-numbers");
  });
});

describe("the unit", () => {
  test("is the caller's only where the text has none", () => {
    expect(parseLength("38", { unit: "cm" })).toMatchObject({ mm: 380, unit: "cm" });
    expect(parseLength("15 1/2", { unit: "in" })).toMatchObject({ mm: 393.7, unit: "in", stepMm: 12.7 });
    expect(parseLength("38 cm", { unit: "in" })).toMatchObject({ mm: 380, unit: "cm" });
    expect(parseLength("1'6", { unit: "cm" })).toMatchObject({ mm: 457.2, unit: "in" });
  });

  test("is never assumed: both readings are offered", () => {
    expect(issueOf("19", { path: ["readings", 0] })).toEqual({
      code: "length-no-unit",
      severity: "error",
      path: ["readings", 0],
      message: "19 has no unit",
      received: "19",
      expected: "19 cm or 19 in",
      facts: { number: "19" },
    });
    expect(issueOf(" 15 1/2 ")?.expected).toBe("15 1/2 cm or 15 1/2 in");
    // Not a question of separators as long as the unit is open.
    expect(issueOf("17.375")?.code).toBe("length-no-unit");
  });

  test.each([
    ["43 cn", "cm"],
    ["43 mn", "mm"],
    ["43 im", "in"],
    ["43 inc", "in"],
    ["43 milimetrs", "mm"],
    ["43 ich", "in"],
    ["43 fot", "ft"],
    ["5 fet 7 in", "ft"],
    ["43 centimters", "cm"],
    ["43 centimètres", "cm"],
    ["43 Zentimeter", "cm"],
    ["43 Millimetern", "mm"],
    ["2 metras", "m"],
    ["43 parsecs", "mm, cm, m, in or ft"],
    ["43 x", "mm, cm, m, in or ft"],
    ["43 constructor", "mm, cm, m, in or ft"],
  ])("of %s is unknown, but may be %s", (text, suggestion) => {
    const issue = issueOf(text);
    expect([issue?.code, issue?.facts.suggestion]).toEqual(["length-unit-unknown", suggestion]);
    expect(issue?.expected).toBe(`a unit such as ${suggestion}`);
  });

  test.each([
    ["43 kg", "kg", "mass"],
    ["43 lbs", "lbs", "mass"],
    ["43 Pounds", "pounds", "mass"],
    ["43°", "°", "angle or temperature"],
    ["20 ℃", "°", "angle or temperature"],
    ["90º", "°", "angle or temperature"],
    ["90˚", "°", "angle or temperature"],
    ["43 litres", "litres", "volume"],
    ["43 L", "l", "volume"],
    ["43%", "%", "proportion"],
    ["43 ％", "%", "proportion"],
    ["43 s", "s", "time"],
    ["43 min.", "min", "time"],
    ["2 m 44 kg", "kg", "mass"],
    ["43 kg 5 cm", "kg", "mass"],
  ])("of %s is of another kind", (text, unit, kind) => {
    const issue = issueOf(text);
    expect([issue?.code, issue?.facts.unit, issue?.facts.kind]).toEqual([
      "length-unit-wrong-kind",
      unit,
      kind,
    ]);
    expect(issue?.message).toBe(`${unit} is a unit of ${kind}, not of length`);
    expect(issueOf(text, { unit: "cm" })?.code).toBe("length-unit-wrong-kind");
  });

  test.each(["2 yd", "2 yards", "1 mile", "0.001 km", "4 dm", "400 µm", "3 hands"])(
    "of %s is not read",
    (text) => {
      expect(issueOf(text)?.code).toBe("length-unit-unread");
    },
  );

  test("that a caller invents is a programmer's mistake", () => {
    expect(() => safeParseLength("38", { unit: "yd" as LengthUnit })).toThrow(InvalidArgumentError);
  });
});

describe("separators", () => {
  test.each([
    ["1,750 mm", "1750 mm", "1.7500 mm"],
    ["1.750 mm", "1750 mm", "1.7500 mm"],
    ["396.875 mm", "396875 mm", "396.8750 mm"],
    ["１，７５０ mm", "1750 mm", "1.7500 mm"],
    ["43 cm 1,234 mm", "1234 mm", "1.2340 mm"],
  ])("%s may be two lengths", (text, grouped, decimal) => {
    const issue = issueOf(text);
    expect([issue?.code, issue?.facts]).toEqual(["length-ambiguous-separator", { grouped, decimal }]);
    expect(issue?.expected).toBe(`${grouped} or ${decimal}`);
  });

  test("the caller's unit makes a number ambiguous or clear", () => {
    expect(issueOf("1,750", { unit: "mm" })?.code).toBe("length-ambiguous-separator");
    expect(parseLength("17,375", { unit: "in" }).mm).toBe(441.325);
  });

  test.each([
    ["1,750 mm", ".", 1750],
    ["1,750 mm", ",", 1.75],
    ["1.750 mm", ".", 1.75],
    ["1.750 mm", ",", 1750],
    ["396.875 mm", ".", 396.875],
    ["1.234.567,5 mm", ",", 1234567.5],
    ["43 mm", ",", 43],
  ] as const)("%s is clear when decimals stand after %j", (text, decimalMark, mm) => {
    expect(parseLength(text, { decimalMark }).mm).toBe(mm);
  });

  test.each([
    ["43,2 cm", "."],
    ["43.2 cm", ","],
    ["1.234,5 mm", "."],
    ["0,432 m", "."],
  ] as const)("%s is no number when decimals stand after %j", (text, decimalMark) => {
    expect(issueOf(text, { decimalMark })?.code).toBe("length-not-a-number");
  });

  test.each([
    "1.2.3 cm",
    "1,2,3 cm",
    "1,23,456 mm",
    "1234,567.8 mm",
    "1234.567,8 mm",
    "1,234.567,8 mm",
    "0,432,100 mm",
    "1.234,567.8 mm",
  ])("%s is no number", (text) => {
    expect(issueOf(text)?.code).toBe("length-not-a-number");
  });

  test("a decimal mark that is none is a programmer's mistake", () => {
    expect(() => safeParseLength("43 cm", { decimalMark: ";" as "." })).toThrow(InvalidArgumentError);
  });
});

describe("what is refused", () => {
  test.each([
    ["", "length-empty"],
    [" \t\u00a0\n", "length-empty"],
    ["abc", "length-not-a-number"],
    ["cm", "length-not-a-number"],
    ["M", "length-not-a-number"],
    ["-", "length-not-a-number"],
    ["٤٣ cm", "length-not-a-number"],
    ["-3 cm", "length-negative"],
    ["−3 cm", "length-negative"],
    ["–3 cm", "length-negative"],
    ["－３ cm", "length-negative"],
    ["-1' 6\"", "length-negative"],
    ["0 cm", "length-zero"],
    ["-0 cm", "length-zero"],
    ["0.00 m", "length-zero"],
    ["0 ft 0 in", "length-zero"],
    ["0/8 in", "length-zero"],
    ["3/0 in", "length-fraction-impossible"],
    ["18 3/0 in", "length-fraction-impossible"],
    ["18 9/8 in", "length-fraction-impossible"],
    ["18 8/8 in", "length-fraction-impossible"],
    ["0 9/8 in", "length-fraction-impossible"],
    ["18.5 3/8 in", "length-fraction-impossible"],
    ["18 3/8.5 in", "length-fraction-impossible"],
    ["3/ in", "length-fraction-impossible"],
    ["43 44 cm", "length-several-numbers"],
    ["43-44 cm", "length-several-numbers"],
    ["43–44 cm", "length-several-numbers"],
    ["43 cm - 44 cm", "length-several-numbers"],
    ["43 to 44 cm", "length-several-numbers"],
    ["43 x 44 cm", "length-several-numbers"],
    ["43 cm (17 in)", "length-several-numbers"],
    ["43 cm 17 in", "length-several-numbers"],
    ["15 1/2 - 17 in", "length-several-numbers"],
    ["1/2/3 in", "length-several-numbers"],
    ["1 750 mm", "length-several-numbers"],
    ["1'750 mm", "length-several-numbers"],
    ["5'7'", "length-several-numbers"],
    ["1m5", "length-several-numbers"],
    ["1 m 1/16", "length-several-numbers"],
    ["18 in / 46 cm", "length-several-numbers"],
    ["6 in 1 ft", "length-several-numbers"],
    ["1 ft 30 cm", "length-several-numbers"],
    ["5 ft 12 in", "length-parts-disagree"],
    ["1.5 ft 3 in", "length-parts-disagree"],
    ["1 m 100 cm", "length-parts-disagree"],
    ["43 cm 10 mm", "length-parts-disagree"],
    ["1'750", "length-parts-disagree"],
    ["43. cm", "length-extra-text"],
    [",5 cm", "length-extra-text"],
    ["about 43 cm", "length-extra-text"],
    ["<104 cm", "length-extra-text"],
    ["48+ cm", "length-extra-text"],
    ["(43 cm)", "length-extra-text"],
    ["43 cm!", "length-extra-text"],
    ["43 cm long", "length-extra-text"],
    ["--43 cm", "length-extra-text"],
    ["43 cm²", "length-extra-text"],
    ["5 ft²", "length-extra-text"],
    ["43㎠", "length-extra-text"],
    ["43① cm", "length-extra-text"],
    ["5 ft and", "length-extra-text"],
  ])("%j", (text, code) => {
    expect(issueOf(text)?.code).toBe(code);
  });

  test.each([
    [19, "19 is not text"],
    [null, "null is not text"],
    [undefined, "nothing is not text"],
    [["43 cm"], "a list of 1 is not text"],
    [{ cm: 43 }, "an object is not text"],
    [Number.NaN, "NaN is not text"],
  ])("%j, which is not text", (value, message) => {
    expect(issueOf(value)).toMatchObject({ code: "length-not-text", message });
  });

  test("text of more than 64 characters, at once, however long", () => {
    expect(parseLength(`${" ".repeat(59)}43 cm`).mm).toBe(430);
    expect(issueOf(`${" ".repeat(60)}43 cm`)).toMatchObject({
      code: "length-too-long",
      facts: { characters: 65, limit: 64 },
    });
    expect(issueOf("1".repeat(50_000_000))?.code).toBe("length-too-long");
  });

  test("with the words of the text in the message, without its control characters", () => {
    expect(issueOf("43 cm long")?.message).toBe("43 cm long has something beside the length: long");
    expect(issueOf("43 cm \u0007")?.message).toBe("43 cm \uFFFD has something beside the length: \uFFFD");
    expect(issueOf("5 ft 13 in")?.expected).toBe("whole ft, then less than 12 in");
    expect(issueOf("18 9/8 in")?.facts).toEqual({ fraction: "9/8" });
  });
});

test("parseLength throws what safeParseLength returns", () => {
  expect(parseLength("43.2 cm").mm).toBe(432);
  expect(() => parseLength("19")).toThrow(IssuesError);
  expect(() => parseLength("19")).toThrow("19 has no unit");
});
