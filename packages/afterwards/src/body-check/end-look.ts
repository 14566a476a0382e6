import type { ExchangeReason } from "../log/outcome-row.ts";
import type { AdjustmentCode, CheckedPart } from "./body-check-item.ts";
import type { BodyCheckSetup, BodyCheckState, BodyCheckStep, SeenSize } from "./body-check-state.ts";
import { meaningOf } from "./find-item.ts";
import { type PartSeen, seePart, weighPart } from "./judge-part.ts";

/** From this probability on another size is taken at once, without another look: assumption. */
const SURE = 0.9;
/** Another size must be this much likelier to fit than the one that is worn: assumption. */
const BETTER = 0.1;

/** Below this probability, readings speak so strongly against what looks right that one of the two is wrong: assumption. */
const LEAST = 0.2;

/**
 * What all answers of one look amount to. What can be set is set first, unless another size is all but sure; after the
 * second look, what is still amiss is exchanged where another size is likelier, and else shown to a fitter. Where
 * nothing looks amiss and yet, with everything seen counted in, the readings leave the size hardly a chance, that is
 * questioned.
 */
export function endLook(state: Omit<BodyCheckState, "step">): BodyCheckStep {
  const { setup, look, answers } = state;
  const harness = seePart(answers, "harness");
  const belt = seePart(answers, "belt");
  const exchanges = [harness, belt].flatMap((seen) => exchangeOf(setup, seen) ?? []);
  const sure = exchanges.find((one) => one.kind === "exchange" && one.probability >= SURE);
  if (sure !== undefined) return sure;
  const [first, ...others] = adjustmentsOf(state);
  if (look === 1 && first !== undefined) return { kind: "adjust", adjustments: [first, ...others] };
  const exchange = exchanges.find(({ kind }) => kind === "exchange") ?? exchanges[0];
  if (exchange !== undefined) return exchange;
  if (first !== undefined) return { kind: "see-fitter", reason: "still-not-right" };
  if (harness.sights.length === 0) return { kind: "see-fitter", reason: "too-little-seen" };
  // A length or a girth that nothing is known of cannot disagree.
  const probability = setup.length === undefined ? undefined : chanceOfWorn(setup, harness);
  const ofBelt =
    setup.girth === undefined || belt.sights.length === 0 ? undefined : chanceOfWorn(setup, belt);
  if ((probability ?? 1) < LEAST || (ofBelt ?? 1) < LEAST) {
    return { kind: "see-fitter", reason: "readings-disagree" };
  }
  return { kind: "sits-right", size: setup.size, ...(probability === undefined ? {} : { probability }) };
}

/** How likely what is worn fits, after what was seen; nothing where the chart does not size by it. */
function chanceOfWorn(setup: BodyCheckSetup, seen: PartSeen): number | undefined {
  const { worn, sizes } = weighPart(setup, seen);
  return sizes.find(({ size }) => size === worn)?.probability;
}

/** What can be set, in the order of the items; the length of a harness only where it can be set. */
function adjustmentsOf({ setup, answers }: Omit<BodyCheckState, "step">): readonly AdjustmentCode[] {
  const { chart, size } = setup;
  const harness = chart.sizes.find(({ name }) => name === size)?.harness ?? chart.harness;
  const codes = answers.flatMap((given) => meaningOf(given).adjust ?? []);
  const possible = codes.filter(
    (code) => harness === "adjustable" || (code !== "harness-longer" && code !== "harness-shorter"),
  );
  return [...new Set(possible)];
}

const REASONS: Readonly<Record<CheckedPart, Readonly<Record<"below" | "above", ExchangeReason>>>> = {
  harness: { below: "harness-too-long", above: "harness-too-short" },
  belt: { below: "hip-belt-too-large", above: "hip-belt-too-small" },
};

/** The exchange that a part asks for, or why a fitter has to look; nothing where the part was not seen amiss. */
function exchangeOf(setup: BodyCheckSetup, seen: PartSeen): BodyCheckStep | undefined {
  const { part, side } = seen;
  if (side === undefined) return undefined;
  const canSwap = setup.belt !== undefined || setup.chart.swappable.includes("hip-belt");
  if (part === "belt" && !canSwap) return { kind: "see-fitter", reason: "belt-comes-with-size" };
  const { worn, sizes, candidates } = weighPart(setup, seen);
  const own = sizes.find(({ size }) => size === worn);
  const best = candidates.reduce<SeenSize | undefined>(
    (a, b) => (a === undefined || b.probability > a.probability ? b : a),
    undefined,
  );
  if (own === undefined || best === undefined) return { kind: "see-fitter", reason: "no-size-left" };
  if (best.probability < own.probability + BETTER) {
    if (own.probability >= ENOUGH) return { kind: "see-fitter", reason: "not-by-size" };
    const isElsewhere = sizes.some(({ probability }) => probability >= own.probability + BETTER);
    return { kind: "see-fitter", reason: isElsewhere ? "readings-disagree" : "no-size-left" };
  }
  return {
    kind: "exchange",
    part,
    reason: REASONS[part][side],
    from: worn,
    to: best.size,
    probability: best.probability,
    fromProbability: own.probability,
    sizes,
  };
}

/** From here on the size that is worn is likelier to fit than not. */
const ENOUGH = 0.5;
