import type { Duty, Outcome } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { CONDITION } from "./conditions.ts";
import { type DutyEvidence, dutyEvidence } from "./evidence.ts";
import type { DutyRow, DutyTable } from "./row.ts";
import { STATUTES } from "./statutes/index.ts";
import { dutyTime } from "./time.ts";

/**
 * What the law is known here to ask of somebody because of this inspection, by nation, tenure, use, dates and classes;
 * apart from the technical outcome, of which only the chosen classes and what stands open are read. What rests on
 * something that is not known is there with what would have to be so. What is to be done at once comes first, then the
 * nearest date, last what has none. Reminders, not legal advice.
 */
export function dutiesOf(installation: Installation, outcome: Outcome): readonly Duty[] {
  const evidence = dutyEvidence(installation, outcome);
  const duties = STATUTES.flatMap((table) =>
    table.rows.flatMap((row) => {
      const duty = dutyOf(row, table, evidence);
      return duty === undefined ? [] : [duty];
    }),
  );
  return Object.freeze(duties.sort(byUrgency));
}

function dutyOf(row: DutyRow, { statute, edition }: DutyTable, evidence: DutyEvidence): Duty | undefined {
  if (row.since !== undefined && evidence.firstDay !== null && evidence.firstDay < row.since) return undefined;
  const answers = row.when.map((condition) => ({ condition, holds: CONDITION[condition](evidence) }));
  if (answers.some(({ holds }) => holds === false)) return undefined;
  return Object.freeze({
    id: row.id,
    statute,
    provision: row.provision,
    source: {
      work: `${statute.title} (${statute.number}), ${row.provision}`,
      edition,
      basis: row.basis,
      ...(row.doubt === undefined ? {} : { doubt: row.doubt }),
    },
    who: row.who,
    to: row.to ?? null,
    onlyIf: answers.filter(({ holds }) => holds === undefined).map(({ condition }) => condition),
    time: dutyTime(row.time, evidence),
  });
}

/** What presses: told at once, then what has a date, then what waits for an event, last what has none. */
function pressing({ time: { kind, day }, onlyIf }: Duty): number {
  if (kind === "at-once") return onlyIf.length === 0 ? 0 : 2;
  if (kind === "keep" || kind === "always" || kind === "undated") return 3;
  return day === null ? 2 : 1;
}

function byUrgency(a: Duty, b: Duty): number {
  return pressing(a) - pressing(b) || byDay(a.time.day ?? "", b.time.day ?? "") || a.onlyIf.length - b.onlyIf.length;
}

/** Days in the order of the calendar, which is that of their signs. */
function byDay(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
