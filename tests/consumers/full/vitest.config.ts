import { defineConfig } from "vitest/config";

// What takes minutes and the network, because it installs other compilers, Nodes and bundlers: `npm run test:consumers`.
export default defineConfig({
  test: {
    include: ["tests/consumers/full/*.check.ts"],
    testTimeout: 120_000,
    hookTimeout: 600_000,
    fileParallelism: false,
    passWithNoTests: false,
  },
});
