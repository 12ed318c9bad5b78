import { group, text } from "../../drawing/shapes.js";
import { textWidth, wrapText } from "../../drawing/text.js";
import { dialToRead } from "../../findings/dialToRead.js";
import type { HandwheelFinding } from "../../findings/findings.js";
import { movesQuill } from "../../findings/roles.js";
import { repeats } from "../../findings/stops.js";
import { noFeedWords, travelWords } from "../../findings/travelWords.js";
import type { Use } from "../../findings/uses.js";
import { say } from "../../words/say.js";
import { block, type Run } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { leading, size } from "../shared/style.js";
import { correctedTables } from "./stopCorrected.js";
import { drillStop, latheStop, type StopStep, stopPicture, stopSteps } from "./stopPictures.js";
import { stopTable } from "./stopTable.js";

const gap = 5;

/** How a stop is set, drawn once; then for each stop of the file its turns and reading, how alike parts come, and what tolerance
 *  the machine can hold. */
export const stopSettings = block({}, ({ findings, use, width }): Run[] => {
  const { units } = findings.machine;
  const all = repeats(findings);
  const set = all.filter(({ repeat }) => repeat !== undefined);
  const unset = all.filter(({ repeat }) => repeat === undefined);
  const wheels = [...new Set(set.flatMap(({ wheel }) => wheel ?? []))];
  // A quill's stop is one of a drill, whatever else the machine can do.
  const drawnFor = wheels.length > 0 && wheels.every((wheel) => movesQuill(wheel, findings)) ? "drilling" : use;
  const warned = [
    ...unset.map(({ stop, wheel }) =>
      say("stops.not set", { stop: stop.name, why: wheel ? noFeedWords(wheel) : say("stops.no such wheel") }),
    ),
    ...wheels.flatMap((wheel) => travelWords(wheel, units)),
  ];
  return [
    ...steps(drawnFor, wheels.length > 0 ? wheels : findings.handwheels, width),
    ...paragraph(say("stops.first one"), width, { gap: 2 }),
    ...(all.length === 0 ? paragraph(say("stops.none"), width, { gap: 3 }) : []),
    ...(set.length > 0 ? stopTable(findings.machine, set, width) : []),
    ...warned.flatMap((words) => paragraph(words, width, { weight: "bold", gap: 1 })),
    ...correctedTables(set, findings.machine, width),
  ];
});

/** Four pictures with their numbers and words, as many beside each other as the paper has room for. */
function steps(use: Use, wheels: readonly HandwheelFinding[], width: number): Run[] {
  const across = width >= 4 * stopPicture.width + 3 * gap ? 4 : 2;
  const each = (width - (across - 1) * gap) / across;
  const draw = use === "drilling" ? drillStop : latheStop;
  const { zero, wind } = atTheTouch(wheels);
  const words: Readonly<Record<StopStep, string>> = {
    "touch off": say("stops.touch off", { zero }),
    wind,
    lock: say(use === "drilling" ? "stops.lock drill" : "stops.lock"),
    "next part": say("stops.next part"),
  };
  const cells = stopSteps.map((step, index) => cell(String(index + 1), words[step], draw(step), each));
  return Array.from({ length: stopSteps.length / across }, (_, row): Run => {
    const these = cells.slice(row * across, (row + 1) * across);
    const marks = these.map((one, index) => group({ x: index * (each + gap), y: 0 }, one.marks));
    return { drawing: { width, height: Math.max(...these.map((one) => one.height)), marks }, gap: 4 };
  });
}

/** What is done with each wheel's dial where the work is touched, and how one goes on from there. */
function atTheTouch(wheels: readonly HandwheelFinding[]): { readonly zero: string; readonly wind: string } {
  const dials = wheels.flatMap((wheel) => dialToRead(wheel) ?? []);
  if (dials.length === 0) return { zero: say("stops.mark"), wind: say("stops.wind") };
  const fixed = dials.filter((dial) => dial.fixed).length;
  const [zero, wind] =
    fixed === 0
      ? [say("stops.zero"), say("stops.wind")]
      : fixed === dials.length
        ? [say("stops.write down"), say("stops.wind to sum")]
        : [say("stops.zero or write down"), say("stops.wind to reading or sum")];
  return { zero: dials.length < wheels.length ? `${zero} ${say("stops.mark too")}` : zero, wind };
}

function cell(number: string, words: string, picture: ReturnType<typeof latheStop>, width: number) {
  const step = size.text * leading;
  const indent = textWidth(number, size.card, "bold") + 1.8;
  const top = stopPicture.height + 4;
  const marks = [
    group({ x: (width - stopPicture.width) / 2, y: 0 }, picture),
    text(number, { x: 0, y: top }, { size: size.card, weight: "bold" }),
    ...wrapText(words, width - indent, size.text, "regular").map((part, row) =>
      text(part, { x: indent, y: top + row * step }, { size: size.text }),
    ),
  ];
  return { marks, height: top + (marks.length - 2.6) * step };
}
