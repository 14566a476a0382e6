/**
 * Figures of ANSUR II, the 2012 anthropometric survey of U.S. Army personnel (Gordon et al. 2014,
 * NATICK/TR-15/007, approved for public release), all persons of the public individual data: mean and sample
 * standard deviation in mm, recomputed exactly from the data with Python's fractions.Fraction.
 *
 * Figures are text, so that none passes through a double on its way here.
 */
export const fullSample: readonly (readonly [
  cut: "women" | "men",
  dimension: "stature" | "back-waist-length" | "shoulder-breadth",
  people: number,
  mean: string,
  sd: string,
])[] = [
  ["women", "stature", 1986, "1628.4733131923464", "64.199512249687933"],
  ["women", "back-waist-length", 1986, "425.40281973816717", "26.388950288610264"],
  ["women", "shoulder-breadth", 1986, "365.34894259818731", "18.29885108476475"],
  ["men", "stature", 4082, "1756.2146006859383", "68.550787668900917"],
  ["men", "shoulder-breadth", 4082, "415.67564919157276", "19.161653589261157"],
];
