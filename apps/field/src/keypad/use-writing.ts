import { useState } from "preact/hooks";
import type { Value } from "../record/entry.ts";
import { momentNow, put, useSession } from "../shell/job.ts";
import { type AnyField, idOf, isReading, type ReadingField } from "./fields.ts";
import { type Doubt, doubtAbout } from "./plausible.ts";
import { takenOf } from "./reading.ts";
import { changeAt, valueAt } from "./spot.ts";

/** Writes what fields were given, and asks about a reading that looks implausible. */
export function useWriting(instrument: string | undefined) {
  const session = useSession();
  const [doubt, setDoubt] = useState<{ readonly id: string; readonly about: Doubt }>();
  const [entered, setEntered] = useState<ReadingField>();

  const write = (field: AnyField, value: Value) => {
    const isNew = valueAt(session.record, field.spot) === undefined;
    put(session, ...(isNew && isReading(field) ? (field.with ?? []) : []), changeAt(session.record, field.spot, value));
  };

  return {
    /** What the person is asked about, and of which field. */
    doubt,
    /** The field that was given a reading last. */
    entered,
    write,
    /** Writes a reading as it was shown; true where the person is asked about it. */
    writeShown(field: ReadingField, shown: string): boolean {
      if (takenOf(valueAt(session.record, field.spot))?.shown === shown) return false;
      const by = session.person === "" ? {} : { by: session.person };
      const tool = instrument === undefined ? {} : { with: instrument };
      write(field, { shown, at: momentNow(), ...by, ...tool });
      setEntered(field);
      const about = doubtAbout(shown, field.usualOf ?? field.kind, field.expected, field.usual);
      setDoubt(about === undefined ? undefined : { id: idOf(field), about });
      return about !== undefined;
    },
    /** Nothing is asked about any more. */
    askNothing() {
      setDoubt(undefined);
    },
  };
}

export type Writing = ReturnType<typeof useWriting>;
