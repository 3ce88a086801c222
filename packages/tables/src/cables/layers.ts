import type { Source } from "@good-grounds/core";
import { byKey } from "../by-key.ts";
import { source } from "../sources.ts";

/** Cables by construction, as far as their layers differ. */
export const CABLE_CONSTRUCTIONS = [
  "flat-twin-and-earth",
  "flat-three-core-and-earth",
  "single-insulated",
  "single-insulated-and-sheathed",
  "flexible-cord",
  "armoured-thermoplastic",
  "armoured-thermosetting",
  "mineral-bare",
  "mineral-covered",
  "fire-performance-screened",
  "rubber-braided",
  "rubber-tough-sheathed",
  "rubber-lead-sheathed",
  "split-concentric",
  "straight-concentric",
  "bare-cpc-sleeved",
] as const;
export type CableConstruction = (typeof CABLE_CONSTRUCTIONS)[number];

/** What a layer is there for. Bedding and filler shape the cable and are not relied on for anything else. */
export const LAYER_ROLES = [
  "conductor",
  "insulation",
  "bedding",
  "screen",
  "concentric",
  "armour",
  "sheath",
  "identification",
] as const;
export type LayerRole = (typeof LAYER_ROLES)[number];

/** A layer of a cable. */
export interface CableLayer {
  readonly role: LayerRole;
  readonly of: string;
  /** What it lies round: the live cores one by one, the protective conductor, or all together. */
  readonly around: "live cores" | "protective conductor" | "all";
  /** A metal tube rather than wires or a compound. */
  readonly tube?: boolean;
}

/** A cable as a stack of layers, from the conductor outwards. */
export interface LayeredCable {
  readonly construction: CableConstruction;
  readonly name: string;
  readonly shape: "flat" | "round";
  /** Number of insulated live cores inside; the concentric conductor is not counted. */
  readonly cores: number;
  /** A conductor without insulation of its own that lies bare once the layer over it is gone. */
  readonly bare: "none" | "protective" | "live";
  /** Whether the layers hold only while the outermost one is whole: mineral insulation draws damp. */
  readonly sealed: boolean;
  readonly layers: readonly CableLayer[];
  readonly source: Source;
}

const EDITION = "construction of cables in use";
const of = (work: string, doubt?: string) => source(work, EDITION, "memory", doubt === undefined ? {} : { doubt });

const layer = (role: LayerRole, made: string, around: CableLayer["around"] = "all"): CableLayer =>
  Object.freeze({ role, of: made, around });
const tube = (role: LayerRole): CableLayer =>
  Object.freeze({ role, of: "copper tube, also the protective conductor", around: "all", tube: true });
const wire = layer("conductor", "copper", "live cores");
const pvc = layer("insulation", "thermoplastic", "live cores");
const pvcSheath = layer("sheath", "thermoplastic");
const bareCpc = layer("conductor", "copper, bare", "protective conductor");
const sleeving = layer(
  "identification",
  "green-and-yellow sleeving where it leaves the sheath",
  "protective conductor",
);

interface Row extends Omit<LayeredCable, "construction" | "layers"> {
  readonly layers: readonly CableLayer[];
}

