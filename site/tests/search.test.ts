import { expect, test } from "vitest";
import { useSite } from "./harness.ts";

const site = useSite();
const SEARCH = /\/ui-core\.[\w-]+\.js$|\/pagefind\//;

test("the search of the documentation comes with its first use, and finds a page", async () => {
  const { page, requests, complaints, strays } = await site.open("docs/");
  await page.waitForLoadState("networkidle");
  expect(requests.filter((address) => SEARCH.test(address))).toEqual([]);
  await page.keyboard.press("ControlOrMeta+k");
  const field = page.locator("#starlight__search input");
  await field.waitFor();
  await expect
    .poll(() => field.evaluate((input) => input === document.activeElement), { timeout: 30_000 })
    .toBe(true);
  await page.keyboard.type("reliability study");
  const found = page.locator(".pagefind-ui__result-link", { hasText: "Run a reliability study" }).first();
  await found.waitFor();
  expect(await found.getAttribute("href")).toContain("/tapewise/how-to/reliability-study/");
  expect(complaints).toEqual([]);
  expect(strays).toEqual([]);
});

test("the search opens by its button too", async () => {
  const { page } = await site.open("docs/");
  await page.locator("button[data-open-modal]").click();
  const field = page.locator("#starlight__search input");
  await field.waitFor();
  await expect
    .poll(() => field.evaluate((input) => input === document.activeElement), { timeout: 30_000 })
    .toBe(true);
});
