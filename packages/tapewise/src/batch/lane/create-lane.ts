import type { SizeChart } from "@tapewise/charts";
import { defaultPolicy } from "@tapewise/fit";
import { type DimensionId, dimensionIds, plausibleLimits } from "@tapewise/landmarks";
import type { Prior } from "@tapewise/measurement";
import type { Issue } from "@tapewise/outcome";
import { womenReference } from "@tapewise/population";
import type { PriorChoice } from "../../person/choose-prior.ts";
import { sizesByStature } from "../../person/sizes-by-stature.ts";
import { summariseIssue } from "../summarise-issue.ts";
import { aloneNotes } from "./alone-notes.ts";
import { type BytePage, makeRoom, put, putFigure, putPart } from "./byte-page.ts";
import { type ChartLane, createChartLane } from "./chart-lane.ts";
import { cleanJson } from "./clean-json.ts";
import { estimateInFull } from "./full-estimate.ts";
import { statureIssues, unlikelyIssues } from "./prior-notes.ts";
import { createQuickEstimates, createQuickEstimator } from "./quick-estimate.ts";
import { createPriors, createQuickBeliefs, createQuickUpdate } from "./quick-prior.ts";
import { scanPerson } from "./scan-person.ts";
import { createScannedPerson, MOST_READINGS, type ScannedPerson } from "./scanned-person.ts";

/**
 * Answers the line that stands in some bytes, from a first to before a last, on a page; whether it could. Where it
 * could not, the page is as it was, and the line is one for `answerRawLine`.
 */
export type Lane = (bytes: Uint8Array, from: number, to: number, page: BytePage) => boolean;

/** So many ways of knowing something of people are kept ready; more of them are rare. */
const MOST_LANES = 200;
const NOTHING: readonly Issue[] = [];
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/**
 * A quick way for usual lines: the same bytes as `answerRawLine` and JSON give, without an object for anything.
 * Whatever is out of the ordinary, from a faulty reading to a figure whose rounding hangs on its last digit, is left
 * to the other way.
 */
