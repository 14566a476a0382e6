import type { Cut, SizeChart } from "@tapewise/charts";
import type { Estimate, Prior } from "@tapewise/measurement";
import type { FitPolicy } from "./policy.ts";

/** A feature of build that speaks for the longer of two harnesses that both fit (common practice). */
export type BuildFeature = "broad-shoulders" | "large-chest" | "muscular-back";

/** Every {@link BuildFeature}. */
export const buildFeatures: readonly BuildFeature[] = ["broad-shoulders", "large-chest", "muscular-back"];

/** The person a size is chosen for, as estimates. */
export interface Person {
  readonly estimates: readonly Estimate[];
  /** What is believed of the person before the readings. */
  readonly prior?: Prior;
  /** The cut that suits this body, where it is known. */
  readonly cut?: Cut;
  readonly build?: readonly BuildFeature[];
  /** A first-time buyer is better served by an adjustable harness when the choice is close. */
  readonly firstPack?: boolean;
}

/** How an answer is made and worded. */
export interface RecommendOptions {
  readonly policy?: FitPolicy;
  /** Unit of the lengths in sentences. Facts stay in millimetres. */
  readonly unit: "cm" | "in";
  /**
   * What is believed of the person where a chart is uncertain in itself: its doubt is added to that about the body, for
   * this chart alone. Readings, and what is questioned of them, stay as they are. Left out, charts are taken at their word.
   */
  readonly asSeenFrom?: (person: Person, chart: SizeChart) => Pick<Person, "estimates" | "prior">;
}
