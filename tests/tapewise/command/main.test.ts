import { spawn, spawnSync } from "node:child_process";
import { chmodSync, existsSync, mkdirSync } from "node:fs";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { folderWith, PLAIN_CHART } from "../run-command.ts";

const bin = fileURLToPath(new URL("../../../packages/tapewise/bin/tapewise.js", import.meta.url));
const good = '{"id":1,"readings":{"torso-length":["44 cm"]}}\n';
const deep = (depth: number) => `${"[".repeat(depth)}${"]".repeat(depth)}`;
const at = folderWith({
  "plain.csv": PLAIN_CHART,
  "empty.csv": "",
  "blank.csv": " \n\n",
  "binary.csv": new Uint8Array([115, 105, 0, 1, 2, 3]),
  "latin1.csv": new Uint8Array([0x53, 0xe9, 0x2c, 0x34]),
  "huge.csv": Buffer.alloc(50_000_000, "S,38-43\n"),
  "deep.json": deep(100_000),
  "proto.json":
    '{"__proto__":{"chart":"x"},"constructor":1,"sizes":[{"size":"S","__proto__":{"from":"1 cm"}}]}',
  "double.csv": "size,torso-length (cm)\nS,38-43\nS,42-47\n",
  "nan.json": '{"chart":"x","sizes":[{"size":"S","torso-length":{"from":NaN}}]}',
  "infinity.json":
    '{"chart":"x","sizes":[{"size":"S","torso-length":{"from":"38 cm"},"capacityLitres":1e999}]}',
  "ragged.csv": "size,torso-length (cm),capacity (L)\nS\nM,42-47,45,46,47\n",
  "none.csv": "size,torso-length (cm)\n",
  "unknown.csv": "size,arm length (cm)\nS,38-43\n",
  "text.csv": "Dear sir or madam",
  "bom.csv": `\uFEFF${PLAIN_CHART.replaceAll("\n", "\r\n")}`,
});

function tapewise(argv: readonly string[], input = "", env: Readonly<Record<string, string>> = {}) {
  const { status, stdout, stderr, signal } = spawnSync(process.execPath, [bin, ...argv], {
    input,
    encoding: "utf8",
    timeout: 60_000,
    maxBuffer: 100_000_000,
    env: { ...process.env, ...env },
  });
  return { status, stdout, stderr, signal };
}

describe("the command, as it is installed", () => {
  test.each([
    ["an answer", ["choose", "--torso-length", "44 cm", "--chart", at("plain.csv")], 0],
    ["issues in the readings", ["choose", "--torso-length", "44", "--chart", at("plain.csv")], 1],
    ["issues in a chart", ["audit", at("double.csv")], 1],
    ["a wrong call", ["choose", "--chart", at("plain.csv")], 2],
    ["a path that is none", ["audit", at("missing.csv")], 2],
    ["help", ["--help"], 0],
  ])("%s: status", (_what, argv, expected) => {
    const { status, stderr } = tapewise(argv);
    expect(status).toBe(expected);
    expect(stderr).not.toMatch(/\n\s+at /);
  });

  test("prints no colour, whatever the environment asks for", () => {
    const plain = tapewise(["--help"]);
    for (const env of [{ FORCE_COLOR: "3" }, { NO_COLOR: "1" }, { TERM: "dumb" }]) {
      expect(tapewise(["--help"], "", env).stdout).toBe(plain.stdout);
    }
    expect(plain.stdout).not.toContain("\u001b");
  });

  test("runs from any folder", () => {
    const { status, stdout } = spawnSync(process.execPath, [bin, "demo"], {
      cwd: dirname(at("x")),
      encoding: "utf8",
    });
    expect(status).toBe(0);
    expect(stdout).toContain("First Wren");
  });
});

describe("an output that cannot be written", () => {
  const hasFullDevice = existsSync("/dev/full");

  test("is told on one line, with status 70", () => {
    // Where there is no device that is always full, a closed output has to do, which is no fault.
    const target = hasFullDevice ? "/dev/full" : "/dev/null";
    const { status, stderr } = spawnSync("sh", ["-c", `"$0" "$1" demo > ${target}`, process.execPath, bin], {
      encoding: "utf8",
    });
    expect(status).toBe(hasFullDevice ? 70 : 0);
    expect(stderr.trimEnd().split("\n")).toEqual([hasFullDevice ? expect.stringContaining("ENOSPC") : ""]);
  });
});

