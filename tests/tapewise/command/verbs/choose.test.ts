import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { folderWith, PLAIN_CHART, runCommand } from "../../run-command.ts";

const at = folderWith({
  "plain.csv": PLAIN_CHART,
  "long.csv": "size,torso-length (cm)\nT,50-56\n",
  "faulty.csv": "size,torso-length (cm)\nS,38-43\nM,47-42\nL,46-51\n",
  "escape.csv": "size,torso-length (cm)\n\u001b[31mS,38-43\n\u001b[32mM,42-47\n",
  "nominal.csv": "size,torso-length (cm)\nS,40\nM,44\nL,48\n",
  "open.json": JSON.stringify({
    chart: "Open",
    sizes: [
      { size: "S", "torso-length": { to: "43 cm" } },
      { size: "L", "torso-length": { from: "43 cm" } },
    ],
  }),
  "me.json": JSON.stringify({
    id: "me",
    cut: "women",
    stature: "171 cm",
    readings: { "torso-length": ["43.2 cm", "44 cm"], "hip-belt-girth": ["91 cm", "92 cm"] },
  }),
  "empty.csv": "",
  "namesake.csv": "# chart: plain\nsize,torso-length (cm)\nM,41-49\n",
  "twice.json": '{"readings":{"torso-length":["43 cm"],"torso-length":["53 cm"]}}',
  "girth.csv": "size,chest-girth (cm)\nS,80-95\n",
  "stature.csv": "size,stature (cm)\nS,150-170\nL,168-190\n",
  "belts.json": JSON.stringify({
    chart: "Belts",
    sizes: [{ size: "M", "torso-length": "42-47 cm" }],
    belts: [{ belt: "1", "hip-belt-girth": "70-80 cm" }],
  }),
  "bad-person.json": '{"readings":',
});
const torso = ["--torso-length", "44.5 cm", "44.3 cm", "44.6 cm"];
const choose = (...argv: readonly string[]) => runCommand(["choose", ...argv]);

