import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parseChart } from "@tapewise/charts";
import { chooseLine, createLineAnswerer } from "tapewise/batch";
import { describe, expect, test } from "vitest";
import { root } from "../../architecture/workspace.ts";

const demo = join(root, "packages/tapewise/demo");
const chart = parseChart(readFileSync(join(demo, "charts/thimblewick-doily-45.csv"), "utf8"));
const crew = readFileSync(join(demo, "crew.ndjson"), "utf8").trim().split("\n");
const encode = (text: string) => new TextEncoder().encode(text);

function linesOf(bytes: Uint8Array): readonly unknown[] {
  const text = new TextDecoder().decode(bytes);
  expect(text === "" || text.endsWith("\n")).toBe(true);
  return text
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => JSON.parse(line));
}

describe("createLineAnswerer", () => {
  test.each(["automatic", "none"] as const)("answers as chooseLine does, with prior %s", (prior) => {
    const answer = createLineAnswerer([chart], { prior });
    const { bytes, anyBad } = answer(encode(crew.join("\n")));
    expect(linesOf(bytes)).toEqual(
      crew.map((line) => JSON.parse(JSON.stringify(chooseLine(line, [chart], { prior })))),
    );
    expect(anyBad).toBe(false);
  });

  test("counts lines on from call to call, blank ones too", () => {
    const answer = createLineAnswerer([chart]);
    expect(linesOf(answer(encode("\n{\n")).bytes)).toMatchObject([
      { issues: [{ message: "line 2 is not JSON" }] },
    ]);
    expect(linesOf(answer(encode("[")).bytes)).toMatchObject([
      { issues: [{ message: "line 3 is not JSON" }] },
    ]);
    expect(linesOf(answer(encode("x\n")).bytes)).toMatchObject([
      { issues: [{ message: "line 4 is not JSON" }] },
    ]);
  });

  test("what it gave stays as it is", () => {
    const answer = createLineAnswerer([chart]);
    const { bytes } = answer(encode(crew[0] ?? ""));
    const before = bytes.slice();
    answer(encode(crew[1] ?? ""));
    expect(bytes).toEqual(before);
  });
});
