import type { Mark } from "../../drawing/drawing.js";
import { line, text } from "../../drawing/shapes.js";
import { textWidth } from "../../drawing/text.js";
import type { SpeedFinding } from "../../drive/finding.js";
import { rpmWords } from "../../drive/rpmWords.js";
import { limitWords } from "../../findings/limits.js";
import type { Drive, Limits } from "../../machine/machine.js";
import { block, type Run } from "../shared/block.js";
import { stepPulleys } from "../shared/stepPulleys.js";
import { fine, size } from "../shared/style.js";

/** One tile a position, slowest first: where the belt lies, the speed in large figures, and where the number comes from.
 *  As many `columns` as fit; a wide tile shows the pulleys beside the figures, a narrow one above them. `figure`: em size
 *  of the speed, mm. */
export const positionTiles = block({ columns: 3, pulleyHeight: 22, figure: 7 }, ({ findings, settings, width }) => {
  const { drive } = findings.machine;
  if (drive === undefined || findings.drive === undefined) return [];
  const { speeds } = findings.drive;
  const widest = Math.max(...speeds.map((speed) => textWidth(rpmWords(speed), settings.figure, "bold"))) + 4;
  const most = Math.max(1, Math.floor(width / Math.max(widest, 22)));
  const columns = Math.max(1, Math.min(settings.columns, speeds.length, most));
  const tile = { width: width / columns, pulleys: settings.pulleyHeight, figure: settings.figure };
  const runs: Run[] = [];
  for (let first = 0; first < speeds.length; first += columns)
    runs.push(row(speeds.slice(first, first + columns), drive, width, { ...tile, limits: findings.machine.limits }));
  return runs;
});

type Tile = {
  readonly width: number;
  readonly pulleys: number;
  readonly figure: number;
  readonly limits: Limits;
};

const besides = (tile: { width: number }): boolean => tile.width >= 60;
const wordsHeight = (tile: Tile): number => tile.figure + size.tiny * 2.4 + 2.4;

function row(speeds: readonly SpeedFinding[], drive: Drive, width: number, tile: Tile): Run {
  const height = (besides(tile) ? Math.max(tile.pulleys, wordsHeight(tile)) : tile.pulleys + wordsHeight(tile)) + 1.5;
  const marks = speeds.flatMap((speed, index): Mark[] => {
    const at = { x: index * tile.width, y: 1 };
    const marks: Mark[] = [{ kind: "group", at, marks: tileMarks(speed, drive, tile) }];
    return index === 0 ? marks : [...marks, line({ x: at.x, y: 2 }, { x: at.x, y: height - 2 }, fine)];
  });
  return { drawing: { width, height, marks: [...marks, line({ x: 0, y: height }, { x: width, y: height }, fine)] } };
}

function tileMarks(speed: SpeedFinding, drive: Drive, tile: Tile): Mark[] {
  const shown = drive.stages.flatMap((stage, index) => {
    const step = speed.position.steps[index];
    return step?.kind === "belt" && stage.steps.length > 1 ? [{ stage, step }] : [];
  });
  const beside = besides(tile);
  const share = beside ? 0.5 : 1;
  const room = { width: (tile.width * share - 4) / Math.max(1, shown.length), height: tile.pulleys };
  const marks: Mark[] = shown.flatMap(({ stage, step }, index) => {
    const drawing = stepPulleys(stage, step, room);
    return drawing ? [{ kind: "group", at: { x: 2 + index * room.width, y: 0 }, marks: drawing.marks } as const] : [];
  });
  const middle = beside ? tile.width * 0.74 : tile.width / 2;
  const top = beside ? Math.max(0, (tile.pulleys - wordsHeight(tile)) / 2) : shown.length === 0 ? 0 : tile.pulleys;
  const baseline = top + 1 + size.small;
  const style = { anchor: "middle" } as const;
  const minded = limitWords(speed, tile.limits);
  return [
    ...marks,
    text(speed.position.name, { x: middle, y: baseline }, { ...style, size: size.small, weight: "bold" }),
    text(
      rpmWords(speed),
      { x: middle, y: baseline + tile.figure * 0.95 },
      { ...style, size: tile.figure, weight: "bold" },
    ),
    text(
      minded === undefined ? `rpm, ${origin(speed)}` : `rpm: ${minded}`,
      { x: middle, y: baseline + tile.figure * 0.95 + size.tiny * 1.35 },
      {
        ...style,
        size: size.tiny,
        ...((minded !== undefined || speed.doubtful || speed.from === "unknown") && {
          ink: "accent",
          weight: "bold",
        }),
      },
    ),
  ];
}

/** How one knows a speed, in the words that stand beside it. */
export const origin = ({ from, doubtful }: SpeedFinding): string =>
  doubtful && from !== "unknown"
    ? `${from === "slip" ? "by ratio less slip" : "by ratio"}; reading doubtful`
    : {
        measured: "measured",
        slip: "by ratio less slip",
        ratio: "by ratio, not measured",
        unknown: "not known: measure first",
      }[from];
