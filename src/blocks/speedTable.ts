import { chooseSpeed } from "../cutting/choose.js";
import { cuttingSpeed } from "../cutting/cuttingSpeeds.js";
import type { CuttingSpeed, SpeedChoice } from "../cutting/finding.js";
import { sourceTitle } from "../cutting/sources.js";
import { formatFixed, trimmed } from "../quantity/format.js";
import { mmPer } from "../quantity/length.js";
import { block, type Run } from "./block.js";
import { size } from "./style.js";
import { type Cell, type Column, paragraph, table } from "./table.js";

/** Material × diameter → belt position and speed, for one operation with the file's tool. */
export const speedTable = block({ operation: "turning" }, ({ findings, settings, width }): Run[] => {
  const { machine, drive } = findings;
  if (drive === undefined) return [];
  const { tool, materials, diameters } = machine.work;
  const bands = materials.map((material) => cuttingSpeed(material, tool, settings.operation));
  const columns: Column[] = [
    { heading: ["diameter", machine.units], align: "middle", stretch: 0 },
    ...materials.map((material, index): Column => ({ heading: [material, bandText(bands[index])], align: "middle" })),
  ];
  const rows = diameters.map((diameter) => [
    { text: trimmed(diameter / mmPer[machine.units], 4), weight: "bold" } satisfies Cell,
    ...bands.map((band) =>
      band ? cell(chooseSpeed(diameter, band, drive.speeds, machine.limits)) : { text: "no data" },
    ),
  ]);
  const sources = [...new Set(bands.flatMap((band) => band?.sources ?? []))].map(sourceTitle);
  const title = `${settings.operation}, ${tool}: belt position and rpm by diameter`;
  return [
    ...paragraph(title.charAt(0).toUpperCase() + title.slice(1), width, {
      size: size.body,
      weight: "bold",
      gap: 2,
    }).map((run) => ({ ...run, keepWithNext: true })),
    ...table(columns, rows, { width, size: size.body, ruleEvery: 1 }),
    ...paragraph(`Between two positions the slower is given. Cutting speeds from: ${sources.join("; ")}.`, width, {
      size: size.tiny,
      gap: 1,
    }),
  ];
});

const bandText = (band: CuttingSpeed | undefined): string =>
  band ? `${formatFixed(band.slowest, 0)}–${formatFixed(band.fastest, 0)} m/min` : "";

function cell({ verdict, speed, rpm }: SpeedChoice): Cell {
  if (speed === undefined || rpm === undefined)
    return { text: "none", weight: "bold", ink: "accent", note: "slowest is too fast" };
  const note =
    verdict === "slower than the band" ? "below the band" : verdict === "held by a limit" ? "held by the limit" : "";
  return {
    text: `${speed.position.name}  ${formatFixed(rpm, 0)}`,
    weight: verdict === "in the band" ? "bold" : "regular",
    note,
  };
}
