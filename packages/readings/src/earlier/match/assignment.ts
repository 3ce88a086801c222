/** What speaks for one of the first kind going with one of the second; only weights above 0 are of use. */
export interface Edge {
  readonly row: number;
  readonly column: number;
  readonly weight: number;
}

/** Assignment of the greatest total weight, and how much every other one falls short of it. */
export interface Assignment {
  /** For each row its column, or −1 where it stays alone. */
  readonly columnOf: readonly number[];
  /** For edges near the best: how much weight the best assignment that uses the edge falls short of the best. */
  readonly excess: readonly (Edge & { readonly excess: number })[];
  /** For each row and column: how much the best assignment in which it stays alone falls short of the best. */
  readonly rowAlone: readonly number[];
  readonly columnAlone: readonly number[];
}

/**
 * One-to-one assignment of the greatest total weight where staying alone counts 0. Solved for each connected part on
 * its own by the Hungarian method (shortest augmenting paths, O(k³)); how far each other choice falls short follows from
 * the shortest ways round in the residual network. Where the best is not unique, some other choice falls short by 0.
 */
export function assign(rows: number, columns: number, edges: readonly Edge[]): Assignment {
  const columnOf = new Array<number>(rows).fill(-1);
  const rowAlone = new Array<number>(rows).fill(0);
  const columnAlone = new Array<number>(columns).fill(0);
  const excess: (Edge & { readonly excess: number })[] = [];
  for (const part of parts(
    rows,
    edges.filter(({ weight }) => weight > 0),
  )) {
    const solved = solve(part);
    for (const [i, row] of part.rows.entries()) {
      columnOf[row] = part.columns[solved.columnOf[i] as number] ?? -1;
      rowAlone[row] = solved.rowAlone[i] as number;
    }
    for (const [j, column] of part.columns.entries()) columnAlone[column] = solved.columnAlone[j] as number;
    for (const edge of part.edges) excess.push({ ...edge, excess: solved.excess(edge) });
  }
  return { columnOf, excess, rowAlone, columnAlone };
}

interface Part {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
  readonly edges: readonly Edge[];
}

/** Connected parts: what is assigned in one cannot bear on another. */
function parts(rows: number, edges: readonly Edge[]): Part[] {
  const owner = new Map<number, number>();
  const top = (node: number): number => {
    let root = node;
    while (owner.has(root)) root = owner.get(root) as number;
    if (root !== node) owner.set(node, root);
    return root;
  };
  for (const { row, column } of edges) {
    const [a, b] = [top(row), top(rows + column)];
    if (a !== b) owner.set(a, b);
  }
  const found = new Map<number, Edge[]>();
  for (const edge of edges) {
    const root = top(edge.row);
    const part = found.get(root);
    if (part === undefined) found.set(root, [edge]);
    else part.push(edge);
  }
  return [...found.values()].map((part) => ({
    rows: [...new Set(part.map(({ row }) => row))],
    columns: [...new Set(part.map(({ column }) => column))],
    edges: part,
  }));
}

/** More than any sum of weights. */
const NEVER = 1e9;