const CABLES: Readonly<Record<CableConstruction, Row>> = {
  "flat-twin-and-earth": {
    name: "flat twin and earth",
    shape: "flat",
    cores: 2,
    bare: "protective",
    sealed: false,
    layers: [wire, pvc, bareCpc, sleeving, pvcSheath],
    source: of("BS 6004, flat cable with bare cpc"),
  },
  "flat-three-core-and-earth": {
    name: "flat three-core and earth",
    shape: "flat",
    cores: 3,
    bare: "protective",
    sealed: false,
    layers: [wire, pvc, bareCpc, sleeving, pvcSheath],
    source: of("BS 6004, flat cable with bare cpc"),
  },
  "single-insulated": {
    name: "single-core, insulated only",
    shape: "round",
    cores: 1,
    bare: "none",
    sealed: false,
    layers: [wire, pvc],
    source: of("BS EN 50525-2-31, single-core non-sheathed"),
  },
  "single-insulated-and-sheathed": {
    name: "single-core, insulated and sheathed (meter tail)",
    shape: "round",
    cores: 1,
    bare: "none",
    sealed: false,
    layers: [wire, pvc, layer("sheath", "thermoplastic, mostly grey")],
    source: of("BS 6004, insulated and sheathed single"),
  },
  "flexible-cord": {
    name: "round flexible cord",
    shape: "round",
    cores: 2,
    bare: "none",
    sealed: false,
    layers: [
      layer("conductor", "stranded copper", "live cores"),
      pvc,
      layer("conductor", "stranded copper", "protective conductor"),
      layer("insulation", "thermoplastic, green-and-yellow", "protective conductor"),
      pvcSheath,
    ],
    source: of(
      "BS EN 50525-2-11, light and ordinary cords",
      "two cores and a protective core are taken as the usual case",
    ),
  },
  "armoured-thermoplastic": {
    name: "steel wire armoured, thermoplastic",
    shape: "round",
    cores: 2,
    bare: "none",
    sealed: false,
    layers: [
      wire,
      pvc,
      layer("bedding", "extruded thermoplastic"),
      layer("armour", "galvanised steel wires"),
      pvcSheath,
    ],
    source: of("BS 6346 (withdrawn), armoured thermoplastic"),
  },
  "armoured-thermosetting": {
    name: "steel wire armoured, thermosetting",
    shape: "round",
    cores: 2,
    bare: "none",
    sealed: false,
    layers: [
      wire,
      layer("insulation", "cross-linked polyethylene", "live cores"),
      layer("bedding", "extruded thermoplastic or low-smoke compound"),
      layer("armour", "galvanised steel wires"),
      layer("sheath", "thermoplastic or low-smoke compound"),
    ],
    source: of("BS 5467 and BS 6724, armoured thermosetting"),
  },
  "mineral-bare": {
    name: "mineral insulated, bare",
    shape: "round",
    cores: 2,
    bare: "none",
    sealed: true,
    layers: [wire, layer("insulation", "magnesium oxide powder, held by the metal sheath"), tube("sheath")],
    source: of("BS EN 60702-1, mineral insulated"),
  },
  "mineral-covered": {
    name: "mineral insulated, covered",
    shape: "round",
    cores: 2,
    bare: "none",
    sealed: true,
    layers: [
      wire,
      layer("insulation", "magnesium oxide powder, held by the metal sheath"),
      tube("armour"),
      layer("sheath", "thermoplastic or low-smoke covering"),
    ],
    source: of("BS EN 60702-1, mineral insulated with outer covering"),
  },
  "fire-performance-screened": {
    name: "fire-performance, screened",
    shape: "round",
    cores: 2,
    bare: "protective",
    sealed: false,
    layers: [
      wire,
      layer("insulation", "silicone rubber or mica with compound", "live cores"),
      bareCpc,
      layer("screen", "aluminium foil with a plastic face"),
      layer("sheath", "low-smoke compound"),
    ],
    source: of("BS 7629-1, screened cable that keeps working in fire"),
  },
  "rubber-braided": {
    name: "vulcanised rubber, taped and braided single",
    shape: "round",
    cores: 1,
    bare: "none",
    sealed: false,
    layers: [
      layer("conductor", "tinned copper", "live cores"),
      layer("insulation", "vulcanised rubber", "live cores"),
      layer("bedding", "cotton tape and compounded braid"),
    ],
    source: of("BS 7 (withdrawn), vulcanised rubber", "made until about 1960; braids were not relied on as a sheath"),
  },
  "rubber-tough-sheathed": {
    name: "tough rubber sheathed",
    shape: "flat",
    cores: 2,
    bare: "protective",
    sealed: false,
    layers: [
      layer("conductor", "tinned copper", "live cores"),
      layer("insulation", "vulcanised rubber", "live cores"),
      layer("conductor", "tinned copper, bare, where there is one", "protective conductor"),
      layer("sheath", "tough rubber"),
    ],
    source: of("BS 7 (withdrawn), tough rubber sheathed"),
  },
  "rubber-lead-sheathed": {
    name: "vulcanised rubber, lead sheathed",
    shape: "flat",
    cores: 2,
    bare: "none",
    sealed: false,
    layers: [
      layer("conductor", "tinned copper", "live cores"),
      layer("insulation", "vulcanised rubber", "live cores"),
      layer("sheath", "lead alloy, mostly also the protective conductor"),
    ],
    source: of("BS 7 (withdrawn), lead alloy sheathed"),
  },
  "split-concentric": {
    name: "split-concentric service cable",
    shape: "round",
    cores: 1,
    bare: "protective",
    sealed: false,
    layers: [
      wire,
      layer("insulation", "thermosetting", "live cores"),
      layer("concentric", "neutral wires covered one by one, and bare earth wires"),
      layer("sheath", "thermoplastic"),
    ],
    source: of("BS 7870-3, split concentric"),
  },
  "straight-concentric": {
    name: "straight concentric service cable",
    shape: "round",
    cores: 1,
    bare: "live",
    sealed: false,
    layers: [
      wire,
      layer("insulation", "thermosetting", "live cores"),
      layer("concentric", "bare wires: neutral, or neutral and earth combined"),
      layer("sheath", "thermoplastic"),
    ],
    source: of("BS 7870-3, straight concentric"),
  },
  "bare-cpc-sleeved": {
    name: "bare protective conductor with sleeving",
    shape: "round",
    cores: 0,
    bare: "protective",
    sealed: false,
    layers: [bareCpc, sleeving],
    source: of("BS 7671 514.4.2 and 543.3.201", "numbers remembered"),
  },
};

