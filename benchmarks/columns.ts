// One choice among eight sizes for many people: columns beside the bare evaluations of Φ at the sixteen ends, beside
// compositions of general-purpose libraries, beside drawing, and for more and more people.
import { execFileSync } from "node:child_process";
import { parseChart } from "@tapewise/charts";
import {
  chooseColumns,
  createChoiceColumns,
  type PeopleColumns,
  recommend,
  safeCompileColumns,
} from "@tapewise/fit";
import { parseEstimate } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { createRandom, normalCdf } from "@tapewise/statistics";
import { parseLength } from "@tapewise/units";
import { chooseComposed, LASTING_DEGREES, LASTING_MM, type Toolbox, toolboxes } from "./composed.ts";
import { growthPower, timeSizes } from "./growth.ts";
import type { Suite } from "./suite.ts";

const PEOPLE = 200;
const DRAWS = 10_000;
const READINGS = 3;
const GROWING = [1e3, 1e4, 1e5, 1e6, 1e7];
const ROUNDS = 5;
/** So many people are asked about in each timing of a smaller number. */
const AT_LEAST = 1e6;
const rows = Array.from({ length: 8 }, (_, k) => `S${k},${34 + 3 * k}-${38.5 + 3 * k}`);
const chart = parseChart(["size,torso-length (cm)", ...rows].join("\n"), { chart: "Eight sizes" });
const plan = unwrap(safeCompileColumns(chart, { read: ["torso-length"] }));
const ranges = chart.sizes.flatMap(({ ranges }) => ranges["torso-length"]?.interval ?? []);
const ends = Float64Array.from(ranges.flatMap(({ from, to }) => [from, to]));

function invent(count: number): PeopleColumns & { readonly degreesOfFreedom: Float64Array } {
  const random = createRandom(1);
  const column = (next: () => number) => Float64Array.from({ length: count }, next);
  return {
    meansMm: column(() => 450 + 60 * random.normal()),
    sdsMm: column(() => 5 + 8 * random.uniform()),
    degreesOfFreedom: column(() => 9 + 20 * random.uniform()),
  };
}

/** The likeliest size of everybody by drawing. */
function draw({ meansMm, sdsMm }: PeopleColumns, next: () => number): number {
  const hits = new Int32Array(8);
  let sum = 0;
  for (let person = 0; person < meansMm.length; person += 1) {
    hits.fill(0);
    for (let k = 0; k < DRAWS; k += 1) {
      const length = (meansMm[person] as number) + (sdsMm[person] as number) * next();
      for (let size = 0; size < 8; size += 1) {
        if (length >= (ends[2 * size] as number) && length <= (ends[2 * size + 1] as number)) {
          hits[size] = (hits[size] as number) + 1;
        }
      }
    }
    sum += hits.indexOf(Math.max(...hits));
  }
  return sum;
}

/** Nanoseconds for one Φ of R, over columns; nothing where there is no R. */
function byR(): string {
  const script =
    "z <- rnorm(4e6); t <- system.time(for (i in 1:4) pnorm(z))[['user.self']]; cat(t / 16e6 * 1e9)";
  try {
    const text = execFileSync("Rscript", ["-e", script], { encoding: "utf8" });
    const start = performance.now();
    let sum = 0;
    for (let k = 0; k < 4_000_000; k += 1) sum += normalCdf((k % 1000) / 125 - 4);
    const own = ((performance.now() - start) * 1e6) / 4e6;
    if (!(sum > 0)) throw new Error("the sum of Φ is above 0");
    return ` R's vectorised pnorm takes ${Number(text).toFixed(0)} ns for one Φ, normalCdf ${own.toFixed(0)} ns.`;
  } catch {
    return " R was not there to be compared with.";
  }
}

/** The suite of columns beside what they are made of. */
export const columnsSuite: Suite = {
  name: "columns",
  title: `One choice among eight sizes for each of ${PEOPLE} people, from beliefs`,
  async prepare() {
    const { meansMm, sdsMm, degreesOfFreedom } = invent(PEOPLE);
    const out = createChoiceColumns(PEOPLE, 8);
    const random = createRandom(2);
    const persons = Array.from(meansMm, (mm) => ({
      estimates: [
        parseEstimate({
          dimension: "torso-length",
          readings: [parseLength(`${Math.round(mm)} mm`)],
          error: { biasMm: 8, repeatMm: 0, resolutionMm: 0 },
        }),
      ],
    }));
    return {
      baseline: "Φ at the sixteen ends, a bare loop over typed arrays",
      note: `No two sizes share an end, so that there are 16 evaluations of Φ; columns need the density there too, pick, settle, judge and tell why.${byR()}`,
      tasks: [
        {
          name: "Φ at the sixteen ends, a bare loop over typed arrays",
          work: () => {
            let sum = 0;
            for (let person = 0; person < PEOPLE; person += 1) {
              const [mean, sd] = [meansMm[person] as number, sdsMm[person] as number];
              for (let end = 0; end < ends.length; end += 1)
                sum += normalCdf(((ends[end] as number) - mean) / sd);
            }
            return sum;
          },
        },
        { name: "columns, normal beliefs", work: () => chooseColumns(plan, { meansMm, sdsMm }, out) },
        {
          name: "columns, Student's t",
          work: () => chooseColumns(plan, { meansMm, sdsMm, degreesOfFreedom }, out),
        },
        {
          name: "recommend, one by one",
          work: () => persons.map((one) => recommend(one, chart, { unit: "cm" })),
        },
        { name: `${DRAWS} draws a person`, work: () => draw({ meansMm, sdsMm }, () => random.normal()) },
      ],
    };
  },
};

