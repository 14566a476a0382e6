import type { Page } from "playwright-core";
import { charts, fit, type measurement, outcome } from "tapewise";
import { safeReadPerson } from "tapewise/batch";
import { expect, test } from "vitest";
import { useSite } from "./harness.ts";

const site = useSite();

const DOILY = "size,torso-length (cm),hip-belt-girth (cm)\nS,38-43,70-98\nM,42-48,78-104\n";

/** The answer on the page, without what is only for paper. */
function answer(page: Page) {
  return page.locator("section.answer");
}

function reading(page: Page, dimension: string, index: number) {
  return page.locator(`#reading-${dimension}-${index}`);
}

async function begin(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Begin with my own" }).click();
}

test("the example is answered before any script runs, and as the library answers it", async () => {
  const { page } = await site.open("choose/", { context: { javaScriptEnabled: false }, isReady: false });
  expect(await page.locator(".headline-size").first().textContent()).toBe("Take M");
  // 40.3 + 39.8 + 40.6 = 120.7, a third of which is 40.23.
  expect(await page.locator("[data-estimate=torso-length]").first().textContent()).toContain("40.2 cm");
});

test("what is typed is answered with the library's own numbers", async () => {
  const { page } = await site.open("choose/");
  await begin(page);
  for (const [index, text] of ["44.8 cm", "45.1 cm", "45.3 cm"].entries()) {
    await reading(page, "torso-length", index).fill(text);
  }
  const ticked = page.locator("fieldset", { hasText: "The crew's shelf" }).locator("input:checked");
  while ((await ticked.count()) > 0) await ticked.first().uncheck();
  await page.locator("summary", { hasText: "A chart of your own" }).click();
  await page.locator("#pasted").fill(`# chart: Doily 45\n${DOILY}`);
  await page.getByText("Read 2 sizes of “Doily 45”.").waitFor();
  await expect.poll(() => answer(page).locator(".headline-pack").textContent()).toBe("Doily 45");

  const person = outcome.unwrap(
    safeReadPerson({ readings: { "torso-length": ["44.8 cm", "45.1 cm", "45.3 cm"] } }),
  );
  const chart = charts.parseChart(DOILY, { chart: "Doily 45" });
  const best = outcome.unwrap(fit.compare(person, [chart], { unit: "cm" })).ranked[0]?.recommendation;
  const estimate: measurement.Estimate | undefined = person.estimates[0];
  expect(await answer(page).locator(".headline-size").textContent()).toBe(`Take ${best?.pick}`);
  const sentences = await answer(page).locator("li").allTextContents();
  for (const { sentence } of best?.reasons ?? []) expect(sentences).toContain(sentence);
  const shown = sentences.join("\n");
  // (44.8 + 45.1 + 45.3) / 3 = 45.07
  expect(shown).toContain("torso length: 45.1 cm from 3 readings");
  expect(shown).toContain(`standard uncertainty ${((estimate?.uncertaintyMm ?? 0) / 10).toFixed(1)} cm`);
});

test("several readings are pasted at once, over the fields that follow", async () => {
  const { page, context } = await site.open("choose/");
  await begin(page);
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.evaluate(`navigator.clipboard.writeText("43,2 cm\\n44 cm; 43.6 cm\\n17 1/4 in")`);
  await reading(page, "torso-length", 0).focus();
  await page.keyboard.press("Control+V");
  await expect.poll(() => reading(page, "torso-length", 3).inputValue()).toBe("17 1/4 in");
  expect(await reading(page, "torso-length", 0).inputValue()).toBe("43,2 cm");
});

