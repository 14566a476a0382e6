import { lookAgain } from "@tapewise/afterwards";
import { InvalidArgumentError } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { allRight, answerAll, begin, fixedChart, middling } from "./walk.ts";

const setup = { chart: fixedChart, size: "M", length: middling };

test("the second look begins anew, whatever was set", () => {
  const first = answerAll(begin(setup), { ...allRight, "belt-position": "too-high" });
  const other = answerAll(begin(setup), { ...allRight, "sternum-strap": "binds" });
  expect([first.step.kind, other.step.kind]).toEqual(["adjust", "adjust"]);
  expect(lookAgain(first)).toEqual({ setup, look: 2, answers: [], step: { kind: "ask", item: "cautions" } });
  expect(lookAgain(other)).toEqual(lookAgain(first));
});

test("what was set and now sits right, sits right", () => {
  const first = answerAll(begin(setup), { ...allRight, "belt-position": "too-high" });
  expect(answerAll(lookAgain(first), allRight).step.kind).toBe("sits-right");
});

test("what was set and still is not right is for a fitter", () => {
  const seen = { ...allRight, "belt-position": "too-high" };
  const again = answerAll(lookAgain(answerAll(begin(setup), seen)), seen);
  expect(again.step).toEqual({ kind: "see-fitter", reason: "still-not-right" });
});

test("there is no second look where nothing was to be set", () => {
  expect(() => lookAgain(begin(setup))).toThrow(InvalidArgumentError);
  expect(() => lookAgain(answerAll(begin(setup), allRight))).toThrow(InvalidArgumentError);
});
