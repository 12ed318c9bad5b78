import { signal } from "@preact/signals";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { askerOf, newest } from "../../src/page/app/worker.js";
import type { Files } from "../../src/page/work/protocol.js";

/** A worker that answers every question at once, until it is handed files that it never comes to an end with. */
class Fake {
  static made: Fake[] = [];
  onmessage: ((event: { data: unknown }) => void) | null = null;
  private hangs = false;
  readonly asked: string[] = [];
  constructor() {
    Fake.made.push(this);
  }
  postMessage(message: { files?: Files; id?: number; name?: string }): void {
    if (message.files) this.hangs ||= message.files.machine.text.includes("endless");
    if (message.id === undefined) return;
    this.asked.push(message.name ?? "");
    const { id, name } = message;
    if (!this.hangs) setTimeout(() => this.onmessage?.({ data: { id, answer: name } }), 1);
  }
  terminate(): void {
    this.onmessage = null;
  }
}

const filesOf = (text: string): Files => ({ machine: { name: "l.yaml", text }, jobs: [], readings: [], sheets: [] });

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal("Worker", Fake);
  Fake.made = [];
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** What the page asks of files: what they say, and when nobody types what a sheet lacks. */
function page() {
  const asker = askerOf("", {});
  const files = signal(filesOf("sound"));
  const read = newest(asker, "read", () => ({ files: files.value, asked: {} }));
  const lacks = (of: Files) =>
    asker.ask("lacks", of, { sheet: "dial" }, "later").catch((fault: Error) => fault.message);
  const said = () => [...asker.troubles.value.values()].join(" ");
  return { asker, files, read, lacks, said };
}

test.each([0, 300, 1000, 1600, 4000, 9000])(
  "files that are never read are told as that, after ten seconds, where others like them came %i ms later",
  async (later) => {
    const { files, lacks, said } = page();
    await vi.advanceTimersByTimeAsync(100);
    files.value = filesOf("endless");
    const first = lacks(files.value);
    await vi.advanceTimersByTimeAsync(later);
    files.value = filesOf("endless still");
    const second = lacks(files.value);
    await vi.advanceTimersByTimeAsync(9500);
    expect(said()).toBe("");
    await vi.advanceTimersByTimeAsync(3000);
    expect(said()).toMatch(/^Working out what the files say took longer than 10 seconds and was stopped\./);
    expect(await second).toContain("took longer than 10 seconds");
    expect(typeof (await first)).toBe("string");
    files.value = filesOf("sound again");
    await vi.advanceTimersByTimeAsync(100);
    expect(said()).toBe("");
  },
);

test("what nobody waits for is given up with the files that it is about, and comes after what somebody does", async () => {
  const { files, read, lacks } = page();
  await vi.advanceTimersByTimeAsync(100);
  files.value = filesOf("endless");
  const old = lacks(files.value);
  await vi.advanceTimersByTimeAsync(500);
  files.value = filesOf("sound again");
  const fresh = lacks(files.value);
  await vi.advanceTimersByTimeAsync(2500);
  expect(read.answer.value).toBe("read");
  expect(await fresh).toBe("lacks");
  expect(await old).not.toBe("lacks");
  expect(Fake.made.at(-1)?.asked).toEqual(["read", "lacks"]);
});
