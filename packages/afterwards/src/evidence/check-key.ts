import { InvalidArgumentError } from "@tapewise/outcome";
import type { ProductKey } from "./seen-outcome.ts";

/** Refuses a key that names no product: without it, all that name none would pass for one. */
export function checkKey({ maker, product }: ProductKey, argument: string): void {
  if (typeof product !== "string") {
    throw new InvalidArgumentError(`${argument}.product`, product, "the name of a chart");
  }
  if (maker !== undefined && typeof maker !== "string") {
    throw new InvalidArgumentError(`${argument}.maker`, maker, "the name of a maker, or none");
  }
}
