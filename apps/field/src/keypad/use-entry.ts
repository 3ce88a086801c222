import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import type { Value } from "../record/entry.ts";
import type { Record as JobRecord } from "../record/record.ts";
import { momentNow, newName, put, useSession } from "../shell/job.ts";
import { bringIntoView } from "./bring-into-view.ts";
import {
  type AnyField,
  type FieldGroup,
  fieldAfter,
  fieldBefore,
  fieldToStart,
  idOf,
  isReading,
  type ReadingField,
} from "./fields.ts";
import { KINDS, type Kind } from "./kinds.ts";
import { type Doubt, doubtAbout } from "./plausible.ts";
import { type NoValue, takenOf } from "./reading.ts";
import { rejecting } from "./rejected.ts";
import { changeAt, valueAt } from "./spot.ts";
import { pressed, readTyped, splitShown, type TextKey } from "./typed.ts";
import { useRecord } from "./use-record.ts";
import { useTop } from "./use-top.ts";

/** What is being typed into a field. */
export interface TypedText {
  readonly text: string;
  readonly symbol: string;
}

/** The way through a list of fields: which one is open, what is typed into it, what is wrong with it, where to go next. */
export function useEntry(
  groupsOf: (record: JobRecord) => readonly FieldGroup[],
  endId: string,
  instrument: string | undefined,
) {
  const session = useSession();
  const record = useRecord();
  const groups = groupsOf(record);
  const [openId, setOpenId] = useState<string>();
  const open = groups.flatMap(({ fields }) => fields).find((field) => idOf(field) === openId);
  const [typed, setTyped] = useState<TypedText>();
  const [fault, setFault] = useState<string>();
  const [doubt, setDoubt] = useState<{ readonly id: string; readonly about: Doubt }>();
  const [entered, setEntered] = useState<ReadingField>();
  const [sought, setSought] = useState<{ readonly id: string }>();
  const [top, keepTop] = useTop(open !== undefined && isReading(open) ? open.kind : undefined);
  const latest = useRef({ typed, open });
  latest.current = { typed, open };

  // The field sought may be drawn only now: a point that was added, live tests that were waiting. Who types on without
  // looking up types into it: the focus moves before the next key can come.
  useLayoutEffect(() => {
    if (sought === undefined) return;
    const found = document.getElementById(sought.id) ?? document.querySelector<HTMLElement>(".live-gate button");
    found?.focus({ preventScroll: true });
    found?.scrollIntoView({ block: "nearest" });
    bringIntoView(found);
  }, [sought]);
  // A phone may throw the tab away once it is in the background.
  useEffect(() => {
    const hidden = () => document.visibilityState === "hidden" && commit();
    document.addEventListener("visibilitychange", hidden);
    return () => document.removeEventListener("visibilitychange", hidden);
  });

  const write = (field: AnyField, value: Value) => {
    const isNew = valueAt(session.record, field.spot) === undefined;
    put(session, ...(isNew && isReading(field) ? (field.with ?? []) : []), changeAt(session.record, field.spot, value));
  };

  /** Writes a reading as it was shown; true where the person is asked about it. */
  const writeShown = (field: ReadingField, shown: string): boolean => {
    if (takenOf(valueAt(session.record, field.spot))?.shown === shown) return false;
    const by = session.person === "" ? {} : { by: session.person };
    const tool = instrument === undefined ? {} : { with: instrument };
    write(field, { shown, at: momentNow(), ...by, ...tool });
    setEntered(field);
    const about = doubtAbout(shown, field.usualOf ?? field.kind, field.expected, field.usual);
    setDoubt(about === undefined ? undefined : { id: idOf(field), about });
    return about !== undefined;
  };

  /** Takes what was typed. A fault stays to be put right; a value that is asked about is kept all the same. */
  const commit = (): "fault" | "asked" | "done" => {
    const { typed: now, open: field } = latest.current;
    if (now === undefined || field === undefined || !isReading(field)) return "done";
    const read = readTyped(now.text, now.symbol, field.kind, top);
    if ("fault" in read) {
      setFault(read.fault);
      return "fault";
    }
    latest.current.typed = undefined;
    setTyped(undefined);
    setFault(undefined);
    if ("shown" in read) return writeShown(field, read.shown) ? "asked" : "done";
    if (valueAt(session.record, field.spot) !== undefined) write(field, null);
    return "done";
  };

  const goTo = (id: string) => setSought({ id });

  /** On from a field to the next one that wants a value, as the record stands now. */
  const goOnFrom = (field: AnyField) => {
    const after = fieldAfter(session.record, groupsOf(session.record), field);
    goTo(after === undefined ? endId : idOf(after));
  };

  const shownOf = (field: ReadingField) => {
    const taken = takenOf(valueAt(session.record, field.spot));
    return taken === undefined ? undefined : splitShown(taken.shown, KINDS[field.kind]);
  };

  /** Opens a field with a text in it, which may be none. */
  const startAt = (field: ReadingField, text: TypedText | undefined) => {
    setDoubt(undefined);
    setFault(undefined);
    setOpenId(idOf(field));
    setTyped(text);
    goTo(idOf(field));
  };

  const symbolOf = (field: AnyField | undefined): string => {
    if (field === undefined || !isReading(field)) return "";
    return typed?.symbol ?? shownOf(field)?.symbol ?? KINDS[field.kind].symbols[0];
  };

  const before = open === undefined ? undefined : fieldBefore(groups, open);
  return {
    record,
    groups,
    open,
    typed,
    fault,
    doubt,
    entered,
    top,
    symbol: symbolOf(open),
    enter(field: AnyField) {
      if (idOf(field) === openId) return;
      setOpenId(idOf(field));
      setTyped(undefined);
      setFault(undefined);
    },
    leave() {
      commit();
    },
    type(text: string) {
      setTyped({ text, symbol: symbolOf(open) });
      setFault(undefined);
    },
    key(name: TextKey) {
      if (open === undefined || !isReading(open)) return;
      // Digits start afresh over what stands there; deleting takes it apart.
      const from = typed?.text ?? (name === "back" ? (shownOf(open)?.text ?? "") : "");
      setTyped({ text: pressed(from, name), symbol: symbolOf(open) });
      setFault(undefined);
    },
    changeUnit() {
      if (open === undefined || !isReading(open)) return;
      const { symbols }: Kind = KINDS[open.kind];
      const symbol = symbols[(symbols.indexOf(symbolOf(open)) + 1) % symbols.length] ?? "";
      setTyped({ text: typed?.text ?? shownOf(open)?.text ?? "", symbol });
    },
    over(end: string) {
      if (open === undefined || !isReading(open)) return;
      if (end !== top) keepTop(end);
      latest.current.typed = undefined;
      setTyped(undefined);
      setFault(undefined);
      writeShown(open, `>${end}`);
      goOnFrom(open);
    },
    next() {
      if (commit() !== "done") return;
      setDoubt(undefined);
      if (open !== undefined) return goOnFrom(open);
      const first = fieldToStart(session.record, groupsOf(session.record));
      goTo(first === undefined ? endId : idOf(first));
    },
    back: before === undefined ? undefined : () => commit() !== "fault" && goTo(idOf(before)),
    /** Takes a word; whoever goes through the words by the arrow keys stays among them. */
    choose(field: AnyField, word: string, stay: boolean) {
      put(session, changeAt(session.record, field.spot, word));
      if (!stay) goOnFrom(field);
    },
    /** What was asked about stays as it is. */
    keep(field: ReadingField) {
      setDoubt(undefined);
      goOnFrom(field);
    },
    /** The reading is rejected: its place is empty again, and the record keeps it with its time. */
    measureAgain(field: ReadingField) {
      put(session, ...rejecting(session.record, field.spot, newName("r"), momentNow(), session.person));
      startAt(field, undefined);
    },
    /** What was typed is in the field again, to be put right; it stands until something else is entered. */
    correct(field: ReadingField) {
      startAt(field, shownOf(field));
    },
    keepNoValue(value: NoValue | undefined) {
      if (open === undefined) return;
      const member = isReading(open) ? "notTaken" : "notKnown";
      write(open, value === undefined ? null : { [member]: value.kind, reason: value.reason });
      latest.current.typed = undefined;
      setTyped(undefined);
      setFault(undefined);
      setDoubt(undefined);
      if (value === undefined) goTo(idOf(open));
      else goOnFrom(open);
    },
    goTo,
  };
}

export type Entry = ReturnType<typeof useEntry>;
