import type { SpeedFinding } from "../../drive/finding.js";
import { rpmWords } from "../../drive/rpmWords.js";
import { limitWords } from "../../findings/limits.js";
import { say } from "../../words/say.js";
import { block } from "../shared/block.js";
import { size } from "../shared/style.js";
import { type Column, table } from "../shared/table.js";

/** Every position and its speed, slowest first, to be read from where one stands. */
export const speedList = block({}, ({ findings, width }) => {
  const { drive, machine } = findings;
  if (drive === undefined) return [];
  const columns: readonly Column[] = [
    { heading: [say("front.position")], align: "start" },
    { heading: [say("front.speed")], align: "end" },
    { heading: [""], align: "start", optional: true },
  ];
  const rows = drive.speeds.map((speed) => [
    { text: speed.position.name || say("front.only position"), size: size.card },
    { text: `${rpmWords(speed)}${sign(speed)}`, size: size.card, weight: "bold" as const },
    { text: limitWords(speed, machine.limits) ?? "" },
  ]);
  return table(columns, rows, { width, ruled: true, list: drive.speeds.length > 3 });
});

/** By ratio, not measured. */
const sign = ({ from }: SpeedFinding): string => (from === "slip" || from === "ratio" ? " ~" : "");
