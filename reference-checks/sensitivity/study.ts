import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseChart, type SizeChart } from "@tapewise/charts";
import { defaultPolicy, type Person, recommend } from "@tapewise/fit";
import { contains } from "@tapewise/intervals";
import { type ErrorDefaults, errorDefaults, type Prior, parseEstimate } from "@tapewise/measurement";
import { referencePopulation, referencePrior } from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { millimetres, parseLength } from "@tapewise/units";
import { type Assumption, asAssumed, assumptions, type Figures, type ToolOf } from "./assumptions.ts";

/** Somebody with a stature, and what luck has in store for their readings. */
export interface Someone {
  readonly cut: "women" | "men";
  readonly statureMm: number;
  /** Torso of the survey at that stature, and how many spreads this person is off it. */
  readonly usualMm: number;
  readonly spreadMm: number;
  readonly apart: number;
  /** Standard normal numbers for what lasts (bones, habit), a uniform one for the scale, and normal ones a reading. */
  readonly luck: {
    readonly bones: number;
    readonly habit: number;
    readonly scale: number;
    readonly scatter: readonly number[];
    readonly steadiness: number;
  };
  readonly hasBroadChest: boolean;
}

const READINGS = 3;
const STEP_MM = 5;

const demo = join(import.meta.dirname, "../../packages/tapewise/demo/charts");

/** The invented charts of the demo that go by torso length. */
export function demoCharts(): readonly SizeChart[] {
  return readdirSync(demo)
    .sort()
    .map((file) => parseChart(readFileSync(join(demo, file), "utf8"), { chart: file }))
    .filter(({ sizes }) => sizes.every(({ ranges }) => ranges["torso-length"] !== undefined));
}

/** People of the reference population, half women and half men, always the same. */
export function drawPeople(count: number, seed: number): readonly Someone[] {
  return Array.from({ length: count }, (_, i) => {
    const random = createRandom(seed).fork(i);
    const cut = i % 2 === 0 ? "women" : "men";
    const model = referencePopulation(cut).marginal(["stature", "torso-length"]);
    const stature = model.distribution("stature");
    const statureMm = stature.mean + stature.sd * random.normal();
    const given = model.conditional({ stature: millimetres(statureMm) }).distribution("torso-length");
    return {
      cut,
      statureMm,
      usualMm: given.mean,
      spreadMm: given.sd,
      apart: random.normal(),
      luck: {
        bones: random.normal(),
        habit: random.normal(),
        scale: 2 * random.uniform() - 1,
        scatter: Array.from({ length: READINGS }, () => random.normal()),
        steadiness: random.uniform(),
      },
      hasBroadChest: random.uniform() < 0.3,
    };
  });
}

const toolKey = { tape: "tape", "cord-and-ruler": "cord", "short-rule": "rule" } as const;

/** The true torso along the spine, where the world is like this. */
export function truthOf(someone: Someone, world: Figures): number {
  const { usualMm, spreadMm, apart } = someone;
  return usualMm + world.surplusMm + world.priorShiftMm + world.priorSpread * spreadMm * apart;
}

/** Three readings by oneself, rounded to half centimetres. */
export function readingsOf(someone: Someone, world: Figures, tool: ToolOf): readonly string[] {
  const { luck } = someone;
  const truth = truthOf(someone, world);
  const { scaleHalfWidth, transferMm, jointMm } = world[toolKey[tool]];
  // Who errs more than others errs so in everything: a chi-square of few degrees, by its share (Wilson & Hilferty 1931).
  const nu = world.degreesOfFreedom;
  const isDefault = nu === asAssumed.degreesOfFreedom;
  const z = Math.max(-3, Math.min(3, Math.SQRT2 * inverseErf(2 * luck.steadiness - 1)));
  const unsteady = isDefault ? 1 : 1 / Math.sqrt((1 - 2 / (9 * nu) + z * Math.sqrt(2 / (9 * nu))) ** 3);
  const lasting =
    world.sharedBiasMm +
    unsteady * (world.findingMm * luck.bones + world.lastingMm * luck.habit) +
    scaleHalfWidth * luck.scale * truth;
  const joints = tool === "short-rule" ? Math.max(0, Math.ceil(truth / errorDefaults.ruleLengthMm) - 1) : 0;
  const each = Math.hypot(unsteady * world.handlingMm, Math.SQRT2 * transferMm, Math.sqrt(joints) * jointMm);
  return luck.scatter.map((scatter) => {
    const mm = STEP_MM * Math.round((truth + lasting + each * scatter) / STEP_MM);
    return `${(mm / 10).toFixed(1)} cm`;
  });
}

