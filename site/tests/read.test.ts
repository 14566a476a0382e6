import { readFileSync } from "node:fs";
import { charts } from "tapewise";
import { expect, test } from "vitest";
import { useSite } from "./harness.ts";

const site = useSite();

const ROWS = 10_000;

test("a chart is read, drawn and looked over before any script runs", async () => {
  const { page } = await site.open("read/", { context: { javaScriptEnabled: false }, isReady: false });
  expect(await page.locator("#chart-text-told").textContent()).toBe("2 wrong, 11 worth a look.");
  expect(await page.locator(".ruler-bar").count()).toBeGreaterThan(5);
});

test("what the library says of a chart is what the page says, at the line that it is about", async () => {
  const text = "# chart: Doily 45\nsize,torso-length (cm)\nS,43-38\nM,45-50\nL,49-55\n";
  const { page } = await site.open("read/");
  await page.locator("#chart-text").fill(text);
  const found = charts.auditChartText(text);
  const wrong = found.filter(({ severity }) => severity === "error").length;
  await expect
    .poll(() => page.locator("#chart-text-told").textContent())
    .toBe(`${wrong} wrong, ${found.length - wrong} worth a look.`);
  const told = (await page.locator(".told .problem").allTextContents()).join("\n");
  for (const { message } of found) expect(told).toContain(message);
  const first = page.getByRole("button", { name: "line 3: go there" }).first();
  await first.click();
  const chosen = await page.locator("#chart-text").evaluate((field) => {
    const { value, selectionStart, selectionEnd } = field as HTMLTextAreaElement;
    return value.slice(selectionStart, selectionEnd);
  });
  expect(chosen).toBe("S,43-38");
});

test("a fault that is mended is gone", async () => {
  const { page } = await site.open("read/");
  const field = page.locator("#chart-text");
  await field.fill("# chart: Doily 45\nsize,torso-length (cm)\nS,43-38\nM,42-48\n");
  await page.getByText("the range 43-38 cm begins above its end").waitFor();
  expect(await field.getAttribute("aria-invalid")).toBe("true");
  await field.fill("# chart: Doily 45\nsize,torso-length (cm)\nS,38-43\nM,42-48\n");
  await expect.poll(() => field.getAttribute("aria-invalid")).toBe("false");
  expect(await page.locator(".told .problem.error").count()).toBe(0);
});

test("the JSON that is downloaded is the same chart", async () => {
  const text = "# chart: Doily 45\nsize,torso-length (cm),hip-belt-girth (cm)\nS,38-43,<98\nM,42-48,78+\n";
  const { page } = await site.open("read/");
  await page.locator("#chart-text").fill(text);
  await page.getByRole("heading", { name: "Doily 45", exact: true }).waitFor();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Download as JSON" }).click(),
  ]);
  expect(download.suggestedFilename()).toBe("doily-45.json");
  const json = readFileSync(await download.path(), "utf8");
  const again = charts.parseChart(json);
  const intervals = (chart: charts.SizeChart) =>
    chart.sizes.map(({ name, ranges }) => [name, Object.values(ranges).map((range) => range?.interval)]);
  expect(intervals(again)).toEqual(intervals(charts.parseChart(text)));
});

test("the unit, the link, the back button", async () => {
  const { page } = await site.open("read/");
  await page
    .locator("#chart-text")
    .fill("# chart: Doily 45\nsize,torso-length (cm)\nS,38.1-43.18\nM,43.18-48.26\n");
  await page.getByRole("cell", { name: "38.1 to 43.2" }).waitFor();
  await page.getByText("inches", { exact: true }).click();
  // 381 mm are 15 in and 431.8 mm are 17 in, to the last digit.
  await page.getByRole("cell", { name: "15 to 17", exact: true }).waitFor();
  expect(page.url()).toContain("#v=1&unit=in&chart=");
  await page.reload();
  await page.getByRole("cell", { name: "15 to 17", exact: true }).waitFor();
  await page.goBack();
  await page.getByRole("cell", { name: "38.1 to 43.2" }).waitFor();
});