describe("a standard input that cannot be read", () => {
  const calls: readonly (readonly [string, string])[] = [
    ["a directory", "< /"],
    ["closed", "<&-"],
  ];

  test.each(calls)("%s is no empty one: batch says so, with status 2", (_what, redirection) => {
    const { status, stdout, stderr } = spawnSync(
      "sh",
      ["-c", `"$0" "$1" batch --chart "$2" ${redirection}`, process.execPath, bin, at("plain.csv")],
      { encoding: "utf8" },
    );
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain("the standard input cannot be read");
    expect(stderr).toContain("[file-unreadable]");
  });

  test.each(calls)("%s is no empty one for --person - either", (_what, redirection) => {
    const { status, stdout } = spawnSync(
      "sh",
      [
        "-c",
        `"$0" "$1" choose --person - --json --chart "$2" ${redirection}`,
        process.execPath,
        bin,
        at("plain.csv"),
      ],
      { encoding: "utf8" },
    );
    expect(status).toBe(2);
    expect(JSON.parse(stdout)).toMatchObject({ issues: [{ code: "file-unreadable" }] });
  });

  test("an empty one has nothing to answer, and status 0", () => {
    expect(tapewise(["batch", "--chart", at("plain.csv")])).toMatchObject({
      status: 0,
      stdout: "",
      stderr: "",
    });
  });
});

describe("a chart file that is none", () => {
  test.each([
    ["empty.csv", "file-empty"],
    ["blank.csv", "chart-empty"],
    ["binary.csv", "file-binary"],
    ["latin1.csv", "file-not-utf8"],
    ["huge.csv", "file-too-large"],
    ["deep.json", "chart-json-too-deep"],
    ["proto.json", "chart-key-unknown"],
    ["double.csv", "chart-size-repeated"],
    ["nan.json", "chart-json-syntax"],
    ["infinity.json", "chart-quantity-unreadable"],
    ["ragged.csv", "chart-row-ragged"],
    ["none.csv", "chart-no-sizes"],
    ["unknown.csv", "chart-column-unknown"],
    ["text.csv", "chart-"],
  ])("%s gives the code %s and status 1, at once", (name, code) => {
    const start = performance.now();
    const audited = tapewise(["audit", at(name)]);
    const chosen = tapewise(["choose", "--torso-length", "44 cm", "--chart", at(name)]);
    for (const { status, stdout, stderr, signal } of [audited, chosen]) {
      expect({ status, signal }).toEqual({ status: 1, signal: null });
      expect(stdout + stderr).toContain(`[${code}`);
      expect(stdout + stderr).not.toMatch(/\n\s+at /);
    }
    expect(performance.now() - start).toBeLessThan(20_000);
  });

  test("a byte order mark and the line ends of another system are no fault", () => {
    const { status } = tapewise(["choose", "--torso-length", "44 cm", "--chart", at("bom.csv")]);
    expect(status).toBe(0);
  });

  test("a folder and a file that may not be read are wrong calls", () => {
    mkdirSync(at("folder.csv"), { recursive: true });
    const folder = tapewise(["audit", at("folder.csv")]);
    expect([folder.status, folder.stderr]).toEqual([2, expect.stringContaining("[file-is-directory]")]);
    const under = tapewise(["audit", at("plain.csv/x.csv")]);
    expect([under.status, under.stderr]).toEqual([2, expect.stringContaining("[file-missing]")]);
    // The superuser may read everything, so that only others can be refused.
    if (process.getuid?.() !== 0) {
      chmodSync(at("none.csv"), 0);
      const locked = tapewise(["audit", at("none.csv")]);
      expect([locked.status, locked.stderr]).toEqual([2, expect.stringContaining("[file-unreadable]")]);
    }
  });
});

