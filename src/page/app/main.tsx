import { render } from "preact";
import type { Kept } from "../inside.js";
import { App } from "./App.js";
import { deskOf } from "./desk.js";
import { keepTries } from "./dial/keptTries.js";
import { bytesOf } from "./fonts.js";
import { keep, kept } from "./keep.js";
import { lastingAt } from "./lasting.js";
import { viewOf } from "./view.js";
import { askerOf } from "./worker.js";

const textIn = (id: string): string => document.getElementById(id)?.textContent ?? "";

/** A short name for a text, to keep what is typed apart for each file that a page brings. */
function keyFor(text: string): string {
  let hash = 5381;
  for (let at = 0; at < text.length; at++) hash = (Math.imul(hash, 33) ^ text.charCodeAt(at)) >>> 0;
  return `witnessmark ${hash.toString(36)} ${text.length}`;
}

async function start(): Promise<void> {
  const inside = textIn("inside");
  const key = keyFor(inside);
  const lasting = lastingAt(key);
  const brought = (JSON.parse(inside) ?? []) as Kept;
  const packed = JSON.parse(textIn("fonts")) as { regular: string; bold: string };
  const woff = { regular: bytesOf(packed.regular), bold: bytesOf(packed.bold) };
  for (const [weight, bytes] of [
    ["400", woff.regular],
    ["700", woff.bold],
  ] as const)
    document.fonts.add(new FontFace("witnessmark", bytes, { weight }));
  const asker = askerOf(textIn("yaml") + textIn("core"), woff);
  const last = await kept(key, lasting);
  const desk = deskOf(last.files ?? brought, asker);
  const keeping = keep(desk, key, brought, lasting, last);
  const view = viewOf(`${key} view`);
  keepTries(desk, key);
  const root = document.getElementById("root");
  if (root) render(<App desk={desk} keeping={keeping} view={view} />, root);
}

void start();
