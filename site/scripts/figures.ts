import { leadingNumber, tableUnder } from "./results.ts";

/** A picture of a page, with the table that says the same. */
export interface Figure {
  /** The name between the marks of the page that holds it. */
  readonly name: string;
  /** Markup without empty lines, so that a markdown page takes it as one block. */
  readonly markup: string;
}

const SECTION = "Real people, dithered";

// Colours of the reader's theme; where a page has none of these names, the text's own colour.
const INK = "var(--sl-color-text, currentColor)";
const QUIET = "var(--sl-color-gray-3, currentColor)";
const ACCENT = "var(--sl-color-text-accent, currentColor)";

/** Every picture of the site, drawn from the page of measured results. */
export function drawFigures(results: string): readonly Figure[] {
  return [calibration(results), wrongSizes(results), misstated(results)];
}

/** Stated against observed, by tenth of the forecasts. */
function calibration(results: string): Figure {
  const { rows } = tableUnder(results, SECTION, "Stated against observed by tenth");
  const series = [
    { label: "no prior", column: 1, colour: QUIET, mark: square },
    { label: "cut and stature", column: 3, colour: ACCENT, mark: circle },
  ].map((each) => ({
    ...each,
    points: rows.map((row) => {
      const [stated, observed] = (row[each.column] ?? "").split("/");
      return { stated: leadingNumber(stated), observed: leadingNumber(observed) };
    }),
  }));
  const least = 35;
  const x = (value: number): number => 60 + ((value - least) / (100 - least)) * 400;
  const y = (value: number): number => 350 - ((value - least) / (100 - least)) * 320;
  const ticks = [40, 50, 60, 70, 80, 90, 100];
  const parts = [
    line(x(least), y(least), x(100), y(100), QUIET, "4 4"),
    ...ticks.flatMap((tick) => [
      line(x(tick), 350, x(tick), 355, INK),
      text(x(tick), 372, `${tick}`, "middle"),
      line(55, y(tick), 60, y(tick), INK),
      text(50, y(tick) + 4, `${tick}`, "end"),
    ]),
    line(60, 350, 460, 350, INK),
    line(60, 30, 60, 350, INK),
    text(260, 394, "stated chance to fit, %", "middle"),
    text(60, 18, "observed, %", "start"),
    text(x(58), y(58) + 26, "stated = observed", "start"),
    ...series.flatMap(({ points, colour, mark }) =>
      points.map(({ stated, observed }) => mark(x(stated), y(observed), colour)),
    ),
    ...series.flatMap(({ label, colour, mark }, place) => [
      mark(330, 250 + place * 22, colour),
      text(344, 254 + place * 22, label, "start"),
    ]),
  ];
  return {
    name: "calibration",
    markup: picture("calibration", 500, 400, parts, {
      title: "Stated chances to fit against how often the size did fit",
      description:
        "Ten points for each of two rules, one for each tenth of the forecasts. With cut and stature all points lie on the line where stated and observed are equal. Without a prior the least sure tenth lies well above it: those sizes fitted more often than was said.",
    }),
  };
}

/** Share of wrong sizes by rule. */
function wrongSizes(results: string): Figure {
  const { heading, rows } = tableUnder(results, SECTION, "Wrong sizes among those");
  const all = rows.find((row) => row[0] === "all") ?? [];
  const rules = ["first match", "nearest centre", "no prior", "cut", "cut + stature", "floor"];
  const bars = rules.map((rule) => ({ rule, value: leadingNumber(all[heading.indexOf(rule)]) }));
  const x = (value: number): number => 130 + value * 32;
  const parts = bars.flatMap(({ rule, value }, place) => {
    const top = 14 + place * 30;
    const colour = rule === "cut + stature" ? ACCENT : QUIET;
    return [
      text(122, top + 15, rule, "end"),
      `<rect x="${x(0)}" y="${top}" width="${round(x(value) - x(0))}" height="20" fill="${colour}"/>`,
      text(x(value) + 6, top + 15, `${value.toFixed(2)} %`, "start"),
    ];
  });
  return {
    name: "wrong-sizes",
    markup: picture("wrong-sizes", 500, 200, parts, {
      title: "Wrong sizes by rule, in % of those whom some size fits",
      description: `Six bars: ${bars.map(({ rule, value }) => `${rule} ${value.toFixed(2)} %`).join(", ")}. The floor is the least that any rule can reach with the same readings.`,
    }),
  };
}

