import { drawAgreement } from "./draw-agreement.ts";
import { drawErrors } from "./draw-errors.ts";
import { drawReadings } from "./draw-readings.ts";
import type { StudyFigure } from "./study-figure.ts";

/**
 * A figure of a study as an SVG picture: self-contained, the same text each time, without fonts or colours of its own,
 * with title and description for screen readers, and sample and caveat below the drawing.
 *
 * @param id - begins the ids in the picture; give each picture of one page its own
 *
 * @example
 * ```ts
 * import { drawStudyFigure, parseStudy, readingsFigure } from "@tapewise/measurement";
 * const figure = readingsFigure(parseStudy("subject,torso A1 (cm),torso A2 (cm)\nleo,48,48.2\nmia,43,43.4\n"), "cm");
 * drawStudyFigure(figure).startsWith("<svg"); // => true
 * ```
 */
export function drawStudyFigure(figure: StudyFigure, id: string = `study-${figure.kind}`): string {
  switch (figure.kind) {
    case "readings":
      return drawReadings(figure, id);
    case "agreement":
      return drawAgreement(figure, id);
    case "errors":
      return drawErrors(figure, id);
  }
}
