import { EditorView } from "@codemirror/view";
import { computed, type ReadonlySignal, signal, useComputed, useSignal, useSignalEffect } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useMemo } from "preact/hooks";
import { isAcross } from "../../findings/roles.js";
import { isHoleStep } from "../../job/job.js";
import { plainDiameters, stepKeys } from "../../job/stepKeys.js";
import { dialKeys, dialSizes } from "../../machine/dialKeys.js";
import type { Moves } from "../../machine/machine.js";
import { grouped } from "../../quantity/grouped.js";
import type { Way } from "../file/edit.js";
import { type Nodes, placesOf } from "../file/nodes.js";
import { LARGEST, sizeWords } from "../inside.js";
import { machineSchema, type Schema, scalar, schemaAt } from "../schema.js";
import type { Told } from "../work/protocol.js";
import { CsvReadings } from "./CsvReadings.js";
import { type Desk, freeName, isBeginning } from "./desk.js";
import type { FileDocument } from "./document.js";
import { FeedPart } from "./form/FeedPart.js";
import { type Form, keyOf } from "./form/form.js";
import { Part } from "./form/Part.js";
import { show } from "./form/Pieces.js";
import { PositionPart } from "./form/PositionPart.js";
import { focusOn } from "./form/places.js";
import { stepWords } from "./form/stepWords.js";
import { givenName } from "./opening.js";
import { ReadingsGrid } from "./ReadingsGrid.js";
import { TextView } from "./TextView.js";
import { ToldList } from "./Told.js";
import { csvAt, toldOfTables } from "./tables.js";
import { Undoing, useSteps } from "./Undoing.js";
import type { View } from "./view.js";

type FileViewProps = {
  readonly desk: Desk;
  readonly view: View;
  readonly document: FileDocument;
  readonly root?: Schema;
  /** Those of its keys that are filled in here, where they are not all. */
  readonly keys?: readonly string[];
  readonly children: (form: Form) => ComponentChildren;
};

/** One file in its two views. */
export function FileView({ desk, view, document, root, keys, children }: FileViewProps) {
  const asText = useSignal(root === undefined);
  const told = useComputed(() => desk.told.value.filter(({ file }) => file === document.name.value));
  const listed = useComputed(() => [
    ...told.value,
    ...(document.kind === "machine" ? toldOfTables(desk.told.value, document.nodes.value) : []),
  ]);
  const form = useMemo(() => root && formOf(desk, document, root, told), [document, root]);
  const steps = useSteps(document);
  const { fault, tooMuch } = document.nodes.value;
  useSignalEffect(() => {
    const way = view.wanted.value?.document === document ? view.wanted.value.way : undefined;
    if (way === undefined) return;
    view.wanted.value = undefined;
    if (form && !asText.peek()) show(form, way);
    // What was brought up is there once it is drawn.
    requestAnimationFrame(() => requestAnimationFrame(() => focusOn(way)));
  });
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
        <FileName desk={desk} document={document} />
        <Undoing document={document} view={view} steps={steps} />
      </div>
      <ToldList
        {...{ document, view, keys }}
        told={listed}
        desk={desk}
        asText={asText.value}
        onText={(one) => caretAt(document, one)}
      />
      {document.kind === "job" && isBeginning(document.text.value) && (
        <p class="about" role="status">
          A new job: give it a name and a material, say from which bar, and add the first step. The plan comes with
          them.
        </p>
      )}
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
          Line {fault.line} of the text cannot be read{unread(told.value)}. Put it right under “text”; then the form
          goes on.
        </p>
      ) : (
        <div class="form" {...steps.heeded}>
          {children(form)}
        </div>
      )}
    </div>
  );
}

/** Why a text cannot be read, in the words of the text's own view, once they are known. */
const unread = ([first]: readonly Told[]): string => (first ? `: ${first.what}; ${first.remedy}` : "");

/** The file's name, to be changed: under it the file is taken away. */
function FileName({ desk, document }: { readonly desk: Desk; readonly document: FileDocument }) {
  const name = document.name.value;
  return (
    <input
      class="name"
      type="text"
      aria-label="Name of the file"
      autocomplete="off"
      spellcheck={false}
      size={Math.max(8, name.length)}
      value={name}
      onChange={(event) => {
        const wanted = givenName(event.currentTarget.value);
        if (wanted !== name) document.rename(freeName(desk, wanted));
        event.currentTarget.value = document.name.peek();
      }}
    />
  );
}

function caretAt({ view, name, nodes }: FileDocument, { file, line, column, way = [] }: Told): void {
  if (view === undefined) return;
  const at = view.state.doc.line(Math.min(line, view.state.doc.lines));
  // Of a table there is only its name in this text.
  const anchor =
    file === name.peek() ? Math.min(at.from + column - 1, at.to) : (nodes.peek().span(way)?.from ?? at.from);
  view.dispatch({ selection: { anchor }, effects: EditorView.scrollIntoView(anchor, { y: "center" }) });
  view.focus();
}

