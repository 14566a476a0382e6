import type { ComponentChildren, JSX } from "preact";
import { useState } from "preact/hooks";
import type { measurement } from "tapewise";
import type { Lang } from "../layouts/languages.ts";
import { decimalText, errorNumber, errorText, errorUnit } from "../parts/error-text.ts";
import type { ShownUnit } from "../parts/lengths.ts";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";
import type { HandsAnswer } from "../work/hands-answer.ts";
import { AgreementFigure, BudgetFigure, DigitsFigure, ReadingsFigure } from "./hands-figures.tsx";

interface ReportProps {
  readonly answer: HandsAnswer;
  readonly report: measurement.StudyReport;
  readonly words: Words["hands"];
  readonly parts: Words["parts"];
  readonly lang: Lang;
  readonly unit: ShownUnit;
}

/** A chance below this is taken for a preference of digits. */
const SELDOM = 0.05;
/** A slope of the number of hands: with fewer than this the interval between hands is wide whatever is done. */
const FEW_HANDS = 4;

/** What a study comes to, and its pictures. */
export function HandsPictures(props: ReportProps): JSX.Element {
  const { answer, report, words, parts, lang, unit } = props;
  const figure = { answer, words, parts, lang, unit };
  return (
    <>
      <Short {...props} />
      <section class="panel">
        <ReadingsFigure {...figure} />
        {report.correlation === undefined || report.correlation.components.terms.length === 0 ? null : (
          <>
            <BudgetFigure {...figure} components={report.correlation.components} />
            <p class="meaning">{words.budgetMeaning}</p>
          </>
        )}
      </section>
    </>
  );
}

/** How large the errors are, each part with what it means for a fitter. */
export function HandsErrors(props: ReportProps): JSX.Element {
  return (
    <section class="panel">
      <Errors {...props} />
      <PrecisionPart {...props} />
      <Correlation {...props} />
      <Change {...props} />
    </section>
  );
}

/** Whose hand does what, each part with what it means for a fitter. */
export function HandsHabits(props: ReportProps): JSX.Element | null {
  const { agreement, trend, digits, allowance } = props.report;
  if (agreement.length === 0 && trend === undefined && digits === undefined && allowance === undefined) {
    return null;
  }
  return (
    <section class="panel">
      <Agreement {...props} />
      <Trend {...props} />
      <Digits {...props} />
      <Allowance {...props} />
    </section>
  );
}

function Short({ report, words, lang, unit }: ReportProps): JSX.Element | null {
  const { technicalError, precision } = report;
  const error = technicalError?.total ?? technicalError?.intra;
  if (error === undefined) return null;
  const small = (mm: number) => errorText(mm, unit, lang);
  const hasTotal = technicalError?.total !== undefined;
  const isBetween = precision === undefined ? undefined : precision.betweenMm > precision.repeatability.value;
  return (
    <section class="panel headline" aria-labelledby="short-title">
      <h2 id="short-title">{words.shortTitle}</h2>
      <p class="short" data-error>
        {fill(words.shortTotal, { value: small(error.mm.value) })}
      </p>
      <p>{hasTotal ? words.shortTotalText : words.shortIntraText}</p>
      {precision === undefined ? null : (
        <p>
          {fill(words.shortApart, {
            same: small(precision.repeatabilityLimitMm),
            any: small(precision.reproducibilityLimitMm),
          })}
        </p>
      )}
      {precision === undefined && report.detectableChange.sameMeasurerMm !== undefined ? (
        <p>{fill(words.shortApartSame, { same: small(report.detectableChange.sameMeasurerMm) })}</p>
      ) : null}
      {isBetween === undefined ? null : <p class="meaning">{isBetween ? words.between : words.within}</p>}
    </section>
  );
}

interface PartProps {
  readonly id: string;
  readonly title: string;
  readonly hint?: string;
  readonly meaning?: readonly (string | undefined)[];
  readonly children?: ComponentChildren;
}

