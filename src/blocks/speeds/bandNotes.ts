import type { CuttingSpeed } from "../../cutting/finding.js";
import { materialName } from "../../cutting/materials.js";
import { figureWords } from "../../cutting/published/source.js";
import { cuttingSpeedUnit } from "../../cutting/rates.js";
import { sourceTitle } from "../../cutting/sources.js";
import { aimWords } from "../../findings/aimWords.js";
import type { Units, Work } from "../../machine/machine.js";
import { capital, formatFixed, trimmed } from "../../quantity/format.js";
import { say, translated } from "../../words/say.js";

/** "12–26 m/min": what is aimed at. */
export function bandText(band: CuttingSpeed, units: Units): string {
  if (band.rpm) return say("speed diagram.rpm range", { range: range(band.rpm.slowest, band.rpm.most, 0) });
  return speedRange(band.slowest, band.most, units);
}

/** What the ranges of a table rest on, a sentence each: which part of them is used, what they were multiplied by, which
 *  figures are another material's, which sources contradict them, and all sources. */
export function bandNotes(bands: readonly CuttingSpeed[], work: Work, units: Units): string[] {
  const published = bands.filter(({ nearest }) => nearest !== undefined);
  const factors = new Map(
    bands.flatMap((band) =>
      band.factors
        .filter(({ source }) => source !== "the machine file")
        .map(
          ({ what, from, to }) =>
            [what, from === to ? `× ${trimmed(from, 3)}` : say("speed diagram.factor range", { from, to })] as const,
        ),
    ),
  );
  const borrowed = bands.flatMap(({ material, rows, nearest }) => {
    const row = rows.find(({ source, figureFor }) => source === nearest && figureFor !== undefined);
    return row === undefined ? [] : [`${materialName(material)}: ${figureWords(row)}`];
  });
  const apart = bands.flatMap((band) =>
    band.apart.map(
      ({ source, slowest, fastest }) =>
        `${materialName(band.material)} ${speedRange(slowest, fastest, units)} (${sourceTitle(source)})`,
    ),
  );
  const sources = [...new Set(bands.flatMap((band) => band.sources))].map(sourceTitle);
  const memory = bands.some(({ confidence }) => confidence === "memory") ? say("speed diagram.from memory") : "";
  return [
    ...(published.length === 0 ? [] : aimWords(work)),
    ...(factors.size === 0
      ? []
      : [
          say("speed diagram.of the nearest", {
            factors: capital([...factors].map(([what, factor]) => `${translated(what)} ${factor}`).join(", ")),
          }),
        ]),
    ...(borrowed.length === 0 ? [] : [`${capital(borrowed.join("; "))}.`]),
    ...(apart.length === 0 ? [] : [say("speed diagram.not counted", { sources: apart.join("; ") })]),
    ...(sources.length === 0 ? [] : [say("speed diagram.sources", { sources: `${sources.join("; ")}${memory}` })]),
  ];
}

function speedRange(slowest: number, fastest: number, units: Units): string {
  const { name, metresPerMinute } = cuttingSpeedUnit[units];
  return `${range(slowest / metresPerMinute, fastest / metresPerMinute, fastest / metresPerMinute < 10 ? 1 : 0)} ${name}`;
}

function range(least: number, most: number, places: number): string {
  const [from, to] = [formatFixed(least, places), formatFixed(most, places)];
  return from === to ? from : `${from}–${to}`;
}
