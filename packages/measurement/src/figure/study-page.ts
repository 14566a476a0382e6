import { element, words } from "@tapewise/figures";
import { dimensionName } from "@tapewise/landmarks";
import { formatIssue, type Issue } from "@tapewise/outcome";
import type { StudyReport } from "../reliability/study-report.ts";
import type { Study } from "../study/study.ts";
import { adviseStudy } from "../telling/advise-study.ts";
import { tellStudy } from "../telling/tell-study.ts";
import type { ToldTable, ToldUnit } from "../telling/told.ts";
import { counted } from "../telling/write-figures.ts";
import { drawStudyFigure } from "./draw-study-figure.ts";
import { PAGE_STYLE } from "./page-style.ts";
import { studyFigures } from "./study-figures.ts";

/** What a page is made of. */
export interface StudyPage {
  readonly study: Study;
  readonly report: StudyReport;
  /** What was found in reading the study; the issues of the report are told as well. */
  readonly issues: readonly Issue[];
  readonly unit: ToldUnit;
  /** How the study is called, such as the name of its file. */
  readonly name?: string;
}

/**
 * A study as one page of HTML that needs nothing else: no scripts, no fonts, no other files. Every picture has its
 * table beside it; the page reads on light and dark, and prints.
 *
 * @throws {@link InvalidArgumentError} for a unit other than cm and in.
 *
 * @example
 * ```ts
 * import { parseStudy, studyPage, summariseStudy } from "@tapewise/measurement";
 * const study = parseStudy("subject,torso A1 (mm),torso A2 (mm)\nmia,430,434\nleo,480,480\nana,455,453\n");
 * const page = studyPage({ study, report: summariseStudy(study), issues: [], unit: "cm", name: "class evening" });
 * page.includes("<h1>Reliability of the torso length: class evening</h1>"); // => true
 * ```
 */
export function studyPage({ study, report, issues, unit, name }: StudyPage): string {
  const what = report.dimension === undefined ? "readings" : `the ${dimensionName(report.dimension)}`;
  const title = `Reliability of ${what}${name === undefined ? "" : `: ${name}`}`;
  const { size } = report;
  const body = [
    heading(1, title),
    paragraph(
      `${counted(size.subjects, "subject")}, ${counted(size.measurers, "measurer")} (${study.measurers.join(", ")}), up to ${counted(size.repeats, "repeat")}: ${counted(size.readings, "reading")} used, ${size.missing} missing, ${size.setAside} set aside. Lengths in ${unit}.`,
    ),
    ...list("What was found in reading", issues.map(formatIssue)),
    heading(2, "What to do next"),
    bulleted(adviseStudy(report, unit).map(({ sentence }) => sentence)),
    ...tellStudy(report, unit).flatMap(({ title: about, tables, notes, meaning }) => [
      heading(2, about),
      element("p", { class: "meaning" }, words(meaning)),
      ...tables.map((each) => table(each, about)),
      ...notes.map((note) => element("p", { class: "note" }, words(note))),
    ]),
    ...studyFigures(study, report, unit).flatMap((figure, k) => [
      heading(2, figure.text.title),
      element("figure", {}, drawStudyFigure(figure, `figure-${k + 1}`)),
      table(figure.table, `The same in figures: ${figure.text.title}`),
    ]),
    ...list("What the study cannot tell, or tells with doubt", report.issues.map(formatIssue)),
  ];
  return [
    "<!doctype html>",
    '<html lang="en">',
    "<head>",
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="color-scheme" content="light dark">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">`,
    `<title>${words(title)}</title>`,
    `<style>${PAGE_STYLE}</style>`,
    "</head>",
    "<body><main>",
    ...body,
    "</main></body>",
    "</html>",
    "",
  ].join("\n");
}

function heading(level: 1 | 2, text: string): string {
  return element(`h${level}`, {}, words(text));
}

function paragraph(text: string): string {
  return element("p", {}, words(text));
}

function list(title: string, items: readonly string[]): readonly string[] {
  return items.length === 0 ? [] : [heading(2, title), bulleted(items)];
}

function bulleted(items: readonly string[]): string {
  return element("ul", {}, ...items.map((item) => element("li", {}, words(item))));
}

function table({ header, rows, wordColumns }: ToldTable, caption: string): string {
  const cell = (name: "td" | "th", text: string, column: number, scope?: string): string =>
    element(name, { scope, class: column < wordColumns ? undefined : "number" }, words(text));
  return element(
    "div",
    { class: "scroll", tabindex: 0, role: "group", "aria-label": caption },
    element(
      "table",
      {},
      element("caption", {}, words(caption)),
      element(
        "thead",
        {},
        element("tr", {}, ...header.map((text, column) => cell("th", text, column, "col"))),
      ),
      element(
        "tbody",
        {},
        ...rows.map((row) =>
          element(
            "tr",
            {},
            ...row.map((text, column) =>
              column === 0 ? cell("th", text, column, "row") : cell("td", text, column),
            ),
          ),
        ),
      ),
    ),
  );
}
