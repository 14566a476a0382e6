const mutated = process.env["TAPEWISE_MUTATED"];

export default {
  mutate: [`packages/${mutated}/src/**/*.ts`],
  testRunner: "vitest",
  vitest: { configFile: "mutation/vitest.config.ts", related: false },
  plugins: ["@stryker-mutator/vitest-runner"],
  reporters: ["clear-text", "json", "progress-append-only"],
  jsonReporter: { fileName: `mutation/reports/${mutated}.json` },
  clearTextReporter: { logTests: false, allowColor: false },
  ignorePatterns: ["site", "benchmarks", "**/dist"],
  coverageAnalysis: "perTest",
  concurrency: 2,
  allowEmpty: false,
};
