import { trimmed } from "../quantity/format.js";
import { moduleOfCircular, moduleOfDiametral } from "../quantity/gear.js";
import type { Context, Raw } from "./context.js";
import type { Feed } from "./machine.js";
import type { Path } from "./problem.js";
import { rackTravel } from "./rackTravel.js";

type RawFeed = NonNullable<Raw<"handwheels">[number]["feed"]>;
type RawRack = NonNullable<Exclude<RawFeed, { value: number }>["rack"]>;
type Rack = Omit<Extract<Feed, { from: "rack" }>, "nominal">;

/** Farther than this no handwheel of a small machine carries its slide in one turn, mm. */
export const FARTHEST_RACK = 150;

/** Module, mm, below which only instruments have racks. Common practice. */
const FINEST_MODULE = 0.2;

/** Undefined where an error was told. */
export function assembleRack(raw: RawRack, path: Path, { mm, units, said, error, warn }: Context): Rack | undefined {
  const { module, pitch, teeth, reduction = [1, 1] } = raw;
  if ((module === undefined) === (pitch === undefined)) {
    error(
      path,
      module === undefined ? "missing" : "two-forms",
      module === undefined ? "the rack's teeth are not given" : "the rack's teeth are given twice: module and pitch",
      "give module: 1 (always mm), or pitch: 1/4 in from tooth to tooth, or pitch: 16 DP",
    );
    return undefined;
  }
  const rack: Rack = {
    from: "rack",
    module:
      module !== undefined
        ? mm(module)
        : pitch === undefined
          ? 0
          : pitch.unit === "DP"
            ? moduleOfDiametral(pitch.value)
            : moduleOfCircular(mm(pitch)),
    ...(pitch !== undefined && {
      given:
        pitch.unit === "DP"
          ? ({ by: "DP", value: pitch.value } as const)
          : ({ by: "tooth to tooth", value: mm(pitch) } as const),
    }),
    teeth,
    reduction,
  };
  const travel = rackTravel(rack);
  if (travel > FARTHEST_RACK)
    warn(
      [...path, module !== undefined ? "module" : "pitch"],
      "rack-too-coarse",
      `such a rack would carry the slide ${units === "mm" && travel >= 1000 ? `${trimmed(travel / 1000, 2)} m` : said(travel, 0)} in one turn`,
      slip(raw, rack) ?? "check the teeth of the pinion and the reduction between it and the handwheel",
    );
  // Finer than any rack is cut; or just π times a usual module, as one finds who measures from tooth to tooth.
  const finest = module !== undefined && mm(module) < FINEST_MODULE;
  const byPi = module !== undefined ? Math.round(mm(module) / Math.PI / 0.25) * 0.25 : 0;
  const circular = byPi > 0 && Math.abs(mm(module as NonNullable<typeof module>) / Math.PI - byPi) < 0.01;
  if (module !== undefined && (finest || circular))
    warn(
      [...path, "module"],
      "unlikely-module",
      finest
        ? `a module of ${trimmed(mm(module), 4)} mm is finer than racks are cut`
        : `a module of ${trimmed(mm(module), 3)} is π times ${trimmed(byPi, 2)}, the distance from tooth to tooth of that module`,
      finest
        ? `for a diametral pitch write pitch: ${trimmed(1 / mm(module), 0)} DP, for a distance from tooth to tooth pitch: 1/4 in`
        : `write module: ${trimmed(byPi, 2)}, or pitch: ${trimmed(mm(module), 3)} mm`,
    );
  return rack;
}

/** The number written under another name, where that gives a travel that a handwheel can have. */
function slip({ module, pitch }: RawRack, rack: Rack): string | undefined {
  const given = module?.value ?? pitch?.value ?? 0;
  const may = (value: number) => rackTravel({ ...rack, module: value }) <= FARTHEST_RACK;
  if ((module !== undefined || pitch?.unit === "file") && given >= 4 && may(moduleOfDiametral(given)))
    return `if ${trimmed(given, 3)} is a diametral pitch, write pitch: ${trimmed(given, 3)} DP`;
  if (module !== undefined && may(moduleOfCircular(given)))
    return `if ${trimmed(given, 3)} mm is the distance from tooth to tooth, write pitch: ${trimmed(given, 3)} mm`;
  if (pitch?.unit === "file" && may(given))
    return `if ${trimmed(given, 3)} is a module, write module: ${trimmed(given, 3)}`;
  return undefined;
}
