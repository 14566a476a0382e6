import type { Random } from "@tapewise/statistics";
import type { InputDistribution } from "./input-distribution.ts";

/**
 * A source of draws from a distribution that is known to be sound, by the recipes of JCGM 101:2008, 6.4;
 * Student's t by the polar method of R. W. Bailey (1994), Mathematics of Computation 62, 779–781, which holds
 * for real degrees of freedom.
 */
export function drawerOf(distribution: InputDistribution, random: Random): () => number {
  switch (distribution.shape) {
    case "normal": {
      const { mean, sd } = distribution;
      return () => mean + sd * random.normal();
    }
    case "student-t": {
      const { mean, scale, degreesOfFreedom } = distribution;
      return () => mean + scale * drawStudentT(degreesOfFreedom, random);
    }
    case "rectangular": {
      const { lower, upper } = distribution;
      return () => lower + (upper - lower) * random.uniform();
    }
    case "triangular": {
      const { lower, upper } = distribution;
      return () => lower + ((upper - lower) / 2) * (random.uniform() + random.uniform());
    }
    case "trapezoidal": {
      const { lower, upper, topShare } = distribution;
      const half = (upper - lower) / 2;
      return () => lower + half * ((1 + topShare) * random.uniform() + (1 - topShare) * random.uniform());
    }
    case "curvilinear-trapezoid": {
      const { lower, upper, inexactness } = distribution;
      return () => {
        // The bounds move apart or together by the same amount: the middle is known.
        const shift = inexactness * (2 * random.uniform() - 1);
        return lower + shift + (upper - lower - 2 * shift) * random.uniform();
      };
    }
    case "arcsine": {
      const { lower, upper } = distribution;
      const half = (upper - lower) / 2;
      return () => lower + half * (1 + Math.sin(2 * Math.PI * random.uniform()));
    }
  }
}

function drawStudentT(degreesOfFreedom: number, random: Random): number {
  if (degreesOfFreedom === Number.POSITIVE_INFINITY) return random.normal();
  for (;;) {
    const u = 2 * random.uniform() - 1;
    const v = 2 * random.uniform() - 1;
    const w = u * u + v * v;
    if (w > 1 || w === 0) continue;
    const growth = Math.expm1((-2 / degreesOfFreedom) * Math.log(w));
    return u * Math.sqrt((degreesOfFreedom * growth) / w);
  }
}
