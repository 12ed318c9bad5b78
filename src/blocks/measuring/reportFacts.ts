import type { OncePerTurn, Zone } from "../../feed/alongTravel.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import type { Units } from "../../machine/machine.js";
import { isFarFromNominal } from "../../machine/nominalSlip.js";
import { formatFixed, formatSize, sizeFigure, trimmedSize } from "../../quantity/format.js";
import { say } from "../../words/say.js";

/** What about, what the readings say of it, and in small what that rests on. */
export type Fact = { readonly about: string; readonly says: string; readonly small?: string };

/** At most so many readings are named one by one. */
const MOST_NAMED = 10;

/** Everything that readings say, a line each. */
export function reportFacts(finding: HandwheelFinding, units: Units): Fact[] {
  const feed = finding.feed ?? finding.miscounted;
  const { study } = finding;
  if (feed?.fit === undefined || study === undefined) return [];
  return [
    scatter(feed.fit, units),
    lostMotion(finding, units),
    ...nominal(finding, units),
    along(finding, units),
    within(finding, units),
    again(finding, units),
    ...takeAgain(finding, units),
  ];
}

type Fit = NonNullable<NonNullable<HandwheelFinding["feed"]>["fit"]>;

function scatter(fit: Fit, units: Units): Fact {
  const { readings, runs, places, residualDeviation, degreesOfFreedom, withWave } = fit;
  const scatter = formatSize(residualDeviation, units, 4);
  return {
    about: say("measured report.readings"),
    says:
      runs > 1
        ? say("measured report.scatter of runs", { n: readings, runs, places, scatter })
        : say("measured report.scatter", { n: readings, scatter }),
    small: [
      say(runs > 1 ? "measured report.half width of runs" : "measured report.half width", {
        degrees: degreesOfFreedom,
      }),
      ...(withWave ? [say("measured report.with wave")] : []),
    ].join(" "),
  };
}

/** One number, or why there is none. */
function lostMotion({ feed: known, miscounted, study }: HandwheelFinding, units: Units): Fact {
  const about = say("measured report.lost motion");
  const lost = (known ?? miscounted)?.lostMotion;
  const back = study?.back;
  if (lost !== undefined) {
    const figure = sizeFigure(lost.travel, units, 3);
    const doubtful = back?.wild.length || back?.miscounted;
    const { worst } = lost;
    const small = [
      ...(worst
        ? [
            say("measured report.lost elsewhere", {
              from: formatFixed(worst.fromTurn, 1),
              to: formatFixed(worst.toTurn, 1),
              least: formatSize(worst.least, units, 3),
            }),
          ]
        : []),
      ...(doubtful ? [say("measured report.back doubtful")] : []),
    ].join(" ");
    return {
      about,
      says: say("measured report.lost", {
        lost:
          lost.uncertainty === undefined
            ? formatSize(lost.travel, units, 3)
            : `${figure} ± ${formatSize(lost.uncertainty, units, 3)}`,
        turn: formatFixed(lost.turn, 3),
      }),
      ...(small !== "" && { small }),
    };
  }
  if (back?.contradiction)
    return {
      about,
      says: say("measured report.back contradicts", {
        off: formatSize(back.contradiction.travel, units, 3),
        turn: formatFixed(back.contradiction.turn, 2),
      }),
    };
  return { about, says: say(back ? "measured report.back take again" : "measured report.no back") };
}

function nominal({ feed: known, miscounted, handwheel, reading }: HandwheelFinding, units: Units): Fact[] {
  const feed = known ?? miscounted;
  if (feed?.nominal === undefined) return [];
  const factor = reading?.factor ?? 1;
  const out = Math.abs(feed.nominal - feed.perTurn) * factor;
  const show = (mm: number, places: number) =>
    factor === 2
      ? say("measured report.on diameter", { length: formatSize(mm, units, places) })
      : formatSize(mm, units, places);
  const { travel } = handwheel;
  // No further than its ± reaches.
  const places = feed.uncertainty === undefined || feed.uncertainty < 0.001 ? 4 : feed.uncertainty < 0.01 ? 3 : 2;
  const gaps = { nominal: trimmedSize(feed.nominal, units, 4), out: show(out, places) };
  return [
    {
      about: say("measured report.maker meant"),
      says:
        travel === undefined
          ? say("measured report.nominal", gaps)
          : say("measured report.nominal over", {
              ...gaps,
              over: show((out * travel) / feed.perTurn, 3),
              travel:
                factor === 2
                  ? say("dials.on the dial", { length: trimmedSize(factor * travel, units, 1) })
                  : say("dials.of travel", { travel: trimmedSize(travel, units, 1) }),
            }),
      ...(isFarFromNominal(feed.perTurn, feed.nominal) && { small: say("measured report.far from nominal") }),
    },
  ];
}

