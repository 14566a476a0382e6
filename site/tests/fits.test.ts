import type { Page } from "playwright-core";
import { charts, coverage, outcome, population } from "tapewise";
import { expect, test } from "vitest";
import { useSite } from "./harness.ts";
import { medianLongest, settled } from "./measure-tasks.ts";

const site = useSite();

/** A busy machine takes its time; what never comes is still missed. */
const SLOW = { timeout: 15_000 };

const ROWS = 10_000;
const DOILY = "# chart: Doily 45\nsize,torso-length (cm)\nS,38-43\nM,45-48\n";
const doily = charts.parseChart(DOILY);
const women = population.referencePopulation("women");

function headline(page: Page): Promise<string | null> {
  return page.locator(".headline-size").textContent();
}

async function paste(page: Page, text: string): Promise<void> {
  await page.locator("#pack").selectOption("");
  // As a paste does it: filling in by a driver looks at every character.
  await page.locator("#pasted").evaluate((field, value) => {
    (field as HTMLTextAreaElement).value = value;
    field.dispatchEvent(new InputEvent("input", { bubbles: true }));
  }, text);
}

test("the example is answered before any script runs, and as the library answers it", async () => {
  const { page } = await site.open("fits/", { context: { javaScriptEnabled: false }, isReady: false });
  const both = population.referenceMixture({ women: 1, men: 1 });
  // The ranges of the shelf's chart, without its belts, of which the survey knows nothing.
  const text = "size,torso-length (cm)\nXS,34-38.5\nS,36.5-41\nM,39-43.5\nL,41.5-46\n";
  const { byNone } = outcome.unwrap(coverage.chartCoverage(charts.parseChart(text, { chart: "x" }), both));
  expect(await headline(page)).toBe(`Leaves out ${coverage.writeShare(byNone.share)}`);
  expect(await page.locator("[data-stock]").count()).toBe(4);
});

test("a chart that is pasted is held against people with the library's own numbers", async () => {
  const { page } = await site.open("fits/");
  await page.getByLabel("women", { exact: true }).check();
  await paste(page, DOILY);
  const served = outcome.unwrap(coverage.chartCoverage(doily, women, { survey: { people: [990] } }));
  await expect
    .poll(() => headline(page), SLOW)
    .toBe(`Leaves out ${coverage.writeShare(served.byNone.share)}`);
  const cell = (name: string) =>
    page.locator("tr", { has: page.getByRole("rowheader", { name, exact: true }) }).locator(".share");
  const rows: readonly (readonly [string, coverage.Share | undefined])[] = [
    ["at least one size fits", served.served],
    ["torso length below 38.0 cm", served.outside[0]?.below],
    ["torso length between 43.0 cm and 45.0 cm", served.outside[0]?.gaps[0]?.people],
    ["torso length above 48.0 cm", served.outside[0]?.above],
  ];
  await page.getByRole("rowheader", { name: "torso length above 48.0 cm" }).waitFor();
  for (const [name, share] of rows) {
    expect(await cell(name).first().textContent(), name).toBe(coverage.writeShare(share?.share ?? -1));
  }
  const stock = outcome.unwrap(coverage.stockFor(doily, women, { members: 25, chance: 0.9 }));
  await page.locator("#members").fill("25");
  await page.locator("#chance").fill("90 %");
  await page.getByText(`${stock.total} packs for 25 members`).waitFor();
  for (const { size, count } of stock.sizes) {
    expect(await page.locator(`[data-stock="${size}"]`).textContent()).toBe(String(count));
  }
});

test("a mean stature moves the people, as a re-weighted survey does", async () => {
  const { page } = await site.open("fits/");
  await page.getByLabel("women", { exact: true }).check();
  await paste(page, DOILY);
  await page.locator("#tallWomen").fill("5 ft 9 in");
  const { sd } = women.distribution("stature");
  const taller = population.reweight(
    women,
    population.normalJoint({
      about: { label: "taller", source: "made up", caveat: "" },
      variables: ["stature"],
      // 5 ft 9 in are 69 in of 25.4 mm.
      mean: [1752.6],
      covariance: [[sd * sd]],
    }),
  );
  const { byNone } = outcome.unwrap(coverage.chartCoverage(doily, taller));
  await expect.poll(() => headline(page), SLOW).toBe(`Leaves out ${coverage.writeShare(byNone.share)}`);
});

test("sizes are cut where the library cuts them, whatever number is asked for", async () => {
  const { page } = await site.open("fits/#v=1&people=women&packs=thimblewick-doily-45&span=4+cm");
  const { growth } = coverage.cutSizes({
    population: women,
    dimension: "torso-length",
    count: 10,
    goal: "served",
    spanMm: 40,
  });
  for (const count of [4, 2, 7]) {
    await page.locator("#sizes").fill(String(count));
    const share = coverage.writeShare(growth[count - 1]?.served ?? -1);
    await page.getByText(`${count} sizes of 4.0 cm serve ${share}`).waitFor();
  }
});

