import { blurs } from "../../dial/legibility.js";
import { type LinearDivision, linearDivision, linearMarks, turnsDivision } from "../../dial/linearScale.js";
import { group } from "../../drawing/shapes.js";
import type { Findings } from "../../findings/findings.js";
import { wheelNamed } from "../../findings/roles.js";
import type { LinearScale, Machine, Units } from "../../machine/machine.js";
import { formatSize, trimmed, trimmedSize, unitName } from "../../quantity/format.js";
import { mmPer } from "../../quantity/length.js";
import { say } from "../../words/say.js";
import { cellFoot } from "./cell.js";
import { type CutOut, withCutRoom } from "./cutOuts.js";
import type { Note } from "./dialNotes.js";
import { fitted } from "./dialPiece.js";
import { bandStyles, legendAcross, legendFits, legendRoom, thinned, wordsOn } from "./dialStyle.js";
import { edgeArrow } from "./edgeArrow.js";
import { clearOfEnds, hanging, type ScaleStyle, scaleMarks, textAt } from "./scaleMarks.js";
import { stripSurface } from "./surface.js";

/** A straight scale as pieces to cut, and what must be known of it. */
export function scaleSet(
  scale: LinearScale,
  findings: Findings,
  width: number,
): { readonly cut: readonly CutOut[]; readonly note?: Note; readonly missing: boolean } {
  const division = divisionOf(scale, findings);
  const note = (words: string): Note => ({ about: scale.name, words, warnings: [] });
  if (division === undefined)
    return { cut: [], note: note(say("scales.no feed", { wheel: scale.turnsOf ?? "" })), missing: false };
  const { cut, missing } = scalePieces(scale, division, width, findings.machine);
  const { units } = findings.machine;
  const words = [
    ...(cut.length > 1 ? [say("scales.in pieces", { n: cut.length })] : []),
    ...(blurs(division.value) ? [say("scales.blur", { apart: formatSize(division.value, units) })] : []),
  ].join(" ");
  return { cut, missing, ...(words !== "" && { note: note(words) }) };
}

export function divisionOf(scale: LinearScale, { handwheels }: Findings): LinearDivision | undefined {
  if (scale.divisions !== undefined) return linearDivision(scale.divisions, scale.unit ?? "mm");
  const feed = wheelNamed(scale.turnsOf, handwheels)?.feed;
  return feed && turnsDivision(feed.perTurn, scale.parts ?? 10);
}

/** "1/16 in", "0.5 mm", "1/10 turn". */
function divisionWords({ value, unit, per, long }: LinearDivision, units: Units): string {
  if (unit === "turns") return say("scales.part of turn", { part: `1/${long}`, length: trimmedSize(value, units, 4) });
  const halved = [2, 4, 8, 16, 32, 64].includes(long);
  if (unit === "in" && per === mmPer.in && halved && Math.abs(value * long - mmPer.in) < 1e-9)
    return `1/${long} ${unitName("in")}`;
  return `${trimmed(value / per, 5)} ${unitName(unit === "in" ? "in" : "mm")}`;
}

/** The end without a unit, mm. */
const usualMargin = 4;

/** Cuts fall between two marks, and the pieces' lengths add up to the whole with a margin at either end. */
function scalePieces(scale: LinearScale, division: LinearDivision, most: number, machine: Machine) {
  const { revision, units } = machine;
  const leftward = scale.grows === "left";
  const em = wordsOn(scale.width, true);
  const withLegend = legendFits(scale.width, 1, em);
  const all = linearMarks(division, scale.length);
  const height = scale.width - (withLegend ? legendRoom(em) : 0.3);
  const labels = all.map(({ label }) => label);
  const [band] = bandStyles({ height, count: 1, least: em, labels }, [division.value]);
  const unit = division.unit === "turns" ? undefined : unitName(division.unit === "in" ? "in" : "mm");
  // The unit hangs beyond the zero, where no other number stands.
  const style = band as ScaleStyle;
  const hung = unit && style.number > 0 ? hanging("0", unit, style.number) : undefined;
  const margin = Math.max(usualMargin, hung ? hung.middle + hung.half + 0.8 : 0);
  const marks = thinned(all, style, 1);
  const cuts = cutsOf(-margin, scale.length + usualMargin, division, most);
  const count = cuts.length - 1;
  let lacking = false;
  const cut = cuts.slice(1).map((to, index): CutOut => {
    const from = cuts[index] ?? -margin;
    const surface = stripSurface(1, scale.width, { from, to, growth: leftward ? "leftward" : "rightward" });
    const here = marks
      .filter(({ angle }) => angle >= from && angle < to)
      .map((mark) => clearOfEnds(mark, { from, to }, style));
    const part = count > 1 ? say("dials.piece of", { piece: index + 1, pieces: count }) : "";
    const said = [
      part,
      say("dials.division", { division: divisionWords(division, units) }),
      scale.name,
      ...(revision === undefined ? [] : [say("dials.revision", { revision })]),
    ].filter(Boolean);
    const words = withLegend ? fitted(said.join(" · "), surface.width - 3, em) : "";
    const missing = said.filter((one) => one !== part && !words.split(" · ").includes(one));
    lacking ||= missing.length > 0;
    const { width, height, cutRoom } = surface;
    const drawing = withCutRoom(
      {
        width,
        height,
        marks: [
          ...surface.cuts(),
          ...scaleMarks(surface, here, {
            ...style,
            ...(hung && unit && index === 0 && { unit: { words: unit, along: -hung.middle } }),
          }),
          group({ x: 0, y: 0 }, edgeArrow(surface, from, to), { name: "arrow" }),
          group(
            { x: 0, y: 0 },
            words ? [textAt(surface, (from + to) / 2, legendAcross(scale.width, em, false), words, em)] : [],
            { name: "legend" },
          ),
        ],
      },
      cutRoom,
    );
    const piece = part && `, ${part}`;
    const foot = {
      title: `${scale.name}${piece}`,
      numbers: [
        { value: divisionWords(division, units), label: say("dials.one division") },
        { value: formatSize(to - from, units), label: say("dials.between cuts") },
        { value: formatSize(scale.length, units), label: say("scales.from mark to end") },
      ],
      ...(missing.length > 0 && { lines: [say("dials.not on it", { words: missing.join(" · ") })] }),
    };
    return { name: "scale", drawing, caption: cellFoot(foot, drawing.width, most) };
  });
  return { cut, missing: lacking };
}

/** Between two marks, as far from the numbers as may be. */
function cutsOf(start: number, end: number, { value, numbered }: LinearDivision, most: number): number[] {
  const room = most - 2 * stripSurface(1, 1, { from: 0, to: 1, growth: "rightward" }).cutRoom;
  const numbers = numbered * value;
  const count = Math.ceil((end - start) / Math.max(20, end - start > room ? room - 2 * numbers : room));
  return Array.from({ length: count + 1 }, (_, index) => {
    if (index === 0 || index === count) return index === 0 ? start : end;
    const wanted = start + (index * (end - start)) / count;
    const clear = (Math.floor(wanted / numbers) + 0.5) * numbers;
    return (Math.floor(clear / value - 1e-9) + 0.5) * value;
  });
}
