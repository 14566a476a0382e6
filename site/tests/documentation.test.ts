import { test } from "vitest";
import { useSite } from "./harness.ts";
import { sampleDocumentation } from "./harness-pages.ts";
import { lookAt } from "./look-at.ts";

const site = useSite();

test.each(sampleDocumentation())("%s has no fault that axe finds in either theme, and behaves", (path) =>
  lookAt(site, path),
);
