export type { Interval } from "./interval.ts";
