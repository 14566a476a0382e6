/** What shall be made as good as it can be. */
export type LendingGoal =
  /** The sum of the chances that what each is lent fits. */
  | "chance"
  /** The sum of the expected misfits of what each is lent, in mm. */
  | "misfit";

/** How many of one pack there are. */
export interface LendingPack {
  /** What the pack is called: chart and size, say. */
  readonly pack: string;
  readonly count: number;
}

/** How the packs fit the members: a row for each member, in it a figure for each pack, in the order of the lists. */
export interface LendingTable {
  readonly members: readonly string[];
  readonly shelf: readonly LendingPack[];
  /** Chance that the pack fits, from 0 to 1. A pack whose chance is 0 is never lent. */
  readonly chances: readonly (readonly number[])[];
  /** Expected misfit in mm, from 0 to 10,000; only needed for the goal `misfit`. */
  readonly misfitsMm?: readonly (readonly number[])[];
}

/** How to weigh. */
export interface LendingPolicy {
  readonly goal: LendingGoal;
  /**
   * What it counts that one member goes without: so much chance or so many mm, from 0 to 10,000. With more than
   * the number of packs (`chance`) or that number times the largest misfit, nobody goes without who could be served.
   */
  readonly unservedCost: number;
  /** A pack that fits with less chance is not lent; 0 where it is left out. */
  readonly leastChance?: number;
}

/** What one member is lent. */
export interface Lent {
  readonly member: string;
  readonly pack: string;
  readonly chance: number;
  readonly misfitMm?: number;
}

/** A member who goes without. */
export interface Without {
  readonly member: string;
  /** The pack that would suit this member best; absent where no pack reaches the least chance. */
  readonly best?: string;
}

/** What one more of a pack would bring. */
export interface NextPack {
  readonly pack: string;
  /** By how much the whole would be better, in chance or mm, those who go without counted at their cost. */
  readonly gain: number;
  /** The member who would then be served; absent where it would only give somebody a better one. */
  readonly serves?: string;
}

/** Who is lent what. */
export interface Lending {
  /** In the order of the members. */
  readonly lent: readonly Lent[];
  /** In the order of the members. */
  readonly without: readonly Without[];
  /** Sum of the chances, or of the expected misfits in mm, of what is lent. */
  readonly total: number;
  /** Packs that stay on the shelf. */
  readonly left: readonly LendingPack[];
  /** What to get next, the most worthwhile first; packs that would change nothing are left out. */
  readonly next: readonly NextPack[];
}
