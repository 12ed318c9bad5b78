import { coarserThanItsDoubt, dialFinding } from "../dial/dialFinding.js";
import { readingOf } from "../dial/reading.js";
import { speeds } from "../drive/speeds.js";
import { feedPerTurn } from "../feed/feedPerTurn.js";
import type { FeedFinding } from "../feed/finding.js";
import { type FeedStudy, study } from "../feed/study.js";
import type { Handwheel, Machine } from "../machine/machine.js";
import type { Findings, HandwheelFinding } from "./findings.js";
import { inPrintedWords } from "./stepWords.js";

/** All that follows from one machine. Pure: the same machine gives the same findings. */
export function compute(given: Machine): Findings {
  const machine = given.drive === undefined ? given : { ...given, drive: inPrintedWords(given.drive) };
  return {
    machine,
    handwheels: machine.handwheels.map((handwheel) => handwheelFinding(handwheel, machine)),
    ...(machine.drive && { drive: speeds(machine.drive) }),
  };
}

function handwheelFinding(handwheel: Handwheel, machine: Machine): HandwheelFinding {
  if (handwheel.feed === undefined) return { handwheel };
  const builtIn = handwheel.dial?.oncePerTurn === true;
  const found = feedPerTurn(handwheel.feed, builtIn);
  // The reader refuses such a file; a Machine from elsewhere simply has no feed here.
  if ("tooFew" in found) return { handwheel };
  const { fit, measured } = found;
  const beyond =
    fit && measured && handwheel.feed.from === "readings" ? study(fit, measured.shape, handwheel.feed) : undefined;
  // A turn miscounted, or a gauge that slipped, leaves no feed to cut by: the line through such readings is nobody's.
  if (beyond?.miscounted || beyond?.jump) return { handwheel, study: beyond, miscounted: found };
  const feed = lostMotionDoubted(beyond) ? withoutLostMotion(found) : found;
  const wave = builtIn ? beyond?.shape.oncePerTurn : undefined;
  // Only a wave that is more than chance is built in.
  const dial = dialFinding(
    handwheel,
    feed,
    machine.paper,
    machine.units,
    wave?.real ? { share: wave.found.amplitude / feed.perTurn, crest: wave.found.crest } : undefined,
  );
  const reading = readingOf(feed, handwheel);
  const made = dial && (dial.forced || !coarserThanItsDoubt(dial.chosen, handwheel, feed));
  return {
    handwheel,
    feed,
    reading,
    ...(beyond && { study: beyond }),
    ...(dial && (made ? { dial } : { doubtful: dial })),
  };
}

/** Whether what the readings on the way back show forbids to tell a lost motion by them. */
export const lostMotionDoubted = (study: FeedStudy | undefined): boolean =>
  study?.back !== undefined &&
  (study.back.contradiction !== undefined || study.back.miscounted !== undefined || study.back.wild.length > 0);

/** A lost motion that cannot be serves nothing: sheets then say that it is not known. */
const withoutLostMotion = ({ lostMotion: _, ...feed }: FeedFinding): FeedFinding => feed;
