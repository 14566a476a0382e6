// A process of its own that adds to a log, or forgets somebody over and over, until it is done or killed. It prints
// the number of each row as soon as the store says that it is kept.
import { writeSync } from "node:fs";
import { fileOutcomeStore } from "tapewise/log";
import { rowToWrite } from "./row-to-write.ts";

const [what = "", path = "", name = "", count = "0", sync = ""] = process.argv.slice(2);
const store = fileOutcomeStore(path, { sync: sync === "sync", patienceMs: 30_000 });
for (let k = 0; k < Number(count); k += 1) {
  const outcome = what === "write" ? await store.append(rowToWrite(name, k)) : await store.forget(name);
  if (!outcome.ok) throw new Error(outcome.issues.map(({ message }) => message).join("; "));
  writeSync(1, `${k}\n`);
}
