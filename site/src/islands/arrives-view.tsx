import type { JSX } from "preact";
import { afterwards } from "tapewise";
import { lengthText } from "../parts/lengths.ts";
import { percentText } from "../parts/percent.ts";
import { Ruler } from "../parts/ruler.tsx";
import type { Voice } from "../parts/say.ts";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";
import type { ArrivesAnswer, LengthShown } from "../work/arrives-answer.ts";

/** What the parts of the page are made of. */
export interface ArrivesViewProps {
  readonly answer: ArrivesAnswer;
  readonly words: Words["arrives"];
  readonly parts: Words["parts"];
  readonly dimensions: Words["dimensions"];
  readonly voice: Voice;
  readonly texts: afterwards.BodyCheckTexts;
}

/** A step in the words of the language. */
export function writeStep(
  step: afterwards.BodyCheckStep,
  { unit, lang }: Voice,
  texts: afterwards.BodyCheckTexts,
): afterwards.WrittenStep {
  const written = afterwards.fillBodyCheck(step, unit, texts);
  if (lang === "en" || unit === "cm") return written;
  const inches = (text: string) => text.replace(/(\d) in\b/g, "$1 Zoll");
  return {
    sentences: written.sentences.map(inches),
    choices: written.choices.map(({ id, answer, tells }) => ({
      id,
      answer: inches(answer),
      tells: inches(tells),
    })),
  };
}

/** What is worn, by whom, in a line. */
export function SetupLine({ answer, words, dimensions, voice }: ArrivesViewProps): JSX.Element {
  const { chart, size, belt, length } = answer;
  if (chart === undefined || size === undefined) return <p>{words.blocked.chart}</p>;
  return (
    <>
      <p class="setup-line">
        {[
          fill(words.setupLine, { chart: chart.chart, size }),
          ...(belt === undefined ? [] : [fill(words.setupBelt, { belt })]),
        ].join(", ")}
      </p>
      {length === undefined ? null : (
        <p class="hint capital">{lengthLine(length, words, dimensions, voice)}</p>
      )}
    </>
  );
}

function lengthLine(
  { dimension, length, lowerMm, upperMm, isKnown }: LengthShown,
  words: Words["arrives"],
  dimensions: Words["dimensions"],
  { unit, lang }: Voice,
): string {
  if (!isKnown) return fill(words.setupUnknown, { dimension: dimensions[dimension] });
  return fill(words.setupKnown, {
    dimension: dimensions[dimension],
    mean: lengthText(length.meanMm, unit, lang),
    lower: lengthText(lowerMm, unit, lang),
    upper: lengthText(upperMm, unit, lang),
  });
}

/** What was seen, look by look, and what each answer tells. */
export function SeenList({ answer, words, voice, texts }: ArrivesViewProps): JSX.Element {
  const isEmpty = answer.looks.every(({ answers }) => answers.length === 0);
  return (
    <section class="panel" aria-labelledby="seen-title">
      <h2 id="seen-title" class="ruled">
        {words.seenTitle}
      </h2>
      {isEmpty ? <p class="hint">{words.seenNone}</p> : null}
      {answer.looks.map(({ answers }, index) => (
        <div key={index === 0 ? "first" : "second"}>
          {answer.looks.length < 2 ? null : <h3>{index === 0 ? words.firstLook : words.secondLook}</h3>}
          <ol class="seen">
            {answers.map(({ item, answer: id }) => {
              const choice = writeStep({ kind: "ask", item }, voice, texts).choices.find(
                (one) => one.id === id,
              );
              return (
                <li key={item}>
                  <strong>{words.items[item]}</strong>
                  {choice?.answer}
                  <p class="hint">{choice?.tells}</p>
                </li>
              );
            })}
          </ol>
        </div>
      ))}
    </section>
  );
}

