// One choice among eight sizes for many people: columns beside the bare evaluations of Φ at the sixteen ends, beside
// the same choice put together from general-purpose libraries, and beside drawing.
import { execFileSync } from "node:child_process";
import studentCdf from "@stdlib/stats-base-dists-t-cdf";
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
import jstat from "jstat";
import { erf } from "mathjs";
import { cumulativeStdNormalProbability } from "simple-statistics";
import type { Suite } from "./suite.ts";

const PEOPLE = 200;
const DRAWS = 10_000;
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

/** The likeliest size of everybody, and what misfit to expect of each, from somebody else's Φ. */
function compose({ meansMm, sdsMm }: PeopleColumns, cdf: (z: number, person: number) => number): number {
  let sum = 0;
  for (let person = 0; person < meansMm.length; person += 1) {
    const [mean, sd] = [meansMm[person] as number, sdsMm[person] as number];
    let [pick, best] = [0, -1];
    for (let size = 0; size < ends.length; size += 2) {
      const a = ((ends[size] as number) - mean) / sd;
      const b = ((ends[size + 1] as number) - mean) / sd;
      const [below, upTo] = [cdf(a, person), cdf(b, person)];
      const density = (z: number) => Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
      sum += sd * (a * below + density(a) + density(b) - b * (1 - upTo));
      if (upTo - below > best) [pick, best] = [size, upTo - below];
    }
    sum += pick;
  }
  return sum;
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

/** Nanoseconds for each of so many people, and the memory of the process afterwards in MiB. */
function grow(count: number): string {
  const people = invent(count);
  const out = createChoiceColumns(count, 0);
  const { sizeProbabilities: _, sizeMisfitsMm: __, ...lean } = out;
  const { meansMm, sdsMm } = people;
  const start = performance.now();
  chooseColumns(plan, { meansMm, sdsMm }, lean);
  const nanoseconds = ((performance.now() - start) * 1e6) / count;
  const memory = process.memoryUsage().rss / 1024 / 1024;
  return `${count.toExponential(0)}: ${nanoseconds.toFixed(0)} ns (${memory.toFixed(0)} MiB)`;
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

/** The suite of columns. */
export const columnsSuite: Suite = {
  title: `One choice among eight sizes for each of ${PEOPLE} people`,
  async prepare() {
    const people = invent(PEOPLE);
    const { meansMm, sdsMm, degreesOfFreedom } = people;
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
    // Once to warm up: the engine compiles what runs often.
    grow(1e5);
    const growth = [1e3, 1e4, 1e5, 1e6, 1e7].map((count) => grow(count));
    return {
      baseline: "Φ at the sixteen ends, a bare loop over typed arrays",
      note:
        `No two sizes share an end, so that there are 16 evaluations of Φ; columns need the density there too, pick, settle, judge and tell why. ` +
        `By the number of people, with the memory of the whole process: ${growth.join(", ")}.${byR()}`,
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
        {
          name: "composed with simple-statistics (a table of four decimals)",
          work: () => compose(people, cumulativeStdNormalProbability),
        },
        { name: "composed with jstat", work: () => compose(people, (z) => jstat.normal.cdf(z, 0, 1)) },
        {
          name: "composed with mathjs (erf)",
          work: () => compose(people, (z) => 0.5 * (1 + erf(z * Math.SQRT1_2))),
        },
        {
          name: "composed with @stdlib, Student's t",
          work: () => compose(people, (z, person) => studentCdf(z, degreesOfFreedom[person] as number)),
        },
        { name: `${DRAWS} draws a person`, work: () => draw(people, () => random.normal()) },
      ],
    };
  },
};
