import { crc32, inflateSync } from "node:zlib";

/** A picture read back: eight bits each of red, green, blue and opacity, as ours are. */
export type PngRead = {
  readonly width: number;
  readonly height: number;
  /** Pixels to the metre, across and down; undefined where the file does not say. */
  readonly perMetre: readonly [number, number] | undefined;
  /** 0 black to 255 white. */
  readonly grey: (x: number, y: number) => number;
};

/** Throws where the file is not whole: a wrong check number, no end. */
export function readPng(bytes: Uint8Array): PngRead {
  const file = Buffer.from(bytes);
  if (file.toString("latin1", 0, 8) !== "\x89PNG\r\n\x1a\n") throw new Error("no PNG");
  const parts: { kind: string; data: Buffer }[] = [];
  for (let at = 8; at < file.length; ) {
    const length = file.readUInt32BE(at);
    const end = at + 8 + length;
    if (crc32(file.subarray(at + 4, end)) !== file.readUInt32BE(end)) throw new Error("a check number is wrong");
    parts.push({ kind: file.toString("latin1", at + 4, at + 8), data: file.subarray(at + 8, end) });
    at = end + 4;
  }
  if (parts[0]?.kind !== "IHDR" || parts.at(-1)?.kind !== "IEND") throw new Error("not whole");
  const head = parts[0].data;
  const [width, height] = [head.readUInt32BE(0), head.readUInt32BE(4)];
  if (head[8] !== 8 || head[9] !== 6) throw new Error("not eight bits of four colours");
  const size = parts.find(({ kind }) => kind === "pHYs")?.data;
  const rows = inflateSync(Buffer.concat(parts.filter(({ kind }) => kind === "IDAT").map(({ data }) => data)));
  const pixels = unfiltered(rows, width * 4, height);
  return {
    width,
    height,
    perMetre: size && [size.readUInt32BE(0), size.readUInt32BE(4)],
    grey: (x, y) => {
      const at = (y * width + x) * 4;
      return ((pixels[at] ?? 255) + (pixels[at + 1] ?? 255) + (pixels[at + 2] ?? 255)) / 3;
    },
  };
}

/** Each row begins with how its bytes were told from those before and above (ISO 15948, 9.2). */
function unfiltered(rows: Buffer, stride: number, height: number): Uint8Array {
  const out = new Uint8Array(stride * height);
  for (let y = 0; y < height; y++) {
    const filter = rows[y * (stride + 1)];
    for (let x = 0; x < stride; x++) {
      const left = x < 4 ? 0 : (out[y * stride + x - 4] as number);
      const up = y === 0 ? 0 : (out[(y - 1) * stride + x] as number);
      const corner = x < 4 || y === 0 ? 0 : (out[(y - 1) * stride + x - 4] as number);
      const told = [0, left, up, (left + up) >> 1, paeth(left, up, corner)][filter as number] as number;
      out[y * stride + x] = (rows[y * (stride + 1) + 1 + x] as number) + told;
    }
  }
  return out;
}

function paeth(left: number, up: number, corner: number): number {
  const guess = left + up - corner;
  const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)];
  return a <= b && a <= c ? left : b <= c ? up : corner;
}
