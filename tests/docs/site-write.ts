import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { readWorkspace, root } from "../architecture/workspace.ts";
import { listPages } from "./examples.ts";
import { exportLists, withExports } from "./readme-exports.ts";
import {
  currentIssuePage,
  docs,
  issuesFile,
  withBenchmarks,
  withExamples,
  withFigures,
  withOutputs,
} from "./site-pages.ts";

// Writes what READMEs and the site's pages repeat of the code: the lists of exports, the issue codes, the pictures, the
// functions that a reader can try and the outputs of commands; of one file only, where a part of its path is given. The tests only compare. Whoever runs this looks
// at the difference before it is committed.
const [only = ""] = process.argv.slice(2);
const isWanted = (file: string): boolean => file.includes(only) && existsSync(join(root, file));

if (isWanted(issuesFile)) {
  const issues = await currentIssuePage();
  write(issuesFile, () => issues);
}
const packages = readWorkspace().filter(({ folder }) => isWanted(`${folder}/README.md`) && folder !== "site");
for (const [folder, list] of exportLists(packages)) {
  write(`${folder}/README.md`, (readme) => withExports(readme, list));
}
for (const file of listPages()) {
  if (file.startsWith(docs) && isWanted(file))
    write(file, (page) => withOutputs(file, withExamples(withFigures(withBenchmarks(page)))));
}

function write(file: string, renew: (page: string) => string): void {
  const path = join(root, file);
  const page = readFileSync(path, "utf8");
  const written = renew(page);
  if (written === page) return;
  writeFileSync(path, written);
  console.log(file);
}
