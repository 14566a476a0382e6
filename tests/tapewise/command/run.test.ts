import { Readable, Writable } from "node:stream";
import { describe, expect, test } from "vitest";
import { run } from "../../../packages/tapewise/src/command/run.ts";
import { collect, folderWith, PLAIN_CHART, runCommand } from "../run-command.ts";

const at = folderWith({ "plain.csv": PLAIN_CHART });

describe("a wrong call", () => {
  test.each([
    [["chose"], "Did you mean choose?"],
    [["batsh"], "Did you mean batch?"],
    [["choose", "--torso-lenght", "43 cm", "--chart", "x.csv"], "Did you mean --torso-length?"],
    [["choose", "--torso", "43 cm"], "(Did you mean --torso-length?)"],
    [["choose", "--hips", "91 cm"], "(Did you mean --hip-belt-girth or --hip-girth?)"],
    [["choose", "--torso-length", "43 cm"], "--chart"],
    [["choose", "--chart", at("plain.csv")], "no reading is given"],
    [["choose", "--torso-length", "43 cm", "--cut", "woman", "--chart", at("plain.csv")], "women, men"],
    [["choose", "--torso-length", "43 cm", "--show-unit", "ft", "--chart", at("plain.csv")], "cm, in"],
    [["choose", "--torso-length", "--chart", at("plain.csv")], "--torso-length"],
    [["audit"], "charts"],
    [["batch"], "--chart"],
    [["schema", "pack"], "chart, person, choice"],
    [["schema"], "what"],
    [["guide", "torso", "hips"], "too many arguments"],
    [["guide", "hips"], "hip-belt-girth, hip-girth"],
    [["guide", "torso-lenght"], "torso-length"],
    [["guide", "interscye-breadth", "--measured-by", "self"], "--measured-by helper"],
    [["demo", "--fast"], "unknown option"],
    [["audit", at("plain.csv"), "--show-unit"], "argument missing"],
  ])("%j is told on standard error, with status 2", async (argv, says) => {
    const { status, stdout, stderr } = await runCommand(argv);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain(says);
    expect(stderr).not.toMatch(/\bat .+:\d+:\d+|node_modules/);
  });

  test("without any word, the help is on standard error", async () => {
    const { status, stdout, stderr } = await runCommand([]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain("Start here:");
  });

  test("is told without the escape sequences that came with it", async () => {
    const { stderr } = await runCommand(["choose", "--\u001b[31mred"]);
    expect(stderr).toContain("\uFFFD[31mred");
    expect(stderr).not.toContain("\u001b");
  });
});

describe("help", () => {
  test.each([
    [["--help"]],
    [["help"]],
    [["help", "choose"]],
    [["choose", "--help"]],
    [["guide", "--help"]],
    [["audit", "--help"]],
    [["batch", "--help"]],
    [["demo", "--help"]],
    [["schema", "--help"]],
  ])("%j is an answer, on pages of 80 characters", async (argv) => {
    const { status, stdout, stderr } = await runCommand(argv);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toContain("Usage: tapewise");
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test.each(["choose", "guide", "audit", "batch"])("%s shows an example", async (verb) => {
    const { stdout } = await runCommand([verb, "--help"]);
    expect(stdout).toMatch(new RegExp(`Examples?:[^]*tapewise ${verb}`));
  });

  test("the version is the package's", async () => {
    const { status, stdout } = await runCommand(["--version"]);
    expect(status).toBe(0);
    expect(stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});

describe("a fault of the program", () => {
  const argv = ["choose", "--torso-length", "44 cm", "--chart", at("plain.csv")];
  const failing = (error: Error) =>
    new Writable({
      write(_chunk, _encoding, done) {
        done(error);
      },
    }).on("error", () => undefined);

  test("is one line on standard error, with status 70 and no stack", async () => {
    const err = collect();
    const stdout = new Writable();
    stdout.write = () => {
      throw new Error("the disk\nis full");
    };
    const status = await run(argv, { stdin: Readable.from([]), stdout, stderr: err.stream });
    expect(status).toBe(70);
    expect(err.text().trimEnd().split("\n")).toHaveLength(1);
    expect(err.text()).toContain("the disk\uFFFDis full");
  });

  test("is not that the reader has left", async () => {
    const err = collect();
    const gone = failing(Object.assign(new Error("gone"), { code: "EPIPE" }));
    const status = await run(argv, { stdin: Readable.from([]), stdout: gone, stderr: err.stream });
    expect({ status, stderr: err.text() }).toEqual({ status: 0, stderr: "" });
  });
});

describe("an input that fails while it is read", () => {
  const broken = () =>
    new Readable({
      read() {
        this.destroy(Object.assign(new Error("no more"), { code: "EIO" }));
      },
    });

  test.each([
    [["batch", "--chart", at("plain.csv")]],
    [["choose", "--person", "-", "--chart", at("plain.csv")]],
  ])("%j is told, with status 2", async (argv) => {
    const [out, err] = [collect(), collect()];
    const status = await run(argv, { stdin: broken(), stdout: out.stream, stderr: err.stream });
    expect({ status, stdout: out.text() }).toEqual({ status: 2, stdout: "" });
    expect(err.text().replace(/\s+/g, " ")).toContain("the standard input cannot be read (EIO)");
  });
});
