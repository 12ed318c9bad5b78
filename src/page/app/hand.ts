import { strToU8, zipSync } from "fflate";
import type { Made } from "../work/protocol.js";

const types: Readonly<Record<string, string>> = {
  pdf: "application/pdf",
  svg: "image/svg+xml",
  dxf: "image/vnd.dxf",
  zip: "application/zip",
};

/** Puts files where the browser puts what is downloaded: several as one archive, since a browser lets a page hand over only a few. */
export function hand(files: readonly Made[], stem: string): void {
  const [only] = files;
  if (only === undefined) return;
  const { name, bytes } = files.length === 1 ? only : { name: `${stem}.zip`, bytes: archive(files) };
  const type = types[name.split(".").at(-1) ?? ""] ?? "text/plain";
  const url = URL.createObjectURL(new Blob([bytes as BlobPart], { type }));
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

const archive = (files: readonly Made[]): Uint8Array =>
  zipSync(
    Object.fromEntries(
      files.map(({ name, bytes }) => [withinFolder(name), typeof bytes === "string" ? strToU8(bytes) : bytes]),
    ),
  );

/** No name leads out of the folder that an archive is unpacked into. */
const withinFolder = (name: string): string =>
  name
    .split(/[/\\]/)
    .filter((step) => !/^(|\.|\.\.|[a-z]:)$/i.test(step))
    .join("/");
