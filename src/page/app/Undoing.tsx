import { redo, redoDepth, undo, undoDepth } from "@codemirror/commands";
import type { EditorState, Transaction } from "@codemirror/state";
import { type ReadonlySignal, type Signal, useSignal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import type { Way } from "../file/edit.js";
import { nodesOf } from "../file/nodes.js";
import type { FileDocument } from "./document.js";
import { placeWords } from "./form/placeWords.js";
import type { View } from "./view.js";

type Done = { readonly words: string; readonly way: Way; readonly text: string };

/** Ways back and on in one file. */
export type Steps = {
  readonly done: ReadonlySignal<Done | undefined>;
  readonly undo: () => void;
  readonly redo: () => void;
  /** What a form gives heed to: it takes over the browser's own way back, which knows nothing of the file and leaves half numbers. */
  readonly heeded: {
    readonly onFocusOut: () => void;
    readonly onKeyDown: (event: KeyboardEvent) => void;
  };
};

export function useSteps(document: FileDocument): Steps {
  const done = useSignal<Done | undefined>(undefined);
  return useMemo(() => stepsIn(document, done), [document]);
}

function stepsIn(document: FileDocument, done: Signal<Done | undefined>): Steps {
  const step = (how: typeof undo, verb: string): void => {
    document.rest();
    how({
      state: document.state.peek(),
      dispatch(transaction) {
        const was = document.name.peek();
        const [way, nodes] = changedPlace(transaction);
        document.follow(transaction);
        const name = document.name.peek();
        const what = name === was ? placeWords(way, nodes) : `${was} is ${name} again`;
        done.value = { words: `${verb}: ${what}`, way, text: document.text.peek() };
      },
    });
  };
  const steps = { undo: () => step(undo, "undone"), redo: () => step(redo, "redone") };
  return {
    ...{ done, ...steps },
    heeded: {
      onFocusOut: () => document.rest(),
      onKeyDown(event) {
        const key = event.key.toLowerCase();
        if (!(event.ctrlKey || event.metaKey) || event.altKey || (key !== "z" && key !== "y")) return;
        event.preventDefault();
        if (key === "y" || event.shiftKey) steps.redo();
        else steps.undo();
      },
    },
  };
}

type UndoingProps = { readonly document: FileDocument; readonly view: View; readonly steps: Steps };

/** Undo and redo, and what was undone: most of it lies where one does not look just now. */
export function Undoing({ document, view, steps: { done, undo, redo } }: UndoingProps) {
  const state = document.state.value;
  const said = done.value?.text === document.text.value ? done.value : undefined;
  return (
    <span class="undo">
      <span role="status">
        {said && (
          <button type="button" class="done" onClick={() => view.to(document, said.way)}>
            {said.words}
          </button>
        )}
      </span>
      <button type="button" disabled={undoDepth(state) === 0} onClick={undo}>
        undo
      </button>
      <button type="button" disabled={redoDepth(state) === 0} onClick={redo}>
        redo
      </button>
    </span>
  );
}

/** The innermost place that holds all of a change: in the text before where something went, else in the one after. */
function changedPlace({ changes, startState, state }: Transaction): [Way, ReturnType<typeof nodesOf>] {
  const [before, after] = [nodesOf(startState.doc.toString()), nodesOf(state.doc.toString())];
  const ways: { was: Way; is: Way }[] = [];
  changes.iterChangedRanges((fromA, toA, fromB, toB) => {
    ways.push({ was: wayOf(startState, before.at, fromA, toA), is: wayOf(state, after.at, fromB, toB) });
  });
  // A name alone changes nothing of the text.
  if (ways.length === 0) return [[], after];
  const was = ways.map((one) => one.was).reduce(shared);
  const is = ways.map((one) => one.is).reduce(shared);
  return is.length >= was.length ? [is, after] : [was, before];
}

function wayOf(state: EditorState, at: (line: number, column: number) => Way, from: number, to: number): Way {
  const words = state.sliceDoc(from, to);
  const place = (offset: number): Way => {
    const line = state.doc.lineAt(offset);
    return at(line.number, offset - line.from + 1);
  };
  const start = from + (words.length - words.trimStart().length);
  return shared(place(Math.min(start, to)), place(Math.max(Math.min(start, to), from + words.trimEnd().length)));
}

function shared(one: Way, other: Way): Way {
  const end = one.findIndex((step, depth) => step !== other[depth]);
  return end < 0 ? one : one.slice(0, end);
}
