import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { safeParseStudy, summariseStudy } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";
import { folderWith, runCommand } from "../../run-command.ts";

const CLASS = fileURLToPath(new URL("../../../../packages/tapewise/demo/class-evening.csv", import.meta.url));

const at = folderWith({
  "small.csv":
    "subject,torso A1 (cm),torso A2 (cm),torso B1 (cm)\nmia,43,43.4,43.5\nleo,48,48.2,48\nana,45,45.3,45.1\n",
  "inches.csv": "subject,torso A1 (in),torso A2 (in)\nmia,17,17 1/8\nleo,19,19\nana,18,18 1/8\n",
  "bare.tsv": "who\tA1\tA2\nmia\t43\t43,4\nleo\t48\t48,2\nana\t45,1\t45\n",
  "rows.json":
    '[{"subject":"mia","measurer":"A","repeat":1,"value":"43 cm"},{"subject":"mia","measurer":"A","repeat":2,"value":"43.4 cm"}]',
  "broken.json": '[{"subject":"mia",}]',
  "one.csv": "subject,torso A1 (cm)\nmia,43\n",
});
const study = (...argv: readonly string[]) => runCommand(["study", ...argv]);
const flat = (text: string) => text.replace(/\s+/g, " ");

describe("tapewise study", () => {
  test("a class of thirty gives its report in one call; the impossible value is named with its cell", async () => {
    const { status, stdout, stderr } = await study(CLASS);
    expect({ status, stderr }).toEqual({ status: 1, stderr: "" });
    const text = flat(stdout);
    expect(text).toContain(
      "30 subjects, 3 measurers (Wren, Tobias, Maren), up to 2 repeats: 177 readings used, 2 missing, 1 set aside.",
    );
    expect(text).toContain(
      "line 15, column 15: 4.17, reading 1 of ivo by Tobias, is outside what the torso length can be",
    );
    expect(text).toContain("it was set aside.");
    expect(text).toContain("line 8, column 21: no reading 2 of dara by Tobias (left empty).");
    expect(text).toContain("line 20, column 31: no reading 2 of mika by Maren (left empty).");
    for (const title of [
      ...[
        "Technical error of measurement (TEM)",
        "Precision after ISO 5725-2",
        "Intraclass correlation (ICC)",
      ],
      ...["Agreement of measurers (Bland and Altman)", "Smallest change that is more than error"],
      ...["Trend over repeats", "Last digits", "What to do next"],
    ]) {
      expect(stdout).toContain(title);
    }
    expect(stdout.match(/What it means: /g)).toHaveLength(7);
    expect(stdout).not.toMatch(/NaN|undefined|Infinity/);
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test("the figures are those of the library", async () => {
    const parsed = safeParseStudy(readFileSync(CLASS, "utf8"));
    if (!parsed.ok) throw new Error("the demo cannot be read");
    const { technicalError, precision } = summariseStudy(parsed.value);
    const { stdout } = await study(CLASS);
    expect(stdout).toMatch(
      new RegExp(`^ {2}within measurers +${((technicalError?.intra?.mm.value ?? 0) / 10).toFixed(2)} `, "m"),
    );
    expect(stdout).toMatch(
      new RegExp(
        `^ {2}R, limit for two measurers +${((precision?.reproducibilityLimitMm ?? 0) / 10).toFixed(2)}$`,
        "m",
      ),
    );
  });

  test("prints JSON: every cell that holds no reading, the report, what to do, the issues with their places", async () => {
    const { status, stdout } = await study(CLASS, "--json");
    expect(status).toBe(1);
    const answer = JSON.parse(stdout);
    expect(answer.study.setAside).toEqual([
      expect.objectContaining({
        subject: "ivo",
        measurer: "Tobias",
        repeat: 1,
        text: "4.17",
        code: "study-reading-impossible",
      }),
    ]);
    expect(answer.study.readings).toHaveLength(177);
    expect(answer.study.missing.map((cell: { place: unknown }) => cell.place)).toEqual([
      { line: 8, column: 21, file: CLASS },
      { line: 20, column: 31, file: CLASS },
    ]);
    expect(answer.report.size).toEqual({
      subjects: 30,
      measurers: 3,
      repeats: 2,
      readings: 177,
      missing: 2,
      setAside: 1,
    });
    expect(answer.report.agreement).toHaveLength(3);
    expect(answer.next[0]).toEqual({ code: expect.any(String), sentence: expect.any(String) });
    expect(
      answer.issues.map(({ code, place }: { code: string; place?: { line: number } }) => [code, place?.line]),
    ).toEqual([
      ["study-reading-impossible", 15],
      ["study-cells-missing", undefined],
    ]);
    expect(stdout).not.toContain("null");
  });

  test("impossible readings are kept when that is asked for, and it is told", async () => {
    const { status, stdout } = await study(CLASS, "--keep-impossible");
    expect(status).toBe(0);
    expect(flat(stdout)).toContain("178 readings used, 2 missing, 0 set aside.");
    expect(stdout).toContain("[study-reading-kept]");
  });

  test("writes a page that needs nothing else", async () => {
    const { status, stdout } = await study(at("small.csv"), "--html", at("report.html"));
    expect(status).toBe(0);
    const page = readFileSync(at("report.html"), "utf8");
    expect(page).toContain("<h1>Reliability of the torso length: small.csv</h1>");
    expect(page.match(/<svg /g)).toHaveLength(3);
    expect(page).not.toMatch(/<script|<link|src=/);
    expect(stdout).toContain("Reliability of torso length (small.csv)");
  });

  test.each([
    [["--picture", "readings"], "Readings of the torso length by subject"],
    [["--picture", "agreement"], "A less B: differences over means"],
    [["--picture", "agreement", "--pair", "B", "A"], "A less B: differences over means"],
    [["--picture", "errors"], "Where the error of one reading comes from"],
    [[], "Readings of the torso length by subject"],
  ])("writes the picture %j", async (argv, title) => {
    await study(at("small.csv"), "--svg", at("one.svg"), ...argv);
    const svg = readFileSync(at("one.svg"), "utf8");
    expect(svg).toMatch(/^<svg .*<\/svg>\n$/s);
    expect(svg).toContain(title);
  });

  test("says where a picture cannot be drawn or written", async () => {
    const none = await study(
      at("small.csv"),
      "--svg",
      at("two.svg"),
      "--picture",
      "agreement",
      "--pair",
      "A",
      "C",
    );
    expect(none.status).toBe(1);
    expect(none.stderr).toContain("[study-picture-unknown]");
    const nowhere = await study(at("small.csv"), "--html", at("nowhere/a.html"));
    expect(nowhere.status).toBe(2);
    expect(nowhere.stderr).toContain("[file-unwritable]");
    expect(nowhere.stdout).toContain("Technical error");
  });

  test("lengths are shown in the unit of the readings, or in the one asked for", async () => {
    const inches = await study(at("inches.csv"));
    expect(inches.stdout).toContain("lengths in in\n");
    // TEM² = (2 · (25.4/8)²/2) / 3 mm², in inches √((1/8)²/3).
    expect(inches.stdout).toMatch(
      new RegExp(`^ {2}within measurers +${Math.sqrt(1 / 64 / 3).toFixed(3)} `, "m"),
    );
    expect((await study(at("inches.csv"), "--show-unit", "cm")).stdout).toContain("lengths in cm");
  });

  test("what the file leaves out can be said", async () => {
    const refused = await study(at("bare.tsv"));
    expect(refused.status).toBe(1);
    expect(refused.stderr).toContain("[study-unit-missing]");
    const { status, stdout } = await study(
      ...[at("bare.tsv"), "--unit", "cm", "--dimension", "torso-length", "--decimal-mark", "comma"],
    );
    expect(status).toBe(0);
    expect(stdout).toContain("Reliability of torso length (bare.tsv)");
  });

  test("the conventions of intervals and limits can be said", async () => {
    const { stdout } = await study(at("small.csv"), "--confidence", "90%", "--limits", "2");
    expect(stdout).toContain("90 %");
    expect(flat(stdout)).toContain("the mean difference and 2 standard deviations");
    const single = "subject,torso A1 (cm),torso B1 (cm)\nmia,43,43.5\nleo,48,48\nana,45,45.1\n";
    const { stdout: old } = await runCommand(["study", "-", "--limits-method", "approximate-1986"], single);
    expect(flat(old)).toContain("Bland and Altman's approximation of 1986");
  });

  test("reads JSON and standard input", async () => {
    const { status, stdout } = await study(at("rows.json"), "--json");
    expect(status).toBe(0);
    expect(JSON.parse(stdout).report.technicalError.intra.mm.value).toBeCloseTo(Math.sqrt(16 / 2), 9);
    const input = await runCommand(["study", "-"], readFileSync(at("small.csv"), "utf8"));
    expect(input.status).toBe(0);
    expect(input.stdout).toMatch(/^Reliability of torso length; lengths in cm\n/);
  });

  test("what cannot be read is told with its place, and in JSON where that is asked for", async () => {
    const { status, stdout, stderr } = await study(at("broken.json"));
    expect({ status, stdout }).toEqual({ status: 1, stdout: "" });
    expect(stderr).toContain("broken.json:1:19:");
    const json = await study(at("broken.json"), "--json");
    expect(JSON.parse(json.stdout).issues[0]).toMatchObject({
      code: "study-json-syntax",
      place: { line: 1 },
    });
    expect((await study(at("missing.csv"))).status).toBe(2);
    const nothing = await study(at("one.csv"));
    expect(nothing.status).toBe(1);
    expect(nothing.stdout).toContain("[tem-unknown]");
  });

  test.each([
    [[], "missing required argument"],
    [["x.csv", "--confidence", "2"], "between 0 and 1"],
    [["x.csv", "--limits", "0"], "above 0"],
    [["x.csv", "--pair", "A"], "two measurers"],
    [["x.csv", "--picture", "pie"], "readings, agreement, errors"],
    [["x.csv", "--dimension", "head"], "torso-length"],
    [["x.csv", "y.csv"], "too many arguments"],
  ])("%j is a wrong call", async (argv, says) => {
    const { status, stdout, stderr } = await study(...argv);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain(says);
  });
});
