import { describe, expect, test } from "vitest";
import { run } from "../../../../packages/tapewise/src/command/run.ts";
import { collect, folderWith, PLAIN_CHART, runCommand, terminal } from "../../run-command.ts";

const at = folderWith({
  "plain.csv": PLAIN_CHART,
  "belt.csv": "size,hip-belt-girth (cm)\nS,60-75\nM,74-90\n",
  "belts.json": JSON.stringify({
    chart: "Belts apart",
    swappable: ["hip-belt"],
    sizes: [
      { size: "S", "torso-length": { from: "38 cm", to: "43 cm" } },
      { size: "M", "torso-length": { from: "42 cm", to: "47 cm" } },
    ],
    belts: [
      { belt: "1", "hip-belt-girth": { from: "70 cm", to: "90 cm" } },
      { belt: "2", "hip-belt-girth": { from: "85 cm", to: "105 cm" } },
    ],
  }),
});
const measured = ["--torso-length", "48.4 cm", "48.6 cm", "48.5 cm", "--measured-by", "helper"] as const;
const check = (...argv: readonly string[]) => runCommand(["check", ...argv]);
const onM = (...argv: readonly string[]) =>
  check("--chart", at("plain.csv"), "--size", "M", ...measured, ...argv);

// Everything that can speak for a harness that is too short does so, and nothing but straps can be set, for the chart tells of no adjustable harness.
const SHORT = [
  "cautions=none",
  "belt-position=over-crests",
  "belt-closure=gap-at-buckle",
  "back-panel=far-below",
  "shoulder-contact=bears-down",
  "upper-straps=flatter",
  "strap-ends=end-at-armpit",
  "sternum-strap=breathes-freely",
  "pressure-points=none",
] as const;
const CAUTIONS = ["Pain, numbness or tingling", "Injury or surgery", "Pregnancy", "growing", "fitter"];

