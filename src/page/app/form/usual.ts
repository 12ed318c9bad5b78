import { usualLabel } from "../../../machine/stepLabel.js";
import type { Way } from "../../file/edit.js";
import type { Form } from "./form.js";

/** The name that the program uses where a field stays empty; undefined where it has none of its own. */
export function usualWords(form: Form, way: Way): string | undefined {
  const [part, stages, , steps, index, key] = way;
  if (part !== "drive" || stages !== "stages" || steps !== "steps" || key !== "label") return undefined;
  const all = form.nodes.value.value(way.slice(0, 4));
  const count = Array.isArray(all) ? all.length : 0;
  return usualLabel(Number(index), Math.max(count, Number(index) + 1)) || undefined;
}
