import type { ReadingsSoFar } from "../work/protocol.js";

/** In hundredths of the plot's height: the line through all readings, and how far from it the largest leftover is drawn. */
const [LINE, REACH] = [48, 33];

/** What is left over of each reading beside the line through all of them. Places are hundredths of the plot, so that its letters are as
 *  large as all others however narrow it is. */
export function Leftover({ so }: { readonly so: ReadingsSoFar | undefined }) {
  if (so === undefined || so.places.length === 0) return <p class="so">Three readings make a line.</p>;
  const turns = so.places.map(({ turn }) => turn);
  const [from, to] = [Math.min(...turns), Math.max(...turns)];
  const most = Math.max(...so.places.flatMap(({ off, back = 0 }) => [Math.abs(off), Math.abs(back)]), 1e-6);
  const across = (turn: number) => ((turn - from) / (to - from || 1)) * 100;
  const x = (turn: number) => `${across(turn)}%`;
  const y = (off: number) => `${LINE - (off / most) * REACH}%`;
  return (
    <div class="so">
      <p role="status">
        {so.words.map((words) => (
          <span key={words}>{words.replace(/± /g, "±\u00a0").replace(/ ±$/, "\u00a0±")}</span>
        ))}
      </p>
      <svg role="img" aria-label="What each reading is off the line">
        <title>What each reading is off the line</title>
        <line x1="0" x2="100%" y1={y(0)} y2={y(0)} class="axis" />
        {so.places.map(({ row, turn, off, doubted, back }) => (
          <g key={row}>
            <line x1={x(turn)} x2={x(turn)} y1={y(0)} y2={y(off)} class="thin" />
            <circle cx={x(turn)} cy={y(off)} r={doubted ? 7 : 3} class={doubted ? "open" : "dot"} />
            {back !== undefined && <circle cx={x(turn)} cy={y(back)} r="7" class="open" />}
          </g>
        ))}
        <text x="0" y="1em">
          {so.most}
        </text>
        {numbered(turns, across).map((turn) => (
          <text key={turn} x={x(turn)} y="97%" text-anchor={turn === from ? "start" : turn === to ? "end" : "middle"}>
            {turn === from ? "turn " : ""}
            {Number(turn.toFixed(3))}
          </text>
        ))}
      </svg>
    </div>
  );
}

/** The widest number of a turn takes so much of the narrowest plot; the first one bears the word. */
const [APART, BEHIND_FIRST] = [22, 40];

/** The turns that are written under the plot: the first, the last, and those between for which there is room. */
function numbered(turns: readonly number[], across: (turn: number) => number): number[] {
  const all = [...new Set(turns)].sort((a, b) => a - b);
  const [first, last] = [all[0] ?? 0, all.at(-1) ?? 0];
  const shown = [first];
  for (const turn of all.slice(1, -1)) {
    const before = shown.at(-1) ?? first;
    const room = before === first ? BEHIND_FIRST : APART;
    if (across(turn) - across(before) >= room && 100 - across(turn) >= APART) shown.push(turn);
  }
  return last === first ? shown : [...shown, last];
}
