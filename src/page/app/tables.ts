import type { Way } from "../file/edit.js";
import type { Nodes } from "../file/nodes.js";
import type { Told } from "../work/protocol.js";

/** Where the name of a CSV stands that readings are taken from; undefined where none is. */
export function csvAt({ value }: Pick<Nodes, "value">, way: Way): Way | undefined {
  const file = [...way, "file"];
  return typeof value(way) === "string" ? way : value(file) === undefined ? undefined : file;
}

/** What is told of tables, each at the readings of the handwheel that uses it: a table has no view of its own. */
export function toldOfTables(told: readonly Told[], nodes: Nodes): Told[] {
  const wheels = nodes.value(["handwheels"]);
  const used = new Map<string, Way>();
  for (const at of Array.isArray(wheels) ? wheels.keys() : []) {
    const way = ["handwheels", at, "feed", "readings"];
    const named = csvAt(nodes, way);
    if (named && !used.has(nodes.words(named))) used.set(nodes.words(named), way);
  }
  return told.flatMap((one) => {
    const way = used.get(one.file);
    return way ? [{ ...one, way }] : [];
  });
}

/** The same with the line of the table that it is about. */
export const withItsLine = ({ file, line, what, remedy }: Told): string =>
  `line ${line} of “${file}”: ${what}; ${remedy}`;
