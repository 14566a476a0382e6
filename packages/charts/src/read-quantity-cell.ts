import { GRAMS_PER_OUNCE, GRAMS_PER_POUND, LITRES_PER_CUBIC_INCH } from "./data.ts";

/** What a column beside the body dimensions holds: the volume of a pack or its mass. */
export type Quantity = "capacity" | "mass";

/** The words for units, in lower case, and how many litres or grams they are. */
const UNITS: Readonly<Record<Quantity, ReadonlyMap<string, number>>> = {
  capacity: new Map([
    ...["l", "lt", "ltr", "litre", "litres", "liter", "liters"].map((word) => [word, 1] as const),
    ...["cu in", "cu. in.", "cu.in.", "cuin", "ci", "in3", "in³", "cubic inch", "cubic inches"].map(
      (word) => [word, LITRES_PER_CUBIC_INCH] as const,
    ),
  ]),
  mass: new Map([
    ...["g", "gram", "grams", "gramme", "grammes"].map((word) => [word, 1] as const),
    ...["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"].map((word) => [word, 1000] as const),
    ...["lb", "lbs", "lb.", "lbs.", "pound", "pounds"].map((word) => [word, GRAMS_PER_POUND] as const),
    ...["oz", "oz.", "ounce", "ounces"].map((word) => [word, GRAMS_PER_OUNCE] as const),
  ]),
};

/** The units that an issue may suggest. */
export const quantityUnits: Readonly<Record<Quantity, string>> = {
  capacity: "L or cu in",
  mass: "g, kg, lb or oz",
};

/** How many litres, or grams, a unit is. */
export function quantityUnit(word: string, quantity: Quantity): number | undefined {
  return UNITS[quantity].get(word.trim().toLowerCase());
}

/**
 * Reads `43`, `43 L`, `1,4 kg` or `3 lb 5 oz`, in litres or grams. `unit` is the header's; a cell's own
 * unit counts before it. A comma before exactly three digits may part thousands, so it is not read.
 */
export function readQuantityCell(
  text: string,
  quantity: Quantity,
  unit: number | undefined,
): number | undefined {
  const parts = text
    .trim()
    .match(/^(\d+(?:[.,]\d+)?)\s*([^\d\s].*?)?(?:\s+(\d+(?:[.,]\d+)?)\s*(oz\.?|ounces?))?$/i);
  if (parts === null) return undefined;
  const [, amount = "", word, ounces, ounceWord] = parts;
  const size = word === undefined ? unit : quantityUnit(word, quantity);
  if (size === undefined || isUnclear(amount)) return undefined;
  let total = numberOf(amount) * size;
  if (ounceWord !== undefined) {
    if (quantity !== "mass" || size !== GRAMS_PER_POUND || word === undefined || isUnclear(ounces ?? ""))
      return undefined;
    total += numberOf(ounces ?? "") * GRAMS_PER_OUNCE;
  }
  return total > 0 && Number.isFinite(total) ? total : undefined;
}

function isUnclear(amount: string): boolean {
  return /,\d{3}$/.test(amount);
}

function numberOf(amount: string): number {
  return Number(amount.replace(",", "."));
}
