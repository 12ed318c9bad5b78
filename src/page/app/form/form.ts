import type { ReadonlySignal, Signal } from "@preact/signals";
import type { JSX } from "preact";
import type { Way } from "../../file/edit.js";
import { withEntry, without, withSwapped, withValue } from "../../file/edit.js";
import type { Nodes } from "../../file/nodes.js";
import type { Plain } from "../../file/yamlText.js";
import type { Schema } from "../../schema.js";
import type { Told } from "../../work/protocol.js";
import type { FileDocument } from "../document.js";

/** One file as a form fills it in. */
export type Form = {
  readonly document: FileDocument;
  readonly root: Schema;
  readonly nodes: ReadonlySignal<Nodes>;
  readonly units: ReadonlySignal<"mm" | "in">;
  /** Whether the file must say its units, and does not yet: a bare length is then in neither. */
  readonly unitsOpen: ReadonlySignal<boolean>;
  /** What is told of each place, by its key. */
  readonly told: ReadonlySignal<ReadonlyMap<string, readonly Told[]>>;
  /** Which keys a record takes as it stands, and which of them it needs; undefined where its schema says all. */
  readonly takes: (way: Way) => { readonly needs: readonly string[]; readonly may: readonly string[] } | undefined;
  /** What is asked at a place: what its schema says, or what is left of it by what else is filled in. */
  readonly asked: (way: Way, schema: Schema) => Schema;
  /** Parts that are asked for at once, though the file may leave them out: the way to them is not to be searched for. */
  readonly asksFor: (way: Way) => boolean;
  /** Whether a word of a choice is offered on this machine; what stands in the file is shown all the same. */
  readonly offers: (way: Way, word: string) => boolean;
  readonly handwheels: ReadonlySignal<readonly string[]>;
  /** Of each long list, by the key of its place, an entry that is to be seen. */
  readonly pieces: Signal<ReadonlyMap<string, number>>;
  /** Draws a part whatever it is. It travels with the form, since what it draws has parts again. */
  readonly Part: (props: PartProps) => JSX.Element | null;
  /** Parts that take more than fields: they stand instead of the usual ones. */
  readonly special: (way: Way) => ((props: { readonly form: Form; readonly way: Way }) => JSX.Element) | undefined;
};

export type PartProps = {
  readonly form: Form;
  readonly way: Way;
  readonly schema: Schema;
  readonly label: string;
  /** Stands open though nothing of it is in the file yet: it was just asked for. */
  readonly open?: boolean;
};

export const keyOf = (way: Way): string => way.join("\u0000");
export const idOf = (way: Way): string => `at-${way.map((step) => String(step).replace(/[^\w]/g, "_")).join("-")}`;

export const isOpened = ({ document }: Form, way: Way): boolean => document.opened.value.has(keyOf(way));

/** Opens a frame, or shuts it. */
export function setOpened({ document: { opened } }: Form, way: Way, open: boolean): void {
  const others = [...opened.peek()].filter((key) => key !== keyOf(way));
  opened.value = new Set(open ? [...others, keyOf(way)] : others);
}

/** Puts a value at a place, as a choice does; words of nothing take it out. */
export const put = (form: Form, way: Way, value: Plain): void =>
  change(form, (text) => form.document.write(withOrWithout(form, text, way, value)));

/** Puts there what stands in a field now. `stays`: words of nothing are an empty place in a list. `field`: into which it was typed,
 *  where this is another's place that goes with it. */
export const type = (form: Form, way: Way, words: string, stays = false, field = way): void =>
  change(form, (text) => form.document.type(withOrWithout(form, text, way, words, stays), keyOf(field)));

export const takeOut = (form: Form, ...ways: readonly Way[]): void =>
  change(form, (text) => form.document.write(ways.reduce(without, text)));

/** Puts an empty entry of a list before the one that stands there. */
export const putBefore = (form: Form, list: Way, index: number): void =>
  change(form, (text) => form.document.write(withEntry(text, list, index, {})));

/** Lets two neighbours of a list change places. `index`: of the first of them. */
export const swap = (form: Form, list: Way, index: number): void =>
  change(form, (text) => form.document.write(withSwapped(text, list, index)));

const withOrWithout = ({ root }: Form, text: string, way: Way, value: Plain, stays = false): string =>
  value === "" && !stays ? without(text, way) : withValue(text, way, value, Object.keys(root.properties ?? {}));

function change({ document }: Form, change: (text: string) => void): void {
  try {
    change(document.text.peek());
  } catch (fault) {
    // The text is no YAML at the moment; the form says so, and takes nothing until it is.
    console.warn(fault);
  }
}
