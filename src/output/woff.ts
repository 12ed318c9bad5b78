/** Unpacks a WOFF 1.0 file (W3C Recommendation "WOFF File Format 1.0", 2012, sections 3 to 5): every table is
 *  stored or deflated by itself; the result is the same font as a plain sfnt. Throws where it is no WOFF. */
export function woffToTrueType(woff: Uint8Array, inflate: (packed: Uint8Array) => Uint8Array): Uint8Array {
  const input = new DataView(woff.buffer, woff.byteOffset, woff.byteLength);
  if (input.getUint32(0) !== 0x774f4646) throw new Error("not a WOFF file");
  const count = input.getUint16(12);
  const output = new Uint8Array(input.getUint32(16));
  const view = new DataView(output.buffer);
  view.setUint32(0, input.getUint32(4));
  const power = Math.floor(Math.log2(count));
  view.setUint16(4, count);
  view.setUint16(6, 16 << power);
  view.setUint16(8, power);
  view.setUint16(10, (count << 4) - (16 << power));
  let offset = 12 + 16 * count;
  for (let table = 0; table < count; table++) {
    const entry = 44 + 20 * table;
    const [at, packed, length] = [4, 8, 12].map((field) => input.getUint32(entry + field)) as [number, number, number];
    const stored = woff.subarray(at, at + packed);
    output.set(packed < length ? inflate(stored) : stored, offset);
    const record = 12 + 16 * table;
    view.setUint32(record, input.getUint32(entry));
    view.setUint32(record + 4, input.getUint32(entry + 16));
    view.setUint32(record + 8, offset);
    view.setUint32(record + 12, length);
    offset += (length + 3) & ~3;
  }
  return output;
}
