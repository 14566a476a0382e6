import type { SizeChart } from "@tapewise/charts";
import { formBeliefs } from "./form-beliefs.ts";
import type { Inquiry } from "./inquiry.ts";
import type { RecommendOptions } from "./person.ts";

/** An inquiry as one chart takes it: what is believed is that chart's, while readings and doubts about them stay. */
export function lookFrom(inquiry: Inquiry, chart: SizeChart, { asSeenFrom }: RecommendOptions): Inquiry {
  if (asSeenFrom === undefined) return inquiry;
  const { estimates, prior } = asSeenFrom(inquiry.person, chart);
  return { ...inquiry, beliefs: formBeliefs(estimates, prior) };
}
