#!/usr/bin/env node
import { existsSync } from "node:fs";

const entry = new URL("../dist/command/main.js", import.meta.url);
if (existsSync(entry)) {
  const { main } = await import(entry.href);
  await main(process.argv.slice(2));
} else {
  process.stderr.write('tapewise-duckdb is not built yet: run "npm run build" first.\n');
  process.exitCode = 2;
}
