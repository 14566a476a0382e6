import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { intervals, measurement, population, units } from "tapewise";
import { describe, expect, test } from "vitest";
import { answers } from "../src/try-it/answers/index.ts";
import { averageReadings } from "../src/try-it/calls/average-readings.ts";
import { chooseForTable } from "../src/try-it/calls/choose-for-table.ts";
import { chooseSize } from "../src/try-it/calls/choose-size.ts";
import { readChart } from "../src/try-it/calls/read-chart.ts";
import { studyError } from "../src/try-it/calls/study-error.ts";
import { whoIsServed } from "../src/try-it/calls/who-is-served.ts";
import { type ExampleId, startOf } from "../src/try-it/examples.ts";
import { places } from "../src/try-it/places.ts";
import { useSite } from "./harness.ts";
import { listPages } from "./harness-pages.ts";
import { measureTasks } from "./measure-tasks.ts";
import { dist } from "./serve-site.ts";

const site = useSite();

const pages = Object.fromEntries(Object.entries(places).map(([id, { page }]) => [id, page])) as Readonly<
  Record<ExampleId, string>
>;
const all = Object.entries(pages) as readonly (readonly [ExampleId, string])[];

/** Bytes of JavaScript, gzipped, that a page may load until an entry is answered. */
const BUDGET = 70_000;
/** No task of the page may keep it from answering for longer, in ms, on a processor four times slower. */
const LONGEST_TASK_MS = 50;
const SLOWER = 4;

/** Waits for what a worker answers: on a busy machine it takes a while to start. */
function soon<Value>(look: () => Promise<Value> | Value) {
  return expect.poll(look, { timeout: 60_000 });
}

function field(page: Page, id: ExampleId, name: string) {
  return page.locator(`#${id}-${name}`);
}

