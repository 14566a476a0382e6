import { appendFileSync, readFileSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { folderWith, runCommand } from "../../run-command.ts";

const row = (id: string, person: string, more: object) =>
  JSON.stringify({
    v: 1,
    id,
    at: "2026-05-04",
    person,
    product: { maker: "Gingham", chart: "Doily 45" },
    size: "M",
    outcome: "kept",
    ...more,
  });
const TOO_LONG = {
  outcome: "exchanged",
  reason: "harness-too-long",
  estimates: { "torso-length": { mm: 441, uncertaintyMm: 8 } },
};
/** Packs that were kept in the middle of the range. */
const STEADY = {
  product: { maker: "Aspic", chart: "Spoon 30" },
  estimates: { "torso-length": { mm: 435, uncertaintyMm: 6 } },
};
const many = Array.from({ length: 30 }, (_, k) => row(`r${k}`, `p${k}`, TOO_LONG)).join("\n");
const CHART = "# chart: Doily 45\n# maker: Gingham\nsize,torso-length (cm)\nS,38-43\nM,43-48\n";
const at = folderWith({
  "chart.csv": CHART,
  "other.csv": "# chart: Spoon 30\n# maker: Gingham\nsize,torso-length (cm)\nM,43-48\n",
  "steady.csv": "# chart: Spoon 30\n# maker: Aspic\nsize,torso-length (cm)\nM,41.4-45.6\n",
  "unknown.csv": "# chart: Bodkin 40\n# maker: Bombazine\nsize,torso-length (cm)\nM,41-46\n",
  "steady.ndjson": `${Array.from({ length: 60 }, (_, k) => row(`s${k}`, `p${k}`, STEADY)).join("\n")}\n`,
  "strange.ndjson": `${row("a", "heron", {})}\n${row("b", "knot", { size: "Q" })}\n${row("c", "wren", { size: "Q" })}\n`,
  "many.ndjson": `${many}\n`,
  "few.ndjson": `${row("a", "heron", {})}\n${row("b", "knot", { size: "S", estimates: { "torso-length": { mm: 410, uncertaintyMm: 8 } } })}\n`,
  "broken.ndjson": `${row("a", "heron", {})}\nnot json\n${row("a", "heron", {})}\n{"v":1,"at":"2026-0`,
  "gone.ndjson": `${row("a", "heron", {})}\n${row("b", "magpie", {})}\n${row("c", "heron", TOO_LONG)}\n`,
  "three.csv": "# chart: Doily 45\nsize,torso-length (cm)\nS,38-43\nM,43-48\nL,48-53\n",
  "alone.ndjson": `${row("a", "heron", {})}\n`,
  "crew.ndjson": `{"id":"wren","readings":{"torso-length":["43.4 cm","43.6 cm"]}}\n{"id":"ben","readings":{"torso-length":["39 cm"]}}\n`,
});
const log = (...argv: readonly string[]) => runCommand(["log", ...argv]);
const torso = ["--torso-length", "44 cm", "43.6 cm"] as const;
const add = (file: string, outcome: string, ...argv: readonly string[]) =>
  log("add", file, outcome, "--chart", at("chart.csv"), ...argv);

describe("tapewise log add", () => {
  test("begins a log, and keeps what was believed and no reading", async () => {
    const file = at("new.ndjson");
    const noted = await add(
      file,
      "kept",
      "--size",
      "M",
      "--pseudonym",
      "heron",
      "--at",
      "2026-05-04",
      ...torso,
    );
    expect(noted.status).toBe(0);
    expect(noted.stdout.replace(/\s+/g, " ")).toContain("Doily 45, M, kept");
    const { id, ...kept } = JSON.parse(readFileSync(file, "utf8"));
    expect(id).toEqual(expect.any(String));
    expect(kept).toMatchObject({
      v: 1,
      at: "2026-05-04",
      person: "heron",
      product: { maker: "Gingham", chart: "Doily 45" },
      size: "M",
      outcome: "kept",
    });
    // The mean of 440 and 436 mm.
    expect(kept.estimates["torso-length"].mm).toBe(438);
    expect(JSON.stringify(kept)).not.toContain("43.6");
  });

  test("takes a reason and the size in its place, and prints the row as JSON", async () => {
    const { status, stdout } = await add(
      at("json.ndjson"),
      "exchanged",
      ...["--size", "M", "--reason", "harness-too-long", "--exchanged-for", "S", "--id", "x1", "--json"],
      ...torso,
    );
    expect(status).toBe(0);
    expect(JSON.parse(stdout).row).toMatchObject({
      id: "x1",
      outcome: "exchanged",
      reason: "harness-too-long",
      exchangedFor: "S",
    });
    // Without --at it is the day of the clock, in the form of a date.
    expect(JSON.parse(stdout).row.at).toMatch(/^\d{4}-\d\d-\d\d$/);
  });

  test("says that a row without readings teaches nothing", async () => {
    const { status, stderr } = await add(at("plain.ndjson"), "kept", "--size", "M");
    expect(status).toBe(0);
    expect(stderr.replace(/\s+/g, " ")).toContain("teaches nothing of the chart");
  });

  test.each([
    [["kept", "--size", "XL"], "evidence-size-unknown"],
    [["exchanged", "--size", "M", "--exchanged-for", "XL"], "evidence-size-unknown"],
    [["kept", "--size", "M", "--reason", "harness-too-long"], "outcome-kept-yet-exchanged"],
    [["kept", "--size", "M", "--at", "yesterday"], "outcome-field-invalid"],
    [["kept", "--size", "M", "--torso-length", "44"], "length-no-unit"],
  ])("%j adds nothing", async ([outcome = "", ...argv], code) => {
    const { status, stderr } = await add(at("never.ndjson"), outcome, ...argv);
    expect(status).toBe(1);
    expect(stderr).toContain(`[${code}]`);
    expect(stderr).toContain("Nothing was added.");
    expect(() => readFileSync(at("never.ndjson"))).toThrow("ENOENT");
  });

  test("questions a pseudonym that leads to somebody", async () => {
    const { status, stderr } = await add(
      at("mail.ndjson"),
      "kept",
      "--size",
      "M",
      "--pseudonym",
      "a.b@example.org",
    );
    expect(status).toBe(0);
    expect(stderr).toContain("[outcome-person-identifying]");
  });

  test.each([
    [["add", "l.ndjson", "returned", "--chart", "c.csv", "--size", "M"], "kept"],
    [["add", "l.ndjson", "kept", "--size", "M"], "--chart chart.csv"],
    [["add", "l.ndjson", "kept", "--chart", "c.csv"], "--size M"],
    [["add", "no-such/l.ndjson", "kept", "--chart", at("chart.csv"), "--size", "M"], "file-unwritable"],
    [["show", at("none.ndjson")], "file-missing"],
    [["forget", at("none.ndjson"), "heron"], "file-missing"],
    [["learned", at("none.ndjson"), "--chart", at("chart.csv")], "file-missing"],
    [["learned", at("many.ndjson")], "--chart chart.csv"],
    [["rub-out"], "unknown command"],
  ])("%j is a wrong call", async (argv, says) => {
    const { status, stdout, stderr } = await log(...argv);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain(says);
  });
});

describe("tapewise log show", () => {
  test("counts by product and size", async () => {
    const { status, stdout } = await log("show", at("gone.ndjson"));
    expect(status).toBe(0);
    expect(stdout.replace(/\s+/g, " ")).toContain("3 outcomes of 2 people, of 2026-05-04");
    expect(stdout).toMatch(/^ {2}M +2 +1 +1 harness-too-long$/m);
  });

  test("reports bad lines with their numbers, and a last line that breaks off", async () => {
    const { status, stdout } = await log("show", at("broken.ndjson"));
    expect(status).toBe(1);
    expect(stdout).toContain("1 outcome of 1 person");
    const text = stdout.replace(/\s+/g, " ");
    expect(text).toMatch(/line 2, column 1: the line is not JSON\..*?\[outcome-line-not-json\]/);
    expect(text).toMatch(/line 3, column 1: .*?\[outcome-id-repeated\]/);
    expect(text).toMatch(/line 4, column 1: .*?\[outcome-line-torn\]/);
    const { stdout: json } = await log("show", at("broken.ndjson"), "--json");
    const { rows, products, issues } = JSON.parse(json);
    expect(rows).toBe(1);
    expect(products).toEqual([
      { maker: "Gingham", chart: "Doily 45", sizes: [{ size: "M", kept: 1, exchanged: 0, reasons: {} }] },
    ]);
    expect(issues.map(({ place }: { place: { line: number } }) => place.line)).toEqual([2, 3, 4]);
  });
});

describe("tapewise log forget", () => {
  test("takes out every row of a person and no other", async () => {
    const { status, stdout } = await log("forget", at("gone.ndjson"), "heron");
    expect([status, stdout.includes("2 rows of heron")]).toEqual([0, true]);
    expect(readFileSync(at("gone.ndjson"), "utf8")).toBe(`${row("b", "magpie", {})}\n`);
    const nobody = await log("forget", at("gone.ndjson"), "heron", "--json");
    expect(JSON.parse(nobody.stdout)).toEqual({
      forgotten: { rows: 0, unreadable: 0 },
      unreadLines: [],
      alike: [],
    });
    const words = await log("forget", at("gone.ndjson"), "heron");
    expect(words.stdout).toContain("Nobody is called “heron”");
  });
});

describe("a file that is no log", () => {
  const person = '{"id":"wren","readings":{"torso-length":["43.4 cm"]}}';
  const utf16 = Buffer.from(`\uFEFF${row("a", "wren", {})}\n`, "utf16le");
  test.each<[string, string | Buffer]>([
    ["members.ndjson", `${person}\n`],
    ["copy.csv", CHART],
    ["pretty.json", JSON.stringify({ id: "wren" }, undefined, 2)],
    ["utf16.ndjson", utf16],
  ])("%s is neither added to nor taken from", async (name, contents) => {
    writeFileSync(at(name), contents);
    const forgotten = await log("forget", at(name), "wren");
    const added = await add(at(name), "kept", "--size", "M", "--pseudonym", "wren");
    for (const { status, stdout, stderr } of [forgotten, added]) {
      expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
      expect(stderr).toContain("[file-not-outcome-log]");
    }
    expect(readFileSync(at(name)).equals(Buffer.from(contents))).toBe(true);
  });

  test.each(["", "\n", "{", '{"v":1,"at":"20', '{"v":2,"person":"robin"}\n', '{ "v": 2 }\n'])(
    "a log whose only line is %j is added to",
    async (contents) => {
      writeFileSync(at("only.ndjson"), contents);
      const { status } = await add(at("only.ndjson"), "kept", "--size", "M", "--pseudonym", "heron");
      expect(status).toBe(0);
      expect(readFileSync(at("only.ndjson"), "utf8").startsWith(contents)).toBe(true);
    },
  );
});

describe("what is left when somebody was forgotten", () => {
  test("lines that cannot be read are counted and named, and the answer is not called sure", async () => {
    const contents = `${row("a", "heron", {})}\n{'v':1,'person':'wren'}\n{"v":1,"person":"wre`;
    writeFileSync(at("left.ndjson"), contents);
    const { status, stdout } = await log("forget", at("left.ndjson"), "wren");
    expect(status).toBe(1);
    const text = stdout.replace(/\s+/g, " ");
    expect(text).toContain("No row that can be read is of “wren”; nothing was changed.");
    expect(text).toContain("2 lines of the log cannot be read and were left in it (lines 2, 3)");
    expect(readFileSync(at("left.ndjson"), "utf8")).toBe(contents);
    const json = await log("forget", at("left.ndjson"), "heron", "--json");
    expect([json.status, JSON.parse(json.stdout)]).toEqual([
      1,
      { forgotten: { rows: 1, unreadable: 0 }, unreadLines: [1, 2], alike: [] },
    ]);
  });

  test("names that differ in capitals, gaps or the form of their characters are named and left", async () => {
    const others = ["Heron", "  heron ", "herons"].map((name, k) => row(`${k}`, name, {})).join("\n");
    writeFileSync(at("alike.ndjson"), others);
    const { status, stdout } = await log("forget", at("alike.ndjson"), "heron");
    expect(status).toBe(0);
    expect(stdout.replace(/\s+/g, " ")).toContain(
      "Written otherwise, and left in the log: “Heron”, “ heron ”.",
    );
    expect(readFileSync(at("alike.ndjson"), "utf8")).toBe(others);
    // U+0065 U+0308 is U+00EB taken apart (Unicode Standard, canonical decomposition; from memory).
    writeFileSync(at("apart.ndjson"), row("a", "zoe\u0308", {}));
    const apart = await log("forget", at("apart.ndjson"), "zo\u00eb");
    expect(apart.stdout).toContain('"zoe\\u{308}"');
  });
});

describe("slips in what is noted down", () => {
  test("the id in the person's file is the pseudonym where none is given, and the answer says so", async () => {
    const me = { id: "wren", measuredBy: "helper", readings: { "torso-length": ["43.4 cm"] } };
    writeFileSync(at("me.json"), JSON.stringify(me));
    const named = await add(
      at("by-id.ndjson"),
      "kept",
      "--size",
      "M",
      "--person",
      at("me.json"),
      "--id",
      "r1",
    );
    expect(named.stdout.replace(/\s+/g, " ")).toContain("the id in the person's file, “wren”");
    const other = ["--person", at("me.json"), "--pseudonym", "heron"];
    const given = await add(at("by-id.ndjson"), "kept", "--size", "M", ...other);
    expect(given.stdout).not.toContain("wren");
    const rows = readFileSync(at("by-id.ndjson"), "utf8").trim().split("\n");
    expect(rows.map((line) => JSON.parse(line).person)).toEqual(["wren", "heron"]);
    expect(JSON.parse(rows[0] ?? "").id).toBe("r1");
    const nameless = await add(at("by-id.ndjson"), "kept", "--size", "M", ...torso);
    expect(nameless.stderr.replace(/\s+/g, " ")).toContain(
      "without a pseudonym the row cannot be found again",
    );
  });

  test("an id that another row has is refused, and the same row again is there already", async () => {
    const file = at("ids.ndjson");
    const first = await add(
      file,
      "kept",
      "--size",
      "M",
      "--pseudonym",
      "heron",
      "--id",
      "7",
      "--at",
      "2026-05-04",
    );
    expect(first.status).toBe(0);
    const before = readFileSync(file, "utf8");
    const other = await add(file, "kept", "--size", "S", "--pseudonym", "heron", "--id", "7");
    expect([other.status, other.stdout]).toEqual([1, ""]);
    expect(other.stderr).toContain("[outcome-id-repeated]");
    expect(other.stderr).toContain("Nothing was added.");
    const again = await add(file, "kept", "--size", "M", "--pseudonym", "heron", "--id", "7");
    expect(again.status).toBe(0);
    expect(again.stdout.replace(/\s+/g, " ")).toMatch(/^Already there: line 1 of .* Nothing was added\. $/);
    const json = await add(file, "kept", "--size", "M", "--pseudonym", "heron", "--id", "7", "--json");
    expect(JSON.parse(json.stdout)).toMatchObject({ row: { id: "7", at: "2026-05-04" }, isNew: false });
    const later = await add(
      ...([file, "kept", "--size", "M", "--pseudonym", "heron", "--id", "7", "--at", "2026-05-05"] as const),
    );
    expect(later.status).toBe(1);
    expect(readFileSync(file, "utf8")).toBe(before);
  });

  test.each([
    [["--reason", "harness-too-long", "--exchanged-for", "L"], "log-exchange-against-reason"],
    [["--reason", "harness-too-short", "--exchanged-for", "S"], "log-exchange-against-reason"],
    [["--reason", "harness-too-long", "--exchanged-for", "M"], "log-exchange-same-size"],
    [["--exchanged-for", "M"], "log-exchange-same-size"],
    [["--reason", "harness-too-long", "--exchanged-for", "S"], undefined],
    [["--reason", "harness-too-short", "--exchanged-for", "L"], undefined],
    // The chart says nothing of belts.
    [["--reason", "hip-belt-too-small", "--exchanged-for", "S"], undefined],
    [["--reason", "uncomfortable", "--exchanged-for", "L"], undefined],
    [["--reason", "not-about-fit", "--exchanged-for", "M"], undefined],
    [["--reason", "harness-too-long"], undefined],
  ])("an exchange %j is questioned: %s", async (argv, code) => {
    const { status, stdout } = await log(
      ...["add", at("odd.ndjson"), "exchanged", "--chart", at("three.csv"), "--size", "M", "--json", ...argv],
    );
    const codes = JSON.parse(stdout).issues.map((issue: { code: string }) => issue.code);
    expect([status, codes]).toEqual([0, code === undefined ? [] : [code]]);
  });

  test.each(["4200 cm", "42 in"])("a torso of %s adds nothing", async (reading) => {
    const { status, stderr } = await add(
      at("never.ndjson"),
      "kept",
      "--size",
      "M",
      "--torso-length",
      reading,
    );
    expect(status).toBe(1);
    expect(stderr).toContain("[outcome-estimate-implausible]");
    expect(() => readFileSync(at("never.ndjson"))).toThrow("ENOENT");
  });
});

describe("tapewise log learned", () => {
  test("tells offset and width with their 90 %, and from when on that changes choices", async () => {
    const { status, stdout, stderr } = await log("learned", at("many.ndjson"), "--chart", at("chart.csv"));
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toMatch(/^ {2}torso length +30 +\+\d\.\d \(\+?\d\.\d to \+\d\.\d\) +\d\.\d\d \(/m);
    expect(stdout).toContain("sure enough, so that choices go by moved ranges");
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
    const few = await log("learned", at("few.ndjson"), "--chart", at("chart.csv"));
    expect(few.stdout.replace(/\s+/g, " ")).toMatch(
      /not sure enough to change choices \(\d+ %; from 95 % on\)/,
    );
  });

  test("JSON holds the same, and whom it would give another size", async () => {
    const { stdout } = await log(
      ...["learned", at("many.ndjson"), "--chart", at("chart.csv"), "--members", at("crew.ndjson"), "--json"],
    );
    const [chart] = JSON.parse(stdout).charts;
    expect(chart).toMatchObject({ chart: "Doily 45", rows: 30, moved: ["torso-length"] });
    const [{ learned }] = chart.known;
    expect(learned.outcomes).toBe(30);
    expect(learned.offsetMm.lower).toBeLessThan(learned.offsetMm.mean);
    expect(learned.offsetMm.mean).toBeLessThan(learned.offsetMm.upper);
    // By the printed chart 43.5 cm is M; ranges that come out longer make it S. 39 cm is S both ways.
    expect(chart.changed).toEqual({
      people: 2,
      changed: 1,
      share: 0.5,
      moves: [{ from: "M", to: "S", people: 1 }],
    });
  });

  test("says on which line of the log a row is that the chart says nothing of, and what the log says nothing of", async () => {
    const { status, stderr, stdout } = await log("learned", at("strange.ndjson"), "--chart", at("chart.csv"));
    expect(status).toBe(1);
    expect(stderr.replace(/\s+/g, " ")).toContain(`${at("strange.ndjson")}:2:1: Doily 45 has no size Q.`);
    expect(stdout).toContain("None of them says on which side");
    const none = await log("learned", at("strange.ndjson"), "--chart", at("unknown.csv"));
    expect(none.stdout).toContain("No outcome tells of it: taken as printed.");
  });

  test("says which rows are of charts that were not given", async () => {
    const { status, stderr } = await log("learned", at("many.ndjson"), "--chart", at("other.csv"));
    expect(status).toBe(0);
    expect(stderr.replace(/\s+/g, " ")).toContain("30 outcomes in the log are of");
    expect(stderr).toContain("[log-chart-not-found]");
    const one = await log("learned", at("alone.ndjson"), "--chart", at("other.csv"));
    expect(one.stderr.replace(/\s+/g, " ")).toMatch(
      /1 outcome in the log is of Doily 45 \(Gingham\), whose chart was not given, and was not used/,
    );
  });
});

describe("tapewise choose --log", () => {
  const choose = (file: string, ...argv: readonly string[]) =>
    runCommand([
      ...["choose", "--torso-length", "43.4 cm", "43.6 cm", "--measured-by", "helper"],
      ...["--chart", at("chart.csv"), "--log", at(file), ...argv],
    ]);

  test("goes by what was learned, says how far and from how many, and what the chart would have said", async () => {
    const { status, stdout } = await choose("many.ndjson");
    expect(status).toBe(0);
    const text = stdout.replace(/\s+/g, " ");
    expect(text).toMatch(
      /Doily 45, 30 outcomes: the torso length seems \d\.\d cm longer than printed \(90 %: \d\.\d cm to \d\.\d cm; 30 tell\)/,
    );
    expect(text).toContain("By the printed chart alone it would be M");
    expect(text).toMatch(/Take S[:.]/);
    const { stdout: json } = await choose("many.ndjson", "--json");
    const { choices, byLog } = JSON.parse(json);
    expect(choices[0].pick).toBe("S");
    expect(byLog[0]).toMatchObject({ outcomes: 30, printed: { pick: "M" }, corrected: { pick: "S" } });
    expect(byLog[0].withDoubt.probability).toBeLessThan(byLog[0].corrected.probability);
  });

  test("ranks charts with what is left open about each, so that the one that is better known goes first", async () => {
    const ask = async (...argv: readonly string[]) => {
      const call = [
        ...["choose", "--torso-length", "43.4 cm", "43.6 cm", "--measured-by", "helper", "--json"],
        ...["--chart", at("unknown.csv"), at("steady.csv"), ...argv],
      ];
      return JSON.parse((await runCommand(call)).stdout);
    };
    const chartsOf = (choices: readonly { readonly chart: string }[]) => choices.map(({ chart }) => chart);
    // By what is printed the pack that nobody has reported on has a little more room.
    expect(chartsOf((await ask()).choices)).toEqual(["Bodkin 40", "Spoon 30"]);
    const { choices, byLog } = await ask("--log", at("steady.ndjson"));
    expect(chartsOf(choices)).toEqual(["Spoon 30", "Bodkin 40"]);
    // What is shown is what was ranked by.
    const [unknown, known] = byLog;
    expect(known.withDoubt.probability).toBeCloseTo(choices[0].probability, 8);
    expect(unknown.withDoubt.probability).toBeCloseTo(choices[1].probability, 8);
    expect(unknown.printed.probability).toBeGreaterThan(known.printed.probability);
    expect(unknown.withDoubt.probability).toBeLessThan(known.withDoubt.probability - 0.01);
    const { stdout } = await choose("steady.ndjson");
    expect(stdout.replace(/\s+/g, " ")).toMatch(
      /Doily 45, 0 outcomes: nothing to learn from; taken as printed\. How far .* may be off, an assumption, is counted in below: M, with \d+ %\. By the printed chart alone it would be M, with \d+ %\./,
    );
  });

  test("takes the chart at its word where few rows say little, and says so", async () => {
    const { stdout } = await choose("few.ndjson");
    expect(stdout.replace(/\s+/g, " ")).toMatch(/2 outcomes: taken as printed, for it is not sure enough/);
    expect(stdout).toMatch(/Take M|take M|Measure again/);
    const plain = await choose("few.ndjson", "--json");
    expect(JSON.parse(plain.stdout).byLog[0].printed).toEqual(JSON.parse(plain.stdout).byLog[0].corrected);
  });

  test("a line of the log that cannot be read is told, and the rest counts", async () => {
    appendFileSync(at("many.ndjson"), "half a li");
    const { status, stdout, stderr } = await choose("many.ndjson");
    expect(status).toBe(1);
    expect(stderr).toContain("[outcome-line-torn]");
    expect(stdout).toContain("30 outcomes");
    const none = await choose("none.ndjson");
    expect([none.status, none.stdout]).toEqual([2, ""]);
  });
});