export function createLane(charts: readonly SizeChart[], prior: PriorChoice): Lane {
  if (charts.length === 0 || prior === "reference") return () => false;
  const person = createScannedPerson();
  const estimates = createQuickEstimates();
  const beliefs = createQuickBeliefs();
  const estimate = createQuickEstimator(estimates);
  const priorOf = createPriors();
  const spoken = womenReference.dimensions.filter((id) => id !== "stature");
  const update = createQuickUpdate(spoken, defaultPolicy.questionProbability);
  const statures = plausibleLimits("stature", "adult");
  const lanes = new Map<number, readonly ChartLane[] | undefined>();
  // Two heights may stand in for the torso length.
  const otherWay = (1 << dimensionIds.indexOf("stature")) | (1 << dimensionIds.indexOf("cervicale-height"));
  const isStatureCharted = charts.some(sizesByStature);
  const pieces = piecesOfLine();

  /** Questions about the readings of a dimension as they stand in a line; none for one that was just read once. */
  const notes: (Uint8Array | undefined)[] = dimensionIds.map(() => undefined);
  /** A bit for each dimension that there is something to say of. */
  let noted = 0;
  /** What there is to say beside the prior, after all else. */
  let byPrior: readonly Issue[] = NOTHING;

  const lanesFor = (hasPrior: boolean): readonly ChartLane[] | undefined => {
    const key = (person.read * 2 + (hasPrior ? 1 : 0)) * 3 + person.cut;
    if (lanes.has(key) || lanes.size >= MOST_LANES) return lanes.get(key);
    const known = { read: person.read, prior: hasPrior ? spoken : [], cut: person.cut };
    const made = charts.flatMap((chart) => createChartLane(chart, known) ?? []);
    const all = made.length === charts.length ? made : undefined;
    lanes.set(key, all);
    return all;
  };

  const form = (known: Prior | undefined): boolean => {
    beliefs.unlikely = 0;
    for (let left = person.read; left !== 0; left &= left - 1) {
      const place = lowestBit(left);
      beliefs.mean[place] = estimates.mean[place] as number;
      beliefs.sd[place] = estimates.uncertainty[place] as number;
      beliefs.degrees[place] = estimates.degrees[place] as number;
    }
    if (known === undefined) return true;
    if (!update(person, known, estimates, beliefs)) return false;
    if (beliefs.unlikely !== 0) byPrior = unlikelyIssues(person, known, estimates, beliefs.unlikely);
    return true;
  };

  const answer = (page: BytePage): boolean => {
    if ((person.read & otherWay) !== 0) return false;
    let known: Prior | undefined;
    byPrior = NOTHING;
    if (person.statureMm > 0) {
      if (isStatureCharted) return false;
      if (!(person.statureMm >= statures.from && person.statureMm <= statures.to)) return false;
      if (person.cut > 0 && prior !== "none") {
        known = priorOf(person.cut, person.statureMm);
        if (known === undefined) byPrior = statureIssues(person);
      }
    }
    noted = 0;
    for (let left = person.read; left !== 0; left &= left - 1) {
      const place = lowestBit(left);
      if (estimate(person, place)) {
        if (person.counts[place] !== 1) continue;
        notes[place] = undefined;
      } else {
        const asked = estimateInFull(person, place, estimates);
        if (asked === undefined) return false;
        if (asked.length === 0) continue;
        notes[place] = asked;
      }
      noted |= 1 << place;
    }
    if (!form(known)) return false;
    const ready = lanesFor(known !== undefined);
    return ready !== undefined && write(person, ready, page);
  };

  const write = (one: ScannedPerson, ready: readonly ChartLane[], page: BytePage): boolean => {
    makeRoom(page, one.idTo - one.idFrom + 2000);
    put(page, pieces.id);
    if (one.idFrom < 0) put(page, pieces.none);
    else putPart(page, one.bytes, one.idFrom, one.idTo);
    let names = pieces.firstEstimates;
    for (let left = one.read; left !== 0; left &= left - 1) {
      const place = lowestBit(left);
      put(page, names[place] as Uint8Array);
      names = pieces.estimates;
      if (!putFigure(page, estimates.mean[place] as number, 6)) return false;
      put(page, pieces.uncertainty);
      if (!putFigure(page, estimates.uncertainty[place] as number, 6)) return false;
    }
    put(page, pieces.choices);
    for (let k = 0; k < ready.length; k += 1) {
      if (k > 0) put(page, pieces.comma);
      if (!(ready[k] as ChartLane).answer(one, estimates, beliefs, page)) return false;
    }
    if (noted === 0 && byPrior.length === 0) put(page, pieces.end);
    else putNotes(one, page);
    return true;
  };

  const putNotes = (one: ScannedPerson, page: BytePage): void => {
    put(page, pieces.issues);
    for (let left = noted; left !== 0; left &= left - 1) {
      const place = lowestBit(left);
      if (left !== noted) put(page, pieces.comma);
      const note = notes[place];
      const [before, after] = pieces.alone[place] as readonly [Uint8Array, Uint8Array];
      makeRoom(page, (note ?? before).length + 2000);
      if (note !== undefined) put(page, note);
      else {
        const at = place * MOST_READINGS;
        put(page, before);
        putPart(page, one.bytes, one.textFrom[at] as number, one.textTo[at] as number);
        put(page, after);
      }
    }
    if (byPrior.length > 0) {
      if (noted !== 0) put(page, pieces.comma);
      const note = bytesOf(byPrior.map((issue) => cleanJson(summariseIssue(issue))).join(","));
      makeRoom(page, note.length + 2000);
      put(page, note);
    }
    put(page, pieces.end);
  };

  return (bytes, from, to, page) => {
    const start = page.length;
    if (scanPerson(person, bytes, from, to) && answer(page)) return true;
    page.length = start;
    return false;
  };
}

function lowestBit(bits: number): number {
  return 31 - Math.clz32(bits & -bits);
}

/** What stands between the figures of a line. */
function piecesOfLine() {
  const estimate = (id: DimensionId) => `"${id}":{"mm":`;
  return {
    id: bytesOf('{"id":'),
    none: bytesOf("null"),
    firstEstimates: dimensionIds.map((id) => bytesOf(`,"estimates":{${estimate(id)}`)),
    estimates: dimensionIds.map((id) => bytesOf(`},${estimate(id)}`)),
    uncertainty: bytesOf(',"uncertaintyMm":'),
    choices: bytesOf('}},"choices":['),
    comma: bytesOf(","),
    end: bytesOf("]}\n"),
    issues: bytesOf('],"issues":['),
    alone: dimensionIds.map(aloneNotes),
  };
}
