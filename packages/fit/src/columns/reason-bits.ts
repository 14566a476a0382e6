import type { ReasonCode } from "../reasons.ts";
import { columnReasons } from "./column-codes.ts";

/** The bit of a reason. */
export function bitOf(code: ReasonCode): number {
  return 1 << columnReasons.indexOf(code);
}

type PersonalReason =
  | "nearest"
  | "equal"
  | "most"
  | "build"
  | "harness"
  | "belt"
  | "room"
  | "capacity"
  | "beyond"
  | "disagree"
  | "between"
  | "unlikely";

/** The bits of the reasons that depend on the person. */
export const BITS: Readonly<Record<PersonalReason, number>> = {
  nearest: /* @__PURE__ */ bitOf("nearest-size"),
  equal: /* @__PURE__ */ bitOf("equal-chance"),
  most: /* @__PURE__ */ bitOf("most-probable"),
  build: /* @__PURE__ */ bitOf("build-takes-longer"),
  harness: /* @__PURE__ */ bitOf("harness-adjusts"),
  belt: /* @__PURE__ */ bitOf("hip-belt-decides"),
  room: /* @__PURE__ */ bitOf("room-on-both-sides"),
  capacity: /* @__PURE__ */ bitOf("capacity-differs"),
  beyond: /* @__PURE__ */ bitOf("beyond-the-chart"),
  disagree: /* @__PURE__ */ bitOf("dimensions-disagree"),
  between: /* @__PURE__ */ bitOf("between-two-sizes"),
  unlikely: /* @__PURE__ */ bitOf("no-size-likely"),
};
