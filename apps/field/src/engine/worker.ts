/** The engine: judging runs here, so that the screen never waits for it. */
export {};
