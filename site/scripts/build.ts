// Builds the site into `dist`. A warning is an error: of a page that nobody looks at nobody else would tell.
import { build } from "./run.ts";

await build();
