import type { Choice } from "./choice.ts";
import type { NextStepCode } from "./next-steps.ts";
import type { FitPolicy } from "./policy.ts";
import { probabilityInside } from "./probability-inside.ts";
import type { PlainReason } from "./reason.ts";

/** The parts to have in another size than the pack, where the pack's own do not fit and the maker swaps them. */
export function explainSwaps(choice: Choice, policy: FitPolicy): readonly PlainReason<NextStepCode>[] {
  // A part is not to be ordered by a reading that is questioned.
  if (choice.isDoubted) return [];
  return [...swapBelt(choice, policy), ...swapHarness(choice)];
}

function swapBelt(choice: Choice, policy: FitPolicy): readonly PlainReason<NextStepCode>[] {
  const { chart, known, judged, settled, belt } = choice;
  // A belt that is sized apart is picked by itself.
  if (belt !== undefined || !chart.swappable.includes("hip-belt")) return [];
  const size = chart.sizes.find((one) => one.name === settled.pick.size);
  return known.flatMap(({ charted, belief }) => {
    const range = size?.ranges[charted];
    const binds = judged.some((one) => one.charted === charted);
    if (binds || range === undefined) return [];
    if (probabilityInside(belief, range.interval) >= policy.fitProbability) return [];
    return [{ code: "swap-hip-belt", facts: { size: settled.pick.size, dimension: belief.dimension } }];
  });
}

function swapHarness({ chart, main, plain }: Choice): readonly PlainReason<NextStepCode>[] {
  const { outside } = plain;
  if (!chart.swappable.includes("harness") || outside?.dimension !== main.charted) return [];
  return [{ code: "swap-harness", facts: { side: outside.end === "below" ? "shorter" : "longer" } }];
}
