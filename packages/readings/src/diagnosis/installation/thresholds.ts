/** Natural logarithm of ten; odds are given as powers of ten. */
export const LOG_TEN = Math.LN10;

/** Odds, as a power of ten, from which a misfit is listed at all: 10 to 1. */
export const LISTED = 1;

/** The same for a ring, whose many readings at points make chance likelier: 30 to 1. */
export const RING_LISTED = 1.5;

/** Odds from which a misfit is shown unasked: 100 to 1. Set where sound circuits give fewer than one alarm in a hundred. */
export const CLEAR = 2;

/** Two explanations are told apart where one is this many times as likely as the other. */
export const TOLD_APART = 3;

/** No loop that tells anything has more, Ω. */
export const LARGEST_LOOP = 1e5;

/** An explanation by which nothing is wrong stands alone only where the others are this many times less likely. */
export const INNOCENT_ALONE = 30;
