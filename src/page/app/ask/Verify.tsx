import { useSignal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import type { Mend, MendedSide } from "../../../answers/verified.js";
import { type Desk, putValues, unitOf } from "../desk.js";
import { newest, useStopped } from "../worker.js";
import { useAsked } from "./asked.js";
import { Choice, chosenOf, Typed } from "./fields.js";

/** A caliper laid on what was printed. */
export function Verify({ desk }: { readonly desk: Desk }) {
  const wheel = useAsked(desk, "verifiedWheel");
  const measured = useAsked(desk, "measured");
  const by = useAsked(desk, "by");
  const put = useSignal<string | undefined>(undefined);
  const asking = useMemo(() => {
    const dials = newest(desk.asker, "measures", () => ({ files: desk.files.value, asked: {} }));
    const verdict = newest(desk.asker, "verify", () => {
      const handwheel = chosenOf(wheel.value, desk.handwheels.value);
      if (measured.value === "" || dials.answer.value === undefined) return undefined;
      const offered = waysOf(dials.answer.value, handwheel);
      const how = offered.length > 1 ? { by: chosenOf(by.value, offered) } : {};
      return { files: desk.files.value, asked: { handwheel, measured: measured.value, ...how } };
    });
    return { dials, verdict };
  }, [desk]);
  useStopped(asking);
  const mend = ({ printer, unnamed }: Mend, { side, bar }: MendedSide): void => {
    putValues(desk, [["printers", printer, side], bar], ...(unnamed ? [[["paper", "printer"], printer] as const] : []));
    // It was measured on paper that was printed without: by that it would be mended twice.
    measured.value = "";
    put.value = `“${side} ${bar}” of “${printer}” is in the file now. Print the dial again, cut it out, and measure anew.`;
  };
  const dials = asking.dials.answer.value ?? [];
  const named = dials.find((one) => one.wheel === chosenOf(wheel.value, desk.handwheels.value));
  const measures = named?.measures ?? [];
  const answer = measured.value === "" ? undefined : asking.verdict.answer.value;
  return (
    <section class="card" aria-labelledby="right">
      <h2 id="right">Did the piece come out right?</h2>
      <p class="about">Cut it out, lay a caliper on it before the glue, and type what it says.</p>
      <Choice id="verifiedWheel" label="Handwheel" value={wheel} of={desk.handwheels.value} />
      {measures.length > 1 && (
        <Choice
          id="by"
          label="Measured"
          value={by}
          of={measures.map(({ by: how, what }) => ({ value: how, words: what }))}
        />
      )}
      <Typed
        id="measured"
        label="The caliper says"
        value={measured}
        unit={unitOf(desk)}
        about={measures.length === 1 ? `Of ${measures[0]?.what}` : undefined}
        refused={answer?.refused}
      />
      {answer !== undefined && answer.lines.length > 0 && (
        <div class="said" role="status">
          {answer.lines.map((line) => (
            <p key={line} class={/^(Not g|G)ood enough/.test(line) ? "verdict" : undefined}>
              {line}
            </p>
          ))}
          {answer.mend && <Mending mend={answer.mend} onMend={mend} sheet={titleOf(desk, "dial")} />}
        </div>
      )}
      {measured.value === "" && put.value !== undefined && <p role="status">{put.value}</p>}
    </section>
  );
}

type MendingProps = {
  readonly mend: Mend;
  readonly onMend: (mend: Mend, lay: MendedSide) => void;
  readonly sheet: string;
};

/** The printer's bar, put right in the file by how the piece lay when it was printed. */
function Mending({ mend, onMend, sheet }: MendingProps) {
  const button = (lay: MendedSide) => (
    <button type="button" onClick={() => onMend(mend, lay)}>
      {lay.side}: put “{lay.side} {lay.bar}” in the file
    </button>
  );
  return (
    <>
      <p>
        To mend it, what “{mend.printer}” makes of a bar is put in the file, and the dial printed again. How did the
        measured length lie on the sheet “{sheet}”? Its margins say which way is across and which is down.
      </p>
      <p class="ways">
        {button(mend.level)} {button(mend.upright)}
      </p>
    </>
  );
}

const waysOf = (
  dials: readonly { readonly wheel: string; readonly measures: readonly { readonly by: string }[] }[],
  wheel: string,
): string[] => dials.find((one) => one.wheel === wheel)?.measures.map(({ by }) => by) ?? [];

const titleOf = ({ sheets }: Desk, sheet: string): string =>
  sheets.value.find(({ name }) => name === sheet)?.title ?? sheet;
