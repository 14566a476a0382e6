import { drawStudyFigure, readingsFigure, studyFigures, summariseStudy } from "@tapewise/measurement";
import { expect, test } from "vitest";
import { ANN_AND_BEN, studyOf } from "../class-study.ts";
import { expectStudyPicture } from "./picture.ts";

const figures = studyFigures(ANN_AND_BEN, summariseStudy(ANN_AND_BEN), "cm");

test.each(figures.map((figure) => [figure.kind, figure] as const))("%s is a picture", (kind, figure) => {
  const svg = drawStudyFigure(figure, "one");
  expectStudyPicture(svg, "one");
  expect(drawStudyFigure(figure, "one")).toBe(svg);
  expect(drawStudyFigure(figure)).toContain(`id="study-${kind}-title"`);
});

test("a mark for each reading, and one in the legend for each measurer", () => {
  const [readings] = figures;
  const svg = readings === undefined ? "" : drawStudyFigure(readings);
  expect(svg.match(/<circle /g)).toHaveLength(8 + 1);
  expect(svg.match(/<rect /g)).toHaveLength(8 + 1);
});

test("longer readings stand further right, in proportion", () => {
  const svg = drawStudyFigure(readingsFigure(studyOf({ mia: { Ann: [400, 410, 430] } }), "cm"));
  const [one = 0, two = 0, three = 0] = [...svg.matchAll(/<circle cx="([\d.]+)"/g)].map(([, x]) => Number(x));
  expect((three - two) / (two - one)).toBeCloseTo(2, 2);
});

test("the bar of half of the variance is half as long as all", () => {
  const [, , errors] = figures;
  if (errors?.kind !== "errors") throw new Error("no bars");
  const svg = drawStudyFigure({
    ...errors,
    bars: [
      { label: "half", sdMm: 3, share: 0.5 },
      { label: "all", sdMm: 4, share: 1 },
    ],
  });
  const [half = 0, all = 0] = [...svg.matchAll(/<rect [^>]*width="([\d.]+)"/g)].map(([, wide]) =>
    Number(wide),
  );
  expect(half * 2).toBeCloseTo(all, 1);
});

test("a difference of 0 lies on the line of 0", () => {
  const [, agreement] = figures;
  if (agreement?.kind !== "agreement") throw new Error("no plot");
  const svg = drawStudyFigure({
    ...agreement,
    points: [
      { mean: 430, difference: 0 },
      { mean: 440, difference: 0 },
    ],
  });
  const zero = /stroke-opacity="0.4"/.exec(svg);
  const line = svg.slice(0, zero?.index).match(/y1="([\d.]+)" x2="[\d.]+" y2="\1"[^<]*$/)?.[1];
  expect([...svg.matchAll(/<circle [^>]*cy="([\d.]+)"/g)].map(([, y]) => y)).toEqual([line, line]);
});

test("names are drawn as names, however they are written, and many subjects without any", () => {
  const svg = drawStudyFigure(readingsFigure(studyOf({ '<b>"&\u0007': { "A<": [400], B: [402] } }), "cm"));
  expectStudyPicture(svg, "study-readings");
  expect(svg).toContain("&lt;b&gt;&quot;&amp;\u{FFFD}");
  const many = Object.fromEntries(Array.from({ length: 150 }, (_, k) => [`s${k}`, { Ann: [400 + k] }]));
  expect(drawStudyFigure(readingsFigure(studyOf(many), "cm"))).not.toContain(">s77<");
});
