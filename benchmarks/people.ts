import { createRandom } from "@tapewise/statistics";

/**
 * Lines of the batch contract about invented people: cut, stature, one to four readings of the back and of the
 * girth, to a millimetre or to a quarter of an inch. The same seed gives the same people.
 */
export function* inventPeople(count: number, seed = 1): Generator<string, void, undefined> {
  const random = createRandom(seed);
  for (let k = 0; k < count; k += 1) {
    const cut = random.uniform() < 0.5 ? "women" : "men";
    const statureMm = (cut === "women" ? 1630 : 1760) + 65 * random.normal();
    const torsoMm = (cut === "women" ? 405 : 435) + 0.2 * (statureMm - 1700) + 18 * random.normal();
    const beltMm = 900 + 75 * random.normal();
    const isMetric = random.uniform() < 0.7;
    const write = (mm: number): string =>
      isMetric ? `${(Math.round(mm) / 10).toFixed(1)} cm` : writeInches(mm / 25.4);
    const read = (mm: number): readonly string[] => {
      const bias = 5 * random.normal();
      return Array.from({ length: 2 + Math.floor(3 * random.uniform()) }, () =>
        write(mm + bias + 6 * random.normal()),
      );
    };
    const isKnown = random.uniform() < 0.5;
    yield JSON.stringify({
      id: `p${k + 1}`,
      ...(isKnown ? { cut, stature: `${Math.round(statureMm / 10)} cm` } : {}),
      measuredBy: random.uniform() < 0.7 ? "self" : "helper",
      tool: "tape",
      readings: { "torso-length": read(torsoMm), "hip-belt-girth": read(beltMm) },
    });
  }
}

/** Inches in quarters, as people write them. */
function writeInches(inches: number): string {
  const quarters = Math.round(inches * 4);
  const [whole, rest] = [Math.floor(quarters / 4), quarters % 4];
  return rest === 0 ? `${whole} in` : rest === 2 ? `${whole} 1/2 in` : `${whole} ${rest}/4 in`;
}
