import type { AdjustmentCode, BodyCheckItemId } from "./body-check-item.ts";
import type { Contradiction, FitterReason } from "./body-check-state.ts";

/** How to look at an item. `{name}` stands for a fact: `Mm` a length, `Degrees` an angle. */
const look: Readonly<Record<BodyCheckItemId, string>> = {
  cautions:
    "Before you load the pack: is there pain or numbness, an injury or operation of spine, shoulder or hip, a pregnancy, or is this a child or somebody who still grows?",
  "belt-position":
    "Load the pack with what it will carry, loosen all straps, close the hip belt first and then pull the shoulder straps snug. Feel for the top of the hip bones at both sides: where does the belt sit?",
  "belt-closure":
    "Look at the front of the closed belt: how do the padded ends sit? Usually {leastGapMm} to {mostGapMm} are left between them, and the padding reaches around the front of the hip bones (common practice).",
  "back-panel":
    "From the side: find the bump at the base of the neck (C7) and where the shoulder straps leave the back panel. Usually that is {leastBelowMm} to {mostBelowMm} below the bump (common practice).",
  "shoulder-contact":
    "From the side, with the upper straps slack: do the shoulder straps follow the shoulder from the front over the top to the back?",
  "upper-straps":
    "Look at the small straps that run from the shoulder straps up to the pack, pulled lightly. Their angle to the ground is usually about {usualDegrees}, from {leastDegrees} to {mostDegrees} (common practice).",
  "strap-ends":
    "Where does the padding of the shoulder straps end in front? Usually about a hand, {belowArmpitMm}, below the armpit, with webbing left to pull on (common practice).",
  "sternum-strap":
    "Close the strap across the chest, some {belowCollarboneMm} below the collarbones (common practice), and breathe in deeply: does it let you?",
  "pressure-points":
    "Walk for {walkMinutes} minutes with the load (common practice), then take the pack off and look at hips, collarbones, shoulders and the small of the back: does anything press?",
};

/** An answer as a person would give it, and what it tells. */
export interface AnswerText {
  readonly answer: string;
  readonly tells: string;
}

const cannotTell: AnswerText = {
  answer: "I cannot tell.",
  tells: "Nothing is concluded from it. A mirror, a photograph from the side or somebody else's eyes help.",
};

const answers: Readonly<Record<BodyCheckItemId, Readonly<Record<string, AnswerText>>>> = {
  cautions: {
    none: { answer: "None of these.", tells: "The check can go on." },
    "pain-or-numbness": {
      answer: "Pain or numbness.",
      tells: "No size settles that; it is for a professional.",
    },
    "injury-or-surgery": {
      answer: "An injury or operation.",
      tells: "The usual rules from body to size need not hold.",
    },
    pregnancy: {
      answer: "A pregnancy.",
      tells: "A hip belt must not press on the belly, and girths change.",
    },
    "growing-child": {
      answer: "A child or somebody who still grows.",
      tells: "Sizes and loads of adults do not apply.",
    },
  },
  "belt-position": {
    "over-crests": {
      answer: "Its middle lies over the top of the hip bones.",
      tells: "The load can rest on the hips; all that follows can be judged from here.",
    },
    "too-high": {
      answer: "It sits above them, on the soft waist.",
      tells: "The belt was closed too high; nothing else can be judged before it is lower.",
    },
    "too-low": {
      answer: "It sits below them, on the thighs or the buttocks.",
      tells: "The belt was closed too low; nothing else can be judged before it is higher.",
    },
    "slides-down": {
      answer: "It starts right and slides down, even when it is pulled tight.",
      tells: "The belt is too large, or not tight enough.",
    },
    "pulled-up": {
      answer: "The shoulder straps pull it up when they are snug.",
      tells: "The harness is too short, or the shoulder straps are too tight.",
    },
    "cannot-tell": cannotTell,
  },
  "belt-closure": {
    "gap-at-buckle": {
      answer: "There is such a gap, and the padding reaches around the hip bones.",
      tells: "The belt has room to be tightened and loosened: its size is right.",
    },
    "ends-meet": {
      answer: "The padded ends touch or nearly do.",
      tells: "The belt is too large: it cannot be pulled tight when clothes are thinner or the load settles.",
    },
    "padding-short": {
      answer: "The padding ends before it reaches the front of the hip bones.",
      tells: "The belt is too small: bare webbing bears on the hip bones.",
    },
    "cannot-tell": cannotTell,
  },
  "back-panel": {
    "a-little-below": { answer: "About so much below it.", tells: "The harness has the right length." },
    "level-or-above": {
      answer: "Level with it or above.",
      tells: "The harness is too long: the straps cannot lie on the shoulders.",
    },
    "far-below": {
      answer: "Further below.",
      tells: "The harness is too short: the straps pull down on the shoulders.",
    },
    "cannot-tell": cannotTell,
  },
  "shoulder-contact": {
    follows: { answer: "They follow all along.", tells: "The harness has the right length." },
    "gap-behind": {
      answer: "There is a gap behind or over the shoulder.",
      tells: "The harness is too long, or the shoulder straps are too loose.",
    },
    "bears-down": {
      answer: "They press on the top and the front of the shoulder, and the weight hangs there.",
      tells: "The harness is too short, or the shoulder straps are too tight.",
    },
    "cannot-tell": cannotTell,
  },
  "upper-straps": {
    "about-half-right-angle": { answer: "About so.", tells: "Harness and pack meet at the right height." },
    steeper: {
      answer: "Steeper than {mostDegrees}.",
      tells: "The harness is too long, or these straps are slack.",
    },
    flatter: {
      answer: "Flatter than {leastDegrees}, level, or running down.",
      tells: "The harness is too short, or these straps are too tight.",
    },
    "none-on-this-pack": { answer: "This pack has none.", tells: "Nothing is concluded from it." },
    "cannot-tell": cannotTell,
  },
  "strap-ends": {
    "hand-below-armpit": { answer: "About there.", tells: "The straps have the right length." },
    "straps-run-out": {
      answer: "Far lower, and there is hardly any webbing left to pull.",
      tells: "The harness is too long.",
    },
    "end-at-armpit": {
      answer: "At the armpit or above; bare webbing or the buckle lies on the chest.",
      tells: "The harness is too short.",
    },
    "cannot-tell": cannotTell,
  },
  "sternum-strap": {
    "breathes-freely": { answer: "Yes.", tells: "It leaves room to breathe." },
    binds: {
      answer: "It binds.",
      tells: "It is too tight or sits in the wrong place; a size is not the reason.",
    },
    "cannot-tell": cannotTell,
  },
  "pressure-points": {
    none: { answer: "Nothing does.", tells: "The load is spread well." },
    presses: {
      answer: "Something rubs or leaves a mark that fades, without pain.",
      tells: "A strap or a fold bears on one spot.",
    },
    "hurts-or-numb": {
      answer: "Something hurts, tingles or is numb.",
      tells: "Take the pack off; no size settles that, it is for a professional.",
    },
  },
};

