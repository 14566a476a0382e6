import { InvalidArgumentError } from "@tapewise/outcome";

declare const unitOfLength: unique symbol;

/**
 * A length in millimetres. The brand keeps bare numbers, whose unit nobody knows, out of every
 * function that takes a length.
 */
export type Millimetres = number & { readonly [unitOfLength]: "mm" };

/**
 * Says that a finite number is a length in millimetres. It may be negative: a difference of lengths is one too.
 *
 * @throws {@link InvalidArgumentError} when the number is not finite.
 *
 * @example
 * ```ts
 * import { millimetres } from "@tapewise/units";
 * millimetres(432) + 1; // => 433
 * ```
 */
export function millimetres(value: number): Millimetres {
  if (!Number.isFinite(value))
    throw new InvalidArgumentError("value", value, "a finite number of millimetres");
  return value as Millimetres;
}
