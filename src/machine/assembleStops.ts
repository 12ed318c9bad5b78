import { asRead } from "./asRead.js";
import { closest } from "./closest.js";
import type { Context } from "./context.js";
import type { StopWish } from "./machine.js";
import type { MachineFile } from "./schema.js";

export function assembleStops(file: MachineFile, { feedMm, error }: Context): StopWish[] {
  const known = (file.handwheels ?? []).map(({ name }) => name);
  const byName = new Map(known.map((name) => [name.toLowerCase(), name]));
  return (file.stops ?? []).map(({ handwheel, ...plain }, index) => {
    const path = ["stops", index, "handwheel"];
    const found = byName.get(handwheel.toLowerCase());
    if (found === undefined) {
      const nearest = closest(handwheel, known);
      error(
        path,
        "unknown-handwheel",
        `there is no handwheel "${handwheel}"`,
        nearest ? `did you mean "${nearest}"?` : `there are ${known.join(", ") || "none"}`,
      );
    }
    return { ...asRead(plain, feedMm), handwheel: found ?? handwheel };
  });
}