function Part({ id, title, hint, meaning = [], children }: PartProps): JSX.Element {
  return (
    <section class="report-part" data-part={id}>
      <h3>{title}</h3>
      {hint === undefined ? null : <p class="hint">{hint}</p>}
      {children}
      {meaning.map((sentence) =>
        sentence === undefined ? null : (
          <p key={sentence} class="meaning">
            {sentence}
          </p>
        ),
      )}
    </section>
  );
}

interface FiguresTableProps {
  readonly caption: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly [name: string, ...figures: string[]])[];
}

function FiguresTable({ caption, heads, rows }: FiguresTableProps): JSX.Element {
  return (
    <section class="scroll" aria-label={caption} tabIndex={0}>
      <table>
        <caption class="unseen">{caption}</caption>
        <thead>
          <tr>
            <td />
            {heads.map((head) => (
              <th key={head} scope="col" class="number">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, ...figures]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {figures.map((text, index) => (
                <td key={heads[index]} class="number">
                  {text}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Errors({ report, words, lang, unit }: ReportProps): JSX.Element | null {
  const { technicalError } = report;
  if (technicalError === undefined) return null;
  const { intra, inter, total, perMeasurer } = technicalError;
  const write = writers(lang, unit);
  const row = (name: string, tem: measurement.Tem | undefined) =>
    tem === undefined
      ? []
      : [
          [
            name,
            write.small(tem.mm.value),
            write.ends(tem.mm),
            write.number(tem.relative.value, 2),
            tem.reliability === undefined ? "–" : write.number(tem.reliability, 3),
          ] as const,
        ];
  const rows = [
    ...row(words.temIntra, intra),
    ...row(words.temInter, inter),
    ...row(words.temTotal, total),
    ...(perMeasurer.length < 2
      ? []
      : perMeasurer.slice(0, 12).flatMap(({ measurer, tem }) => row(fill(words.temOnly, { measurer }), tem))),
  ];
  const text = (tem: measurement.Tem) => errorText(tem.mm.value, unit, lang);
  return (
    <Part
      id="tem"
      title={words.temTitle}
      hint={words.temHint}
      meaning={[
        intra !== undefined && total !== undefined
          ? fill(words.temMeaning, { total: text(total), intra: text(intra) })
          : intra === undefined
            ? undefined
            : fill(words.temMeaningIntra, { intra: text(intra) }),
        inter !== undefined && report.size.measurers < FEW_HANDS ? words.temMeaningWide : undefined,
        words.reliabilityMeaning,
      ]}
    >
      <FiguresTable
        caption={words.temTitle}
        heads={[
          `${words.error}, ${errorUnit(unit, lang)}`,
          interval(words, report.confidence),
          words.percent,
          words.reliability,
        ]}
        rows={rows}
      />
    </Part>
  );
}

function PrecisionPart({ report, words, lang, unit }: ReportProps): JSX.Element | null {
  const { precision } = report;
  if (precision === undefined) return null;
  const write = writers(lang, unit);
  const found = [
    ...precision.variances.map(({ subject, measurer }) => fill(words.foundVariance, { subject, measurer })),
    ...precision.means.map(({ subject, measurer }) => fill(words.foundMean, { subject, measurer })),
  ];
  return (
    <Part
      id="precision"
      title={words.precisionTitle}
      hint={words.precisionHint}
      meaning={[fill(words.precisionMeaning, { R: errorText(precision.reproducibilityLimitMm, unit, lang) })]}
    >
      <FiguresTable
        caption={words.precisionTitle}
        heads={[errorUnit(unit, lang), interval(words, precision.confidence)]}
        rows={[
          [words.sr, write.small(precision.repeatability.value), write.ends(precision.repeatability)],
          [words.sl, write.small(precision.betweenMm), ""],
          [words.sR, write.small(precision.reproducibilityMm), ""],
          [words.r, write.small(precision.repeatabilityLimitMm), ""],
          [words.R, write.small(precision.reproducibilityLimitMm), ""],
        ]}
      />
      <p class="hint">
        {found.length === 0
          ? words.precisionClean
          : fill(words.precisionFound, { found: found.slice(0, 8).join("; ") })}
      </p>
    </Part>
  );
}

function Correlation({ report, words, lang, unit }: ReportProps): JSX.Element | null {
  const { correlation } = report;
  if (correlation === undefined) return null;
  const write = writers(lang, unit);
  const ends = ({ lower, upper }: measurement.IntervalEstimate) =>
    `${write.number(lower, 2)} – ${write.number(upper, 2)}`;
  const { agreement, consistency, confidence } = correlation;
  const share = Math.round(100 * agreement.value);
  return (
    <Part
      id="icc"
      title={words.iccTitle}
      hint={words.iccHint}
      meaning={[fill(words.iccMeaning, { share, rest: 100 - share })]}
    >
      <FiguresTable
        caption={words.iccTitle}
        heads={[words.correlation, interval(words, confidence)]}
        rows={[
          [words.iccAgreement, write.number(agreement.value, 3), ends(agreement)],
          [words.iccConsistency, write.number(consistency.value, 3), ends(consistency)],
        ]}
      />
    </Part>
  );
}

function Agreement(props: ReportProps): JSX.Element | null {
  const { answer, report, words, parts, lang, unit } = props;
  const [chosen, setChosen] = useState("");
  const name = ({ first, second }: measurement.MeasurerAgreement) => `${first} – ${second}`;
  const pair = report.agreement.find((each) => name(each) === chosen) ?? report.agreement[0];
  if (pair === undefined) return null;
  const write = writers(lang, unit);
  const text = (mm: number) => errorText(mm, unit, lang);
  const { bias, lowerLimit, upperLimit, confidence } = pair.limits;
  const facts = {
    first: pair.first,
    second: pair.second,
    difference: text(Math.abs(bias.value)),
    side: bias.value > 0 ? words.longer : words.shorter,
    lower: text(lowerLimit.value),
    upper: text(upperLimit.value),
  };
  const differs = bias.lower > 0 || bias.upper < 0;
  return (
    <Part
      id="agreement"
      title={words.agreementTitle}
      hint={words.agreementHint}
      meaning={[fill(differs ? words.agreementMeaning : words.agreementMeaningNone, facts)]}
    >
      <FiguresTable
        caption={words.agreementTitle}
        heads={[
          `${words.bias}, ${errorUnit(unit, lang)}`,
          interval(words, confidence),
          words.lowerLimit,
          words.upperLimit,
        ]}
        rows={report.agreement.map((each) => [
          name(each),
          write.small(each.limits.bias.value),
          write.ends(each.limits.bias),
          `${write.small(each.limits.lowerLimit.value)} (${write.ends(each.limits.lowerLimit)})`,
          `${write.small(each.limits.upperLimit.value)} (${write.ends(each.limits.upperLimit)})`,
        ])}
      />
      {report.agreement.length < 2 ? null : (
        <div class="field screen-only">
          <label class="label" for="pair">
            {words.pairChoice}
          </label>
          <select id="pair" value={name(pair)} onChange={(event) => setChosen(event.currentTarget.value)}>
            {report.agreement.map((each) => (
              <option key={name(each)}>{name(each)}</option>
            ))}
          </select>
        </div>
      )}
      <AgreementFigure {...{ answer, words, parts, lang, unit, pair }} />
    </Part>
  );
}

function Change({ report, words, lang, unit }: ReportProps): JSX.Element | null {
  const { sameMeasurerMm, anyMeasurerMm } = report.detectableChange;
  const largest = anyMeasurerMm ?? sameMeasurerMm;
  if (largest === undefined) return null;
  const text = (mm: number | undefined) => (mm === undefined ? words.notKnown : errorText(mm, unit, lang));
  return (
    <Part id="change" title={words.changeTitle} meaning={[fill(words.changeMeaning, { any: text(largest) })]}>
      <dl class="about">
        <div>
          <dt>{words.changeSame}</dt>
          <dd>{text(sameMeasurerMm)}</dd>
        </div>
        <div>
          <dt>{words.changeAny}</dt>
          <dd>{text(anyMeasurerMm)}</dd>
        </div>
      </dl>
    </Part>
  );
}

function Trend({ report, words, lang, unit }: ReportProps): JSX.Element | null {
  const { trend } = report;
  if (trend === undefined) return null;
  const write = writers(lang, unit);
  const row = (name: string, each: measurement.RepeatTrend) =>
    [
      name,
      write.small(each.slope.value),
      write.ends(each.slope),
      each.pValue === undefined ? "–" : chance(each.pValue, lang),
    ] as const;
  const { slope } = trend.all;
  const goes = slope.lower > 0 || slope.upper < 0;
  return (
    <Part
      id="trend"
      title={words.trendTitle}
      meaning={[
        goes
          ? fill(words.trendMeaning, {
              side: slope.value > 0 ? words.longer : words.shorter,
              slope: errorText(Math.abs(slope.value), unit, lang),
            })
          : words.trendMeaningNone,
      ]}
    >
      <FiguresTable
        caption={words.trendTitle}
        heads={[
          `${words.trendSlope}, ${errorUnit(unit, lang)}`,
          interval(words, trend.confidence),
          words.trendChance,
        ]}
        rows={[
          row(words.everybody, trend.all),
          ...(trend.perMeasurer.length < 2
            ? []
            : trend.perMeasurer.slice(0, 12).map(({ measurer, trend: own }) => row(measurer, own))),
        ]}
      />
    </Part>
  );
}

function Digits({ report, words, lang }: ReportProps): JSX.Element | null {
  const { digits } = report;
  const [first] = digits?.all ?? [];
  if (digits === undefined || first === undefined) return null;
  const own = digits.perMeasurer.flatMap(({ measurer, digits: counts }) => {
    const found = counts.find(({ unit }) => unit === first.unit);
    return found === undefined ? [] : [{ measurer, found }];
  });
  const shown = own.length > 1 && own.length <= 9 ? own : [{ measurer: words.everybody, found: first }];
  const likes = shown.filter(({ found }) => found.pValue < SELDOM).map(({ measurer }) => measurer);
  return (
    <Part
      id="digits"
      title={words.digitsTitle}
      hint={fill(words.digitsHint, { unit: first.unit })}
      meaning={[
        likes.length === 0
          ? words.digitsMeaningNone
          : fill(words.digitsMeaning, { measurers: new Intl.ListFormat(lang).format(likes) }),
      ]}
    >
      <div class="digit-figures">
        {shown.map(({ measurer, found }) => (
          <DigitsFigure
            key={measurer}
            title={`${measurer}: ${words.digitsIndex} ${Math.round(found.index)}, p ${chance(found.pValue, lang)}`}
            counts={found.counts}
          />
        ))}
      </div>
    </Part>
  );
}

function Allowance({ report, words, lang, unit }: ReportProps): JSX.Element | null {
  const { allowance } = report;
  if (allowance === undefined) return null;
  return (
    <Part id="allowance" title={words.allowanceTitle} meaning={[words.allowanceMeaning]}>
      <p>
        {fill(words.allowanceText, {
          limit: errorText(allowance.allowance.mm, unit, lang),
          name: allowance.allowance.name,
          same: allowance.sameMeasurer?.beyond ?? 0,
          samePairs: allowance.sameMeasurer?.pairs ?? 0,
          two: allowance.twoMeasurers?.beyond ?? 0,
          twoPairs: allowance.twoMeasurers?.pairs ?? 0,
        })}
      </p>
    </Part>
  );
}

function writers(lang: Lang, unit: ShownUnit) {
  const small = (mm: number) => errorNumber(mm, unit, lang);
  return {
    small,
    ends: ({ lower, upper }: measurement.IntervalEstimate) => `${small(lower)} – ${small(upper)}`,
    number: (value: number, decimals: number) => decimalText(value, decimals, lang),
  };
}

function interval(words: Words["hands"], confidence: number): string {
  return fill(words.interval, { percent: `${Math.round(100 * confidence)} %` });
}

/** A chance that is never none. */
function chance(pValue: number, lang: Lang): string {
  return pValue < 0.001 ? `<${decimalText(0.001, 3, lang)}` : decimalText(pValue, 3, lang);
}
