/**
 * How a result follows from its inputs. The list is used again for the next call: read it, do not keep it.
 * All values in the units of the inputs, in their order.
 */
export type MeasurementModel = (values: ArrayLike<number>) => number;

/** An input of a measurement: what is known of it by the law of propagation. */
export interface UncertainInput {
  /** A name of its own among the inputs. */
  readonly name: string;
  readonly value: number;
  /** Standard uncertainty, 0 or more. */
  readonly uncertainty: number;
  /** Degrees of freedom, above 0; infinite where they are left out. */
  readonly degreesOfFreedom?: number;
}
