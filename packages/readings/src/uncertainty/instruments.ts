import { isFault, parseWritten } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";

/**
 * How an instrument's percentage splits, as a part of its variance: half of it is taken to be the same part of every
 * reading on one range, half to be new with every reading. Makers do not say; neither end is taken for granted.
 */
export const COMMON_PART = 0.5;

/** What nulling the leads may leave, or what creeps in until the next nulling, Ω either way, where nothing was recorded. */
export const LEADS_LEFT = 0.02;

/** What the leads may have added to every reading since they were nulled last. */
export interface LeadsError {
  /** Readings with the same key carry the same error. */
  readonly key: string;
  /** Either way, in Ω. */
  readonly half: number;
  readonly recorded: boolean;
}

/** What is known of the instruments of a job, beyond the accuracy that every reading carries with it. */
export interface InstrumentTable {
  /** Part of the variance of an instrument's percentage that its readings on one range share, 0 to 1. */
  readonly commonPart: number;
  readonly leadsOf: (instrument: string | undefined, at: string | undefined) => LeadsError;
}

/** Readings that are given by hand: nothing is known of when leads were nulled. */
export const NO_INSTRUMENTS: InstrumentTable = Object.freeze({
  commonPart: COMMON_PART,
  leadsOf: (instrument: string | undefined) => unrecorded(instrument, ""),
});

interface Nulling {
  readonly at: number;
  /** What the display showed with the leads joined just before, Ω: what had crept in since the nulling before. */
  readonly crept: number | undefined;
}

/** The instruments of an inspection, with the nullings of their leads. */
export function instrumentTableOf(
  { instruments }: Pick<Installation, "instruments">,
  commonPart = COMMON_PART,
): InstrumentTable {
  if (!(commonPart >= 0 && commonPart <= 1)) throw new RangeError(`no part of a variance: ${commonPart}`);
  const nullings = new Map(
    instruments.map(({ id, leadsNulled }) => [id ?? "", (leadsNulled ?? []).map(nulling).sort((a, b) => a.at - b.at)]),
  );
  return Object.freeze({
    commonPart,
    leadsOf(instrument: string | undefined, at: string | undefined): LeadsError {
      const list = nullings.get(instrument ?? "") ?? [];
      if (list.length === 0) return unrecorded(instrument, "");
      // A reading without a time may have been taken after any of the nullings.
      if (at === undefined) return unrecorded(instrument, "?");
      const moment = Date.parse(at);
      const after = list.filter((one) => one.at <= moment).length;
      const crept = list[after]?.crept;
      return crept === undefined
        ? unrecorded(instrument, String(after))
        : { key: keyOf(instrument, String(after)), half: crept, recorded: true };
    },
  });
}

function nulling({ at, showed }: { readonly at: string; readonly showed?: string | undefined }): Nulling {
  const written = showed === undefined ? undefined : parseWritten(showed, "ohm");
  if (written === undefined || isFault(written)) return { at: Date.parse(at), crept: undefined };
  return { at: Date.parse(at), crept: Math.abs(written.value) + written.resolution / 2 };
}

function unrecorded(instrument: string | undefined, since: string): LeadsError {
  return { key: keyOf(instrument, since), half: LEADS_LEFT, recorded: false };
}

function keyOf(instrument: string | undefined, since: string): string {
  return `leads ${instrument ?? ""} ${since}`;
}
