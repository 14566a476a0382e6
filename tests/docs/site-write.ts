import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { readWorkspace, root } from "../architecture/workspace.ts";
import { listPages } from "./examples.ts";
import { exportLists, withExports } from "./readme-exports.ts";
import { currentIssuePage, docs, issuesFile, withFigures, withOutputs } from "./site-pages.ts";

// Writes what READMEs and the site's pages repeat of the code: the lists of exports, the issue codes, the pictures and the
// outputs of commands. The tests only compare. Whoever runs this looks at the difference before it is committed.
writeFileSync(join(root, issuesFile), await currentIssuePage());
const packages = readWorkspace().filter(
  ({ folder }) => existsSync(join(root, folder, "README.md")) && folder !== "site",
);
for (const [folder, list] of exportLists(packages)) {
  write(`${folder}/README.md`, (readme) => withExports(readme, list));
}

const [only = ""] = process.argv.slice(2);
for (const file of listPages()) {
  if (!file.startsWith(docs) || !file.includes(only)) continue;
  write(file, (page) => withOutputs(file, withFigures(page)));
}

function write(file: string, renew: (page: string) => string): void {
  const path = join(root, file);
  const page = readFileSync(path, "utf8");
  const written = renew(page);
  if (written === page) return;
  writeFileSync(path, written);
  console.log(file);
}
