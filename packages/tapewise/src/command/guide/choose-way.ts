import type { Dimension, MeasuredBy, Tool, Way } from "@tapewise/landmarks";

/** What the user said of how the reading will be taken. */
export interface WayWish {
  readonly tool?: Tool;
  readonly measuredBy?: MeasuredBy;
}

/** The first way of a dimension that suits a wish; the guide lists the best one first. */
export function chooseWay({ ways }: Dimension, { tool, measuredBy }: WayWish): Way | undefined {
  return ways.find(
    (way) =>
      (tool === undefined || way.tool === tool) && (measuredBy === undefined || way.who === measuredBy),
  );
}

/** The options that ask for a way. */
export function wayOptions(way: Way): string {
  return `--tool ${way.tool} --measured-by ${way.who}`;
}
