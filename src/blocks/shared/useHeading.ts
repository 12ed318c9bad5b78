import { type Use, usesOf } from "../../findings/uses.js";
import type { Machine } from "../../machine/machine.js";
import { say } from "../../words/say.js";
import type { Run } from "./block.js";
import { heading } from "./runs.js";
import { size } from "./style.js";

/** Which of its two uses a part of a sheet is about; nothing where the machine has but one. */
export const useHeading = (machine: Machine, use: Use, width: number): Run[] =>
  usesOf(machine).length < 2 ? [] : heading(say(`page.used for ${use}`), width, 0, size.card);
