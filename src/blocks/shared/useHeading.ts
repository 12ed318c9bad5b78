import { type Use, usesOf } from "../../findings/uses.js";
import type { Machine } from "../../machine/machine.js";
import type { Run } from "./block.js";
import { heading } from "./runs.js";
import { size } from "./style.js";

const words: Readonly<Record<Use, string>> = { turning: "As a lathe", drilling: "Stood on end, as a drill" };

/** Which of its two uses a part of a sheet is about; nothing where the machine has but one. */
export const useHeading = (machine: Machine, use: Use, width: number): Run[] =>
  usesOf(machine).length < 2 ? [] : heading(words[use], width, 0, size.heading);
