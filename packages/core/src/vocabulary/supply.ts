/** System earthing as seen at the origin. TN-C-S covers PME and PNB supplies. */
export const EARTHING_SYSTEMS = ["TN-S", "TN-C-S", "TT", "IT"] as const;
export type EarthingSystem = (typeof EARTHING_SYSTEMS)[number];

/** Sources of supply beside the distributor's network. */
export const OTHER_SOURCES = ["photovoltaic", "battery", "generator", "wind", "vehicle", "ups", "other"] as const;
export type OtherSource = (typeof OTHER_SOURCES)[number];

/**
 * What a recorded prospective fault current of a three-phase supply is: measured line to neutral, line to line, or
 * already the three-phase value.
 */
export const FAULT_CURRENT_METHODS = ["line-neutral", "line-line", "three-phase"] as const;
export type FaultCurrentMethod = (typeof FAULT_CURRENT_METHODS)[number];
