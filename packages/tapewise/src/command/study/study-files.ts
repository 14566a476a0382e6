import {
  drawStudyFigure,
  type Study,
  type StudyReport,
  studyFigures,
  studyPage,
} from "@tapewise/measurement";
import { createIssue, type Issue } from "@tapewise/outcome";
import { tapewiseIssues } from "../../issues.ts";
import { writeTextFile } from "../files.ts";

/** The pictures that there are. */
export const pictureNames = ["readings", "agreement", "errors"] as const;

/** One of {@link pictureNames}. */
export type PictureName = (typeof pictureNames)[number];

/** What to write, and how. */
export interface StudyFiles {
  readonly html?: string;
  readonly svg?: string;
  readonly picture: PictureName;
  readonly pair?: readonly string[];
  readonly shown: "cm" | "in";
  readonly name: string | undefined;
}

/** Writes the page and the picture that were asked for, and returns what went wrong. */
export async function writeStudyFiles(
  study: Study,
  report: StudyReport,
  issues: readonly Issue[],
  { html, svg, picture, pair, shown, name }: StudyFiles,
): Promise<readonly Issue[]> {
  const faults: Issue[] = [];
  if (html !== undefined) {
    const page = studyPage({ study, report, issues, unit: shown, ...(name === undefined ? {} : { name }) });
    faults.push(...(await writeTextFile(html, page)).issues);
  }
  if (svg === undefined) return faults;
  const [first, second] = pair ?? [];
  const agreement = report.agreement.filter(
    (each) =>
      first === undefined ||
      (each.first === first && each.second === second) ||
      (each.first === second && each.second === first),
  );
  const figure = studyFigures(study, { ...report, agreement: agreement.slice(0, 1) }, shown).find(
    ({ kind }) => kind === picture,
  );
  if (figure === undefined) {
    const about = { received: picture, facts: { measurers: study.measurers.join(", ") } };
    return [...faults, createIssue(tapewiseIssues, "study-picture-unknown", about)];
  }
  return [...faults, ...(await writeTextFile(svg, `${drawStudyFigure(figure)}\n`)).issues];
}