function solve({ rows, columns, edges }: Part) {
  // Square: row i may go with any of the places for being alone, which stand after the columns, and the other way round.
  const size = rows.length + columns.length;
  const cost = Array.from({ length: size }, (_, i) =>
    Float64Array.from({ length: size }, (_, j) => (i < rows.length && j < columns.length ? NEVER : 0)),
  );
  const rowAt = new Map(rows.map((row, i) => [row, i]));
  const columnAt = new Map(columns.map((column, j) => [column, j]));
  for (const { row, column, weight } of edges)
    (cost[rowAt.get(row) as number] as Float64Array)[columnAt.get(column) as number] = -weight;
  const { columnOf, u, v } = hungarian(cost);
  const reduced = (i: number, j: number) =>
    Math.max(0, ((cost[i] as Float64Array)[j] as number) - (u[i] as number) - (v[j] as number));
  const rowOf = new Array<number>(size).fill(0);
  for (const [i, j] of columnOf.entries()) rowOf[j] = i;
  // Places for being alone that stand for each other are one node: moving among them costs nothing.
  const spare = (i: number) => i >= rows.length && (columnOf[i] as number) >= columns.length;
  const nodes = Array.from({ length: size }, (_, i) => i).filter((i) => !spare(i));
  const rest = nodes.length;
  const firstSpare = Array.from({ length: size }, (_, i) => i).find(spare);
  if (firstSpare !== undefined) nodes.push(firstSpare);
  const nodeOf = new Array<number>(size).fill(rest);
  for (const [node, i] of nodes.entries()) nodeOf[i] = node;
  const ways = shortestWays(nodes.length, (a, b) =>
    reduced(nodes[a] as number, columnOf[nodes[b] as number] as number),
  );
  const way = (from: number, to: number) =>
    (ways[nodeOf[from] as number] as Float64Array)[nodeOf[to] as number] as number;
  const excess = (i: number, j: number) => (columnOf[i] === j ? 0 : reduced(i, j) + way(rowOf[j] as number, i));
  const least = (count: number, from: (k: number) => number) => {
    let best = Number.POSITIVE_INFINITY;
    for (let k = 0; k < count; k++) best = Math.min(best, from(k));
    return best;
  };
  return {
    columnOf,
    excess: ({ row, column }: Edge) => excess(rowAt.get(row) as number, columnAt.get(column) as number),
    rowAlone: rows.map((_, i) => least(size - columns.length, (k) => excess(i, columns.length + k))),
    columnAlone: columns.map((_, j) => least(size - rows.length, (k) => excess(rows.length + k, j))),
  };
}

/** Assignment of the least cost on a square, with the potentials of its proof. */
function hungarian(cost: readonly Float64Array[]) {
  const size = cost.length;
  const u = new Float64Array(size + 1);
  const v = new Float64Array(size + 1);
  const rowOf = new Int32Array(size + 1);
  for (let i = 1; i <= size; i++) {
    rowOf[0] = i;
    let at = 0;
    const least = new Float64Array(size + 1).fill(Number.POSITIVE_INFINITY);
    const before = new Int32Array(size + 1);
    const done = new Uint8Array(size + 1);
    do {
      done[at] = 1;
      const row = rowOf[at] as number;
      let [step, next] = [Number.POSITIVE_INFINITY, 0];
      for (let j = 1; j <= size; j++) {
        if (done[j] === 1) continue;
        const slack = ((cost[row - 1] as Float64Array)[j - 1] as number) - (u[row] as number) - (v[j] as number);
        if (slack < (least[j] as number)) {
          least[j] = slack;
          before[j] = at;
        }
        if ((least[j] as number) < step) [step, next] = [least[j] as number, j];
      }
      for (let j = 0; j <= size; j++) {
        if (done[j] === 1) {
          (u[rowOf[j] as number] as number) += step;
          (v[j] as number) -= step;
        } else (least[j] as number) -= step;
      }
      at = next;
    } while (rowOf[at] !== 0);
    for (; at !== 0; at = before[at] as number) rowOf[at] = rowOf[before[at] as number] as number;
  }
  const columnOf = new Array<number>(size).fill(0);
  for (let j = 1; j <= size; j++) columnOf[(rowOf[j] as number) - 1] = j - 1;
  return { columnOf, u: u.subarray(1), v: v.subarray(1) };
}

/** Shortest ways between all pairs where no step is below 0. */
function shortestWays(size: number, step: (from: number, to: number) => number): readonly Float64Array[] {
  const ways = Array.from({ length: size }, (_, i) =>
    Float64Array.from({ length: size }, (_, k) => (i === k ? 0 : step(i, k))),
  );
  for (const [over, onward] of ways.entries()) {
    for (const way of ways) {
      const first = way[over] as number;
      if (first >= NEVER / 2) continue;
      for (let k = 0; k < size; k++) {
        const sum = first + (onward[k] as number);
        if (sum < (way[k] as number)) way[k] = sum;
      }
    }
  }
  return ways;
}