const ROWS: ReadonlyMap<CableConstruction, LayeredCable> = byKey(
  CABLE_CONSTRUCTIONS.map((construction) => {
    const row = CABLES[construction];
    return [construction, Object.freeze({ construction, ...row, layers: Object.freeze(row.layers) })] as const;
  }),
);

/** Every cable whose layers are carried here. */
export const LAYERED_CABLES: readonly LayeredCable[] = Object.freeze([...ROWS.values()]);

/** The layers of a cable from the conductor outwards. */
export function layersOf(construction: CableConstruction): LayeredCable {
  const row = ROWS.get(construction);
  if (row === undefined) throw new RangeError(`no layers for ${construction}`);
  return row;
}

/** What is left of a cable when everything outside its outermost remaining layer is gone. */
export interface LayersLeft {
  readonly layers: readonly CableLayer[];
  /** Live cores still have their insulation, and no live conductor lies bare. */
  readonly basicInsulation: boolean;
  /** A sheath or an armour still bears knocks; insulation, bedding and screens do not. */
  readonly mechanical: boolean;
}

/**
 * What is left of a cable that shows `outermost` as its outermost layer; undefined where the cable has no such layer.
 * Sleeving and other identification never count as insulation.
 */
export function layersLeft(cable: LayeredCable, outermost: LayerRole): LayersLeft | undefined {
  const at = cable.layers.findLastIndex(({ role }) => role === outermost);
  if (at < 0) return undefined;
  const layers = cable.layers.filter(({ role, around }, i) => {
    if (outermost === "conductor") return role === "conductor";
    return i <= at || (around !== "all" && role !== "identification");
  });
  const has = (role: LayerRole) => layers.some((one) => one.role === role);
  const insulated = layers.some(({ role, around }) => role === "insulation" && around !== "protective conductor");
  const mechanical = has("sheath") || has("armour");
  const powderOpen = cable.sealed && !mechanical;
  return Object.freeze({
    layers: Object.freeze(layers),
    basicInsulation: insulated && !powderOpen && !(cable.bare === "live" && !has("sheath")),
    mechanical,
  });
}
