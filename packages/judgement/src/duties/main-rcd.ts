import { isKnownFact } from "@good-grounds/core";
import type { Board, Installation, ResidualDevice } from "@good-grounds/inspection";

/** Greatest rated residual operating current that counts, in amperes. */
const SENSITIVE = 0.03;

/**
 * Whether the main board holds at least one RCD of no more than 30 mA; of several boards at the origin, any of them. Not
 * known where boards, their RCDs or those of the circuits are not recorded, or a rating is not known.
 */
export function mainRcd({ boards, boardsListed }: Installation): boolean | undefined {
  const main = boards.filter(({ atOrigin }) => !isKnownFact(atOrigin) || atOrigin.word);
  const answers = main.map((board) => inBoard(board));
  // Where it is not recorded from where a board is fed, an RCD in it may be one of a sub-board.
  if (answers.some((answer, i) => answer === true && isOrigin(main[i]))) return true;
  const isOpen = !isKnownFact(boardsListed) || main.length === 0;
  return isOpen || answers.some((answer) => answer !== false) ? undefined : false;
}

function isOrigin(board: Board | undefined): boolean {
  return board !== undefined && isKnownFact(board.atOrigin) && board.atOrigin.word;
}

function inBoard(board: Board): boolean | undefined {
  const devices = [...board.rcds, ...board.circuits.flatMap(({ residual }) => residual.devices)];
  const answers = devices.map(isSensitive);
  if (answers.includes(true)) return true;
  const isKnown =
    isKnownFact(board.circuitsListed) &&
    board.circuits.every(({ residual: { present, unseen } }) => isKnownFact(present) && unseen === undefined) &&
    (isKnownFact(board.rcdsListed) || board.circuits.length > 0) &&
    !answers.includes(undefined);
  return isKnown ? false : undefined;
}

function isSensitive({ residual }: ResidualDevice): boolean | undefined {
  if (residual.kind === "not-known" || Number.isNaN(residual.high)) return undefined;
  if (residual.high <= SENSITIVE) return true;
  return residual.low > SENSITIVE ? false : undefined;
}
