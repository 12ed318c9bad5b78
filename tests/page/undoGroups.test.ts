import { undo } from "@codemirror/commands";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { FileDocument } from "../../src/page/app/document.js";

const back = (document: FileDocument): string => {
  document.rest();
  undo({ state: document.state.peek(), dispatch: (transaction) => document.follow(transaction) });
  return document.text.peek();
};

beforeEach(() => vi.useFakeTimers({ toFake: ["performance", "Date"] }));
afterEach(() => vi.useRealTimers());

test("one undo takes back one field, also where the caret never left the form", () => {
  const document = new FileDocument("machine", "m.yaml", "a: 2\nb: 3\nc: 4\n");
  document.type("a: 2.\nb: 3\nc: 4\n", "a");
  document.type("a: 2.1\nb: 3\nc: 4\n", "a");
  document.type("a: 2.1\nb: 3.1\nc: 4\n", "b");
  document.type("a: 2.1\nb: 3.1\nc: 4.1\n", "c");
  expect(back(document)).toBe("a: 2.1\nb: 3.1\nc: 4\n");
  expect(back(document)).toBe("a: 2.1\nb: 3\nc: 4\n");
  expect(back(document)).toBe("a: 2\nb: 3\nc: 4\n");
});

test("in a field a pause of some seconds begins anew, a slow hand does not", () => {
  const document = new FileDocument("machine", "m.yaml", "a: 2\n");
  document.type("a: 2.\n", "a");
  vi.advanceTimersByTime(2000);
  document.type("a: 2.1\n", "a");
  vi.advanceTimersByTime(4000);
  document.type("a: 2.12\n", "a");
  vi.advanceTimersByTime(2000);
  document.type("a: 2.123\n", "a");
  expect(back(document)).toBe("a: 2.1\n");
  expect(back(document)).toBe("a: 2\n");
});
