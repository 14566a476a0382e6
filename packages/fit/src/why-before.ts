import type { ChartDimension } from "@tapewise/charts";
import type { JudgedDimension } from "./judged-dimensions.ts";
import type { FitPolicy } from "./policy.ts";
import type { PlainReason } from "./reason.ts";
import type { SizeFit } from "./recommendation.ts";
import { roomIn } from "./room-in.ts";

/**
 * Why the best size stands before another that the main dimension would allow as well: what else the
 * chart states decides (the hip belt, as a rule), or the room left on both sides. Nothing where the main
 * dimension alone rules the others out.
 */
export function whyBefore(
  best: SizeFit,
  others: readonly SizeFit[],
  main: JudgedDimension,
  policy: FitPolicy,
): readonly PlainReason[] {
  const byMain = (fit: SizeFit) => probabilityIn(fit, main.charted);
  // The others stand in the order of their fit, which settles it where the main dimension does not.
  const rival = others
    .filter((fit) => byMain(fit) >= policy.fitProbability)
    .toSorted((a, b) => byMain(b) - byMain(a))[0];
  if (rival === undefined || byMain(best) < policy.fitProbability) return [];

  const decisive = best.dimensions
    .filter((one) => one.dimension !== main.charted)
    .map(({ dimension, probability }) => {
      const otherProbability = probabilityIn(rival, dimension);
      return { dimension, probability, otherProbability, lead: probability - otherProbability };
    })
    .toSorted((a, b) => b.lead - a.lead)[0];
  const facts = { size: best.size, other: rival.size, mainDimension: main.charted };
  if (decisive !== undefined && decisive.lead > Math.max(0, byMain(best) - byMain(rival))) {
    const { dimension, probability, otherProbability } = decisive;
    return [
      {
        code: "hip-belt-decides",
        facts: { ...facts, dimension, sizeProbability: probability, otherProbability },
      },
    ];
  }
  const roomMm = roomIn(best, main);
  const otherRoomMm = roomIn(rival, main);
  // Nothing to say where the expected length lies in only one of the two, or no end is near.
  if (!(otherRoomMm >= 0 && roomMm > otherRoomMm && Number.isFinite(roomMm))) return [];
  return [{ code: "room-on-both-sides", facts: { ...facts, roomMm, otherRoomMm } }];
}

/** A size that says nothing of a dimension sets no bound there. */
function probabilityIn(fit: SizeFit, dimension: ChartDimension): number {
  return fit.dimensions.find((one) => one.dimension === dimension)?.probability ?? 1;
}