const chanceWords = (value: number): string =>
  value < 0.001
    ? say("measured report.chance below")
    : say("measured report.chance", {
        percent: value < 0.01 ? formatFixed(value * 100, 1) : formatFixed(value * 100, 0),
      });

function along({ study }: HandwheelFinding, units: Units): Fact {
  const about = say("measured report.along");
  const found = study?.shape.alongTravel;
  if (found === undefined) return { about, says: say("measured report.too few") };
  const small = chanceWords(found.chance);
  if (found.real) return { about, says: zones(found.found, units), small };
  const pattern = study?.pattern;
  if (pattern?.real)
    return {
      about,
      says: say("measured report.curved"),
      small: `${chanceWords(pattern.chance)} ${say("measured report.pattern by")}`,
    };
  return { about, says: say("measured report.no bend"), small };
}

/** The stretches that differ most. */
function zones(found: readonly Zone[], units: Units): string {
  const by = (pick: (a: Zone, b: Zone) => boolean) => found.reduce((best, zone) => (pick(zone, best) ? zone : best));
  const told = ({ fromTurn, toTurn, perTurn }: Zone) =>
    say("measured report.zone", {
      turn: formatSize(perTurn, units, 4),
      from: formatFixed(fromTurn, 1),
      to: formatFixed(toTurn, 1),
    });
  return say("measured report.uneven", {
    least: told(by((a, b) => a.perTurn < b.perTurn)),
    most: told(by((a, b) => a.perTurn > b.perTurn)),
  });
}

function within({ feed, study }: HandwheelFinding, units: Units): Fact {
  const about = say("measured report.within");
  const found = study?.shape.oncePerTurn;
  if (found === undefined)
    return {
      about,
      says: say(feed?.measured?.withinTurn ? "measured report.too few within" : "measured report.whole turns only"),
    };
  const small = chanceWords(found.chance);
  return found.real
    ? { about, says: wave(found.found, units), small }
    : { about, says: say("measured report.no wave"), small };
}

const wave = ({ amplitude, uncertainty, crest }: OncePerTurn, units: Units): string =>
  say("measured report.wave", {
    sway: `${sizeFigure(amplitude, units, 4)} ± ${formatSize(uncertainty, units, 4)}`,
    crest: formatFixed(crest, 2),
  });

function again({ feed: known, miscounted, study }: HandwheelFinding, units: Units): Fact {
  const about = say("measured report.again");
  const repeat = (known ?? miscounted)?.fit?.repeat;
  if (repeat === undefined) return { about, says: say("measured report.one run") };
  const positioning = study?.positioning;
  const standard =
    positioning &&
    say(positioning.runs < 5 ? "measured report.iso 230 few" : "measured report.iso 230", {
      runs: positioning.runs,
      accuracy: formatSize(positioning.accuracy, units, 3),
      repeatability: formatSize(positioning.repeatability, units, 3),
      reversal: formatSize(positioning.reversal, units, 3),
    });
  return {
    about,
    says: say("measured report.repeats", {
      deviation: formatSize(repeat.deviation, units, 4),
      degrees: repeat.degreesOfFreedom,
    }),
    ...(standard && { small: standard }),
  };
}

/** Readings that do not belong, runs from another zero, and turns that were lost: a line each. */
function takeAgain({ study }: HandwheelFinding, units: Units): Fact[] {
  if (study === undefined) return [];
  const about = say("measured report.take again");
  const { wild, otherZeros, miscounted, jump } = study;
  return [
    ...otherZeros.map(({ run, off }) => ({
      about: say("measured report.run", { run }),
      says: say(off > 0 ? "measured report.zero above" : "measured report.zero below", {
        off: formatSize(Math.abs(off), units, 3),
      }),
    })),
    ...wild.slice(0, MOST_NAMED).map(({ index, off, like }) => ({
      about: say("measured report.reading", { reading: index + 1 }),
      says: say("measured report.off the line", { off: formatSize(off, units, 3) }),
      ...(like && { small: like }),
    })),
    ...(wild.length > MOST_NAMED
      ? [{ about, says: say("measured report.more off", { n: wild.length - MOST_NAMED }) }]
      : []),
    ...(miscounted || jump
      ? [{ about, says: say("measured report.from here", { reading: (miscounted ?? jump)?.index ?? 0 }) }]
      : []),
  ];
}
