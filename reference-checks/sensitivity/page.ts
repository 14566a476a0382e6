import type { Assumption } from "./assumptions.ts";
import type { Effect, EndEffect, PersonEffect } from "./study.ts";
import { drawTornado } from "./tornado.ts";

const percent = (share: number): string => (100 * share).toFixed(1).replace(/^-(?=0\.0$)/, "");
const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
const table = (headers: readonly string[], rows: readonly (readonly string[])[]): string =>
  [line(headers), line(headers.map(() => "---")), ...rows.map(line)].join("\n");
const toolOf = ({ tool }: Assumption): string =>
  tool === "tape" ? "" : tool === "short-rule" ? " (short rule)" : " (cord)";
const nameOf = (assumption: Assumption): string => `${assumption.name}${toolOf(assumption)}`;
const rangeOf = ({ now, low, high, unit }: Assumption): string =>
  `${now}; ${low} to ${high}${unit === "" ? "" : ` ${unit}`}`;

const endOf = ({ ends }: Effect, end: "low" | "high"): EndEffect | undefined =>
  ends.find((one) => one.end === end);
const pair = (effect: Effect, figure: (end: EndEffect) => number | undefined): string =>
  (["low", "high"] as const)
    .map((end) => {
      const at = endOf(effect, end);
      const value = at === undefined ? undefined : figure(at);
      return value === undefined ? "–" : percent(value);
    })
    .join(" / ");

/** By how much the worse end raises the share of wrong sizes. */
function harmOf({ wrong, ends }: Effect): number {
  return Math.max(...ends.map(({ wrongIfSo, wrongIfTold }) => (wrongIfSo ?? wrongIfTold) - wrong));
}

/** Facts in the order of what not knowing them costs. */
function mostHarmful(effects: readonly Effect[]): readonly Effect[] {
  return effects.filter(({ assumption }) => assumption.isFact).toSorted((a, b) => harmOf(b) - harmOf(a));
}

const sentence = (effects: readonly Effect[], figure: (effect: Effect) => number): string =>
  effects
    .toSorted((a, b) => figure(b) - figure(a))
    .slice(0, 4)
    .map((effect) => `${nameOf(effect.assumption)}, up to ${percent(figure(effect))} %`)
    .join("; ");

function populationFigures(effects: readonly Effect[]): readonly string[] {
  const facts = effects.filter(({ assumption }) => assumption.isFact && assumption.tool === "tape");
  const [first] = facts;
  if (first === undefined) return [];
  const changed = (effect: Effect): number =>
    Math.max(...effect.ends.map(({ picksChanged }) => picksChanged));
  const so = (effect: Effect): number => Math.max(...effect.ends.map(({ wrongIfSo = 0 }) => wrongIfSo));
  const tapes = effects.filter(({ assumption }) => assumption.tool === "tape");
  return [
    drawTornado({
      name: "picks-changed",
      title: "Share of picks that change when the library assumes something else, in %",
      description: `Bars from 0, one pair for each assumption. The longest: ${sentence(tapes, changed)}.`,
      base: 0,
      bars: tapes.map((effect) => ({
        label: nameOf(effect.assumption),
        low: 100 * (endOf(effect, "low")?.picksChanged ?? 0),
        high: 100 * (endOf(effect, "high")?.picksChanged ?? 0),
      })),
    }),
    drawTornado({
      name: "wrong-if-so",
      title: "Share of wrong sizes where the world is otherwise and nobody knows, in %",
      description: `Bars from ${percent(first.wrong)} %, which is the share where all is as assumed. The longest: ${sentence(facts, so)}.`,
      base: 100 * first.wrong,
      bars: facts.map((effect) => ({
        label: nameOf(effect.assumption),
        low: 100 * (endOf(effect, "low")?.wrongIfSo ?? 0),
        high: 100 * (endOf(effect, "high")?.wrongIfSo ?? 0),
      })),
    }),
  ];
}

/** Of the charts of a person the one whose pick is the least sure and yet likely. */
function closest(effects: readonly PersonEffect[]): readonly PersonEffect[] {
  const names = [...new Set(effects.map(({ person }) => person))];
  return names.flatMap((person) =>
    effects
      .filter((one) => one.person === person && one.base.probability > 0.4)
      .toSorted((a, b) => a.base.probability - b.base.probability)
      .slice(0, 1),
  );
}

function personFigures(
  effects: readonly PersonEffect[],
): readonly { readonly heading: string; readonly figure: string; readonly rows: string }[] {
  return closest(effects).map(({ person, chart, base, rows }, i) => {
    const bars = rows.map(({ assumption, low, high }) => ({
      label: nameOf(assumption),
      low: 100 * low.probability,
      high: 100 * high.probability,
    }));
    const shown = chart.replace("&", "and");
    return {
      heading: `${person[0]?.toUpperCase()}${person.slice(1)}: ${shown}`,
      figure: drawTornado({
        name: `person-${i + 1}`,
        title: `Stated chance of the pick of ${person}, ${shown}, in %`,
        description: `Bars from ${percent(base.probability)} %, the chance stated for ${base.pick} where nothing is moved, one pair for each assumption.`,
        base: 100 * base.probability,
        bars,
      }),
      rows: table(
        ["assumption", `low: pick, chance in %`, `now`, "high"],
        rows.map(({ assumption, low, high }) => [
          nameOf(assumption),
          `${low.pick} ${percent(low.probability)}`,
          `${base.pick} ${percent(base.probability)}`,
          `${high.pick} ${percent(high.probability)}`,
        ]),
      ),
    };
  });
}

