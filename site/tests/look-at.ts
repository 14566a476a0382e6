import { AxeBuilder } from "@axe-core/playwright";
import { expect } from "vitest";
import type { Harness } from "./harness.ts";

/** Looks a page over with axe in both themes, and at what it does of its own accord. */
export async function lookAt(site: Harness, path: string): Promise<void> {
  const { page, context, complaints, strays } = await site.open(path, { theme: "light" });
  // Scripts that load when the browser is idle have come by now, and what they change is looked at too.
  await page.waitForLoadState("networkidle");
  const faults: string[] = [];
  const look = async (theme: string, axe: AxeBuilder) => {
    const { violations } = await axe.analyze();
    faults.push(
      ...violations.map(({ id, nodes }) => `${theme}: ${id}: ${nodes.map(({ html }) => html).join(" | ")}`),
    );
  };
  await look("light", new AxeBuilder({ page }));
  // Only colours differ between the themes, so only what looks at colours is asked again.
  await page.evaluate("document.documentElement.dataset.theme = 'dark'");
  await page.evaluate(
    "Promise.all(document.getAnimations().map(({ finished }) => finished.catch(() => {})))",
  );
  expect(await page.evaluate("getComputedStyle(document.documentElement).colorScheme")).toContain("dark");
  await look("dark", new AxeBuilder({ page }).withRules(["color-contrast", "link-in-text-block"]));
  expect(faults).toEqual([]);
  expect(complaints).toEqual([]);
  expect(strays).toEqual([]);
  expect(await context.cookies()).toEqual([]);
}
