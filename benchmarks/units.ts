// Converting and reading lengths, beside a bare multiplication and beside general-purpose packages.
import { parseLength, toMillimetres } from "@tapewise/units";
import convert from "convert-units";
import quantity from "js-quantities";
import type { Suite } from "./suite.ts";

const COUNT = 1000;

function sumOver(work: (inches: number) => number): number {
  let sum = 0;
  for (let i = 1; i <= COUNT; i += 1) sum += work(i / 8);
  return sum;
}

/** The suite of lengths. */
export const unitsSuite: Suite = {
  name: "units",
  title: `${COUNT} lengths in inches to millimetres`,
  async prepare() {
    const texts = Array.from({ length: COUNT }, (_, i) => `${(i + 1) / 8} in`);
    return {
      baseline: "multiplication by 25.4",
      note: "The multiplication is not exact in every case; toMillimetres gives the nearest double.",
      tasks: [
        { name: "multiplication by 25.4", work: () => sumOver((inches) => inches * 25.4) },
        { name: "toMillimetres", work: () => sumOver((inches) => toMillimetres(inches, "in")) },
        { name: "convert-units", work: () => sumOver((inches) => convert(inches).from("in").to("mm")) },
        { name: "js-quantities", work: () => sumOver((inches) => quantity(inches, "in").to("mm").scalar) },
        {
          name: "parseLength, from text",
          work: () => texts.reduce((sum, text) => sum + parseLength(text).mm, 0),
        },
      ],
    };
  },
};
