import { InvalidArgumentError } from "@tapewise/outcome";
import { requireFinite, requireNotNegative } from "../require-number.ts";
import type { InputDistribution } from "./input-distribution.ts";

/** Refuses a distribution with a figure that is none. */
export function requireDistribution(argument: string, distribution: InputDistribution): void {
  const at = (part: string): string => `${argument}.${part}`;
  switch (distribution.shape) {
    case "normal":
      requireFinite(at("mean"), distribution.mean);
      requireNotNegative(at("sd"), distribution.sd);
      return;
    case "student-t":
      requireFinite(at("mean"), distribution.mean);
      requireNotNegative(at("scale"), distribution.scale);
      if (!(distribution.degreesOfFreedom > 2)) {
        const expected = "a number above 2";
        throw new InvalidArgumentError(at("degreesOfFreedom"), distribution.degreesOfFreedom, expected);
      }
      return;
    case "rectangular":
    case "triangular":
    case "arcsine":
      requireBounds(argument, distribution);
      return;
    case "trapezoidal":
      requireBounds(argument, distribution);
      if (!(distribution.topShare >= 0 && distribution.topShare <= 1)) {
        throw new InvalidArgumentError(at("topShare"), distribution.topShare, "from 0 to 1");
      }
      return;
    case "curvilinear-trapezoid": {
      requireBounds(argument, distribution);
      const most = (distribution.upper - distribution.lower) / 2;
      if (!(distribution.inexactness >= 0 && distribution.inexactness <= most)) {
        throw new InvalidArgumentError(at("inexactness"), distribution.inexactness, `from 0 to ${most}`);
      }
      return;
    }
    default:
      throw new InvalidArgumentError(at("shape"), unknownShape(distribution), "the name of a distribution");
  }
}

function unknownShape(distribution: never): unknown {
  return (distribution as { readonly shape?: unknown } | null | undefined)?.shape;
}

function requireBounds(
  argument: string,
  { lower, upper }: { readonly lower: number; readonly upper: number },
): void {
  requireFinite(`${argument}.lower`, lower);
  requireFinite(`${argument}.upper`, upper);
  if (lower > upper) {
    throw new InvalidArgumentError(`${argument}.upper`, upper, `at least the lower bound, ${lower}`);
  }
}