const adjustments: Readonly<Record<AdjustmentCode, string>> = {
  "lower-belt":
    "Loosen everything, put the middle of the belt over the top of the hip bones, close it there, then pull the rest snug.",
  "raise-belt":
    "Loosen everything, lift the belt until its middle is over the top of the hip bones, close it there, then pull the rest snug.",
  "tighten-belt": "Pull the hip belt tighter while the load rests on the hips, both sides alike.",
  "loosen-shoulder-straps": "Let the shoulder straps out until most of the weight is on the hips.",
  "tighten-shoulder-straps":
    "Pull the shoulder straps in until they lie on the shoulders all along, without lifting the belt.",
  "loosen-upper-straps": "Let the upper straps out.",
  "tighten-upper-straps": "Pull the upper straps in, lightly.",
  "harness-longer": "Set the harness one step longer on the back panel.",
  "harness-shorter": "Set the harness one step shorter on the back panel.",
  "move-sternum-strap": "Open the strap across the chest, move it up or down, and close it more loosely.",
  "ease-pressure":
    "Smooth clothes and straps, empty pockets under the belt, shift heavy things in the pack, and loosen what presses.",
};

const contradictions: Readonly<Record<Contradiction, string>> = {
  "harness-long-and-short":
    "One thing that you saw speaks for a harness that is too long, another for one that is too short. Both cannot be: look at them once more.",
  "belt-large-and-small":
    "One thing that you saw speaks for a belt that is too large, another for one that is too small. Both cannot be: look at them once more.",
};

const fitter: Readonly<Record<FitterReason, string>> = {
  "ask-first": "Let the person decide who looks.",
  "neck-movement": "A neck that hurts or has been injured is for a clinician.",
  "pain-or-numbness":
    "Stop carrying. If pain or numbness does not pass soon after the pack is off, or comes back, see a clinician; let a professional fitter check the pack before you carry it again.",
  "injury-or-surgery":
    "Ask the clinician who knows the case whether and what to carry, and a professional fitter for the size.",
  pregnancy:
    "Ask a midwife or a doctor whether and how much to carry, and try the pack on with a professional fitter.",
  "growing-child": "Ask a professional fitter for the pack and a clinician for the load.",
  "heavy-load":
    "For loads near the limit of what you carry with ease, let a professional fitter set the pack.",
  "answers-contradict": "What was seen still contradicts itself; let a professional fitter look.",
  "too-little-seen": "Too little could be told of how the harness sits; let a professional fitter look.",
  "no-size-left":
    "It does not sit right, and nothing that the chart says shows another size of this pack to be likelier. Let a professional fitter look, or compare another pack.",
  "not-by-size":
    "It does not sit right, and yet by all that is known this is the right size. Let a professional fitter look.",
  "readings-disagree":
    "What the pack shows and what was read do not go together. Measure again, with a professional fitter.",
  "belt-comes-with-size":
    "The belt does not suit, and this pack has no other one for its size. Let a professional fitter look, or compare another pack.",
  "still-not-right":
    "It was set and still does not sit right, and a size is not the reason. Let a professional fitter look.",
};

const ends = {
  exchangeHarness: "Exchange {from} for {to}: it fits with {probability}, and {from} with {fromProbability}.",
  exchangeBelt:
    "Exchange the hip belt {from} for {to}: it fits with {probability}, and {from} with {fromProbability}.",
  sitsRight: "{size} sits right. Look again after the first longer walk, and stop whenever something hurts.",
} as const;

/** Every text of the check, by code: what a translation replaces. */
export interface BodyCheckTexts {
  readonly look: Readonly<Record<BodyCheckItemId, string>>;
  readonly answers: Readonly<Record<BodyCheckItemId, Readonly<Record<string, AnswerText>>>>;
  readonly adjustments: Readonly<Record<AdjustmentCode, string>>;
  readonly contradictions: Readonly<Record<Contradiction, string>>;
  readonly fitter: Readonly<Record<FitterReason, string>>;
  readonly ends: Readonly<Record<keyof typeof ends, string>>;
}

/** The texts in English. */
export const bodyCheckTexts: BodyCheckTexts = { look, answers, adjustments, contradictions, fitter, ends };
