import type { Chance } from "../../examples/simulate/chance.ts";
import type { TrueBoard, TrueCircuit, TrueInstallation } from "../../examples/simulate/installation.ts";

/** Other people's words for the same circuit. */
const REWRITTEN: readonly (readonly [RegExp, readonly string[]])[] = [
  [/^sockets, (.*)$/, ["ring main $1", "$1 skts", "Power $1", "socket outlets $1", "S/O - $1"]],
  [/^lights, (.*)$/, ["$1 lighting", "Ltg $1", "lights $1", "Lightng $1"]],
  [/ground floor/, ["downstairs", "gf", "ground floor"]],
  [/first floor/, ["upstairs", "FF", "1st floor"]],
  [/second floor/, ["2nd floor", "second flr"]],
  [/loft/, ["attic", "loft"]],
  [/rear extension/, ["back extension", "ext"]],
  [/cooker/, ["oven", "hob & oven", "Cooker"]],
  [/immersion heater/, ["immersion", "IH", "hot water cylinder"]],
  [/boiler/, ["central heating", "Boiler"]],
  [/smoke alarms/, ["smoke detectors", "Smokes"]],
  [/car charger/, ["EV charger", "EVSE"]],
  [/garden shed/, ["shed", "outbuilding"]],
  [/feed to the second board/, ["sub main DB2", "distribution board 2"]],
];

export interface Altered {
  readonly house: TrueInstallation;
  /** For every present circuit, by its id, the ids it was before: one, none (new), or several (joined). */
  readonly was: ReadonlyMap<string, readonly string[]>;
}

/** The same house years on: every circuit reworded, all numbers shuffled, boards renamed, devices changed. */
export function renamed(house: TrueInstallation, chance: Chance): Altered {
  const was = new Map<string, readonly string[]>();
  const feeds = new Map<string, string>();
  const boards = house.boards.map((board, i): TrueBoard => {
    const order = board.circuits.map((circuit) => [chance.uniform(), circuit] as const).sort(([a], [b]) => a - b);
    const circuits = order.map(([, circuit], k): TrueCircuit => {
      const id = `n${i}x${k + 1}`;
      was.set(id, [circuit.id]);
      feeds.set(circuit.id, id);
      return { ...circuit, id, name: reworded(circuit.name, chance), device: newer(circuit.device, chance) };
    });
    return { ...board, id: `nb${i}`, name: ["DB A", "Distribution board B"][i] ?? `DB ${i}`, circuits };
  });
  return {
    was,
    house: {
      ...house,
      boards: boards.map((board) =>
        board.fedFrom === "supply"
          ? board
          : { ...board, fedFrom: { board: "nb0", circuit: feeds.get(board.fedFrom.circuit) ?? "" } },
      ),
    },
  };
}

/** The same house with charts that tell nothing: every circuit is called a circuit, and numbered anew. */
export function nameless(house: TrueInstallation, chance: Chance): Altered {
  const { house: later, was } = renamed(house, chance);
  const boards = later.boards.map((board) => ({
    ...board,
    circuits: board.circuits.map((circuit) => ({ ...circuit, name: "circuit" })),
  }));
  return { house: { ...later, boards }, was };
}

/** One fault put into one circuit of a house; the others are as they were. */
export function planted(house: TrueInstallation, fault: "joint" | "insulation", amount: number, chance: Chance) {
  const radials = house.boards.flatMap(({ circuits }) => circuits.filter(({ shape }) => shape === "radial"));
  const hit = radials[Math.floor(chance.uniform() * radials.length)];
  const change = fault === "joint" ? { joint: amount } : { insulation: amount };
  const boards = house.boards.map((board) => ({
    ...board,
    circuits: board.circuits.map((circuit) => (circuit === hit ? { ...circuit, ...change } : circuit)),
  }));
  return { house: { ...house, boards }, hit: hit?.id ?? "" };
}

/** Divides one ring into two radials that share its points and length between them. Null where the house has none. */
export function divided(house: TrueInstallation, chance: Chance): (Altered & { readonly whole: string }) | null {
  const rings = house.boards.flatMap(({ circuits }) =>
    circuits.filter(({ shape, points = 0 }) => shape === "ring" && points >= 4),
  );
  const ring = rings[Math.floor(chance.uniform() * rings.length)];
  if (ring === undefined) return null;
  const was = new Map<string, readonly string[]>();
  const part = chance.between(0.35, 0.65);
  const points = ring.points ?? 0;
  const first = Math.max(1, Math.min(points - 1, Math.round(points * part)));
  const { ringPoints: _, ...rest } = ring;
  const piece = (id: string, name: string, share: number, count: number): TrueCircuit => ({
    ...rest,
    id,
    name,
    shape: "radial",
    points: count,
    device: { ...ring.device, rated: 20 },
    cable: { ...ring.cable, length: Math.max(1, Math.round(ring.cable.length * share)) },
  });
  const boards = house.boards.map((board) => ({
    ...board,
    circuits: board.circuits.flatMap((circuit) => {
      if (circuit !== ring) {
        was.set(circuit.id, [circuit.id]);
        return [circuit];
      }
      const both = [
        piece(`${ring.id}a`, `${ring.name} front`, part, first),
        piece(`${ring.id}b`, `${ring.name} back`, 1 - part, points - first),
      ];
      for (const { id } of both) was.set(id, [ring.id]);
      return both;
    }),
  }));
  return { house: { ...house, boards }, was, whole: ring.id };
}

/** A house with one circuit more and one less. */
export function extended(house: TrueInstallation, chance: Chance): Altered {
  const was = new Map<string, readonly string[]>();
  const boards = house.boards.map((board, i) => {
    const gone = i === 0 ? Math.floor(chance.uniform() * board.circuits.length) : -1;
    const kept = board.circuits.filter((circuit, k) => k !== gone || circuit.shape === "distribution");
    for (const { id } of kept) was.set(id, [id]);
    if (i > 0) return { ...board, circuits: kept };
    was.set("new1", []);
    const added: TrueCircuit = {
      id: "new1",
      name: "sockets, garden room",
      shape: "radial",
      load: "socket-outlets",
      device: { standard: "BS EN 61009", type: "B", rated: 20, kiloamperes: 6 },
      rcd: "own",
      cable: {
        kind: "flat-twin-and-cpc",
        line: 2.5,
        cpc: 1.5,
        length: Math.round(chance.between(8, 40)),
        methods: ["C"],
      },
      points: Math.floor(chance.between(2, 8)),
    };
    return { ...board, circuits: [...kept, added] };
  });
  return { house: { ...house, boards }, was };
}

function reworded(name: string, chance: Chance): string {
  let words = name;
  for (const [pattern, others] of REWRITTEN) {
    const other = others[Math.floor(chance.uniform() * others.length)] ?? "$&";
    words = words.replace(pattern, other);
  }
  return words;
}

/** A new board often brings devices of another standard. */
function newer(device: TrueCircuit["device"], chance: Chance): TrueCircuit["device"] {
  return chance.uniform() < 0.5 ? device : { ...device, standard: "BS EN 61009" };
}
