import { InvalidArgumentError } from "@tapewise/outcome";
import { defaultPolicy, type FitPolicy } from "./policy.ts";

/** Most further readings that a policy may ask for. */
const MOST_READINGS = 100;

/** The caller's policy, or the default one; refuses figures that are no probabilities or no count. */
export function checkPolicy(policy: FitPolicy = defaultPolicy): FitPolicy {
  const { mostFurtherReadings, ...probabilities } = policy;
  for (const [name, value] of Object.entries(probabilities)) {
    if (!(value >= 0 && value <= 1)) {
      throw new InvalidArgumentError(`policy.${name}`, value, "a probability from 0 to 1");
    }
  }
  if (
    !(
      Number.isInteger(mostFurtherReadings) &&
      mostFurtherReadings >= 0 &&
      mostFurtherReadings <= MOST_READINGS
    )
  ) {
    throw new InvalidArgumentError(
      "policy.mostFurtherReadings",
      mostFurtherReadings,
      `a whole number from 0 to ${MOST_READINGS}`,
    );
  }
  return policy;
}
