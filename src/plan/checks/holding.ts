import { isHolding, type Job, type JobStep } from "../../job/job.js";
import type { Units } from "../../machine/machine.js";
import { diameterAt } from "../../part/outline.js";
import { boreOver, endsOf, outsideOver, type Workpiece } from "../../part/workpiece.js";
import { largestOf, smallestOf } from "../../quantity/extremes.js";
import { formatFixed } from "../../quantity/format.js";
import { threadOnPaper } from "../../thread/onPaper.js";
import { say } from "../../words/say.js";
import { type Check, refused, type StepFinding, takeCare } from "../finding.js";
import { bears, type Grip, gripOf, LEAST_GRIP, LEVER, soundGrip } from "../grip.js";
import { settableOut } from "../settableOut.js";
import { slenderness } from "../slenderness.js";
import type { Holding, Stage } from "../stage.js";
import type { Show } from "../words.js";

/** Work that stands out further than so many of its diameters bends and chatters: with nothing at its free end, and held by a
 *  centre. Twice as far, it whips or climbs over the tool. Common practice; textbooks give 3 to 5, and 10 to 12. */
const SLENDER = { chuck: 4, centre: 12 } as const;

/** Less than this share of the diameter is no grip at all. Own figure. */
const NO_GRIP = 0.25;

/** A wall thinner than this share of the diameter gives under the jaws. Common practice: three jaws leave a thin ring three-cornered. */
const SPRINGS = 0.17;

/** Held over so many diameters before something thicker, the jaws may end before it. Own figure: nobody said how long they are. */
const LONG_GRIP = 1;

/** Steps whose tool needs the free end. */
const fromTheEnd: readonly JobStep["do"][] = ["face", "centre drill", "drill", "bore", "ream", "tap", "die"];

/** Steps that lower no outside, and whose tool comes beside the jaws all the same. */
const besideTheJaws: readonly JobStep["do"][] = ["die", "knurl", "face"];

/** Is the work held, is the tool clear of what holds it, and is what is left stiff enough? */
export const holdingCheck: Check = ({ stage, earlier, later, job, show }) => {
  const { step, holding } = stage;
  const last = earlier.at(-1);
  const least = standsOut(stage, later, job.clear);
  if (isHolding(step)) return [...heldAnew(stage, last, job, least, show), ...centreHoles(stage)];
  if (job.bar === undefined) return [];
  if (last?.step.do === "part")
    return [
      refused("loose", say("plan findings.loose"), say("plan findings.loose remedy"), "{ do: turn round, out: … }"),
    ];
  // The bar is held before the first step, and no step says so.
  const first = earlier.length === 0 ? [...gripped(stage, least, job.units, show), ...centreHoles(stage)] : [];
  return [
    ...first,
    ...clearOfJaws(stage, job, show),
    ...clearOfCentre(stage, job.clear, show),
    ...inLine(stage),
    ...slender(stage, earlier, show),
    ...partedWell(stage, holding, show),
  ];
};

/** Where the jaws may begin at the nearest: what is cut in this holding ends before them, with room for the tool. */
function standsOut({ holding }: Stage, later: readonly Stage[], clear: number): number {
  const inIt = later.filter((one) => one.holding.setUp === holding.setUp);
  const beside = inIt.filter(({ shaping, step }) => shaping.outside.length > 0 || besideTheJaws.includes(step.do));
  return largestOf(beside.map(({ shaping }) => shaping.to + clear));
}

function heldAnew(
  stage: Stage,
  last: Stage | undefined,
  { bar, units }: Job,
  least: number,
  show: Show,
): StepFinding[] {
  const { step } = stage;
  if (step.do === "turn round" && !(last?.endKnown ?? bar?.length !== undefined))
    return [
      refused(
        "length-unknown",
        say("plan findings.turned, length unknown"),
        say("plan findings.turned, length unknown remedy"),
        "bar: length:",
      ),
    ];
  return gripped(stage, least, units, show);
}

/** What the jaws close on. */
function gripped({ holding: { held, jaws }, before }: Stage, least: number, units: Units, show: Show): StepFinding[] {
  if (held === "between centres") return [];
  const { from, to } = endsOf(before);
  const out = jaws - from;
  const better = soundGrip(before, { jaws, least, alone: held === "chuck", units });
  const instead = (otherwise: string) =>
    better === undefined
      ? otherwise
      : say("plan findings.sound grip", {
          ...{ out: show(better.out, 2), diameter: show(better.grip.diameter), length: show(better.grip.length, 2) },
        });
  const grip = gripOf(before, jaws);
  if (grip === undefined)
    return [
      refused(
        "no-grip",
        say("plan findings.nothing in the jaws", { out: show(out), long: show(to - from) }),
        instead(say("plan findings.less out")),
      ),
    ];
  return [
    ...enough(grip, out, held === "chuck", instead, show),
    ...sprung(before, grip, show),
    ...spoilt(before, grip),
  ];
}