describe("tapewise choose", () => {
  test("names the size, its chance in figures and words, and the reasons", async () => {
    const { status, stdout, stderr } = await choose(...torso, "--chart", at("plain.csv"));
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toMatch(/^plain$/m);
    expect(stdout).toMatch(
      /Take M\. It has an? (?:\d\d % chance|chance of more than 99 %) to fit\s\((?:very likely|virtually certain)\)\./,
    );
    expect(stdout).toMatch(/^ {2}Why$/m);
    expect(stdout).toContain("M has the best chance to fit");
    expect(stdout).toContain("Caution. Pain, numbness, an injury, a pregnancy or a growing child");
  });

  test("says what it assumed", async () => {
    const { stdout } = await choose(...torso, "--chart", at("plain.csv"));
    expect(stdout.replace(/\s+/g, " ")).toContain(
      "Assumed: read with a tape (--tool); read by yourself (--measured-by); bones not found afresh before each reading (--afresh).",
    );
    const said = await choose(
      ...torso,
      "--tool",
      "tape",
      "--measured-by",
      "helper",
      "--afresh",
      "--chart",
      at("plain.csv"),
    );
    expect(said.stdout).not.toContain("Assumed");
  });

  test("draws all sizes and the body on one ruler of 80 characters", async () => {
    const { stdout } = await choose(...torso, "--chart", at("plain.csv"));
    const lines = stdout.split("\n");
    const row = (label: string) => lines.find((line) => line.startsWith(`  ${label} `)) ?? "";
    expect(lines.filter((line) => line.length > 80)).toEqual([]);
    // The body, 44.5 cm, is inside M (42 to 47) and outside S (38 to 43) and L (46 to 51).
    const body = row("you").indexOf("*");
    expect(row("M").indexOf("[")).toBeLessThan(body);
    expect(row("M").indexOf("]")).toBeGreaterThan(body);
    expect(row("S").indexOf("]")).toBeLessThan(body);
    expect(row("L").indexOf("[")).toBeGreaterThan(body);
    // S and M overlap, and so do M and L.
    expect(row("S").indexOf("]")).toBeGreaterThan(row("M").indexOf("["));
    expect(row("you")).toMatch(/44\.5$/);
  });

  test("draws open ends and inferred ranges in their own way", async () => {
    const { stdout } = await choose(...torso, "--chart", at("open.json"), at("nominal.csv"));
    expect(stdout).toMatch(/^ {2}S +<=+\]/m);
    expect(stdout).toMatch(/^ {2}L +\[=+>/m);
    expect(stdout).toMatch(/^ {2}M +\(\.+\)/m);
  });

  test("reads words without quotation marks as people write them", async () => {
    const quoted = await choose("--torso-length", "44.5 cm", "17.5 in", "--chart", at("plain.csv"));
    const bare = await choose("--torso-length", "44.5", "cm", "17.5", "in", "--chart", at("plain.csv"));
    expect(bare).toEqual(quoted);
  });

  test("uses no unit that is not there, unless it is named", async () => {
    const bare = await choose("--torso-length", "44.5", "--chart", at("plain.csv"));
    expect(bare.status).toBe(1);
    expect(bare.stdout).toBe("");
    expect(bare.stderr).toContain("[length-no-unit]");
    expect(bare.stderr).toContain("44.5 cm or 44.5 in");
    const named = await choose("--torso-length", "44.5", "--unit", "cm", "--chart", at("plain.csv"));
    expect(named.status).toBe(0);
  });

  test("answers with the readings that can be read, and has status 1 for the others", async () => {
    const { status, stdout } = await choose(
      "--torso-length",
      "44.5 cm",
      "long",
      "44 cm",
      "--chart",
      at("plain.csv"),
    );
    expect(status).toBe(1);
    expect(stdout).toContain("from 2 readings");
    expect(stdout.replace(/\s+/g, " ")).toContain(
      "readings.torso-length[1]: long has no number that can be read",
    );
  });

  test("asks about readings that look odd and has status 0", async () => {
    const { status, stdout } = await choose(
      "--torso-length",
      "44 cm",
      "44.2 cm",
      "49 cm",
      "44.1 cm",
      "--chart",
      at("plain.csv"),
    );
    expect(status).toBe(0);
    expect(stdout).toContain("[reading-apart]");
  });

  test("shows lengths in the unit of the readings, or in the one that is asked for", async () => {
    const inches = await choose("--torso-length", "17 1/2 in", "--chart", at("plain.csv"));
    expect(inches.stdout).toContain("Torso length 17.50 in");
    expect(inches.stdout).toMatch(/^ {2}in +\d/m);
    const asked = await choose(
      "--torso-length",
      "17 1/2 in",
      "--show-unit",
      "cm",
      "--chart",
      at("plain.csv"),
    );
    // 17.5 in are 44.45 cm, which is 44.4 cm rounded half to even.
    expect(asked.stdout).toContain("Torso length 44.4 cm");
  });

  test("ranks several charts, the best first", async () => {
    const { stdout } = await choose(...torso, "--chart", at("long.csv"), "--chart", at("plain.csv"));
    expect(stdout).toMatch(/^ {2}1 {2}plain +M/m);
    expect(stdout).toMatch(/^ {2}2 {2}long +T/m);
    expect(stdout.indexOf("1. plain")).toBeLessThan(stdout.indexOf("2. long"));
    expect(stdout).toContain("plain is likelier to fit");
    expect(stdout).toContain("Outside the range of this chart: the torso length lies below its lower end.");
  });

  test("shows the error budget when it is asked for", async () => {
    const { stdout } = await choose(...torso, "--budget", "--chart", at("plain.csv"));
    expect(stdout).toContain("Error budget of the torso length");
    const shares = [...stdout.matchAll(/ (\d+) % {2}(?:yes|no)/g)].map((match) => Number(match[1]));
    expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) - 100)).toBeLessThanOrEqual(
      shares.length / 2,
    );
  });

  test("takes a person from a file, and what the call says over it", async () => {
    const fromFile = await choose("--person", at("me.json"), "--chart", at("plain.csv"));
    expect(fromFile.stdout).toContain("Torso length 43.6 cm");
    expect(fromFile.stdout).toMatch(/Weighed with women .*171 cm tall/);
    const over = await choose(
      "--person",
      at("me.json"),
      "--torso-length",
      "46 cm",
      "--prior",
      "none",
      "--chart",
      at("plain.csv"),
    );
    expect(over.stdout).toContain("Torso length 46.0 cm");
    expect(over.stdout).toContain("Hip-belt girth 91.5 cm");
    expect(over.stdout).not.toContain("Weighed with");
  });

  test("takes a person from standard input", async () => {
    const { status, stdout } = await runCommand(
      ["choose", "--person", "-", "--chart", at("plain.csv"), "--json"],
      readFileSync(at("me.json"), "utf8"),
    );
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ id: "me", choices: [{ chart: "plain" }] });
  });

  test("a person's file that is no JSON is an issue, and one that is missing a wrong call", async () => {
    const bad = await choose("--person", at("bad-person.json"), "--chart", at("plain.csv"));
    expect([bad.status, bad.stdout]).toEqual([1, ""]);
    expect(bad.stderr).toContain("[file-not-json]");
    const missing = await choose("--person", at("nobody.json"), "--chart", at("plain.csv"));
    expect([missing.status, missing.stdout]).toEqual([2, ""]);
    expect(missing.stderr).toContain("[file-missing]");
  });

  test("answers from what can be read of a chart, and has status 1 for the rest", async () => {
    const { status, stdout, stderr } = await choose(...torso, "--chart", at("faulty.csv"));
    expect(status).toBe(1);
    expect(stderr).toContain("[chart-range-reversed]");
    expect(stdout).toContain("Not judged, for the chart does not say enough: M.");
  });

  test("prints the batch's answer as JSON, with belt and next steps", async () => {
    const { status, stdout } = await choose(...torso, "--chart", at("long.csv"), at("plain.csv"), "--json");
    expect(status).toBe(0);
    const answer = JSON.parse(stdout);
    expect(answer.choices.map((choice: { chart: string }) => choice.chart)).toEqual(["plain", "long"]);
    expect(answer.choices[0].next.at(-1).code).toBe("see-fitter");
  });

  test("names the files of charts that bear one name, in text and in JSON", async () => {
    const charts = ["--chart", at("plain.csv"), at("namesake.csv")];
    const names = [`plain (${at("plain.csv")})`, `plain (${at("namesake.csv")})`];
    const { stdout, stderr } = await choose(...torso, ...charts);
    const text = stdout.replace(/\s+/g, " ");
    for (const name of names) expect(text).toContain(name);
    expect(stderr).toContain("[batch-chart-name-repeated]");
    const json = JSON.parse((await choose(...torso, ...charts, "--json")).stdout);
    expect(json.choices.map(({ chart }: { chart: string }) => chart).sort()).toEqual([...names].sort());
  });

  test("prints issues as JSON when nothing could be read", async () => {
    const { status, stdout } = await choose("--torso-length", "44", "--chart", at("plain.csv"), "--json");
    expect(status).toBe(1);
    expect(JSON.parse(stdout)).toMatchObject({ id: null, issues: [{ code: "length-no-unit" }] });
  });

  test("prints issues as JSON when the person's file or every chart cannot be read", async () => {
    const torsoAt = [...torso, "--chart"];
    for (const [argv, status, code] of [
      [["--person", at("bad-person.json"), "--chart", at("plain.csv")], 1, "file-not-json"],
      [["--person", at("nobody.json"), "--chart", at("plain.csv")], 2, "file-missing"],
      [[...torsoAt, at("empty.csv")], 1, "file-empty"],
      [[...torsoAt, at("missing.csv")], 2, "file-missing"],
    ] as const) {
      const ran = await choose(...argv, "--json");
      expect(ran.status).toBe(status);
      expect(JSON.parse(ran.stdout)).toMatchObject({ id: null, issues: [{ code, severity: "error" }] });
    }
    const both = await choose("--person", at("bad-person.json"), "--chart", at("empty.csv"), "--json");
    expect(JSON.parse(both.stdout).issues.map((issue: { code: string }) => issue.code)).toEqual([
      "file-empty",
      "file-not-json",
    ]);
  });

  test("a field that a person's file names twice is an issue and no choice", async () => {
    const { status, stdout, stderr } = await choose("--person", at("twice.json"), "--chart", at("plain.csv"));
    expect([status, stdout]).toEqual([1, ""]);
    expect(stderr).toContain("[person-field-repeated]");
    expect(stderr).toContain("readings.torso-length: ");
  });

  test("a chart that cannot be judged beside one that can is a warning, and the status 0", async () => {
    const girths = ["--chart", at("plain.csv"), at("girth.csv")];
    const { status, stdout } = await choose(...torso, ...girths, "--json");
    expect(status).toBe(0);
    expect(JSON.parse(stdout).issues).toMatchObject([{ code: "chart-not-judged", severity: "warning" }]);
  });

  test("ranks packs by the chance of pack and hip belt together, and shows it", async () => {
    const { stdout } = await choose(
      ...torso,
      "--hip-belt-girth",
      "95 cm",
      "95 cm",
      "--chart",
      at("plain.csv"),
      at("belts.json"),
    );
    expect(stdout).toMatch(/^ {2}2 {2}Belts +M \+ 1 +less than 1 % /m);
    expect(stdout).toMatch(/^ {2}Hip belt: 1, with a chance of less than 1 % to fit\.$/m);
  });

  test("a stature alone answers a chart that sizes by it", async () => {
    const { status, stdout } = await choose("--stature", "180 cm", "--chart", at("stature.csv"), "--json");
    expect([status, JSON.parse(stdout).choices[0].pick]).toEqual([0, "L"]);
  });

  test("lets no escape sequence of a chart reach the terminal", async () => {
    const text = await choose(...torso, "--chart", at("escape.csv"));
    const json = await choose(...torso, "--chart", at("escape.csv"), "--json");
    expect(text.stdout + text.stderr + json.stdout).not.toContain("\u001b");
  });
});

