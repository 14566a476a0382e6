import type { DimensionId } from "../dimension-id.ts";

/** Words that people and charts use for more than one dimension. */
export interface AmbiguousTerm {
  readonly terms: readonly [string, ...string[]];
  /** What they may mean, the likelier one on a pack's chart first. */
  readonly candidates: readonly [DimensionId, DimensionId, ...DimensionId[]];
  /** Why they cannot be told apart, and what to ask. */
  readonly explanation: string;
}

/** The terms that no chart should use alone. Common practice, no source. */
export const ambiguousTerms: readonly AmbiguousTerm[] = [
  {
    terms: [
      "hip",
      "hips",
      "hip size",
      "hip measurement",
      "hip circumference",
      "hips circumference",
      "girth of hips",
    ],
    candidates: ["hip-belt-girth", "hip-girth"],
    explanation:
      "“Hip” is the girth around the tops of the hip bones, where a hip belt sits, or the widest girth of the seat. The two differ by several centimetres: ask where the tape goes.",
  },
  {
    terms: ["high hip", "upper hip", "top hip"],
    candidates: ["hip-belt-girth", "hip-girth"],
    explanation:
      "The “high hip” of clothing lies between the waist and the widest part of the seat, near the tops of the hip bones but tied to no bone: ask where the tape goes.",
  },
  {
    terms: ["belt", "belt size", "belt girth", "waist belt", "waist belt size"],
    candidates: ["hip-belt-girth", "waist-girth"],
    explanation:
      "A belt can sit on the hip bones or in the waist above them: ask which of the two it closes around.",
  },
  {
    terms: ["waist/hip", "hip/waist", "waist or hip", "hip or waist", "waist/hips", "hips/waist"],
    candidates: ["hip-belt-girth", "waist-girth", "hip-girth"],
    explanation: "Waist, hip bones and seat are three girths: ask which of them the number is.",
  },
  {
    terms: [
      "shoulder",
      "shoulders",
      "shoulder width",
      "shoulder size",
      "across shoulder",
      "across shoulders",
    ],
    candidates: ["shoulder-breadth", "bideltoid-breadth", "shoulder-length"],
    explanation:
      "A shoulder is measured across from bone to bone, across over the muscles, or along from neck to arm: ask from where to where.",
  },
  {
    terms: ["back", "back size", "back measurement"],
    candidates: ["torso-length", "back-waist-length", "interscye-breadth"],
    explanation:
      "A back is measured down to the hip bones, down to the waist, or across between the arms: ask where the number ends.",
  },
];
