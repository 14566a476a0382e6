import type { JSX } from "preact";
import { sayReason } from "../parts/say.ts";
import { type AnswerProps, Estimates, Headline, Rulers } from "./choose-answer-view.tsx";

/** The page that is printed: the choice, its figures, and what to look at when the pack arrives. */
export function ChooseCard(props: AnswerProps): JSX.Element | null {
  const { answer, words, voice, dimensions } = props;
  const [best] = answer.packs;
  if (best === undefined) return null;
  const { recommendation } = best;
  const written = Object.entries(answer.state.readings)
    .map(
      ([dimension, texts]) =>
        [dimension as keyof typeof dimensions, texts.filter((text) => text.trim() !== "")] as const,
    )
    .filter(([, texts]) => texts.length > 0);
  const told = new Set(["check-on-body", "see-fitter"]);
  return (
    <section class="paper-only card">
      <div class="tape" />
      <div class="card-head">
        <p class="card-title">{words.cardHead}</p>
        <p class="card-line">{words.cardName}</p>
        <p class="card-line">{words.cardDate}</p>
      </div>
      <Headline ranked={best} words={words} voice={voice} />
      <Rulers {...props} isCard />
      <div class="card-columns">
        <div>
          <p class="label">{words.whyTitle}</p>
          <ul>
            {recommendation.reasons.slice(0, 4).map((reason) => (
              <li key={reason.code}>{sayReason(reason, "reasons", voice)}</li>
            ))}
            {recommendation.next
              .filter(({ code }) => !told.has(code))
              .slice(0, 2)
              .map((step) => (
                <li key={step.code}>{sayReason(step, "nextSteps", voice)}</li>
              ))}
          </ul>
          <p class="label">{words.cardOnBody}</p>
          {recommendation.next
            .filter(({ code }) => told.has(code))
            .map((step) => (
              <p key={step.code}>{sayReason(step, "nextSteps", voice)}</p>
            ))}
        </div>
        <div>
          <p class="label">{words.cardReadings}</p>
          <ul>
            {written.map(([dimension, texts]) => (
              <li key={dimension}>
                {dimensions[dimension]}: {texts.join("; ")}
              </li>
            ))}
          </ul>
          <Estimates {...props} />
        </div>
      </div>
      <p class="hint">{words.cardMade}</p>
    </section>
  );
}
