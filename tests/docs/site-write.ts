import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../architecture/workspace.ts";
import { listPages } from "./examples.ts";
import { currentIssuePage, docs, issuesFile, withFigures, withOutputs } from "./site-pages.ts";

// Writes what the site's pages repeat of the code: the issue codes, the pictures and the outputs of commands. The
// tests only compare. Whoever runs this looks at the difference before it is committed.
writeFileSync(join(root, issuesFile), await currentIssuePage());
const [only = ""] = process.argv.slice(2);
for (const file of listPages()) {
  if (!file.startsWith(docs) || !file.includes(only)) continue;
  const path = join(root, file);
  const page = readFileSync(path, "utf8");
  const written = withOutputs(file, withFigures(page));
  if (written === page) continue;
  writeFileSync(path, written);
  console.log(file);
}
