import { useComputed, useSignal } from "@preact/signals";
import { useEffect, useMemo, useRef } from "preact/hooks";
import type { Desk } from "./desk.js";
import { newest, useStopped } from "./worker.js";

const R = 200;

/** The dial on its wheel, to be turned by dragging, by keys or by the mouse's wheel; a distance typed turns it there. */
export function DialInHand({ desk }: { readonly desk: Desk }) {
  const chosen = useSignal<string | undefined>(undefined);
  const wheel = useComputed(() => chosen.value ?? desk.handwheels.value[0] ?? "");
  const turns = useSignal(0);
  const distance = useSignal("");
  const asking = useMemo(
    () => ({
      dial: newest(desk.asker, "dial", () => ({ files: desk.files.value, asked: { wheel: wheel.value } })),
      standing: newest(desk.asker, "standing", () => ({
        files: desk.files.value,
        asked: { wheel: wheel.value, turns: turns.value },
      })),
      distance: newest(desk.asker, "distance", () =>
        distance.value === ""
          ? undefined
          : { files: desk.files.value, asked: { wheel: wheel.value, distance: distance.value } },
      ),
    }),
    [desk],
  );
  useStopped(asking);
  const dial = asking.dial.answer.value?.dial;
  const standing = asking.standing.answer.value;
  const told = asking.distance.answer.value;
  const target = told?.turns;
  useEffect(() => {
    if (distance.value !== "" && target !== undefined) turns.value = target;
  }, [target]);
  const held = useRef<number | undefined>(undefined);
  const by = (more: number): void => {
    turns.value = Math.max(0, Math.round((turns.value + more) * 1e6) / 1e6);
  };
  const angleAt = (event: PointerEvent): number => {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    return Math.atan2(event.clientY - box.top - box.height / 2, event.clientX - box.left - box.width / 2);
  };
  const sense = dial?.increases === "anticlockwise" ? -1 : 1;
  return (
    <section class="hand" aria-label="The dial in your hand">
      <p>
        <label for="wheel">Handwheel</label>{" "}
        <select
          id="wheel"
          value={wheel.value}
          onChange={(event) => {
            chosen.value = event.currentTarget.value;
            turns.value = 0;
          }}
        >
          {desk.handwheels.value.map((name) => (
            <option key={name}>{name}</option>
          ))}
        </select>
      </p>
      {dial === undefined ? (
        <p class="lacking">This wheel has no dial yet: give it a feed, and a dial with its sizes.</p>
      ) : (
        <div
          class="dial"
          role="slider"
          tabIndex={0}
          aria-label={`Dial of the ${wheel.value}`}
          aria-valuenow={turns.value}
          aria-valuemin={0}
          aria-valuetext={`${turns.value.toFixed(3)} turns, ${standing?.travel ?? ""}`}
          onPointerDown={(event) => {
            event.currentTarget.setPointerCapture(event.pointerId);
            held.current = angleAt(event);
          }}
          onPointerMove={(event) => {
            if (held.current === undefined) return;
            const now = angleAt(event);
            let moved = now - held.current;
            if (moved > Math.PI) moved -= 2 * Math.PI;
            if (moved < -Math.PI) moved += 2 * Math.PI;
            held.current = now;
            by((sense * -moved) / (2 * Math.PI));
          }}
          onPointerUp={() => {
            held.current = undefined;
          }}
          onWheel={(event) => {
            event.preventDefault();
            by(Math.sign(event.deltaY) * 0.005);
          }}
          onKeyDown={(event) => {
            const step = {
              ArrowRight: 0.01,
              ArrowUp: 0.01,
              ArrowLeft: -0.01,
              ArrowDown: -0.01,
              PageUp: 1,
              PageDown: -1,
            }[event.key];
            if (step === undefined) return;
            event.preventDefault();
            by(step);
          }}
        >
          <svg viewBox={`${-R - 20} ${-R - 30} ${2 * R + 40} ${2 * R + 50}`} aria-hidden="true">
            <circle r={R} class="rim" />
            <g transform={`rotate(${-sense * turns.value * 360})`}>
              {dial.rows.map((row, at) => (
                <g key={at}>
                  {row.map(({ angle, rank, label }) => (
                    <Mark key={angle} angle={sense * angle} rank={rank} label={label} outer={R - 3 - at * 40} />
                  ))}
                </g>
              ))}
            </g>
            <circle r="26" class="rim" />
            <path d={`M0 ${-R - 22}L-9 ${-R - 2}L9 ${-R - 2}Z`} class="index" />
          </svg>
        </div>
      )}
      <output class="standing">
        <b>{Math.floor(turns.value + 1e-9)}</b> turns
        {standing?.figure !== undefined && (
          <>
            , the dial shows <b>{standing.figure}</b> {dial?.unit}
            {standing.row !== undefined && `, row ${standing.row}`}
          </>
        )}
        <br />
        the slide has gone {standing?.travel ?? "–"}
      </output>
      <p>
        <label for="distance">Turn it to</label>{" "}
        <input
          id="distance"
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={distance.value}
          onInput={(event) => {
            distance.value = event.currentTarget.value;
          }}
        />
        <button
          type="button"
          onClick={() => {
            distance.value = "";
            turns.value = 0;
          }}
        >
          back to 0
        </button>
      </p>
      {distance.value !== "" && <p role="status">{told?.said.join("; ")}</p>}
    </section>
  );
}

type MarkProps = {
  readonly angle: number;
  readonly rank: 1 | 2 | 3;
  readonly label?: string | undefined;
  readonly outer: number;
  readonly key?: unknown;
};

/** Lengths and weights of marks as on paper: 5 : 3.5 : 2.5. */
function Mark({ angle, rank, label, outer }: MarkProps) {
  const length = { 1: 20, 2: 14, 3: 10 }[rank];
  return (
    <g transform={`rotate(${(angle * 180) / Math.PI})`}>
      <line y1={-outer} y2={-outer + length} class={`mark rank${rank}`} />
      {label !== undefined && (
        <text y={-outer + length + 14} text-anchor="middle">
          {label}
        </text>
      )}
    </g>
  );
}
