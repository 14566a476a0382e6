import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { measurement } from "tapewise";
import { expect, test } from "vitest";
import { useSite } from "./harness.ts";

const site = useSite();

/** Waits for what a worker answers: on a busy machine it takes a while to start. */
function soon<Value>(look: () => Promise<Value> | Value) {
  return expect.poll(look, { timeout: 60_000 });
}

const STUDY = `subject,torso Ann 1 (cm),torso Ann 2 (cm),torso Ben 1 (cm),torso Ben 2 (cm)
mia,43.0,43.4,44.0,43.6
leo,48.0,48.0,48.2,48.6
ana,45.5,45.3,45.9,46.1
tom,50.2,50.4,50.9,50.5
`;

function part(page: Page, id: string) {
  return page.locator(`[data-part=${id}]`);
}

async function fill(page: Page, text: string): Promise<void> {
  // As a paste does it: filling in by a driver looks at every character.
  await page.locator("#study-text").evaluate((field, value) => {
    (field as HTMLTextAreaElement).value = value;
    field.dispatchEvent(new InputEvent("input", { bubbles: true }));
  }, text);
}

test("the evening of the crew is told before any script runs", async () => {
  const { page } = await site.open("hands/", { context: { javaScriptEnabled: false }, isReady: false });
  expect(await page.locator("[data-error]").textContent()).toMatch(/^± \d+\.\d\smm$/);
  // Ten people, three hands, two readings each: sixty cells, one missing and one that lost its point.
  expect(await page.locator("[data-size]").textContent()).toContain("58 readings of 10 people by 3 hands");
  expect(await page.locator("[data-size]").textContent()).toContain("1 cell is missing. 1 was set aside.");
  expect(await page.locator("[data-figure]").count()).toBe(3);
});

test("the numbers are the library's, and those of a calculation by hand", async () => {
  const { page } = await site.open("hands/");
  await fill(page, STUDY);
  // d = 4, 4, 0, 4, 2, 2, 2, 4 mm: √(Σd²/2N) = √(76/16) = 2.179
  await soon(() => part(page, "tem").locator("tbody tr").first().locator("td").first().textContent()).toBe(
    "2.2",
  );
  const report = measurement.summariseStudy(measurement.parseStudy(STUDY));
  const { technicalError, precision, correlation, agreement } = report;
  const rows = part(page, "tem").locator("tbody tr");
  expect(await rows.nth(2).locator("td").first().textContent()).toBe(
    technicalError?.total?.mm.value.toFixed(1),
  );
  const limits = part(page, "precision").locator("tbody tr");
  expect(await limits.nth(3).locator("td").first().textContent()).toBe(
    precision?.repeatabilityLimitMm.toFixed(1),
  );
  expect(await part(page, "icc").locator("tbody td").first().textContent()).toBe(
    correlation?.agreement.value.toFixed(3),
  );
  // Means of Ann less those of Ben: −6, −4, −6 and −4 mm, which makes −5.
  expect(agreement).toHaveLength(1);
  expect(await part(page, "agreement").locator("tbody td").first().textContent()).toBe("−5.0");
  expect(await part(page, "agreement").textContent()).toContain("Ann reads 5.0\u00a0mm shorter than Ben");
});

test("a cell that is no reading is told at its line, and mended there", async () => {
  const { page } = await site.open("hands/");
  await fill(page, STUDY.replace("48.2", "abc").replace("45.9", "-"));
  const told = page.locator(".told .problem.error");
  await soon(() => told.first().textContent()).toContain("abc");
  expect(await page.locator("#study-text").getAttribute("aria-invalid")).toBe("true");
  await page.getByRole("button", { name: "line 3: go there" }).first().click();
  const chosen = await page.locator("#study-text").evaluate((field) => {
    const { value, selectionStart, selectionEnd } = field as HTMLTextAreaElement;
    return value.slice(selectionStart, selectionEnd);
  });
  expect(chosen).toBe("leo,48.0,48.0,abc,48.6");
  expect(await page.locator("[data-size]").textContent()).toContain("2 cells are missing.");
  await fill(page, STUDY);
  await soon(() => page.locator("#study-text").getAttribute("aria-invalid")).toBe("false");
});

