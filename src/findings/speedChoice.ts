import { chooseSpeed } from "../cutting/choose.js";
import { cuttingSpeed } from "../cutting/cuttingSpeeds.js";
import type { CuttingSpeed, SpeedChoice } from "../cutting/finding.js";
import type { Findings } from "./findings.js";

/** A cut to find a speed for. */
export type Cut = {
  readonly operation: string;
  readonly material: string;
  /** The file's, where it is left out. */
  readonly tool?: string;
  readonly diameter: number;
};

/** Cutting speeds that serve, by the sources or the file's own rows; undefined where nothing is known. */
export const bandFor = (cut: Cut, { machine: { work } }: Pick<Findings, "machine">): CuttingSpeed | undefined =>
  cuttingSpeed(cut.material, cut.tool ?? work.tool, cut.operation, { ...work, diameter: cut.diameter });

/** The position to cut at; undefined where the file has no drive, or nothing is known of the material with this tool. */
export function speedFor(cut: Cut, findings: Findings): SpeedChoice | undefined {
  const { machine, drive } = findings;
  const band = bandFor(cut, findings);
  return band && drive && chooseSpeed(cut.diameter, band, drive.speeds, machine.limits);
}
