import { InvalidArgumentError } from "@tapewise/outcome";
import { menFigures } from "./men-figures.ts";
import type { ReferenceFigures } from "./reference-figures.ts";
import { womenFigures } from "./women-figures.ts";

/** Whom the reference survey has figures of. */
export type ReferenceCut = "women" | "men";

/** The figures of a sex. */
export function figuresOf(cut: ReferenceCut): ReferenceFigures {
  if (cut === "women") return womenFigures;
  if (cut === "men") return menFigures;
  throw new InvalidArgumentError("cut", cut, '"women" or "men"');
}
