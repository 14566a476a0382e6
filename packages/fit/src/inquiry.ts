import type { Issue } from "@tapewise/outcome";
import type { Beliefs } from "./belief.ts";
import type { Person } from "./person.ts";
import type { FitPolicy } from "./policy.ts";
import type { SentenceUnit } from "./write-reason.ts";

/** A person who asks for a size, and all that is known before any chart is looked at. */
export interface Inquiry {
  readonly person: Person;
  readonly beliefs: Beliefs;
  /** Doubts about the readings. */
  readonly questions: readonly Issue[];
  readonly policy: FitPolicy;
  readonly unit: SentenceUnit;
}
