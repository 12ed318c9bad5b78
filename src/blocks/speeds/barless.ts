import { materialName } from "../../cutting/materials.js";
import { findOperation } from "../../cutting/operations.js";
import { diametersFor } from "../../findings/drills.js";
import type { Findings } from "../../findings/findings.js";
import { servedDiameters } from "../../findings/servedDiameters.js";
import { bandFor } from "../../findings/speedChoice.js";
import { formatFixed, unitName } from "../../quantity/format.js";
import { say } from "../../words/say.js";
import { bandText } from "./bandNotes.js";
import { type Range, rangesTold } from "./rangeWords.js";

/** Figures, position and speed of a material whose figures make no bar, as they go by rpm or by size: no other sheet need be at hand for
 *  it. Undefined where it has none. */
export function barlessWords(material: string, use: string, findings: Findings): string | undefined {
  const operation = findOperation(use)?.name ?? use;
  const pieces = servedDiameters(material, operation, findings);
  if (pieces === undefined) return undefined;
  const { machine } = findings;
  const told = rangesTold(pieces, operation, findings);
  const positions = told.map((range) => placeWords(range, told.length > 1, findings)).join(", ");
  const bands = diametersFor(operation, machine).map((diameter) =>
    bandFor({ operation, material, diameter }, findings),
  );
  const [figures, ...others] = new Set(bands.map((band) => band?.rpm && bandText(band, machine.units)));
  const name = materialName(material);
  // Figures that go by size as well are those of its positions.
  return figures === undefined || others.length > 0
    ? say("speed diagram.barless by size", { material: name, positions })
    : say("speed diagram.barless by rpm", { material: name, figures, positions });
}

/** "B 1 at 1200 rpm", or with the diameters before it where it does not serve all. */
function placeWords({ words, served }: Range, some: boolean, { machine }: Findings): string {
  const { speed, rpm } = served;
  // To the safe side, and what a variable motor is set to at both ends.
  const set = [...new Set([rpm?.at, rpm?.end].map((one) => formatFixed(Math.floor((one ?? 0) + 1e-9), 0)))].join("–");
  const place =
    speed === undefined
      ? say("speed diagram.no position")
      : say("speed diagram.position at", { position: speed.position.name, rpm: set });
  return some ? say("speed diagram.diameters", { diameters: words, unit: unitName(machine.units), place }) : place;
}
