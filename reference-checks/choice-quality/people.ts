import { readFileSync } from "node:fs";
import { join } from "node:path";
import { menReference, referencePrior, womenReference } from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";

/** Somebody whose torso length is known. */
export interface StudiedPerson {
  /** Unique among the people of a study: the seed of everything drawn for this person. */
  readonly id: number;
  readonly cut: "women" | "men";
  readonly statureMm: number;
  readonly torsoMm: number;
}

/** The files that a folder of measurements holds. */
const FILES = [
  { cut: "women", name: "ansur-ii-female-even-subjects.csv" },
  { cut: "men", name: "ansur-ii-male-even-subjects.csv" },
] as const;

/**
 * The people of a folder of ANSUR II measurements (Gordon et al. 2014, NATICK/TR-15/007), in whole mm.
 * Torso length is cervicale height − iliocristale height.
 */
export function readPeople(folder: string): readonly StudiedPerson[] {
  return FILES.flatMap(({ cut, name }) => peopleOf(readFileSync(join(folder, name), "latin1"), cut, name));
}

/** The people of one file's text. */
export function peopleOf(text: string, cut: StudiedPerson["cut"], name: string): readonly StudiedPerson[] {
  const [header = "", ...lines] = text.trim().split(/\r?\n/);
  const columns = header.split(",").map((column) => column.trim().toLowerCase());
  return lines.map((line, i) => {
    const cells = line.split(",");
    const figure = (column: string): number => {
      const cell = cells[columns.indexOf(column)]?.trim();
      const value = cell === undefined || cell === "" ? Number.NaN : Number(cell);
      if (!Number.isFinite(value)) throw new Error(`${name}, line ${i + 2}: no figure for ${column}`);
      return value;
    };
    return {
      id: figure("subjectid"),
      cut,
      statureMm: figure("stature"),
      torsoMm: figure("cervicaleheight") - figure("iliocristaleheight"),
    };
  });
}

/**
 * Invented people, half of them women: stature normal as in the reference figures, torso length normal given
 * cut and stature as the library's own prior has it. For them the prior is exactly right.
 */
export function syntheticPeople(count: number, seed: number): readonly StudiedPerson[] {
  return Array.from({ length: count }, (_, i) => {
    const reference = i % 2 === 0 ? womenReference : menReference;
    const random = createRandom(seed).fork("person").fork(i);
    const at = reference.dimensions.indexOf("stature");
    const statureMm = (reference.meanMm[at] ?? 0) + (reference.sdMm[at] ?? 0) * random.normal();
    return torsoFromPrior({ id: i, cut: reference.cut, statureMm, torsoMm: 0 }, random.normal());
  });
}

/** The same statures and cuts with torso lengths drawn from the library's own prior. */
export function redrawTorsos(people: readonly StudiedPerson[], seed: number): readonly StudiedPerson[] {
  return people.map((person) =>
    torsoFromPrior(person, createRandom(seed).fork("torso").fork(person.id).normal()),
  );
}

function torsoFromPrior(person: StudiedPerson, score: number): StudiedPerson {
  const prior = referencePrior({ cut: person.cut, statureMm: millimetres(person.statureMm) });
  const at = prior.dimensions.indexOf("torso-length");
  const sd = Math.sqrt(prior.covarianceMm2[at]?.[at] ?? 0);
  return { ...person, torsoMm: (prior.meanMm[at] ?? 0) + sd * score };
}
