import { type DimensionId, dimensionIds, dimensionKind, type Tool } from "@tapewise/landmarks";
import { anticipateUncertainty, errorDefaults } from "@tapewise/measurement";

/** How readings of one dimension err under some conditions, in mm²: what holds for all people who read so. */
export interface MethodFigures {
  /** What changes from reading to reading, and the most that it may be where that is not said. */
  readonly repeat: number;
  readonly mostRepeat: number;
  /** What stays the same: the hand's part, the part of the tool for each mm, the finding of the bones. */
  readonly bias: number;
  readonly scale: number;
  readonly finding: number;
  readonly degrees: number;
}

const HANDS = ["self", "helper"] as const;
const TOOLS: readonly Tool[] = ["tape", "cord-and-ruler"];

/** The figures of the table of defaults for every dimension (16), hand (2), tool (2), and finding afresh (not said, no, yes). */
export function methodFigures(): readonly MethodFigures[] {
  return dimensionIds.flatMap((id) =>
    HANDS.flatMap((hand) =>
      TOOLS.flatMap((tool) => [0, 1, 2].map((afresh) => figuresOf(id, hand, tool, afresh))),
    ),
  );
}

/** The position of a method among them. */
export function methodAt(dimension: number, by: number, tool: number, afresh: number): number {
  return ((dimension * HANDS.length + by) * TOOLS.length + tool) * 3 + afresh;
}

function figuresOf(id: DimensionId, by: (typeof HANDS)[number], tool: Tool, afresh: number): MethodFigures {
  const hand = errorDefaults.hands[dimensionKind(id)][by];
  const { scaleHalfWidth, transferMm } = errorDefaults.tools[tool];
  const found = afresh === 2 ? hand.findingMm ** 2 : 0;
  const repeat = hand.handlingMm ** 2 + (transferMm * Math.SQRT2) ** 2 + found;
  return {
    repeat,
    mostRepeat: afresh === 0 ? repeat + hand.findingMm ** 2 : repeat,
    bias: hand.lastingMm ** 2,
    scale: scaleHalfWidth / Math.sqrt(3),
    finding: afresh === 2 ? 0 : hand.findingMm ** 2,
    degrees: errorDefaults.degreesOfFreedom,
  };
}

/** The variance of fresh readings, in mm², as a number and a number for each mm². */
export interface FreshFigures {
  readonly base: number;
  readonly perSquare: number;
}

/** What as many readings by somebody would be uncertain by, at any length: their variance grows with its square. */
export function freshFigures(
  dimension: number,
  by: number,
  tool: number,
  afresh: number,
  stepMm: number,
  count: number,
): FreshFigures {
  const varianceAt = (lengthMm: number): number =>
    anticipateUncertainty({
      dimension: dimensionIds[dimension] as DimensionId,
      lengthMm,
      count,
      stepMm,
      conditions: {
        tool: TOOLS[tool] as Tool,
        measuredBy: HANDS[by] as (typeof HANDS)[number],
        ...(afresh === 0 ? {} : { landmarksFoundAfresh: afresh === 2 }),
      },
    }) ** 2;
  const [near, far] = [1, 2000];
  const perSquare = (varianceAt(far) - varianceAt(near)) / (far * far - near * near);
  return { base: varianceAt(near) - perSquare * near * near, perSquare };
}
