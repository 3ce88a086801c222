export const NATIONS = ["england", "wales", "scotland", "northern-ireland"] as const;
export type Nation = (typeof NATIONS)[number];

export const PREMISES_USES = [
  "dwelling",
  "house-in-multiple-occupation",
  "shop",
  "office",
  "workshop",
  "agricultural",
  "industrial",
  "hotel",
  "public",
  "other",
] as const;
export type PremisesUse = (typeof PREMISES_USES)[number];

export const TENURES = ["owner-occupied", "private-rented", "social-rented", "commercial-lease", "other"] as const;
export type Tenure = (typeof TENURES)[number];

/** Editions of BS 7671 that a report may be made to. */
export const EDITIONS = ["2018+A2+A3", "2018+A4"] as const;
export type EditionId = (typeof EDITIONS)[number];

/** Classifications of an observation; `none` is an observation that needs no classification. */
export const CLASSIFICATIONS = ["C1", "C2", "C3", "FI", "none"] as const;
export type Classification = (typeof CLASSIFICATIONS)[number];
