import type { Cable, Circuit } from "./house.ts";

/** A kind of board by what protects its circuits. */
export type Family = "split" | "rcbo" | "rewirable" | "cartridge" | "old-breakers" | "bolted-fuses";

interface CableChoice {
  readonly line: number;
  readonly cpc: number;
  readonly kinds: readonly ("flat" | "singles" | "armoured" | "mineral")[];
  readonly methods: readonly (readonly string[])[];
}

/** What a kind of circuit is usually made of. */
export interface Recipe {
  readonly says: string;
  readonly load: string;
  readonly shape: Circuit["shape"];
  readonly sockets: boolean;
  /** Rated current of its device in each family that has it, A. */
  readonly amperes: { readonly [F in Family]?: readonly number[] };
  /** Part of the device's rated current that it carries. */
  readonly loaded: readonly [low: number, high: number];
  readonly cables: readonly CableChoice[];
  readonly metres: readonly [low: number, high: number];
  readonly points: readonly [least: number, most: number];
  /** How often a point of it is joined to metal pipes. */
  readonly pipes: number;
}

const WALL = [["C"], ["C", "102"], ["102"], ["100"]] as const;
const CLIPPED = [["C"]] as const;

const of = (
  line: number,
  cpc: number,
  methods: CableChoice["methods"] = CLIPPED,
  kinds: CableChoice["kinds"] = ["flat"],
) => ({ line, cpc, methods, kinds });

const all = (now: readonly number[], old: readonly number[]) => ({
  split: now,
  rcbo: now,
  "old-breakers": old,
  rewirable: old,
  cartridge: old,
  "bolted-fuses": now,
});

export const RECIPES = {
  ring: {
    says: "sockets",
    load: "socket-outlets",
    shape: "ring",
    sockets: true,
    amperes: all([32], [30]),
    loaded: [0.5, 0.7],
    cables: [
      of(2.5, 1.5, WALL),
      of(2.5, 1.5, WALL),
      of(2.5, 1.5, WALL),
      of(2.5, 2.5, [["B"]], ["singles"]),
      of(4, 1.5),
    ],
    metres: [25, 100],
    points: [5, 14],
    pipes: 0,
  },
  radialSockets: {
    says: "sockets, one room",
    load: "socket-outlets",
    shape: "radial",
    sockets: true,
    amperes: all([16, 20], [15]),
    loaded: [0.5, 0.8],
    cables: [of(2.5, 1.5), of(2.5, 1.5), of(2.5, 1.5), of(4, 1.5), of(2.5, 2.5, CLIPPED, ["mineral"])],
    metres: [8, 45],
    points: [2, 7],
    pipes: 0,
  },
  lighting: {
    says: "lights",
    load: "lighting",
    shape: "radial",
    sockets: false,
    amperes: all([6], [5]),
    loaded: [0.3, 0.8],
    cables: [of(1.5, 1, WALL), of(1.5, 1, WALL), of(1, 1, WALL), of(1.5, 1.5, [["B"]], ["singles"])],
    metres: [15, 70],
    points: [4, 14],
    pipes: 0,
  },
  cooker: {
    says: "cooker",
    load: "cooker",
    shape: "radial",
    sockets: false,
    amperes: all([32], [30]),
    loaded: [0.6, 0.95],
    cables: [of(6, 2.5), of(6, 2.5), of(10, 4)],
    metres: [5, 22],
    points: [1, 2],
    pipes: 0,
  },
  shower: {
    says: "shower",
    load: "shower",
    shape: "radial",
    sockets: false,
    amperes: { split: [40, 45], rcbo: [40, 45], "old-breakers": [45], rewirable: [45], cartridge: [45] },
    loaded: [0.85, 0.95],
    cables: [of(10, 4)],
    metres: [7, 25],
    points: [1, 1],
    pipes: 0.1,
  },
  immersion: {
    says: "immersion heater",
    load: "water-heater",
    shape: "radial",
    sockets: false,
    amperes: all([16], [15]),
    loaded: [0.8, 0.85],
    cables: [of(2.5, 1.5), of(2.5, 1.5), of(1.5, 1)],
    metres: [4, 22],
    points: [1, 1],
    pipes: 0.35,
  },
  boiler: {
    says: "boiler and heating controls",
    load: "heating",
    shape: "radial",
    sockets: false,
    amperes: all([6], [5]),
    loaded: [0.2, 0.4],
    cables: [of(1.5, 1, WALL), of(2.5, 1.5)],
    metres: [5, 25],
    points: [1, 2],
    pipes: 0.35,
  },
  alarms: {
    says: "smoke alarms",
    load: "alarm",
    shape: "radial",
    sockets: false,
    amperes: all([6], [5]),
    loaded: [0.02, 0.1],
    cables: [of(1.5, 1, WALL), of(1, 1, WALL)],
    metres: [10, 35],
    points: [2, 5],
    pipes: 0,
  },
  vehicle: {
    says: "vehicle charging point",
    load: "vehicle-charging",
    shape: "radial",
    sockets: false,
    amperes: { split: [32, 40], rcbo: [32, 40] },
    loaded: [0.8, 1],
    cables: [of(6, 6, [["C"]], ["armoured"]), of(10, 10, [["C"]], ["armoured"]), of(10, 4)],
    metres: [6, 35],
    points: [1, 1],
    pipes: 0,
  },
  feeder: {
    says: "to another board",
    load: "board",
    shape: "distribution",
    sockets: false,
    amperes: { split: [40, 50], rcbo: [40, 50], cartridge: [45], "bolted-fuses": [40] },
    loaded: [0.4, 0.7],
    cables: [of(10, 4), of(16, 6), of(10, 10, [["C"]], ["armoured"]), of(16, 16, [["C"]], ["armoured"])],
    metres: [6, 45],
    points: [1, 1],
    pipes: 0,
  },
} as const satisfies Readonly<Record<string, Recipe>>;

export type RecipeName = keyof typeof RECIPES;

/** What a flat cable, singles, an armoured or a mineral cable of these sizes is. */
export function cableOf(
  { line, cpc }: CableChoice,
  kind: CableChoice["kinds"][number],
  methods: readonly string[],
  cores: boolean,
): Cable {
  const made = { material: "copper", line, cpc, methods } as const;
  switch (kind) {
    case "flat":
      return { ...made, kind: "flat-twin-and-cpc", insulation: "70C-thermoplastic", arrangement: "in-cable" };
    case "singles":
      return { ...made, kind: "singles", insulation: "70C-thermoplastic", arrangement: "separate" };
    case "armoured":
      return { ...made, kind: "armoured", insulation: "90C-thermosetting", arrangement: cores ? "in-cable" : "armour" };
    case "mineral":
      return { ...made, kind: "mineral", insulation: "mineral-covered", arrangement: "sheath" };
  }
}
