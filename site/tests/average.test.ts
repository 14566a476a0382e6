import type { Page } from "playwright-core";
import { measurement } from "tapewise";
import { expect, test } from "vitest";
import { useSite } from "./harness.ts";

const site = useSite();

/** Waits for what a worker answers: on a busy machine it takes a while to start. */
function soon<Value>(look: () => Promise<Value> | Value) {
  return expect.poll(look, { timeout: 60_000 });
}

function status(page: Page) {
  return page.locator(".take output");
}

/** As a paste does it: filling in by a driver looks at every character. */
async function paste(page: Page, text: string): Promise<void> {
  await page.locator("#readings").evaluate((field, value) => {
    (field as HTMLTextAreaElement).value = value;
    field.dispatchEvent(new InputEvent("input", { bubbles: true }));
  }, text);
}

function cells(page: Page, figure: string, row: number) {
  return page.locator(`[data-figure=${figure}] tbody tr`).nth(row).locator("td");
}

test("the example is worked out before any script runs", async () => {
  const { page } = await site.open("average/", { context: { javaScriptEnabled: false }, isReady: false });
  expect(await status(page).textContent()).toContain("12 readings, mean ");
  expect(await page.locator(".notice li").count()).toBeGreaterThan(2);
  expect(await page.locator("[data-figure=path] .plot-mean").count()).toBeGreaterThan(0);
});

test("readings are taken one by one, ten and a thousand at a time, and the band shrinks", async () => {
  const { page } = await site.open("average/");
  await page.getByRole("button", { name: "Start again" }).click();
  await soon(() => status(page).textContent()).toContain("1 reading, mean");
  await page.getByRole("button", { name: "Take one" }).click();
  await soon(() => status(page).textContent()).toContain("2 readings");
  await page.getByRole("button", { name: "Take ten" }).click();
  await soon(() => status(page).textContent()).toContain("12 readings");
  await page.getByRole("button", { name: "Take a thousand" }).press("Enter");
  await soon(() => status(page).textContent()).toContain("1012 readings");
  await soon(() => page.url()).toContain("taken=1012&");
});

test("what is shown is what the library draws for this seed", async () => {
  const { page } = await site.open(
    "average/#v=1&length=43.6+cm&hands=own&bias=4+mm&lasting=3+mm&noise=6+mm&step=1+mm&taken=40&seed=11",
  );
  const error = { biasMm: 4, lastingMm: 3, noiseMm: 6, stepMm: 1 };
  const drawn = measurement.drawReadings({ lengthMm: 436, error, count: 40, seed: 11 });
  const last = measurement.runningMean(drawn.readingsMm).at(-1);
  await soon(() => status(page).textContent()).toBe(
    `40 readings, mean ${((last?.meanMm ?? 0) / 10).toFixed(1)} cm`,
  );
  // √(4² + 3² + (6² + 1/12)/5) = √(25 + 7.2167) = 5.676; the expected value stands by formula.
  await page.locator("[data-figure=spread] summary").click();
  expect(await cells(page, "spread", 2).nth(3).textContent()).toBe("5.7");
  const [, , five] = measurement.simulateAveraging({
    lengthMm: 436,
    error,
    counts: [1, 3, 5, 10],
    runs: 4000,
    seed: 11,
  });
  expect(await cells(page, "spread", 2).nth(1).textContent()).toBe(five?.mean.sdMm.toFixed(1));
});

test("bias alone: every mean is off by it, and more readings change nothing", async () => {
  const { page } = await site.open(
    "average/#v=1&length=43+cm&hands=own&bias=-6+mm&noise=&step=1+mm&taken=3&seed=1",
  );
  // 430 − 6 = 424 mm, in every reading.
  await soon(() => status(page).textContent()).toBe("3 readings, mean 42.4 cm");
  await soon(() => page.locator(".notice").textContent()).toContain(
    "6.0\u00a0mm shorter than the true length",
  );
  await page.getByRole("button", { name: "Take a thousand" }).click();
  await soon(() => status(page).textContent()).toBe("1003 readings, mean 42.4 cm");
});

test("sizes: far from every boundary no series is wrong, outside all of them every one is", async () => {
  const own = "&pack=own&chart=size,torso-length+(cm)%0AS,38-44%0AM,44-50";
  const { page } = await site.open(`average/#v=1&length=41+cm&hands=own&noise=2+mm&taken=3&seed=1${own}`);
  await soon(() => page.locator(".notice").textContent()).toContain("No series picks a wrong size");
  await page.locator("#length").fill("60 cm");
  await soon(() => page.locator(".notice").textContent()).toContain("lies in no size of this chart");
  await soon(() => page.locator("[data-figure=wrong] strong").allTextContents()).toEqual([
    "100 %",
    "100 %",
    "100 %",
    "100 %",
  ]);
});

