import type { Context, Raw } from "./context.js";
import type { FeedText } from "./fields.js";
import type { OldDial } from "./machine.js";
import type { Path } from "./problem.js";
import { unitWritten } from "./written.js";

type RawOldDial = NonNullable<Raw<"handwheels">[number]["oldDial"]>;

/** `nominal`: what the maker meant one turn to do to the slide; stands in for what the dial shows. Undefined where an error was
 *  told. */
export function assembleOldDial(
  { reads, perTurn, fixed }: RawOldDial,
  nominal: FeedText | undefined,
  path: Path,
  { units, feedMm, error }: Context,
): OldDial | undefined {
  const given = perTurn ?? nominal;
  if (given === undefined) {
    // Not "missing": the maker's feed that it refers to may have been faulty itself.
    error(
      path,
      "unknown-turn",
      "what the old dial shows in a turn is not given",
      "add perTurn: and what it shows, as perTurn: 0.1 in; or say under feed: nominal: what its maker meant",
    );
    return undefined;
  }
  const doubled = perTurn === undefined && reads === "diameter" ? 2 : 1;
  // A dial is marked in the unit in which its turn is told.
  return {
    reads,
    perTurn: doubled * feedMm(given),
    unit: unitWritten(given, units),
    ...(fixed !== undefined && { fixed }),
  };
}
