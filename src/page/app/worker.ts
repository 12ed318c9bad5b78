import { effect, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import type { AnswerTo, Ask, Asked, Files, Reply, WorkName } from "../work/protocol.js";
import { failedWords, Superseded, TookTooLong } from "./troubles.js";

export type Asker = {
  /** One answer, to what stands in the files now. "later": only when nothing else is asked. */
  readonly ask: <N extends WorkName>(
    name: N,
    files: Files,
    asked: Asked<N>,
    when?: "soon" | "later",
  ) => Promise<AnswerTo<N>>;
  /** The files are these now: what is still at work on others is soon given up. */
  readonly moved: (files: Files) => void;
  /** What went wrong with a question, in words, until it is answered again. */
  readonly troubles: Signal<ReadonlyMap<string, string>>;
};

/** How long a question may take, ms: the files of a whole binder take seconds on a telephone, and what nobody waits for stands in
 *  the way of what somebody does. */
const patience = (name: WorkName): number => ({ print: 60_000, lacks: 5000 })[name as string] ?? 10_000;
/** How long one may still take once the files that it is about have changed, ms. */
const OUTDATED = 1500;
/** An answer that came while the page itself was busy, or the computer asleep, is let in first, ms. */
const GRACE = 200;

type Waiting = Ask & {
  readonly files: Files;
  readonly done: (answer: never) => void;
  readonly failed: (fault: Error) => void;
};

/** A worker whose code stands in the page. It answers in the order in which it is asked; one that hangs is stopped and begun anew,
 *  and is asked again what it had not come to. */
export function askerOf(code: string, fonts: object): Asker {
  const url = URL.createObjectURL(new Blob([code], { type: "text/javascript" }));
  const waiting = new Map<number, Waiting>();
  const later: Waiting[] = [];
  let last = 0;
  let since = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** What the worker holds, what it has answered about, what it did not come to an end with, and what stands in the page. */
  let [sent, known, stuck, current]: (Files | undefined)[] = [];
  /** What the worker failed on before it was asked anything: the first who asks is told. */
  let early: Error | undefined;
  let worker = begun();

  function begun(): Worker {
    const one = new Worker(url);
    sent = undefined;
    one.postMessage({ fonts });
    one.onmessage = ({ data }: MessageEvent<Reply>) => took(data);
    one.onerror = (event) => {
      event.preventDefault();
      const [head] = waiting.values();
      const fault = new Error(event.message);
      if (head) anew([head], fault);
      else early = fault;
    };
    return one;
  }
  function post(one: Waiting): void {
    const { id, name, asked, files } = one;
    if (files !== sent) worker.postMessage({ files });
    sent = files;
    worker.postMessage({ id, name, asked });
  }
  function took(reply: Reply): void {
    const one = waiting.get(reply.id);
    if (one === undefined) return;
    waiting.delete(reply.id);
    known = one.files;
    if ("fault" in reply) one.failed(new Error(reply.fault));
    else one.done(reply.answer as never);
    since = performance.now();
    goOn();
  }
  function goOn(): void {
    const next = waiting.size === 0 ? later.shift() : undefined;
    if (next) take(next);
    else watch();
  }
  function take(one: Waiting): void {
    if (waiting.size === 0) since = performance.now();
    waiting.set(one.id, one);
    if (early !== undefined) {
      anew([one], early);
      return;
    }
    post(one);
    watch();
  }
  function watch(): void {
    clearTimeout(timer);
    const [head] = waiting.values();
    if (head === undefined) return;
    const outdated = head.files !== current && head.name !== "print";
    // Where nothing was answered yet about these files, reading them is what takes so long: whatever else is asked would as well.
    const reading = head.files !== known;
    const work = reading && head.name !== "print" ? "read" : head.name;
    const left = since + (outdated ? OUTDATED : patience(work)) - performance.now();
    timer = setTimeout(() => {
      timer = setTimeout(() => {
        if (reading && !outdated) stuck = head.files;
        const too = (one: Waiting) => one === head || (reading && one.files === head.files);
        const all = [...waiting.values(), ...later.splice(0)];
        later.push(...all.filter((one) => !waiting.has(one.id) && !too(one)));
        anew(all.filter(too), outdated ? new Superseded() : new TookTooLong(work, patience(work)));
      }, GRACE);
    }, left);
  }
  function anew(failing: readonly Waiting[], fault: Error): void {
    worker.terminate();
    early = undefined;
    worker = begun();
    since = performance.now();
    for (const one of failing) {
      waiting.delete(one.id);
      one.failed(fault);
    }
    for (const one of waiting.values()) post(one);
    watch();
    // What was given up is soon asked again of other files; only then comes what nobody waits for.
    setTimeout(goOn);
  }

  return {
    troubles: signal(new Map()),
    moved(files) {
      if (current === files) return;
      current = files;
      for (const one of later.splice(0))
        if (one.files === files) later.push(one);
        else one.failed(new Superseded());
      watch();
    },
    ask: (name, files, asked, when = "soon") =>
      new Promise((done, failed) => {
        if (files === stuck) {
          failed(new TookTooLong("read", patience("read")));
          return;
        }
        const one = { id: ++last, name, files, asked, done, failed };
        if (when === "soon") take(one);
        else {
          later.push(one);
          goOn();
        }
      }),
  };
}

/** The newest answer to a question that changes: while one is on its way the next ones wait, and only the last of them is asked.
 *  One that failed has none, and the page says why. */
export function newest<N extends WorkName>(
  asker: Asker,
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
        answer.value = await asker.ask(name, files, asked);
        tell(asker, name, undefined);
      } catch (fault) {
        if (fault instanceof Superseded) continue;
        answer.value = undefined;
        tell(asker, name, failedWords(name, fault));
      }
    }
    busy = false;
  };
  const stop = effect(() => {
    next = question();
    if (next !== undefined) asker.moved(next.files);
    if (next !== undefined && !busy) void go();
  });
  return {
    answer,
    stop() {
      stop();
      tell(asker, name, undefined);
    },
  };
}

function tell({ troubles }: Asker, name: WorkName, words: string | undefined): void {
  const now = troubles.peek();
  if (now.get(name) === words) return;
  const others = [...now].filter(([one]) => one !== name);
  troubles.value = new Map(words === undefined ? others : [...others, [name, words]]);
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
