import type { SpeedFinding } from "../../drive/finding.js";
import { rpmWords } from "../../drive/rpmWords.js";
import { limitWords } from "../../findings/limits.js";
import { say } from "../../words/say.js";
import { block } from "../shared/block.js";
import { paragraph } from "../shared/paragraph.js";
import { size } from "../shared/style.js";
import { type Column, table } from "../shared/table.js";

/** Every position and its speed, slowest first, to be read from where one stands. */
export const speedList = block({}, ({ findings, width }) => {
  const { drive, machine } = findings;
  if (drive === undefined) return [];
  const limits = drive.speeds.map((speed) => limitWords(speed, machine.limits));
  // The usual words as a sign, for which a list of many speeds has the room in each of its columns.
  const beyond = say("remarks.beyond limit");
  const noted = limits.some((words) => words !== undefined && words !== beyond);
  const columns: readonly Column[] = [
    { heading: [say("front.position")], align: "start" },
    { heading: [say("front.speed")], align: "end" },
    ...(noted ? [{ heading: [""], align: "start", optional: true } as const] : []),
  ];
  const rows = drive.speeds.map((speed, at) => {
    const words = limits[at];
    const held = words === beyond ? " ×" : "";
    return [
      { text: speed.position.name || say("front.only position"), size: size.card },
      { text: `${rpmWords(speed)}${sign(speed)}${held}`, size: size.card, weight: "bold" as const },
      ...(noted ? [{ text: words === undefined || words === beyond ? "" : words }] : []),
    ];
  });
  return [
    ...table(columns, rows, { width, ruled: true, list: drive.speeds.length > 3 }),
    ...(limits.includes(beyond) ? paragraph(say("hand feed.beyond"), width, { size: size.source, gap: 1 }) : []),
  ];
});

/** By ratio, not measured. */
const sign = ({ from }: SpeedFinding): string => (from === "slip" || from === "ratio" ? " ~" : "");
