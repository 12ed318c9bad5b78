import { redo, undo } from "@codemirror/commands";
import { computed, type ReadonlySignal, signal, useComputed, useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useMemo } from "preact/hooks";
import type { Way } from "../file/edit.js";
import { LARGEST, sizeWords } from "../inside.js";
import type { Schema } from "../schema.js";
import type { Told } from "../work/protocol.js";
import type { Desk } from "./desk.js";
import type { FileDocument } from "./document.js";
import { type Form, keyOf } from "./form/form.js";
import { Part } from "./form/Part.js";
import { show } from "./form/Pieces.js";
import { focusOn } from "./form/places.js";
import { ReadingsGrid } from "./ReadingsGrid.js";
import { TextView } from "./TextView.js";

type FileViewProps = {
  readonly desk: Desk;
  readonly document: FileDocument;
  readonly root?: Schema;
  readonly children: (form: Form) => ComponentChildren;
};

/** One file in its two views. */
export function FileView({ desk, document, root, children }: FileViewProps) {
  const asText = useSignal(root === undefined);
  const told = useComputed(() => desk.told.value.filter(({ file }) => file === document.name.value));
  const form = useMemo(() => root && formOf(desk, document, root, told), [document, root]);
  const { fault, tooMuch } = document.nodes.value;
  const step = (how: typeof undo) =>
    how({ state: document.state.peek(), dispatch: (transaction) => document.follow(transaction) });
  return (
    <div class="file">
      <div class="views">
        {root && (
          <fieldset class="bare" aria-label="How the file is shown">
            <button type="button" aria-pressed={!asText.value} onClick={() => (asText.value = false)}>
              form
            </button>
            <button type="button" aria-pressed={asText.value} onClick={() => (asText.value = true)}>
              text
            </button>
          </fieldset>
        )}
        <b class="name">{document.name.value}</b>
        <span class="undo">
          <button type="button" onClick={() => step(undo)}>
            undo
          </button>
          <button type="button" onClick={() => step(redo)}>
            redo
          </button>
        </span>
      </div>
      {document.tooLarge.value && (
        <p class="lacking" role="alert">
          That would make the file larger than {sizeWords(LARGEST)}: it was not taken.
        </p>
      )}
      {asText.value || form === undefined ? (
        <TextView document={document} told={told} />
      ) : tooMuch !== undefined ? (
        <p class="lacking" role="alert">
          {tooMuch}. It is all there under “text”, and is read from there.
        </p>
      ) : fault ? (
        <p class="lacking" role="alert">
          Line {fault.line} of the text cannot be read: {fault.words}. Put it right under “text”; then the form goes on.
        </p>
      ) : (
        <div class="form">{children(form)}</div>
      )}
      <Messages told={told} document={document} form={form} onText={() => (asText.value = true)} />
    </div>
  );
}

function formOf(desk: Desk, document: FileDocument, root: Schema, told: ReadonlySignal<readonly Told[]>): Form {
  const { nodes } = document;
  // One and the same on every drawing: another function would be another grid, and lose what is being typed.
  const Grid = (props: { readonly form: Form; readonly way: Way }) => <ReadingsGrid {...props} desk={desk} />;
  return {
    ...{ document, root, nodes },
    units: computed(() => (nodes.value.words(["units"]) === "in" ? "in" : "mm")),
    told: computed(() => byPlace(told.value, document)),
    handwheels: desk.handwheels,
    pieces: signal(new Map()),
    Part,
    special: (way) => (way.at(-1) === "readings" && way.at(-2) === "feed" ? Grid : undefined),
  };
}

function byPlace(told: readonly Told[], document: FileDocument): Map<string, Told[]> {
  const found = new Map<string, Told[]>();
  for (const one of told) {
    const key = keyOf(document.nodes.value.at(one.line, one.column));
    found.set(key, [...(found.get(key) ?? []), one]);
  }
  return found;
}

/** All that is told of the file, each to go to. */
function Messages({
  told,
  document: file,
  form,
  onText,
}: {
  readonly told: ReadonlySignal<readonly Told[]>;
  readonly document: FileDocument;
  readonly form: Form | undefined;
  readonly onText: () => void;
}) {
  if (told.value.length === 0) return null;
  const go = ({ line, column }: Told): void => {
    const way = file.nodes.peek().at(line, column);
    if (form) show(form, way);
    // What was brought up is there once it is drawn.
    requestAnimationFrame(() => requestAnimationFrame(() => focusOn(way) || onText()));
  };
  return (
    <section class="messages" aria-label="What is told of the file" aria-live="polite">
      <h2>{told.value.length === 1 ? "1 thing to look at" : `${told.value.length} things to look at`}</h2>
      <ul>
        {told.value.map((one) => (
          <li key={`${one.line}:${one.column}:${one.what}`} class={one.severity}>
            <button type="button" onClick={() => go(one)}>
              line {one.line}
            </button>{" "}
            {one.what}; {one.remedy}
          </li>
        ))}
      </ul>
    </section>
  );
}
