import type { SizeChart } from "@tapewise/charts";
import {
  type ColumnPlan,
  type ColumnRow,
  chooseRow,
  columnReasons,
  columnVerdicts,
  createRow,
  defaultPolicy,
  safeCompileColumns,
} from "@tapewise/fit";
import { type DimensionId, dimensionIds } from "@tapewise/landmarks";
import { personCuts } from "../../person/choices.ts";
import { type BytePage, makeRoom, put, putFigure } from "./byte-page.ts";
import { cleanJson } from "./clean-json.ts";
import { type FreshFigures, freshFigures } from "./method-figures.ts";
import type { QuickEstimates } from "./quick-estimate.ts";
import type { QuickBeliefs } from "./quick-prior.ts";
import type { ScannedPerson } from "./scanned-person.ts";

/** What is known of a person, apart from the figures. */
export interface Known {
  /** A bit for each dimension that was read. */
  readonly read: number;
  /** The dimensions that a prior speaks of. */
  readonly prior: readonly DimensionId[];
  /** 0 none, 1 women, 2 men. */
  readonly cut: number;
}

/** One chart, ready for people of whom the same is known. */
export interface ChartLane {
  /** Chooses and writes the choice; whether it could. There need be no room. */
  readonly answer: (
    person: ScannedPerson,
    estimates: QuickEstimates,
    beliefs: QuickBeliefs,
    page: BytePage,
  ) => boolean;
}

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
const MOST = defaultPolicy.mostFurtherReadings;
const LOOKS = MOST + 1;
/** Nobody rounds to a finer or to a coarser step; others are for the other way. */
const MOST_STEPS = 32;

/** A chart lane; `undefined` for a chart, or for people, that columns do not hold. */
export function createChartLane(chart: SizeChart, known: Known): ChartLane | undefined {
  const cut = personCuts[known.cut - 1];
  const outcome = safeCompileColumns(chart, {
    read: dimensionIds.filter((_, place) => (known.read & (1 << place)) !== 0),
    prior: known.prior,
    ...(cut === undefined ? {} : { cut }),
  });
  if (!outcome.ok) return undefined;
  const plan = outcome.value;
  const row = createRow(plan, LOOKS);
  const places = plan.beliefs.map((id) => dimensionIds.indexOf(id));
  const binding = places.reduce((bits, place) => bits | (1 << place), 0);
  const pieces = piecesOf(plan);
  const foresee = createForesight();
  return {
    answer: (person, estimates, beliefs, page) => {
      row.hasBuild = person.hasBuild;
      row.isOpen = (beliefs.unlikely & binding) !== 0;
      for (let k = 0; k < places.length; k += 1) {
        const place = places[k] as number;
        row.means[k] = beliefs.mean[place] as number;
        row.sds[k] = beliefs.sd[place] as number;
        row.degrees[k] = beliefs.degrees[place] as number;
        if (!foresee(person, place, estimates, beliefs, row.looks, k * LOOKS)) return false;
      }
      chooseRow(row);
      return !row.isClose && write(row, pieces, page);
    },
  };
}

