import { Unanswered } from "../answers/unanswered.js";
import { Refusal } from "./io.js";

/** An answer about a machine's file; what has none is refused, with the file that it lies in. */
export function answered<T>(path: string, answer: () => T): T {
  try {
    return answer();
  } catch (fault) {
    if (!(fault instanceof Unanswered)) throw fault;
    throw fault.about === "question" ? new Refusal(fault.message, 2) : new Refusal(`${path}: ${fault.message}`);
  }
}
