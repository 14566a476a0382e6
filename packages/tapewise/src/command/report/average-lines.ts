import { speakDimension } from "@tapewise/charts";
import { writeShare } from "@tapewise/coverage";
import type { AveragingResult } from "@tapewise/measurement";
import type { AverageLesson } from "../lesson/make-lesson.ts";
import { cleanWord } from "../text/clean.ts";
import { table } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import { note } from "./sample-lines.ts";
import { fineIn, lengthIn } from "./words.ts";

/** The lesson on averaging: one series, many series, sizes, mean beside median. */
export function averageLines(lesson: AverageLesson, unit: "cm" | "in"): string[] {
  const { options, source } = lesson;
  return [
    ...wrap(
      `Averaging ${source === "own" ? "your readings" : "drawn readings"} of the ${speakDimension(options.dimension)}; lengths in ${unit}`,
    ),
    ...aboutError(lesson, unit),
    "",
    source === "own" ? "Your readings, one after the other" : `One series (seed ${options.seed})`,
    ...seriesLines(lesson, unit),
    "",
    ...seriesMeaning(lesson, unit),
    "",
    source === "own"
      ? `${options.runs} series, drawn from your readings`
      : `${options.runs} series, each by another measurer of the same kind`,
    ...resultLines(lesson, unit),
    "",
    ...resultMeaning(lesson, unit),
  ];
}

function aboutError(
  { error, basis, lengthMm, isStated, source }: AverageLesson,
  unit: "cm" | "in",
): string[] {
  if (source === "own" || error === undefined) {
    return note(
      isStated
        ? `They are held against ${fineIn(lengthMm, unit)} ${unit}.`
        : `They are held against their own mean, ${fineIn(lengthMm, unit)} ${unit}: what all of them are off by alike does not show. Give a careful reading with --length.`,
    );
  }
  const { biasMm, lastingMm, noiseMm, stepMm, slip } = error;
  return [
    ...note(
      `True length ${lengthIn(lengthMm, unit)}. Each reading errs by ${fineIn(noiseMm, unit)}, each measurer by ${fineIn(lastingMm, unit)} in all readings (standard deviations${basis === "stated" ? ", as you state" : ", by the table of assumptions"}); everybody by ${fineIn(biasMm, unit)}; rounded to ${Number(stepMm.toPrecision(4))} mm.`,
    ),
    ...(slip === undefined
      ? []
      : note(
          `One reading in ${Math.round(1 / slip.chance)} slips by ${fineIn(slip.sizeMm, unit)}, either way (an assumption).`,
        )),
  ];
}

function seriesLines({ series, slipsMm }: AverageLesson, unit: "cm" | "in"): string[] {
  return table(
    ["n", "reading", "mean so far", "95 % band", "median so far"],
    series.map(({ count, readingMm, meanMm, medianMm, lowerMm, upperMm }, k) => [
      String(count),
      `${fineIn(readingMm, unit)}${(slipsMm[k] ?? 0) === 0 ? "" : " slip"}`,
      fineIn(meanMm, unit),
      lowerMm === undefined || upperMm === undefined
        ? "-"
        : `${fineIn(lowerMm, unit)} to ${fineIn(upperMm, unit)}`,
      fineIn(medianMm, unit),
    ]),
    ["right", "right", "right", "right", "right"],
  );
}

function seriesMeaning({ series, lengthMm, isStated }: AverageLesson, unit: "cm" | "in"): string[] {
  const last = series.at(-1);
  const { lowerMm, upperMm } = last ?? {};
  if (last === undefined || lowerMm === undefined || upperMm === undefined) return [];
  const width = `The band is ${fineIn(upperMm - lowerMm, unit)} ${unit} wide after ${last.count} readings`;
  if (!isStated)
    return note(`${width}. It is made of their scatter alone and knows nothing of what all are off by.`);
  const holds = lowerMm <= lengthMm && lengthMm <= upperMm;
  return note(
    `${width} and ${holds ? "holds" : "does not hold"} ${fineIn(lengthMm, unit)} ${unit}. It is made of the scatter alone: what stays in all readings it does not know, and it shrinks all the same.`,
  );
}

function resultLines({ results }: AverageLesson, unit: "cm" | "in"): string[] {
  const picks = results.some(({ mean }) => mean.wrongShare !== undefined);
  const rows = results.map(({ count, mean, median }) => [
    String(count),
    fineIn(mean.biasMm, unit),
    fineIn(mean.sdMm, unit),
    fineIn(mean.rmseMm, unit),
    fineIn(median.rmseMm, unit),
    ...(picks ? [writeShare(mean.wrongShare ?? 0), writeShare(median.wrongShare ?? 0)] : []),
  ]);
  const header = [
    "mean of",
    "off by",
    "scatter",
    "error",
    "median's",
    ...(picks ? ["wrong size", "median's"] : []),
  ];
  return table(
    header,
    rows,
    header.map(() => "right" as const),
  );
}

function resultMeaning(
  { results, options, chart, error, source }: AverageLesson,
  unit: "cm" | "in",
): string[] {
  const [one] = results;
  const last = results.at(-1);
  if (one === undefined || last === undefined) return [];
  const at = (count: number): AveragingResult | undefined => results.find((each) => each.count === count);
  const stays =
    source === "own"
      ? ""
      : ` Without what stays it would fall to ${fineIn(one.mean.sdMm / Math.sqrt(last.count), unit)} at most; what measurers or everybody are off by does not average out.`;
  const shares = [1, 3, 5].flatMap((count) => {
    const share = at(count)?.mean.wrongShare;
    return share === undefined ? [] : [`${writeShare(share)} with ${count}`];
  });
  return [
    ...note("Off by: on average over the series. Error: off by and scatter together (root mean square)."),
    ...note(
      `From 1 to ${last.count} readings the scatter of the mean falls from ${fineIn(one.mean.sdMm, unit)} to ${fineIn(last.mean.sdMm, unit)} ${unit}.${stays}`,
    ),
    ...(shares.length === 0 || chart === undefined
      ? []
      : note(
          `Of these series, a size of ${cleanWord(chart)} that the length does not lie in is picked by ${shares.join(", ")} ${shares.length > 1 ? "readings" : "reading"} (each share is known to ${writeShare(1 / Math.sqrt(options.runs))} or better).`,
        )),
    ...note(
      last.median.rmseMm < last.mean.rmseMm
        ? `The median of ${last.count} errs less than the mean: a slip drags the mean and hardly the median.`
        : `The mean of ${last.count} errs no more than the median${source === "drawn" && error?.slip === undefined ? ": without slips it makes more of each reading" : " here"}.`,
    ),
  ];
}
