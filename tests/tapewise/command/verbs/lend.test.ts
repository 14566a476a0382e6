import { describe, expect, test } from "vitest";
import { folderWith, runCommand } from "../../run-command.ts";

const person = (id: string, ...torso: readonly string[]) =>
  JSON.stringify({ id, measuredBy: "helper", readings: { "torso-length": torso } });
/** Thirty bodies in the lower half of M who found its harness too long. */
const tooLong = (chart: string) =>
  Array.from({ length: 30 }, (_, k) =>
    JSON.stringify({
      v: 1,
      id: `r${k}`,
      at: "2026-05-04",
      product: { chart },
      size: "M",
      outcome: "exchanged",
      reason: "harness-too-long",
      estimates: { "torso-length": { mm: 428, uncertaintyMm: 6 } },
    }),
  ).join("\n");
const at = folderWith({
  // Wren fits both sizes; Lior only S, Tobias only M.
  "crew.ndjson": `${person("wren", "42.5 cm", "42.6 cm")}\n${person("lior", "40.5 cm", "40.4 cm")}\n\n${person("tobias", "45.5 cm", "45.4 cm")}\n`,
  "bad.ndjson": `${person("wren", "42.5 cm", "42.6 cm")}\n{\n${person("wren", "40 cm", "40.1 cm")}\n${person("ana", "42")}\n`,
  "chart.csv": "# chart: Doily 45\nsize,torso-length (cm)\nS,38-43\nM,42-48\n",
  "shelf.csv": "chart,size,count\nDoily 45,S,1\nDoily 45,M,2\n",
  "short.csv": "size;count;chart\nS;1;Doily 45\nM;1;Doily 45\n",
  "faulty.csv":
    "chart,size,count\nDoily 45,S,1\nDoily 45,S,1\nDoly 45,S,1\nDoily 45,XL,1\nDoily 45,M,-1\nDoily 45,M\n",
  "bare.csv": "chart,size,count\n\n",
  "blank.csv": "\n\n",
  "headless.csv": "chart,size\nDoily 45,S\n",
  "long.csv": "chart,size,count\nDoily 45,M,3\n",
  "twins.ndjson": `${person("wren", "42.5 cm", "42.6 cm")}\n${person("ana", "42")}\n${person("ana", "42")}\n`,
  "doily.csv": "size,torso-length (cm)\nS,38-43\nM,42-48\n",
  "doily-shelf.csv": "chart,size,count\ndoily,S,1\ndoily,M,2\n",
  "log.ndjson": tooLong("Doily 45"),
  "doily.ndjson": tooLong("doily"),
});
const lend = (members: string, shelf: string, ...argv: readonly string[]) =>
  runCommand([
    ...["lend", "--members", at(members), "--chart", at("chart.csv"), "--shelf", at(shelf)],
    ...argv,
  ]);
const codesOf = (stdout: string) =>
  JSON.parse(stdout).issues.map(({ code, place }: { code: string; place?: { line: number } }) => [
    code,
    place?.line,
  ]);

