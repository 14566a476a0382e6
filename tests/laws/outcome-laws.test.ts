import { fc, test } from "@fast-check/vitest";
import {
  type Catalogue,
  createIssue,
  defineIssues,
  describeReceived,
  type Facts,
  fillTemplate,
  formatIssue,
  formatPath,
  type Issue,
  type IssuePath,
  IssuesError,
  relocateIssue,
  success,
  translateIssue,
  unwrap,
} from "@tapewise/outcome";
import { expect } from "vitest";

const catalogue = defineIssues({
  "unit-left-out": { severity: "error", message: "{received} has no {what}", expected: "{what} of {who}" },
  "size-doubtful": { severity: "warning", message: "{who} doubts {received}", expected: "a size" },
});

const text = fc.string({ unit: "binary" });
const path: fc.Arbitrary<IssuePath> = fc.array(fc.oneof(text, fc.nat()), { maxLength: 5 });
const place = fc.record(
  { file: text, line: fc.nat(), column: fc.nat() },
  { requiredKeys: ["line", "column"], noNullPrototype: true },
);
// Facts as JSON can hold them: no infinities, no NaN, no minus zero.
const fact = fc.oneof(
  text,
  fc.double({ noNaN: true, noDefaultInfinity: true }).map((x) => x + 0),
);
const facts: fc.Arbitrary<Facts> = fc
  .record({ what: fact, who: fact }, { requiredKeys: [], noNullPrototype: true })
  .map((some) => some as Facts);
const issue: fc.Arbitrary<Issue> = fc
  .record({
    code: fc.constantFrom<keyof typeof catalogue>("unit-left-out", "size-doubtful"),
    path,
    received: fc.anything(),
    facts,
    place: fc.option(place, { nil: undefined }),
  })
  .map(({ code, path, received, facts, place }) =>
    createIssue(catalogue, code, { path, received, facts, ...(place === undefined ? {} : { place }) }),
  );

const oneLine = /^[^\p{Cc}\p{Zl}\p{Zp}]*$/u;

test.prop([fc.anything({ withBigInt: true, withDate: true, withSparseArray: true, withTypedArray: true })])(
  "law: whatever was received is described by a short primitive that survives JSON unchanged",
  (value) => {
    const shown = describeReceived(value);
    expect(JSON.parse(JSON.stringify(shown))).toBe(shown);
    expect(String(shown).length).toBeLessThanOrEqual(80);
    expect(String(shown)).toMatch(oneLine);
  },
);

test.prop([fc.anything()])("law: describing is idempotent", (value) => {
  const once = describeReceived(value);
  expect(describeReceived(once)).toBe(once);
});

test.prop([issue])("law: an issue survives JSON unchanged", (made) => {
  expect(JSON.parse(JSON.stringify(made))).toEqual(made);
});

test.prop([issue])("law: an issue formats to one line that ends with its code", (made) => {
  const line = formatIssue(made);
  expect(line).toMatch(oneLine);
  expect(line.endsWith(`[${made.code}]`)).toBe(true);
});

test.prop([path, path])("law: different paths have different texts", (one, other) => {
  expect(formatPath(one) === formatPath(other)).toBe(JSON.stringify(one) === JSON.stringify(other));
});

// Unlike the law above, which mostly meets unrelated paths, this one takes a path apart in nearby ways.
const nearName = fc.constantFrom("a", "b", "a.b", "a[0]", "0", "[0]", "", ".", '"', "\\", '["a"]', " a");
const nearPath = fc.array(fc.oneof(nearName, fc.nat({ max: 1 })), { maxLength: 3 });
test.prop([nearPath, nearPath], { numRuns: 2000 })(
  "law: paths that look alike still have different texts",
  (one, other) => {
    expect(formatPath(one) === formatPath(other)).toBe(JSON.stringify(one) === JSON.stringify(other));
  },
);

test.prop([issue, path, path])(
  "law: relocating by an inner and then an outer prefix is relocating by both at once",
  (made, inner, outer) => {
    expect(relocateIssue(relocateIssue(made, inner), outer)).toEqual(
      relocateIssue(made, [...outer, ...inner]),
    );
  },
);

test.prop([issue])("law: relocating by nothing changes nothing", (made) => {
  expect(relocateIssue(made, [])).toEqual(made);
});

test.prop([issue])("law: translating into the catalogue's own words changes nothing", (made) => {
  expect(translateIssue(made, catalogue)).toEqual(made);
});

test.prop([issue])("law: translating there and back is where one began", (made) => {
  const elsewhere = {
    "unit-left-out": { message: "{what}: {received}?", expected: "{who}" },
    "size-doubtful": { message: "{received}!", expected: "{who}!" },
  };
  expect(translateIssue(translateIssue(made, elsewhere), catalogue)).toEqual(made);
});

test.prop([text.filter((template) => !template.includes("{")), facts])(
  "law: a text without places is filled to itself",
  (template, some) => {
    expect(fillTemplate(template, some)).toBe(template);
  },
);

test.prop([fc.anything(), fc.array(issue)])(
  "law: unwrap undoes success, whatever was questioned",
  (value, some) => {
    expect(unwrap(success(value, some))).toBe(value);
  },
);

test.prop([fc.array(issue, { minLength: 1 })])(
  "law: an error about issues names every one of their messages",
  (some) => {
    const error = new IssuesError(some);
    for (const { message } of some) expect(error.message).toContain(message);
  },
);

const codeLike = fc.stringMatching(/^[a-z][a-z0-9]{0,5}(-[a-z0-9]{1,5}){0,3}$/);
test.prop([fc.uniqueArray(codeLike, { minLength: 1 })])(
  "law: every code of lower-case words and hyphens is accepted and can be raised",
  (codes) => {
    const definition = { severity: "error", message: "m", expected: "e" } as const;
    const made: Catalogue = defineIssues(Object.fromEntries(codes.map((code) => [code, definition])));
    for (const code of codes) expect(createIssue(made, code).code).toBe(code);
  },
);
