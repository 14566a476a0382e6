import { changedPicks, createEvidence } from "@tapewise/afterwards";
import { parseEstimate } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { parseLength } from "@tapewise/units";
import { expect, test } from "vitest";
import { add, gingham, ofM } from "./gingham.ts";

const personAt = (mm: number) => ({
  estimates: [
    parseEstimate({
      dimension: "torso-length",
      readings: [parseLength(`${mm} mm`)],
      error: { biasMm: 6, repeatMm: 0, resolutionMm: 0 },
    }),
  ],
});
const crew = [405, 436, 437, 478].map(personAt);

test("those near an end that moved are given another size", () => {
  const evidence = createEvidence();
  add(evidence, { ...ofM, side: "below", meanMm: 443 }, 25);
  expect(changedPicks(crew, gingham, evidence)).toEqual({
    people: 4,
    changed: 2,
    share: 0.5,
    moves: [{ from: "M", to: "S", people: 2 }],
  });
});

test("nobody, and nobody who can be judged", () => {
  expect(changedPicks([], gingham, createEvidence())).toEqual({ people: 0, changed: 0, share: 0, moves: [] });
  expect(() => changedPicks([{ estimates: [] }], gingham, createEvidence())).toThrow(InvalidArgumentError);
});
