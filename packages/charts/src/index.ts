export type {
  BeltSize,
  ChartDimension,
  Cut,
  HarnessKind,
  Size,
  SizeChart,
  SizeRange,
  SizeRanges,
  SwappablePart,
} from "./size-chart.ts";