describe("a line of people that is none", () => {
  test.each([
    ["deep JSON", deep(400_000), "person-not-an-object"],
    ["deep readings", `{"readings":{"torso-length":${deep(200_000)}}}`, "person-field-invalid"],
    ["NaN", '{"readings":{"torso-length":[NaN]}}', "batch-line-not-json"],
    ["infinity", '{"unit":"cm","readings":{"torso-length":[1e999]}}', "person-field-invalid"],
    ["an enormous length", '{"readings":{"torso-length":["1e300 m"]}}', "length-"],
    ["inherited names", '{"__proto__":{"readings":{}},"constructor":{}}', "person-readings-missing"],
    [
      "ten thousand readings",
      JSON.stringify({ readings: { "torso-length": Array(10_000).fill("44 cm") } }),
      "person-readings-too-many",
    ],
    ["an unknown dimension", '{"readings":{"arm":["44 cm"]}}', "person-dimension-unknown"],
    ["binary", "\u0000\u0001\u0002", "batch-line-not-json"],
    ["one line of two megabytes", "x".repeat(2_000_000), "batch-line-too-long"],
  ])("%s gives one issue line and status 1, and the next line its answer", (_what, line, code) => {
    const { status, stdout, stderr } = tapewise(["batch", "--chart", at("plain.csv")], `${line}\n${good}`);
    expect({ status, stderr }).toEqual({ status: 1, stderr: "" });
    const [issues, answer, ...rest] = stdout
      .trimEnd()
      .split("\n")
      .map((text) => JSON.parse(text));
    expect(rest).toEqual([]);
    expect(issues.issues.map((issue: { code: string }) => issue.code).join(" ")).toContain(code);
    expect(answer).toMatchObject({ id: 1, choices: [{ chart: "plain" }] });
  });
});

describe("batch at length", () => {
  // What is printed at the end of the child's life: the most memory that it ever had, in kilobytes.
  const telltale = `data:text/javascript,process.on("exit",()=>process.stderr.write("rss "+process.resourceUsage().maxRSS))`;
  // A heap that a hundred thousand answers of 400 bytes would burst.
  const small = ["--max-old-space-size=32", "--max-semi-space-size=2", "--import", telltale];

  /** Sends people, one bad in a hundred, and checks every answer as it comes. */
  async function stream(
    count: number,
  ): Promise<{ issueLines: number; answers: number; rss: number; status: number | null }> {
    const child = spawn(process.execPath, [...small, bin, "batch", "--chart", at("plain.csv")]);
    const isBad = (index: number) => index % 100 === 57;
    const feed = async () => {
      for (let start = 0; start < count; start += 1000) {
        let text = "";
        for (let index = start; index < Math.min(count, start + 1000); index++) {
          text += `{"id":${index},"readings":{"torso-length":["${38 + (index % 13)}${isBad(index) ? "" : " cm"}"]}}\n`;
        }
        if (!child.stdin.write(text)) await new Promise((resolve) => child.stdin.once("drain", resolve));
      }
      child.stdin.end();
    };
    let told = "";
    child.stderr.on("data", (chunk: Buffer) => {
      told += chunk.toString("utf8");
    });
    const closed = new Promise<number | null>((resolve) => {
      child.on("close", resolve);
    });
    const fed = feed();
    let expected = 0;
    let issueLines = 0;
    let rest = "";
    for await (const chunk of child.stdout) {
      const lines = (rest + String(chunk)).split("\n");
      rest = lines.pop() ?? "";
      for (const line of lines) {
        const isIssue = line.startsWith(`{"id":${expected},"issues":[{"code":"length-no-unit"`);
        if (isIssue !== isBad(expected)) throw new Error(`line ${expected}: ${line}`);
        if (!isIssue && !line.startsWith(`{"id":${expected},"estimates":`))
          throw new Error(`line ${expected}: ${line}`);
        if (isIssue) issueLines += 1;
        expected += 1;
      }
    }
    await fed;
    const status = await closed;
    return { issueLines, answers: expected, rss: Number(/rss (\d+)/.exec(told)?.[1]), status };
  }

  test("a hundred thousand people, one bad in a hundred: order kept, memory flat", {
    timeout: 300_000,
  }, async () => {
    const few = await stream(10_000);
    const many = await stream(100_000);
    expect(few).toMatchObject({ answers: 10_000, issueLines: 100, status: 1 });
    expect(many).toMatchObject({ answers: 100_000, issueLines: 1000, status: 1 });
    expect(many.rss).toBeGreaterThan(0);
    expect(many.rss).toBeLessThan(few.rss * 1.3);
  });

  test("ends quietly when the reader leaves", () => {
    const people = Array.from(
      { length: 20_000 },
      (_, id) => `{"id":${id},"readings":{"torso-length":["44 cm"]}}\n`,
    ).join("");
    const { status, stdout, stderr } = spawnSync(
      "sh",
      ["-c", `"$0" "$1" batch --chart "$2" | head -n 1; exit 0`, process.execPath, bin, at("plain.csv")],
      { input: people, encoding: "utf8", timeout: 60_000 },
    );
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(JSON.parse(stdout)).toMatchObject({ id: 0 });
  });
});
