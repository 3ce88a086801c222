import type { Explanation } from "../explanation.ts";
import { type AbsentSaid, absent } from "./absent.ts";
import {
  type ColumnsExchangedSaid,
  columnsExchanged,
  type DecimalSaid,
  decimalSlipped,
  type MisreadSaid,
  misread,
  type RowSaid,
  rowCopied,
  rowsExchanged,
} from "./as-written.ts";
import {
  type OffSaid,
  off,
  type SpurSaid,
  type SwappedSaid,
  spur,
  swapped,
  type TerminalSaid,
  terminal,
} from "./at-point.ts";
import {
  type OtherCpcSaid,
  type OtherLengthSaid,
  type OtherLineSaid,
  type OtherMetalSaid,
  otherCpc,
  otherLength,
  otherLine,
  otherMetal,
  type ParallelPathSaid,
  parallelPath,
} from "./conductors.ts";
import { type CrossedInLegSaid, type CrossedRingsSaid, crossedInLeg, crossedRings } from "./crossed.ts";
import { type InterconnectionSaid, interconnection } from "./interconnection.ts";
import { type JointSaid, joint } from "./joint.ts";
import { type LeadsSaid, leads } from "./leads.ts";
import { type OpenSaid, open } from "./open.ts";
import { type SameEndsSaid, sameEnds } from "./same-ends.ts";

/** What one fault of an explanation says, or something harmless, with its sizes in Ω or m. */
export type RingFaultSaid =
  | OpenSaid
  | AbsentSaid
  | JointSaid
  | InterconnectionSaid
  | CrossedInLegSaid
  | CrossedRingsSaid
  | LeadsSaid
  | SameEndsSaid
  | OtherCpcSaid
  | OtherLineSaid
  | OtherMetalSaid
  | OtherLengthSaid
  | ParallelPathSaid
  | SpurSaid
  | TerminalSaid
  | SwappedSaid
  | OffSaid
  | ColumnsExchangedSaid
  | DecimalSaid
  | MisreadSaid
  | RowSaid;

/** Every explanation of a ring's readings, in the order in which they are tried. */
export const EXPLANATIONS: readonly Explanation<RingFaultSaid>[] = [
  open,
  absent,
  crossedInLeg,
  crossedRings,
  joint,
  leads,
  sameEnds,
  interconnection,
  otherCpc,
  otherLine,
  parallelPath,
  otherMetal,
  otherLength,
  columnsExchanged,
  decimalSlipped,
  misread,
  rowCopied,
  rowsExchanged,
  spur,
  terminal,
  swapped,
  off,
];
