import type { LessonChart } from "../islands/average.tsx";
import { type AverageAnswer, answerAverage, type NamedSize } from "../work/average-answer.ts";
import { type AverageState, emptyAverage, type lessonDimensions } from "../work/average-state.ts";
import { shelf } from "./shelf.ts";

/** The charts of the shelf that have two sizes or more to choose from by torso length. */
export const lessonShelf: readonly LessonChart[] = shelf
  .map(({ id, chart }) => {
    const by = (dimension: (typeof lessonDimensions)[number]): readonly NamedSize[] =>
      chart.sizes.flatMap(({ name, ranges }) => {
        const interval = ranges[dimension]?.interval;
        return interval === undefined || !(interval.from < interval.to)
          ? []
          : [{ name, from: interval.from, to: interval.to }];
      });
    return {
      id,
      name: chart.chart,
      sizes: { "torso-length": by("torso-length"), "hip-belt-girth": by("hip-belt-girth") },
    };
  })
  .filter(({ sizes }) => sizes["torso-length"].length > 1);

/** A helper near the boundary of two sizes: twelve readings, and what they come to. */
export const lesson: AverageState = { ...emptyAverage, length: "42.6 cm", taken: 12, seed: 7 };

/** Its answer, worked out while the site is built. */
export const lessonAnswer: AverageAnswer = answerAverage({
  state: lesson,
  sizes: lessonShelf.find(({ id }) => id === lesson.chart)?.sizes[lesson.dimension] ?? [],
});
