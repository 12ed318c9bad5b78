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
