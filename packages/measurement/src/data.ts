// The table of defaults. Basis of every figure: assumption. The only anchor is common practice, no
// source: readings that people take of themselves differ by a centimetre or more, a helper's by less.
// Degrees of freedom 8: each figure may be off by a quarter, ν = ½ · 0.25⁻² (JCGM 100:2008, G.4.2).
import type { ErrorDefaults } from "./error-defaults.ts";

/** The figures used where the caller states no error of readings. */
export const errorDefaults: ErrorDefaults = {
  hands: {
    "length along the body": {
      self: { handlingMm: 6, findingMm: 5, lastingMm: 5 },
      helper: { handlingMm: 4, findingMm: 3, lastingMm: 3 },
    },
    girth: {
      self: { handlingMm: 8, findingMm: 4, lastingMm: 6 },
      helper: { handlingMm: 6, findingMm: 3, lastingMm: 5 },
    },
    "straight height": {
      self: { handlingMm: 8, findingMm: 4, lastingMm: 6 },
      helper: { handlingMm: 4, findingMm: 3, lastingMm: 3 },
    },
    breadth: {
      self: { handlingMm: 8, findingMm: 6, lastingMm: 8 },
      helper: { handlingMm: 4, findingMm: 4, lastingMm: 4 },
    },
  },
  tools: {
    tape: { scaleHalfWidth: 0.003, transferMm: 0, jointMm: 0 },
    "cord-and-ruler": { scaleHalfWidth: 0.01, transferMm: 2, jointMm: 0 },
    "short-rule": { scaleHalfWidth: 0.001, transferMm: 0, jointMm: 2 },
  },
  degreesOfFreedom: 8,
  ruleLengthMm: 300,
  basis: "assumption",
};
