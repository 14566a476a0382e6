// Builds the site for a path below a host's root, and drives it with Chromium. Arguments go to vitest.
import { chromiumPath } from "../tests/chromium.ts";
import { buildForTests, run } from "./run.ts";

// First of all, because a build takes a while.
console.log(`Chromium: ${chromiumPath()}`);
await buildForTests();
run("vitest", ["run", "--config", "tests/vitest.config.ts", ...process.argv.slice(2)]);
