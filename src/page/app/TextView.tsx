import { setDiagnostics } from "@codemirror/lint";
import { EditorView } from "@codemirror/view";
import { effect, type ReadonlySignal } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import type { Told } from "../work/protocol.js";
import type { FileDocument } from "./document.js";
import { diagnosticsOf } from "./editor.js";

/** The file's text, with what is told of it at its place. */
export function TextView({
  document,
  told,
}: {
  readonly document: FileDocument;
  readonly told: ReadonlySignal<readonly Told[]>;
}) {
  const host = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (host.current === null) return undefined;
    const view = new EditorView({
      state: document.state.peek(),
      parent: host.current,
      dispatchTransactions(transactions, own) {
        own.update(transactions);
        document.state.value = own.state;
      },
    });
    document.view = view;
    const stop = effect(() => {
      const all = told.value;
      queueMicrotask(() => {
        if (document.view === view)
          view.dispatch(setDiagnostics(view.state, diagnosticsOf(all, view.state.doc.toString())));
      });
    });
    return () => {
      stop();
      document.view = undefined;
      view.destroy();
    };
  }, [document]);
  return <div class="text" ref={host} />;
}
