import { continuityOf, type NotProved } from "@good-grounds/inspection/continuity";
import { join, membersOf } from "../record/document.ts";
import { type Entry, knewOf, type Value } from "../record/entry.ts";
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

/** Readings of the protective conductor of a circuit, dead. */
const OF_CONTINUITY = ["r1r2", "r2Only", "r2"];
const POINTS = "crossLineCpc";

/** Whether live tests of a circuit may begin, and what stands in the way. */
export interface LiveTests {
  readonly open: boolean;
  /** Why the protective conductor is not proved; undefined where it is. */
  readonly notProved: NotProved | undefined;
  /** The reason that was written to test live all the same. */
  readonly reason: string | undefined;
  /** Whether a reading that speaks against the conductor was taken after the reason was written. */
  readonly reasonIsOlder: boolean;
}

/**
 * Live tests of a circuit open on readings that prove its protective conductor, or on a reason somebody wrote who knew of
 * every reading that speaks against it. Where copies say different things every reading counts.
 */
export function liveTests(record: JobRecord, circuit: string): LiveTests {
  const entries = readingsOf(record, circuit);
  const said = continuityOf({
    shape: record.value(join(circuit, "shape")),
    cable: Object.fromEntries(CABLE.map((name) => [name, record.value(join(circuit, `cable/${name}`))])),
    readings: entries.map(({ name, entry }) => ({ name, value: entry.value })),
  });
  const [written, ...others] = record.standing(join(circuit, "liveBeforeContinuity"));
  const given = others.length === 0 && written?.value !== null ? written : undefined;
  const against = said.proved ? [] : (said.refuted ?? []).flatMap((i) => entries[i]?.entry ?? []);
  const reasonIsOlder = given !== undefined && against.some((entry) => !knewOf(given, entry));
  const { reason } = (given?.value ?? {}) as { readonly reason?: Value };
  return {
    open: said.proved || (given !== undefined && !reasonIsOlder),
    notProved: said.proved ? undefined : said.why,
    reason: given === undefined ? undefined : String(reason ?? ""),
    reasonIsOlder,
  };
}

const CABLE = ["material", "line", "cpc", "cpcArrangement", "length"];

/** Every reading of the protective conductor that stands, by its name in the file. */
function readingsOf(record: JobRecord, circuit: string): readonly { readonly name: string; readonly entry: Entry }[] {
  const readings = join(circuit, "readings");
  const points = join(readings, POINTS);
  return [
    ...OF_CONTINUITY.map((name) => ({ name, path: join(readings, name) })),
    ...membersOf(record, points).map((point) => ({ name: POINTS, path: join(points, `${point}/reading`) })),
  ].flatMap(({ name, path }) => record.standing(path).map((entry) => ({ name, entry })));
}

/** What a person is called. */
export function nameOf(record: JobRecord, person: string | undefined): string | undefined {
  const name = person === undefined || person === "" ? undefined : record.value(`people/${person}/name`);
  return typeof name === "string" ? name : undefined;
}
