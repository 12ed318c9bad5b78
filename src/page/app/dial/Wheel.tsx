import { useRef } from "preact/hooks";
import { BEFORE_ZERO } from "../../../student/marking.js";
import type { DialSeen } from "../../work/protocol.js";

const R = 200;

type WheelProps = {
  readonly name: string;
  readonly dial: DialSeen;
  readonly turns: number;
  /** How it stands, in words. */
  readonly told: string;
  readonly onTurn: (more: number) => void;
  /** To the next line, further on or back. */
  readonly onLine: (way: 1 | -1) => void;
};

/** The dial on its wheel, the index above it: turned by dragging, by keys or by the mouse's wheel. */
export function Wheel({ name, dial, turns, told, onTurn, onLine }: WheelProps) {
  const held = useRef<number | undefined>(undefined);
  const angleAt = (event: PointerEvent): number => {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    return Math.atan2(event.clientY - box.top - box.height / 2, event.clientX - box.left - box.width / 2);
  };
  const letGo = (): void => {
    held.current = undefined;
  };
  const keys: Readonly<Record<string, () => void>> = {
    ArrowRight: () => onLine(1),
    ArrowUp: () => onLine(1),
    ArrowLeft: () => onLine(-1),
    ArrowDown: () => onLine(-1),
    // Of its travel.
    Home: () => onTurn(-turns),
    End: () => onTurn((dial.end ?? turns) - turns),
    PageUp: () => onTurn(1),
    PageDown: () => onTurn(-1),
  };
  // Whoever turns it clockwise sees the numbers grow: so they stand on it the other way about.
  const sense = dial.increases === "clockwise" ? 1 : -1;
  return (
    <div
      class="dial"
      role="slider"
      tabIndex={0}
      aria-label={`Dial of the ${name}`}
      aria-valuenow={turns}
      aria-valuemin={-BEFORE_ZERO}
      {...(dial.end !== undefined && { "aria-valuemax": Math.max(dial.end, turns) })}
      aria-valuetext={told}
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
        onTurn((sense * moved) / (2 * Math.PI));
      }}
      onPointerUp={letGo}
      onPointerCancel={letGo}
      onWheel={(event) => {
        event.preventDefault();
        onTurn((Math.sign(event.deltaY) * dial.division) / 2);
      }}
      onKeyDown={(event) => {
        const key = keys[event.key];
        if (key === undefined) return;
        event.preventDefault();
        key();
      }}
    >
      <svg viewBox={`${-R - 20} ${-R - 30} ${2 * R + 40} ${2 * R + 50}`} aria-hidden="true">
        <circle r={R} class="rim" />
        <g transform={`rotate(${sense * turns * 360})`}>
          {dial.rows.map((row, at) => (
            <g key={at}>
              {row.map(({ angle, rank, label }) => (
                <Mark key={angle} angle={-sense * angle} rank={rank} label={label} outer={R - 3 - at * 40} />
              ))}
            </g>
          ))}
        </g>
        <circle r="26" class="rim" />
        <path d={`M0 ${-R - 2}L-9 ${-R - 22}L9 ${-R - 22}Z`} class="index" />
      </svg>
    </div>
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