test("an impossible reading is crossed out where it stands, and does not count", async () => {
  const { page } = await site.open("hands/");
  await fill(page, STUDY.replace("50.9", "5090"));
  await soon(() => page.locator("[data-grid] del").allTextContents()).toEqual(["5090"]);
  await soon(() => page.locator("[data-size]").textContent()).toContain("15 readings");
  expect(await page.locator("[data-size]").textContent()).toContain("1 was set aside.");
});

test("long tables, JSON and tables of web pages are read alike", async () => {
  const { page, context } = await site.open("hands/");
  const rows = [
    ["mia", "Ann", 430],
    ["mia", "Ben", 436],
    ["leo", "Ann", 480],
    ["leo", "Ben", 484],
  ] as const;
  const long = ["subject\tmeasurer\ttorso-length (mm)", ...rows.map((row) => row.join("\t"))].join("\n");
  const json = JSON.stringify({
    dimension: "torso-length",
    readings: rows.map(([subject, measurer, mm]) => ({ subject, measurer, repeat: 1, value: `${mm} mm` })),
  });
  for (const text of [long, json]) {
    await fill(page, text);
    await soon(() => page.locator("[data-size]").textContent()).toContain(
      "4 readings of 2 people by 2 hands",
    );
    await page.getByRole("button", { name: "Clear" }).click();
    await page.getByText("There is nothing to tell yet.").waitFor();
  }
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  const html = `<table>${long
    .split("\n")
    .map(
      (line) =>
        `<tr>${line
          .split("\t")
          .map((cell) => `<td>${cell}<img src=x onerror='globalThis.ran=1'></td>`)
          .join("")}</tr>`,
    )
    .join("")}</table>`;
  await page.evaluate(
    `navigator.clipboard.write([new ClipboardItem({ "text/html": new Blob([${JSON.stringify(html)}], { type: "text/html" }) })])`,
  );
  await page.locator("#study-text").focus();
  await page.keyboard.press("Control+V");
  await soon(() => page.locator("[data-size]").textContent()).toContain("4 readings of 2 people");
  expect(await page.evaluate("globalThis.ran")).toBeUndefined();
});

test("bare numbers are refused until their unit is said", async () => {
  const { page } = await site.open("hands/");
  await fill(page, STUDY.replaceAll(" (cm)", ""));
  await page.getByText("Nothing of it can be read as a study.").waitFor();
  await soon(() => page.locator("[data-part]").count()).toBe(0);
  await page.locator("#bare").selectOption("cm");
  await part(page, "tem").waitFor();
  expect(page.url()).toContain("written=cm");
});

test("units, link, reload and back", async () => {
  const { page } = await site.open("hands/");
  await fill(page, STUDY);
  await part(page, "tem").waitFor();
  await page.locator(".switch").getByText("inches", { exact: true }).click();
  // 2.179 mm are 0.0858 in.
  await soon(() => part(page, "tem").locator("tbody td").first().textContent()).toBe("0.09");
  await page.reload();
  await soon(() => part(page, "tem").locator("tbody td").first().textContent()).toBe("0.09");
  expect(await page.locator("#study-text").inputValue()).toBe(STUDY);
  await page.goBack();
  await soon(() => part(page, "tem").locator("tbody td").first().textContent()).toBe("2.2");
});

test("another pair of hands is drawn on request, with its table", async () => {
  const { page } = await site.open("hands/");
  await page.locator("#pair").selectOption("Hilde – Priya");
  await page.getByText("Differences between Hilde and Priya").first().waitFor();
  await page.locator("[data-figure=agreement] summary").click();
  // Wren: (40.2 + 40.6)/2 less (39.9 + 40.4)/2 is 40.40 − 40.15 = 2.5 mm.
  const row = page.locator("[data-figure=agreement] tbody tr", { hasText: "Wren" });
  expect(await row.locator("td").last().textContent()).toBe("2.5");
});

