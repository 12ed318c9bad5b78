import type { Findings } from "../findings/findings.js";
import { explainBeltLength } from "./belts.js";
import { explainCuttingSpeed } from "./cuttingSpeed.js";
import { explainDial, explainStrip } from "./dial.js";
import { explainSlip, explainSpeed } from "./drive.js";
import { explainFeed, explainLostMotion } from "./feed.js";
import { explainStop } from "./stops.js";
import { explainTaper } from "./tapers.js";
import { explainTappingHole } from "./threads.js";
import { explainTurns } from "./turns.js";
import type { Subject } from "./working.js";

/** Everything that `witnessmark explain` and the sheets can show the working of.
 *
 *  To add a quantity: write `explainX(findings): Subject[]` in a file of its own beside this one, one subject for
 *  each thing that has the quantity (none where the file has no such thing). Its `result` must come out of the
 *  function that computes it for the sheets, never out of a second formula. Then add one line here. */
export const quantities = {
  feed: { about: "true travel for one turn of a handwheel", subjects: explainFeed },
  "lost motion": { about: "play of a handwheel on reversing", subjects: explainLostMotion },
  dial: { about: "how a dial's turn is divided", subjects: explainDial },
  "strip length": { about: "flat length of a drum's strip", subjects: explainStrip },
  speed: { about: "spindle speed of a belt position", subjects: explainSpeed },
  "belt length": { about: "length of a belt at one of its steps", subjects: explainBeltLength },
  slip: { about: "speed lost between motor and spindle", subjects: explainSlip },
  "cutting speed": { about: "which belt position suits a material and diameter", subjects: explainCuttingSpeed },
  turns: { about: "whole turns and divisions for a distance", subjects: explainTurns },
  taper: { about: "what to swivel to, and how to prove it", subjects: explainTaper },
  "tapping hole": { about: "the hole for a tap, at a stated engagement", subjects: explainTappingHole },
  stop: { about: "turns to a stop, and how alike the parts come out", subjects: explainStop },
} as const satisfies Readonly<Record<string, Quantity>>;

export type Quantity = {
  /** A line for the list of quantities. */
  readonly about: string;
  subjects(findings: Findings): readonly Subject[];
};

export type QuantityName = keyof typeof quantities;