/** Winitzki's approximation, good to 2 in 1000: enough for how steady somebody is. */
function inverseErf(x: number): number {
  const a = 0.147;
  const l = Math.log(Math.max(1e-12, 1 - x * x));
  const b = 2 / (Math.PI * a) + l / 2;
  return Math.sign(x) * Math.sqrt(Math.sqrt(b * b - l / a) - b);
}

function defaultsOf(figures: Figures): ErrorDefaults {
  const { handlingMm, findingMm, lastingMm, degreesOfFreedom } = figures;
  const { hands } = errorDefaults;
  const kind = "length along the body";
  return {
    ...errorDefaults,
    degreesOfFreedom,
    hands: { ...hands, [kind]: { ...hands[kind], self: { handlingMm, findingMm, lastingMm } } },
    tools: { tape: figures.tape, "cord-and-ruler": figures.cord, "short-rule": figures.rule },
  };
}

function priorOf(someone: Someone, model: Figures): Prior | undefined {
  if (!model.hasPrior) return undefined;
  const prior = referencePrior({
    cut: someone.cut,
    statureMm: millimetres(someone.statureMm),
    curveSurplusMm: model.surplusMm + model.priorShiftMm,
  });
  return {
    ...prior,
    covarianceMm2: prior.covarianceMm2.map((row) => row.map((value) => value * model.priorSpread ** 2)),
  };
}

/** The person as the library sees them when it takes these figures for granted. */
function personOf(someone: Someone, readings: readonly string[], model: Figures, tool: ToolOf): Person {
  const estimate = parseEstimate({
    dimension: "torso-length",
    readings: readings.map((text) => parseLength(text)),
    conditions: { tool, measuredBy: "self", landmarksFoundAfresh: false },
    defaults: defaultsOf(model),
  });
  // A bias that is known is taken off.
  const known = { ...estimate, mm: millimetres(estimate.mm - model.sharedBiasMm) };
  const prior = priorOf(someone, model);
  return {
    estimates: [known],
    ...(prior === undefined ? {} : { prior }),
    ...(someone.hasBroadChest ? { build: ["large-chest" as const] } : {}),
  };
}

/** What is picked, and with what stated chance. */
export interface Picked {
  readonly pick: string;
  readonly probability: number;
}

function pickOf(person: Person, chart: SizeChart, model: Figures): Picked | undefined {
  const policy = { ...defaultPolicy, tieLoss: model.tieLoss, mostFurtherReadings: 0 };
  const outcome = recommend(person, chart, { unit: "cm", policy });
  return outcome.ok ? { pick: outcome.value.pick, probability: outcome.value.probability } : undefined;
}

const fitsIn = (chart: SizeChart, name: string, mm: number): boolean => {
  const range = chart.sizes.find((size) => size.name === name)?.ranges["torso-length"]?.interval;
  return range !== undefined && contains(range, mm);
};

/** All people on all charts, of whom the world and the model are told apart. Shares from 0 to 1. */
export interface Tally {
  /** Pairs of a person and a chart in which some size fits. */
  readonly pairs: number;
  readonly wrong: number;
  /** Of all picks: mean stated probability, and how often it came true. */
  readonly stated: number;
  readonly right: number;
  /** What was picked in every pair, in order. */
  readonly picks: readonly (Picked & { readonly place: number })[];
}

export function tally(
  people: readonly Someone[],
  charts: readonly SizeChart[],
  tool: ToolOf,
  world: Figures,
  model: Figures,
): Tally {
  let [pairs, wrong, stated, right] = [0, 0, 0, 0];
  const picks: (Picked & { readonly place: number })[] = [];
  for (const [i, someone] of people.entries()) {
    const truth = truthOf(someone, world);
    const person = personOf(someone, readingsOf(someone, world, tool), model, tool);
    for (const [k, chart] of charts.entries()) {
      const picked = pickOf(person, chart, model);
      if (picked === undefined) continue;
      picks.push({ ...picked, place: i * charts.length + k });
      stated += picked.probability;
      const isRight = fitsIn(chart, picked.pick, truth);
      if (isRight) right += 1;
      if (!chart.sizes.some(({ name }) => fitsIn(chart, name, truth))) continue;
      pairs += 1;
      if (!isRight) wrong += 1;
    }
  }
  return { pairs, wrong: wrong / pairs, stated: stated / picks.length, right: right / picks.length, picks };
}