test("the unit is changed in what is shown, and a link, a reload and the back button keep the page", async () => {
  const { page } = await site.open("fits/");
  await page.getByLabel("men", { exact: true }).check();
  await page.getByText("inches", { exact: true }).click();
  // 460 mm are 18.11 in, to the nearest eighth 18 1/8.
  await page.getByRole("rowheader", { name: "torso length above 18 1/8 in" }).waitFor();
  expect(page.url()).toContain("people=men");
  await page.reload();
  await page.getByRole("rowheader", { name: "torso length above 18 1/8 in" }).waitFor();
  expect(await page.getByLabel("men", { exact: true }).isChecked()).toBe(true);
  await page.goBack();
  await page.getByRole("rowheader", { name: "torso length above 46.0 cm" }).waitFor();
  await page.goBack();
  await expect.poll(() => page.getByLabel("both", { exact: true }).isChecked(), SLOW).toBe(true);
});

test.each([
  ["members", "many", "whole number"],
  ["members", "0", "whole number"],
  ["chance", "100", "per cent"],
  ["span", "5", "has no unit"],
  ["span", "9 m", "0.5 cm"],
  ["tallWomen", "2 cm", "140 cm"],
])("what is wrong with %s (%s) is told at the field", async (field, text, said) => {
  const { page, complaints } = await site.open("fits/");
  await page.locator(`#${field}`).fill(text);
  await page.locator(`#${field}-problem-0`).waitFor();
  expect(await page.locator(`#${field}`).getAttribute("aria-invalid")).toBe("true");
  expect(await page.locator(`#${field}-problem-0`).textContent()).toContain(said);
  expect(complaints).toEqual([]);
});

test("on paper there are the answer and the caveats, and no fields", async () => {
  const { page } = await site.open("fits/");
  await page.emulateMedia({ media: "print" });
  expect(await page.locator(".headline-size").isVisible()).toBe(true);
  expect(await page.locator("#members").isVisible()).toBe(false);
  expect(await page.getByText("soldiers of 2012").isVisible()).toBe(true);
});

test("ten thousand rows leave the page usable", async () => {
  const { page, complaints } = await site.open("fits/");
  const row = (index: number) =>
    `S${index},${(30 + index / 1000).toFixed(3)}-${(35 + index / 1000).toFixed(3)}`;
  await paste(
    page,
    `size,torso-length (cm)\n${Array.from({ length: ROWS }, (_, index) => row(index)).join("\n")}\n`,
  );
  await page.getByText("Read 10000 sizes").waitFor();
  await page.getByText("only the first 24 sizes are held against people").waitFor();
  expect(await page.locator("main *").count()).toBeLessThan(5000);
  await page.locator("#members").fill("12");
  await page.getByText("packs for 12 members").waitFor();
  expect(await page.getByText("This is too much for a link").isVisible()).toBe(true);
  expect(complaints).toEqual([]);
});

test.each([
  ["a huge one", `v=1&span=${"4".repeat(200_000)}`],
  ["markup in a field", "v=1&members=%3Cimg+src%3Dx+onerror%3DglobalThis.ran%3D1%3E&people=everyone"],
  ["a number out of range", "v=1&sizes=999&women=0"],
  ["another version", "v=99&people=men"],
  ["a key of every object", "v=1&__proto__=x&constructor=y"],
])("a hostile link does no harm: %s", async (_, fragment) => {
  const { page, complaints, strays } = await site.open(`fits/#${fragment}`);
  await page.locator("[role=alert], .problem").first().waitFor();
  expect(await page.evaluate("globalThis.ran")).toBeUndefined();
  expect(await page.locator("main img").count()).toBe(0);
  expect(complaints).toEqual([]);
  expect(strays).toEqual([]);
});

test("no task is long while somebody types, on a processor four times slower", async () => {
  const longest = await medianLongest(
    50,
    async () => (await site.open("fits/")).page,
    async (page) => {
      for (const [field, keys] of [
        ["#members", ["Backspace", "5", "1"]],
        ["#span", ["Home", "1"]],
        ["#tallMen", ["1", "8", "0", " ", "c", "m"]],
      ] as const) {
        await page.locator(field).focus();
        for (const key of keys) {
          await page.keyboard.press(key);
          await settled(page);
        }
      }
    },
  );
  expect(longest).toBeLessThanOrEqual(50);
});

test("German: shares with a comma, the library's sentences in German", async () => {
  const { page } = await site.open("de/fits/");
  expect(await headline(page)).toMatch(/^Lässt \d+,\d % aus$/);
  await page.getByText("die Zahlen der Frauen und Männer sagen nichts über Hüftgurtumfang").waitFor();
  await page.getByText("berechnet aus den öffentlichen Einzeldaten").waitFor();
  expect(await page.locator("main [lang=en]:visible").count()).toBe(0);
});
