// Runs Astro without its telemetry: building the site asks nobody for anything.
import { run } from "./run.ts";

run("astro", process.argv.slice(2));