/** What one end of one assumption comes to. */
export interface EndEffect {
  readonly end: "low" | "high";
  /** Share of picks that are others when the library takes this for granted, the readings being the same. */
  readonly picksChanged: number;
  /** Mean absolute change of the stated probability. */
  readonly statedChange: number;
  /** Share of wrong sizes where the library is told so and the world is as assumed. */
  readonly wrongIfTold: number;
  /** Share of wrong sizes, and stated less observed, where the world is so and the library is not told. */
  readonly wrongIfSo?: number;
  readonly overstatedIfSo?: number;
}

export interface Effect {
  readonly assumption: Assumption;
  /** Share of wrong sizes with that tool where all is as assumed. */
  readonly wrong: number;
  readonly ends: readonly EndEffect[];
}

/** Each assumption at both its ends, for the same people and the same luck. */
export function measureEffects(count: number, seed: number): readonly Effect[] {
  const people = drawPeople(count, seed);
  const charts = demoCharts();
  const bases = new Map<ToolOf, Tally>();
  return assumptions.map((assumption) => {
    const { tool, isFact } = assumption;
    const base = bases.get(tool) ?? tally(people, charts, tool, asAssumed, asAssumed);
    bases.set(tool, base);
    const ends = (["low", "high"] as const).map((end): EndEffect => {
      const other = { ...asAssumed, ...assumption.at(end) };
      const told = tally(people, charts, tool, asAssumed, other);
      const before = new Map(base.picks.map((one) => [one.place, one]));
      const both = told.picks.flatMap((after) => {
        const one = before.get(after.place);
        return one === undefined ? [] : [{ one, after }];
      });
      const effect = {
        end,
        picksChanged: both.filter(({ one, after }) => one.pick !== after.pick).length / both.length,
        statedChange:
          both.reduce((sum, { one, after }) => sum + Math.abs(after.probability - one.probability), 0) /
          both.length,
        wrongIfTold: told.wrong,
      };
      if (!isFact) return effect;
      const so = tally(people, charts, tool, other, asAssumed);
      return { ...effect, wrongIfSo: so.wrong, overstatedIfSo: so.stated - so.right };
    });
    return { assumption, wrong: base.wrong, ends };
  });
}

/** A representative person on one chart: what is picked and stated at both ends of each assumption. */
export interface PersonEffect {
  readonly person: string;
  readonly chart: string;
  readonly base: Picked;
  readonly rows: readonly { readonly assumption: Assumption; readonly low: Picked; readonly high: Picked }[];
}

/** Three people whose readings are as they are usual, each on the charts of the demo. */
export function representativePeople(): readonly PersonEffect[] {
  const people = [
    {
      person: "a woman of 166 cm, 40.5 cm",
      cut: "women",
      statureMm: 1660,
      readings: ["40.5 cm", "40.0 cm", "41.0 cm"],
    },
    {
      person: "a man of 178 cm, 45 cm",
      cut: "men",
      statureMm: 1780,
      readings: ["45.0 cm", "45.5 cm", "44.5 cm"],
    },
    {
      person: "a man of 185 cm, 48.5 cm",
      cut: "men",
      statureMm: 1850,
      readings: ["48.5 cm", "48.0 cm", "49.0 cm"],
    },
  ] as const;
  const [first] = drawPeople(1, 1);
  if (first === undefined) return [];
  return people.flatMap(({ person, readings, ...own }) =>
    demoCharts().flatMap((chart): readonly PersonEffect[] => {
      const someone: Someone = { ...first, ...own, hasBroadChest: false };
      const at = (figures: Figures, tool: ToolOf): Picked | undefined =>
        pickOf(personOf(someone, readings, figures, tool), chart, figures);
      const base = at(asAssumed, "tape");
      if (base === undefined) return [];
      const rows = assumptions
        .filter(({ tool, id }) => tool === "tape" && id !== "tieLoss")
        .flatMap((assumption) => {
          const [low, high] = (["low", "high"] as const).map((end) =>
            at({ ...asAssumed, ...assumption.at(end) }, "tape"),
          );
          return low === undefined || high === undefined ? [] : [{ assumption, low, high }];
        });
      return [{ person, chart: chart.chart, base, rows }];
    }),
  );
}