/** Do they hold it? `instead`: what holds, or the words given where nothing does. */
function enough(
  { diameter, length, thicker }: Grip,
  out: number,
  alone: boolean,
  instead: (otherwise: string) => string,
  show: Show,
): StepFinding[] {
  if (thicker !== undefined) {
    const told = { diameter: show(diameter), length: show(length), thicker: show(thicker) };
    return length < LONG_GRIP * diameter
      ? [
          refused(
            "uneven-grip",
            say("plan findings.jaws on a step", told),
            instead(say("plan findings.more out or other end")),
          ),
        ]
      : [
          takeCare(
            "uneven-grip",
            say("plan findings.jaws before a step", told),
            say("plan findings.jaws clear inside"),
          ),
        ];
  }
  if (length > 0 && length < NO_GRIP * diameter - 1e-6)
    return [
      refused(
        "no-grip",
        say("plan findings.jaws hold too little", { length: show(length, 2), diameter: show(diameter, 2) }),
        instead(say("plan findings.less out or other end")),
      ),
    ];
  const remedy = say("plan findings.little grip remedy");
  if (length === 0)
    return [takeCare("little-grip", say("plan findings.jaws on a cone", { diameter: show(diameter) }), remedy)];
  if (length < LEAST_GRIP * diameter)
    return [
      takeCare(
        "little-grip",
        say("plan findings.little grip", {
          ...{ length: show(length), diameter: show(diameter), least: show(LEAST_GRIP * diameter) },
        }),
        remedy,
      ),
    ];
  return alone && length < diameter && out > LEVER * length
    ? [takeCare("little-grip", say("plan findings.long lever", { length: show(length, 2), out: show(out, 2) }), remedy)]
    : [];
}

/** A thin wall gives under the jaws, and its bore comes out of round. */
function sprung(work: Workpiece, { from, to, diameter }: Grip, show: Show): StepFinding[] {
  const bore = boreOver(work, from, to);
  const wall = (diameter - bore) / 2;
  return bore > 0 && wall < SPRINGS * diameter - 1e-6
    ? [
        takeCare(
          "thin-under-jaws",
          say("plan findings.thin under jaws", { wall: show(wall, 2), bore: show(bore, 3) }),
          say("plan findings.thin under jaws remedy"),
        ),
      ]
    : [];
}

/** Threads and knurls under the jaws. */
function spoilt(work: Workpiece, grip: Grip): StepFinding[] {
  const surface = bears(work, grip);
  if (surface === undefined) return [];
  return [
    takeCare(
      "spoilt-surface",
      surface.kind === "thread"
        ? say("plan findings.jaws on thread", { thread: threadOnPaper(surface.name) })
        : say("plan findings.jaws on knurl"),
      say("plan findings.jaws on surface remedy"),
    ),
  ];
}

function clearOfJaws({ step, shaping, holding }: Stage, { clear, units }: Job, show: Show): StepFinding[] {
  if (shaping.outside.length === 0 && !besideTheJaws.includes(step.do)) return [];
  const spare = holding.jaws - shaping.to;
  if (spare >= clear - 1e-6) return [];
  const told = { to: show(shaping.to), at: show(holding.jaws), clear: show(clear) };
  const jaws = holding.held !== "between centres";
  const what =
    spare < 0
      ? say(jaws ? "plan findings.into the jaws" : "plan findings.into the driver", { to: told.to, at: told.at })
      : say(jaws ? "plan findings.near the jaws" : "plan findings.near the driver", told);
  const more = show(settableOut(clear - spare, units), 2);
  return [refused("into-the-jaws", what, say("plan findings.into the jaws remedy", { more }))];
}

function clearOfCentre({ step, shaping, holding, before }: Stage, clear: number, show: Show): StepFinding[] {
  if (holding.held === "chuck") return [];
  const remedy = [say("plan findings.before the centre"), "{ do: hold, held: chuck and centre, out: … }"] as const;
  if (fromTheEnd.includes(step.do) || (step.do === "chamfer" && step.side === "bore"))
    return [refused("centre-in-the-way", say("plan findings.centre in the way"), ...remedy)];
  if (step.do === "part")
    return [
      refused(
        "centre-in-the-way",
        say("plan findings.parts at a centre"),
        say("plan findings.parts at a centre remedy"),
        "{ do: hold, out: … }",
      ),
    ];
  if (shaping.outside.length === 0 || shaping.from > 1e-6) return [];
  const mouth = diameterAt(before.bore, endsOf(before).from, 1);
  const thinnest = smallestOf(shaping.outside.filter(({ from }) => from <= 1e-6).map(({ start }) => start));
  // Of a hole that the bar is to bring along nobody knows how wide it is.
  if (mouth === 0) return [];
  if (thinnest <= mouth)
    return [
      refused(
        "into-the-centre",
        say("plan findings.into the centre", { size: show(thinnest), hole: show(mouth) }),
        say("plan findings.into the centre remedy"),
      ),
    ];
  // Beside the hole a 60° centre widens by 1.15 of every length that the tool comes from outside.
  return thinnest < mouth + 1.15 * clear
    ? [
        takeCare(
          "near-the-centre",
          say("plan findings.near the centre", { size: show(thinnest), hole: show(mouth) }),
          say("plan findings.near the centre remedy"),
        ),
      ]
    : [];
}

