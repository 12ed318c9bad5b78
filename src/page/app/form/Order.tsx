import type { Way } from "../../file/edit.js";
import { forgetAside } from "./aside.js";
import { type Form, idOf, keyOf, putBefore, swap } from "./form.js";
import { show } from "./Pieces.js";
import { focusOn } from "./places.js";

/** Lists whose entries are done one after the other. */
export const isOrdered = (way: Way): boolean => keyOf(way) === "steps";

type OrderProps = {
  readonly form: Form;
  readonly list: Way;
  readonly index: number;
  readonly count: number;
  /** What an entry is called. */
  readonly one: string;
};

/** Brings an entry of such a list to another place in it, or another before it. */
export function Order({ form, list, index, count, one }: OrderProps) {
  const shown = (way: Way, found: () => void): void => {
    forgetAside(form.document);
    show(form, way);
    requestAnimationFrame(() => requestAnimationFrame(found));
  };
  const button = (words: string, to: number) => (
    <button
      type="button"
      id={`${idOf([...list, index])}-${words}`}
      aria-label={`Move ${one} ${index + 1} ${words}`}
      disabled={to < 0 || to >= count}
      onClick={() => {
        swap(form, list, Math.min(index, to));
        // Who moves it by one place may move it by another.
        shown([...list, to], () => document.getElementById(`${idOf([...list, to])}-${words}`)?.focus());
      }}
    >
      {words}
    </button>
  );
  return (
    <span class="order">
      {button("up", index - 1)} {button("down", index + 1)}{" "}
      <button
        type="button"
        aria-label={`+ ${one} before this ${index + 1}`}
        onClick={() => {
          putBefore(form, list, index);
          shown([...list, index], () => focusOn([...list, index]));
        }}
      >
        + {one} before this
      </button>
    </span>
  );
}
