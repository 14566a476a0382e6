/** How to take one dimension, in the words of one language. */
export interface GuideText {
  readonly definition: string;
  readonly use: string;
  readonly points: readonly {
    readonly name: string;
    readonly find: readonly string[];
    readonly check: readonly string[];
  }[];
  readonly posture: readonly string[];
  readonly ways: readonly {
    readonly tool: "tape" | "cord-and-ruler" | "short-rule";
    readonly who: "self" | "helper";
    readonly suits: string;
    readonly steps: readonly string[];
  }[];
  readonly slips: readonly {
    readonly what: string;
    readonly direction: "+" | "-" | "both";
    readonly fromMm: number;
    readonly toMm: number;
    readonly mend: string;
  }[];
  readonly cautions: readonly { readonly name: string; readonly text: string; readonly ask: string }[];
}
