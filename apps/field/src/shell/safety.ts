import { join, membersOf } from "../record/document.ts";
import type { Value } from "../record/entry.ts";
import type { Record as JobRecord } from "../record/record.ts";

const TIMES = "earthingOff";

/** Since when and by whom the earthing conductor has been disconnected. */
export interface EarthingOff {
  /** Places of the record to which its reconnection is written. */
  readonly open: readonly string[];
  readonly since: string | undefined;
  readonly by: string | undefined;
}

/**
 * The earthing conductor is off as long as any disconnection has no reconnection: in doubt, as where two copies say
 * different things, it counts as off.
 */
export function earthingOff(record: JobRecord): EarthingOff | undefined {
  const open = membersOf(record, TIMES)
    .map((name) => join(TIMES, name))
    .filter((path) => {
      const on = record.standing(join(path, "on"));
      return on.length === 0 || on.some(({ value }) => value === null);
    });
  const [first] = open;
  if (first === undefined) return undefined;
  const off = record.value(join(first, "off")) as { readonly at?: Value; readonly by?: Value } | undefined;
  return {
    open,
    since: typeof off?.at === "string" ? off.at : undefined,
    by: typeof off?.by === "string" ? off.by : undefined,
  };
}

/** Readings that prove the protective conductor of a circuit, dead. */
const PROOFS = ["r1r2", "r2Only", "r2"];

/** Whether the protective conductor of a circuit has been measured, its reading not beyond the range of the display. */
export function continuityProved(record: JobRecord, circuit: string): boolean {
  return PROOFS.some((name) => {
    const reading = record.value(join(circuit, `readings/${name}`)) as { readonly shown?: Value } | undefined;
    return typeof reading?.shown === "string" && !reading.shown.startsWith(">");
  });
}

/** Whether live tests of a circuit may begin: its protective conductor is proved, or somebody said why not. */
export function mayTestLive(record: JobRecord, circuit: string): boolean {
  return continuityProved(record, circuit) || record.value(join(circuit, "liveBeforeContinuity")) !== undefined;
}

/** What a person is called. */
export function nameOf(record: JobRecord, person: string | undefined): string | undefined {
  const name = person === undefined || person === "" ? undefined : record.value(`people/${person}/name`);
  return typeof name === "string" ? name : undefined;
}
