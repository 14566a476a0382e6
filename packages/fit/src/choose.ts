import type { SizeChart } from "@tapewise/charts";
import { type Outcome, success } from "@tapewise/outcome";
import type { Choice, PartChoice } from "./choice.ts";
import { conclude } from "./conclude.ts";
import type { Inquiry } from "./inquiry.ts";
import { isDoubted } from "./is-doubted.ts";
import { chartedDimensions, judgeDimensions, setsHarnessLength } from "./judged-dimensions.ts";
import type { BeltPick } from "./pick-belt.ts";
import { pickFrom } from "./pick-from.ts";
import { planLook } from "./plan-look.ts";
import type { FitPolicy } from "./policy.ts";
import { judge } from "./verdict.ts";

/** Chooses a size of one chart, and tells what that amounts to. Codes of failure: those of `pickFrom`. */
export function choose(inquiry: Inquiry, chart: SizeChart): Outcome<Choice> {
  const { beliefs, policy, questions } = inquiry;
  const picked = pickFrom(inquiry, chart);
  if (!picked.ok) return picked;
  const { belt: beltPick, ...pack } = picked.value;
  const { charted, judged, fits, settled } = pack;
  const { pick } = settled;
  const plain = judge(pick, fits, judged, policy);
  const belt = beltPick === undefined ? undefined : judgeBelt(beltPick, policy);
  const packLook = planLook({ fits, pick, hold: settled.isHeld ? policy.tieLoss : 0 }, judged, policy);
  const beltLook = belt === undefined ? undefined : planLook({ ...belt, hold: 0 }, belt.judged, policy);
  const look = packLook ?? beltLook;
  const isPackDoubted = isDoubted(judged, questions);
  const isBeltDoubted = belt !== undefined && isDoubted(belt.judged, questions);
  // A harness is made to a length: without one there is no verdict on a chart that states it.
  const ofSizes = judgeDimensions(chartedDimensions(chart.sizes), beliefs);
  const lacksLength =
    charted.some(setsHarnessLength) && !ofSizes.some((one) => setsHarnessLength(one.charted));
  return success({
    chart,
    ...pack,
    plain,
    ...(belt === undefined ? {} : { belt }),
    ...(look === undefined ? {} : { look }),
    isDoubted: isPackDoubted || isBeltDoubted,
    ...conclude(
      { plain, isOpen: isPackDoubted || lacksLength, look: packLook },
      belt === undefined ? undefined : { plain: belt.plain, isOpen: isBeltDoubted, look: beltLook },
    ),
  });
}

function judgeBelt(belt: BeltPick, policy: FitPolicy): PartChoice {
  return { ...belt, plain: judge(belt.pick, belt.fits, belt.judged, policy) };
}
