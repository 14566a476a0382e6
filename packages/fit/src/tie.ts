import type { ChartDimension, SizeChart } from "@tapewise/charts";
import type { Facts } from "@tapewise/outcome";
import { setsHarnessLength } from "./judged-dimensions.ts";
import type { BuildFeature } from "./person.ts";
import type { ReasonCode } from "./reasons.ts";
import type { SizeFit } from "./recommendation.ts";

/** What settles a choice between sizes that fit about equally well. */
export interface Tie {
  readonly code: Extract<ReasonCode, "build-takes-longer" | "harness-adjusts">;
  readonly pick: SizeFit;
  readonly other: SizeFit;
  readonly facts: Facts;
}

/** Common practice: broad shoulders, a large chest or a muscular back take up length, so the longer harness suits. */
export function tieByBuild(
  close: readonly SizeFit[],
  build: readonly BuildFeature[],
  main: ChartDimension,
): Tie | undefined {
  const [first, ...others] = close;
  if (first === undefined || build.length === 0 || !setsHarnessLength(main)) return undefined;
  const pick = others.reduce((a, b) => (isLonger(b, a, main) ? b : a), first);
  const other = close.find((fit) => isLonger(pick, fit, main));
  if (other === undefined) return undefined;
  const features = [...new Set(build)].sort().map((feature) => spoken[feature]);
  return { code: "build-takes-longer", pick, other, facts: { build: listed(features) } };
}

const spoken: Readonly<Record<BuildFeature, string>> = {
  "broad-shoulders": "broad shoulders",
  "large-chest": "a large chest",
  "muscular-back": "a muscular back",
};

/** A harness that can be moved forgives a reading that is a little off; a fixed one does not. */
export function tieByHarness(close: readonly SizeFit[], chart: SizeChart): Tie | undefined {
  const harnessOf = (fit: SizeFit) =>
    chart.sizes.find((size) => size.name === fit.size)?.harness ?? chart.harness;
  const [other] = close;
  if (other === undefined || harnessOf(other) !== "fixed") return undefined;
  const pick = close.find((fit) => harnessOf(fit) === "adjustable");
  return pick === undefined ? undefined : { code: "harness-adjusts", pick, other, facts: {} };
}

function isLonger(a: SizeFit, b: SizeFit, main: ChartDimension): boolean {
  const rangeA = a.dimensions.find((one) => one.dimension === main)?.range.interval;
  const rangeB = b.dimensions.find((one) => one.dimension === main)?.range.interval;
  if (rangeA === undefined || rangeB === undefined) return false;
  return rangeA.to > rangeB.to || (rangeA.to === rangeB.to && rangeA.from > rangeB.from);
}

function listed(words: readonly string[]): string {
  return words.length < 3 ? words.join(" and ") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}
