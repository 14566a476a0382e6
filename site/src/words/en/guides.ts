import { landmarks } from "tapewise";
import type { GuideText } from "../guide-text.ts";

/** The library's own guide to a dimension. */
export function englishGuide(id: landmarks.DimensionId): GuideText {
  const dimension = landmarks.dimension(id);
  return {
    definition: dimension.definition,
    use: dimension.use,
    points: dimension.landmarks.map((point) => {
      const { name, find, check } = landmarks.landmark(point);
      return { name, find, check };
    }),
    posture: dimension.posture,
    ways: dimension.ways.map(({ tool, who, suits, steps }) => ({
      tool,
      who,
      suits,
      steps: steps.map(({ text }) => text),
    })),
    slips: dimension.slips.map(({ what, size, mend }) => ({
      what,
      direction: size.direction,
      fromMm: size.fromMm,
      toMm: size.toMm,
      mend,
    })),
    cautions: landmarks
      .cautionsFor(id)
      .filter(({ moments }) => moments.includes("finding") || moments.includes("reading"))
      .map(({ name, text, ask }) => ({ name, text, ask })),
  };
}
