import { interval, intervalLength, midpoint, shareCovered } from "@tapewise/intervals";
import { momentsOf, sampleQuantile, summarise, summariseMoments } from "@tapewise/statistics";
import { fromMillimetres, type LengthUnit, millimetres, toMillimetres } from "@tapewise/units";
import { errorOf, type PointError } from "./error.ts";
import { kernels } from "./kernels.ts";
import points from "./points.json" with { type: "json" };

/** The worst of one kernel over one part of its domain. */
export interface Worst {
  readonly name: string;
  readonly domain: string;
  /** `far tail`: values below 10⁻³⁰, beyond the working domain. */
  readonly part: "working domain" | "far tail";
  readonly kind: "relative" | "absolute";
  readonly points: number;
  readonly worst: PointError;
  /** Where it is. */
  readonly at: string;
}

const FAR = 1e-30;

interface Measured {
  readonly error: PointError;
  readonly at: string;
}

function worstOf(
  name: string,
  domain: string,
  kind: Worst["kind"],
  measured: readonly Measured[],
  part: Worst["part"] = "working domain",
): readonly Worst[] {
  const [first, ...others] = measured;
  if (first === undefined) return [];
  const size = ({ error }: Measured): number => (kind === "relative" ? error.relative : error.absolute);
  const worst = others.reduce((a, b) => (size(b) > size(a) ? b : a), first);
  return [{ name, domain, part, kind, points: measured.length, worst: worst.error, at: worst.at }];
}

function ofKernels(every: number): readonly Worst[] {
  return points.functions.flatMap(({ name, domain, kind, points: list }) => {
    const kernel = kernels[name];
    if (kernel === undefined) throw new Error(`no kernel is called ${name}`);
    const asked = list
      .filter((_, i) => i % every === 0)
      .map((point) => {
        const args = point.slice(0, -1).map(Number);
        const reference = String(point.at(-1));
        return { args, reference, isFar: kind === "relative" && Math.abs(Number(reference)) < FAR };
      });
    const measured = (isFar: boolean): readonly Measured[] =>
      asked
        .filter((one) => one.isFar === isFar)
        .map(({ args, reference }) => ({
          error: errorOf(kernel(args), reference),
          at: args.map((value) => Number(value.toPrecision(9))).join(", "),
        }));
    const by = kind === "absolute" ? "absolute" : "relative";
    return [
      ...worstOf(name, domain, by, measured(false)),
      ...worstOf(name, domain, by, measured(true), "far tail"),
    ];
  });
}

function ofSamples(): readonly Worst[] {
  const domain =
    "2 to 200 lengths in tenths of a millimetre, about 1 to 10⁶ mm; moments by the doubles, the rest by the decimals";
  const of = (
    name: string,
    figure: (values: readonly number[]) => number,
    key: keyof (typeof points.samples)[number],
  ) =>
    worstOf(
      name,
      domain,
      "relative",
      points.samples.map((sample) => ({
        error: errorOf(figure(sample.values), String(sample[key])),
        at: `${sample.values.length} values from ${sample.values[0]}`,
      })),
    );
  return [
    ...of("summarise, mean", (values) => summarise(values).mean, "mean"),
    ...of("summarise, sd", (values) => summarise(values).sd ?? Number.NaN, "sd"),
    ...of("summariseMoments, mean", (values) => summariseMoments(momentsOf(values)).mean, "momentsMean"),
    ...of(
      "summariseMoments, sd",
      (values) => summariseMoments(momentsOf(values)).sd ?? Number.NaN,
      "momentsSd",
    ),
    ...of("sampleQuantile, type 7", (values) => sampleQuantile(values, 0.3, 7), "quantile"),
  ];
}

function ofConversions(): readonly Worst[] {
  const rows = points.conversions.map(([unit, value, mm, back]) => ({
    unit: unit as LengthUnit,
    value: Number(value),
    mm: String(mm),
    back: String(back),
  }));
  const domain = "decimals up to 10⁴ in mm, cm, m, in, ft";
  return [
    ...worstOf(
      "toMillimetres",
      domain,
      "relative",
      rows.map(({ unit, value, mm }) => ({
        error: errorOf(toMillimetres(value, unit), mm),
        at: `${value} ${unit}`,
      })),
    ),
    ...worstOf(
      "fromMillimetres",
      domain,
      "relative",
      rows.map(({ unit, value, back }) => ({
        error: errorOf(fromMillimetres(millimetres(value), unit), back),
        at: `${value} mm in ${unit}`,
      })),
    ),
  ];
}

function ofIntervals(): readonly Worst[] {
  const rows = points.lengths.map((row) => {
    const [a = 0, b = 0, c = 0, d = 0] = row.slice(0, 4).map(Number);
    return {
      one: interval(a, b),
      other: interval(c, d),
      middle: String(row[4]),
      length: String(row[5]),
      share: String(row[6]),
      at: `${a} to ${b}, ${c} to ${d}`,
    };
  });
  const domain = "ends from 100 to 2000 mm, at least 0.1 mm apart";
  return [
    ...worstOf(
      "midpoint",
      domain,
      "relative",
      rows.map(({ one, middle, at }) => ({ error: errorOf(midpoint(one) ?? Number.NaN, middle), at })),
    ),
    ...worstOf(
      "intervalLength",
      domain,
      "relative",
      rows.map(({ one, length, at }) => ({ error: errorOf(intervalLength(one), length), at })),
    ),
    ...worstOf(
      "shareCovered",
      domain,
      "absolute",
      rows.map(({ one, other, share, at }) => ({ error: errorOf(shareCovered(one, other), share), at })),
    ),
  ];
}

/** The worst error of every kernel; with `every` above 1 only of every n-th point of the kernels. */
export function measureAccuracy(every = 1): readonly Worst[] {
  return [...ofKernels(every), ...ofSamples(), ...ofConversions(), ...ofIntervals()];
}
