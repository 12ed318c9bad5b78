import type { Answered } from "../../work/protocol.js";
import type { Explaining } from "./Explain.js";

/** An answer: what the hand needs large, then the rest, then how it came about. */
export function Said({
  answer,
  explaining,
}: {
  readonly answer: Answered | undefined;
  readonly explaining: Explaining;
}) {
  const [first, ...others] = answer?.said ?? [];
  return (
    <div class="said" role="status">
      <p class="big">{first}</p>
      {others.map((words) => (
        <p key={words}>{words}</p>
      ))}
      {answer !== undefined && answer.working.length > 0 && (
        <details>
          <summary>how it came about</summary>
          {answer.working.map((words) => (
            <p key={words}>{words}</p>
          ))}
          {answer.from?.map(({ quantity, of }) => (
            <button type="button" class="working" key={quantity} onClick={() => explaining.show(quantity, of)}>
              {quantity} of {of}, worked out
            </button>
          ))}
        </details>
      )}
    </div>
  );
}
