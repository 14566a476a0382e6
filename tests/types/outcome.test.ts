import {
  createIssue,
  defineIssues,
  type Failure,
  failure,
  hasIssues,
  type Issue,
  type Outcome,
  success,
  type Translation,
  translateIssue,
  unwrap,
} from "@tapewise/outcome";
import { describe, expect, expectTypeOf, test } from "vitest";

const catalogue = defineIssues({
  "it-rains": { severity: "error", message: "it rains", expected: "sun" },
  "it-snows": { severity: "error", message: "it snows", expected: "sun" },
});

describe("what must not compile", () => {
  test("taking the value of an outcome without asking whether there is one", () => {
    const outcome = success(5) as Outcome<number>;
    // @ts-expect-error a failure has no value
    expect(outcome.value).toBe(5);
    if (outcome.ok) expectTypeOf(outcome.value).toEqualTypeOf<number>();
    else expectTypeOf(outcome).toEqualTypeOf<Failure>();
  });

  test("a failure without an issue", () => {
    // @ts-expect-error a failure says why
    expect(failure([]).issues).toEqual([]);
    const some: readonly Issue[] = [createIssue(catalogue, "it-rains")];
    // @ts-expect-error a list that may be empty is not enough
    expect(failure(some).ok).toBe(false);
    if (hasIssues(some)) expect(failure(some).ok).toBe(false);
  });

  test("raising a code that the catalogue does not have", () => {
    // @ts-expect-error misspelt
    expect(() => createIssue(catalogue, "it-rain")).toThrow("a code of the catalogue");
  });

  test("a definition with an unknown severity or a part left out", () => {
    // @ts-expect-error "fatal" is no severity
    defineIssues({ "it-rains": { severity: "fatal", message: "it rains", expected: "sun" } });
    // @ts-expect-error expected is left out
    const partial = defineIssues({ "it-rains": { severity: "error", message: "it rains" } });
    expect(Object.keys(partial)).toEqual(["it-rains"]);
  });

  test("a translation that leaves a code out", () => {
    const german: Translation<typeof catalogue> = {
      "it-rains": { message: "es regnet", expected: "Sonne" },
      "it-snows": { message: "es schneit", expected: "Sonne" },
    };
    // @ts-expect-error "it-snows" is left out
    const partial: Translation<typeof catalogue> = { "it-rains": german["it-rains"] };
    expect(translateIssue(createIssue(catalogue, "it-rains"), partial).message).toBe("es regnet");
  });

  test("changing an issue or the list of an outcome", () => {
    const issue: Issue = { ...createIssue(catalogue, "it-rains") };
    // @ts-expect-error an issue is a record of what was found
    issue.code = "it-snows";
    const outcome = success(1, []);
    // @ts-expect-error the list is read-only
    expect(() => outcome.issues.push(issue)).not.toThrow();
  });
});

describe("what the types tell", () => {
  test("defineIssues keeps its codes as literals", () => {
    expectTypeOf<keyof typeof catalogue>().toEqualTypeOf<"it-rains" | "it-snows">();
    expect(Object.keys(catalogue)).toEqual(["it-rains", "it-snows"]);
  });

  test("unwrap gives the type of the value", () => {
    const size: "M" = unwrap(success("M" as const) as Outcome<"M">);
    expect(size).toBe("M");
  });
});
