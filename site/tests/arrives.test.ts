import type { Page } from "playwright-core";
import { afterwards, charts, fit, outcome } from "tapewise";
import { safeReadPerson } from "tapewise/batch";
import { expect, test } from "vitest";
import { useSite } from "./harness.ts";
import { medianLongest, settled } from "./measure-tasks.ts";

const site = useSite();

/** A busy machine takes its time; what never comes is still missed. */
const SLOW = { timeout: 15_000 };

const DOILY = "# chart: Doily 45\nsize,torso-length (cm)\nS,38-43\nM,42-48\nL,47-52\n";
const chart = charts.parseChart(DOILY);
const READINGS = ["46.8 cm", "47.4 cm", "47.1 cm"];

/** The answers that say nothing amiss. */
const CALM: Readonly<Record<afterwards.BodyCheckItemId, string>> = {
  cautions: "none",
  "belt-position": "over-crests",
  "belt-closure": "gap-at-buckle",
  "back-panel": "a-little-below",
  "shoulder-contact": "follows",
  "upper-straps": "about-half-right-angle",
  "strap-ends": "hand-below-armpit",
  "sternum-strap": "breathes-freely",
  "pressure-points": "none",
};

function link(extra: Readonly<Record<string, string>>): string {
  return `arrives/#${new URLSearchParams({ v: "1", torso: READINGS.join("; "), chart: DOILY, ...extra })}`;
}

/** The check as the library leads it, from the same readings. */
function begin(size: string): afterwards.BodyCheckState {
  const person = outcome.unwrap(safeReadPerson({ readings: { "torso-length": READINGS } }));
  const { beliefs } = outcome.unwrap(fit.recommend(person, chart, { unit: "cm" }));
  const belief = beliefs.find(({ dimension }) => dimension === "torso-length");
  if (belief === undefined) throw new Error("The readings say nothing of the torso length.");
  const { meanMm, sdMm, degreesOfFreedom } = belief;
  return outcome.unwrap(
    afterwards.startBodyCheck({ chart, size, length: { meanMm, sdMm, degreesOfFreedom } }),
  );
}

async function give(page: Page, item: afterwards.BodyCheckItemId, answer: string): Promise<void> {
  await page.locator("form h3", { hasText: TITLES[item] }).waitFor();
  await page.locator(`#answer-${answer}`).check();
  await page.getByRole("button", { name: "Next" }).click();
}

const TITLES: Readonly<Record<afterwards.BodyCheckItemId, string>> = {
  cautions: "Before you begin",
  "belt-position": "Where the belt sits",
  "belt-closure": "How the belt closes",
  "back-panel": "Where the straps leave the back",
  "shoulder-contact": "How the straps lie on the shoulders",
  "upper-straps": "The small straps on top",
  "strap-ends": "Where the padding ends",
  "sternum-strap": "The strap across the chest",
  "pressure-points": "What presses",
};

function result(page: Page) {
  return page.locator(".check-bench .result");
}

test("before any script runs there are the first step, all nine on a sheet, and the cautions", async () => {
  const { page } = await site.open("arrives/", { context: { javaScriptEnabled: false }, isReady: false });
  expect(await page.locator(".check-bench input[type=radio]").count()).toBe(
    afterwards.bodyCheckItems[0]?.answers.length,
  );
  expect(await page.locator("#sheet h3").count()).toBe(9);
  expect(await page.locator(".care li").count()).toBe(3);
});

test("step by step the page asks and ends as the library does, with its probabilities", async () => {
  const { page, complaints } = await site.open(link({ size: "M" }));
  const said: Partial<Record<afterwards.BodyCheckItemId, string>> = {
    "back-panel": "far-below",
    "shoulder-contact": "bears-down",
    "strap-ends": "end-at-armpit",
  };
  let state = begin("M");
  let look = 1;
  for (let turn = 0; turn < 24 && state.step.kind !== "exchange"; turn += 1) {
    if (state.step.kind === "adjust") {
      const { sentences } = afterwards.writeBodyCheck(state.step, { unit: "cm" });
      expect(await result(page).locator("li").allTextContents()).toEqual(sentences);
      await page.getByRole("button", { name: "It is set: look again" }).click();
      state = afterwards.lookAgain(state);
      look += 1;
    } else if (state.step.kind === "ask") {
      const { item } = state.step;
      const answer = said[item] ?? CALM[item];
      await give(page, item, answer);
      state = afterwards.answerBodyCheck(state, item, answer);
      if (state.step.kind !== "ask") await result(page).waitFor();
    } else break;
  }
  expect(state.step.kind).toBe("exchange");
  if (state.step.kind !== "exchange") return;
  const { from, to, probability } = state.step;
  await page.getByRole("heading", { name: `Exchange ${from} for ${to}` }).waitFor();
  const percent = fit.writePercent(probability).replace("more than 99 %", ">99 %");
  expect(await result(page).textContent()).toContain(`${to} fits with ${percent}`);
  expect(await result(page).textContent()).toContain("the harness is too short");
  expect(look).toBeLessThanOrEqual(2);
  expect(complaints).toEqual([]);
});