/** Fills in the uncertainty after every look; whether it could. */
function createForesight() {
  const fresh = new Map<number, FreshFigures>();
  const freshOf = (place: number, by: number, tool: number, afresh: number, stepMm: number) => {
    const key = ((place * 2 + by) * 2 + tool) * 3 + afresh + stepMm * 1e9;
    const found = fresh.get(key);
    if (found !== undefined || fresh.size >= MOST_STEPS) return found;
    const made = freshFigures(place, by, tool, afresh, stepMm, MOST);
    fresh.set(key, made);
    return made;
  };
  return (
    person: ScannedPerson,
    place: number,
    estimates: QuickEstimates,
    beliefs: QuickBeliefs,
    looks: Float64Array,
    at: number,
  ): boolean => {
    const sd = beliefs.sd[place] as number;
    const mean = Math.max(1, beliefs.mean[place] as number);
    const isRead = (person.read & (1 << place)) !== 0;
    const figures = isRead
      ? person.by === 0
        ? freshOf(place, 1, person.tool, person.afresh, person.steps[place] as number)
        : undefined
      : freshOf(place, 0, 0, 0, 1);
    if (figures === undefined && !(isRead && person.by === 1)) return false;
    const now = 1 / sd ** 2;
    looks[at + MOST] =
      figures === undefined ? sd : 1 / Math.sqrt(now + 1 / (figures.base + figures.perSquare * mean * mean));
    const own = isRead ? 1 / (estimates.uncertainty[place] as number) ** 2 : 0;
    const lasting = (estimates.lasting[place] as number) ** 2;
    const perReading = (estimates.perReading[place] as number) ** 2;
    const count = person.counts[place] as number;
    for (let look = 0; look < MOST; look += 1) {
      looks[at + look] = isRead
        ? 1 / Math.sqrt(now - own + 1 / (lasting + perReading / (count + look + 1)))
        : sd;
    }
    return true;
  };
}

/** What stands between the figures of an answer. */
interface Pieces {
  /** For each verdict and pick, everything up to the probability. */
  readonly heads: readonly (readonly Uint8Array[])[];
  /** Up to the probability of each size. */
  readonly sizes: readonly Uint8Array[];
  readonly misfit: Uint8Array;
  /** For each pick and the bits of its reasons, the end of the choice. */
  readonly ends: readonly Map<number, Uint8Array>[];
  readonly plan: ColumnPlan;
  /** More bytes than one answer takes. */
  readonly most: number;
}

function piecesOf(plan: ColumnPlan): Pieces {
  const heads = columnVerdicts.map((verdict) =>
    plan.sizes.map((pick) =>
      bytesOf(
        `{"chart":${cleanJson(plan.chart)},"verdict":"${verdict}","pick":${cleanJson(pick)},"probability":`,
      ),
    ),
  );
  const sizes = plan.sizes.map((size, k) =>
    bytesOf(`${k === 0 ? ',"sizes":[' : "},"}{"size":${cleanJson(size)},"probability":`),
  );
  const pieces = {
    heads,
    sizes,
    misfit: bytesOf(',"expectedMisfitMm":'),
    ends: plan.sizes.map(() => new Map()),
    plan,
  };
  const longest = (list: readonly Uint8Array[]) => Math.max(...list.map(({ length }) => length));
  const FIGURES = 40;
  const REASONS = 1000;
  const own = longest(heads.flat()) + plan.sizes.length * (longest(sizes) + FIGURES + pieces.misfit.length);
  return { ...pieces, most: own + FIGURES + REASONS };
}

function write(row: ColumnRow, pieces: Pieces, page: BytePage): boolean {
  const { pick, verdict, probabilities, misfits, reasons } = row;
  makeRoom(page, pieces.most);
  put(page, pieces.heads[verdict]?.[pick] as Uint8Array);
  if (!putFigure(page, probabilities[pick] as number, 9)) return false;
  for (let size = 0; size < probabilities.length; size += 1) {
    put(page, pieces.sizes[size] as Uint8Array);
    if (!putFigure(page, probabilities[size] as number, 9)) return false;
    put(page, pieces.misfit);
    if (!putFigure(page, misfits[size] as number, 6)) return false;
  }
  const ends = pieces.ends[pick] as Map<number, Uint8Array>;
  let end = ends.get(reasons);
  if (end === undefined) {
    const own = columnReasons.filter((_, bit) => ((reasons >> bit) & 1) === 1);
    end = bytesOf(`}],"reasons":${JSON.stringify([...own, ...(pieces.plan.standingReasons[pick] ?? [])])}}`);
    ends.set(reasons, end);
  }
  makeRoom(page, end.length + 1000);
  put(page, end);
  return true;
}
