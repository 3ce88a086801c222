/** Conductors above this size, mm², have a lower factor k where the table prints two. */
export const LARGE = 300;

/** A figure up to 300 mm² and above. */
export type BySize = readonly [upTo300: number, above300: number];

/** One figure for every size. */
export const uniform = (figure: number): BySize => [figure, figure];

/** The words for a place in a {@link BySize}. */
export const sizeWords = (size: number): string => `${size === 0 ? "up to" : "above"} ${LARGE} mm²`;
