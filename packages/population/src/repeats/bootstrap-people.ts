import type { QuantileType, Random } from "@tapewise/statistics";
import { samplePercentile } from "../fitting/percentile.ts";
import { requireCount } from "../require-argument.ts";
import { observeSpread } from "./observe-spread.ts";
import { shrinkPeople } from "./shrink-people.ts";

/** What to resample for. */
export interface PeopleBootstrap {
  readonly shares: readonly number[];
  readonly type: QuantileType;
  readonly random: Random;
  readonly replicates: number;
  readonly confidence: number;
}

/** How far a percentile strays from one set of people to another. */
export interface PercentileSpread {
  readonly standardError: number;
  readonly lower: number;
  readonly upper: number;
}

/** Draws people with replacement, with all their readings, and works percentiles out anew. */
export function bootstrapPeople(
  people: readonly (readonly number[])[],
  errorSd: number | undefined,
  { shares, type, random, replicates, confidence }: PeopleBootstrap,
): readonly PercentileSpread[] {
  requireCount("options.replicates", replicates, 20);
  const rows = Array.from({ length: replicates }, (_, replicate) => {
    const stream = random.fork(replicate);
    for (;;) {
      const drawn = people.map(() => people[stream.integer(0, people.length - 1)] ?? []);
      if (!isUsable(drawn, errorSd)) continue;
      const readings =
        errorSd === undefined ? { people: drawn } : { values: drawn.map(([value = 0]) => value), errorSd };
      return shrinkPeople(observeSpread(readings), shares, type);
    }
  });
  const miss = (1 - confidence) / 2;
  return shares.map((_, i) => {
    const figures = rows.map((row) => row[i] ?? 0);
    const mean = figures.reduce((sum, figure) => sum + figure, 0) / replicates;
    const squares = figures.reduce((sum, figure) => sum + (figure - mean) ** 2, 0);
    return {
      standardError: Math.sqrt(squares / (replicates - 1)),
      lower: samplePercentile(figures, miss, 6),
      upper: samplePercentile(figures, 1 - miss, 6),
    };
  });
}

/** A draw without any spread, or without anybody who was read twice, tells nothing and is drawn again. */
function isUsable(drawn: readonly (readonly number[])[], errorSd: number | undefined): boolean {
  const [start] = drawn[0] ?? [];
  const differs = drawn.some((readings) => readings.some((reading) => reading !== start));
  return differs && (errorSd !== undefined || drawn.some((readings) => readings.length > 1));
}
