import { charts, fit, outcome, tables } from "tapewise";
import { safeReadPerson } from "tapewise/batch";

/** A size for each line of a table: a name, then readings of the torso length. */
export function chooseForTable(people: string, chart: string) {
  const pack = charts.safeParseChartCsv(chart, { chart: "Doily 45" });
  if (!pack.ok) return pack;
  // A chart of which a part cannot be read would give an answer to another question.
  const errors = pack.issues.filter(({ severity }) => severity === "error");
  if (outcome.hasIssues(errors)) return outcome.failure(errors);
  const issues = [...pack.issues];
  const rows = tables.readTable(people).rows.filter((row) => row.kind === "cells");
  const choices = rows.map(({ line, cells }) => {
    const [name = "", ...torso] = cells.map(({ text }) => text.trim());
    const readings = { "torso-length": torso.filter((text) => text !== "") };
    const person = safeReadPerson({ tool: "tape", measuredBy: "helper", readings });
    issues.push(...person.issues.map((issue) => outcome.relocateIssue(issue, [name], { line, column: 1 })));
    // Nobody gets a size by the readings that are left once one of them cannot be read.
    const isRead = person.issues.every(({ severity }) => severity !== "error");
    const chosen = person.ok && isRead ? fit.recommend(person.value, pack.value, { unit: "cm" }) : undefined;
    if (chosen?.ok !== true) return { name, pick: null };
    const { pick, verdict, probability } = chosen.value;
    return { name, pick, verdict, chance: fit.writePercent(probability) };
  });
  return outcome.success(choices, issues);
}
