import { IssuesError } from "@tapewise/outcome";
import { parseMagnitude, safeParseMagnitude } from "@tapewise/units";
import { expect, test } from "vitest";

test.each([
  ["38", 38n, 1n, undefined],
  ["15 1/2", 31n, 2n, undefined],
  ["43.20", 4320n, 100n, undefined],
  ["43,2", 432n, 10n, undefined],
  ["18 6/16", 294n, 16n, undefined],
  ["18⅜", 147n, 8n, undefined],
  ["43.2 cm", 432n, 10n, "cm"],
  ["1 ft 6 3/8 in", 147n, 8n, "in"],
  ["1' 6", 18n, 1n, "in"],
  ["1 m 75.5 cm", 1755n, 10n, "cm"],
  ["1,750.5", 17505n, 10n, undefined],
  ["17.375 in", 17375n, 1000n, "in"],
] as const)("%s", (text, numerator, denominator, unit) => {
  expect(parseMagnitude(text)).toEqual({
    numerator,
    denominator,
    ...(unit === undefined ? {} : { unit }),
    text,
  });
});

test.each([
  ["", "length-empty"],
  ["S", "length-not-a-number"],
  ["38-43", "length-several-numbers"],
  ["48+", "length-extra-text"],
  ["-5", "length-negative"],
  ["0", "length-zero"],
  ["43 kg", "length-unit-wrong-kind"],
  ["1,750", "length-ambiguous-separator"],
  [38, "length-not-text"],
])("%j is refused", (text, code) => {
  expect(
    safeParseMagnitude(text, { path: ["cell"] }).issues.map((issue) => [issue.code, issue.path]),
  ).toEqual([[code, ["cell"]]]);
});

test("without a unit, three decimals are ambiguous until the mark is known", () => {
  const [issue] = safeParseMagnitude("17.375").issues;
  expect(issue?.expected).toBe("17375 or 17.3750");
  expect(parseMagnitude("17.375", { decimalMark: "." })).toMatchObject({
    numerator: 17375n,
    denominator: 1000n,
  });
});

test("parseMagnitude throws what safeParseMagnitude returns", () => {
  expect(() => parseMagnitude("S")).toThrow(IssuesError);
});
