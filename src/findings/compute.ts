import { dialFinding } from "../dial/dialFinding.js";
import { readingOf } from "../dial/reading.js";
import { speeds } from "../drive/speeds.js";
import { feedPerTurn } from "../feed/feedPerTurn.js";
import { study } from "../feed/study.js";
import type { Handwheel, Machine } from "../machine/machine.js";
import type { Findings, HandwheelFinding } from "./findings.js";

/** All that follows from one machine. Pure: the same machine gives the same findings. */
export function compute(machine: Machine): Findings {
  return {
    machine,
    handwheels: machine.handwheels.map((handwheel) => handwheelFinding(handwheel, machine)),
    ...(machine.drive && { drive: speeds(machine.drive) }),
  };
}

function handwheelFinding(handwheel: Handwheel, machine: Machine): HandwheelFinding {
  if (handwheel.feed === undefined) return { handwheel };
  const feed = feedPerTurn(handwheel.feed);
  // The reader refuses such a file; a Machine from elsewhere simply has no feed here.
  if ("tooFew" in feed) return { handwheel };
  const beyond = feed.fit && handwheel.feed.from === "readings" ? study(feed.fit, handwheel.feed) : undefined;
  const wave = handwheel.dial?.oncePerTurn ? beyond?.shape.oncePerTurn : undefined;
  // Only a wave that is more than chance is built in.
  const dial = dialFinding(
    handwheel,
    feed,
    machine.paper,
    machine.units,
    wave?.real ? { share: wave.found.amplitude / feed.perTurn, crest: wave.found.crest } : undefined,
  );
  const reading = readingOf(feed, handwheel);
  return { handwheel, feed, reading, ...(beyond && { study: beyond }), ...(dial && { dial }) };
}
