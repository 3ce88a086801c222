/** Constructions of cable as met in existing installations. */
export const CABLE_KINDS = [
  "flat-twin-and-cpc",
  "singles",
  "multicore",
  "armoured",
  "mineral",
  "rubber",
  "lead-sheathed",
  "flexible",
  "busbar",
] as const;
export type CableKind = (typeof CABLE_KINDS)[number];

/** Conductor insulation by the temperature it is made for. */
export const INSULATIONS = [
  "70C-thermoplastic",
  "90C-thermoplastic",
  "90C-thermosetting",
  "60C-rubber",
  "mineral-covered",
  "mineral-bare",
] as const;
export type Insulation = (typeof INSULATIONS)[number];

export const CONDUCTOR_MATERIALS = ["copper", "aluminium"] as const;
export type ConductorMaterial = (typeof CONDUCTOR_MATERIALS)[number];

/** What serves as protective conductor, which settles its factor k and its temperature. */
export const CPC_ARRANGEMENTS = ["in-cable", "separate", "armour", "sheath", "conduit", "none"] as const;
export type CpcArrangement = (typeof CPC_ARRANGEMENTS)[number];

/** Reference methods of installation (BS 7671 Appendix 4). */
export const REFERENCE_METHODS = ["A", "B", "C", "D", "E", "F", "100", "101", "102", "103"] as const;
export type ReferenceMethod = (typeof REFERENCE_METHODS)[number];

/** How grouped circuits lie together (Table 4C1). */
export const GROUPINGS = ["bunched", "single-layer-surface", "single-layer-tray", "single-layer-ladder"] as const;
export type Grouping = (typeof GROUPINGS)[number];

/** How the length of a cable was found. `unknown`: the figure was written down and nobody knows how it came about. */
export const LENGTH_FOUND = ["taped", "by-drawing", "estimated", "unknown"] as const;
export type LengthFound = (typeof LENGTH_FOUND)[number];
