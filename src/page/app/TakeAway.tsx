import { type Signal, useSignal } from "@preact/signals";
import { stemOf } from "../../printing/stem.js";
import { type LanguageCode, languages } from "../../words/languages.generated.js";
import type { AnswerTo, PageFormat } from "../work/protocol.js";
import { type Desk, keptOf } from "./desk.js";
import { hand } from "./hand.js";
import { inPage } from "./inPage.js";
import type { Keeping } from "./keep.js";
import { Refused } from "./Refused.js";

/** Everything that one carries off: sheets to print, the files themselves. */
export function TakeAway({ desk, keeping }: { readonly desk: Desk; readonly keeping: Keeping }) {
  const busy = useSignal(false);
  const told = useSignal<readonly string[]>([]);
  const picked = useSignal<readonly string[]>([]);
  const format = useSignal<PageFormat>("pdf");
  const wheels = useSignal<readonly string[]>([]);
  const language = useSignal<LanguageCode | undefined>(undefined);
  const asking = useSignal<Asking | undefined>(undefined);
  const print = async (bound: boolean, all: boolean, refusedJobs?: "made" | "left out"): Promise<void> => {
    busy.value = true;
    told.value = [];
    asking.value = undefined;
    try {
      const sheets = all ? {} : { sheets: picked.value };
      // A wheel that the file no longer has was ticked before it went.
      const only = desk.handwheels.peek().filter((name) => wheels.value.includes(name));
      const asked = {
        ...{ ...sheets, bound, format: bound ? ("pdf" as const) : format.value },
        ...(only.length > 0 && { handwheels: only }),
        ...(language.value && { language: language.value }),
        ...(refusedJobs && { refusedJobs }),
      };
      const { files, why, toSay } = await desk.asker.ask("print", desk.files.peek(), asked);
      hand(files, together(desk));
      if (toSay) asking.value = { ...toSay, goOn: (what) => print(bound, all, what) };
      else told.value = [`${files.length} ${files.length === 1 ? "file" : "files"} made.`, ...why.map(inPage)];
    } catch (fault) {
      told.value = [fault instanceof Error ? fault.message : String(fault)];
    }
    busy.value = false;
  };
  const revision = desk.machine.value.nodes.value.words(["revision"]);
  return (
    <section class="taking" aria-label="Take away">
      <div class="card">
        <h2>Sheets</h2>
        <p class="about">Print at 100 %, never “fit to page”. What is not ready says what it lacks.</p>
        <ul class="sheets">
          {desk.sheets.value.map(({ name, title, why, onRequest }) => (
            <li key={name} class={onRequest ? "request" : undefined}>
              <label>
                <input
                  type="checkbox"
                  value={name}
                  disabled={why !== undefined}
                  checked={picked.value.includes(name)}
                  onChange={({ currentTarget: { checked } }) => {
                    picked.value = checked ? [...picked.value, name] : picked.value.filter((one) => one !== name);
                  }}
                />
                {title}
              </label>
              {why !== undefined && <span class="about"> {why}</span>}
            </li>
          ))}
        </ul>
        <Wheels desk={desk} wheels={wheels} />
        <p class="ways">
          <label for="language">In</label>{" "}
          <select
            id="language"
            value={language.value ?? ""}
            onChange={(event) => (language.value = languages.find((code) => code === event.currentTarget.value))}
          >
            <option value="">the file’s language</option>
            {languages.map((code) => (
              <option key={code} value={code}>
                {names.of(code)}
              </option>
            ))}
          </select>{" "}
          <label for="format">as</label>{" "}
          <select
            id="format"
            value={format.value}
            onChange={(event) => (format.value = event.currentTarget.value as PageFormat)}
          >
            <option value="pdf">PDF, to print</option>
            <option value="svg">SVG, a file a page</option>
            <option value="dxf">DXF, a file a page</option>
          </select>
        </p>
        <p>
          <button type="button" disabled={busy.value || picked.value.length === 0} onClick={() => print(false, false)}>
            take the ticked ones
          </button>{" "}
          <button
            type="button"
            class="chief"
            disabled={busy.value || !desk.sound.value}
            onClick={() => print(true, true)}
          >
            take all, bound in one PDF
          </button>
        </p>
        {asking.value && (
          <Refused files={asking.value.refused}>
            <button type="button" onClick={() => asking.value?.goOn("made")}>
              make all; every page of such a plan says so
            </button>{" "}
            {asking.value.others && (
              <>
                <button type="button" onClick={() => asking.value?.goOn("left out")}>
                  make all but that
                </button>{" "}
              </>
            )}
            <button type="button" onClick={() => (asking.value = undefined)}>
              make nothing
            </button>
          </Refused>
        )}
        <p class="about">Several files come as one zip.</p>
        <p class="about">
          What was printed before lies where this page cannot look: which of it is out of date, and which dial to take
          off, is told by the program itself, installed beside the files, as “witnessmark check”. By hand, hold the
          revision in a page’s foot against the file’s,{" "}
          {revision === "" ? "which gives none yet" : `which is ${revision}`}.
        </p>
        <div role="status">
          {told.value.map((words) => (
            <p key={words}>{words}</p>
          ))}
        </div>
      </div>
      <div class="card">
        <h2>Files</h2>
        <p class="about">
          They are yours: plain text, to keep where you like and to hand on. Machine and job files, readings (CSV) and
          sheets of your own are opened by dropping them anywhere on the page, several at a time.
        </p>
        <ul>
          {desk.documents.value.map((document) => (
            <li key={document.name.value}>
              <button
                type="button"
                onClick={() => {
                  hand([{ name: document.name.peek(), bytes: document.text.peek() }], "");
                  if (keptOf(desk).length === 1) keeping.takenAway();
                }}
              >
                {document.name.value}
              </button>
            </li>
          ))}
        </ul>
        <button
          type="button"
          onClick={() => {
            const files = desk.documents.peek().map(({ name, text }) => ({ name: name.peek(), bytes: text.peek() }));
            hand(files, together(desk));
            keeping.takenAway();
          }}
        >
          take all files
        </button>
      </div>
    </section>
  );
}

/** What is to be said before anything is made: jobs are refused. */
type Asking = NonNullable<AnswerTo<"print">["toSay"]> & {
  readonly goOn: (refusedJobs: "made" | "left out") => Promise<void>;
};

/** Only of some handwheels, as where one dial is to be printed again. */
function Wheels({ desk, wheels }: { readonly desk: Desk; readonly wheels: Signal<readonly string[]> }) {
  if (desk.handwheels.value.length < 2) return null;
  return (
    <fieldset class="which">
      <legend>Only of these handwheels</legend>
      {desk.handwheels.value.map((name) => (
        <label key={name}>
          <input
            type="checkbox"
            checked={wheels.value.includes(name)}
            onChange={({ currentTarget: { checked } }) => {
              wheels.value = checked ? [...wheels.value, name] : wheels.value.filter((one) => one !== name);
            }}
          />
          {name}
        </label>
      ))}
      <span class="about">None ticked: all of them.</span>
    </fieldset>
  );
}

/** The page itself is in English. */
const names = new Intl.DisplayNames(["en"], { type: "language" });

/** What the files of a machine are called together. */
const together = (desk: Desk): string => stemOf(desk.machine.peek().name.peek());
