import type { Place } from "@tapewise/outcome";
import type { ChartDefaults } from "./chart-options.ts";
import type { Reading } from "./parts.ts";
import { readWord } from "./read-word.ts";
import { cuts, harnessKinds, type SwappablePart, swappableParts } from "./size-chart.ts";

/** The parts of a chart that are neither sizes nor hip belts. */
export const aboutKeys = ["chart", "maker", "product", "cut", "harness", "swappable"] as const;

/** One of {@link aboutKeys}. */
export type AboutKey = (typeof aboutKeys)[number];

/** What each part is, for the words of issues. */
export const aboutNames: Readonly<Record<AboutKey, string>> = {
  chart: "the chart's name",
  maker: "the maker",
  product: "the product",
  cut: "the cut",
  harness: "the harness",
  swappable: "a swappable part",
};

/** What was written about a chart: texts still to be checked. */
export interface AboutTexts {
  readonly chart?: string | undefined;
  readonly maker?: string | undefined;
  readonly product?: string | undefined;
  readonly cut?: string | undefined;
  readonly harness?: string | undefined;
  readonly swappable?: readonly string[] | undefined;
}

/** Checks the words among the texts. `placeOf` finds where a part was written. */
export function readAbout(
  texts: AboutTexts,
  issues: Reading["issues"],
  placeOf: (key: AboutKey) => Place | undefined,
): ChartDefaults {
  const { chart, maker, product } = texts;
  const word = <Word extends string>(key: "cut" | "harness", known: readonly Word[]): Word | undefined =>
    readWord(texts[key], known, aboutNames[key], { path: [key], issues }, placeOf(key));
  const cut = word("cut", cuts);
  const harness = word("harness", harnessKinds);
  const swappable = texts.swappable?.map((text, position) =>
    readWord(
      text,
      swappableParts,
      aboutNames.swappable,
      { path: ["swappable", position], issues },
      placeOf("swappable"),
    ),
  );
  return known({ chart, maker, product, cut, harness, swappable: swappable && distinct(swappable) });
}

/** The parts of what is known of a chart that are there. */
export function known(
  about: { readonly [K in keyof ChartDefaults]: ChartDefaults[K] | undefined },
): ChartDefaults {
  const { chart, maker, product, cut, harness, swappable } = about;
  return {
    ...(chart === undefined ? {} : { chart }),
    ...(maker === undefined ? {} : { maker }),
    ...(product === undefined ? {} : { product }),
    ...(cut === undefined ? {} : { cut }),
    ...(harness === undefined ? {} : { harness }),
    ...(swappable === undefined ? {} : { swappable }),
  };
}

function distinct(parts: readonly (SwappablePart | undefined)[]): readonly SwappablePart[] {
  return swappableParts.filter((part) => parts.includes(part));
}