test("answers that contradict each other are asked again, once, and then it is for a fitter", async () => {
  const { page } = await site.open(link({ size: "M" }));
  for (const item of ["cautions", "belt-position", "belt-closure"] as const)
    await give(page, item, CALM[item]);
  await give(page, "back-panel", "level-or-above");
  await give(page, "shoulder-contact", "bears-down");
  await page.getByText("Both cannot be: look at them once more.").waitFor();
  await give(page, "back-panel", "level-or-above");
  await give(page, "shoulder-contact", "bears-down");
  await page.getByRole("heading", { name: "Let a professional look" }).waitFor();
  expect(await result(page).textContent()).toContain("still contradicts itself");
});

test.each(["pain-or-numbness", "injury-or-surgery", "pregnancy", "growing-child"])(
  "%s ends the check at once",
  async (answer) => {
    const { page } = await site.open("arrives/");
    await give(page, "cautions", answer);
    await page.getByRole("heading", { name: "Let a professional look" }).waitFor();
    const reason = answer as afterwards.FitterReason;
    expect(await result(page).textContent()).toContain(afterwards.bodyCheckTexts.fitter[reason]);
    expect(await page.locator(".care").isVisible()).toBe(true);
  },
);

test("the back button goes a step back, and the link keeps the answers", async () => {
  const { page } = await site.open(link({ size: "L" }));
  await give(page, "cautions", "none");
  await give(page, "belt-position", "over-crests");
  await page.locator("form h3", { hasText: TITLES["belt-closure"] }).waitFor();
  expect(page.url()).toContain("seen=cautions.none,belt-position.over-crests");
  await page.reload();
  await page.locator("form h3", { hasText: TITLES["belt-closure"] }).waitFor();
  await page.goBack();
  await page.locator("form h3", { hasText: TITLES["belt-position"] }).waitFor();
  await page.getByRole("button", { name: "One step back" }).click();
  await page.locator("form h3", { hasText: TITLES.cautions }).waitFor();
});

test("a link of the page that chooses a size is taken, with the size that would be chosen", async () => {
  const { page } = await site.open(
    "arrives/#v=1&torso=40.3+cm;39.8+cm;40.6+cm&belt=88.5+cm&by=helper&packs=thimblewick-doily-45,oboe-and-turnip-bassoon-65&unit=in",
  );
  await page.locator(".setup-line", { hasText: "Thimblewick Doily 45, size M" }).first().waitFor();
  // 402.3 mm are 15.84 in, to the nearest eighth 15 7/8.
  await expect.poll(() => page.locator(".capital").first().textContent(), SLOW).toContain("15 7/8 in");
});

test("a bare number is refused at its field, and nothing is known without any reading", async () => {
  const { page } = await site.open("arrives/");
  await page.locator("summary", { hasText: "Change pack" }).click();
  const field = page.locator("#reading-torso-length-0");
  await field.fill("40");
  await page.locator("#reading-torso-length-0-problem-0").waitFor();
  expect(await field.getAttribute("aria-invalid")).toBe("true");
  await page.getByText("Mend it first.").waitFor();
  for (const dimension of ["torso-length", "hip-belt-girth"]) {
    for (const index of [0, 1, 2]) await page.locator(`#reading-${dimension}-${index}`).fill("");
  }
  await page.locator("form h3", { hasText: TITLES.cautions }).waitFor();
});

test("an answer has to be chosen, and the keyboard is enough", async () => {
  const { page } = await site.open("arrives/");
  await page.getByRole("button", { name: "Next" }).focus();
  await page.keyboard.press("Enter");
  await page.getByText("Choose one of the answers first.").waitFor();
  await page.keyboard.press("Space");
  await page.keyboard.press("Enter");
  await page.locator("form h3", { hasText: TITLES["belt-position"] }).waitFor();
  await expect
    .poll(() => page.evaluate("document.activeElement?.textContent"), SLOW)
    .toBe(TITLES["belt-position"]);
});