/** A centre wants its hole; between centres both ends do. */
function centreHoles({ holding: { held }, before }: Stage): StepFinding[] {
  if (held === "chuck") return [];
  const { from, to } = endsOf(before);
  const free = diameterAt(before.bore, from, 1) > 0;
  const other = held !== "between centres" || diameterAt(before.bore, to, -1) > 0;
  const seat = before.bore.find((hole) => Math.abs(hole.from - from) < 1e-6);
  if (free && seat !== undefined && Math.abs(seat.start - seat.end) < 1e-6)
    return [
      takeCare("no-centre-seat", say("plan findings.no centre seat"), say("plan findings.no centre seat remedy")),
    ];
  return free && other
    ? []
    : [
        takeCare(
          "no-centre-hole",
          say(
            free
              ? "plan findings.no centre hole, other"
              : other
                ? "plan findings.no centre hole, free"
                : "plan findings.no centre holes",
          ),
          say("plan findings.no centre hole remedy"),
          "{ do: centre drill }",
        ),
      ];
}

/** What is swung or set over is no longer in line with a centre, or needs both of them. */
function inLine({ step, holding: { held } }: Stage): StepFinding[] {
  if (step.do !== "taper") return [];
  if (step.by === "tailstock" && held !== "between centres")
    return [
      refused(
        "not-between-centres",
        say(held === "chuck" ? "plan findings.set over, chuck" : "plan findings.set over, chuck and centre"),
        say("plan findings.set over remedy"),
        "{ do: hold, held: between centres, out: … }, by: top slide",
      ),
    ];
  return step.by === "headstock" && held !== "chuck"
    ? [
        refused(
          "centre-out-of-line",
          say("plan findings.headstock swung away"),
          say("plan findings.headstock swung away remedy"),
          "by: top slide",
        ),
      ]
    : [];
}

function slender({ holding, after, step, shaping }: Stage, earlier: readonly Stage[], show: Show): StepFinding[] {
  // Parting ends it all; what was too slender before has been said.
  if (step.do === "part" || shaping.removed <= 0) return [];
  const limit = holding.held === "chuck" ? SLENDER.chuck : SLENDER.centre;
  const now = slenderness(after, holding);
  const before = earlier.findLast((one) => one.holding.setUp === holding.setUp && one.shaping.removed > 0);
  const said = before === undefined ? 0 : slenderness(before.after, before.holding).ratio;
  if (now.ratio <= limit + 1e-9) return [];
  const even = now.thickest - now.thinnest < 1e-6;
  const told = {
    length: show(now.length),
    diameter: even
      ? show(now.thinnest)
      : say("plan findings.thick", { least: show(now.thinnest), most: show(now.thickest) }),
    ratio: formatFixed(now.ratio, 1),
  };
  const chuck = holding.held === "chuck";
  const what = even
    ? say(chuck ? "plan findings.slender in chuck" : "plan findings.slender between", told)
    : say(chuck ? "plan findings.slender shape in chuck" : "plan findings.slender shape between", told);
  const whips = now.ratio > 2 * limit;
  const why = whips
    ? say("plan findings.whips", { times: 2 * limit })
    : say("plan findings.chatters", { times: limit });
  const remedy = !chuck
    ? say("plan findings.slender, steady", { why })
    : shaping.outside.length > 0
      ? say("plan findings.slender, turn short", { why })
      : say("plan findings.slender, draw out", { why });
  if (whips && said <= 2 * limit) return [refused("slender", what, remedy)];
  return said <= limit ? [takeCare("slender", what, remedy)] : [];
}

/** Parted further from the jaws than its diameter, it swings and pinches the blade. Common practice. */
function partedWell({ step, shaping, before }: Stage, { jaws }: Holding, show: Show): StepFinding[] {
  if (step.do !== "part") return [];
  const diameter = outsideOver(before, step.length, step.length + step.blade);
  return jaws - shaping.to > 1.5 * Math.max(diameter, 1)
    ? [
        takeCare(
          "far-from-the-jaws",
          say("plan findings.parts far out", { distance: show(jaws - shaping.to) }),
          say("plan findings.parts far out remedy"),
        ),
      ]
    : [];
}
