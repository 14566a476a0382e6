// Means, standard deviations and correlations computed from the public individual measurements of
// ANSUR II, the 2012 anthropometric survey of U.S. Army personnel (Gordon et al. 2014,
// NATICK/TR-15/007, approved for public release), persons with even subject numbers: 990 women and
// 2,040 men. Sample standard deviation on n − 1, Pearson correlation. Torso length is computed per
// person as cervicale height − iliocristale height; back-waist length is the survey's waist back
// length, shoulder breadth its biacromial breadth.
import type { ReferencePopulation } from "./reference-population.ts";

const SOURCE =
  "ANSUR II (2012), Gordon et al. 2014, NATICK/TR-15/007; computed from the public individual data";
const CAVEAT =
  "Soldiers of 2012: fitter, younger and more alike than the general public. The torso length is the straight " +
  "vertical distance from C7 to the top of the right iliac crest, a little shorter than along the spine.";

/** Women of the survey: means, standard deviations and correlations. */
export const womenReference: ReferencePopulation = {
  cut: "women",
  label: "women",
  source: SOURCE,
  caveat: CAVEAT,
  count: 990,
  surveyedStatureMm: { from: 1435, to: 1827 },
  dimensions: ["stature", "torso-length", "back-waist-length", "shoulder-breadth"],
  meanMm: [1627.9273, 400.0101, 425.4939, 365.0273],
  sdMm: [64.1435, 22.7065, 26.5587, 18.1641],
  correlation: [
    [1, 0.595362, 0.51842, 0.564956],
    [0.595362, 1, 0.592486, 0.281084],
    [0.51842, 0.592486, 1, 0.313977],
    [0.564956, 0.281084, 0.313977, 1],
  ],
};

/** Men of the survey: means, standard deviations and correlations. */
export const menReference: ReferencePopulation = {
  cut: "men",
  label: "men",
  source: SOURCE,
  caveat: CAVEAT,
  count: 2040,
  surveyedStatureMm: { from: 1491, to: 1980 },
  dimensions: ["stature", "torso-length", "back-waist-length", "shoulder-breadth"],
  meanMm: [1755.6598, 455.1108, 477.1039, 415.5157],
  sdMm: [68.6144, 25.0539, 27.7463, 19.1069],
  correlation: [
    [1, 0.595529, 0.532318, 0.523549],
    [0.595529, 1, 0.651893, 0.369969],
    [0.532318, 0.651893, 1, 0.368911],
    [0.523549, 0.369969, 0.368911, 1],
  ],
};
