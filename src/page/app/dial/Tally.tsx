type TallyProps = {
  readonly marks: readonly { readonly tried: boolean; readonly right: boolean }[];
  readonly at: number;
};

/** How far one is, as on a rule: a long stroke for what was right, a short one for what was tried, a hair for what is still to do; the index
 *  stands at the exercise in hand. */
export function Tally({ marks, at }: TallyProps) {
  const right = marks.filter((one) => one.right).length;
  const tried = marks.filter((one) => one.tried || one.right).length;
  return (
    <p class="tally">
      <svg
        viewBox={`0 0 ${marks.length * 14 + 6} 34`}
        style={{ width: `${marks.length * 14 + 6}px` }}
        aria-hidden="true"
      >
        <line x1="0" x2={marks.length * 14 + 6} y1="12" y2="12" class="axis" />
        {marks.map(({ tried, right }, index) => {
          const x = 10 + index * 14;
          return (
            <line
              key={index}
              x1={x}
              x2={x}
              y1="12"
              y2={right ? 32 : tried ? 22 : 17}
              class={`mark ${right ? "done" : "rank3"}`}
            />
          );
        })}
        <path d={`M${10 + at * 14} 11l-5 -9h10Z`} class="index" />
      </svg>{" "}
      {right} right, {tried} tried
    </p>
  );
}
