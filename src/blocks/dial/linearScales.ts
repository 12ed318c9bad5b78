import type { Graduation } from "../../dial/finding.js";
import { blurs } from "../../dial/legibility.js";
import { type LinearDivision, linearDivision, linearMarks, turnsDivision } from "../../dial/linearScale.js";
import { group } from "../../drawing/shapes.js";
import type { Findings } from "../../findings/findings.js";
import { wheelNamed } from "../../findings/roles.js";
import type { LinearScale, Machine, Units } from "../../machine/machine.js";
import { formatSize, trimmed, trimmedSize } from "../../quantity/format.js";
import { mmPer } from "../../quantity/length.js";
import { block, type Run } from "../shared/block.js";
import { cutLine, size } from "../shared/style.js";
import { paragraph } from "../shared/table.js";
import { type CutOut, cutOuts } from "./cutOuts.js";
import { fitted } from "./dialPiece.js";
import { scaleMarks, textAt } from "./scaleMarks.js";
import { stripSurface } from "./surface.js";

/** The straight scales of the file at true size, in pieces where they are longer than the paper. */
export const linearScales = block({ copies: 1 }, ({ findings, settings, width }) =>
  (findings.machine.scales ?? []).flatMap((scale): Run[] => {
    const division = divisionOf(scale, findings);
    if (division === undefined)
      return paragraph(
        `${scale.name}: the feed of ${scale.turnsOf} is not known, so its turns have no length.`,
        width,
        {
          gap: 4,
        },
      );
    const pieces = scalePieces(scale, division, width - 1, findings.machine);
    return [
      ...paragraph(scale.name, width, { size: size.heading, weight: "bold", gap: 4 }),
      ...paragraph(scaleWords(scale, division, pieces.length, findings.machine.units), width, {
        size: size.small,
        gap: 0.3,
      }),
      ...Array.from({ length: Math.max(1, settings.copies) }, () => cutOuts(pieces, width)).flat(),
    ];
  }),
);

export function divisionOf(scale: LinearScale, { handwheels }: Findings): LinearDivision | undefined {
  if (scale.divisions !== undefined) return linearDivision(scale.divisions);
  const feed = wheelNamed(scale.turnsOf, handwheels)?.feed;
  return feed && turnsDivision(feed.perTurn, scale.parts ?? 10);
}

/** "1/16 in", "0.5 mm", "1/10 turn of the quill". */
function divisionWords({ value, unit, per, long }: LinearDivision, units: Units, turnsOf?: string): string {
  if (unit === "turns") return `1/${long} turn${turnsOf ? ` of ${turnsOf}` : ""} (${trimmedSize(value, units, 4)})`;
  if (unit === "in" && per === mmPer.in && long >= 2 && Math.abs(value * long - mmPer.in) < 1e-9) return `1/${long} in`;
  return `${trimmed(value / per, 5)} ${unit}`;
}

function scaleWords(scale: LinearScale, division: LinearDivision, pieces: number, units: Units): string {
  const close = blurs(division.value)
    ? ` Marks ${formatSize(division.value, units)} apart blur: choose a coarser division or fewer parts to a turn.`
    : "";
  const parts = pieces > 1 ? ` in ${pieces} numbered pieces, which add up exactly` : "";
  return `One division is ${divisionWords(division, units, scale.turnsOf)}; from its first mark to its end it must measure ${formatSize(scale.length, units)}${parts}. Cut the ends last; pieces butt.${close}`;
}

/** Cuts fall between two marks, and the pieces' lengths add up to the whole with a margin at either end. */
function scalePieces(scale: LinearScale, division: LinearDivision, room: number, machine: Machine): CutOut[] {
  const { revision, units } = machine;
  const margin = 4;
  const marks = linearMarks(division, scale.length);
  const [start, end] = [-margin, scale.length + margin];
  const count = Math.ceil((end - start) / Math.max(20, room - 2 * division.numbered * division.value));
  const cuts = Array.from({ length: count + 1 }, (_, index) => {
    if (index === 0 || index === count) return index === 0 ? start : end;
    const wanted = start + (index * (end - start)) / count;
    // Between two marks, as far from the numbers as may be.
    const numbers = division.numbered * division.value;
    const clear = (Math.floor(wanted / numbers) + 0.5) * numbers;
    return (Math.floor(clear / division.value - 1e-9) + 0.5) * division.value;
  });
  return cuts.slice(1).map((to, index): CutOut => {
    const from = cuts[index] ?? start;
    const surface = stripSurface(1, scale.width, {
      from,
      to,
      growth: scale.grows === "left" ? "leftward" : "rightward",
    });
    const here = marks.filter(({ angle }) => angle >= from && angle < to);
    const longest = Math.max(1.2, Math.min(5, scale.width - 2.4 - size.tiny * 1.2));
    const style = { across: 0, marks: [longest, longest * 0.75, longest * 0.5] as const, number: 2.2 };
    const words = fitted(
      [
        `${count > 1 ? `${index + 1}/${count} · ` : ""}1 div ${divisionWords(division, units)}`,
        scale.name,
        ...(revision === undefined ? [] : [`rev ${revision}`]),
      ].join(" · "),
      surface.width - 6,
    );
    return {
      name: "scale",
      caption: `${scale.name}${count > 1 ? `, piece ${index + 1} of ${count}` : ""}: ${formatSize(to - from, units)} between the cut ends`,
      drawing: {
        width: surface.width,
        height: surface.height,
        marks: [
          group({ x: 0, y: 0 }, surface.outline(cutLine), { name: "cut" }),
          ...scaleMarks(surface, withUnit(here, division), style),
          group({ x: 0, y: 0 }, words ? [textAt(surface, (from + to) / 2, scale.width - 1.2, words, size.tiny)] : [], {
            name: "legend",
          }),
        ],
      },
    };
  });
}

/** The zero says what the numbers are. */
const withUnit = (marks: readonly Graduation[], { unit }: LinearDivision): Graduation[] =>
  marks.map((mark) => (mark.value === 0 ? { ...mark, label: unit === "turns" ? "0" : `0 ${unit}` } : mark));