function formOf(desk: Desk, document: FileDocument, root: Schema, told: ReadonlySignal<readonly Told[]>): Form {
  const { nodes } = document;
  // One and the same on every drawing: another function would be another grid, and lose what is being typed.
  const Grid = (props: { readonly form: Form; readonly way: Way }) =>
    csvAt(nodes.value, props.way) ? <CsvReadings {...props} desk={desk} /> : <ReadingsGrid {...props} desk={desk} />;
  return {
    ...{ document, root, nodes },
    units: computed(() => (nodes.value.words(["units"]) === "in" ? "in" : "mm")),
    unitsOpen: computed(
      () =>
        document.kind === "job" &&
        nodes.value.words(["units"]) === "" &&
        desk.machine.value.nodes.value.words(["units"]) === "in",
    ),
    told: computed(() => byPlace(told.value, document)),
    takes: (way) => (document.kind === "job" ? takenByStep(way, nodes.value) : takenByDial(way, nodes.value)),
    asked: (way, schema) => (document.kind === "job" ? askedOfStep(way, schema, nodes.value) : schema),
    // One word for each sense of turning; a drill has no other steps than those that make holes.
    offers: (way, word) =>
      word !== "counterclockwise" &&
      (document.kind !== "job" ||
        way[0] !== "steps" ||
        way.at(-1) !== "do" ||
        desk.machine.value.nodes.value.words(["kind"]) !== "drill" ||
        isHoleStep({ do: word })),
    asksFor: (way) =>
      isOfWheel(way, "feed") ||
      isOfWheel(way, "dial") ||
      isAskedAcross(way, nodes.value) ||
      isSenseOfDial(way, nodes.value) ||
      (document.kind === "machine" && keyOf(way) === keyOf(["drive", "motor"])) ||
      (document.kind === "job" &&
        (keyOf(way) === "units" ||
          (keyOf(way) === "bar" && desk.machine.value.nodes.value.words(["kind"]) !== "drill"))),
    handwheels: desk.handwheels,
    pieces: signal(new Map()),
    Part,
    special: (way) =>
      isOfWheel(way, "feed")
        ? FeedPart
        : way.at(-1) === "readings" && way.at(-2) === "feed"
          ? Grid
          : way[1] === "tachometer" && way.at(-1) === "position"
            ? PositionPart
            : undefined,
  };
}

const isOfWheel = (way: Way, key: string): boolean => way.length === 3 && way[0] === "handwheels" && way[2] === key;

/** Of a wheel that makes round work thinner, what its dial shows and which way its numbers grow: taken for the usual where nothing is
 *  said, and the parts come out wrong where it is not so. */
function isAskedAcross(way: Way, { words }: Nodes): boolean {
  const [part, wheel, ...rest] = way;
  if (part !== "handwheels" || wheel === undefined || !["reads", "dial.increases"].includes(rest.join(".")))
    return false;
  const said = (key: string) => words([part, wheel, key]);
  const moves = said("moves");
  return isAcross({
    handwheel: {
      name: said("name"),
      reads: said("reads") === "diameter" ? "diameter" : "travel",
      ...(moves !== "" && { moves: moves as Moves }),
    },
  });
}

/** Which way the numbers of a dial grow: it is printed the one way or the other, and made in vain where nobody was asked. */
const isSenseOfDial = (way: Way, { words }: Nodes): boolean =>
  way.length === 4 &&
  isOfWheel(way.slice(0, 3), "dial") &&
  way[3] === "increases" &&
  words([...way.slice(0, 3), "shape"]) !== "";

/** A dial takes the sizes of its shape; before it has one, none. */
function takenByDial(way: Way, { words }: Nodes): ReturnType<Form["takes"]> {
  if (!isOfWheel(way, "dial")) return undefined;
  const all = Object.keys(schemaAt(machineSchema, way, () => ({}))?.properties ?? {});
  const others = all.filter((key) => key !== "shape" && !dialSizes.some((size) => size === key));
  const shape = words([...way, "shape"]);
  const sizes = Object.entries(dialKeys).find(([one]) => one === shape)?.[1];
  if (sizes === undefined) return { needs: ["shape"], may: others };
  // Of a drum the diameter is what one measures first.
  const first = sizes.may.slice(0, 1);
  return { needs: ["shape", ...first, ...sizes.needs], may: [...sizes.may, ...others] };
}

/** A step of a job takes what its kind takes; before it has one, nothing else. */
function takenByStep(way: Way, { words }: Nodes): ReturnType<Form["takes"]> {
  if (way.length !== 2 || way[0] !== "steps") return undefined;
  const { needs, may } = Object.entries(stepKeys).find(([kind]) => kind === words([...way, "do"]))?.[1] ?? {
    needs: [],
    may: [],
  };
  return { needs: ["do", ...needs], may };
}

/** A key that several kinds of step take, as this kind takes it. */
function askedOfStep([list, step, key, ...inner]: Way, schema: Schema, { words, value }: Nodes): Schema {
  if (list !== "steps" || step === undefined || typeof key !== "string" || inner.length > 0) return schema;
  const kind = words([list, step, "do"]);
  const description = stepWords(kind, key) ?? schema.description;
  const plain = key === "diameter" && [...plainDiameters].some((one) => one === kind);
  // Two limits that stand there all the same are shown as they are.
  const one = plain && !Array.isArray(value([list, step, key])) ? schema.anyOf?.find(scalar) : undefined;
  return { ...(one ?? schema), ...(description !== undefined && { description }) };
}

const byPlace = (told: readonly Told[], document: FileDocument): Map<string, Told[]> =>
  grouped(told, (one) => keyOf(placesOf(one, document.nodes.value)));
