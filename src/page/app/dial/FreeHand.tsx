import { useSignal } from "@preact/signals";
import { useEffect, useMemo, useRef } from "preact/hooks";
import type { DialSeen, WheelStanding } from "../../work/protocol.js";
import { type Desk, unitAt } from "../desk.js";
import { newest, useStopped } from "../worker.js";
import { type InHand, stand } from "./inHand.js";

type FreeHandProps = {
  readonly desk: Desk;
  readonly hand: InHand;
  readonly wheel: string;
  readonly dial: DialSeen | undefined;
  readonly standing: WheelStanding | undefined;
};

/** What the wheel in hand shows and how far its slide has gone; a distance typed turns it there. */
export function FreeHand({ desk, hand, wheel, dial, standing }: FreeHandProps) {
  const distance = useSignal("");
  /** Where the wheel stood before anything was typed. */
  const before = useRef(hand.turned.peek());
  const asking = useMemo(
    () => ({
      distance: newest(desk.asker, "distance", () =>
        distance.value === "" ? undefined : { files: desk.files.value, asked: { wheel, distance: distance.value } },
      ),
    }),
    [desk, wheel],
  );
  useStopped(asking);
  const told = asking.distance.answer.value;
  const target = told?.turns;
  const refused = told !== undefined && target === undefined;
  useEffect(() => {
    // What cannot be read is refused whole: it does not stand at the 1 that 1e9 began with, but where it stood before.
    if (distance.value === "") return;
    if (target !== undefined) stand(hand, target);
    else if (refused) hand.turned.value = before.current;
  }, [target, refused]);
  return (
    <section class="free" aria-label="How it stands">
      <output class="standing">
        {standing?.figure !== undefined && (
          <>
            the dial shows <b>{standing.figure}</b> {dial?.unit}
            {standing.row !== undefined && `, row ${standing.row}`}
            <br />
          </>
        )}
        the slide has gone {standing?.travel ?? "–"}
        {standing?.beyond !== undefined && <b class="beyond">{standing.beyond}</b>}
        {hand.turned.value.slack > 1e-9 && (
          <small>
            {hand.turned.value.slack < (dial?.lost.turns ?? 0) - 1e-9
              ? "turned back: the slide waits"
              : "turned back: the slide has followed, and lags; come on anew before the dial is believed"}
            {dial?.lost.supposed && "; nobody has measured how long it waits"}
          </small>
        )}
      </output>
      <p class="field">
        <label for="distance">Turn it to</label>
        <span class="typed">
          <input
            id="distance"
            type="text"
            inputMode="decimal"
            autocomplete="off"
            value={distance.value}
            onInput={(event) => {
              if (distance.peek() === "") before.current = hand.turned.peek();
              distance.value = event.currentTarget.value;
            }}
          />
          <span class="unit">
            {unitAt(desk, wheel)} on the dial
            {/* Its numbers are thousandths, and one types what one reads. */}
            {dial?.unit.startsWith("×") && unitAt(desk, wheel) === "in" && ", or its number as “50 thou”"}
          </span>
        </span>
      </p>
      <p class="by">
        <button
          type="button"
          onClick={() => {
            distance.value = "";
            stand(hand, 0);
          }}
        >
          back to 0
        </button>
      </p>
      {distance.value !== "" && <p role="status">{told?.said.join("; ")}</p>}
    </section>
  );
}