test("a bare number is refused at its field, in words, and is mended with one press", async () => {
  const { page } = await site.open("choose/");
  const field = reading(page, "torso-length", 0);
  await field.fill("19");
  await page.locator("#reading-torso-length-0-problem-0").waitFor();
  expect(await field.getAttribute("aria-invalid")).toBe("true");
  expect(await field.getAttribute("aria-describedby")).toContain("reading-torso-length-0-problem-0");
  expect(await page.locator("#reading-torso-length-0-problem-0").textContent()).toContain("19 has no unit");
  // No size is named while an entry cannot be read.
  expect(await answer(page).locator(".headline-size").count()).toBe(0);
  await answer(page).getByRole("link", { name: "19 has no unit" }).click();
  expect(await field.evaluate((element) => element.ownerDocument.activeElement === element)).toBe(true);
  await page.getByRole("button", { name: "Read it as 19 in" }).click();
  expect(await field.inputValue()).toBe("19 in");
  await answer(page).locator(".headline-size").waitFor();
});

test("the unit is changed in what is shown, and not in what was written", async () => {
  const { page } = await site.open("choose/");
  await page.getByText("inches", { exact: true }).click();
  // 402.33 mm are 15.84 in, to the nearest eighth 15 7/8.
  await expect
    .poll(() => answer(page).locator("[data-estimate=torso-length]").textContent())
    .toContain("15 7/8 in");
  expect(await reading(page, "torso-length", 0).inputValue()).toBe("40.3 cm");
});

