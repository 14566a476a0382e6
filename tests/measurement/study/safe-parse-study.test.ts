import { parseStudy, type Study, type StudyOptions, safeParseStudy } from "@tapewise/measurement";
import { InvalidArgumentError, IssuesError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const torso = { dimension: "torso-length" } as const;
const codes = (text: unknown, options: StudyOptions = torso): string[] =>
  safeParseStudy(text, options).issues.map((issue) => issue.code);
const cells = (study: Study): string[] =>
  study.readings.map(({ subject, measurer, repeat, mm }) => `${subject} ${measurer} ${repeat}: ${mm}`);

const expected = ["mia Ann 1: 432", "mia Ann 2: 436", "mia Ben 1: 440", "leo Ann 1: 480", "leo Ben 1: 475"];

describe("one study in every layout", () => {
  test.each<[string, string, StudyOptions]>([
    [
      "long, unit in the header",
      "subject,measurer,repeat,value (cm)\nmia,Ann,1,43.2\nmia,Ann,2,43.6\nmia,Ben,1,44\nleo,Ann,1,48\nleo,Ben,1,47.5\n",
      torso,
    ],
    [
      "long, semicolons, decimal commas, other words, the dimension in the header, no repeats",
      "Participant;Observer;Torso length, cm\nmia;Ann;43,2\nmia;Ann;43,6\nmia;Ben;44\nleo;Ann;48\nleo;Ben;47,5",
      {},
    ],
    [
      "long, tabs, a unit in each cell or in a column of its own",
      "id\trater\ttrial\treading\tunit\tnote\nmia\tAnn\tr1\t43.2\tcm\t\nmia\tAnn\tr2\t436\tmm\t\nmia\tBen\tr1\t44 cm\tin\t\nleo\tAnn\tr1\t0.48\tm\t\nleo\tBen\tr1\t47.5\tcm\t",
      torso,
    ],
    ["wide", "subject,Ann 1 (cm),Ann 2 (cm),Ben 1 (cm)\nmia,43.2,43.6,44\nleo,48,,47.5", torso],
    [
      "wide, the dimension in the headers, remarks, a byte order mark",
      "\uFEFF# spring meeting\n\nwho,torso-length Ann1 [mm],torso-length Ann2 [mm],torso-length Ben1 [mm]\n# the crew\nmia,432,436,440\nleo,480,NA,475\n",
      {},
    ],
    [
      "wide, units in the cells",
      'subject,Ann r1,Ann r2,Ben r1\nmia,43.2cm,43.6cm,"44 cm"\nleo,480 mm,-,0.475 m',
      torso,
    ],
    [
      "a column of repeats, a column for each measurer",
      "subject,repeat,Ann (cm),Ben (cm)\nmia,1,43.2,44\nmia,2,43.6,\nleo,1,48,47.5",
      torso,
    ],
    [
      "a column of measurers, a column for each repeat",
      "subject,measurer,Reading 1 (cm),Reading 2 (cm)\nmia,Ann,43.2,43.6\nmia,Ben,44,n/a\nleo,Ann,48,\nleo,Ben,47.5,.",
      torso,
    ],
    [
      "JSON, a list",
      '[{"subject":"mia","measurer":"Ann","repeat":1,"value":"43.2 cm"},{"subject":"mia","measurer":"Ann","repeat":2,"value":"43.6 cm"},{"subject":"mia","measurer":"Ben","repeat":1,"value":"44 cm"},{"subject":"leo","measurer":"Ann","repeat":1,"value":"48 cm"},{"subject":"leo","measurer":"Ann","repeat":2,"value":null},{"subject":"leo","measurer":"Ben","repeat":1,"value":"47.5 cm"}]',
      torso,
    ],
    [
      "JSON, an object with what is true of all readings",
      '{"dimension":"torso length","unit":"cm","readings":[{"subject":"mia","measurer":"Ann","value":43.2},{"subject":"mia","measurer":"Ann","value":43.60},{"subject":"mia","measurer":"Ben","value":44},{"subject":"leo","measurer":"Ann","value":48},{"subject":"leo","measurer":"Ben","value":47.5}]}',
      {},
    ],
  ])("%s", (_, text, options) => {
    const outcome = safeParseStudy(text, options);
    const study = outcome.ok ? outcome.value : undefined;
    expect(study?.dimension).toBe("torso-length");
    expect(
      study?.readings.map((each) => `${each.subject} ${each.measurer} ${each.repeat}: ${each.mm}`).sort(),
    ).toEqual([...expected].sort());
    expect(study?.subjects).toEqual(["mia", "leo"]);
    expect(study?.measurers).toEqual(["Ann", "Ben"]);
    expect(study?.missing.map((cell) => `${cell.subject} ${cell.measurer} ${cell.repeat}`).sort()).toEqual([
      "leo Ann 2",
      "leo Ben 2",
      "mia Ben 2",
    ]);
    expect(outcome.issues.filter((issue) => issue.severity === "error")).toEqual([]);
    expect(outcome.issues.map((issue) => issue.code)).toContain("study-cells-missing");
  });
});

test("a reading keeps its text, its unit, its step and its place", () => {
  const study = parseStudy("subject,A1 (cm)\nmia,43.20\n", { ...torso, file: "crew.csv" });
  expect(study.readings).toEqual([
    {
      subject: "mia",
      measurer: "A",
      repeat: 1,
      mm: 432,
      text: "43.20",
      unit: "cm",
      stepMm: 0.1,
      path: ["rows", 0, "A1 (cm)"],
      place: { file: "crew.csv", line: 2, column: 5 },
    },
  ]);
  const json = parseStudy('{"unit":"cm",\n"readings":[{"subject":1,"value":43.20}]}', torso);
  expect(json.readings[0]).toMatchObject({ text: "43.20", stepMm: 0.1, place: { line: 2, column: 34 } });
});

test("the headers of the wide layout", () => {
  const header = "subject,A1,A2,Observer 1 reading 2,O2R1,Ben,Rater 3,Reading 4,Peter1,Mia rep 2";
  const text = `${header}\ns,${Array.from({ length: 9 }, (_, i) => 400 + i).join(",")}`;
  expect(cells(parseStudy(text, { ...torso, unit: "mm", measurer: "Zoe" }))).toEqual([
    "s A 1: 400",
    "s A 2: 401",
    "s Observer 1 2: 402",
    "s O2 1: 403",
    "s Ben 1: 404",
    "s Rater 3 1: 405",
    "s Zoe 4: 406",
    "s Peter 1: 407",
    "s Mia 2: 408",
  ]);
});

test("the layout can be told", () => {
  expect(codes("subject,Ann (cm),Ben (cm)\nmia,43,44", { ...torso, layout: "long" })).toEqual([
    "study-column-unused",
    "study-column-unused",
    "study-column-missing",
  ]);
  expect(cells(parseStudy("subject,torso (cm)\nmia,43\nmia,44", { layout: "long" }))).toEqual([
    "mia the measurer 1: 430",
    "mia the measurer 2: 440",
  ]);
  expect(codes("subject,Ann (cm)\nmia,43", { ...torso, layout: "json" })).toEqual(["study-json-syntax"]);
});

describe("missing cells are counted, and never errors", () => {
  test("with the reason and the place of each", () => {
    const outcome = safeParseStudy("subject,A1 (cm),A2 (cm),B1 (cm)\nmia,43,,–\nleo,long,n/a,44\n", torso);
    const missing = outcome.ok ? outcome.value.missing : [];
    expect(
      missing.map(({ subject, measurer, repeat, because, place }) => [
        `${subject} ${measurer} ${repeat}`,
        because,
        place && [place.line, place.column],
      ]),
    ).toEqual([
      ["mia A 2", "left-empty", [2, 8]],
      ["mia B 1", "left-empty", [2, 9]],
      ["leo A 1", "unreadable", [3, 5]],
      ["leo A 2", "left-empty", [3, 10]],
      ["mia B 2", "not-in-data", undefined],
      ["leo B 2", "not-in-data", undefined],
    ]);
    expect(outcome.issues.map(({ code, severity }) => [code, severity])).toEqual([
      ["length-not-a-number", "error"],
      ["study-cells-missing", "warning"],
    ]);
    expect(outcome.issues[1]?.facts).toMatchObject({ count: 6, cells: 8 });
  });

  test("the marks can be told", () => {
    const study = parseStudy("subject,A1 (cm)\nmia,none\nleo,44\n", { ...torso, missingMarks: ["None"] });
    expect(study.missing.map((cell) => cell.because)).toEqual(["left-empty"]);
    expect(codes("subject,A1 (cm)\nmia,-\nleo,44\n", { ...torso, missingMarks: ["x"] })).toContain(
      "length-not-a-number",
    );
  });

  test("a short row lacks readings, a long one has too many cells", () => {
    const outcome = safeParseStudy("subject,A1 (cm),A2 (cm),\nmia,43\nleo,44,45,,46\n", torso);
    expect(outcome.issues.map(({ code, place }) => [code, place?.line, place?.column])).toEqual([
      ["study-cell-beyond", 3, 12],
      ["study-cells-missing", undefined, undefined],
    ]);
  });
});

describe("what people cannot have is set aside visibly", () => {
  // The limits of a torso length lie well within 50 mm and 2 m.
  const text = "subject,A1 (cm),A2 (cm)\nmia,43.2,432\nleo,44,4.4\n";

  test("an issue names the cell, and the study lists the reading", () => {
    const outcome = safeParseStudy(text, torso);
    expect(outcome.ok && cells(outcome.value)).toEqual(["mia A 1: 432", "leo A 1: 440"]);
    expect(outcome.ok && outcome.value.setAside.map(({ subject, mm, code }) => [subject, mm, code])).toEqual([
      ["mia", 4320, "study-reading-impossible"],
      ["leo", 44, "study-reading-impossible"],
    ]);
    expect(outcome.ok && outcome.value.missing).toEqual([]);
    expect(outcome.issues.map(({ code, received, place }) => [code, received, place])).toEqual([
      ["study-reading-impossible", "432", { line: 2, column: 10 }],
      ["study-reading-impossible", "4.4", { line: 3, column: 8 }],
    ]);
    expect(outcome.issues[0]?.message).toMatch(
      /^432, reading 2 of mia by A, is outside what the torso length can be in people \(\d+ to \d+ mm\); it was set aside$/,
    );
  });

  test("unless the caller keeps it", () => {
    const outcome = safeParseStudy(text, { ...torso, keepImpossible: true });
    expect(outcome.ok && outcome.value.readings).toHaveLength(4);
    expect(outcome.issues.map(({ code, severity }) => [code, severity])).toEqual([
      ["study-reading-kept", "warning"],
      ["study-reading-kept", "warning"],
    ]);
  });

  test("limits for grown people are closer than those that let children through", () => {
    const stature = "subject,stature A1 (cm)\nmia,100\nleo,170\n";
    expect(codes(stature, {})).toEqual([]);
    expect(codes(stature, { people: "adult" })).toEqual(["study-reading-impossible"]);
  });

  test("nothing is held against people where nobody says what was measured", () => {
    expect(codes("subject,A1 (cm)\nmia,4320\n", {})).toEqual(["study-dimension-unstated"]);
  });
});

describe("nothing is lost without a word", () => {
  test.each<[string, string, string[], StudyOptions?]>([
    ["a cell twice", "subject,measurer,repeat,mm\nmia,A,1,432\nmia,A,1,435\n", ["study-cell-repeated"]],
    [
      "no unit anywhere",
      "subject,A1,A2\nmia,43,44\nleo,45,46\n",
      ["study-no-readings", "study-unit-missing", "study-unit-missing"],
    ],
    ["no unit in some cells", "subject,A1\nmia,43 cm\nleo,45\n", ["length-no-unit", "study-cells-missing"]],
    [
      "a unit that is none",
      "subject,measurer,reading,unit\nmia,A,43,cm\nleo,A,44,furlong\n",
      ["length-unit-unknown", "length-no-unit", "study-cells-missing"],
    ],
    [
      "rows of nobody",
      "subject,measurer,mm\n,A,432\nmia,,433\nleo,A,434\n",
      ["study-subject-blank", "study-measurer-blank"],
    ],
    [
      "repeats that are none",
      "subject,measurer,repeat,mm\nmia,A,0,432\nmia,A,soon,433\nmia,A,1,434\nmia,A,1001,435\n",
      ["study-repeat-unreadable", "study-repeat-unreadable", "study-repeat-unreadable"],
    ],
    [
      "columns beside",
      "subject,measurer,mm,weather,id\nmia,A,432,fair,7\n",
      ["study-column-unused", "study-column-repeated"],
    ],
    [
      "names alike",
      "subject,measurer,mm\nmia,Ann,432\nMia,ann,433\n",
      ["study-names-alike", "study-names-alike", "study-cells-missing"],
    ],
    [
      "an open quotation mark",
      'subject,A1 (mm)\nmia,"432\nleo,440\n',
      ["study-quote", "length-extra-text", "study-cells-missing"],
    ],
    [
      "text behind a quotation",
      'subject,A1 (mm)\nmia,"43"2\nleo,440\n',
      ["study-quote", "length-extra-text", "study-cells-missing"],
    ],
    [
      "several dimensions",
      "subject,measurer,torso (cm),waist girth (cm)\nmia,A,43,80\n",
      ["study-values-several"],
      {},
    ],
    [
      "another dimension beside the one asked for",
      "subject,measurer,torso (cm),waist girth (cm)\nmia,A,43,80\n",
      ["study-column-unused"],
    ],
    ["another dimension", "subject,measurer,chest girth (cm)\nmia,A,43\n", ["study-dimension-disagrees"]],
    [
      "a dimension that may be several",
      "subject,measurer,hips (cm)\nmia,A,93\n",
      ["study-dimension-unclear", "study-dimension-unstated"],
      {},
    ],
    ["a header that is only a remark", "subject,A1 (cm),(cm)\nmia,43,44\n", []],
    ["a repeat too large", "subject,A1 (cm),A2000 (cm)\nmia,43,44\n", ["study-column-unread"]],
    ["no readings", "subject,A1 (cm)\n", ["study-no-readings"]],
    ["nothing", " \n", ["study-empty"]],
    ["remarks alone", "# nothing here\n", ["study-empty"]],
    ["no subjects", "measurer,repeat,mm\nA,1,432\n", ["study-column-missing"]],
  ])("%s", (_, text, expectedCodes, options) => {
    expect(codes(text, options)).toEqual(expectedCodes);
  });

  test("a subject may be called #1", () => {
    expect(parseStudy("subject,A1 (cm)\n#1,43\n#2,44\n", torso).subjects).toEqual(["#1", "#2"]);
  });

  test("a second entry of a cell is set aside, not taken", () => {
    const study = parseStudy("subject,measurer,repeat,mm\nmia,A,1,432\nmia,A,1,435\n", torso);
    expect(study.readings.map(({ mm }) => mm)).toEqual([432]);
    expect(study.setAside.map(({ mm, code }) => [mm, code])).toEqual([[435, "study-cell-repeated"]]);
  });

  test("what is no text, or too much of it", () => {
    expect(codes(undefined)).toEqual(["study-not-text"]);
    expect(codes("x".repeat(10_000_001))).toEqual(["study-too-large"]);
  });

  test("a grid that nobody can have measured", () => {
    const rows = Array.from({ length: 1100 }, (_, i) => `s${i},m${i},432`).join("\n");
    expect(codes(`subject,measurer,mm\n${rows}`)).toEqual(["study-too-large"]);
  });
});

describe("JSON that is none, or no study", () => {
  test.each([
    ['[{"subject": "mia",}]', "study-json-syntax", 1, 20],
    ['[{"subject":\n "mia" "value": 1}]', "study-json-syntax", 2, 8],
    ["[", "study-json-syntax", 1, 2],
    ['["a\u0001"]', "study-json-syntax", 1, 2],
    ["[] []", "study-json-syntax", 1, 4],
    ["[[[[[[[1]]]]]]]", "study-json-syntax", 1, 7],
    ['{"dimension": "torso-length"}', "study-json-shape", 1, 1],
    ['{"readings": 3}', "study-json-shape", 1, 14],
  ])("%s", (text, code, line, column) => {
    const [issue] = safeParseStudy(text, torso).issues;
    expect([issue?.code, issue?.place]).toEqual([code, { line, column }]);
  });

  test("a key twice, a row that is none, a key that nobody knows, a value of the wrong kind", () => {
    const text = `{"unit": "mm", "season": "spring", "readings": [
      {"subject": "mia", "value": 432, "value": 433},
      5,
      {"subject": "leo", "value": {"mm": 440}}]}`;
    const outcome = safeParseStudy(text, torso);
    expect(outcome.issues.map(({ code, place }) => [code, place?.line])).toEqual([
      ["study-column-unused", 1],
      ["study-key-repeated", 2],
      ["study-json-row", 3],
      ["length-not-a-number", 4],
      ["study-cells-missing", undefined],
    ]);
    expect(outcome.ok && outcome.value.readings.map(({ mm }) => mm)).toEqual([432]);
  });

  test("a unit or a dimension that is none", () => {
    expect(codes('{"unit":"stone","dimension":"nose","readings":[{"subject":1,"value":4}]}', {})).toEqual([
      "study-no-readings",
      "dimension-name-unknown",
      "length-unit-wrong-kind",
      "study-unit-missing",
    ]);
  });
});

test("parseStudy throws what safeParseStudy reports", () => {
  expect(() => parseStudy("", torso)).toThrow(IssuesError);
});

test("options that no user could have given are refused", () => {
  for (const options of [{ dimension: "nose" }, { unit: "yd" }, { layout: "round" }, { people: "elf" }]) {
    expect(() => safeParseStudy("a", options as unknown as StudyOptions)).toThrow(InvalidArgumentError);
  }
});
