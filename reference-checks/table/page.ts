import { type Agreement, MOST_DIGITS } from "./agreement.ts";
import { notComputing } from "./not-computing.ts";

/** A number in few digits, as a table shows it. */
const brief = (value: number): string => (value === 0 ? "0" : value.toPrecision(2).replace(/\.0(?=e|$)/, ""));

const oneDecimal = (digits: number): string =>
  digits >= MOST_DIGITS ? "all" : (Math.floor(digits * 10) / 10).toFixed(1);

/** What agreed, at worst. */
function agreementText({ digits, off, printed, same, values }: Agreement): string {
  return [
    ...(digits === undefined ? [] : [digits >= MOST_DIGITS ? "every digit" : `${oneDecimal(digits)} digits`]),
    ...(off === undefined ? [] : [off === 0 ? "no difference" : `off by ${brief(off)}`]),
    ...(printed === undefined ? [] : [`${printed} as printed`]),
    ...(same === values ? ["equal"] : same > 0 ? [`${same} equal`] : []),
  ].join("; ");
}

function toleranceText({ relative, absolute, printed, same, values }: Agreement): string {
  return [
    ...(relative === undefined ? [] : [`${brief(relative)} of the value`]),
    ...(absolute === undefined ? [] : [brief(absolute)]),
    ...(printed === undefined ? [] : ["the printed decimals"]),
    ...(same > 0 && same === values ? ["none"] : []),
  ].join("; ");
}

const nameOf = (full: string): string => full.split(".")[1] ?? full;
const packageOf = ({ functions }: Agreement): string => functions[0]?.split(".")[0] ?? "";

/** The rows of a table: function, source, origin, values, agreement, tolerance, why. */
function rowsOf(agreements: readonly Agreement[]): readonly (readonly string[])[] {
  return agreements.map((row) => [
    row.functions.map((name) => `\`${nameOf(name)}\``).join(", "),
    row.source,
    row.origin,
    String(row.values),
    agreementText(row),
    toleranceText(row),
    row.why,
  ]);
}

const HEADERS = [
  "function",
  "held against",
  "origin",
  "values",
  "worst agreement",
  "tolerance",
  "why that tolerance",
] as const;

const line = (cells: readonly string[]): string =>
  `| ${cells.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;

const byName = (a: Agreement, b: Agreement): number => {
  const [x, y] = [`${a.functions[0]} ${a.source} ${a.origin}`, `${b.functions[0]} ${b.source} ${b.origin}`];
  return x < y ? -1 : x > y ? 1 : 0;
};

/** The table in Markdown, by package, without a title: what both pages show. */
function tableText(agreements: readonly Agreement[], mark = ""): string {
  const packages = [...new Set([...agreements.map(packageOf), ...Object.keys(notComputing)])].sort();
  const values = agreements.reduce((sum, row) => sum + row.values, 0);
  const functions = new Set(agreements.flatMap((row) => row.functions)).size;
  const sections = packages.flatMap((name) => {
    const own = agreements.filter((row) => packageOf(row) === name).sort(byName);
    const table = [line(HEADERS), line(HEADERS.map(() => "---")), ...rowsOf(own).map(line)].join("\n");
    const others = Object.entries(notComputing[name] ?? {});
    return [
      `## ${name}`,
      ...(own.length === 0 ? [] : [`${mark}${table}`]),
      ...(others.length === 0
        ? []
        : [
            `Compute no figure: ${others.map(([reason, names]) => `${names.map((each) => `\`${each}\``).join(", ")} (${reason})`).join("; ")}.`,
          ]),
    ];
  });
  return [
    `${mark}${functions} functions are held against values from outside, ${values} values in all.`,
    ...sections,
  ].join("\n\n");
}

const MEANING = `Every exported function that computes a figure is held against values that our code had no part in. A test lists
the exports and fails when one is neither here nor among those that compute nothing. Digits are −log₁₀ of the relative
error at its worst, "every digit" where both are the same double; absolute errors are in the unit of the figure (mm,
probability). "Printed" is what a publication shows, "certified" what a standards body vouches for, "recomputed" what a
committed script or an independent program found, "computed by" a library at every run, "counted" what was counted in
public data, "worked by hand" arithmetic that stands in the test.

\`npm run check:reference\` makes the comparisons and prints this table; with \`-- --write\` it writes it.`;

export function referencePage(agreements: readonly Agreement[]): string {
  return `# What the figures were held against\n\n${MEANING}\n\n${tableText(agreements)}\n`;
}

/** The page of the site: the same, with marks that say where its figures come from. */
export function sitePage(agreements: readonly Agreement[]): string {
  return `---
title: Reference checks
description: Every function that computes, with the published or recomputed values it was held against and how many digits agree.
sidebar:
  order: 7
---

${MEANING}

${tableText(agreements, "<!-- from: reference-checks/REFERENCE.md -->\n\n")}
`;
}

/** The table for a terminal: one line a row. */
export function plainTable(agreements: readonly Agreement[]): string {
  return [...agreements]
    .sort(byName)
    .map((row) =>
      [
        row.functions.join(", ").padEnd(42),
        String(row.values).padStart(6),
        agreementText(row).padEnd(28),
        `within ${toleranceText(row)}`.padEnd(28),
        `${row.source} (${row.origin})`,
      ].join("  "),
    )
    .join("\n");
}