describe("tapewise lend", () => {
  test("lends so that everybody is served who can be", async () => {
    const { status, stdout } = await lend("crew.ndjson", "shelf.csv");
    expect(status).toBe(0);
    // Lior fits S alone, of which there is one: so Wren takes M.
    expect(stdout).toMatch(/^ {2}wren +Doily 45, M +/m);
    expect(stdout).toMatch(/^ {2}lior +Doily 45, S +/m);
    expect(stdout).toMatch(/^ {2}tobias +Doily 45, M +/m);
    expect(stdout).not.toMatch(/^Without$/m);
    expect(stdout.replace(/\s+/g, " ")).toContain("let a professional fitter or a clinician look");
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test("says who goes without, and what to get next", async () => {
    const { stdout } = await lend("crew.ndjson", "short.csv");
    expect(stdout).toMatch(/^Without\n {2}- wren: Doily 45, [SM] would suit best, and none is left$/m);
    expect(stdout).toMatch(/^To get next, the most worthwhile first\n {2}- Doily 45, [SM]: serves wren$/m);
    const { stdout: json } = await lend("crew.ndjson", "short.csv", "--json");
    const { lent, without, next } = JSON.parse(json);
    expect(lent.map(({ member, pack }: { member: string; pack: string }) => [member, pack])).toEqual([
      ["lior", "Doily 45, S"],
      ["tobias", "Doily 45, M"],
    ]);
    expect(without).toMatchObject([{ member: "wren" }]);
    expect(next[0].serves).toBe("wren");
  });

  test.each(["bare.csv", "blank.csv"])("a shelf with no pack on it is told: %s", async (shelf) => {
    const { status, stdout, stderr } = await lend("crew.ndjson", shelf);
    expect([status, stdout]).toEqual([1, ""]);
    expect(stderr).toMatch(/\[(shelf-without-packs|file-empty|shelf-column-missing)\]/);
    const { stdout: json } = await lend("crew.ndjson", "bare.csv", "--json");
    expect(codesOf(json)).toEqual([["shelf-without-packs", 1]]);
  });

  test("lends nothing that fits with less than the least chance", async () => {
    const { stdout } = await lend("crew.ndjson", "short.csv", "--goal", "misfit", "--least-chance", "1");
    expect(stdout).toMatch(/^Lent: 0 packs$/m);
    expect(stdout).toContain("- wren: no pack on the shelf fits with 100 % or more");
  });

  test("whoever is left out for an error stands under Without, with the reason", async () => {
    const { stdout } = await lend("bad.ndjson", "shelf.csv");
    const text = stdout.replace(/\s+/g, " ");
    expect(text).toContain(
      "Without - line 2: left out for an error, line 2 is not JSON [lend-member-not-json]",
    );
    // Wren was read before, so that the second line of that id goes by its number.
    expect(text).toContain("- line 3: left out for an error, wren stands in the list of members twice");
    expect(text).toContain("- ana: left out for an error in line 4, 42 has no unit [length-no-unit]");
    const { stdout: json } = await lend("bad.ndjson", "shelf.csv", "--json");
    expect(JSON.parse(json).without).toEqual([
      { member: "line 2", line: 2, reason: "line 2 is not JSON", code: "lend-member-not-json" },
      { member: "line 3", line: 3, reason: expect.stringContaining("wren"), code: "lend-member-repeated" },
      { member: "ana", line: 4, reason: "42 has no unit", code: "length-no-unit" },
    ]);
  });

  test("two lines with an error and one id go by their numbers", async () => {
    const { stdout } = await lend("twins.ndjson", "shelf.csv", "--json");
    const { without } = JSON.parse(stdout);
    expect(without.map(({ member }: { member: string }) => member)).toEqual(["line 2", "line 3"]);
  });

  test("goes by a log of outcomes where it is told to, and says whose ranges were moved", async () => {
    const lentTo = async (...argv: readonly string[]) => {
      const { lent, byLog } = JSON.parse((await lend("crew.ndjson", "long.csv", "--json", ...argv)).stdout);
      return { members: lent.map(({ member }: { member: string }) => member), byLog };
    };
    const [plain, logged] = [await lentTo(), await lentTo("--log", at("log.ndjson"))];
    // By what is printed M begins at 42 cm and fits Wren's 42.5 cm; packs that come out 1 cm longer or more do not.
    expect(plain).toEqual({ members: ["wren", "tobias"], byLog: undefined });
    expect(logged.byLog).toMatchObject([
      { chart: "Doily 45", outcomes: 30, moved: [{ dimension: "torso-length" }] },
    ]);
    expect(logged.byLog[0].moved[0].learned.offsetMm.mean).toBeGreaterThan(10);
    expect(logged.members).toEqual(["tobias"]);
    const { stdout, stderr } = await lend("crew.ndjson", "shelf.csv", "--log", at("log.ndjson"));
    expect(stderr).toBe("");
    expect(stdout.replace(/\s+/g, " ")).toMatch(
      /Doily 45, 30 outcomes: the torso length seems \d\.\d cm longer than printed .* Its ranges were moved to there\./,
    );
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test("says that outcomes go by the name of a file where the chart states none", async () => {
    const argv = [
      "--chart",
      at("doily.csv"),
      "--shelf",
      at("doily-shelf.csv"),
      "--members",
      at("crew.ndjson"),
    ];
    const { stdout } = await runCommand(["lend", ...argv, "--log", at("doily.ndjson"), "--json"]);
    expect(codesOf(stdout)).toEqual([["log-chart-named-by-file", undefined]]);
    expect(JSON.parse(stdout).byLog[0].outcomes).toBe(30);
    const { stdout: without } = await runCommand(["lend", ...argv, "--json"]);
    expect(codesOf(without)).toEqual([]);
  });

  test("a log with nothing of a chart leaves it as printed", async () => {
    const { stdout, stderr } = await lend("crew.ndjson", "shelf.csv", "--log", at("doily.ndjson"));
    expect(stderr).toContain("[log-chart-not-found]");
    expect(stdout).toContain("- Doily 45, 0 outcomes: nothing to learn from; taken as printed.");
  });

  test("leaves out whom no sound choice can be made for, and says on which line", async () => {
    const { status, stdout } = await lend("bad.ndjson", "shelf.csv", "--json");
    expect(status).toBe(1);
    const codes = codesOf(stdout);
    expect(codes).toContainEqual(["lend-member-not-json", 2]);
    expect(codes).toContainEqual(["lend-member-repeated", 3]);
    expect(codes).toContainEqual(["length-no-unit", 4]);
    expect(JSON.parse(stdout).lent).toHaveLength(1);
  });

  test("leaves out rows of the shelf that cannot be used, and says which", async () => {
    const { status, stdout } = await lend("crew.ndjson", "faulty.csv", "--json");
    expect(status).toBe(1);
    expect(codesOf(stdout).filter(([code]: [string]) => code.startsWith("shelf-"))).toEqual([
      ["shelf-pack-repeated", 3],
      ["shelf-chart-unknown", 4],
      ["shelf-size-unknown", 5],
      ["shelf-count-invalid", 6],
      ["shelf-row-ragged", 7],
    ]);
    const headless = await lend("crew.ndjson", "headless.csv");
    expect([headless.status, headless.stdout]).toEqual([1, ""]);
    expect(headless.stderr).toContain("[shelf-column-missing]");
  });

  test.each([
    [["--chart", at("chart.csv"), "--shelf", at("shelf.csv")], "--members crew.ndjson"],
    [["--members", at("crew.ndjson"), "--chart", at("chart.csv")], "--shelf shelf.csv"],
    [["--members", at("crew.ndjson"), "--shelf", at("shelf.csv")], "--chart chart.csv"],
    [["--members", at("no.ndjson"), "--chart", at("chart.csv"), "--shelf", at("shelf.csv")], "file-missing"],
    [["--least-chance", "50"], "above 0 and up to 1"],
    [["--least-chance", "0"], "above 0 and up to 1"],
    [
      [
        ...["--members", at("crew.ndjson"), "--chart", at("chart.csv"), "--shelf", at("shelf.csv")],
        ...["--log", at("no.ndjson")],
      ],
      "file-missing",
    ],
    [["--goal", "best"], "misfit"],
  ])("%j is a wrong call", async (argv, says) => {
    const { status, stdout, stderr } = await runCommand(["lend", ...argv]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain(says);
  });
});
