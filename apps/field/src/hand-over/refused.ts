/**
 * Why a file is not taken for a copy of a job:
 * - `no-copy`: it is something else;
 * - `damaged`: it was one, and its content is not what was written;
 * - `not-whole`: something that its entries knew of is not in it;
 * - `newer`: a later version of the app wrote it;
 * - `too-large`: it is, or claims to unpack to, more than any job has.
 */
export type Reason = "no-copy" | "damaged" | "not-whole" | "newer" | "too-large";

/** A file is refused whole; nothing of it may be taken in. */
export class Refused extends Error {
  override name = "Refused";
  readonly reason: Reason;

  constructor(reason: Reason) {
    super(`the copy is refused: ${reason}`);
    this.reason = reason;
  }
}
