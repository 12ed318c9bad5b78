import { asRead } from "./asRead.js";
import type { Context } from "./context.js";
import type { StopWish } from "./machine.js";
import { noSuchWheel } from "./noSuchWheel.js";
import type { MachineFile } from "./schema.js";

export function assembleStops(file: MachineFile, { feedMm, error }: Context): StopWish[] {
  const known = (file.handwheels ?? []).map(({ name }) => name);
  const byName = new Map(known.map((name) => [name.toLowerCase(), name]));
  return (file.stops ?? []).map(({ handwheel, ...plain }, index) => {
    const path = ["stops", index, "handwheel"];
    const found = byName.get(handwheel.toLowerCase());
    if (found === undefined) {
      const { what, remedy } = noSuchWheel(handwheel, known);
      error(path, "unknown-handwheel", what, remedy);
    }
    return { ...asRead(plain, feedMm), handwheel: found ?? handwheel };
  });
}
