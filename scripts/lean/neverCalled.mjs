/** In place of parts of pdf-lib that only a standard font or its own packing would call. */
export const FontNames = {};
export const Encodings = {};
export class Font {}
export default {};
