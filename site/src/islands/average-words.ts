import type { Lang } from "../layouts/languages.ts";
import { errorText } from "../parts/error-text.ts";
import { lengthText, type ShownUnit } from "../parts/lengths.ts";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";
import type { AverageAnswer, CountShown } from "../work/average-answer.ts";

type AverageWords = Words["average"];

/** "1 reading", "12 readings". */
export function tookText(count: number, words: AverageWords): string {
  return count === 1 ? words.takenOne : fill(words.taken, { count });
}

/** Less than this is no difference on a tape, in mm. */
const NOTHING_MM = 0.05;
/** Shares of wrong sizes that differ by less are the same: what four thousand series can tell. */
const SAME_SHARE = 0.015;
/** Errors that differ by less than this part are the same. */
const SAME_ERROR = 0.03;

/** What there is to notice in an answer, in sentences made from its numbers. */
export function noticeAverage(
  answer: AverageAnswer,
  words: AverageWords,
  lang: Lang,
  unit: ShownUnit,
): readonly string[] {
  const length = (mm: number) => lengthText(mm, unit, lang);
  const small = (mm: number) => errorText(mm, unit, lang);
  const said = answer.state.source === "class" ? aboutClass : aboutDrawn;
  return [
    ...said(answer, words, length, small),
    ...aboutFloor(answer, words, small),
    ...aboutSizes(answer, words),
    ...aboutMedian(answer, words, small),
    ...aboutMarks(answer, words, small),
  ];
}

type Write = (mm: number) => string;

function signed(mm: number, write: Write): string {
  return `${mm > 0 ? "+" : ""}${write(mm)}`;
}

function aboutDrawn(
  answer: AverageAnswer,
  words: AverageWords,
  length: Write,
  small: Write,
): readonly string[] {
  const { series, lengthMm, offsetMm = 0 } = answer;
  if (series === undefined || lengthMm === undefined) return [];
  const { meanMm, lowerMm, upperMm } = series.last;
  const facts = { taken: tookText(series.count, words), mean: length(meanMm) };
  const differs = Math.abs(meanMm - lengthMm) >= NOTHING_MM;
  const lasts = Math.abs(offsetMm) >= NOTHING_MM;
  const off = {
    ...facts,
    difference: small(Math.abs(meanMm - lengthMm)),
    side: meanMm > lengthMm ? words.sideLonger : words.sideShorter,
    offset: signed(offsetMm, small),
  };
  const first = !differs ? words.noticeExact : lasts ? words.noticeOffset : words.noticeOffsetNone;
  const said = [fill(first, off)];
  if (lowerMm !== undefined && upperMm !== undefined && upperMm - lowerMm >= NOTHING_MM) {
    const holds = lowerMm <= lengthMm && lengthMm <= upperMm;
    const sentence = !holds
      ? lasts
        ? words.noticeBandMisses
        : undefined
      : lasts
        ? words.noticeBandHolds
        : words.noticeBandHoldsAll;
    if (sentence !== undefined) said.push(fill(sentence, { band: small(upperMm - lowerMm) }));
  }
  return said;
}

function aboutClass(
  answer: AverageAnswer,
  words: AverageWords,
  length: Write,
  small: Write,
): readonly string[] {
  const { series, lengthMm, isLengthKnown } = answer;
  if (series === undefined) return [];
  const { meanMm, medianMm, sdMm = 0, lowerMm = meanMm, upperMm = meanMm } = series.last;
  const said = [
    fill(words.noticeClass, {
      count: series.count,
      sd: small(sdMm),
      mean: length(meanMm),
      median: length(medianMm),
      lower: length(lowerMm),
      upper: length(upperMm),
    }),
  ];
  if (!isLengthKnown || lengthMm === undefined) return [...said, words.noticeClassNotHeld];
  if (Math.abs(meanMm - lengthMm) < NOTHING_MM) return said;
  said.push(
    fill(words.noticeClassHeld, {
      held: length(lengthMm),
      difference: small(Math.abs(meanMm - lengthMm)),
      side: meanMm > lengthMm ? words.sideLonger : words.sideShorter,
    }),
  );
  return said;
}

