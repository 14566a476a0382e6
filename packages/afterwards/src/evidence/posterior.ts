import type { ProductTable } from "./create-evidence.ts";
import type { EvidenceScale } from "./evidence-model.ts";
import { type Located, localise, type Points } from "./localise.ts";
import { UNIT } from "./log-likelihood.ts";
import { CENTRE, interpolationRows, offsetNodes, widthNodes } from "./node-table.ts";

/** Standard deviations of offset and log width. */
interface Spread {
  readonly offsetMm: number;
  readonly logWidth: number;
}

/** What is believed of the offset and width of a maker, given outcomes of its products. */
export function makerPosterior(tables: readonly ProductTable[], scale: EvidenceScale): Located {
  const spread = { offsetMm: scale.makerOffsetSdMm, logWidth: scale.makerLogWidthSd };
  const within = { offsetMm: scale.productOffsetSdMm, logWidth: scale.productLogWidthSd };
  const likelihoods = tables.map((table) => ownLikelihood(table, scale));
  return localise((points) => {
    const logs = gaussianLogs(points, spread);
    for (const product of likelihoods) {
      const message = smeared(product, points, within);
      for (let at = 0; at < logs.length; at += 1) logs[at] = (logs[at] as number) + (message[at] as number);
    }
    return logs;
  }, scale);
}

/** What is believed of a product: its own outcomes, and what those of the maker's others say. */
export function productPosterior(
  own: ProductTable | undefined,
  others: readonly ProductTable[],
  scale: EvidenceScale,
): Located {
  const within = { offsetMm: scale.productOffsetSdMm, logWidth: scale.productLogWidthSd };
  const maker = others.length === 0 ? undefined : makerPosterior(others, scale);
  return localise((points) => {
    const logs =
      maker === undefined ? gaussianLogs(points, wholeSpread(scale)) : smeared(maker, points, within);
    return own === undefined ? logs : addTable(logs, own, points, scale);
  }, scale);
}

/**
 * The chance that a maker prints its charts as they are, offset 0 and factor 1 for all of its products, where the
 * alternative is a maker drawn at random: Bayes' theorem with the probability of the outcomes under either.
 */
export function chanceAsPrinted(
  tables: readonly ProductTable[],
  scale: EvidenceScale,
  priorChance: number,
): number {
  if (tables.length === 0) return priorChance;
  const asPrinted = tables.reduce((sum, { units }) => sum + (units[CENTRE] as number) * UNIT, 0);
  const odds =
    (priorChance / (1 - priorChance)) * Math.exp(asPrinted - makerPosterior(tables, scale).logIntegral);
  return odds === Number.POSITIVE_INFINITY ? 1 : odds / (1 + odds);
}

function wholeSpread(scale: EvidenceScale): Spread {
  return {
    offsetMm: Math.hypot(scale.makerOffsetSdMm, scale.productOffsetSdMm),
    logWidth: Math.hypot(scale.makerLogWidthSd, scale.productLogWidthSd),
  };
}

/** The likelihood of a product's outcomes where it matters, which is where the prior leaves it any say. */
function ownLikelihood(table: ProductTable, scale: EvidenceScale): Located {
  const under = localise(
    (points) => addTable(gaussianLogs(points, wholeSpread(scale)), table, points, scale),
    scale,
  );
  const prior = gaussianLogs(under, wholeSpread(scale));
  return { ...under, weights: under.weights.map((weight, at) => weight * Math.exp(-(prior[at] as number))) };
}

/** The logarithm of ∫ N(point; θ, spread²) · density(θ) dθ at each point. */
function smeared(density: Located, points: Points, spread: Spread): Float64Array {
  const alongOffset = kernel(density.offsetsMm, points.offsetsMm, spread.offsetMm);
  const alongWidth = kernel(density.logWidths, points.logWidths, spread.logWidth);
  const factor = density.logIntegral - Math.log(2 * Math.PI * spread.offsetMm * spread.logWidth);
  // Below all doubles whatever else is known decides; the floor keeps the order of the rest.
  return separable(density.weights, alongOffset, alongWidth).map(
    (value) => factor + Math.log(Math.max(value, Number.MIN_VALUE)),
  );
}

function kernel(from: Float64Array, to: Float64Array, sd: number): readonly Float64Array[] {
  return Array.from(to, (x) => from.map((at) => Math.exp(-0.5 * ((x - at) / sd) ** 2)));
}

/** Adds the interpolated table to logs at points. */
function addTable(
  logs: Float64Array,
  table: ProductTable,
  points: Points,
  scale: EvidenceScale,
): Float64Array {
  const alongOffset = interpolationRows(
    offsetNodes,
    points.offsetsMm.map((x) => x / scale.reachMm),
  );
  const alongWidth = interpolationRows(
    widthNodes,
    points.logWidths.map((x) => x / scale.logReach),
  );
  const values = separable(table.units, alongOffset, alongWidth);
  return logs.map((log, at) => log + (values[at] as number) * UNIT);
}

/** Logarithm of the density of two independent normal variables about 0. */
function gaussianLogs({ offsetsMm, logWidths }: Points, sd: Spread): Float64Array {
  const columns = offsetsMm.length;
  const factor = -Math.log(2 * Math.PI * sd.offsetMm * sd.logWidth);
  return Float64Array.from({ length: columns * logWidths.length }, (_, at) => {
    const offset = (offsetsMm[at % columns] as number) / sd.offsetMm;
    const width = (logWidths[Math.floor(at / columns)] as number) / sd.logWidth;
    return factor - 0.5 * (offset * offset + width * width);
  });
}

/** Rows applied along both directions of a rectangle of values. */
function separable(
  values: Float64Array,
  alongOffset: readonly Float64Array[],
  alongWidth: readonly Float64Array[],
): Float64Array {
  const columns = alongOffset[0]?.length ?? 0;
  const wide = alongOffset.length;
  const half = alongWidth.map((row) => {
    const sums = new Float64Array(columns);
    for (let j = 0; j < row.length; j += 1) {
      const factor = row[j] as number;
      for (let i = 0; i < columns; i += 1) {
        sums[i] = (sums[i] as number) + factor * (values[j * columns + i] as number);
      }
    }
    return sums;
  });
  const out = new Float64Array(wide * alongWidth.length);
  for (const [j, sums] of half.entries()) {
    for (const [i, row] of alongOffset.entries()) {
      let sum = 0;
      for (let k = 0; k < columns; k += 1) sum += (row[k] as number) * (sums[k] as number);
      out[j * wide + i] = sum;
    }
  }
  return out;
}
