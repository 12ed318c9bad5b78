import { isHolding, type JobStep } from "../../job/job.js";
import { between, diameterAt } from "../../part/outline.js";
import { endsOf, outsideOver } from "../../part/workpiece.js";
import { type Check, refused, type StepFinding, takeCare } from "../finding.js";
import { slenderness } from "../slenderness.js";
import type { Holding, Stage } from "../stage.js";
import type { Show } from "../words.js";

/** Work that stands out further than so many of its diameters bends and chatters: with nothing at its free end, and held by a
 *  centre. Twice as far, it whips or climbs over the tool. Common practice; textbooks give 3 to 5, and 10 to 12. */
const SLENDER = { chuck: 4, centre: 12 } as const;

/** Jaws hold by at least this share of the diameter. Common practice. */
const LEAST_GRIP = 0.5;

/** Less than this share is no grip at all, and neither is one with so many times its length standing out. Own figures. */
const NO_GRIP = 0.25;
const LEVER = 5;

/** A groove or a broken edge at the mouth of the jaws up to this share of the diameter behind it is bridged. Own figure. */
const BRIDGED = 0.25;

/** Held over so many diameters before something thicker, the jaws may end before it. Own figure: nobody said how long they are. */
const LONG_GRIP = 1;

const nouns: Readonly<Record<Holding["held"], string>> = {
  chuck: "jaws",
  "chuck and centre": "jaws",
  "between centres": "driver",
};

/** Steps whose tool needs the free end. */
const fromTheEnd: readonly JobStep["do"][] = ["face", "centre drill", "drill", "bore", "ream", "tap", "die"];

/** Steps that lower no outside, and whose tool comes beside the jaws all the same. */
const besideTheJaws: readonly JobStep["do"][] = ["die", "knurl", "face"];

/** Is the work held, is the tool clear of what holds it, and is what is left stiff enough? */
export const holdingCheck: Check = ({ stage, earlier, job, show }) => {
  const { step, holding } = stage;
  const last = earlier.at(-1);
  if (isHolding(step)) return [...heldAnew(stage, last, job.bar?.length !== undefined, show), ...centreHoles(stage)];
  if (job.bar === undefined) return [];
  if (last?.step.do === "part")
    return [
      refused(
        "loose",
        "comes after parting off: nothing holds the part",
        "hold it again first: { do: turn round, out: … }, or put parting last",
      ),
    ];
  // The bar is held before the first step, and no step says so.
  const first = earlier.length === 0 ? [...gripped(stage, show), ...centreHoles(stage)] : [];
  return [
    ...first,
    ...clearOfJaws(stage, job.clear, show),
    ...clearOfCentre(stage, job.clear, show),
    ...inLine(stage),
    ...slender(stage, earlier, show),
    ...partedWell(stage, holding, show),
  ];
};

function heldAnew(stage: Stage, last: Stage | undefined, blankKnown: boolean, show: Show): StepFinding[] {
  const { step } = stage;
  if (step.do === "turn round" && !(last?.endKnown ?? blankKnown))
    return [
      refused(
        "length-unknown",
        "turns round a bar whose length is not known",
        "part it off first, or give the blank's length under bar: length:",
      ),
    ];
  return gripped(stage, show);
}

/** What the jaws close on. */
function gripped({ holding, before }: Stage, show: Show): StepFinding[] {
  if (holding.held === "between centres") return [];
  const { from, to } = endsOf(before);
  if (to - holding.jaws <= 1e-6)
    return [
      refused(
        "no-grip",
        `leaves ${show(holding.jaws - from)} out of work that is only ${show(to - from)} long: nothing is in the jaws`,
        "let less stand out",
      ),
    ];
  // Jaws lie on the first cylinder behind their mouth; what is thinner further in does not touch them, and a narrow groove or a
  // broken edge at their mouth is bridged.
  const behind = between(before.outside, holding.jaws, to);
  const thickest = outsideOver(before, holding.jaws, to);
  const reached = behind.find(({ start, end }) => Math.max(start, end) > thickest - 1e-6);
  const bridged = reached !== undefined && reached.from - holding.jaws <= BRIDGED * thickest;
  const first = bridged ? reached : behind[0];
  if (first === undefined) return [];
  const diameter = first.start;
  const held = Math.abs(first.start - first.end) < 1e-6 ? first.to - first.from : 0;
  const thicker = thickest > diameter + 1e-6;
  const surface = before.surfaces.find(
    (one) => one.side === "outside" && one.to > first.from + 1e-6 && one.from < first.from + held - 1e-6,
  );
  return [
    ...(thicker
      ? [
          held < LONG_GRIP * diameter
            ? refused(
                "uneven-grip",
                `the jaws would close on ${show(diameter)} for ${show(held)} alone, with ${show(thickest)} behind it: they do not hold it, or do not go over it`,
                "let more stand out, or hold the other end",
              )
            : takeCare(
                "uneven-grip",
                `the jaws close on ${show(diameter)} for ${show(held)}, and ${show(thickest)} follows behind it`,
                "see that their inner ends stay clear of the thicker part",
              ),
        ]
      : held > 0 && held < NO_GRIP * diameter - 1e-6
        ? [
            refused(
              "no-grip",
              `the jaws hold only ${show(held, 2)} of ${show(diameter, 2)} diameter: it flies out at the first cut`,
              "let less stand out, or hold the other end",
            ),
          ]
        : held < LEAST_GRIP * diameter ||
            (holding.held === "chuck" && held < diameter && holding.jaws - from > LEVER * held)
          ? [
              takeCare(
                "little-grip",
                held >= LEAST_GRIP * diameter
                  ? `the jaws hold ${show(held, 2)}, and ${show(holding.jaws - from, 2)} stands out of them`
                  : held === 0
                    ? `the jaws hold a cone at ${show(diameter)}, and touch it along one edge alone`
                    : `the jaws hold only ${show(held)} of ${show(diameter)} diameter; ${show(LEAST_GRIP * diameter)} is the least`,
                "let less stand out, support its end, or take light cuts",
              ),
            ]
          : []),
    ...(surface
      ? [
          takeCare(
            "spoilt-surface",
            `the jaws would lie on the ${surface.kind === "thread" ? `thread ${surface.name}` : surface.name}`,
            "hold it elsewhere, or in a split sleeve",
          ),
        ]
      : []),
  ];
}

