import { useComputed, useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { machineSchema, schemaAt } from "../schema.js";
import { AskView } from "./AskView.js";
import { Beginning } from "./begin/Beginning.js";
import { beginAnew, type Desk } from "./desk.js";
import { DialInHand } from "./dial/DialInHand.js";
import { FileView } from "./FileView.js";
import { Fields, Unknown } from "./form/Fields.js";
import type { Form } from "./form/form.js";
import { JobView } from "./JobView.js";
import type { Keeping } from "./keep.js";
import { Notices } from "./Notices.js";
import { open } from "./opening.js";
import { Paper } from "./Paper.js";
import { Rule } from "./Rule.js";
import { OwnSheets } from "./sheets/OwnSheets.js";
import { type Station, stations } from "./stations.js";
import { TakeAway } from "./TakeAway.js";
import { CARD_LENGTH, TrueSize } from "./TrueSize.js";
import { TurnOver } from "./TurnOver.js";
import type { View } from "./view.js";

type AppProps = { readonly desk: Desk; readonly keeping: Keeping; readonly view: View };

export function App({ desk, keeping, view }: AppProps) {
  const { at, sheet } = view;
  const cardPixels = useSignal(0);
  const pixelsPerMm = useComputed(() => (cardPixels.value > 0 ? cardPixels.value / CARD_LENGTH : undefined));
  const station = useComputed(() => stations.find(({ name }) => name === at.value));
  useEffect(() => takeDropped(desk, view), [desk]);
  const hasPaper = station.value !== undefined || at.value === "Paper";
  const place = station.value ? "filling" : `at-${at.value.toLowerCase().replace(" ", "-")}`;
  const title = desk.sheets.value.find(({ name }) => name === sheet.value)?.title ?? sheet.value;
  return (
    <div class={`desk ${place}${hasPaper && view.paperUp.value ? " paper-up" : ""}`}>
      <Head desk={desk} view={view} />
      <Notices desk={desk} keeping={keeping} view={view} />
      <Rule desk={desk} view={view} />
      <main class="sides">
        <div class="work" id="work">
          {station.value ? (
            <StationView desk={desk} station={station.value} view={view} />
          ) : at.value === "Paper" ? (
            <TrueSize cardPixels={cardPixels} />
          ) : at.value === "Dial" ? (
            <DialInHand desk={desk} />
          ) : at.value === "Ask" ? (
            <AskView desk={desk} key={desk.machine.value.name.value} />
          ) : (
            <TakeAway desk={desk} keeping={keeping} />
          )}
          {!hasPaper && <PrintedHere desk={desk} sheet={sheet.value} />}
        </div>
        {hasPaper && <TurnOver view={view} title={title} />}
        <Paper desk={desk} view={view} pixelsPerMm={pixelsPerMm} />
      </main>
      <datalist id="wheels">
        {desk.handwheels.value.map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
    </div>
  );
}

/** Where no paper lies beside it the browser prints the sheet that was seen last, which then is not to be guessed. */
function PrintedHere({ desk, sheet }: { readonly desk: Desk; readonly sheet: string }) {
  const found = desk.sheets.value.find(({ name }) => name === sheet);
  return (
    <p class="about printed">
      {found === undefined || found.why !== undefined
        ? "The browser’s own “print” has no sheet to print yet: choose one at “Paper”."
        : `The browser’s own “print” prints the sheet seen last: ${found.title}. Choose another at “Paper”.`}
    </p>
  );
}

function Head({ desk, view }: { readonly desk: Desk; readonly view: View }) {
  return (
    <header>
      <h1>
        witnessmark <span>{withoutTurns(desk.machine.value.nodes.value.words(["name"]))}</span>
      </h1>
      {desk.machine.value.text.value.trim() !== "" && (
        <button
          type="button"
          onClick={() => {
            beginAnew(desk);
            view.go("Machine");
          }}
        >
          new machine
        </button>
      )}
      <label class="open">
        open a file
        <input
          type="file"
          multiple
          accept=".yaml,.yml,.csv,.txt"
          onChange={(event) => {
            void open(desk, view, event.currentTarget.files);
            event.currentTarget.value = "";
          }}
        />
      </label>
    </header>
  );
}

/** Signs that turn the direction of what follows would turn the page's own words about. */
const withoutTurns = (words: string): string => words.replace(/[\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, "\ufffd");

/** Files that are dropped anywhere on the page are opened. */
function takeDropped(desk: Desk, view: View): () => void {
  const drop = (event: DragEvent) => {
    event.preventDefault();
    if (event.type === "drop") void open(desk, view, event.dataTransfer?.files);
  };
  for (const name of ["dragover", "drop"] as const) addEventListener(name, drop);
  return () => {
    for (const name of ["dragover", "drop"] as const) removeEventListener(name, drop);
  };
}

function StationView({ desk, station, view }: { readonly desk: Desk; readonly station: Station; readonly view: View }) {
  return (
    <section class="station" aria-label={station.name}>
      <h2>{station.name}</h2>
      <p class="lead">{station.lead}</p>
      {station === stations[0] && <Beginning desk={desk} />}
      {station.name === "Job" ? (
        <JobView desk={desk} view={view} />
      ) : station.name === "Own sheets" ? (
        <OwnSheets desk={desk} view={view} />
      ) : (
        <FileView
          {...{ desk, view }}
          document={desk.machine.value}
          root={machineSchema}
          keys={station.keys}
          key={station.name}
        >
          {(form) => (
            <>
              {station === stations[0] ? (
                <First form={form} keys={station.keys} />
              ) : (
                <Fields form={form} way={[]} schema={machineSchema} only={station.keys} />
              )}
            </>
          )}
        </FileView>
      )}
    </section>
  );
}

const ASKED_FIRST = ["name", "units"];
const SIZE = ["paper", "size"];

/** What is asked first: everything else is measured in these units, and printed on this paper. */
function First({ form, keys }: { readonly form: Form; readonly keys: readonly string[] }) {
  const { Part } = form;
  const others = keys.filter((key) => !ASKED_FIRST.includes(key));
  return (
    <>
      <Fields form={form} way={[]} schema={machineSchema} only={ASKED_FIRST} />
      <Part form={form} way={SIZE} schema={schemaAt(machineSchema, SIZE, () => ({})) ?? {}} label="Paper size" />
      <Fields form={form} way={[]} schema={machineSchema} only={others} closed />
      <Unknown form={form} way={[]} schema={machineSchema} />
    </>
  );
}
