import { AT_ORIGIN } from "./at-origin.ts";
import type { Fault } from "./fault.ts";
import { IN_CIRCUITS } from "./in-circuits.ts";
import { IN_DEVICES } from "./in-devices.ts";
import { IN_RINGS } from "./in-rings.ts";
import { IN_WRITING } from "./in-writing.ts";

/** Every kind of fault. */
export const FAULTS: readonly Fault[] = [...IN_CIRCUITS, ...IN_RINGS, ...AT_ORIGIN, ...IN_DEVICES, ...IN_WRITING];
