import type { Way } from "../../file/edit.js";
import { idOf, keyOf } from "./form.js";

/** Where a place of the file stands on the page, or the innermost of what it lies in; undefined where the form shows none of it.
 *  Compared, not selected: a selector cannot name the sign between the steps of a key. */
export function placeAt(way: Way): HTMLElement | undefined {
  const shown = new Map(
    [...document.querySelectorAll<HTMLElement>("[data-way]")].map((place) => [place.dataset.way, place]),
  );
  for (let depth = way.length; depth > 0; depth--) {
    const place = shown.get(keyOf(way.slice(0, depth)));
    if (place) return place;
  }
  return undefined;
}

/** Puts the caret where a place is filled in: into its own field, else the first one in it. */
export function focusOn(way: Way): boolean {
  const place = placeAt(way);
  if (place === undefined) return false;
  place.scrollIntoView({ block: "center" });
  const own = document.getElementById(idOf(way));
  const field = own?.matches("input, select") ? own : place.querySelector<HTMLElement>("input[type=text], select");
  (field ?? place.querySelector<HTMLElement>("button") ?? place).focus();
  return true;
}
