/** A layer of a cable in section. */
export interface DrawnLayer {
  readonly role:
    | "conductor"
    | "insulation"
    | "bedding"
    | "screen"
    | "concentric"
    | "armour"
    | "sheath"
    | "identification";
  readonly of: string;
  readonly around: "live cores" | "protective conductor" | "all";
  /** A metal tube rather than wires or a compound. */
  readonly tube?: boolean;
  /** Gone over the length that is looked at: drawn as a broken outline. */
  readonly gone?: boolean;
}

/** A cable in section, its layers from the conductor outwards. */
export interface CableDrawing {
  readonly name: string;
  readonly shape: "flat" | "round";
  readonly cores: number;
  readonly layers: readonly DrawnLayer[];
}

/** A conductor with what lies round it alone; places from the middle of the cable. */
export interface SectionCore {
  readonly x: number;
  readonly y: number;
  readonly live: boolean;
  readonly conductor: number;
  readonly covered: number;
}

/** A layer round all cores by half the width and height of its outer edge, and how thick it is. */
export interface SectionRing {
  readonly layer: DrawnLayer;
  readonly wide: number;
  readonly high: number;
  readonly thick: number;
}

export interface CableSection {
  readonly cores: readonly SectionCore[];
  /** Inside first. */
  readonly rings: readonly SectionRing[];
}

const CONDUCTOR = 11;
const BARE = 7;
const COVER = 5;
const MOST_CORES = 5;

const THICKNESS: Readonly<Record<DrawnLayer["role"], number>> = {
  conductor: 0,
  insulation: 4,
  bedding: 4,
  screen: 2.5,
  concentric: 5.5,
  armour: 6,
  sheath: 5.5,
  identification: 0,
};

/** Where everything lies in a section of which nothing is further than `half` from the middle; small ones are enlarged up to `most`. */
export function cableSection(cable: CableDrawing, half: number, most: number): CableSection {
  const cores = placed(cable);
  const rings = ringed(cable, cores);
  const far = rings.at(-1)?.wide ?? Math.max(1, ...cores.map(({ x, y, covered }) => Math.hypot(x, y) + covered));
  const k = Math.min(most, half / far);
  return {
    cores: cores.map((core) => ({
      ...core,
      x: core.x * k,
      y: core.y * k,
      conductor: core.conductor * k,
      covered: core.covered * k,
    })),
    rings: rings.map((ring) => ({ ...ring, wide: ring.wide * k, high: ring.high * k, thick: ring.thick * k })),
  };
}

/** Cores side by side in a flat cable, else round the middle; the protective conductor in the middle or at the bottom. */
function placed(cable: CableDrawing): readonly SectionCore[] {
  const has = (role: DrawnLayer["role"], around: DrawnLayer["around"]) =>
    cable.layers.some((one) => one.role === role && one.around === around);
  const lives = Math.max(0, Math.min(MOST_CORES, Math.floor(cable.cores)));
  const all = lives + (has("conductor", "protective conductor") ? 1 : 0);
  const protective = lives === all ? -1 : cable.shape === "flat" ? Math.floor(all / 2) : Math.min(1, all - 1);
  const live: Omit<SectionCore, "x" | "y"> = {
    live: true,
    conductor: CONDUCTOR,
    covered: CONDUCTOR + (has("insulation", "live cores") ? COVER : 1),
  };
  const insulated = has("insulation", "protective conductor");
  const earth: Omit<SectionCore, "x" | "y"> = {
    live: false,
    conductor: insulated ? CONDUCTOR : BARE,
    covered: insulated ? CONDUCTOR + COVER : BARE + 2.5,
  };
  const own = live.covered + 1;
  const radius = all < 2 ? 0 : own / Math.sin(Math.PI / all);
  return Array.from({ length: all }, (_, i) => {
    const one = i === protective ? earth : live;
    if (cable.shape === "flat") return { ...one, x: (i - (all - 1) / 2) * 2 * own, y: 0 };
    const angle = (2 * Math.PI * i) / Math.max(1, all) - (all > 2 ? Math.PI / 2 - Math.PI / 3 : 0);
    return { ...one, x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
}

function ringed({ shape, layers }: CableDrawing, cores: readonly SectionCore[]): readonly SectionRing[] {
  const far = Math.max(CONDUCTOR, ...cores.map(({ x, y, covered }) => Math.hypot(x, y) + covered));
  let wide = far + 1.5;
  let high = shape === "flat" ? Math.max(CONDUCTOR, ...cores.map(({ covered }) => covered)) + 1.5 : wide;
  return layers
    .filter(({ around }) => around === "all")
    .map((layer) => {
      const thick = THICKNESS[layer.role];
      wide += thick;
      high += thick;
      return { layer, wide, high, thick };
    });
}
