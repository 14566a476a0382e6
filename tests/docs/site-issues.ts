import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Catalogue, fillTemplate } from "@tapewise/outcome";
import { readWorkspace, root } from "../architecture/workspace.ts";

/** The codes of one package. */
export interface PackageIssues {
  readonly package: string;
  readonly issues: Catalogue;
}

/** Every package's issue catalogue, by the name that all of them follow. */
export async function loadIssues(): Promise<readonly PackageIssues[]> {
  const found: PackageIssues[] = [];
  for (const { name, folder, manifest, files } of readWorkspace()) {
    if (!files.some(({ path }) => path === "src/issues.ts")) continue;
    // The file and not the package: a package may need more than its codes do.
    const url = pathToFileURL(join(root, folder, "src/issues.ts")).href;
    const module: Record<string, unknown> = await import(/* @vite-ignore */ url);
    const issues = module[`${name}Issues`];
    if (!isCatalogue(issues)) throw new Error(`${manifest.name} does not export its issue codes`);
    found.push({ package: manifest.name, issues });
  }
  return found.sort((a, b) => (a.package < b.package ? -1 : 1));
}

/** The codes that examples are written for, so that a test finds those which no longer exist. */
export function listExamples(): readonly string[] {
  return Object.keys(EXAMPLES);
}

/** The page of all issue codes. */
export function issuePage(packages: readonly PackageIssues[]): string {
  const count = packages.reduce((sum, { issues }) => sum + Object.keys(issues).length, 0);
  const parts = packages.map(({ package: name, issues }) =>
    [
      `## ${name}`,
      "",
      "| code | example message, and what is expected |",
      "| --- | --- |",
      ...Object.entries(issues).map(([code, { severity, message, expected }]) => {
        const facts = { ...COMMON, ...FAMILIES[code.split("-")[0] ?? ""], ...EXAMPLES[code] };
        const cells = [message, expected].map((each) => cell(fillTemplate(each, facts)));
        return `| <code id="${code}">${code}</code><br>${severity} | ${cells.join("<br>Expected: ")}. |`;
      }),
      "",
    ].join("\n"),
  );
  return `${HEAD.replace("{count}", String(count))}\n${parts.join("\n")}`;
}

const HEAD = `---
title: Issue codes
description: Every code that Tapewise gives to what is wrong or doubtful in data, with its meaning.
sidebar:
  order: 4
---

<!-- Made from the packages' catalogues by tests/docs/site-write.ts; a test compares. Do not edit by hand. -->

An issue has a stable \`code\`, a \`severity\`, the \`path\` to what it is about, a \`message\`, what was \`received\` and what was
\`expected\`, and the \`facts\` behind the words. Lengths among the facts are in millimetres and end in \`Mm\`.

- **error**: the thing named by the path could not be read or used. The rest was.
- **warning**: it was read, but it may not mean what its author meant. Look, then go on.

A code never changes its meaning and is never used again for something else. The words may change and can be
[translated](../../how-to/translate/); build on the code. The messages below are examples: the figures in them are
invented, and what stays in braces is filled with the facts of the case.

There are {count} codes.
`;

/** Facts that read well in most messages. */
const COMMON: Readonly<Record<string, string | number>> = {
  dimension: "torso length",
  otherDimension: "back waist length",
  size: "M",
  unit: "cm",
  units: "mm, cm, m, in or ft",
  chart: "Doily 45",
  charted: "hip-belt girth",
  widthMm: 20,
  fromMm: 430,
  toMm: 450,
  differenceMm: 38,
  usualMm: 30,
  lowestMm: 290,
  highestMm: 610,
  leastMm: 290,
  mostMm: 610,
  count: 3,
  label: "women 168 cm tall",
  side: "above",
};

