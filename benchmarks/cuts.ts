// Where sizes are best cut, for more and more places that a range may begin at, and for more and more sizes.
import { cutSizes } from "@tapewise/coverage";
import { referencePopulation } from "@tapewise/population";
import { growthPower, type SizedTime, tableOf, timeSizes } from "./growth.ts";
import type { Suite } from "./suite.ts";

const STEPS_MM = [4, 2, 1, 0.5, 0.25, 0.125];
const COUNTS = [2, 4, 8, 16, 32];
const ROUNDS = 5;
/** Work is repeated until it takes about so long, in ms. */
const LONG_MS = 40;

const rowsOf = (times: readonly SizedTime[], sizeOf: (size: number) => string) =>
  times.map(({ size, ms }) => [sizeOf(size), ms.toPrecision(3)]);

/** The suite of cutting sizes. */
export const cutsSuite: Suite = {
  name: "cuts",
  title: "Where five sizes are best cut",
  async prepare() {
    const population = referencePopulation("women");
    const cut = (count: number, stepMm: number) =>
      cutSizes({ population, dimension: "torso-length", count, goal: "misfit", spanMm: 30, stepMm });
    const repeated = (size: number, work: () => unknown) => {
      const begin = performance.now();
      work();
      const count = Math.max(1, Math.round(LONG_MS / (performance.now() - begin)));
      const repeat = (): number => {
        for (let k = 0; k < count; k += 1) work();
        return count;
      };
      return { size, repeat };
    };
    const byStep = timeSizes(
      STEPS_MM.map((stepMm) => repeated(1 / stepMm, () => cut(5, stepMm))),
      ROUNDS,
    );
    const byCount = timeSizes(
      COUNTS.map((count) => repeated(count, () => cut(count, 0.5))),
      ROUNDS,
    );
    return {
      note: [
        tableOf(
          ["places, five sizes", "processor, ms"],
          rowsOf(byStep, (size) => `every ${1 / size} mm`),
        ),
        tableOf(
          ["sizes, places every 0.5 mm", "processor, ms"],
          rowsOf(byCount, (size) => String(size)),
        ),
        `Time grows with the number of places to the power of ${growthPower(byStep)}, and with the number of sizes to the power of ` +
          `${growthPower(byCount)} (slope of the logarithms and its standard error). Every smaller number of sizes is answered with it.`,
      ].join("\n\n"),
      tasks: [],
    };
  },
};
