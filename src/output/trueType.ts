/** What a PDF needs of a TrueType font that it shows by glyph number (ISO 32000-1, 9.9, table 126). */
const kept = ["glyf", "head", "hhea", "hmtx", "loca", "maxp"] as const;

export type Tables = ReadonlyMap<string, Uint8Array>;

/** A font with the outlines of these glyphs alone. Every glyph keeps its number, so that one table of letters
 *  (`glyphOrder.generated.ts`) serves every print. Only for fonts none of whose glyphs are made of others, as a test checks
 *  of ours. Source: OpenType specification, "OpenType font file", "loca", "glyf". */
export function subset(font: Uint8Array, glyphs: ReadonlySet<number>): Uint8Array {
  const tables = readTables(font);
  return writeTables(new Map([...tables, ...outlinesOf(tables, glyphs)]));
}

/** Outer box of all glyphs, font units: left, bottom, right, top. */
export function boundingBox(font: Uint8Array): [number, number, number, number] {
  const head = view(table(readTables(font), "head"));
  return [head.getInt16(36), head.getInt16(38), head.getInt16(40), head.getInt16(42)];
}

/** A font's tables by their names. */
export function readTables(font: Uint8Array): Tables {
  const data = view(font);
  return new Map(
    Array.from({ length: data.getUint16(4) }, (_, index): [string, Uint8Array] => {
      const record = 12 + 16 * index;
      const start = data.getUint32(record + 8);
      return [
        String.fromCharCode(...font.subarray(record, record + 4)),
        font.subarray(start, start + data.getUint32(record + 12)),
      ];
    }),
  );
}

/** What `glyf` says of one glyph; nothing of one that draws nothing. */
export function glyphBytes(tables: Tables, glyph: number): Uint8Array {
  const offset = offsets(tables);
  return table(tables, "glyf").subarray(offset(glyph), offset(glyph + 1));
}

/** Where each glyph begins in `glyf`. */
function offsets(tables: Tables): (glyph: number) => number {
  const loca = view(table(tables, "loca"));
  return isWide(tables) ? (glyph) => loca.getUint32(4 * glyph) : (glyph) => 2 * loca.getUint16(2 * glyph);
}
const isWide = (tables: Tables): boolean => view(table(tables, "head")).getInt16(50) === 1;

/** `glyf` without the other glyphs, and the `loca` that belongs to it. */
function outlinesOf(tables: Tables, glyphs: ReadonlySet<number>): Map<string, Uint8Array> {
  const [glyf, loca] = [table(tables, "glyf"), table(tables, "loca")];
  const wide = isWide(tables);
  const offset = offsets(tables);
  const count = loca.byteLength / (wide ? 4 : 2) - 1;
  const parts: Uint8Array[] = [];
  const places = view(new Uint8Array(loca.byteLength));
  let end = 0;
  for (let glyph = 0; glyph < count; glyph++) {
    if (glyphs.has(glyph)) {
      const part = glyf.subarray(offset(glyph), offset(glyph + 1));
      parts.push(part);
      end += part.length;
    }
    if (wide) places.setUint32(4 * (glyph + 1), end);
    else places.setUint16(2 * (glyph + 1), end / 2);
  }
  return new Map([
    ["glyf", joined(parts, end)],
    ["loca", new Uint8Array(places.buffer)],
  ]);
}

function writeTables(tables: Tables): Uint8Array {
  const power = Math.floor(Math.log2(kept.length));
  const head = new Uint8Array(12 + 16 * kept.length);
  const data = view(head);
  data.setUint32(0, 0x00010000);
  data.setUint16(4, kept.length);
  data.setUint16(6, 16 << power);
  data.setUint16(8, power);
  data.setUint16(10, (kept.length << 4) - (16 << power));
  const parts = [head];
  let at = head.length;
  for (const [index, name] of kept.entries()) {
    const bytes = table(tables, name);
    const padded = new Uint8Array((bytes.length + 3) & ~3);
    padded.set(bytes);
    const record = 12 + 16 * index;
    for (let letter = 0; letter < 4; letter++) head[record + letter] = name.charCodeAt(letter);
    data.setUint32(record + 4, checksum(padded));
    data.setUint32(record + 8, at);
    data.setUint32(record + 12, bytes.length);
    parts.push(padded);
    at += padded.length;
  }
  return joined(parts, at);
}

function checksum(padded: Uint8Array): number {
  const data = view(padded);
  let sum = 0;
  for (let at = 0; at < padded.length; at += 4) sum = (sum + data.getUint32(at)) >>> 0;
  return sum;
}

function joined(parts: readonly Uint8Array[], length: number): Uint8Array {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

function table(tables: Tables, name: string): Uint8Array {
  const found = tables.get(name);
  if (found === undefined) throw new Error(`the font has no table ${name}`);
  return found;
}

const view = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