describe("outcomes of charts that are called alike", () => {
  const CHART = "size,torso-length (cm)\nS,38-43\nM,43-48\n";
  const row = (id: string) =>
    JSON.stringify({
      ...{ v: 1, id, at: "2026-05-04", product: { chart: "chart" }, size: "M" },
      ...{ outcome: "exchanged", reason: "harness-too-long" },
      estimates: { "torso-length": { mm: 441, uncertaintyMm: 8 } },
    });
  const alike = folderWith({
    "chart.csv": CHART,
    "chart.json": '{"sizes":[{"size":"S","torso-length":"38-43 cm"},{"size":"M","torso-length":"43-48 cm"}]}',
    "log.ndjson": `${row("a")}\n${row("b")}\n`,
  });
  const choose = (...charts: readonly string[]) =>
    runCommand([
      ...["choose", "--torso-length", "43.4 cm", "43.6 cm", "--log", alike("log.ndjson")],
      ...["--chart", ...charts.map(alike), "--json"],
    ]);

  test("count for neither, for it cannot be told whose they are", async () => {
    const { stdout, stderr } = await choose("chart.csv", "chart.json");
    expect(stderr.replace(/\s+/g, " ")).toMatch(
      /2 charts that were given are called chart.*not used: 2.*\[log-chart-ambiguous\]/,
    );
    expect(JSON.parse(stdout).byLog).toMatchObject([
      { chart: `chart (${alike("chart.csv")})`, outcomes: 0, known: [] },
      { chart: `chart (${alike("chart.json")})`, outcomes: 0, known: [] },
    ]);
  });

  test("count for the only one, which says that it has no name but that of its file", async () => {
    const { stdout, stderr } = await choose("chart.csv");
    expect(stderr).toContain("[log-chart-named-by-file]");
    expect(stderr).not.toContain("[log-chart-ambiguous]");
    expect(JSON.parse(stdout).byLog[0].outcomes).toBe(2);
  });
});
