import type { Mark } from "../drawing/drawing.js";
import { line, text } from "../drawing/shapes.js";
import type { SpeedFinding } from "../drive/finding.js";
import type { Drive } from "../machine/machine.js";
import { formatFixed } from "../quantity/format.js";
import { block, type Run } from "./block.js";
import { stepPulleys } from "./stepPulleys.js";
import { fine, size } from "./style.js";

/** One tile a position, slowest first: where the belt lies, the speed in large figures, and where the number comes from. */
export const positionTiles = block({ columns: 3, pulleyHeight: 22 }, ({ findings, settings, width }) => {
  const { drive } = findings.machine;
  if (drive === undefined || findings.drive === undefined) return [];
  const { speeds } = findings.drive;
  const columns = Math.max(1, Math.min(settings.columns, speeds.length));
  const tile = { width: width / columns, pulleys: settings.pulleyHeight };
  const runs: Run[] = [];
  for (let first = 0; first < speeds.length; first += columns)
    runs.push(row(speeds.slice(first, first + columns), drive, width, tile));
  return runs;
});

function row(
  speeds: readonly SpeedFinding[],
  drive: Drive,
  width: number,
  tile: { width: number; pulleys: number },
): Run {
  const height = tile.pulleys + size.huge + size.tiny * 2.4 + 3.4;
  const marks = speeds.flatMap((speed, index): Mark[] => {
    const at = { x: index * tile.width, y: 1 };
    const marks: Mark[] = [{ kind: "group", at, marks: tileMarks(speed, drive, tile) }];
    return index === 0 ? marks : [...marks, line({ x: at.x, y: 2 }, { x: at.x, y: height - 2 }, fine)];
  });
  return { drawing: { width, height, marks: [...marks, line({ x: 0, y: height }, { x: width, y: height }, fine)] } };
}

function tileMarks(speed: SpeedFinding, drive: Drive, tile: { width: number; pulleys: number }): Mark[] {
  const shown = drive.stages.flatMap((stage, index) => {
    const step = speed.position.steps[index];
    return step?.kind === "belt" && stage.steps.length > 1 ? [{ stage, step }] : [];
  });
  const room = { width: (tile.width - 4) / Math.max(1, shown.length), height: tile.pulleys };
  const marks: Mark[] = shown.flatMap(({ stage, step }, index) => {
    const drawing = stepPulleys(stage, step, room);
    return drawing ? [{ kind: "group", at: { x: 2 + index * room.width, y: 0 }, marks: drawing.marks } as const] : [];
  });
  const middle = tile.width / 2;
  const top = shown.length === 0 ? 0 : tile.pulleys;
  const baseline = top + 1 + size.tiny * 1.3;
  return [
    ...marks,
    text(speed.position.name, { x: middle, y: baseline }, { size: size.small, weight: "bold", anchor: "middle" }),
    text(
      rpmText(speed),
      { x: middle, y: baseline + size.huge * 0.95 },
      { size: size.huge, weight: "bold", anchor: "middle" },
    ),
    text(
      `rpm, ${origin(speed)}`,
      { x: middle, y: baseline + size.huge * 0.95 + size.tiny * 1.35 },
      { size: size.tiny, anchor: "middle" },
    ),
  ];
}

const rpmText = ({ rpm, slowestRpm }: SpeedFinding): string =>
  Math.round(slowestRpm) === Math.round(rpm)
    ? formatFixed(rpm, 0)
    : `${formatFixed(slowestRpm, 0)}–${formatFixed(rpm, 0)}`;

/** How one knows a speed, in the words that stand beside it. */
export const origin = ({ from }: SpeedFinding): string =>
  ({ measured: "measured", slip: "by ratio less slip", ratio: "by ratio, not measured" })[from];
