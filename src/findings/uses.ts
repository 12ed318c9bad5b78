import type { Kind, Machine } from "../machine/machine.js";

/** What a machine is used for: a sheet or a part of one may be for one of them alone. */
export const uses = ["turning", "drilling"] as const;
export type Use = (typeof uses)[number];

const usesOfKind: Readonly<Record<Kind, readonly [Use, ...Use[]]>> = {
  lathe: ["turning"],
  drill: ["drilling"],
  "lathe stood on end": ["turning", "drilling"],
};

/** The first is what it is above all. */
export const usesOf = ({ kind }: Pick<Machine, "kind">): readonly [Use, ...Use[]] => usesOfKind[kind];

export const isDrill = (machine: Pick<Machine, "kind">): boolean => usesOf(machine)[0] === "drilling";