test("the readings of a class take the place of the drawn ones", async () => {
  const { page } = await site.open("average/");
  await page.getByLabel("our own").check();
  await page.locator("#readings").fill("43.0 cm\n44.0 cm; 43.2 cm\n440 mm");
  // (430 + 440 + 432 + 440) / 4 = 435.5
  await soon(() => status(page).textContent()).toBe("4 readings, mean 43.6 cm");
  await soon(() => page.locator(".notice").textContent()).toContain("cannot be seen from these numbers");
  await page.locator("#held").fill("43.05 cm");
  await soon(() => page.locator(".notice").textContent()).toContain("The class reads 5.0\u00a0mm longer");
  await page.locator("#readings").fill("43.0 cm\n44\n43.2 cm");
  await page.getByText("Line 2").waitFor();
  expect(await page.locator("#readings").getAttribute("aria-invalid")).toBe("true");
  expect(await page.locator("#readings-told").textContent()).toContain("44 has no unit");
});

test("what is wrong with a field is told at the field, and nothing is drawn of it", async () => {
  const { page } = await site.open("average/");
  await page.locator("#length").fill("43");
  await page.locator("#length-problem-0").waitFor();
  expect(await page.locator("#length-problem-0").textContent()).toContain("43 has no unit");
  expect(await page.locator("[data-figure]").count()).toBe(0);
  await page.getByRole("button", { name: "Read it as 43 cm" }).click();
  await page.locator("[data-figure=path]").waitFor();
  await page.getByLabel("as I say").check();
  await page.locator("#slipChance").fill("140");
  await page.locator("#slipChance-problem-0").waitFor();
  await page.locator("#slipChance").fill("20");
  await soon(() => page.locator("#slipChance-problem-0").count()).toBe(0);
});

test("units, link, reload and back", async () => {
  const { page } = await site.open("average/#v=1&length=17+in&hands=own&step=&taken=4&seed=3");
  await soon(() => status(page).textContent()).toBe("4 readings, mean 43.2 cm");
  await page.getByText("inches", { exact: true }).click();
  await soon(() => status(page).textContent()).toBe("4 readings, mean 17 in");
  await page.getByLabel("the person alone").check();
  await soon(() => page.url()).toContain("hands=self");
  await page.reload();
  await soon(() => page.getByLabel("the person alone").isChecked()).toBe(true);
  expect(await page.locator("#length").inputValue()).toBe("17 in");
  await page.goBack();
  await soon(() => page.getByLabel("a hand with errors of my own").isChecked()).toBe(true);
});

test("for the wall everything is larger, and nothing is cut off", async () => {
  const { page } = await site.open("average/");
  const before = await page.locator(".take output").evaluate((field) => getComputedStyle(field).fontSize);
  await page.getByLabel("Large, for the wall").check();
  const after = await page.locator(".take output").evaluate((field) => getComputedStyle(field).fontSize);
  expect(Number.parseFloat(after)).toBeGreaterThan(1.4 * Number.parseFloat(before));
  expect(
    await page.evaluate("document.documentElement.scrollWidth <= document.documentElement.clientWidth"),
  ).toBe(true);
});

test("ten thousand pasted readings leave the page usable", async () => {
  const { page, complaints } = await site.open("average/");
  await page.getByLabel("our own").check();
  const lines = Array.from({ length: 10_000 }, (_, index) => `${430 + (index % 21)} mm`);
  await paste(page, lines.join("\n"));
  await soon(() => status(page).textContent()).toContain("10000 readings");
  expect(await page.locator("main *").count()).toBeLessThan(6000);
  await page.locator("#held").fill("43 cm");
  await soon(() => page.locator(".notice").textContent()).toContain("The careful reading is 43.0 cm");
  expect(complaints).toEqual([]);
});

test.each([
  ["figures out of reach", "v=1&taken=99999999&seed=-3&length=1e400+cm&noise=1e300+mm&hands=own"],
  ["markup", "v=1&length=%3Cimg+src%3Dx+onerror%3DglobalThis.ran%3D1%3E"],
  ["too long", `v=1&readings=${"4".repeat(100_000)}`],
  ["words of another kind", "v=1&hands=__proto__&tool=constructor&slips=toString"],
])("a hostile link does no harm: %s", async (_, fragment) => {
  const { page, complaints, strays } = await site.open(`average/#${fragment}`);
  await page.locator("[role=alert], .problem").first().waitFor();
  expect(await page.evaluate("globalThis.ran")).toBeUndefined();
  await page.locator("#length").fill("43 cm");
  expect(await page.locator("#length").inputValue()).toBe("43 cm");
  expect(complaints).toEqual([]);
  expect(strays).toEqual([]);
});

test("on paper stand the notices and the figures, without the form", async () => {
  const { page } = await site.open("average/", { theme: "dark" });
  await page.emulateMedia({ media: "print" });
  expect(await page.locator(".notice").isVisible()).toBe(true);
  expect(await page.locator("[data-figure=spread]").isVisible()).toBe(true);
  expect(await page.locator("form").isVisible()).toBe(false);
});

test("German: numbers with a comma, and no English sentence", async () => {
  const { page } = await site.open("de/average/");
  await page.locator("#length").fill("43,2");
  await page.locator("#length-problem-0").waitFor();
  expect(await page.locator("#length-problem-0").textContent()).toContain("43,2 hat keine Einheit");
  await page.locator("#length").fill("43,2 cm");
  await soon(() => status(page).textContent()).toMatch(/^12 Messungen, Mittelwert \d\d,\d cm$/);
  expect(await page.locator("main [lang=en]").count()).toBe(0);
});
