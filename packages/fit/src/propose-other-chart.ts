import type { Choice, PartChoice } from "./choice.ts";
import type { NextStepCode } from "./next-steps.ts";
import type { FitPolicy } from "./policy.ts";
import type { PlainReason } from "./reason.ts";
import { likelierEnd } from "./verdict.ts";

type Step = PlainReason<NextStepCode>;

/** From this chance on that the body lies beyond the end of a chart another pack is worth a look. Assumption. */
const MAY_BE_BEYOND = 0.25;

/**
 * Another pack, where no size of this one is made for the body, or may not be. Not where a reading is
 * questioned: a slip of the tape is no reason to leave a pack.
 */
export function proposeOtherChart(choice: Choice, policy: FitPolicy): readonly Step[] {
  if (choice.isDoubted) return [];
  const { outside, judged, fits, plain, belt } = choice;
  if (outside !== undefined) return [{ code: "other-chart", facts: { dimension: outside.dimension } }];
  const parts = [{ judged, fits, plain, pick: choice.settled.pick }, ...(belt === undefined ? [] : [belt])];
  const gaps = parts.flatMap((part) => findGap(part, policy));
  if (gaps.length > 0) return gaps;
  return choice.look === undefined ? parts.flatMap((part) => mayBeBeyond(part, policy)) : [];
}

/** A dimension in which no size has a chance, though the body lies between the ends of the chart. */
function findGap({ judged, fits, plain }: PartChoice, policy: FitPolicy): readonly Step[] {
  if (plain.verdict !== "between-sizes") return [];
  const missed = judged.find(({ charted }) =>
    fits.every((fit) => {
      const own = fit.dimensions.find((one) => one.dimension === charted);
      return own !== undefined && own.probability < policy.hopelessProbability;
    }),
  );
  return missed === undefined ? [] : [{ code: "other-chart", facts: { dimension: missed.charted } }];
}

function mayBeBeyond({ judged, fits, pick }: PartChoice, policy: FitPolicy): readonly Step[] {
  if (pick.probability >= policy.sureProbability) return [];
  const [end] = judged
    .flatMap((dimension) => likelierEnd(dimension, fits))
    .filter(({ probability }) => probability >= MAY_BE_BEYOND)
    .toSorted((a, b) => b.probability - a.probability);
  if (end === undefined) return [];
  const facts = { dimension: end.dimension, side: end.end, outsideProbability: end.probability };
  return [{ code: "consider-other-chart", facts }];
}
