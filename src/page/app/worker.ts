import { effect, type ReadonlySignal, signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import type { AnswerTo, Asked, Files, Reply, WorkName } from "../work/protocol.js";

export type Asker = {
  /** One answer, to what stands in the files now. */
  readonly ask: <N extends WorkName>(name: N, files: Files, asked: Asked<N>) => Promise<AnswerTo<N>>;
};

/** A worker whose code stands in the page. A worker that hangs is stopped and begun anew. */
export function askerOf(code: string, fonts: object): Asker {
  const url = URL.createObjectURL(new Blob([code], { type: "text/javascript" }));
  const waiting = new Map<number, { done: (answer: never) => void; failed: (fault: Error) => void }>();
  const worker = new Worker(url);
  worker.postMessage({ fonts });
  worker.onmessage = ({ data }: MessageEvent<Reply>) => {
    const one = waiting.get(data.id);
    waiting.delete(data.id);
    if ("fault" in data) one?.failed(new Error(data.fault));
    else one?.done(data.answer as never);
  };
  let last = 0;
  return {
    ask: (name, files, asked) =>
      new Promise((done, failed) => {
        const id = ++last;
        waiting.set(id, { done, failed });
        worker.postMessage({ id, name, files, asked });
      }),
  };
}

/** The newest answer to a question that changes: while one is on its way the next ones wait, and only the last of them is asked. */
export function newest<N extends WorkName>(
  { ask }: Asker,
  name: N,
  question: () => { readonly files: Files; readonly asked: Asked<N> } | undefined,
): { readonly answer: ReadonlySignal<AnswerTo<N> | undefined>; readonly stop: () => void } {
  const answer = signal<AnswerTo<N> | undefined>(undefined);
  let busy = false;
  let next: ReturnType<typeof question>;
  const go = async (): Promise<void> => {
    busy = true;
    while (next !== undefined) {
      const { files, asked } = next;
      next = undefined;
      try {
        answer.value = await ask(name, files, asked);
      } catch (fault) {
        console.error(fault);
      }
    }
    busy = false;
  };
  const stop = effect(() => {
    next = question();
    if (next !== undefined && !busy) void go();
  });
  return { answer, stop };
}

/** Ends questions when the view that asks them goes. */
export function useStopped(asking: Readonly<Record<string, { readonly stop: () => void }>>): void {
  useEffect(
    () => () => {
      for (const { stop } of Object.values(asking)) stop();
    },
    [asking],
  );
}
