import { inDecimals } from "../words/say.js";
import { threadNamed } from "./thread.js";

/** A thread's name as it stands on paper, whichever way a job's file writes it: "M8 × 1"; in German "M2,5", as DIN 13 has it. */
export const threadOnPaper = (name: string): string => inDecimals(threadNamed(name)?.designation ?? name);