test("a table that is copied from a web page, and a file that is dropped, are read", async () => {
  const { page, context } = await site.open("read/");
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.getByRole("button", { name: "Clear" }).click();
  await page.evaluate(`navigator.clipboard.write([new ClipboardItem({ "text/html": new Blob([
    "<p>Sizes</p><table><tr><th>size</th><th>torso-length (in)</th></tr><tr><td>S</td><td>15-17</td></tr><tr><td>M</td><td>17-19</td></tr></table>",
  ], { type: "text/html" }) })])`);
  await page.locator("#chart-text").focus();
  await page.keyboard.press("Control+V");
  await expect
    .poll(() => page.locator("#chart-text").inputValue())
    .toBe("size\ttorso-length (in)\nS\t15-17\nM\t17-19");
  await page.getByRole("cell", { name: "38.1 to 43.2" }).waitFor();
  await page.locator("#chart-text").evaluate((field) => {
    const data = new DataTransfer();
    data.items.add(new File(["size,torso-length (cm)\nXL,50-56\n"], "chart.csv", { type: "text/csv" }));
    field.dispatchEvent(new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true }));
  });
  await page.getByRole("cell", { name: "50.0 to 56.0" }).waitFor();
});

test("ten thousand rows are counted, drawn in part, and typing goes on", async () => {
  const { page, complaints } = await site.open("read/");
  const row = (index: number) =>
    `S${index},${(30 + index / 1000).toFixed(3)}-${(35 + index / 1000).toFixed(3)}`;
  const text = `size,torso-length (cm)\n${Array.from({ length: ROWS }, (_, index) => row(index)).join("\n")}\n`;
  // As a paste does it: filling in by a driver looks at every character.
  await page.locator("#chart-text").evaluate((field, value) => {
    (field as HTMLTextAreaElement).value = value;
    field.dispatchEvent(new InputEvent("input", { bubbles: true }));
  }, text);
  await page.getByText("of 10000 sizes are drawn").waitFor();
  expect(await page.locator(".ruler-bar").count()).toBeLessThanOrEqual(40);
  expect(await page.locator("main *").count()).toBeLessThan(10_000);
  await page.locator("#chart-text").focus();
  await page.keyboard.press("Control+End");
  const before = Date.now();
  await page.keyboard.type("XX,60-65");
  // A key a second is slow, and a page that stands still is slower by far.
  expect(Date.now() - before).toBeLessThan(9000);
  await page.getByText("of 10001 sizes are drawn").waitFor();
  expect(await page.getByText("This is too much for a link").isVisible()).toBe(true);
  expect(complaints).toEqual([]);
});

test("what is no chart is told in words", async () => {
  const { page } = await site.open("read/");
  for (const text of ["hello", "{", '{"sizes": 3}', "a,b\n1,2\n", "\u0000\u0001"]) {
    await page.locator("#chart-text").fill(text);
    await page.getByText("Nothing of it can be read as a chart.").waitFor();
    expect(await page.locator(".told .problem.error").count(), text).toBeGreaterThan(0);
    await page.locator("#chart-text").fill("# chart: x\nsize,torso-length (cm)\nS,38-43\nM,42-48\n");
    await page.getByRole("cell", { name: "38.0 to 43.0" }).waitFor();
  }
});

test.each([
  ["a huge one", `v=1&chart=${"4".repeat(200_000)}`],
  ["markup", "v=1&chart=size,%3Cimg+src%3Dx+onerror%3DglobalThis.ran%3D1%3E%0AS,38-43&unit=ell"],
  ["a broken escape", "v=1&chart=%E0%A4%A&%=%"],
  ["another version", "v=99&chart=size"],
  ["a key of every object", "v=1&__proto__=x&constructor=y"],
])("a hostile link does no harm: %s", async (_, fragment) => {
  const { page, complaints, strays } = await site.open(`read/#${fragment}`);
  await page.locator("[role=alert], .problem").first().waitFor();
  expect(await page.evaluate("globalThis.ran")).toBeUndefined();
  expect(await page.locator("main img").count()).toBe(0);
  await page.locator("#chart-text").fill("# chart: x\nsize,torso-length (cm)\nS,38-43\nM,42-48\n");
  await page.getByRole("cell", { name: "38.0 to 43.0" }).waitFor();
  expect(complaints).toEqual([]);
  expect(strays).toEqual([]);
});

test("on paper stands what was understood of the chart, without the field", async () => {
  const { page } = await site.open("read/", { theme: "dark" });
  await page.emulateMedia({ media: "print" });
  expect(await page.locator(".ruler-bar").first().isVisible()).toBe(true);
  expect(await page.locator("#chart-text").isVisible()).toBe(false);
  expect(await page.locator(".told").first().isVisible()).toBe(true);
});

test("German: the library's sentences about charts", async () => {
  const { page } = await site.open("de/read/");
  await page.getByText("der Bereich 43-38 cm beginnt über seinem Ende").waitFor();
  expect(await page.locator(".told [lang=en]").count()).toBe(0);
});