/** Readings of everybody, in a row for each person. */
function inventReadings(): Float64Array {
  const random = createRandom(3);
  const { meansMm } = invent(PEOPLE);
  return Float64Array.from(
    { length: PEOPLE * READINGS },
    (_, k) => (meansMm[Math.floor(k / READINGS)] ?? 0) + 6 * random.normal(),
  );
}

/** Means, uncertainties and degrees of freedom of readings, as the compositions work them out, into columns. */
function sumUp(
  readings: Float64Array,
  { meansMm, sdsMm, degreesOfFreedom }: ReturnType<typeof invent>,
): void {
  const lasting = LASTING_MM ** 2;
  for (let person = 0; person < PEOPLE; person += 1) {
    let sum = 0;
    for (let k = 0; k < READINGS; k += 1) sum += readings[person * READINGS + k] as number;
    const mean = sum / READINGS;
    let squares = 0;
    for (let k = 0; k < READINGS; k += 1)
      squares += ((readings[person * READINGS + k] as number) - mean) ** 2;
    const own = squares / (READINGS - 1) / READINGS;
    const variance = own + lasting;
    meansMm[person] = mean;
    sdsMm[person] = Math.sqrt(variance);
    degreesOfFreedom[person] = variance ** 2 / (own ** 2 / (READINGS - 1) + lasting ** 2 / LASTING_DEGREES);
  }
}

/** The suite of columns beside compositions of libraries. */
export const columnsLibrariesSuite: Suite = {
  name: "columns",
  title: `One choice among eight sizes for each of ${PEOPLE} people, from three readings in mm`,
  async prepare() {
    const readings = inventReadings();
    const columns = invent(PEOPLE);
    const out = createChoiceColumns(PEOPLE, 8);
    const people = Array.from({ length: PEOPLE }, (_, k) => ({
      "torso-length": [...readings.subarray(k * READINGS, (k + 1) * READINGS)],
    }));
    const sizes = chart.sizes.map(({ name, ranges }) => ({
      name,
      ranges: Object.fromEntries(
        Object.entries(ranges).map(([dimension, { interval }]) => [dimension, interval]),
      ),
    }));
    const own = "readings summed up in a loop, then columns, Student's t";
    sumUp(readings, columns);
    chooseColumns(plan, columns, out);
    /** How far the chances of a composition are from those of the columns at most. */
    const farthest = (toolbox: Toolbox): string => {
      const chances = people.flatMap((person) =>
        chooseComposed(person, sizes, toolbox).sizes.map(({ probability }) => probability),
      );
      const apart = chances.map((chance, k) => Math.abs(chance - (out.sizeProbabilities?.[k] ?? Number.NaN)));
      return Math.max(...apart).toExponential(0);
    };
    return {
      baseline: own,
      note:
        "The compositions go from the readings of a person to an object with the chances of all sizes and the likeliest: mean and " +
        "standard deviation by the library, the uncertainties added, two evaluations of the distribution for each size. They leave out the expected " +
        "misfit, the verdict, ties and reasons, which columns give as well. Only two of them have Student's t; the other two take the normal " +
        `distribution in its place, which is quicker and not what so few readings allow. The chances of the compositions differ from those of the columns by so much at ` +
        `most: ${Object.entries(toolboxes)
          .map(([name, toolbox]) => `${name}: ${farthest(toolbox)}`)
          .join("; ")}.`,
      tasks: [
        {
          name: own,
          work: () => {
            sumUp(readings, columns);
            chooseColumns(plan, columns, out);
          },
        },
        ...Object.entries(toolboxes).map(([name, toolbox]) => ({
          name: `composed: ${name}`,
          work: () => people.map((person) => chooseComposed(person, sizes, toolbox)),
        })),
      ],
    };
  },
};

/** The suite of more and more people. */
export const columnsGrowthSuite: Suite = {
  name: "columns",
  title: "Columns for more and more people",
  async prepare() {
    const times = timeSizes(
      GROWING.map((count) => {
        const { meansMm, sdsMm } = invent(count);
        const { sizeProbabilities: _, sizeMisfitsMm: __, ...lean } = createChoiceColumns(count, 0);
        const repeat = (): number => {
          const times = Math.max(1, Math.round(AT_LEAST / count));
          for (let k = 0; k < times; k += 1) chooseColumns(plan, { meansMm, sdsMm }, lean);
          return times;
        };
        return { size: count, repeat };
      }),
      ROUNDS,
    );
    const memory = process.memoryUsage().rss / 2 ** 20;
    const each = times.map(
      ({ size, ms }) => `${size.toLocaleString("en")} people ${((ms * 1e6) / size).toFixed(0)} ns`,
    );
    return {
      note:
        `Processor time for each person, the median of ${ROUNDS} rounds in which all numbers took turns: ${each.join(", ")}. ` +
        `Time grows with the number of people to the power of ${growthPower(times)} (slope of the logarithms and its standard error). ` +
        `The whole process, with all these columns at once, took ${memory.toFixed(0)} MiB.`,
      tasks: [],
    };
  },
};
