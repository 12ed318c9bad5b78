import { useComputed } from "@preact/signals";
import type { JSX } from "preact";
import { useMemo } from "preact/hooks";
import type { DialSeen, WheelStanding } from "../../work/protocol.js";
import type { Desk } from "../desk.js";
import { inForm } from "../form/inForm.js";
import { inPage } from "../inPage.js";
import { newest, useStopped } from "../worker.js";
import { Card } from "./Card.js";
import { FreeHand } from "./FreeHand.js";
import { type InHand, inHandOf, stand, toNextLine, turn } from "./inHand.js";
import { Answer, Question } from "./Practice.js";
import { usePractising } from "./practising.js";
import { Wheel } from "./Wheel.js";

const NO_WHEEL = "This file has no handwheel yet";
const TO_MEND = "The file has something to mend first, at what bears ✗";

/** A dial to be turned on its wheel: freely, or to work the student's exercises on it. */
export function DialInHand({ desk }: { readonly desk: Desk }) {
  const hand = inHandOf(desk);
  const wheel = useComputed(() => {
    const names = desk.handwheels.value;
    return names.find((name) => name === hand.wheel.value) ?? names[0] ?? "";
  });
  const asking = useMemo(
    () => ({
      dial: newest(desk.asker, "dial", () => ({ files: desk.files.value, asked: { wheel: wheel.value } })),
      standing: newest(desk.asker, "standing", () => ({
        files: desk.files.value,
        asked: { wheel: wheel.value, turned: hand.turned.value },
      })),
    }),
    [desk],
  );
  useStopped(asking);
  const practising = usePractising(desk, hand);
  const language = desk.machine.value.nodes.value.words(["language"]);
  const free = !hand.practising.value;
  const dial = asking.dial.answer.value?.dial;
  const standing = asking.standing.answer.value;
  return (
    <div class={`hand ${free ? "freely" : "practice"}`}>
      <fieldset class="bare views" aria-label="What to do with it">
        <button type="button" aria-pressed={free} onClick={() => (hand.practising.value = false)}>
          turn it freely
        </button>
        <button
          type="button"
          aria-pressed={!free}
          onClick={() => {
            hand.practising.value = true;
            practising.begin();
          }}
        >
          exercises
        </button>
      </fieldset>
      {!free && <Question practising={practising} english={language === "" || language === "en"} />}
      {!free && practising.exercise?.sheet !== undefined && (
        <section class="wheel" aria-label="The card">
          <Card desk={desk} sheet={practising.exercise.sheet} key={practising.exercise.sheet} />
        </section>
      )}
      {(free || practising.exercise?.wheel !== undefined) && (
        <section class="wheel" aria-label="The dial in your hand">
          {free && (
            <p>
              <label for="wheel">Handwheel</label>{" "}
              <select id="wheel" value={wheel.value} onChange={(event) => stand(hand, 0, event.currentTarget.value)}>
                {desk.handwheels.value.map((name) => (
                  <option key={name}>{name}</option>
                ))}
              </select>
            </p>
          )}
          {dial === undefined ? (
            <p class="lacking">
              {inForm(inPage(asking.dial.answer.value?.why ?? (desk.sound.value ? NO_WHEEL : TO_MEND)))}.
            </p>
          ) : (
            <Folded words={free ? undefined : `Dial of the ${wheel.value}`}>
              <Turning hand={hand} wheel={wheel.value} dial={dial} standing={standing} free={free} />
            </Folded>
          )}
        </section>
      )}
      {free ? (
        <FreeHand desk={desk} hand={hand} wheel={wheel.value} dial={dial} standing={standing} />
      ) : (
        <Answer practising={practising} />
      )}
    </div>
  );
}

/** With words above it, what may be folded away. */
function Folded({ words, children }: { readonly words: string | undefined; readonly children: JSX.Element }) {
  if (words === undefined) return children;
  return (
    <details open>
      <summary>{words}</summary>
      {children}
    </details>
  );
}

type TurningProps = {
  readonly hand: InHand;
  readonly wheel: string;
  readonly dial: DialSeen;
  readonly standing: WheelStanding | undefined;
  /** Whether what the slide has done may be told: in an exercise it would be the answer. */
  readonly free: boolean;
};

/** The wheel, and for a thumb what the keys do. */
function Turning({ hand, wheel, dial, standing, free }: TurningProps) {
  const { turns } = hand.turned.value;
  const by = (more: number): void => turn(hand, more, dial);
  const line = (way: 1 | -1): void => by(toNextLine(hand.turned.peek().turns, dial, way));
  const whole = Math.floor(turns + 1e-9);
  const counted = whole < 0 ? "before 0" : `${whole} whole ${whole === 1 ? "turn" : "turns"}`;
  const shown = `the dial shows ${standing?.figure ?? ""}`;
  return (
    <>
      <Wheel
        name={wheel}
        dial={dial}
        turns={turns}
        told={[
          counted,
          shown,
          ...(free ? [`the slide has gone ${standing?.travel ?? ""}`, standing?.beyond ?? []].flat() : []),
        ].join(", ")}
        onTurn={by}
        onLine={line}
      />
      <p class="turns">{counted}</p>
      <p class="by thumbs">
        <button type="button" onClick={() => by(-1)}>
          turn back
        </button>
        <button type="button" onClick={() => line(-1)}>
          line back
        </button>
        <button type="button" onClick={() => line(1)}>
          line on
        </button>
        <button type="button" onClick={() => by(1)}>
          turn on
        </button>
      </p>
    </>
  );
}