/** What the check comes to. */
export function Result(
  props: ArrivesViewProps & { readonly head?: { current: HTMLHeadingElement | null } },
): JSX.Element | null {
  const { answer, words, voice, texts, head } = props;
  const step = answer.looks.at(-1)?.step;
  if (step === undefined || step.kind === "ask") return null;
  const { sentences } = writeStep(step, voice, texts);
  const percent = (probability: number) => percentText(probability);
  return (
    <div class={`result ${step.kind}`} aria-live="polite">
      <h3
        {...(head === undefined ? {} : { ref: head })}
        class="headline-size result-head"
        tabIndex={-1}
        data-step={step.kind}
      >
        {titleOf(step, words)}
      </h3>
      {step.kind === "exchange" ? (
        <>
          <p>{fill(words.because, { reason: words.reasons[step.reason] })}</p>
          <p>
            {fill(words.sure, {
              from: step.from,
              to: step.to,
              probability: percent(step.probability),
              fromProbability: percent(step.fromProbability),
            })}
          </p>
        </>
      ) : step.kind === "adjust" ? (
        <ol>
          {sentences.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ol>
      ) : (
        sentences.map((sentence) => <p key={sentence}>{sentence}</p>)
      )}
      {step.kind === "sits-right" && step.probability !== undefined ? (
        <p>{fill(words.sureRight, { probability: percent(step.probability) })}</p>
      ) : null}
    </div>
  );
}

function titleOf(
  step: Exclude<afterwards.BodyCheckStep, { readonly kind: "ask" }>,
  words: Words["arrives"],
): string {
  switch (step.kind) {
    case "adjust":
      return words.adjust;
    case "exchange":
      return fill(step.part === "belt" ? words.exchangeBelt : words.exchange, {
        from: step.from,
        to: step.to,
      });
    case "sits-right":
      return fill(words.sitsRight, { size: step.size });
    case "see-fitter":
      return words.fitter;
  }
}

/** The sizes on the ruler: the one that is worn, what was read, and after an exchange how likely each fits. */
export function ArrivesRuler(props: ArrivesViewProps & { readonly isCard?: boolean }): JSX.Element | null {
  const { answer, words, parts, dimensions, voice, isCard } = props;
  const { lang, unit } = voice;
  const step = answer.looks.at(-1)?.step;
  const exchange = step?.kind === "exchange" ? step : undefined;
  const isBelt = exchange?.part === "belt";
  const known = isBelt ? answer.girth : answer.length;
  if (known === undefined || answer.chart === undefined) return null;
  const holders = isBelt && answer.belt !== undefined ? answer.chart.belts : answer.chart.sizes;
  const worn = isBelt && answer.belt !== undefined ? answer.belt : answer.size;
  const rows = holders.flatMap(({ name, ranges }) => {
    const range = ranges[known.dimension];
    if (range === undefined) return [];
    const seen = exchange?.sizes.find(({ size }) => size === name);
    return [
      {
        key: name,
        name,
        fromMm: range.interval.from,
        toMm: range.interval.to,
        inferred: range.basis === "nominal",
        picked: name === (exchange?.to ?? worn),
        ...(seen === undefined ? {} : { value: percentText(seen.probability) }),
      },
    ];
  });
  const dimension = dimensions[known.dimension];
  const end = (mm: number) => (mm > 0 && Number.isFinite(mm) ? lengthText(mm, unit, lang) : parts.open);
  const { length, lowerMm, upperMm, isKnown } = known;
  const estimate = { name: parts.you, meanMm: length.meanMm, lowerMm, upperMm };
  const figure = (
    <Ruler
      title={fill(exchange === undefined ? words.rulerPlain : words.rulerTitle, { dimension })}
      label={fill(words.rulerLabel, {
        dimension,
        estimate: isKnown
          ? fill(words.rulerEstimate, {
              mean: lengthText(length.meanMm, unit, lang),
              lower: lengthText(lowerMm, unit, lang),
              upper: lengthText(upperMm, unit, lang),
            })
          : words.rulerNone,
        sizes: rows
          .slice(0, 12)
          .map(({ name, fromMm, toMm }) =>
            fill(words.rulerSize, { size: name, from: end(fromMm), to: end(toMm) }),
          )
          .join("; "),
      })}
      groups={[{ key: "sizes", rows }]}
      {...(isKnown ? { estimate } : {})}
      unit={unit}
      lang={lang}
      words={parts}
      most={24}
      table={isCard !== true}
      isTight={isCard === true}
    />
  );
  return isCard === true ? figure : <div class="panel">{figure}</div>;
}

/** The page that is printed: what is worn, what was seen, what it came to. */
export function ArrivesCard(props: ArrivesViewProps): JSX.Element | null {
  const { answer, words, voice, texts } = props;
  if (answer.looks.length === 0) return null;
  return (
    <section class="paper-only card">
      <div class="tape" />
      <div class="card-head">
        <p class="card-title">{words.cardHead}</p>
        <p class="card-line">{words.cardName}</p>
        <p class="card-line">{words.cardDate}</p>
      </div>
      <SetupLine {...props} />
      <Result {...props} />
      <ArrivesRuler {...props} isCard />
      <p class="label">{words.seenTitle}</p>
      {answer.looks.map(({ answers }, index) => (
        <ul key={index === 0 ? "first" : "second"}>
          {answers.map(({ item, answer: id }) => (
            <li key={item}>
              {words.items[item]}:{" "}
              {writeStep({ kind: "ask", item }, voice, texts).choices.find((one) => one.id === id)?.answer}
            </li>
          ))}
        </ul>
      ))}
      <p class="hint">{words.cardMade}</p>
    </section>
  );
}
