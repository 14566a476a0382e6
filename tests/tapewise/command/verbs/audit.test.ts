import { describe, expect, test } from "vitest";
import { folderWith, PLAIN_CHART, runCommand } from "../../run-command.ts";

const at = folderWith({
  "plain.csv": PLAIN_CHART,
  "faulty.csv": "size,torso-length (cm),capacity (L)\nS,38-43,40\nM,47-42,45\nL,19.5-21.5\n",
  "inches.csv": "size,torso-length (in)\nS,15-17\nM,17-19\n",
  "belts.json": JSON.stringify({
    chart: "Belts",
    sizes: [
      { size: "S", "torso-length": { to: "43 cm" } },
      { size: "L", "torso-length": { nominal: "46 cm" } },
      { size: "XL", "torso-length": { nominal: "50 cm" } },
    ],
    belts: [{ belt: "1", "hip-belt-girth": { from: "70 cm", to: "100 cm" } }],
  }),
  "broken.json": '{"chart":',
});
const audit = (...argv: readonly string[]) => runCommand(["audit", ...argv]);

describe("tapewise audit", () => {
  test("prints a chart as it was understood", async () => {
    const { status, stdout } = await audit(at("plain.csv"));
    expect(status).toBe(0);
    expect(stdout).toMatch(/^ {2}size +torso length +hip-belt girth$/m);
    expect(stdout).toMatch(/^ {2}M +42\.0 to 47\.0 +76\.0 to 104\.0$/m);
    expect(stdout).toContain("cut not stated");
  });

  test("tells every fault with its line and column", async () => {
    const { status, stdout } = await audit(at("faulty.csv"));
    expect(status).toBe(1);
    const text = stdout.replace(/\s+/g, " ");
    expect(text).toContain("line 3, column 3: the range 47-42 cm begins above its end");
    expect(text).toContain("[chart-row-ragged]");
    expect(text).toContain("[chart-length-suspicious]");
  });

  test("shows open ends, inferred ranges and hip belts", async () => {
    const { stdout } = await audit(at("belts.json"));
    expect(stdout).toMatch(/^ {2}S +up to 43\.0$/m);
    expect(stdout).toMatch(/^ {2}L +\d+\.\d to \d+\.\d\*$/m);
    expect(stdout).toMatch(/^ {2}hip belt +hip-belt girth$/m);
    expect(stdout).toMatch(/^ {2}1 +70\.0 to 100\.0$/m);
  });

  test("shows a chart in inches in inches, unless another unit is asked for", async () => {
    expect((await audit(at("inches.csv"))).stdout).toMatch(/^ {2}S +15\.00 to 17\.00$/m);
    // 15 in are 38.1 cm and 17 in are 43.18 cm.
    expect((await audit(at("inches.csv"), "--show-unit", "cm")).stdout).toMatch(/^ {2}S +38\.1 to 43\.2$/m);
  });

  test("goes on with the other charts when one is unreadable", async () => {
    const { status, stdout, stderr } = await audit(at("broken.json"), at("plain.csv"));
    expect(status).toBe(1);
    expect(stderr).toContain("[chart-json-unfinished]");
    expect(stdout).toMatch(/^plain/m);
  });

  test("prints JSON with places", async () => {
    const { status, stdout } = await audit(at("faulty.csv"), at("plain.csv"), "--json");
    expect(status).toBe(1);
    const [faulty, plain] = JSON.parse(stdout);
    expect(faulty.findings).toContainEqual(
      expect.objectContaining({
        code: "chart-range-reversed",
        severity: "error",
        place: { file: at("faulty.csv"), line: 3, column: 3 },
      }),
    );
    expect(plain.chart.sizes[0]).toMatchObject({ size: "S", "torso-length": { from: "38 cm", to: "43 cm" } });
  });

  test("shows a chart under its own name, also beside a namesake", async () => {
    const { stdout } = await audit(at("plain.csv"), at("plain.csv"), "--json");
    expect(JSON.parse(stdout).map(({ chart }: { chart: { chart: string } }) => chart.chart)).toEqual([
      "plain",
      "plain",
    ]);
  });

  test("prints JSON for a chart that cannot be read, in the order of the files", async () => {
    const { status, stdout } = await audit(at("missing.csv"), at("plain.csv"), "--json");
    expect(status).toBe(2);
    const [missing, plain, ...rest] = JSON.parse(stdout);
    expect(rest).toEqual([]);
    expect(missing).toMatchObject({ file: at("missing.csv"), findings: [{ code: "file-missing" }] });
    expect(missing).not.toHaveProperty("chart");
    expect(plain.file).toBe(at("plain.csv"));
  });
});
