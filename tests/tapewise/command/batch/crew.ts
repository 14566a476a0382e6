import { inventPeople } from "../../../../benchmarks/people.ts";
import { folderWith, PLAIN_CHART } from "../../run-command.ts";

/** Invented people, a faulty one and blank lines among them. */
export function crewOf(count: number): readonly string[] {
  const people = [...inventPeople(count, 5)];
  // A blank line has no answer, and a faulty one has its own.
  people.splice(700, 0, "", '{"id":"faulty","readings":{"torso-length":["44"]}}', "  ");
  return people;
}

/** A folder with a chart, another one, and these people. Call it outside of tests. */
export function batchFolder(people: readonly string[]): (name: string) => string {
  return folderWith({
    "plain.csv": PLAIN_CHART,
    "other.csv": PLAIN_CHART.replace("M,42-47", "M,41-46"),
    "people.ndjson": `${people.join("\n")}\n`,
    "fewer.ndjson": `${people.slice(0, 10).join("\n")}\n`,
  });
}
