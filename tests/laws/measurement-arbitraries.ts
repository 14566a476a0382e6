import { fc } from "@fast-check/vitest";
import { type DimensionId, dimensionIds } from "@tapewise/landmarks";
import type { Conditions, ErrorDefaults, StatedError } from "@tapewise/measurement";
import { errorDefaults } from "@tapewise/measurement";
import { type LengthReading, parseLength } from "@tapewise/units";

export const dimensionArbitrary: fc.Arbitrary<DimensionId> = fc.constantFrom(...dimensionIds);

/** A reading in whole millimetres, about as long as bodies are. */
const millimetreReading: fc.Arbitrary<LengthReading> = fc
  .integer({ min: 300, max: 1200 })
  .map((mm) => parseLength(`${mm} mm`));

/** A reading in any unit and to any step that people write. */
const anyReading: fc.Arbitrary<LengthReading> = fc
  .oneof(
    fc.integer({ min: 1, max: 2000 }).map((mm) => `${mm} mm`),
    fc.integer({ min: 1, max: 2000 }).map((mm) => `${(mm / 10).toFixed(1)} cm`),
    fc.integer({ min: 1, max: 200 }).map((cm) => `${cm} cm`),
    fc.integer({ min: 1, max: 80 }).map((inches) => `${inches} in`),
    fc
      .tuple(fc.integer({ min: 1, max: 80 }), fc.integer({ min: 1, max: 7 }))
      .map(([inches, eighths]) => `${inches} ${eighths}/8 in`),
  )
  .map((text) => parseLength(text));

export const someReadings: fc.Arbitrary<readonly LengthReading[]> = fc.array(anyReading, {
  minLength: 1,
  maxLength: 12,
});

export const someMillimetres: fc.Arbitrary<readonly LengthReading[]> = fc.array(millimetreReading, {
  minLength: 1,
  maxLength: 12,
});

/** A standard deviation in mm, none included. */
export const sdArbitrary: fc.Arbitrary<number> = fc.oneof(
  fc.constant(0),
  fc.double({ min: 1e-6, max: 50, noNaN: true }),
);

export const errorArbitrary: fc.Arbitrary<StatedError> = fc.record({
  biasMm: sdArbitrary,
  repeatMm: sdArbitrary,
  resolutionMm: sdArbitrary,
});

export const conditionsArbitrary: fc.Arbitrary<Conditions> = fc.record(
  {
    tool: fc.constantFrom("tape" as const, "cord-and-ruler" as const, "short-rule" as const),
    measuredBy: fc.constantFrom("self" as const, "helper" as const),
    landmarksFoundAfresh: fc.boolean(),
    ruleLengthMm: fc.double({ min: 10, max: 1000, noNaN: true }),
  },
  { requiredKeys: [] },
);

const handArbitrary = fc.record({ handlingMm: sdArbitrary, findingMm: sdArbitrary, lastingMm: sdArbitrary });
const handsArbitrary = fc.record({ self: handArbitrary, helper: handArbitrary });
const toolArbitrary = fc.record({
  scaleHalfWidth: fc.double({ min: 0, max: 0.1, noNaN: true }),
  transferMm: sdArbitrary,
  jointMm: sdArbitrary,
});

/** Another table of defaults, its corners (no error at all, known without doubt) included. */
export const defaultsArbitrary: fc.Arbitrary<ErrorDefaults> = fc.oneof(
  fc.constant(errorDefaults),
  fc.record({
    hands: fc.record({
      "length along the body": handsArbitrary,
      girth: handsArbitrary,
      "straight height": handsArbitrary,
      breadth: handsArbitrary,
    }),
    tools: fc.record({ tape: toolArbitrary, "cord-and-ruler": toolArbitrary, "short-rule": toolArbitrary }),
    degreesOfFreedom: fc.oneof(
      fc.double({ min: 2.1, max: 200, noNaN: true }),
      fc.constant(Number.POSITIVE_INFINITY),
    ),
    ruleLengthMm: fc.double({ min: 10, max: 1000, noNaN: true }),
    basis: fc.constant("common-practice" as const),
  }),
);
