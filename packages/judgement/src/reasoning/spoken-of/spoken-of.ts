import type { Weighing } from "@good-grounds/core";
import type { Board, BondingConductor, Circuit, Installation, ResidualDevice, Thing } from "@good-grounds/inspection";

/** Where an observation is made and which parts it names, as in the file. */
export interface Place {
  readonly board?: string | undefined;
  readonly circuit?: string | undefined;
  /** Single bonding conductors, RCDs and listed things that it names by id. */
  readonly parts?: readonly Part[];
}

export interface Part {
  readonly id: string;
  /** The board of an RCD; that of the observation where left out. */
  readonly board?: string | undefined;
}

/** The things of an inspection that an observation speaks of. */
export interface SpokenOf {
  readonly installation: Installation;
  readonly weighing: Weighing;
  readonly place: Place;
  readonly board: Board | undefined;
  readonly circuit: Circuit | undefined;
  /**
   * The RCDs it may mean: those it names, else that of its circuit alone, else those of the board that serve its circuit,
   * else all of its board and of the board's circuits. Which of several is meant is not known.
   */
  readonly rcds: readonly ResidualDevice[];
  /** The bonding conductors it may mean: those it names, else all, where it names no board. */
  readonly bonds: readonly BondingConductor[];
  /** The things it names; a thing nobody named is not spoken of, however few there are. */
  readonly things: readonly Thing[];
}

/** What an observation speaks of, as far as its place and the parts it names tell. */
export function spokenOf(installation: Installation, weighing: Weighing, place: Place): SpokenOf {
  const { circuit: circuitId, board: boardId, parts = [] } = place;
  const board = installation.boards.find(({ id }) => id === boardId);
  const circuit = board?.circuits.find(({ id }) => id === circuitId);
  const namedRcds = parts.flatMap((part) => {
    const at = installation.boards.find(({ id }) => id === (part.board ?? boardId));
    return at?.rcds.filter(({ id }) => id === part.id) ?? [];
  });
  const namedBonds = installation.supply.bonding.filter(({ id }) => parts.some((part) => part.id === id));
  const rcdsThere = circuit !== undefined ? rcdsOfCircuit(circuit) : circuitId === undefined ? rcdsOfBoard(board) : [];
  const bondsThere = boardId === undefined ? installation.supply.bonding : [];
  return {
    installation,
    weighing,
    place,
    board,
    circuit,
    rcds: namedRcds.length > 0 ? namedRcds : rcdsThere,
    bonds: namedBonds.length > 0 ? namedBonds : bondsThere,
    things: parts.flatMap(({ id }) => installation.things.byId(id) ?? []),
  };
}

function rcdsOfCircuit({ board, residual }: Circuit): readonly ResidualDevice[] {
  const own = residual.devices.filter((rcd) => !board.rcds.includes(rcd));
  return own.length > 0 ? own : residual.devices;
}

function rcdsOfBoard(board: Board | undefined): readonly ResidualDevice[] {
  if (board === undefined) return [];
  const all = [...board.rcds, ...board.circuits.flatMap(({ residual }) => residual.devices)];
  return [...new Set(all)];
}
