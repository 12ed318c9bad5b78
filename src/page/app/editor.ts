import { autocompletion, type CompletionContext, type CompletionResult } from "@codemirror/autocomplete";
import { defaultKeymap, historyKeymap } from "@codemirror/commands";
import { yaml } from "@codemirror/lang-yaml";
import { HighlightStyle, syntaxHighlighting } from "@codemirror/language";
import { type Diagnostic, lintGutter } from "@codemirror/lint";
import { Compartment, EditorState, type Extension } from "@codemirror/state";
import { EditorView, hoverTooltip, keymap, lineNumbers, type Tooltip } from "@codemirror/view";
import { tags } from "@lezer/highlight";
import { type Nodes, tooDeep } from "../file/nodes.js";
import { type Schema, schemaAt } from "../schema.js";
import type { Told } from "../work/protocol.js";
import { offeredAt } from "./offered.js";

/** How a file's text is shown and typed: what may stand here is offered, and what a key means is told. */
export function textExtensions(root: (() => Schema) | undefined, nodes: () => Nodes): Extension {
  return [
    lineNumbers(),
    lintGutter(),
    ...(root
      ? [
          inked.of(coloured),
          EditorState.transactionExtender.of((change) => {
            if (!change.docChanged) return null;
            const wanted = tooDeep(change.newDoc.toString()) ? [] : coloured;
            return inked.get(change.startState) === wanted ? null : { effects: inked.reconfigure(wanted) };
          }),
          hoverTooltip(about(root, nodes)),
          autocompletion({ override: [offer(root)] }),
        ]
      : []),
    keymap.of([...defaultKeymap, ...historyKeymap]),
    EditorView.lineWrapping,
    EditorView.contentAttributes.of({ "aria-label": "Text of the file" }),
  ];
}

/** Black, and what is not read by the program in grey: no colours. */
const inks = HighlightStyle.define([
  { tag: tags.comment, color: "#5c5c5c", fontStyle: "italic" },
  { tag: tags.propertyName, fontWeight: "700" },
]);

/** The grammar behind the inks fails at text of thousands of brackets in one another: such text stays in one ink. */
const inked = new Compartment();
const coloured = [yaml(), syntaxHighlighting(inks)];

const about =
  (root: () => Schema, nodes: () => Nodes) =>
  (view: EditorView, position: number): Tooltip | null => {
    const line = view.state.doc.lineAt(position);
    const { at, value } = nodes();
    const way = at(line.number, position - line.from + 1);
    const words = schemaAt(root(), way, value)?.description;
    if (words === undefined) return null;
    return {
      pos: position,
      create() {
        const dom = document.createElement("div");
        dom.className = "hover";
        dom.textContent = words;
        return { dom };
      },
    };
  };

const offer =
  (root: () => Schema) =>
  ({ state, pos, explicit }: CompletionContext): CompletionResult | null => {
    const { from, options } = offeredAt(state.doc.toString(), pos, root());
    if (options.length === 0 || (from === pos && !explicit)) return null;
    return { from, options: options.map(({ label, info, insert }) => ({ label, info, apply: insert })) };
  };

/** What is told of a text, as the editor marks it. */
export function diagnosticsOf(told: readonly Told[], text: string): Diagnostic[] {
  const lines = text.split("\n");
  const starts: number[] = [0];
  for (const line of lines) starts.push((starts.at(-1) ?? 0) + line.length + 1);
  return told.map(({ line, column, severity, what, remedy }) => {
    const words = lines[line - 1] ?? "";
    const from = Math.min(text.length, (starts[line - 1] ?? 0) + Math.min(column - 1, words.length));
    const end = /^[^,\]}#]*/.exec(words.slice(column - 1))?.[0].trimEnd().length ?? 0;
    return { from, to: Math.min(text.length, from + end), severity, message: `${what}; ${remedy}` };
  });
}
