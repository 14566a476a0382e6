// What to look at with a loaded pack on. Every distance and angle: common practice, no source. Every standard
// deviation of the eye: assumption, and a generous one, for answers of the same eye go together.
import type { BodyCheckItem } from "./body-check-item.ts";

/** A misfit that still looks right, in mm beyond the end of the range: assumption. */
export const UNNOTICED_MM = 8;

/** The chance that an answer has nothing to do with the fit: assumption. */
export const SLIP = 0.05;

/** The items in the order in which they are looked at. */
export const bodyCheckItems: readonly BodyCheckItem[] = [
  {
    id: "cautions",
    basis: "caution",
    facts: {},
    answers: [
      { id: "none" },
      { id: "pain-or-numbness", stop: "pain-or-numbness" },
      { id: "injury-or-surgery", stop: "injury-or-surgery" },
      { id: "pregnancy", stop: "pregnancy" },
      { id: "growing-child", stop: "growing-child" },
    ],
  },
  {
    id: "belt-position",
    basis: "common practice, no source",
    facts: {},
    doubtMm: 25,
    answers: [
      { id: "over-crests" },
      { id: "too-high", adjust: "lower-belt", isFirst: true },
      { id: "too-low", adjust: "raise-belt", isFirst: true },
      { id: "slides-down", says: { part: "belt", side: "below" }, adjust: "tighten-belt" },
      { id: "pulled-up", says: { part: "harness", side: "above" }, adjust: "loosen-shoulder-straps" },
      { id: "cannot-tell" },
    ],
  },
  {
    id: "belt-closure",
    basis: "common practice, no source",
    facts: { leastGapMm: 50, mostGapMm: 150 },
    doubtMm: 30,
    answers: [
      { id: "gap-at-buckle", says: { part: "belt", side: "inside" } },
      { id: "ends-meet", says: { part: "belt", side: "below" } },
      { id: "padding-short", says: { part: "belt", side: "above" } },
      { id: "cannot-tell" },
    ],
  },
  {
    id: "back-panel",
    basis: "common practice, no source",
    facts: { leastBelowMm: 20, mostBelowMm: 60 },
    doubtMm: 10,
    answers: [
      { id: "a-little-below", says: { part: "harness", side: "inside" } },
      { id: "level-or-above", says: { part: "harness", side: "below" }, adjust: "harness-shorter" },
      { id: "far-below", says: { part: "harness", side: "above" }, adjust: "harness-longer" },
      { id: "cannot-tell" },
    ],
  },
  {
    id: "shoulder-contact",
    basis: "common practice, no source",
    facts: {},
    doubtMm: 15,
    answers: [
      { id: "follows", says: { part: "harness", side: "inside" } },
      { id: "gap-behind", says: { part: "harness", side: "below" }, adjust: "tighten-shoulder-straps" },
      { id: "bears-down", says: { part: "harness", side: "above" }, adjust: "loosen-shoulder-straps" },
      { id: "cannot-tell" },
    ],
  },
  {
    id: "upper-straps",
    basis: "common practice, no source",
    facts: { usualDegrees: 45, leastDegrees: 30, mostDegrees: 60 },
    doubtMm: 20,
    answers: [
      { id: "about-half-right-angle", says: { part: "harness", side: "inside" } },
      { id: "steeper", says: { part: "harness", side: "below" }, adjust: "tighten-upper-straps" },
      { id: "flatter", says: { part: "harness", side: "above" }, adjust: "loosen-upper-straps" },
      { id: "none-on-this-pack" },
      { id: "cannot-tell" },
    ],
  },
  {
    id: "strap-ends",
    basis: "common practice, no source",
    facts: { belowArmpitMm: 100 },
    doubtMm: 20,
    answers: [
      { id: "hand-below-armpit", says: { part: "harness", side: "inside" } },
      { id: "straps-run-out", says: { part: "harness", side: "below" }, adjust: "harness-shorter" },
      { id: "end-at-armpit", says: { part: "harness", side: "above" }, adjust: "harness-longer" },
      { id: "cannot-tell" },
    ],
  },
  {
    id: "sternum-strap",
    basis: "common practice, no source",
    facts: { belowCollarboneMm: 50 },
    answers: [
      { id: "breathes-freely" },
      { id: "binds", adjust: "move-sternum-strap" },
      { id: "cannot-tell" },
    ],
  },
  {
    id: "pressure-points",
    basis: "caution",
    facts: { walkMinutes: 15 },
    answers: [
      { id: "none" },
      { id: "presses", adjust: "ease-pressure" },
      { id: "hurts-or-numb", stop: "pain-or-numbness" },
    ],
  },
];
