import type { Dimension, MeasuredBy, Tool, Way } from "@tapewise/landmarks";

/** What the user said of how the reading will be taken. */
export interface WayWish {
  readonly tool?: Tool;
  readonly measuredBy?: MeasuredBy;
}

/**
 * The ways of a dimension that suit a wish, those for one person alone first: nobody is taken to have a
 * helper who has not said so. Among themselves they keep the guide's order, which is by how good they are.
 */
export function suitableWays({ ways }: Dimension, { tool, measuredBy }: WayWish): readonly Way[] {
  const suitable = ways.filter(
    (way) =>
      (tool === undefined || way.tool === tool) && (measuredBy === undefined || way.who === measuredBy),
  );
  return [...suitable.filter(({ who }) => who === "self"), ...suitable.filter(({ who }) => who !== "self")];
}

/** The options that ask for a way. */
export function wayOptions(way: Way): string {
  return `--tool ${way.tool} --measured-by ${way.who}`;
}
