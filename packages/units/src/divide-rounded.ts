import { InvalidArgumentError } from "@tapewise/outcome";
import { type RoundingRule, roundingRules } from "./rounding-rule.ts";

/** `n / d` as a whole number by a rule; `d` is above zero. */
export function divideRounded(n: bigint, d: bigint, rule: RoundingRule): bigint {
  const remainder = ((n % d) + d) % d;
  const floor = (n - remainder) / d;
  const up = goesUp(floor, 2n * remainder - d, rule);
  return up && remainder !== 0n ? floor + 1n : floor;
}

/** Whether a number between `floor` and the next whole one goes up; `beyond` is above zero past the middle. */
function goesUp(floor: bigint, beyond: bigint, rule: RoundingRule): boolean {
  switch (rule) {
    case "half-even":
      return beyond > 0n || (beyond === 0n && floor % 2n !== 0n);
    case "half-away-from-zero":
      return beyond > 0n || (beyond === 0n && floor >= 0n);
    case "half-up":
      return beyond >= 0n;
    case "up":
      return true;
    case "down":
      return false;
    default:
      throw new InvalidArgumentError("rule", rule satisfies never, `one of ${roundingRules.join(", ")}`);
  }
}
