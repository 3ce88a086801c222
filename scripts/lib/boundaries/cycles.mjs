/**
 * Import cycles in a graph of files: `graph` maps each file to its imports, `{ file, line }`.
 * Returns each knot once, as the shortest way round from its first file: a list of `{ from, line, to }`.
 */
export function cyclesIn(graph) {
  const reach = new Map([...graph.keys()].map((file) => [file, reachableFrom(graph, file)]));
  const done = new Set();
  const cycles = [];
  for (const file of [...graph.keys()].sort()) {
    if (done.has(file) || !reach.get(file).has(file)) continue;
    cycles.push(wayRound(graph, file));
    // Every file that reaches this one and is reached by it belongs to the same knot.
    for (const other of reach.get(file)) if (reach.get(other)?.has(file)) done.add(other);
  }
  return cycles;
}

function reachableFrom(graph, start) {
  const seen = new Set();
  const waiting = [start];
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    for (const edge of graph.get(file) ?? []) {
      if (seen.has(edge.file)) continue;
      seen.add(edge.file);
      waiting.push(edge.file);
    }
  }
  return seen;
}

function wayRound(graph, start) {
  const cameBy = new Map();
  const waiting = [start];
  for (let from = waiting.shift(); from !== undefined; from = waiting.shift()) {
    for (const { file: to, line } of graph.get(from) ?? []) {
      if (to === start) return [...wayTo(cameBy, start, from), { from, line, to }];
      if (cameBy.has(to)) continue;
      cameBy.set(to, { from, line, to });
      waiting.push(to);
    }
  }
  return [];
}

function wayTo(cameBy, start, file) {
  const steps = [];
  for (let at = file; at !== start; at = cameBy.get(at).from) steps.unshift(cameBy.get(at));
  return steps;
}
