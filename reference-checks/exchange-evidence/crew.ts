import type { SizeChart } from "@tapewise/charts";
import { defaultPolicy, formBeliefs, type Person, recommend } from "@tapewise/fit";
import { errorDefaults, parseEstimate } from "@tapewise/measurement";
import { referencePopulation, referencePrior } from "@tapewise/population";
import type { Random } from "@tapewise/statistics";
import { millimetres, parseLength } from "@tapewise/units";

/** Somebody whose length is known to the simulation alone. */
export interface Member {
  readonly trueMm: number;
  readonly person: Person;
  /** What is believed of the length: mean, and the standard deviation of Student's t. */
  readonly meanMm: number;
  readonly sdMm: number;
}

/** Readings that each person takes. */
const READINGS = 2;

/**
 * People of the reference population, half of them women, who read their torso length twice with the library's
 * default error of readings of one's own, to half centimetres, and state cut and stature.
 */
export function drawCrew(count: number, random: Random): readonly Member[] {
  const models = { women: referencePopulation("women"), men: referencePopulation("men") };
  return Array.from({ length: count }, (_, i) => {
    const cut = i % 2 === 0 ? "women" : "men";
    const own = random.fork(i);
    const [trueMm = 0, statureMm = 0] = models[cut].marginal(["torso-length", "stature"]).sample(own);
    const person: Person = {
      estimates: [readTorso(trueMm, own)],
      prior: referencePrior({ cut, statureMm: millimetres(statureMm) }),
      cut,
    };
    const belief = formBeliefs(person.estimates, person.prior).of("torso-length");
    if (belief === undefined) throw new Error("the torso length was read and is not believed");
    const { meanMm, sdMm, degreesOfFreedom: df } = belief;
    return {
      trueMm,
      person,
      meanMm,
      sdMm: sdMm * Math.sqrt(df === Number.POSITIVE_INFINITY ? 1 : df / (df - 2)),
    };
  });
}

function readTorso(trueMm: number, random: Random) {
  const hand = errorDefaults.hands["length along the body"].self;
  const { scaleHalfWidth } = errorDefaults.tools.tape;
  const lasting =
    hand.lastingMm * random.normal() +
    hand.findingMm * random.normal() +
    trueMm * scaleHalfWidth * (2 * random.uniform() - 1);
  const readings = Array.from({ length: READINGS }, () => {
    const read = trueMm + lasting + hand.handlingMm * random.normal();
    return parseLength(`${Math.round(read / 5) / 2} cm`);
  });
  return parseEstimate({
    dimension: "torso-length",
    readings,
    conditions: { measuredBy: "self", tool: "tape", landmarksFoundAfresh: false },
  });
}

const policy = { ...defaultPolicy, mostFurtherReadings: 0 };
/** Most makers are given by the printed chart for long. */
const known = new WeakMap<SizeChart, Map<Member, string>>();

/** The size that the library gives. */
export function pickFor(member: Member, chart: SizeChart): string {
  const picks = known.get(chart) ?? new Map<Member, string>();
  known.set(chart, picks);
  const before = picks.get(member);
  if (before !== undefined) return before;
  const outcome = recommend(member.person, chart, { unit: "cm", policy });
  if (!outcome.ok) throw new Error(outcome.issues[0].message);
  picks.set(member, outcome.value.pick);
  return outcome.value.pick;
}
