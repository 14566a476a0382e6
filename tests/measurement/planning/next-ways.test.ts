import { assumeConditions } from "@tapewise/measurement";
import { expect, test } from "vitest";
import { nextWays } from "../../../packages/measurement/src/planning/next-ways.ts";

test("alone with a tape and marks: everything is open", () => {
  expect(nextWays(assumeConditions({}, 300)).map(({ way }) => way)).toEqual([
    "repeat",
    "landmarks-afresh",
    "helper",
    "other-tool",
    "other-tool",
  ]);
});

test("a way changes one condition and leaves the others", () => {
  const helper = nextWays(assumeConditions({ landmarksFoundAfresh: true }, 300))[1];
  expect(helper).toEqual({ way: "helper", tool: "tape", measuredBy: "helper", landmarksFoundAfresh: true });
});