function clearOfJaws({ step, shaping, holding }: Stage, clear: number, show: Show): StepFinding[] {
  if (shaping.outside.length === 0 && !besideTheJaws.includes(step.do)) return [];
  const spare = holding.jaws - shaping.to;
  if (spare >= clear - 1e-6) return [];
  const what = nouns[holding.held];
  return [
    refused(
      "into-the-jaws",
      `reaches ${show(shaping.to)} along the work, and the ${what} ${what === "jaws" ? "begin" : "begins"} at ${show(holding.jaws)}: ${spare < 0 ? `the tool runs into ${what === "jaws" ? "them" : "it"}` : `less than ${show(clear)} clear`}`,
      `let ${show(clear - spare)} more stand out, or shorten the step`,
    ),
  ];
}

function clearOfCentre({ step, shaping, holding, before }: Stage, clear: number, show: Show): StepFinding[] {
  if (holding.held === "chuck") return [];
  const remedy = "do it before the centre is brought up ({ do: hold, held: chuck and centre, out: … })";
  if (fromTheEnd.includes(step.do) || (step.do === "chamfer" && step.side === "bore"))
    return [refused("centre-in-the-way", `"${step.do}" needs the free end, where the centre is`, remedy)];
  if (step.do === "part")
    return [
      refused(
        "centre-in-the-way",
        "parts off work that is held by a centre: it closes on the blade",
        `hold it in the chuck alone for this: { do: hold, out: … }`,
      ),
    ];
  if (shaping.outside.length === 0 || shaping.from > 1e-6) return [];
  const mouth = diameterAt(before.bore, endsOf(before).from, 1);
  const thinnest = Math.min(...shaping.outside.filter(({ from }) => from <= 1e-6).map(({ start }) => start));
  // Of a hole that the bar is to bring along nobody knows how wide it is.
  if (mouth === 0) return [];
  if (thinnest <= mouth)
    return [
      refused(
        "into-the-centre",
        `turns the end to ${show(thinnest)}, and the centre hole is ${show(mouth)} wide: the tool meets the centre`,
        "take a smaller centre drill, or turn the end last without the centre",
      ),
    ];
  // Beside the hole a 60° centre widens by 1.15 of every length that the tool comes from outside.
  return thinnest < mouth + 1.15 * clear
    ? [
        takeCare(
          "near-the-centre",
          `turns the end to ${show(thinnest)} beside a centre hole of ${show(mouth)}: hardly room for the tool`,
          "use a cut-away centre and a slender knife tool, or a smaller centre drill",
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
      takeCare(
        "no-centre-seat",
        "is held by a centre in a straight bore: it bears on an edge, if it is wide enough at all",
        "plug the bore, or bring the centre up before it is made",
      ),
    ];
  return free && other
    ? []
    : [
        takeCare(
          "no-centre-hole",
          `is held by a centre, and no step makes the centre hole ${free ? "in its other end" : other ? "in its free end" : "in either end"}`,
          "add { do: centre drill } while the chuck alone holds it, or see that the bar has one",
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
        `sets the tailstock over, and the ${held === "chuck" ? "chuck alone holds the work: nothing slants" : "chuck holds the other end straight: the work bends"}`,
        "hold it between centres first: { do: hold, held: between centres, out: … }, or take by: top slide",
      ),
    ];
  return step.by === "headstock" && held !== "chuck"
    ? [
        refused(
          "centre-out-of-line",
          "swings the headstock away from the centre that holds the work",
          "hold it in the chuck alone, or take by: top slide",
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
  const [is, at, end] =
    holding.held === "chuck"
      ? ["stands out", "at", ", with nothing at its free end"]
      : ["is free", "between what holds it, at", ""];
  const even = now.thickest - now.thinnest < 1e-6;
  const thick = even ? show(now.thinnest) : `${show(now.thinnest)} to ${show(now.thickest)}`;
  const what = `${show(now.length)} ${is} ${at} ${thick} diameter, ${even ? "" : "as stiff as a bar "}${now.ratio.toFixed(1)} times as long as thick${end}`;
  const whips = now.ratio > 2 * limit;
  const why = whips
    ? `more than ${2 * limit} times whips, and climbs over the tool`
    : `more than ${limit} times bends and chatters`;
  const remedy =
    holding.held !== "chuck"
      ? `${why}: it needs a steady, or a thicker part`
      : shaping.outside.length > 0
        ? `${why}: let it out less, hold its end with a centre, or turn the thin end first and short`
        : `${why}: let it out less, and draw it out to a centre afterwards`;
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
          `parts off ${show(jaws - shaping.to)} from the jaws, where the work gives and pinches the blade`,
          "let less stand out: close to the jaws is best",
        ),
      ]
    : [];
}
