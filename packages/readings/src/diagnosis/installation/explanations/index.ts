import type { CircuitFault } from "../fault.ts";
import { AS_WRITTEN } from "./as-written.ts";
import { CABLE } from "./cable.ts";
import { JOINTS } from "./joints.ts";
import { NONE_OF_THESE } from "./none.ts";
import { PATHS } from "./paths.ts";
import { RINGS } from "./rings.ts";
import { ROWS } from "./rows.ts";

/** The explanations of one circuit's readings that do not agree. Shares are a judgement of how often each is met. */
export const CIRCUIT_FAULTS: readonly CircuitFault[] = [
  ...JOINTS,
  ...CABLE,
  ...PATHS,
  ...AS_WRITTEN,
  ...ROWS,
  ...RINGS,
  NONE_OF_THESE,
];
