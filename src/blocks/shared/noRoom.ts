/** Thrown by a block for which the paper is too small; the sheet then says so instead of being made. The message tells what has no room. */
export class NoRoom extends Error {
  /** `remedy`: what to do, where that is not to choose larger paper. */
  constructor(
    message: string,
    readonly remedy?: string,
  ) {
    super(message);
  }
}

/** Undefined where something has no room. */
export function unlessNoRoom<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch (fault) {
    if (!(fault instanceof NoRoom)) throw fault;
    return undefined;
  }
}
