import type { ComponentChildren } from "preact";
import type { Way } from "../../file/edit.js";
import { type Form, keyOf } from "./form.js";

/** How many entries of a list are laid out at once: many more would hold the page up at every keystroke. */
export const AT_ONCE = { records: 10, values: 60, rows: 60 } as const;

type PiecesProps = {
  readonly form: Form;
  readonly way: Way;
  readonly count: number;
  readonly size: number;
  readonly children: (index: number) => ComponentChildren;
};

/** A list's entries; of a long one a piece, with the way to the others. */
export function Pieces({ form, way, count, size, children }: PiecesProps) {
  const { from, to } = pieceOf(form, way, count, size);
  return (
    <>
      <Between form={form} way={way} count={count} size={size} />
      {Array.from({ length: to - from }, (_, index) => children(from + index))}
    </>
  );
}

/** Which entries are shown. */
export function pieceOf(form: Form, way: Way, count: number, size: number): { from: number; to: number } {
  const wanted = Math.min(form.pieces.value.get(keyOf(way)) ?? 0, count - 1);
  const from = Math.max(0, Math.floor(wanted / size) * size);
  return { from, to: Math.min(count, from + size) };
}

/** The way from one piece of a long list to another. */
export function Between({ form, way, count, size }: Omit<PiecesProps, "children">) {
  if (count <= size) return null;
  const { from, to } = pieceOf(form, way, count, size);
  const last = Math.floor((count - 1) / size) * size;
  const go = (words: string, at: number) => (
    <button type="button" disabled={at === from} onClick={() => show(form, [...way, at])}>
      {words}
    </button>
  );
  return (
    <fieldset class="pieces bare" aria-label="Which part of the list is shown">
      <span role="status">
        {from + 1} to {to} of {count}
      </span>
      {go("first", 0)}
      {go("before", Math.max(0, from - size))}
      {go("next", Math.min(last, from + size))}
      {go("last", last)}
    </fieldset>
  );
}

/** Brings the pieces up in which a place lies. */
export function show(form: Form, way: Way): void {
  const pieces = new Map(form.pieces.peek());
  for (const [depth, step] of way.entries()) if (typeof step === "number") pieces.set(keyOf(way.slice(0, depth)), step);
  form.pieces.value = pieces;
}
