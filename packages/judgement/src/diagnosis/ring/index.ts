export {
  diagnoseRingReadings,
  type ReadingAndExpected,
  type RingDiagnosis,
  type RingExplanation,
  TOLD_APART,
} from "./diagnose.ts";
export { type CircuitRingDiagnosis, diagnoseRing } from "./from-circuit.ts";
export type { NextReading } from "./next-reading.ts";
export type { Banded, RingFault, RingPlace } from "./place.ts";
export type { RingInput, RingPointReadings, RingReading, Uncertain } from "./readings.ts";
export type { Asked, Conductor, Hypothesis, Pair } from "./ring-state.ts";