/** What is stated and what comes true where the error is stated wrongly. */
function misstated(results: string): Figure {
  const { rows } = tableUnder(results, SECTION, "Where the stated error is not the true one");
  const x = (value: number): number => 150 + (value - 82) * 30;
  const parts = rows.flatMap((row, place) => {
    const [truth = "", said = ""] = row;
    const [stated, observed] = [leadingNumber(row[2]), leadingNumber(row[3])];
    const middle = 40 + place * 24;
    return [
      text(140, middle + 4, `true ${truth}, stated ${said}`, "end"),
      line(x(stated), middle, x(observed), middle, QUIET),
      square(x(stated), middle, QUIET),
      circle(x(observed), middle, ACCENT),
    ];
  });
  const bottom = 40 + rows.length * 24;
  const axis = [82, 84, 86, 88, 90, 92].flatMap((tick) => [
    line(x(tick), bottom, x(tick), bottom + 5, INK),
    text(x(tick), bottom + 20, `${tick} %`, "middle"),
  ]);
  const key = [
    square(160, 14, QUIET),
    text(172, 18, "stated", "start"),
    circle(250, 14, ACCENT),
    text(262, 18, "observed", "start"),
  ];
  return {
    name: "misstated",
    markup: picture(
      "misstated",
      500,
      bottom + 30,
      [...parts, line(x(82), bottom, x(92), bottom, INK), ...axis, ...key],
      {
        title: "Stated and observed chances to fit where the error of readings is stated wrongly",
        description:
          "Nine rows, one for each pair of true and stated error. Where both are the same, stated and observed nearly meet. Where the error is stated too small, more is promised than comes true; where it is stated too large, less.",
      },
    ),
  };
}

interface Words {
  readonly title: string;
  readonly description: string;
}

function picture(
  name: string,
  width: number,
  height: number,
  parts: readonly string[],
  words: Words,
): string {
  return [
    "<figure>",
    `<svg role="img" aria-labelledby="${name}-title ${name}-desc" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" style="max-width: 100%; height: auto" xmlns="http://www.w3.org/2000/svg">`,
    `<title id="${name}-title">${words.title}</title>`,
    `<desc id="${name}-desc">${words.description}</desc>`,
    ...parts,
    "</svg>",
    `<figcaption>${words.title}. The table below says the same.</figcaption>`,
    "</figure>",
  ].join("\n");
}

function line(x1: number, y1: number, x2: number, y2: number, colour: string, dash?: string): string {
  const dashes = dash === undefined ? "" : ` stroke-dasharray="${dash}"`;
  return `<line x1="${round(x1)}" y1="${round(y1)}" x2="${round(x2)}" y2="${round(y2)}" stroke="${colour}"${dashes}/>`;
}

function text(x: number, y: number, words: string, anchor: "start" | "middle" | "end"): string {
  return `<text x="${round(x)}" y="${round(y)}" text-anchor="${anchor}" font-size="13" fill="${INK}">${words}</text>`;
}

function circle(x: number, y: number, colour: string): string {
  return `<circle cx="${round(x)}" cy="${round(y)}" r="5" fill="${colour}"/>`;
}

function square(x: number, y: number, colour: string): string {
  return `<rect x="${round(x - 4)}" y="${round(y - 4)}" width="8" height="8" fill="none" stroke="${colour}" stroke-width="2"/>`;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