test("on paper there is a summary of what was seen and of what it came to", async () => {
  const { page } = await site.open(link({ size: "M", seen: "cautions.none,belt-position.too-high" }));
  await result(page).waitFor();
  await page.emulateMedia({ media: "print" });
  const card = page.locator(".card");
  await expect.poll(() => card.textContent(), SLOW).toContain("Set this, then look again");
  expect(await card.isVisible()).toBe(true);
  expect(await card.textContent()).toContain("It sits above them, on the soft waist.");
  expect(await page.locator(".check-bench").isVisible()).toBe(false);
  expect(await page.locator(".care").isVisible()).toBe(true);
});

test("ten thousand rows leave the page usable", async () => {
  const { page, complaints } = await site.open("arrives/");
  await page.locator("summary", { hasText: "Change pack" }).click();
  await page.locator("#pack").selectOption("");
  const row = (index: number) =>
    `S${index},${(30 + index / 1000).toFixed(3)}-${(35 + index / 1000).toFixed(3)}`;
  await page.locator("#pasted").evaluate(
    (field, value) => {
      (field as HTMLTextAreaElement).value = value;
      field.dispatchEvent(new InputEvent("input", { bubbles: true }));
    },
    `size,torso-length (cm)\n${Array.from({ length: 10_000 }, (_, index) => row(index)).join("\n")}\n`,
  );
  await page.getByText("Read 10000 sizes").waitFor();
  await page.locator("form h3", { hasText: TITLES.cautions }).waitFor();
  expect(await page.locator("main *").count()).toBeLessThan(5000);
  await give(page, "cautions", "none");
  await page.locator("form h3", { hasText: TITLES["belt-position"] }).waitFor();
  expect(complaints).toEqual([]);
});

test.each([
  ["a huge one", `v=1&seen=${"cautions.none,".repeat(20_000)}`],
  ["markup", "v=1&size=%3Cimg+src%3Dx+onerror%3DglobalThis.ran%3D1%3E&packs=thimblewick-doily-45&tool=laser"],
  ["answers that do not follow", "v=1&packs=thimblewick-doily-45&seen=pressure-points.none"],
  ["answers that there are not", "v=1&packs=thimblewick-doily-45&seen=cautions.all"],
  ["a second look without a first", "v=1&packs=thimblewick-doily-45&again=cautions.none"],
  ["a key of every object", "v=1&__proto__=x&constructor=y"],
])("a hostile link does no harm: %s", async (_, fragment) => {
  const { page, complaints, strays } = await site.open(`arrives/#${fragment}`);
  await page.locator("[role=alert]").first().waitFor();
  expect(await page.evaluate("globalThis.ran")).toBeUndefined();
  expect(await page.locator("main img").count()).toBe(0);
  expect(complaints).toEqual([]);
  expect(strays).toEqual([]);
});

test("no task is long while somebody answers and types, on a processor four times slower", async () => {
  const longest = await medianLongest(
    50,
    async () => {
      const { page } = await site.open("arrives/");
      await page.locator("summary", { hasText: "Change pack" }).click();
      await settled(page);
      return page;
    },
    async (page) => {
      await give(page, "cautions", "none");
      await give(page, "belt-position", "over-crests");
      await page.locator("#reading-torso-length-1").focus();
      for (const key of ["End", "Backspace", "Backspace", "c", "m"]) {
        await page.keyboard.press(key);
        await settled(page);
      }
    },
  );
  expect(longest).toBeLessThanOrEqual(50);
});

test("the unit is changed on the page, kept by a reload, and undone by the back button", async () => {
  const { page } = await site.open(link({ size: "M" }));
  const capital = page.locator(".capital").first();
  // (46.8 + 47.4 + 47.1)/3 = 47.1 cm, which is 18.54 in, to the nearest eighth 18 1/2.
  await expect.poll(() => capital.textContent(), SLOW).toContain("47.1 cm");
  await page.locator("summary", { hasText: "Change pack" }).click();
  await page.getByText("inches", { exact: true }).click();
  await expect.poll(() => capital.textContent(), SLOW).toContain("18 1/2 in");
  await page.reload();
  await expect.poll(() => capital.textContent(), SLOW).toContain("18 1/2 in");
  await page.goBack();
  await expect.poll(() => capital.textContent(), SLOW).toContain("47.1 cm");
});

test("German: every text of the check", async () => {
  const { page } = await site.open(
    "de/arrives/#v=1&packs=thimblewick-doily-45&size=M&unit=in&seen=cautions.none,belt-position.over-crests",
  );
  await page.getByText("Meist bleiben 2 Zoll bis 6 Zoll zwischen ihnen").waitFor();
  await page.locator("#answer-ends-meet").check();
  await page.getByRole("button", { name: "Weiter" }).click();
  await page.getByText("Der Gurt ist zu groß: Mit dünnerer Kleidung").waitFor();
  expect(await page.locator("main [lang=en]:visible").count()).toBe(0);
});