test("a link holds the page, and the back button undoes a step", async () => {
  const { page } = await site.open("choose/");
  await begin(page);
  await reading(page, "torso-length", 0).fill("47 cm");
  await page.getByLabel("a helper").check();
  await page.getByLabel("men", { exact: true }).check();
  await expect.poll(() => page.url()).toContain("cut=men");
  expect(page.url()).toMatch(/#v=1&torso=47\+cm&by=helper/);
  await page.reload();
  await expect.poll(() => reading(page, "torso-length", 0).inputValue()).toBe("47 cm");
  expect(await page.getByLabel("a helper").isChecked()).toBe(true);
  await page.goBack();
  await expect.poll(() => page.getByLabel("men", { exact: true }).isChecked()).toBe(false);
  expect(await page.getByLabel("a helper").isChecked()).toBe(true);
  await page.goBack();
  await expect.poll(() => page.getByLabel("a helper").isChecked()).toBe(false);
  expect(await reading(page, "torso-length", 0).inputValue()).toBe("47 cm");
});

test("what is wrong with a link is told, and the rest of it is used", async () => {
  const { page, complaints } = await site.open(
    "choose/#v=1&torso=47+cm&tool=laser&packs=thimblewick-doily-45&%3Cimg+src=x&by=self&by=helper",
  );
  const told = page.locator("[role=alert]");
  await told.waitFor();
  const text = await told.textContent();
  expect(text).toContain("“tool” cannot be “laser”");
  expect(text).toContain("“<img src” is nothing that this page knows");
  expect(text).toContain("“by” stands there twice");
  expect(await reading(page, "torso-length", 0).inputValue()).toBe("47 cm");
  expect(await page.locator("main img").count()).toBe(0);
  expect(complaints).toEqual([]);
});

test.each([
  ["a huge one", `v=1&torso=${"4".repeat(200_000)}`],
  ["markup in a reading", "v=1&torso=%3Cscript%3EglobalThis.ran%3D1%3C%2Fscript%3E+cm"],
  ["another version", "v=99&torso=47+cm"],
  ["a broken escape", "v=1&torso=%E0%A4%A&%=%"],
  ["a key of every object", "v=1&__proto__=x&constructor=y&toString=z"],
])("a hostile link does no harm: %s", async (_, fragment) => {
  const { page, complaints, strays } = await site.open(`choose/#${fragment}`);
  await page.locator("[role=alert], .problem").first().waitFor();
  expect(await page.evaluate("globalThis.ran")).toBeUndefined();
  expect(complaints).toEqual([]);
  expect(strays).toEqual([]);
  await page.locator("#stature").fill("171 cm");
  expect(await page.locator("#stature").inputValue()).toBe("171 cm");
});

test.each(["A4", "Letter"])("the card is one page of %s, in both languages", async (format) => {
  for (const path of ["choose/", "de/choose/"]) {
    const { page } = await site.open(path, { theme: "dark" });
    const pdf = (await page.pdf({ format })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
  }
});

test("on paper stands the card and nothing else, in black on white", async () => {
  const { page } = await site.open("choose/", { theme: "dark" });
  await page.emulateMedia({ media: "print" });
  expect(await page.locator("section.card").isVisible()).toBe(true);
  for (const hidden of ["form", "section.answer", "header", "footer", "h1"]) {
    expect(await page.locator(hidden).first().isVisible(), hidden).toBe(false);
  }
  const colours = await page
    .locator("section.card")
    .evaluate((card) => [
      getComputedStyle(card).color,
      getComputedStyle(document.documentElement).backgroundColor,
    ]);
  expect(colours).toEqual(["rgb(0, 0, 0)", "rgb(255, 255, 255)"]);
});

test("a chart that is copied from a web page is read", async () => {
  const { page, context } = await site.open("choose/");
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.locator("summary", { hasText: "A chart of your own" }).click();
  await page.evaluate(`navigator.clipboard.write([new ClipboardItem({ "text/html": new Blob([
    "<table><tr><th>size</th><th>torso-length (cm)</th></tr><tr><td>S</td><td>38-43</td></tr><tr><td>M</td><td>42-48<img src=x onerror='globalThis.ran=1'></td></tr></table>",
  ], { type: "text/html" }) })])`);
  await page.locator("#pasted").focus();
  await page.keyboard.press("Control+V");
  await page.getByText("Read 2 sizes of “your chart”.").waitFor();
  expect(await page.evaluate("globalThis.ran")).toBeUndefined();
});

test("ten thousand rows leave the page usable", async () => {
  const { page, complaints } = await site.open("choose/");
  await page.locator("summary", { hasText: "A chart of your own" }).click();
  const row = (index: number) =>
    `S${index},${(30 + index / 1000).toFixed(3)}-${(35 + index / 1000).toFixed(3)}`;
  // As a paste does it: filling in by a driver looks at every character.
  await page.locator("#pasted").evaluate(
    (field, value) => {
      (field as HTMLTextAreaElement).value = value;
      field.dispatchEvent(new InputEvent("input", { bubbles: true }));
    },
    `size,torso-length (cm)\n${Array.from({ length: 10_000 }, (_, index) => row(index)).join("\n")}\n`,
  );
  await page.getByText("Read 10000 sizes").waitFor();
  await expect.poll(() => answer(page).getAttribute("aria-busy"), { timeout: 60_000 }).toBe("false");
  expect(await page.locator("main *").count()).toBeLessThan(10_000);
  await reading(page, "torso-length", 0).fill("19");
  await page.locator("#reading-torso-length-0-problem-0").waitFor();
  expect(complaints).toEqual([]);
});

test("the whole page is worked with the keyboard", async () => {
  const { page } = await site.open("choose/");
  await page.keyboard.press("Tab");
  expect(await page.evaluate("document.activeElement.className")).toBe("skip");
  await page.keyboard.press("Enter");
  for (let press = 0; press < 40; press += 1) {
    if ((await page.evaluate("document.activeElement.id")) === "reading-torso-length-0") break;
    await page.keyboard.press("Tab");
  }
  await page.keyboard.type("45 cm");
  await expect
    .poll(() => answer(page).locator("[data-estimate=torso-length]").textContent())
    .not.toContain("40.2 cm");
});

test("German: numbers with a comma, sentences of the library in German", async () => {
  const { page } = await site.open("de/choose/");
  await expect
    .poll(() => answer(page).locator("[data-estimate=torso-length]").textContent())
    .toContain("40,2 cm");
  await answer(page).getByText("Soldatinnen und Soldaten von 2012").waitFor();
  expect(await page.locator("main [lang=en]:visible").count()).toBe(0);
  expect(await answer(page).textContent()).not.toMatch(/computed from|Soldiers| cm tall/);
  await reading(page, "torso-length", 0).fill("43,2");
  await page.locator("#reading-torso-length-0-problem-0").waitFor();
  expect(await page.locator("#reading-torso-length-0-problem-0").textContent()).toContain(
    "43,2 hat keine Einheit",
  );
});
