import type { Figure, Row } from "./rows.ts";

/** Circuits of a board it takes to tell what all of its readings are out by, and the part of them that has to bear it out. */
const ENOUGH = 4;
const MOST_OF_THEM = 0.75;
/** Less than this either way, in Ω, is what nulling and contacts leave, and the cables' own doubt covers it. */
const LEAST_DEAD = 0.06;
const LEAST_LIVE = 0.1;
/** How near to the common amount a circuit's has to lie: Ω, and a part of what its cable or its reading comes to. */
const NEAR = 0.03;
const NEAR_PART = 0.06;

/**
 * The rows of a job without what every circuit of a board is out by: leads that were not nulled, or nulled away too much, in the dead tests, and
 * whatever lies between the place where the loop was read and the circuits (an earthing conductor that was off, a joint).
 * Either makes readings fit the cables of other rows by chance, and is no matter of rows or decimal points.
 */
export function withoutCommonOffsets(rows: readonly Row[]): readonly Row[] {
  const boards = new Map<number, Row[]>();
  for (const row of rows) boards.set(row.board, [...(boards.get(row.board) ?? []), row]);
  const offsets = new Map([...boards].map(([board, here]) => [board, offsetsOf(here)]));
  return rows.map((row) => {
    const { dead, live } = offsets.get(row.board) ?? { dead: 0, live: 0 };
    return dead === 0 && live === 0 ? row : without(row, dead, live);
  });
}

function offsetsOf(rows: readonly Row[]): { readonly dead: number; readonly live: number } {
  const dead: Amount[] = [];
  const live: Amount[] = [];
  for (const { r1r2, zs, before, cable, ring } of rows) {
    if (cable === undefined) continue;
    const far = (cable.line + cable.cpc) * (ring ? 1 / 4 : 1);
    if (r1r2 !== undefined) dead.push({ off: r1r2.value - far, size: far });
    if (zs !== undefined && before !== undefined)
      live.push({ off: zs.value - before.value - far, size: Math.max(far, zs.value) });
  }
  return { dead: common(dead, LEAST_DEAD), live: common(live, LEAST_LIVE) };
}

interface Amount {
  readonly off: number;
  readonly size: number;
}

/** What most circuits are out by alike; nought where they are not. */
function common(amounts: readonly Amount[], least: number): number {
  if (amounts.length < ENOUGH) return 0;
  const sorted = amounts.map(({ off }) => off).sort((a, b) => a - b);
  const middle = sorted[sorted.length >> 1] ?? 0;
  if (!(Math.abs(middle) >= least)) return 0;
  const near = amounts.filter(({ off, size }) => Math.abs(off - middle) <= NEAR + NEAR_PART * size);
  return near.length >= MOST_OF_THEM * amounts.length ? middle : 0;
}

function without(row: Row, dead: number, live: number): Row {
  const less = (figure: Figure | undefined): Figure | undefined =>
    figure === undefined ? undefined : { ...figure, value: figure.value - dead };
  const { before } = row;
  return {
    ...row,
    r1: less(row.r1),
    rn: less(row.rn),
    r2: less(row.r2),
    crossLineNeutral: row.crossLineNeutral.map((one) => ({ ...one, value: one.value - dead })),
    crossLineCpc: row.crossLineCpc.map((one) => ({ ...one, value: one.value - dead })),
    r1r2: less(row.r1r2),
    before: before === undefined ? undefined : { ...before, value: Math.max(before.resolution, before.value + live) },
  };
}
