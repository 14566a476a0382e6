import { speakDimension } from "@tapewise/charts";
import {
  adviseStudy,
  type MissingCell,
  type MissingReason,
  type Study,
  type StudyReport,
  tellStudy,
} from "@tapewise/measurement";
import type { Issue } from "@tapewise/outcome";
import { cleanWord } from "../text/clean.ts";
import { bullets, wrap } from "../text/wrap.ts";
import { issueBullets } from "./issue-bullets.ts";
import { note } from "./sample-lines.ts";
import { toldLines } from "./told-lines.ts";

/** A study with what it tells. */
export interface ToldStudy {
  readonly study: Study;
  readonly report: StudyReport;
  /** What was found in reading. */
  readonly issues: readonly Issue[];
  readonly unit: "cm" | "in";
  readonly name: string | undefined;
}

/** Missing cells that are listed one by one; more are counted only. */
const MOST_LISTED = 20;

/** A reliability study in words: what was read, what it tells, what to do next. */
export function studyLines({ study, report, issues, unit, name }: ToldStudy): string[] {
  const { size } = report;
  const dimension = report.dimension === undefined ? "lengths" : speakDimension(report.dimension);
  const wrong = issues.filter(({ severity }) => severity === "error");
  const odd = issues.filter(({ severity }) => severity === "warning");
  const sections = tellStudy(report, unit);
  return [
    ...wrap(
      `Reliability of ${dimension}${name === undefined ? "" : ` (${cleanWord(name)})`}; lengths in ${unit}`,
    ),
    "",
    "What was read",
    ...bullets([
      `${size.subjects} subjects, ${size.measurers} measurers (${study.measurers.map(cleanWord).join(", ")}), up to ${size.repeats} repeats: ${size.readings} readings used, ${size.missing} missing, ${size.setAside} set aside.`,
    ]),
    ...missingLines(study.missing),
    ...(wrong.length === 0 ? [] : [`  Wrong (${wrong.length})`, ...issueBullets(wrong, { oneFile: true })]),
    ...(odd.length === 0 ? [] : [`  Worth a look (${odd.length})`, ...issueBullets(odd, { oneFile: true })]),
    "",
    ...sections.flatMap(({ title, tables, notes, meaning }) => [
      title,
      ...tables.flatMap(toldLines),
      "",
      ...note(`What it means: ${meaning}`),
      ...notes.flatMap(note),
      "",
    ]),
    ...(report.issues.length === 0
      ? []
      : ["What the study cannot tell, or tells with doubt", ...issueBullets(report.issues), ""]),
    "What to do next",
    ...bullets(adviseStudy(report, unit).map(({ sentence }) => cleanWord(sentence))),
  ];
}

const REASONS: Readonly<Record<MissingReason, string>> = {
  "left-empty": "left empty",
  "not-in-data": "not in the file",
  unreadable: "could not be read",
};

function missingLines(missing: readonly MissingCell[]): string[] {
  const left = missing.length - MOST_LISTED;
  return bullets([
    ...missing.slice(0, MOST_LISTED).map(({ subject, measurer, repeat, because, place }) => {
      const where = place === undefined ? "" : `line ${place.line}, column ${place.column}: `;
      return `${where}no reading ${repeat} of ${cleanWord(subject)} by ${cleanWord(measurer)} (${REASONS[because]}).`;
    }),
    ...(left > 0 ? [`${left} more cells are missing.`] : []),
  ]);
}
