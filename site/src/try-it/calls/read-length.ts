import { outcome, units } from "tapewise";

/** A length as somebody wrote it, in millimetres, centimetres and inches. */
export function readLength(text: string) {
  const read = units.safeParseLength(text);
  if (!read.ok) return read;
  const { mm } = read.value;
  const answer = {
    mm,
    cm: units.formatLength(mm, { unit: "cm", decimals: 1, rounding: "half-even" }),
    in: units.formatLength(mm, { unit: "in", denominator: 8, rounding: "half-even" }),
  };
  return outcome.success(answer, read.issues);
}
