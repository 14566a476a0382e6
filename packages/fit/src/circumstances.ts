import type { ChartDimension, SizeChart } from "@tapewise/charts";
import type { Issue } from "@tapewise/outcome";
import type { Beliefs } from "./belief.ts";
import type { JudgedDimension } from "./judged-dimensions.ts";
import type { Person } from "./person.ts";
import type { Look } from "./plan-look.ts";
import type { FitPolicy } from "./policy.ts";
import type { BeltFit } from "./recommendation.ts";
import type { Settled } from "./settle.ts";
import type { PlainVerdict } from "./verdict.ts";
import type { SentenceUnit } from "./write-reason.ts";

/** Everything that an explanation may draw on. */
export interface Circumstances {
  readonly chart: SizeChart;
  readonly person: Person;
  readonly beliefs: Beliefs;
  /** Dimensions of the chart that something is known of. */
  readonly known: readonly JudgedDimension[];
  /** Those of them that bind the size. */
  readonly judged: readonly JudgedDimension[];
  readonly charted: readonly ChartDimension[];
  readonly settled: Settled;
  readonly plain: PlainVerdict;
  readonly look: Look | undefined;
  readonly belt: BeltFit | undefined;
  readonly questions: readonly Issue[];
  readonly policy: FitPolicy;
  readonly unit: SentenceUnit;
}