/** Facts that read well in the messages of one family of codes. */
const FAMILIES: Readonly<Record<string, Readonly<Record<string, string | number>>>> = {
  chart: { other: "L", what: "torso length", columns: 4, cells: 3, nominalMm: 460, limitMm: 10, hint: "" },
  survey: {
    variable: "torso-length",
    variables: "torso-length, stature",
    column: "crest",
    minus: "c7",
    columns: 4,
    cells: 3,
    line: 7,
  },
  coverage: { people: "women", known: "torso-length, stature" },
  person: { field: "stature", hint: "" },
  batch: { line: 7 },
  table: { received: "“people.csv”", column: "locker", hint: "", columns: "id, back, girth", line: 7 },
  study: { subject: "mia", measurer: "heron", repeat: 2, columns: 4 },
  icc: { subject: "mia", measurer: "heron", subjects: 1, measurers: 1, repeats: 2 },
  agreement: { subject: "mia", first: "heron", second: "magpie", measurers: "heron, magpie" },
  precision: { subject: "mia", measurer: "heron" },
  outcome: { field: "reason", limit: 65536 },
};

/** Facts of single codes, so that each message reads as somebody would meet it. */
const EXAMPLES: Readonly<Record<string, Readonly<Record<string, string | number>>>> = {
  "table-format-unknown": { received: "“people.ods”" },
  "table-unreadable": { received: "“people.parquet”", reason: "No magic bytes found at end of file" },
  "table-unwritable": { received: "“choices.csv”", reason: "EACCES" },
  "table-column-missing": { received: "“bakc”", hint: "; did you mean “back”?" },
  "table-column-misspelt": { column: "torso-lenght (cm)", suggestion: "torso-length (cm)" },
  "table-column-repeated": { field: "stature" },
  "table-row-unreadable": { reason: "Expected Number of Columns: 4 Found: 2" },
  "length-not-text": { received: "null" },
  "length-too-long": { received: "“43.2 cm and a very long remark…”", limit: 100 },
  "length-not-a-number": { received: "“about a cubit”" },
  "length-no-unit": { received: "“19”", number: "19" },
  "length-unit-unknown": { unit: "“cn”", suggestion: "cm" },
  "length-unit-wrong-kind": { unit: "“kg”", kind: "mass" },
  "length-unit-unread": { unit: "“yd”" },
  "length-negative": { received: "“-3 cm”" },
  "length-zero": { received: "“0 cm”" },
  "length-fraction-impossible": { received: "“18 9/8 in”", fraction: "9/8" },
  "length-ambiguous-separator": { received: "“1,750 mm”", grouped: "1750 mm", decimal: "1.75 mm" },
  "length-several-numbers": { received: "“43-44 cm”" },
  "length-parts-disagree": { received: "“5 ft 13 in”", larger: "feet", limit: 12, smaller: "inches" },
  "length-extra-text": { received: "“43 cm or so”", extra: "“or so”" },
  "interval-bound-not-a-number": { received: "“wide”" },
  "interval-bounds-reversed": { from: 430, to: 380 },
  "interval-empty": { received: "[430, 430)" },
  "dimension-name-ambiguous": {
    received: "hips",
    candidates: "hip-belt girth, hip girth",
    first: "hip-belt girth",
  },
  "dimension-name-unknown": { received: "torso lenght", suggestions: "torso length" },
  "torso-height-not-positive": { received: -5 },
  "torso-heights-reversed": { cervicaleHeightMm: 1015, iliacCrestHeightMm: 1440 },
  "torso-length-straight": { torsoLengthMm: 425, curveSurplusMm: 11 },
  "readings-not-a-list": { received: "“43.2 cm”" },
  "error-model-invalid": { received: -2, part: "repeatMm", largestMm: 1000 },
  "conditions-invalid": { received: "“string”", part: "tool", choices: "tape, cord-and-ruler or short-rule" },
  "reading-apart": { received: "49.7 cm", differenceMm: 36, usualMm: 12 },
  "reading-unit-suspect": { received: "17 cm", other: "17 in" },
  "reading-implausible": { received: "75 cm" },
  "readings-scatter": { sampleMm: 24, usualMm: 8 },
  "readings-drift": { driftMm: 27 },
  "readings-rounded": { count: 4, coarse: "1 cm", fine: "1 mm" },
  "chart-too-large": { characters: 2400000, limit: 1000000 },
  "chart-too-many-sizes": { sizes: 60000, limit: 50000 },
  "chart-too-many-columns": { columns: 140, limit: 100 },
  "chart-json-syntax": { received: "“}”" },
  "chart-json-too-deep": { limit: 32 },
  "chart-csv-size-column-missing": { received: "“torso (cm)”" },
  "chart-value-kind": { what: "sizes", received: "“S, M, L”", form: "a list of sizes" },
  "chart-key-unknown": {
    what: "a chart",
    key: "harnes",
    hint: "; did you mean harness?",
    known: "chart, maker, product, cut, harness, swappable",
  },
  "chart-key-repeated": { key: "cut" },
  "chart-word-unknown": {
    what: "cut",
    received: "“womens”",
    hint: "; did you mean women?",
    known: "women, men, unisex or youth",
  },
  "chart-text-too-long": {
    what: "a cell",
    characters: 412,
    limit: 200,
    received: "“38 to 43 cm, which is…”",
  },
  "chart-text-blank": { what: "maker" },
  "chart-size-repeated": { received: "M" },
  "chart-quantity-unreadable": {
    received: "“big”",
    what: "a capacity",
    form: "a number of litres, such as 45 L",
  },
  "chart-column-unknown": { received: "“colour”" },
  "chart-column-ambiguous": { received: "“back”", candidates: "torso-length or back-waist-length" },
  "chart-column-repeated": { received: "“torso (cm)”" },
  "chart-column-unit-unknown": { received: "“torso (kg)”" },
  "chart-column-unit-unread": { received: "“torso (yd)”", unit: "yd" },
  "chart-row-ragged": { kept: "the missing ones count as not stated" },
  "chart-hip-unstated": { received: "“hip (cm)”" },
  "chart-cell-unreadable": { received: "“medium”" },
  "chart-cell-half-range": { received: "“38-”", length: "38" },
  "chart-cell-unit-differs": { received: "“15-17 in”", cellUnit: "in", columnUnit: "cm" },
  "chart-range-reversed": { received: "43-38 cm" },
  "chart-nominal-outside": { received: "46 cm" },
  "chart-statements-disagree": {
    received: "“38-43 cm” and “15-18 in”",
    differenceMm: 27.2,
    end: "upper end",
    allowedMm: 12.7,
  },
  "chart-statements-differ-in-kind": { received: "“38-43 cm” and “16 in”" },
  "chart-gap-of-writing": { widthMm: 10, fromMm: 430, toMm: 440 },
  "chart-overlap": { widthMm: 20 },
  "chart-overlap-wide": { widthMm: 40, fromMm: 460, toMm: 500 },
  "chart-length-suspicious": {
    size: "XL",
    lengths: "195 to 215 mm",
    slip: "if the figures are inches and not centimetres",
    wouldBe: "495.3 to 546.1 mm",
  },
  "chart-length-implausible": { size: "XL", lengths: "780 to 820 mm" },
  "chart-range-narrow": { widthMm: 6 },
  "chart-range-wide": { widthMm: 200, limitMm: 160 },
  "chart-interval-inferred": { lengths: "440 to 480 mm" },
  "chart-end-open-inside": { end: "upper" },
  "chart-capacity-falls": { otherLitres: 51, sizeLitres: 54 },
  "survey-not-text": { received: "null" },
  "survey-column-missing": { received: "“crest”", columns: "name, c7, height" },
  "survey-column-repeated": { count: 2, received: "“crest”" },
  "survey-cell-unreadable": { received: "“tall”", reason: "it has no number", unit: "cm" },
  "survey-difference-not-positive": { column: "c7", minus: "crest", received: -12 },
  "survey-weight-unreadable": { received: "“heavy”" },
  "survey-value-implausible": { received: 950 },
  "survey-unit-suspect": { count: 38, people: 40 },
  "survey-id-repeated": { received: "“ines”" },
  "survey-people-incomplete": { count: 2, people: 24 },
  "survey-too-few-people": { people: 2, least: 4 },
  "reading-unlikely-given": { received: 498, usualMm: 417, differenceMm: 81, sdMm: 19 },
  "estimate-unlikely": { readingMm: 498, usualMm: 417, differenceMm: 81 },
  "estimate-implausible": { readingMm: 760, differenceMm: 150, fromMm: 200, toMm: 610 },
  "outcome-not-an-object": { received: "a list" },
  "outcome-version-newer": { received: 2, known: 1 },
  "outcome-version-unknown": { received: "“1.0”", known: 1 },
  "outcome-field-missing": { field: "size", wanted: "the size that was given" },
  "outcome-field-invalid": {
    field: "at",
    received: "“yesterday”",
    wanted: "an ISO 8601 date such as 2026-05-04, or a date and time with its offset from UTC",
  },
  "outcome-field-unknown": {
    field: "colour",
    hint: "",
    fields: "v, id, at, person, product, size, outcome, …",
  },
  "outcome-person-identifying": { kind: "an e-mail address" },
  "outcome-id-repeated": { received: "“17”" },
  "evidence-chart-differs": { received: "Doily 45 (Thimblewick)", known: "Teaspoon 35 (Marmalade Loom)" },
  "evidence-size-unknown": { received: "XXL", known: "S, M, L" },
  "evidence-not-usable": { received: "harness-too-long", part: "harness" },
  "check-size-unknown": { kind: "size", received: "XXL", known: "S, M, L" },
  "lending-size-not-judged": { member: "wren", received: "Doily 45, M" },
  "batch-resume-differs": { received: "choices.ndjson" },
  "batch-resume-ahead": { received: "choices.ndjson", lines: 48, left: 8 },
  "columns-belts-apart": { received: "Darning Egg 60" },
  "columns-beliefs-joint": { received: "Doily 45" },
  "columns-girth-unclear": { received: "Accordion 55" },
  "component-zero": { component: "measurer" },
  "components-unconnected": { parts: 2 },
  "icc-study-incomplete": { cells: 3, count: 1 },
  "agreement-measurer-unknown": { received: "wren" },
  "study-not-text": { received: "null" },
  "study-too-large": { characters: 12000000, limit: 10000000 },
  "study-json-syntax": { received: "“}”" },
  "study-json-row": { received: "“43.2 cm”" },
  "study-key-repeated": { received: "“44 cm”" },
  "study-quote": { received: '“"43,2”' },
  "study-column-missing": { role: "subject", columns: "heron 1 (cm), heron 2 (cm)" },
  "study-column-repeated": { received: "“person”", role: "subject" },
  "study-column-unread": { received: "“1.5 (cm)”", limit: 1000 },
  "study-column-unused": { received: "“colour”" },
  "study-dimension-disagrees": { received: "“waist (cm)”", other: "waist girth" },
  "study-dimension-unclear": { received: "“hip (cm)”", candidates: "hip-belt girth or hip girth" },
  "study-dimension-unstated": { examples: "torso-length or hip-belt-girth" },
  "study-cell-beyond": { received: "“43.2”" },
  "study-repeat-unreadable": { received: "“second”", limit: 1000 },
  "study-unit-missing": { column: "heron 1", number: "43.2" },
  "study-cell-repeated": { received: "“43.6 cm”", first: "43.2 cm" },
  "study-reading-impossible": { received: "“4430 mm”" },
  "study-reading-kept": { received: "“4430 mm”" },
  "study-cells-missing": { cells: 48, what: "the torso length" },
  "study-names-alike": { received: "“heron”", other: "“Heron ”", kind: "measurers" },
  "study-no-readings": { received: 12, setAside: 2 },
  "tem-unknown": { received: 12 },
  "tem-subject-unused": { received: "“mia”" },
  "precision-unknown": { received: 12, needed: "nobody was read twice by one measurer" },
  "precision-variance-outlying": { statistic: 0.81, critical: 0.72, percent: 1 },
  "precision-mean-outlying": { statistic: 2.31, critical: 2.13, percent: 5 },
  "trend-unknown": { received: 6 },
  "digits-unknown": { received: 12 },
  "digits-few": { count: 18, classes: 10 },
  "allowance-unknown": { received: "interscye-breadth", known: "torso-length, stature, …" },
  "log-chart-ambiguous": { received: "Doily 45", charts: 2, count: 3 },
  "log-chart-named-by-file": { received: "chart", file: "a/chart.csv" },
  "offset-too-large": { received: "15 m", limit: 200 },
  "outcome-log-busy": {
    received: "outcomes.ndjson",
    who: "process 4711 on shed",
    seconds: 10,
    lock: "outcomes.ndjson.lock",
  },
  "file-not-outcome-log": { received: "members.ndjson" },
  "log-chart-not-found": {
    received: "Doily 45",
    what: "3 outcomes in the log are",
    were: "were",
  },
  "log-exchange-same-size": { received: "M" },
  "log-exchange-against-reason": {
    received: "L",
    size: "M",
    reason: "harness-too-long",
    other: "larger",
    wanted: "smaller",
  },
  "coverage-size-not-judged": { received: "M" },
  "coverage-charts-differ": { other: "Teaspoon 35" },
  "person-not-an-object": { received: "a list" },
  "person-field-misspelt": {
    field: "tol",
    suggestion: "tool",
    fields: "id, cut, stature, tool, readings, …",
  },
  "person-field-unknown": { field: "shoeSize", fields: "id, cut, stature, tool, readings, …" },
  "person-field-missing": { field: "readings", wanted: "an object of readings" },
  "person-field-invalid": { received: "“yes”", field: "firstPack", wanted: "true or false" },
  "person-choice-unknown": {
    received: "“string”",
    field: "tool",
    choices: "tape, cord-and-ruler, short-rule",
  },
  "person-dimension-unknown": {
    field: "torso",
    hint: "; did you mean torso-length?",
    choices: "torso-length, hip-belt-girth, …",
  },
  "person-readings-too-many": { count: 4000, limit: 200 },
  "person-rule-unusable": { received: "2 mm", wanted: "10 mm or more" },
  "person-statures-differ": { received: "171 cm", readMm: 1770, limitMm: 30 },
  "person-stature-not-surveyed": {
    received: "139 cm",
    label: "women",
    use: "were left out",
    fromMm: 1435,
    toMm: 1827,
  },
  "person-stature-implausible": { received: "17 cm" },
  "batch-line-too-long": { limit: 1000000 },
  "batch-chart-name-repeated": { received: "“Doily 45”" },
  "file-missing": { received: "chart.csv" },
  "file-is-directory": { received: "charts" },
  "file-unreadable": { received: "chart.csv", reason: "EACCES" },
  "file-too-large": { received: "chart.csv", limit: 10000000 },
  "file-empty": { received: "chart.csv" },
  "file-utf16": { received: "chart.csv" },
  "file-binary": { received: "chart.csv", offset: 12 },
  "file-not-utf8": { received: "chart.csv" },
  "file-unwritable": { received: "picture.svg", reason: "EACCES" },
  "file-not-json": { received: "me.json" },
};

function cell(words: string): string {
  return words
    .replace(/\{".*\}/, "`$&`")
    .replaceAll("|", "\\|")
    .replaceAll("<", "&lt;")
    .replaceAll("*", "\\*");
}

function isCatalogue(value: unknown): value is Catalogue {
  return typeof value === "object" && value !== null && Object.keys(value).length > 0;
}
