import { MM_PER_FOOT } from "../quantity/length.js";
import { cuttingSpeeds, type PublishedSpeed } from "./data.js";
import type { CuttingSpeed } from "./finding.js";
import { findMaterial } from "./materials.js";

/** The range that the sources span for a material, tool and operation, m/min; undefined where none has a figure. Where
 *  sources disagree the range says so: from the least to the greatest. */
export function cuttingSpeed(material: string, tool: string, operation: string): CuttingSpeed | undefined {
  const standard = findMaterial(material);
  const rows = cuttingSpeeds.filter((row) => row.material === standard && row.tool === tool && row.operation === operation);
  if (rows.length === 0) return undefined;
  return {
    material,
    tool,
    operation,
    slowest: Math.min(...rows.map((row) => metresPerMinute(row, row.from))),
    fastest: Math.max(...rows.map((row) => metresPerMinute(row, row.to))),
    sources: [...new Set(rows.map(({ source }) => source))],
    confidence: rows.every(({ confidence }) => confidence === "read") ? "read" : "memory",
  };
}

const metresPerMinute = ({ unit }: PublishedSpeed, value: number): number => (unit === "ft/min" ? (value * MM_PER_FOOT) / 1000 : value);
