import { useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { stemOf } from "../../../printing/stem.js";
import { chosenOf } from "../ask/fields.js";
import { beginnings } from "../begin/texts.js";
import { add, type Desk, freeName, remove } from "../desk.js";
import type { FileDocument } from "../document.js";
import { FileView } from "../FileView.js";
import { hand } from "../hand.js";
import { sharesOnePlace } from "../TurnOver.js";
import type { View } from "../view.js";
import { AllBlocks } from "./AllBlocks.js";

type OwnSheetsProps = {
  readonly desk: Desk;
  readonly view: View;
};

/** Templates of the reader's own: each a file, edited as text, its paper beside it. */
export function OwnSheets({ desk, view }: OwnSheetsProps) {
  const { sheet, bring } = view;
  const own = desk.documents.value.filter(({ kind }) => kind === "sheet");
  useEffect(() => {
    const names = own.map(sheetOf);
    if (names.length > 0 && !names.includes(sheet.peek())) bring(names[0] ?? "");
  }, [own.map(sheetOf).join("/")]);
  return (
    <>
      {own.map((document) => (
        <section key={document.name.value} class="own">
          <FileView desk={desk} view={view} document={document}>
            {() => null}
          </FileView>
          <p>
            <button type="button" aria-pressed={sheet.value === sheetOf(document)} onClick={() => see(document, view)}>
              see its paper
            </button>{" "}
            <button type="button" onClick={() => hand([fileOf(document)], "")}>
              take {document.name.value} away
            </button>{" "}
            <button type="button" class="out" onClick={() => takeOff(desk, view, document)}>
              take it off the desk
            </button>
          </p>
        </section>
      ))}
      <Copy desk={desk} view={view} />
      <AllBlocks desk={desk} />
    </>
  );
}

/** A template of the program's, to change. */
function Copy({ desk, view }: OwnSheetsProps) {
  const chosen = useSignal("");
  const { sheets } = beginnings();
  const names = Object.keys(sheets);
  const from = chosenOf(chosen.value, names);
  const text = sheets[from] ?? "";
  const title = (name: string) => /^title: (.*)$/m.exec(sheets[name] ?? "")?.[1] ?? name;
  const copy = () => {
    view.chosen.value = undefined;
    view.bring(sheetOf(add(desk, "sheet", freeName(desk, `my-${from}.yaml`), text)));
  };
  return (
    <div class="copy">
      <p class="field">
        <label for="copied">A sheet of the program's</label>
        <select id="copied" value={from} onChange={(event) => (chosen.value = event.currentTarget.value)}>
          {names.map((name) => (
            <option key={name} value={name}>
              {title(name)}
            </option>
          ))}
        </select>
        <span class="about">{/^# (.*)/.exec(text)?.[1]}</span>
      </p>
      <button type="button" class="add" onClick={copy}>
        + copy to change
      </button>
    </div>
  );
}

const sheetOf = ({ name }: FileDocument): string => stemOf(name.value);
const fileOf = ({ name, text }: FileDocument) => ({ name: name.peek(), bytes: text.peek() });

/** On a phone it lies behind all that is typed. */
function see(own: FileDocument, { chosen, paperUp, turnOver }: View): void {
  chosen.value = sheetOf(own);
  if (!paperUp.peek() && sharesOnePlace()) turnOver();
}

function takeOff(desk: Desk, { chosen }: View, own: FileDocument): void {
  if (chosen.peek() === sheetOf(own)) chosen.value = undefined;
  remove(desk, own);
}
