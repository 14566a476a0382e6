import type { JSX } from "preact";
import { useMemo } from "preact/hooks";
import type { charts, fit } from "tapewise";
import { lengthNumber, lengthText } from "../parts/lengths.ts";
import { percentText } from "../parts/percent.ts";
import { ProblemLine } from "../parts/problem.tsx";
import { Ruler, type RulerEstimate, type RulerGroup } from "../parts/ruler.tsx";
import { sayIssue, sayReason, sayText, type Voice } from "../parts/say.ts";
import { useLater } from "../parts/use-later.ts";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";
import type { ChooseAnswer } from "../work/choose-answer.ts";

/** What the answer and the card are made of. */
export interface AnswerProps {
  readonly answer: ChooseAnswer;
  readonly words: Words["choose"];
  readonly parts: Words["parts"];
  readonly dimensions: Words["dimensions"];
  readonly voice: Voice;
}

/** What is said once for all packs. */
const SAID_ONCE: ReadonlySet<string> = new Set(["check-on-body", "see-fitter"]);

/** The answer: which size of which pack, why, how sure that is, and what to do next. */
export function ChooseAnswerView(props: AnswerProps): JSX.Element {
  const { answer, words, parts, voice } = props;
  const errors = answer.issues.filter(
    ({ issue }) => issue.severity === "error" && answer.person === undefined,
  );
  const [best] = answer.packs;
  if (best === undefined) return <NoAnswer {...props} errors={errors} />;
  return (
    <>
      <section class="panel headline" aria-live="polite">
        <Headline ranked={best} words={words} voice={voice} />
      </section>
      {answer.packs.length > 1 ? (
        <div class="panel">
          <h3 id="compare-title">{words.compareTitle}</h3>
          <section class="scroll" aria-labelledby="compare-title" tabIndex={0}>
            <table>
              <thead>
                <tr>
                  <th scope="col">{words.pack}</th>
                  <th scope="col">{parts.size}</th>
                  <th scope="col" class="number">
                    {parts.chance}
                  </th>
                  <th scope="col">{words.verdict}</th>
                </tr>
              </thead>
              <tbody>
                {answer.packs.map(({ index, recommendation }) => (
                  <tr key={index}>
                    <th scope="row">{recommendation.chart}</th>
                    <td>{recommendation.pick}</td>
                    <td class="number">{percentText(recommendation.probability)}</td>
                    <td>{words.verdicts[recommendation.verdict]}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </section>
          {best.beforeNext === undefined ? null : <p>{sayReason(best.beforeNext, "comparisons", voice)}</p>}
        </div>
      ) : null}
      <Later {...props} part={RulersPart} delayMs={40} />
      <Later {...props} part={WordsPart} delayMs={90} />
      <Later {...props} part={EstimatesPart} delayMs={140} />
      <section class="panel screen-only" aria-labelledby="card-title">
        <h3 id="card-title">{words.cardTitle}</h3>
        <p class="hint">{words.cardHint}</p>
        <button type="button" class="print-button" onClick={() => window.print()}>
          {parts.print}
        </button>
      </section>
      <Cautions ranked={best} voice={voice} />
    </>
  );
}

/** A part of the answer that is drawn in a task of its own, so that no task is long. */
function Later(
  props: AnswerProps & {
    readonly part: (props: AnswerProps) => JSX.Element | null;
    readonly delayMs: number;
  },
): JSX.Element {
  const { part: Part, delayMs, answer, words, parts, dimensions, voice } = props;
  const later = useLater(answer, delayMs);
  const { lang, messages } = voice;
  return useMemo(
    () => (
      <Part {...{ words, parts, dimensions }} answer={later} voice={{ lang, unit: later.unit, messages }} />
    ),
    [Part, later, words, parts, dimensions, lang, messages],
  );
}

function RulersPart(props: AnswerProps): JSX.Element | null {
  if (props.answer.packs.length === 0) return null;
  return (
    <div class="panel">
      <Rulers {...props} />
    </div>
  );
}

function WordsPart({ answer, words, parts, voice }: AnswerProps): JSX.Element {
  const notJudged = answer.issues.filter(
    ({ field, issue }) => field === undefined && issue.code === "chart-not-judged",
  );
  return (
    <>
      {answer.packs.map((ranked, position) => (
        <PackWords key={ranked.index} {...{ ranked, words, voice }} isFirst={position === 0} />
      ))}
      {notJudged.length === 0 ? null : (
        <section class="panel">
          <h3>{words.notJudged}</h3>
          {notJudged.map(({ issue }) => (
            <ProblemLine key={issue.message} problem={sayIssue(issue, voice)} words={parts} />
          ))}
        </section>
      )}
    </>
  );
}

function EstimatesPart(props: AnswerProps): JSX.Element {
  return (
    <section class="panel" aria-labelledby="estimate-title">
      <h3 id="estimate-title">{props.words.estimateTitle}</h3>
      <Estimates {...props} />
    </section>
  );
}

function NoAnswer(props: AnswerProps & { readonly errors: ChooseAnswer["issues"] }): JSX.Element {
  const { answer, words, parts, voice, errors } = props;
  const known = errors.filter(({ issue }) => issue.code !== "person-readings-missing");
  const isEmpty = known.length === 0 && answer.person === undefined;
  const hasChart = answer.charts.length > 0;
  return (
    <section class="panel" aria-live="polite">
      <h3>{words.noAnswer}</h3>
      {isEmpty ? <p>{words.noReadings}</p> : null}
      {!hasChart && answer.state.shelf.length === 0 ? <p>{words.noCharts}</p> : null}
      {known.length === 0 ? null : (
        <>
          <p>{words.mend}</p>
          <ul>
            {known.map(({ field, issue }) => (
              <li key={`${field} ${issue.code}`}>
                <a
                  href={`#${field ?? ""}`}
                  onClick={(event) => {
                    event.preventDefault();
                    if (field !== undefined) document.getElementById(field)?.focus();
                  }}
                >
                  {sayIssue(issue, voice).message}
                </a>
              </li>
            ))}
          </ul>
        </>
      )}
      {answer.issues
        .filter(({ field, issue }) => field === undefined && issue.code !== "person-readings-missing")
        .map(({ issue }) => (
          <ProblemLine key={issue.message} problem={sayIssue(issue, voice)} words={parts} />
        ))}
    </section>
  );
}

interface HeadlineProps {
  readonly ranked: fit.RankedChart;
  readonly words: Words["choose"];
  readonly voice: Voice;
}

/** The size in large letters, and what it amounts to. */
export function Headline({ ranked, words, voice }: HeadlineProps): JSX.Element {
  const { recommendation } = ranked;
  const { chart, pick, verdict, probability, belt } = recommendation;
  const litres = recommendation.sizes.find(({ size }) => size === pick)?.capacityLitres;
  const chance = percentText(probability);
  return (
    <>
      <p class="headline-pack">{chart}</p>
      <p class="headline-size">{fill(takeWords(verdict, words), { size: pick })}</p>
      <p class="headline-facts">
        <strong class={`verdict ${verdict}`}>{words.verdicts[verdict]}</strong>
        <span>{fill(words.chance, { chance })}</span>
        {belt === undefined ? null : (
          <span>{fill(words.belt, { belt: belt.pick, chance: percentText(belt.probability) })}</span>
        )}
        {litres === undefined ? null : (
          <span>{fill(words.holds, { litres: new Intl.NumberFormat(voice.lang).format(litres) })}</span>
        )}
      </p>
      <p class="hint">{fill(words.chanceWords, { chance, size: pick })}</p>
    </>
  );
}

/** The words that go with a verdict. */
export function takeWords(verdict: fit.Verdict, words: Words["choose"]): string {
  if (verdict === "fits" || verdict === "two-sizes-fit") return words.take;
  return verdict === "measure-again" ? words.ahead : words.nearest;
}

interface PackWordsProps extends HeadlineProps {
  readonly isFirst: boolean;
}

function PackWords({ ranked, words, voice, isFirst }: PackWordsProps): JSX.Element {
  const { recommendation } = ranked;
  const next = recommendation.next.filter(({ code }) => !SAID_ONCE.has(code));
  const body = (
    <>
      <h4>{words.whyTitle}</h4>
      <ul>
        {recommendation.reasons.map((reason) => (
          <li key={`${reason.code} ${reason.sentence}`}>{sayReason(reason, "reasons", voice)}</li>
        ))}
      </ul>
      {next.length === 0 ? null : (
        <>
          <h4>{words.nextTitle}</h4>
          <ul>
            {next.map((step) => (
              <li key={`${step.code} ${step.sentence}`}>{sayReason(step, "nextSteps", voice)}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
  if (isFirst) {
    return (
      <section class="panel">
        <h3>
          {recommendation.chart}: {recommendation.pick}
        </h3>
        {body}
      </section>
    );
  }
  return (
    <section class="panel closed">
      <details>
        <summary>
          {recommendation.chart}: {recommendation.pick}, {words.verdicts[recommendation.verdict]}
        </summary>
        {body}
      </details>
    </section>
  );
}

/** One ruler for each dimension, all packs over one another. */
export function Rulers(props: AnswerProps & { readonly isCard?: boolean }): JSX.Element {
  const { answer, words, parts, dimensions, voice } = props;
  const { lang, unit } = voice;
  const isCard = props.isCard === true;
  const named = answer.packs.length > 1 && !isCard;
  const byChart = byIndex(answer);
  const judged = new Map<charts.ChartDimension, RulerGroup[]>();
  const packs = answer.packs.slice(0, isCard ? 1 : answer.packs.length);
  for (const { index, recommendation } of packs) {
    const chart = byChart.get(index);
    if (chart === undefined) continue;
    const tables = [
      { sizes: chart.sizes, fits: recommendation.sizes, pick: recommendation.pick, key: "sizes" },
      {
        sizes: chart.belts,
        fits: recommendation.belt?.sizes ?? [],
        pick: recommendation.belt?.pick,
        key: "belts",
      },
    ];
    for (const { sizes, fits, pick, key } of tables) {
      const order = new Set(fits.flatMap((fit) => fit.dimensions.map(({ dimension }) => dimension)));
      for (const dimension of order) {
        const rows = sizes.flatMap((size) => {
          const range = size.ranges[dimension];
          const fit = fits.find((entry) => entry.size === size.name);
          const part = fit?.dimensions.find((entry) => entry.dimension === dimension);
          if (range === undefined) return [];
          return [
            {
              key: size.name,
              name: size.name,
              fromMm: range.interval.from,
              toMm: range.interval.to,
              inferred: range.basis === "nominal",
              picked: size.name === pick,
              ...(part === undefined ? {} : { value: percentText(part.probability) }),
            },
          ];
        });
        if (rows.length === 0) continue;
        const groups = judged.get(dimension) ?? [];
        groups.push({
          key: `${index} ${key}`,
          ...(named ? { name: recommendation.chart } : {}),
          rows,
        });
        judged.set(dimension, groups);
      }
    }
  }
  return (
    <>
      {[...judged].map(([dimension, groups]) => {
        const estimate = estimateOf(answer, dimension, parts);
        const title = isCard
          ? dimensions[dimension]
          : fill(words.rulerTitle, { dimension: dimensions[dimension] });
        const sizes = groups
          .flatMap((group) =>
            group.rows.map((row) =>
              fill(words.rulerSize, {
                chart: group.name ?? answer.packs[0]?.recommendation.chart ?? "",
                size: row.name,
                from: end(row.fromMm, props),
                to: end(row.toMm, props),
              }),
            ),
          )
          .slice(0, 12)
          .join("; ");
        return (
          <Ruler
            key={dimension}
            title={title}
            label={
              estimate === undefined
                ? `${title}. ${sizes}.`
                : fill(words.rulerLabel, {
                    dimension: dimensions[dimension],
                    mean: lengthText(estimate.meanMm, unit, lang),
                    lower: lengthText(estimate.lowerMm, unit, lang),
                    upper: lengthText(estimate.upperMm, unit, lang),
                    sizes,
                  })
            }
            groups={groups}
            {...(estimate === undefined ? {} : { estimate })}
            unit={unit}
            lang={lang}
            words={parts}
            table={!isCard}
            isTight={isCard}
          />
        );
      })}
    </>
  );
}

function end(mm: number, { parts, voice }: AnswerProps): string {
  return mm > 0 && Number.isFinite(mm) ? lengthText(mm, voice.unit, voice.lang) : parts.open;
}

/**
 * What is drawn as "you": what the readings say. A hip whose girth the chart does not name is held against
 * the girth that was read.
 */
function estimateOf(
  { person }: ChooseAnswer,
  dimension: charts.ChartDimension,
  parts: Words["parts"],
): RulerEstimate | undefined {
  const wanted: readonly string[] =
    dimension === "unstated-hip-girth" ? ["hip-belt-girth", "hip-girth"] : [dimension];
  const found = person?.estimates.find((estimate) => wanted.includes(estimate.dimension));
  if (found === undefined) return undefined;
  const { lowerMm, upperMm } = found.coverage;
  return { name: parts.you, meanMm: found.mm, lowerMm, upperMm };
}

/** The estimates in words, with what was assumed and asked. */
export function Estimates({ answer, words, parts, dimensions, voice }: AnswerProps): JSX.Element {
  const { lang, unit } = voice;
  const { person } = answer;
  const beliefs = answer.packs[0]?.recommendation.beliefs ?? [];
  const questions = answer.issues.filter(
    ({ field, issue }) =>
      issue.severity === "warning" && (field === undefined || field.startsWith("readings-")),
  );
  const assumedWords = {
    tool: words.assumedTool,
    "measured-by": words.assumedBy,
    "landmarks-found-afresh": words.assumedAfresh,
  };
  const assumed = [...new Set(person?.estimates.flatMap(({ conditions }) => conditions.assumed) ?? [])];
  return (
    <>
      <ul>
        {person?.estimates.map((estimate) => {
          const belief = beliefs.find(
            ({ dimension, from }) => dimension === estimate.dimension && from === "readings-and-prior",
          );
          return (
            <li key={estimate.dimension} data-estimate={estimate.dimension}>
              {fill(estimate.readings.length === 1 ? words.estimateLineOne : words.estimateLine, {
                dimension: dimensions[estimate.dimension],
                mean: lengthText(estimate.mm, unit, lang),
                count: estimate.readings.length,
                uncertainty: lengthText(estimate.uncertaintyMm, unit, lang),
                lower: lengthText(estimate.coverage.lowerMm, unit, lang),
                upper: lengthNumber(estimate.coverage.upperMm, unit, lang),
              })}{" "}
              {belief === undefined
                ? null
                : fill(words.weighed, {
                    mean: lengthText(belief.meanMm, unit, lang),
                    sd: lengthText(belief.sdMm, unit, lang),
                  })}
            </li>
          );
        })}
      </ul>
      {assumed.length === 0 ? null : (
        <p>{fill(words.assumed, { list: assumed.map((name) => assumedWords[name]).join(", ") })}</p>
      )}
      {person?.prior === undefined ? null : (
        <p class="hint screen-only">
          {fill(words.survey, {
            label: sayText(person.prior.label, voice),
            source: sayText(person.prior.source, voice),
            caveat: sayText(person.prior.caveat, voice),
          })}
        </p>
      )}
      {questions.length === 0 ? null : (
        <div class="screen-only">
          <h4>{words.questions}</h4>
          {questions.map(({ field, issue }) => (
            <ProblemLine key={`${field} ${issue.code}`} problem={sayIssue(issue, voice)} words={parts} />
          ))}
        </div>
      )}
    </>
  );
}

function Cautions(props: { readonly ranked: fit.RankedChart; readonly voice: Voice }): JSX.Element {
  const said = props.ranked.recommendation.next.filter(({ code }) => SAID_ONCE.has(code));
  return (
    <div class="note warning screen-only">
      {said.map((step) => (
        <p key={step.code}>{sayReason(step, "nextSteps", props.voice)}</p>
      ))}
    </div>
  );
}

function byIndex({ charts }: ChooseAnswer): ReadonlyMap<number, charts.SizeChart> {
  return new Map(charts.map((chart, index) => [index, chart]));
}
