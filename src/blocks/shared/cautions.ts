import type { Mark, Weight } from "../../drawing/drawing.js";
import { rectangle, text } from "../../drawing/shapes.js";
import { wrapText } from "../../drawing/text.js";
import { usesOf } from "../../findings/uses.js";
import type { Machine } from "../../machine/machine.js";
import { say } from "../../words/say.js";
import { block, type Run } from "./block.js";
import { leading, size } from "./style.js";

/** The usual cautions of the trade (common practice), by where the hand will be. `strip`: two at most, where the hand arrives; `rest`:
 *  once, where one reads before one begins. */
const cautions = {
  tailstock: {
    strip: () => say("cautions.tailstock"),
    rest: () => [say("cautions.tailstock 1"), say("cautions.tailstock 2")],
  },
  drill: {
    strip: () => say("cautions.drill"),
    rest: () => [say("cautions.drill 1"), say("cautions.drill 2")],
  },
  belt: {
    strip: (off: string) => say("cautions.belt", { off }),
    rest: () => [say("cautions.belt 1"), say("cautions.belt 2"), say("cautions.belt 3")],
  },
  dial: {
    strip: () => say("cautions.dial"),
    rest: () => [say("cautions.dial 1")],
  },
  thread: {
    strip: (off: string) => say("cautions.thread", { off }),
    rest: () => [say("cautions.thread 1"), say("cautions.thread 2")],
  },
  job: {
    strip: () => say("cautions.job"),
    rest: () => [say("cautions.job 1"), say("cautions.job 2")],
  },
  bar: {
    strip: () => say("cautions.bar"),
    rest: () => [say("cautions.bar 1"), say("cautions.bar 2")],
  },
  "bar or drill": {
    strip: () => say("cautions.bar"),
    rest: () => [],
  },
  "job or drill": {
    strip: () => say("cautions.job"),
    rest: () => [],
  },
  taper: {
    strip: (off: string) => say("cautions.taper", { off }),
    rest: () => [say("cautions.taper 1")],
  },
} as const;

type Place = keyof typeof cautions;
export type CautionPlace = Place;
export const cautionPlaces = Object.keys(cautions) as Place[];

/** Two at most, where the hand arrives. */
export const cautionWords = (place: Place, { drive }: Machine): string =>
  cautions[place].strip(say(`cautions.off ${drive?.motor.by ?? "motor"}`));

/** Places whose strip goes by the machine's uses: one that stands both ways has a single strip for either. */
const byUse = {
  "bar or drill": { turning: "bar", both: () => say("cautions.bar and drill") },
  "job or drill": { turning: "job", both: () => say("cautions.job and drill") },
} as const;

const isByUse = (place: Place): place is keyof typeof byUse => place in byUse;

function wordsFor(place: Place, machine: Machine): string {
  if (!isByUse(place)) return cautionWords(place, machine);
  const { turning, both } = byUse[place];
  const uses = usesOf(machine);
  return uses.length > 1 ? both() : cautionWords(uses.includes("drilling") ? "drill" : turning, machine);
}

/** What stands once, in front of a binder; `places`: where hands will be. */
export const furtherCautions = (places: readonly Place[]): string[] => [
  say("cautions.eyes"),
  ...places.flatMap((place) => cautions[place].rest()),
];

export const cautionLines = block(
  { of: "" },
  ({ findings, settings, width }): Run[] => {
    // A machine that drills by its quill has none to lock.
    if (settings.of === "tailstock" && usesOf(findings.machine).includes("drilling")) return [];
    const words = wordsFor(settings.of as Place, findings.machine);
    return [{ ...strip(words, width), gap: 3, keepWithPrevious: true, accompanies: true }];
  },
  { of: cautionPlaces },
);

/** White on black, read at arm's length. */
export function strip(words: string, width: number): Run {
  const lines = wrapText(words, width - 6, size.card, "bold");
  const step = size.card * 1.2;
  const height = lines.length * step + 2.4;
  return {
    drawing: {
      width,
      height,
      marks: [
        rectangle({ x: 0, y: 0 }, width, height, { fill: "black" }, 1.5),
        ...lines.map((part, index) =>
          text(
            part,
            { x: width / 2, y: 1.2 + step * (index + 0.79) },
            { size: size.card, weight: "bold", anchor: "middle", ink: "white" },
          ),
        ),
      ],
    },
  };
}

/** Each behind a square of the warning colour. They stay together: one left over on a page of its own is not read. */
export const cautionRuns = (lines: readonly string[], width: number, weight: Weight = "regular"): Run[] =>
  lines.map((caution, index) => {
    const parts = wrapText(caution, width - 4, size.text, weight);
    const step = size.text * leading;
    const marks: Mark[] = [
      rectangle({ x: 0, y: step * 0.28 }, 1.4, 1.4, { fill: "accent" }),
      ...parts.map((part, row) => text(part, { x: 3, y: step * (row + 0.76) }, { size: size.text, weight })),
    ];
    const keepWithNext = index < lines.length - 1;
    return { drawing: { width, height: step * parts.length + 0.4, marks }, keepWithNext };
  });