function aboutFloor(answer: AverageAnswer, words: AverageWords, small: Write): readonly string[] {
  const { error } = answer;
  const [one, five, ten] = [1, 5, 10].map((count) => answer.counts.find((each) => each.count === count));
  if (
    error === undefined ||
    one?.expected === undefined ||
    five?.expected === undefined ||
    ten?.expected === undefined
  ) {
    return [];
  }
  const scatter = (each: Expected) => Math.sqrt(Math.max(0, each.sdMm ** 2 - error.lastingMm ** 2));
  const [of1, of5] = [scatter(one.expected), scatter(five.expected)];
  const floor = Math.hypot(one.expected.biasMm, error.lastingMm);
  // Readings that all fall on one mark do not scatter less for being many.
  const isPlain = of1 >= NOTHING_MM && Math.abs(of1 / of5 - Math.sqrt(5)) < 0.02;
  return [
    ...(isPlain
      ? [
          fill(words.noticeShrinks, {
            one: small(of1),
            five: small(of5),
            from: small(of1),
            to: small(of1 / Math.sqrt(5)),
          }),
        ]
      : []),
    floor < NOTHING_MM
      ? fill(words.noticeFloorNone, { ten: small(ten.expected.rmseMm) })
      : fill(words.noticeFloor, {
          parts: [
            ...(error.lastingMm < NOTHING_MM
              ? []
              : [fill(words.floorHands, { lasting: small(error.lastingMm) })]),
            ...(Math.abs(one.expected.biasMm) < NOTHING_MM
              ? []
              : [fill(words.floorBias, { bias: signed(one.expected.biasMm, small) })]),
          ].join(", "),
          ten: small(ten.expected.rmseMm),
          floor: small(floor),
        }),
  ];
}

type Expected = NonNullable<CountShown["expected"]>;

function aboutSizes(answer: AverageAnswer, words: AverageWords): readonly string[] {
  const { lengthMm } = answer;
  const [one, three, five] = [1, 3, 5].map(
    (count) => answer.counts.find((each) => each.count === count)?.mean.wrongShare,
  );
  if (one === undefined || three === undefined || five === undefined || lengthMm === undefined) return [];
  if (!answer.sizes.some(({ from, to }) => from <= lengthMm && lengthMm <= to))
    return [words.noticeSizesOutside];
  if (one === 0 && five === 0) return [words.noticeSizesNever];
  const of100 = (share: number) => (share > 0 && share < 0.005 ? "<1" : String(Math.round(share * 100)));
  const sentence =
    five < one - SAME_SHARE
      ? words.noticeSizesLess
      : five > one + SAME_SHARE
        ? words.noticeSizesMore
        : words.noticeSizesSame;
  return [fill(sentence, { one: of100(one), three: of100(three), five: of100(five) })];
}

function aboutMedian(answer: AverageAnswer, words: AverageWords, small: Write): readonly string[] {
  const five = answer.counts.find(({ count }) => count === 5);
  if (five === undefined) return [];
  const { mean, median } = five;
  const isBetter = median.rmseMm < mean.rmseMm * (1 - SAME_ERROR);
  const hasSlips = answer.state.source === "drawn" && answer.state.slips !== "none";
  const isSame = Math.abs(median.rmseMm - mean.rmseMm) <= mean.rmseMm * SAME_ERROR;
  if (isSame || (isBetter && !hasSlips)) return [];
  return [
    fill(isBetter ? words.noticeMedian : words.noticeMedianSame, {
      median: small(median.rmseMm),
      mean: small(mean.rmseMm),
    }),
  ];
}

function aboutMarks({ error }: AverageAnswer, words: AverageWords, small: Write): readonly string[] {
  if (error === undefined || error.stepMm < 2 * error.noiseMm || error.noiseMm === 0) return [];
  return [fill(words.noticeCoarse, { step: small(error.stepMm), noise: small(error.noiseMm) })];
}
