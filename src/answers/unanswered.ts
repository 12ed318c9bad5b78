/** A question that has no answer as it is asked: what is wrong, and what would be right. */
export class Unanswered extends Error {
  constructor(
    what: string,
    /** Where it lies: in what the machine's file holds, or in how it was asked. */
    readonly about: "file" | "question" = "file",
  ) {
    super(what);
  }
}
