import { InvalidArgumentError } from "@tapewise/outcome";

/** The character between whole numbers and decimals. */
export type DecimalMark = "." | ",";

/**
 * The decimal mark that a locale uses with Latin digits, by the runtime's locale data.
 *
 * @throws {@link InvalidArgumentError} when the locale is no BCP 47 tag.
 *
 * @example
 * ```ts
 * import { decimalMarkOf } from "@tapewise/units";
 * decimalMarkOf("de-DE"); // => ","
 * decimalMarkOf("en-GB"); // => "."
 * ```
 */
export function decimalMarkOf(locale: string): DecimalMark {
  let format: Intl.NumberFormat;
  try {
    format = new Intl.NumberFormat(locale, { numberingSystem: "latn" });
  } catch {
    throw new InvalidArgumentError("locale", locale, "a language tag such as en-GB");
  }
  return format.format(1.5).includes(",") ? "," : ".";
}
