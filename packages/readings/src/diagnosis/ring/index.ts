export type { Asked as RingAsked, Conductor as RingConductor, Pair as RingPair } from "./asked.ts";
export {
  diagnoseRingReadings,
  type ReadingAndExpected as RingReadingAndExpected,
  type RingDiagnosis,
  type RingExplanation,
  TOLD_APART as RINGS_TOLD_APART,
} from "./diagnose.ts";
export type { Banded as RingBand, RingPlace } from "./fault.ts";
export { type CircuitRingDiagnosis, diagnoseRing } from "./from-circuit.ts";
export { diagnoseRings, lookAtRings, type RingLook, type RingReadingBeside, type RingStory } from "./look.ts";
export type { NextReading as NextRingReading } from "./next-reading.ts";
export type { RingInput, RingPointReadings, RingReading, Uncertain as RingFigure } from "./readings.ts";
export type { RingFault } from "./said.ts";
