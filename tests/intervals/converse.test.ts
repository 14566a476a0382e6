import { allenRelations, converse } from "@tapewise/intervals";
import { expect, test } from "vitest";

test("only equals is its own converse", () => {
  expect(allenRelations.filter((name) => converse(name) === name)).toEqual(["equals"]);
});

test("the usual order reads the same backwards, but for starts and finishes", () => {
  expect(converse("before")).toBe("after");
  expect(converse("meets")).toBe("met-by");
  expect(converse("overlaps")).toBe("overlapped-by");
  expect(converse("starts")).toBe("started-by");
  expect(converse("during")).toBe("contains");
  expect(converse("finishes")).toBe("finished-by");
});
