import { unzlibSync } from "fflate";
import { deflate } from "pako";
import type { FontBytes } from "../../output/fonts.js";
import { woffToTrueType } from "../../output/woff.js";
import { answersWith } from "./answers.js";
import type { Ask, Files, Reply } from "./protocol.js";

type Message = { readonly fonts: FontBytes } | { readonly files: Files } | Ask;

const trueTypeOf = (font: Uint8Array): Uint8Array => woffToTrueType(font, (packed) => unzlibSync(packed));

type Port = {
  onmessage: ((event: { readonly data: Message }) => void) | null;
  postMessage: (reply: Reply) => void;
};
const port = globalThis as unknown as Port;

/** As they stand in the page; unpacked when they are first asked for. */
let woff: FontBytes | undefined;
let ttf: FontBytes | undefined;
let files: Files | undefined;
const answer = answersWith({
  fonts(kind) {
    if (woff === undefined) throw new Error("no fonts were handed in");
    if (kind === "woff") return woff;
    ttf ??= { regular: trueTypeOf(woff.regular), bold: trueTypeOf(woff.bold) };
    return ttf;
  },
  deflate: (bytes) => deflate(bytes),
});

port.onmessage = async ({ data }) => {
  if ("fonts" in data) {
    woff = data.fonts;
    return;
  }
  if ("files" in data) {
    files = data.files;
    return;
  }
  const { id, name, asked } = data;
  try {
    if (files === undefined) throw new Error("no files were handed in");
    port.postMessage({ id, answer: await answer(name, files, asked) });
  } catch (fault) {
    port.postMessage({ id, fault: fault instanceof Error ? fault.message : String(fault) });
  }
};
