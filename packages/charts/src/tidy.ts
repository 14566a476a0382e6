/** A number of millimetres, litres or grams as a fact: rounded to a millionth, so that it prints short. */
export function tidy(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}
