import { isFault, type LeadsSince, parseWritten } from "@good-grounds/core";

/** What is known of the leads at a moment of the job; undefined where nothing was recorded. */
export type Nullings = (at: string | undefined) => LeadsSince | undefined;

interface Nulling {
  readonly at: number;
  /** What the display showed with the leads joined just before, Ω: what had crept in since the nulling before. */
  readonly crept: number | undefined;
}

/** The recorded nullings of the leads of one instrument, by the moment of a reading. */
export function nullingsOf(
  recorded: readonly { readonly at: string; readonly showed?: string | undefined }[],
): Nullings {
  const list = recorded.map(nulling).sort((a, b) => a.at - b.at);
  return (at) => {
    if (list.length === 0) return undefined;
    // A reading without a time may have been taken after any of the nullings.
    if (at === undefined) return UNTIMED;
    const moment = Date.parse(at);
    const after = list.filter((one) => one.at <= moment).length;
    const crept = list[after]?.crept;
    return crept === undefined ? { since: String(after) } : { since: String(after), half: crept };
  };
}

const UNTIMED: LeadsSince = Object.freeze({ since: "?" });

function nulling({ at, showed }: { readonly at: string; readonly showed?: string | undefined }): Nulling {
  const written = showed === undefined ? undefined : parseWritten(showed, "ohm");
  if (written === undefined || isFault(written)) return { at: Date.parse(at), crept: undefined };
  return { at: Date.parse(at), crept: Math.abs(written.value) + written.resolution / 2 };
}