describe("tapewise check", () => {
  test("asks first of all what no size settles, and says whom to ask", async () => {
    const { status, stdout, stderr } = await onM();
    expect(status).toBe(0);
    expect(stderr).not.toContain("error");
    expect(stdout).toMatch(/^plain, M: first look$/m);
    expect(stdout).toMatch(/^ {2}cautions=pain-or-numbness$/m);
    for (const caution of CAUTIONS) expect(stdout).toContain(caution);
    expect(Math.max(...stdout.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test("takes answers in any order, and asks for the first that is missing", async () => {
    const { stdout } = await onM("--answer", "belt-position=over-crests", "cautions=none");
    expect(stdout).toMatch(/^ {2}belt-closure=gap-at-buckle$/m);
    expect(stdout).toContain("- cautions: None of these.");
  });

  test.each(["pain-or-numbness", "injury-or-surgery", "pregnancy", "growing-child"])(
    "%s ends it at once, whatever else was answered",
    async (caution) => {
      const { status, stdout, stderr } = await onM("--answer", `cautions=${caution}`, ...SHORT.slice(1));
      expect(status).toBe(0);
      expect(stdout).toMatch(/^See a fitter$/m);
      expect(stderr.replace(/\s+/g, " ")).toContain(
        "not used, for the check did not ask for it: belt-position",
      );
      for (const one of CAUTIONS) expect(stdout).toContain(one);
    },
  );

  const RIGHT = [
    "cautions=none",
    "belt-position=over-crests",
    "belt-closure=gap-at-buckle",
    "back-panel=a-little-below",
    "shoulder-contact=follows",
    "upper-straps=about-half-right-angle",
    "strap-ends=hand-below-armpit",
    "sternum-strap=breathes-freely",
    "pressure-points=none",
  ] as const;
  const stopping = [
    "cautions=pain-or-numbness",
    "cautions=injury-or-surgery",
    "cautions=pregnancy",
    "cautions=growing-child",
    "pressure-points=hurts-or-numb",
  ];
  test.each(stopping)("%s ends it wherever it stands", async (stop) => {
    const reason =
      stop === "pressure-points=hurts-or-numb" ? "pain-or-numbness" : stop.slice("cautions=".length);
    const set = ["cautions=none", "belt-position=too-high"];
    const calls = [
      ["--answer", "cautions=none", stop],
      ["--answer", stop, "cautions=none"],
      ["--answer", stop],
      ["--answer", ...set, stop],
      ["--answer", ...RIGHT, stop],
      ["--answer", stop, ...RIGHT],
      ["--answer", ...set, stop, "--again", ...RIGHT],
      ["--answer", ...set, "--again", "cautions=none", stop],
      ["--answer", ...RIGHT, "--again", stop],
      ["--again", stop],
    ];
    for (const call of calls) {
      const { stdout, stderr } = await onM(...call, "--json");
      expect(JSON.parse(stdout).step, call.join(" ")).toEqual({ kind: "see-fitter", reason });
      expect(stderr).not.toContain(stop);
    }
    const { stdout } = await onM("--answer", ...set, stop);
    expect(stdout).toMatch(/^See a fitter$/m);
    expect(stdout).not.toContain("Set this");
  });

  test("a chart that states no length of the back asks for none", async () => {
    const base = ["--chart", at("belt.csv"), "--size", "M", "--hip-belt-girth", "80 cm"];
    const asked = await check(...base);
    expect(asked.status).toBe(0);
    expect(asked.stdout).toMatch(/^ {2}cautions=none$/m);
    const { stdout } = await check(...base, "--answer", ...RIGHT);
    expect(stdout).toMatch(/^It sits right$/m);
    expect(stdout).toContain("--pseudonym … --hip-belt-girth …");
  });

  test("a chance is told with what it counts in", async () => {
    const inM = ["--chart", at("plain.csv"), "--size", "M", "--torso-length", "44.5 cm"];
    const kept = await check(...inM, "--answer", ...RIGHT);
    expect(kept.stdout).toMatch(/^It sits right$/m);
    const exchanged = await onM("--answer", ...SHORT, "--again", ...SHORT);
    for (const { stdout } of [kept, exchanged]) {
      expect(stdout.replace(/\s+/g, " ")).toContain("counts in that the chart itself may be off");
    }
  });

  test("after something to set it says how to go on", async () => {
    const { stdout } = await onM("--answer", "cautions=none", "belt-position=too-high");
    expect(stdout).toMatch(/^Set this, then look again$/m);
    expect(stdout).toContain("--again");
  });

  test("the help says that an item given twice is no second look", async () => {
    const { stdout } = await check("--help");
    expect(stdout.replace(/\s+/g, " ")).toContain("An item given twice in one list is no second look");
  });

  test("an item without an answer is told the answers it has", async () => {
    const { status, stderr } = await onM("--answer", "cautions");
    expect(status).toBe(2);
    expect(stderr).toContain("such as cautions=none; answers are none, pain-or-numbness");
    expect(stderr).not.toContain("did you mean");
  });

  test("what contradicts itself is asked again, and a second time is for a fitter", async () => {
    const twice = [
      "cautions=none",
      "belt-position=over-crests",
      "belt-closure=gap-at-buckle",
      "back-panel=far-below",
      "shoulder-contact=gap-behind",
    ];
    const first = await onM("--answer", ...twice, "--json");
    expect(JSON.parse(first.stdout)).toMatchObject({
      questioned: "harness-long-and-short",
      step: { kind: "ask", item: "back-panel", because: "harness-long-and-short" },
    });
    const words = await onM("--answer", ...twice);
    expect(words.stdout).toMatch(/^This contradicts itself$/m);
    const again = ["back-panel=far-below", "shoulder-contact=gap-behind"];
    const second = await onM("--answer", ...twice, ...again, "--json");
    expect(JSON.parse(second.stdout).step).toEqual({ kind: "see-fitter", reason: "answers-contradict" });
  });

  test("sets first, and after that names the size to exchange it for, and how sure that is", async () => {
    const first = await onM("--answer", ...SHORT, "--json");
    const { step: set } = JSON.parse(first.stdout);
    expect(set).toEqual({ kind: "adjust", adjustments: ["loosen-shoulder-straps", "loosen-upper-straps"] });
    const begun = await onM("--answer", ...SHORT, "--again", "--json");
    expect(JSON.parse(begun.stdout)).toMatchObject({ look: 2, step: { kind: "ask", item: "cautions" } });
    const again = ["--again", ...SHORT];
    const { stdout } = await onM("--answer", ...SHORT, ...again, "--json");
    const { step, cautions, sentences } = JSON.parse(stdout);
    expect(step).toMatchObject({ kind: "exchange", reason: "harness-too-short", from: "M", to: "L" });
    expect(step.probability).toBeGreaterThan(0.5);
    expect(step.fromProbability).toBeLessThan(step.probability);
    expect(sentences[0]).toContain("Exchange M for L");
    expect(cautions.map(({ code }: { code: string }) => code)).toContain("pain-or-numbness");

    const { stdout: text } = await onM("--answer", ...SHORT, ...again);
    expect(text).toContain("log add log.ndjson exchanged --reason harness-too-short --exchanged-for L");
  });

  test("a belt that is sized apart is judged where it is named, and told where it is not", async () => {
    const base = ["--chart", at("belts.json"), "--size", "M", "--torso-length", "44.5 cm", "44.4 cm"];
    const without = await check(...base);
    expect(without.stderr).toContain("--belt");
    const fits = [
      "cautions=none",
      "belt-position=over-crests",
      "belt-closure=padding-short",
      "back-panel=a-little-below",
      "shoulder-contact=follows",
      "upper-straps=about-half-right-angle",
      "strap-ends=hand-below-armpit",
      "sternum-strap=breathes-freely",
      "pressure-points=none",
    ];
    const { stdout } = await check(
      ...base,
      "--belt",
      "1",
      "--hip-belt-girth",
      "96 cm",
      "96.2 cm",
      "--answer",
      ...fits,
      "--json",
    );
    // 96 cm lies in the second belt's 85 to 105 cm alone.
    expect(JSON.parse(stdout).step).toMatchObject({ kind: "exchange", part: "belt", from: "1", to: "2" });
  });

  test.each([
    [["--size", "XXL"], "check-size-unknown"],
    [["--size", "M", "--belt", "9"], "check-size-unknown"],
  ])("%j is an issue in the data", async (argv, code) => {
    const base = ["--chart", at("plain.csv"), ...argv, ...measured];
    const { status, stderr } = await check(...base);
    expect(status).toBe(1);
    expect(stderr).toContain(`[${code}]`);
    const asJson = await check(...base, "--json");
    expect(JSON.parse(asJson.stdout).issues.map((issue: { code: string }) => issue.code)).toContain(code);
  });

  test("a length that the chart goes by and nobody read is an issue", async () => {
    const { status, stderr } = await check("--chart", at("plain.csv"), "--size", "M", "--hip-girth", "96 cm");
    expect(status).toBe(1);
    expect(stderr).toContain("[check-length-unknown]");
  });

  test.each([
    [["--size", "M", ...measured], "--chart chart.csv"],
    [["--chart", at("plain.csv"), ...measured], "--size M"],
    [["--chart", at("plain.csv"), "--size", "M"], "no reading is given"],
    [["--chart", at("none.csv"), "--size", "M", ...measured], "file-missing"],
    [["--chart", at("plain.csv"), "--size", "M", ...measured, "--answer", "caution=none"], "“cautions”"],
    [
      ["--chart", at("plain.csv"), "--size", "M", ...measured, "--answer", "cautions=pain"],
      "pain-or-numbness",
    ],
    [["--chart", at("plain.csv"), "--size", "M", ...measured, "--answer", "cautions"], "cautions=none"],
  ])("%j is a wrong call", async (argv, says) => {
    const { status, stdout, stderr } = await check(...argv);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toContain(says);
  });
});

describe("on a terminal", () => {
  async function walk(typed: string, ...argv: readonly string[]) {
    const { stdin, stdout } = terminal();
    let shown = "";
    stdout.on("data", (chunk: Buffer) => {
      shown += chunk.toString("utf8");
    });
    const err = collect();
    stdin.end(typed);
    const call = ["check", "--chart", at("plain.csv"), "--size", "M", ...measured, ...argv];
    const status = await run(call, { stdin, stdout, stderr: err.stream });
    return { status, shown };
  }

  test("it shows the cautions, asks, and ends", async () => {
    const { status, shown } = await walk("2\n");
    expect(status).toBe(0);
    for (const caution of CAUTIONS) expect(shown).toContain(caution);
    expect(shown).toContain("1. None of these.");
    expect(shown).toMatch(/^See a fitter$/m);
  });

  test("asks again for what is no answer", async () => {
    const { shown } = await walk("9\nyes\n2\n");
    expect(shown.match(/Type a number from 1 to 5\./g)).toHaveLength(2);
    expect(shown).toMatch(/^See a fitter$/m);
  });

  test("goes on to a second look once something was set", async () => {
    // A belt that sits too high is set before anything else, and then pain ends the second look.
    const { shown } = await walk("1\n2\n\n2\n");
    expect(shown).toMatch(/^Set this, then look again$/m);
    expect(shown.match(/Before you load the pack/g)).toHaveLength(2);
    expect(shown).toMatch(/^See a fitter$/m);
  });

  test.each(["q\n", "1\nQ\n", "1\n2\nq\n", "1\n2\n quit \n"])("%j leaves it", async (typed) => {
    const { status, shown } = await walk(`${typed}1\n2\n`);
    expect([status, shown.includes("Left. Nothing was kept.")]).toEqual([0, true]);
    expect(shown.match(/Before you load the pack/g)).toHaveLength(1);
  });

  test("only Enter alone begins the second look", async () => {
    const { shown } = await walk("1\n2\nwhat\n\n2\n");
    expect(shown).toContain("Press Enter alone once it is set, or type q to leave.");
    expect(shown.match(/Before you load the pack/g)).toHaveLength(2);
  });

  test("can be left, and only prints with --no-ask", async () => {
    const left = await walk("1\n");
    expect([left.status, left.shown.includes("Left. Nothing was kept.")]).toEqual([0, true]);
    const printed = await walk("", "--no-ask");
    expect(printed.shown).toMatch(/^Answer with --answer$/m);
  });
});
