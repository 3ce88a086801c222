import { useState } from "preact/hooks";
import type { Record as JobRecord } from "../record/record.ts";
import { useSession } from "../shell/job.ts";
import { answersOf } from "./answers.ts";
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
import { useCommit } from "./use-commit.ts";
import { useRecord } from "./use-record.ts";
import { useSought } from "./use-sought.ts";
import { useTop } from "./use-top.ts";
import { type TypedText, useTyping } from "./use-typing.ts";
import { useWriting } from "./use-writing.ts";

type GroupsOf = (record: JobRecord) => readonly FieldGroup[];

/** The way through a list of fields: which one is open, what is typed into it, what is wrong with it, where to go next. */
export function useEntry(groupsOf: GroupsOf, endId: string, instrument: string | undefined) {
  const session = useSession();
  const record = useRecord();
  const groups = groupsOf(record);
  const [openId, setOpenId] = useState<string>();
  const open = groups.flatMap(({ fields }) => fields).find((field) => idOf(field) === openId);
  const typing = useTyping(open);
  const writing = useWriting(instrument);
  const [top, keepTop] = useTop(open !== undefined && isReading(open) ? open.kind : undefined);
  const goTo = useSought();
  const commit = useCommit(typing, writing, top);

  const goToField = (field: AnyField | undefined) => goTo(field === undefined ? endId : idOf(field));
  /** On from a field to the next one that wants a value, as the record stands now. */
  const goOnFrom = (field: AnyField) => goToField(fieldAfter(session.record, groupsOf(session.record), field));
  const startAt = (field: ReadingField, text: TypedText | undefined) => {
    writing.askNothing();
    setOpenId(idOf(field));
    typing.show(text);
    goTo(idOf(field));
  };

  const before = open === undefined ? undefined : fieldBefore(groups, open);
  const { typed, fault, symbol, type, key, changeUnit } = typing;
  const { doubt, entered } = writing;
  return {
    record,
    groups,
    open,
    typed,
    fault,
    doubt,
    entered,
    top,
    symbol,
    type,
    key,
    changeUnit,
    goTo,
    ...answersOf({ session, open, top, keepTop, typing, writing, goTo, goOnFrom, startAt }),
    enter(field: AnyField) {
      if (idOf(field) === openId) return;
      setOpenId(idOf(field));
      typing.show(undefined);
    },
    leave() {
      commit();
    },
    next() {
      if (commit() !== "done") return;
      writing.askNothing();
      if (open !== undefined) return goOnFrom(open);
      goToField(fieldToStart(session.record, groupsOf(session.record)));
    },
    back: before === undefined ? undefined : () => commit() !== "fault" && goTo(idOf(before)),
  };
}

export type Entry = ReturnType<typeof useEntry>;
