import { deflate } from "pako";
import type { FontBytes } from "../../output/fonts.js";
import { answersWith } from "./answers.js";
import type { Ask, Reply } from "./protocol.js";

/** The first message: both weights in both kinds. */
export type Fonts = Readonly<Record<"ttf" | "woff", FontBytes>>;

type Port = {
  onmessage: ((event: { readonly data: { readonly fonts: Fonts } | Ask }) => void) | null;
  postMessage: (reply: Reply) => void;
};
const port = globalThis as unknown as Port;

let fonts: Fonts | undefined;
const answer = answersWith({
  fonts(kind) {
    if (fonts === undefined) throw new Error("no fonts were handed in");
    return fonts[kind];
  },
  deflate: (bytes) => deflate(bytes),
});

port.onmessage = async ({ data }) => {
  if ("fonts" in data) {
    fonts = data.fonts;
    return;
  }
  const { id, name, files, asked } = data;
  try {
    port.postMessage({ id, answer: await answer(name, files, asked) });
  } catch (fault) {
    port.postMessage({ id, fault: fault instanceof Error ? fault.message : String(fault) });
  }
};