/** The call that is shown, and what it returned as JSON. */
async function shown(page: Page): Promise<{ readonly call: string; readonly returned: unknown }> {
  const text = (await page.locator(".try pre").textContent()) ?? "";
  const [call = "", returned = ""] = text.split(/\n\n(?=\{)/);
  return { call, returned: JSON.parse(returned) };
}

/** As JSON has it, so that what is `undefined` is not there. */
function asJson(value: unknown): unknown {
  return JSON.parse(JSON.stringify(value));
}

async function returned(page: Page): Promise<unknown> {
  return (await shown(page)).returned;
}

/** The text of the block of code that stands above the editor. */
async function codeAbove(page: Page): Promise<string> {
  return page.evaluate<string>(`(() => {
    const frame = document.querySelector(".try-frame");
    const blocks = [...document.querySelectorAll(".expressive-code pre")];
    const before = blocks.filter((block) => block.compareDocumentPosition(frame) & Node.DOCUMENT_POSITION_FOLLOWING);
    return [...before.at(-1).querySelectorAll(".ec-line")].map((line) => line.textContent.replace(/\\n$/, "")).join("\\n");
  })()`);
}

describe("the example as it stands", () => {
  test.each(all)(
    "%s: the code above is the one that runs, and its answer is there at once",
    async (id, path) => {
      const { page, requests } = await site.open(path);
      expect(await page.locator(".try").count()).toBe(1);
      const { call, returned } = await shown(page);
      const first = answers[id](startOf(id));
      expect(call).toBe(first.call);
      expect(returned).toEqual(JSON.parse(first.returned));
      const code = await codeAbove(page);
      const file = readFileSync(new URL(`../src/try-it/calls/${id}.ts`, import.meta.url), "utf8").trim();
      const claim = first.returned
        .split("\n")
        .map((line, index) => `${index === 0 ? "// => " : "// "}${line}`);
      expect(code.trim()).toBe([file, "", call, ...claim].join("\n"));
      // Nothing of the library is fetched for a reader who only reads.
      await page.waitForLoadState("networkidle");
      expect(requests.filter((address) => /\/try-(?!it\.)[a-z-]+-[\w-]+\.js$/.test(address))).toEqual([]);
    },
  );

  test.each(all)("%s: without scripts the tested snippet stands alone", async (_id, path) => {
    const { page } = await site.open(path, { context: { javaScriptEnabled: false }, isReady: false });
    expect(await page.locator(".try-frame").isVisible()).toBe(false);
    expect(await codeLines(page)).toContain("// => {");
  });

  // With scripts turned off nothing can be evaluated in the page.
  async function codeLines(page: Page): Promise<string> {
    return (await page.locator(".expressive-code .ec-line").allTextContents()).join("\n");
  }
});

describe("what is changed is answered as the library answers it", () => {
  test("a reading: another size", async () => {
    const { page, complaints, strays } = await site.open(pages["choose-size"]);
    const torso = ["40.3 cm", "40.1 cm", "40.6 cm"];
    await field(page, "choose-size", "torso").fill(torso.join("\n"));
    const chart = await field(page, "choose-size", "chart").inputValue();
    await soon(() => returned(page)).toEqual(asJson(chooseSize(torso, ["93 cm", "92 cm"], chart)));
    // By hand: 40.3 cm lies inside S, 38 to 43 cm, and outside M, 42 to 48 cm; but 92.5 cm is more than the 92 cm of S.
    const { call, returned: answer } = await shown(page);
    expect(answer).toMatchObject({ ok: true, value: { pick: "S" } });
    expect(call).toContain('["40.3 cm", "40.1 cm", "40.6 cm"],');
    expect(await page.locator(".try-answer").textContent()).toContain("S");
    await page.getByRole("button", { name: "Back to the example" }).click();
    await soon(() => returned(page)).toMatchObject({ ok: true, value: { pick: "M", verdict: "fits" } });
    expect(await field(page, "choose-size", "torso").inputValue()).toBe("45.1 cm\n44.8 cm\n45.2 cm");
    expect(complaints).toEqual([]);
    expect(strays).toEqual([]);
  });

  test("a chart: JSON is read too", async () => {
    const { page } = await site.open(pages["read-chart"]);
    const text = '{"chart":"Doily 45","sizes":[{"size":"S","torso-length":{"from":"15 in","to":"17 in"}}]}';
    await field(page, "read-chart", "text").fill(text);
    await soon(() => returned(page)).toEqual(asJson(readChart(text)));
    // By hand: 15 × 25.4 = 381 mm, 17 × 25.4 = 431.8 mm.
    expect(await returned(page)).toMatchObject({
      ok: true,
      value: [{ size: "S", ranges: ["torso-length [381, 431.8], range"] }],
    });
    expect(await page.locator(".try-answer").textContent()).toBe(
      "Sizes read: 1. Errors: 0. Worth a look: 0.",
    );
  });

  test("a table of people: the line that was wrong gets its size", async () => {
    const { page } = await site.open(pages["choose-for-table"]);
    const people = "wren,40.3 cm,39.8 cm,40.6 cm\nada,44.1 cm,44 cm";
    await field(page, "choose-for-table", "people").fill(people);
    const chart = await field(page, "choose-for-table", "chart").inputValue();
    await soon(() => returned(page)).toEqual(asJson(chooseForTable(people, chart)));
    expect(await page.locator(".try-answer").textContent()).toBe("People in the table: 2. With a size: 2.");
  });

  test("readings, and who takes them", async () => {
    const { page } = await site.open(pages["average-readings"]);
    await field(page, "average-readings", "texts").fill("43 cm\n44 cm");
    await soon(() => returned(page)).toEqual(asJson(averageReadings(["43 cm", "44 cm"], "helper")));
    expect(await returned(page)).toMatchObject({ ok: true, value: { mean: "435.0" } });
    await page.getByLabel("self").check();
    await soon(() => returned(page)).toEqual(asJson(averageReadings(["43 cm", "44 cm"], "self")));
    expect((await shown(page)).call).toBe('averageReadings(["43 cm", "44 cm"], "self");');
  });

  test("a chart among men", async () => {
    const { page } = await site.open(pages["who-is-served"]);
    const chart = await field(page, "who-is-served", "chart").inputValue();
    await page.getByLabel("men", { exact: true }).check();
    await soon(() => returned(page)).toEqual(asJson(whoIsServed(chart, "men")));
    const men = population.referencePopulation("men");
    // By hand: from 15 in to 21 in is from 15 × 25.4 = 381 mm to 21 × 25.4 = 533.4 mm.
    const { probability } = men.boxProbability({ "torso-length": intervals.interval(381, 533.4) });
    expect(await page.locator(".try-answer").textContent()).toBe(
      `This chart serves ${(100 * probability).toFixed(1)} % of the men of the survey.`,
    );
  });

  test("a study", async () => {
    const { page } = await site.open(pages["study-error"]);
    // By hand: the differences are 4, 0, 2, so √(20 / 6) = 1.83 mm.
    const table = "person,heron 1 (mm),heron 2 (mm)\nmia,430,434\nleo,480,480\nana,455,453";
    await field(page, "study-error", "table").fill(table);
    await soon(() => returned(page)).toEqual(asJson(studyError(table)));
    expect(await page.locator(".try-answer").textContent()).toBe(
      "People: 3. Technical error of one measurer 1.83 mm.",
    );
    const tem = measurement.safeTechnicalError(measurement.parseStudy(table, { dimension: "torso-length" }));
    expect(tem.issues.map(({ code }) => code)).toEqual(["tem-inter-unknown"]);
    expect(await page.locator(".try-told").textContent()).toContain("tem-inter-unknown");
  });

  test("a length", async () => {
    const { page } = await site.open(pages["read-length"]);
    await field(page, "read-length", "text").fill("1' 6 3/8\"");
    await soon(() => returned(page)).toMatchObject({ ok: true, value: { mm: 466.725 } });
    await field(page, "read-length", "text").fill("43,2cm");
    await soon(() => returned(page)).toMatchObject({
      ok: true,
      value: { mm: units.parseLength("43,2cm").mm },
    });
    expect((await shown(page)).call).toBe('readLength("43,2cm");');
  });
});

describe("what cannot be read keeps its text and is told at its field", () => {
  test("a bare number, and one press that mends it", async () => {
    const { page } = await site.open(pages["choose-size"]);
    const torso = field(page, "choose-size", "torso");
    await torso.fill("45.1 cm\n\n44.8\n45.2 cm");
    const told = page.locator("#choose-size-torso-told");
    await soon(() => told.textContent()).toContain("44.8 has no unit");
    // The blank line counts for nothing: it is the second reading.
    expect(await told.textContent()).toContain("entry 2");
    expect(await told.textContent()).toContain("length-no-unit");
    expect(await torso.getAttribute("aria-invalid")).toBe("true");
    expect(await torso.inputValue()).toBe("45.1 cm\n\n44.8\n45.2 cm");
    expect(await page.locator(".try-answer").textContent()).toContain("There is no value");
    expect(await returned(page)).toMatchObject({ ok: false, issues: [{ code: "length-no-unit" }] });
    const link = page.getByRole("link", { name: "what length-no-unit means" });
    expect(await link.getAttribute("href")).toBe("/tapewise/reference/issue-codes/#length-no-unit");
    await page.getByRole("button", { name: "Read it as 44.8 cm" }).click();
    await soon(() => torso.inputValue()).toBe("45.1 cm\n\n44.8 cm\n45.2 cm");
    await soon(() => returned(page)).toMatchObject({ ok: true, value: { pick: "M" } });
    expect(await torso.getAttribute("aria-invalid")).toBe("false");
  });

  test.each<readonly [ExampleId, string, string, string]>([
    ["choose-size", "chart", "size,torso-length (cm)\nS,43-38", "chart-range-reversed"],
    ["choose-size", "hips", "93 kg", "length-unit-wrong-kind"],
    ["read-chart", "text", '{"chart":', "chart-json-unfinished"],
    ["read-chart", "text", "", "chart-empty"],
    ["choose-for-table", "chart", "size,torso-length\nS,38-43", "length-no-unit"],
    ["average-readings", "texts", "forty cm", "length-not-a-number"],
    ["average-readings", "texts", "", "readings-missing"],
    ["who-is-served", "chart", "size,back (cm)\nS,38-43", "chart-column-ambiguous"],
    ["study-error", "table", "person,heron (mm)\nana,4300", "study-reading-impossible"],
    ["read-length", "text", "1,750 mm", "length-ambiguous-separator"],
    ["read-length", "text", "<img src=x onerror=globalThis.ran=1>", "length-extra-text"],
  ])("%s, %s: %j", async (id, name, text, code) => {
    const { page, complaints, strays } = await site.open(pages[id]);
    await field(page, id, name).fill(text);
    await soon(() => page.locator(`#${id}-${name}-told`).textContent()).toContain(code);
    expect(await field(page, id, name).inputValue()).toBe(text);
    expect(await page.evaluate("globalThis.ran")).toBeUndefined();
    const { violations } = await new AxeBuilder({ page }).include(".try").analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    expect(complaints).toEqual([]);
    expect(strays).toEqual([]);
  });
});

test("each function that an example shows leads to it from the reference", () => {
  const reference = listPages().filter((path) => path.startsWith("api/"));
  const led = Object.entries(places).flatMap(([id, { page, functions }]) =>
    functions.map((name) => ({ path: `api/${name}/`, link: `href="/tapewise/${page}#try-${id}"` })),
  );
  expect(led.filter(({ path }) => !reference.includes(path))).toEqual([]);
  for (const { path, link } of led) {
    expect(readFileSync(join(dist, path, "index.html"), "utf8"), path).toContain(link);
  }
});

test("all of it by keyboard", async () => {
  const { page } = await site.open(pages["average-readings"]);
  await field(page, "average-readings", "texts").focus();
  await page.keyboard.press("ControlOrMeta+End");
  await page.keyboard.type("\n44.0 cm");
  await soon(() => page.locator(".try pre").textContent()).toContain('"44.0 cm"], "helper"');
  await page.keyboard.press("Tab");
  await page.keyboard.press("ArrowLeft");
  await soon(() => page.locator(".try pre").textContent()).toContain('"44.0 cm"], "self"');
  await page.keyboard.press("Tab");
  expect(await page.evaluate("document.activeElement.getAttribute('aria-label')")).toBe(
    "The call and what it returns",
  );
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await soon(() => page.locator(".try pre").textContent()).toContain('"43.6 cm"], "helper"');
});

test("what a screen reader hears: names, hints, faults and answers", async () => {
  const { page } = await site.open(pages["choose-size"]);
  const torso = page.getByRole("textbox", { name: "Torso length" });
  const describedBy = (await torso.getAttribute("aria-describedby"))?.split(" ") ?? [];
  expect(describedBy).toEqual(["choose-size-torso-hint", "choose-size-torso-told"]);
  for (const id of describedBy) expect(await page.locator(`#${id}`).count()).toBe(1);
  expect(
    await page.getByRole("group", { name: "Try it: change what chooseSize is called with" }).count(),
  ).toBe(1);
  expect(await page.locator(".try-answer").getAttribute("aria-live")).toBe("polite");
  await torso.fill("45");
  await soon(() => page.locator("#choose-size-torso-told").textContent()).toContain("45 has no unit");
  expect(await page.locator("#choose-size-torso-told").getAttribute("aria-live")).toBe("polite");
});

test.each(all)("%s: light, quick, and not wider than a narrow screen", async (id, path) => {
  const { page, requests, complaints } = await site.open(path, { width: 320 });
  const entry = page.locator(".try textarea, .try input[type=text]").first();
  await entry.click();
  await page.keyboard.press("ControlOrMeta+End");
  const tasks = await measureTasks(page, async () => {
    for (const key of ["Backspace", "Backspace", " ", "c", "m"]) {
      await page.keyboard.press(key);
      await page.waitForTimeout(150);
    }
    await page.waitForTimeout(1500);
  });
  expect(Math.max(...tasks) * SLOWER).toBeLessThanOrEqual(LONGEST_TASK_MS);
  await page.waitForLoadState("networkidle");
  const scripts = [...new Set(requests)].filter((address) => new URL(address).pathname.endsWith(".js"));
  expect(scripts.some((address) => address.includes(`/try-${id}-`))).toBe(true);
  const weights = scripts.map((address) => {
    const file = new URL(address).pathname.replace(/^\/tapewise\//, "");
    return [file, gzipSync(readFileSync(join(dist, file)), { level: 9 }).length] as const;
  });
  const total = weights.reduce((sum, [, size]) => sum + size, 0);
  expect(total, weights.map((each) => each.join(" ")).join("\n")).toBeLessThanOrEqual(BUDGET);
  for (const size of ["100%", "200%"]) {
    await page.setViewportSize({ width: size === "100%" ? 320 : 640, height: 900 });
    await page.evaluate(`document.documentElement.style.fontSize = "${size}"`);
    await page.waitForTimeout(100);
    expect(
      await page.evaluate("document.documentElement.scrollWidth <= document.documentElement.clientWidth"),
    ).toBe(true);
  }
  expect(complaints).toEqual([]);
});
