/**
 * How long tests wait, in one place. The limits fit a machine four times slower than ours that is busy besides: they only
 * end what would never end. No test reads a clock to decide; what measures speed is in `bench/`.
 */
const MINUTE = 60_000;

/** A test, or what goes before or after its tests, in ms. */
export const TEST_LIMIT = 8 * MINUTE;

/** One thing awaited within a test, such as something shown on a page or a browser that starts, in ms. */
export const WAIT_LIMIT = 3 * MINUTE;
