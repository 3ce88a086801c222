/** System earthing as seen at the origin. TN-C-S covers PME and PNB supplies. */
export const EARTHING_SYSTEMS = ["TN-S", "TN-C-S", "TT", "IT"] as const;
export type EarthingSystem = (typeof EARTHING_SYSTEMS)[number];

/** Sources of supply beside the distributor's network. */
export const OTHER_SOURCES = ["photovoltaic", "battery", "generator", "wind", "vehicle", "ups", "other"] as const;
export type OtherSource = (typeof OTHER_SOURCES)[number];
