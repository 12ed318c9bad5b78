import type { Practising } from "./practising.js";
import { Tally } from "./Tally.js";

type PracticeProps = { readonly practising: Practising };

/** Which exercise it is, how far one is, and what is asked. */
export function Question({
  practising: { all, at, exercise, tryOf },
  english,
}: PracticeProps & { readonly english: boolean }) {
  if (exercise === undefined)
    return <p class="lacking">No exercises yet: they are made of a handwheel's feed, or of the belts.</p>;
  const uses = new Set(all.map(({ use }) => use));
  return (
    <section class="asked" aria-label="Exercise">
      <h2>
        Exercise {at + 1} of {all.length}
        {uses.size > 1 && <small> {exercise.use}</small>}
      </h2>
      <Tally
        at={at}
        marks={all.map((one) => {
          const { tried = false, counts = false } = tryOf(one);
          return { tried, right: counts };
        })}
      />
      <p class="question" id="question">
        {exercise.question}
      </p>
      {exercise.stands !== undefined && <p>{exercise.stands}</p>}
      {!english && <p class="about">Exercises are in the paper’s language; the page around them is English.</p>}
    </section>
  );
}

/** Where it is answered and marked. */
export function Answer({ practising }: PracticeProps) {
  const { all, at, exercise, now, tryOf, go, begin, mark, anew, solve } = practising;
  if (exercise === undefined) return null;
  return (
    <section class="answering" aria-label="Your answer">
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void mark();
        }}
      >
        <AnswerField practising={practising} />
        <p class="by">
          {exercise.by !== "nothing" && (
            <button type="submit" class="chief">
              mark it
            </button>
          )}
          <button type="button" onClick={() => void solve()}>
            show the answer
          </button>
          {exercise.wheel !== undefined && (
            <button type="button" onClick={begin}>
              begin again
            </button>
          )}
        </p>
      </form>
      <div role="status">
        {now.marked && (
          <p class="marked">
            {now.marked.right !== undefined && <b>{now.marked.right ? "✓ " : "✗ "}</b>}
            {now.marked.said}
          </p>
        )}
        {now.answer !== undefined && (
          <p>
            <b>Answer:</b> {now.answer}
          </p>
        )}
      </div>
      <p class="by">
        <button type="button" disabled={at === 0} onClick={() => go(at - 1)}>
          the one before
        </button>
        <button type="button" disabled={at + 1 >= all.length} onClick={() => go(at + 1)}>
          the next one
        </button>
        {all.some((one) => tryOf(one).tried) && (
          <button type="button" onClick={anew}>
            all anew
          </button>
        )}
      </p>
    </section>
  );
}

function AnswerField({ practising: { exercise, now, write } }: PracticeProps) {
  switch (exercise?.by) {
    case "turning":
      return <p class="about">Turn the dial of the {exercise.wheel}, always coming on from the same side.</p>;
    case "position":
      return (
        <p class="field">
          <label for="answer">Your answer</label>
          <select
            id="answer"
            aria-describedby="question"
            value={now.words}
            onChange={(event) => write(event.currentTarget.value)}
          >
            <option value="">–</option>
            {exercise.positions?.map((name) => (
              <option key={name}>{name}</option>
            ))}
          </select>
        </p>
      );
    case "number":
      return (
        <p class="field">
          <label for="answer">Your answer</label>
          <span class="typed">
            <input
              id="answer"
              type="text"
              autocomplete="off"
              aria-describedby="question"
              value={now.words}
              onInput={(event) => write(event.currentTarget.value)}
            />
            <span class="unit">{exercise.unit}</span>
          </span>
        </p>
      );
    default:
      return <p class="about">Say it aloud or write it down; then look at the answer.</p>;
  }
}