test("the download holds the study and every figure", async () => {
  const { page } = await site.open("hands/");
  await fill(page, STUDY);
  await soon(() => page.locator("[data-size]").textContent()).toContain("16 readings of 4 people");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Download as JSON" }).click(),
  ]);
  expect(download.suggestedFilename()).toBe("our-hands.json");
  const { study, report } = JSON.parse(readFileSync(await download.path(), "utf8"));
  expect(study.readings).toHaveLength(16);
  // √(76/16)
  expect(report.technicalError.intra.mm.value).toBeCloseTo(2.17945, 5);
});

test("ten thousand rows are counted, shown in part, and typing goes on", async () => {
  const { page, complaints } = await site.open("hands/");
  const lines = Array.from(
    { length: 10_000 },
    (_, index) =>
      `p${index},${(40 + (index % 97) / 10).toFixed(1)},${(40.3 + ((index * 7) % 97) / 10).toFixed(1)}`,
  );
  await fill(page, `subject,torso Ann 1 (cm),torso Ann 2 (cm)\n${lines.join("\n")}\n`);
  await page.locator("#study-text").focus();
  await page.keyboard.press("Control+End");
  const before = Date.now();
  await page.keyboard.type("last,44.0,44.2");
  // A key a second is slow, and a page that stands still is slower by far.
  expect(Date.now() - before).toBeLessThan(14_000);
  await soon(() => page.locator("[data-size]").textContent()).toContain("20002 readings of 10001 people");
  expect(await page.locator("main *").count()).toBeLessThan(10_000);
  expect(await page.getByText("This is too much for a link").isVisible()).toBe(true);
  expect(complaints).toEqual([]);
});

test("more hands than a page can compare are told, and nothing hangs", async () => {
  const { page } = await site.open("hands/");
  const lines = Array.from({ length: 3000 }, (_, index) => `mia,h${index},43.0`);
  await fill(page, `subject,measurer,torso-length (cm)\n${lines.join("\n")}\n`);
  await page.getByText("This study is too large for a page").waitFor();
  await fill(page, STUDY);
  await part(page, "tem").waitFor();
});

test.each([
  ["markup", "v=1&study=subject,%3Cimg+src%3Dx+onerror%3DglobalThis.ran%3D1%3E+1+(cm)%0Amia,43&what=laser"],
  ["a broken escape", "v=1&study=%E0%A4%A&%=%&what=x"],
  ["too long", `v=1&study=${"4".repeat(100_000)}`],
  ["keys of every object", "v=1&__proto__=x&constructor=y"],
])("a hostile link does no harm: %s", async (_, fragment) => {
  const { page, complaints, strays } = await site.open(`hands/#${fragment}`);
  await page.locator("[role=alert]").first().waitFor();
  expect(await page.evaluate("globalThis.ran")).toBeUndefined();
  expect(await page.locator("main img").count()).toBe(0);
  await fill(page, STUDY);
  await part(page, "tem").waitFor();
  expect(complaints).toEqual([]);
  expect(strays).toEqual([]);
});

test("on paper stands the report, without the field", async () => {
  const { page } = await site.open("hands/", { theme: "dark" });
  await page.emulateMedia({ media: "print" });
  expect(await part(page, "tem").isVisible()).toBe(true);
  expect(await page.locator("[data-grid]").isVisible()).toBe(true);
  expect(await page.locator("#study-text").isVisible()).toBe(false);
});

test("German: figures with a comma, and the library's sentences in German", async () => {
  const { page } = await site.open("de/hands/");
  expect(await page.locator("[data-error]").textContent()).toMatch(/^± \d+,\d\smm$/);
  await page.getByText("liegt außerhalb dessen, was bei Menschen vorkommt").waitFor();
  expect(await page.locator("main [lang=en]").count()).toBe(0);
  await page.locator("#study-text").fill("subject,Ann 1 (cm)\nmia,x\n");
  await page.locator(".told .problem.error").first().waitFor();
  expect(await page.locator("main [lang=en]").count()).toBe(0);
});
