import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

// The browser tests of the site: not part of the unit run, because they need the built site and Chromium.
export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  ssr: { resolve: { conditions: ["@tapewise/source"] } },
  resolve: { conditions: ["@tapewise/source"] },
  test: {
    include: ["**/*.test.ts"],
    testTimeout: 120_000,
    hookTimeout: 60_000,
    // A busy machine takes its time; what never comes is still missed.
    expect: { poll: { timeout: 30_000 } },
    // Two browsers at a time: the tests of long tasks measure time.
    maxWorkers: 2,
    passWithNoTests: false,
  },
});
