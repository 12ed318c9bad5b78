import type { ReadonlySignal } from "@preact/signals";
import { placesOf } from "../file/nodes.js";
import type { Told } from "../work/protocol.js";
import { type Desk, NOT_LOOKED_AT } from "./desk.js";
import type { FileDocument } from "./document.js";
import { inForm } from "./form/inForm.js";
import { ofEntry, placeWords } from "./form/placeWords.js";
import { stationOf } from "./stations.js";
import { withItsLine } from "./tables.js";
import type { View } from "./view.js";

type ToldListProps = {
  readonly told: ReadonlySignal<readonly Told[]>;
  readonly desk: Pick<Desk, "sound" | "sheets">;
  readonly document: FileDocument;
  readonly view: View;
  readonly asText: boolean;
  /** The station's, where the form shows no more of the file. */
  readonly keys: readonly string[] | undefined;
  readonly onText: (one: Told) => void;
};

/** What is wrong or lacking here, each with the way to where it is put right; what it stops; and where else something is told. */
export function ToldList({ told, desk, document, view, asText, keys, onText }: ToldListProps) {
  if (told.value.length === 0) return null;
  const station = view.at.value;
  const all = told.value.map((one) => ({ one, way: placesOf(one, document.nodes.value) }));
  const ofTable = ({ file }: Told) => file !== document.name.value;
  const whole = asText || keys === undefined;
  const here = whole ? all : all.filter(({ way }) => stationOf(way).name === station);
  const others = whole ? [] : countBy(all.map(({ way }) => stationOf(way).name).filter((name) => name !== station));
  return (
    <section class="messages" aria-label="What is told of the file" aria-live="polite">
      {here.length > 0 && <h3>{here.length === 1 ? "1 thing to look at" : `${here.length} things to look at`}</h3>}
      <ul>
        {here.map(({ one, way }) => (
          <li key={`${one.file}:${one.line}:${one.column}:${one.what}`} class={one.severity}>
            <button type="button" class="where" onClick={() => (asText ? onText(one) : view.to(document, way))}>
              {asText ? (ofTable(one) ? `“${one.file}”` : `line ${one.line}`) : placeWords(way, document.nodes.value)}
            </button>{" "}
            {ofTable(one)
              ? withItsLine(one)
              : asText
                ? `${one.what}; ${one.remedy}`
                : inForm(ofEntry(`${one.what}; ${one.remedy}`, way))}
          </li>
        ))}
      </ul>
      {others.length > 0 && (
        <p class="elsewhere">
          {here.length > 0 ? "More at " : "Nothing here, but at "}
          {others.map(([name, count]) => (
            <button type="button" key={name} onClick={() => view.go(name)}>
              {name} ({count})
            </button>
          ))}
        </p>
      )}
      <p class="stops">{stopsWords(told.value, document.kind, desk)}</p>
    </section>
  );
}

/** Which sheets wait until it is mended, and which go on. */
function stopsWords(
  told: readonly Told[],
  kind: FileDocument["kind"],
  { sound, sheets }: ToldListProps["desk"],
): string {
  const own = kind === "job" ? "no plan is made of this job" : "this sheet is not made";
  if (told.some(({ stops }) => stops === "every sheet")) return "Until what bears ✗ is mended, no sheet is made.";
  const ready = sheets.value.filter(({ why }) => why === undefined).map(({ title }) => title);
  if (told.some(({ stops }) => stops === "what needs it"))
    return `Until what bears ✗ is mended, only what does not need it is made: ${ready.join(", ") || "no sheet"}.`;
  if (!sound.value)
    return `The machine’s file has something to mend first; what does not need it is made: ${ready.join(", ") || "no sheet"}.`;
  if (told.some(({ stops }) => stops === "its own"))
    return `Until what bears ✗ is mended, ${own}; every other sheet goes on.`;
  if (told.some(({ severity }) => severity === "error"))
    return "The plan is drawn all the same, and says at its head what bears ✗; you are asked before it is printed. Every other sheet goes on.";
  const not = sheets.value.filter(({ why = NOT_LOOKED_AT }) => why !== NOT_LOOKED_AT).map(({ title }) => title);
  return not.length === 0
    ? "Every sheet goes on with this."
    : `Not made yet (“Take away” says why): ${not.join(", ")}. Every other sheet goes on with this.`;
}

function countBy(names: readonly string[]): [string, number][] {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts];
}
