import { describe, expect, test } from "vitest";
import { countTests } from "../../scripts/count-tests.mjs";
import { refusal } from "../../scripts/refusal.mjs";

describe("countTests", () => {
  const passing = { status: "passed", assertionResults: [{}, {}] };

  test("takes passed tests as passed", () => {
    expect(countTests({ numPassedTests: 2, numTotalTests: 2, testResults: [passing] })).toEqual({
      passed: 2,
      failed: 0,
    });
  });

  test("takes every other test as failed: a skipped one proves nothing", () => {
    // Five tests: two passed, so three did not.
    expect(countTests({ numPassedTests: 2, numTotalTests: 5, testResults: [passing] })).toEqual({
      passed: 2,
      failed: 3,
    });
  });

  test("takes a file that could not be run as one failure", () => {
    const broken = { status: "failed", assertionResults: [] };
    expect(countTests({ numPassedTests: 2, numTotalTests: 2, testResults: [passing, broken] })).toEqual({
      passed: 2,
      failed: 1,
    });
  });

  test("takes a report that was never written as a failure", () => {
    expect(countTests(undefined)).toEqual({ passed: 0, failed: 1 });
  });
});

describe("refusal", () => {
  test.each(["22.12.0", "22.13.1", "23.0.0", "24.21.0", "100.0.0"])("lets Node %s through", (version) => {
    expect(refusal(version, true)).toBeUndefined();
  });

  test.each(["20.20.2", "22.11.9", "18.0.0"])("refuses Node %s and says what is needed", (version) => {
    expect(refusal(version, true)).toContain(`need Node 22.12 or newer, and this is Node ${version}`);
  });

  test("asks for the dependencies first", () => {
    expect(refusal("20.20.2", false)).toContain('"npm ci"');
  });
});