/** For each person and chart: the pick, its chance, and which assumptions change it. */
function picksTable(effects: readonly PersonEffect[]): string {
  return table(
    ["person", "chart", "pick", "stated, %", "lowest and highest stated, %", "another pick with"],
    effects.map(({ person, chart, base, rows }) => {
      const all = rows.flatMap(({ low, high }) => [low.probability, high.probability]);
      const others = rows.flatMap(({ assumption, low, high }) =>
        (
          [
            ["low", low],
            ["high", high],
          ] as const
        ).flatMap(([end, at]) =>
          at.pick === base.pick ? [] : [`${nameOf(assumption)}, ${end}: ${at.pick}`],
        ),
      );
      return [
        person,
        chart,
        base.pick,
        percent(base.probability),
        `${percent(Math.min(base.probability, ...all))} to ${percent(Math.max(base.probability, ...all))}`,
        others.join("; ") || "–",
      ];
    }),
  );
}

/** How the study was made, and what it found. */
export interface Study {
  readonly people: number;
  readonly seed: number;
  readonly charts: number;
  readonly effects: readonly Effect[];
  readonly persons: readonly PersonEffect[];
}

function bodyOf({ people, seed, charts, effects, persons }: Study, mark: string): string {
  const [worst, second, third] = mostHarmful(effects);
  const named = [worst, second, third].flatMap((effect) =>
    effect === undefined
      ? []
      : [`${nameOf(effect.assumption)} (${percent(harmOf(effect))} points more wrong sizes)`],
  );
  return [
    `Every default of the error of readings is an assumption, and so are parts of the prior. This page tells what they carry: each
is moved over its plausible range while all others stay, and the choices are made again.`,
    `${mark}${people} people of the reference population, half of them women, take three readings of their torso with a tape, by
themselves, bones found once, rounded to half centimetres (with a cord or a short rule where it is about those), and are held against ${charts} charts of the
demo that go by torso length. Seed ${seed}; the same people and the same luck in every row. A size is wrong where it does not fit and another would.
With the defaults true, ${percent(effects[0]?.wrong ?? 0)} % are wrong.`,
    "## What matters most",
    `${mark}What costs most where it is otherwise than assumed and nobody knows: ${named.join("; ")}.`,
    ...populationFigures(effects),
    `${mark}${table(
      [
        "assumption",
        "now; range",
        "picks changed, % (low / high)",
        "mean change of the stated chance, points",
        "wrong if told so, %",
        "wrong if it is so, %",
        "stated less observed, points",
      ],
      effects.map((effect) => [
        nameOf(effect.assumption),
        rangeOf(effect.assumption),
        pair(effect, ({ picksChanged }) => picksChanged),
        pair(effect, ({ statedChange }) => statedChange),
        pair(effect, ({ wrongIfTold }) => wrongIfTold),
        pair(effect, ({ wrongIfSo }) => wrongIfSo),
        pair(effect, ({ overstatedIfSo }) => overstatedIfSo),
      ]),
    )}`,
    `Two questions are asked. **Told so**: the library takes the other figure for granted while the world stays as it was; the picks change by
what the figure carries. **It is so**: the world is like that, and the library keeps its default; the share of wrong sizes
and the difference of stated and observed chances tell what a wrong default costs. Rules of choice cannot be so, and have a dash.`,
    "## Single people",
    `${mark}${picksTable(persons)}`,
    ...personFigures(persons).flatMap(({ heading, figure, rows }) => [
      `### ${heading}`,
      figure,
      `${mark}${rows}`,
    ]),
    "## Why these ranges, and how to measure",
    "In the order of what not knowing costs:",
    `${mark}${table(
      ["assumption", "why this range", "how to measure it"],
      [...mostHarmful(effects), ...effects.filter(({ assumption }) => !assumption.isFact)].map(
        ({ assumption }) => [nameOf(assumption), assumption.why, assumption.plan],
      ),
    )}`,
    `\`npm run check:sensitivity\` makes the study anew and prints the table; with \`-- --write\` it writes this page.`,
  ].join("\n\n");
}

export function sensitivityReport(study: Study): string {
  return `# What each assumption carries\n\n${bodyOf(study, "")}\n`;
}

export function sensitivityPage(study: Study): string {
  return `---
title: What each assumption carries
description: How choices change when an assumption behind them is moved, which assumptions matter most, and how to measure them.
sidebar:
  order: 7
---

${bodyOf(study, "<!-- from: reference-checks/sensitivity/RESULTS.md -->\n\n")}
`;
}
