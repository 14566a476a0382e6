import { InvalidArgumentError } from "@tapewise/outcome";

/** What the work gives; an argument that it refuses was a wrong call of the command, and no fault of the program. */
export function tryOr<T>(work: () => T, otherwise: (reason: string) => never): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof InvalidArgumentError) return otherwise(error.message);
    throw error;
  }
}
