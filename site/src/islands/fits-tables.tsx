import type { JSX } from "preact";
import type { coverage } from "tapewise";
import type { Lang } from "../layouts/languages.ts";
import { lengthText } from "../parts/lengths.ts";
import type { Voice } from "../parts/say.ts";
import { bandText, shareText } from "../parts/share.ts";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";
import type { FitsFigure } from "../work/fits-answer.ts";

interface TableProps {
  readonly coverage: coverage.Coverage;
  readonly figures: readonly FitsFigure[];
  readonly chart: string;
  readonly words: Words["fits"];
  readonly dimensions: Words["dimensions"];
  readonly voice: Voice;
}

interface Row {
  readonly name: string;
  readonly of: (one: coverage.Coverage) => coverage.Share;
  readonly isInner: boolean;
}

const NONE: coverage.Share = { share: 0 };

/** Whom the chart serves and where it leaves people out: everybody, then women and men. */
export function ServedTable({
  coverage: all,
  figures,
  chart,
  words,
  dimensions,
  voice,
}: TableProps): JSX.Element {
  const { lang, unit } = voice;
  const groups = [all, ...all.parts.map((part) => part.coverage)];
  const heads = all.parts.length === 0 ? [words.all] : [words.all, words.whom.women, words.whom.men];
  const joint = ["served", "byOne", "bySeveral", "byNone"] as const;
  const length = (mm: number) => lengthText(mm, unit, lang);
  const rows: readonly Row[] = [
    ...joint.map((key) => ({
      name: words.rows[key],
      of: (one: coverage.Coverage) => one[key],
      isInner: key === "byOne" || key === "bySeveral",
    })),
    ...all.outside.flatMap((outside, place) => {
      const dimension = dimensions[outside.dimension];
      const covered = figures[place]?.covered ?? [];
      const [low, high] = [covered[0]?.fromMm, covered.at(-1)?.toMm];
      return [
        ...(outside.below.share > 0 && low !== undefined
          ? [
              {
                name: fill(words.rows.below, { dimension, from: length(low) }),
                of: (one: coverage.Coverage) => one.outside[place]?.below ?? NONE,
                isInner: true,
              },
            ]
          : []),
        ...outside.gaps.map(({ within }, gap) => ({
          name: fill(words.rows.gap, { dimension, from: length(within.from), to: length(within.to) }),
          of: (one: coverage.Coverage) => one.outside[place]?.gaps[gap]?.people ?? NONE,
          isInner: true,
        })),
        ...(outside.above.share > 0 && high !== undefined
          ? [
              {
                name: fill(words.rows.above, { dimension, to: length(high) }),
                of: (one: coverage.Coverage) => one.outside[place]?.above ?? NONE,
                isInner: true,
              },
            ]
          : []),
      ];
    }),
  ];
  return (
    <section class="scroll" aria-labelledby="served-title" tabIndex={0}>
      <table>
        <caption id="served-title">{fill(words.tableTitle, { chart })}</caption>
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
          {rows.map(({ name, of, isInner }) => (
            <tr key={name} class={isInner ? "inner" : undefined}>
              <th scope="row">{name}</th>
              {groups.map((group, place) => (
                <td key={heads[place]} class="number">
                  {place === 0 ? <Banded share={of(group)} lang={lang} /> : shareText(of(group).share, lang)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Each size, and for whom it is the only one. */
export function SizesTable({ coverage: all, words, voice }: TableProps): JSX.Element {
  const { lang } = voice;
  return (
    <section class="scroll" aria-labelledby="sizes-title" tabIndex={0}>
      <table>
        <caption id="sizes-title">{words.sizesTitle}</caption>
        <thead>
          <tr>
            <th scope="col">{words.stockSize}</th>
            <th scope="col" class="number">
              {words.fitsHead}
            </th>
            <th scope="col" class="number">
              {words.onlyHead}
            </th>
          </tr>
        </thead>
        <tbody>
          {all.sizes.map(({ size, served, only }) => (
            <tr key={size}>
              <th scope="row">{size}</th>
              <td class="number">
                <Banded share={served} lang={lang} />
              </td>
              <td class="number">{shareText(only.share, lang)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** A share, and in brackets how far the size of the survey lets it be off. */
function Banded({ share, lang }: { readonly share: coverage.Share; readonly lang: Lang }): JSX.Element {
  const band = bandText(share, lang);
  return (
    <>
      <span class="share">{shareText(share.share, lang)}</span>
      {band === undefined ? null : <span class="band"> {band}</span>}
    </>
  );
}
