import { history, invertedEffects, isolateHistory } from "@codemirror/commands";
import {
  type Annotation,
  EditorState,
  StateEffect,
  StateField,
  Transaction,
  type TransactionSpec,
} from "@codemirror/state";
import type { EditorView } from "@codemirror/view";
import { computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { type Nodes, nodesOf } from "../file/nodes.js";
import { type DocumentKind, LARGEST } from "../inside.js";
import { jobSchema, machineSchema, type Schema } from "../schema.js";
import { textExtensions } from "./editor.js";
import { sheetSchema } from "./sheetSchema.js";

/** What may stand in a file of each kind; what a sheet may say the worker tells. */
const roots: Readonly<Record<DocumentKind, (() => Schema) | undefined>> = {
  machine: () => machineSchema,
  job: () => jobSchema,
  sheet: () => sheetSchema.peek(),
  readings: undefined,
};

/** After so long a pause one has begun anew, ms. */
const PAUSE = 3000;

/** The file's name lies in the editor's state, so that what undoes a text undoes its name with it: an old text under another file's
 *  name would be saved over that one. */
const named = StateEffect.define<string>();
const nameField = StateField.define<string>({
  create: () => "",
  update: (name, { effects }) => effects.reduce((so, effect) => (effect.is(named) ? effect.value : so), name),
});
const nameIsUndone = invertedEffects.of(({ effects, startState }) =>
  effects.some((effect) => effect.is(named)) ? [named.of(startState.field(nameField))] : [],
);

/** One file on the desk. Form and text are two views of the same editor state: one history, no copy of the text elsewhere. */
export class FileDocument {
  readonly kind: DocumentKind;
  readonly name: ReadonlySignal<string>;
  readonly state: Signal<EditorState>;
  readonly text: ReadonlySignal<string>;
  readonly nodes: ReadonlySignal<Nodes>;
  /** Whether the last change was not taken, since it would have made the file larger than any is. */
  readonly tooLarge = signal(false);
  /** Frames of the form, by the keys of their places, that were opened though nothing of them is in the file: they stay so while one
   *  looks elsewhere. */
  readonly opened = signal<ReadonlySet<string>>(new Set());
  /** The field that is being typed into, and when it last was. */
  private typing: { readonly field: string; readonly at: number } | undefined;
  /** The editor that shows it, while one does. */
  view: EditorView | undefined;

  constructor(kind: DocumentKind, name: string, text: string) {
    this.kind = kind;
    const shown = textExtensions(roots[kind], () => this.nodes.peek());
    const bounded = EditorState.changeFilter.of(({ newDoc }) => {
      this.tooLarge.value = newDoc.length > LARGEST;
      return !this.tooLarge.peek();
    });
    this.state = signal(
      EditorState.create({
        doc: text,
        extensions: [history(), nameField.init(() => name), nameIsUndone, shown, bounded],
      }),
    );
    this.name = computed(() => this.state.value.field(nameField));
    this.text = computed(() => this.state.value.doc.toString());
    this.nodes = computed(() => nodesOf(this.text.value));
  }

  dispatch(...specs: TransactionSpec[]): void {
    if (this.view) this.view.dispatch(...specs);
    else this.state.value = this.state.peek().update(...specs).state;
  }

  /** What is taken over from a view, or from undoing. */
  follow(transaction: Transaction): void {
    if (this.view) this.view.dispatch(transaction);
    else this.state.value = transaction.state;
  }

  rename(name: string): void {
    this.write(this.text.peek(), name);
  }

  /** Puts another text in its place, to be undone alone. `name`: under which it came, which is undone with it. */
  write(next: string, name = this.name.peek()): void {
    this.replace(next, name, [Transaction.userEvent.of("input"), isolateHistory.of("full")]);
    this.rest();
  }

  /** Puts in its place what a letter more in a field makes of it: what is typed into a field without a pause is undone together, and
   *  nothing of another's with it. */
  type(next: string, field: string): void {
    const now = performance.now();
    const joins = this.typing?.field === field && now - this.typing.at < PAUSE;
    // What composes a letter joins, for the history, the change before.
    const event = Transaction.userEvent.of(joins ? "input.type.compose" : "input.type");
    this.replace(next, this.name.peek(), joins ? [event] : [event, isolateHistory.of("before")]);
    this.typing = { field, at: now };
  }

  /** The field was left, or something was undone: what is typed next is undone by itself. */
  rest(): void {
    this.typing = undefined;
  }

  /** Only the part that differs changes, so that the cursor and the history stay sensible. */
  private replace(next: string, name: string, annotations: readonly Annotation<unknown>[]): void {
    const now = this.text.peek();
    const renamed = name !== this.name.peek();
    if (next === now && !renamed) return;
    let from = 0;
    while (from < now.length && from < next.length && now[from] === next[from]) from++;
    let end = 0;
    while (end < now.length - from && end < next.length - from && now.at(-1 - end) === next.at(-1 - end)) end++;
    this.dispatch({
      ...(next !== now && { changes: { from, to: now.length - end, insert: next.slice(from, next.length - end) } }),
      ...(renamed && { effects: named.of(name) }),
      annotations,
    });
  }
}
