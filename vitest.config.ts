import { defineConfig } from "vitest/config";

export default defineConfig({
  ssr: { resolve: { conditions: ["@tapewise/source"] } },
  resolve: { conditions: ["@tapewise/source"] },
  test: {
    include: ["tests/**/*.test.ts", "reference-checks/**/*.test.ts"],
    setupFiles: ["scripts/seed.ts"],
    testTimeout: 60_000,
    passWithNoTests: false,
    typecheck: { enabled: false },
  },
});
