import type { Session } from "../record/session.ts";
import { momentNow, newName, put } from "../shell/job.ts";
import { type AnyField, idOf, isReading, type ReadingField } from "./fields.ts";
import type { NoValue } from "./reading.ts";
import { rejecting } from "./rejected.ts";
import { changeAt } from "./spot.ts";
import type { TypedText, Typing } from "./use-typing.ts";
import type { Writing } from "./use-writing.ts";

/** What the answers reach: the field that is open, what is typed into it, and the ways on from it. */
interface AtHand {
  readonly session: Session;
  readonly open: AnyField | undefined;
  /** Where the display ends, where that is known. */
  readonly top: string | undefined;
  readonly keepTop: (top: string) => void;
  readonly typing: Typing;
  readonly writing: Writing;
  readonly goTo: (id: string) => void;
  readonly goOnFrom: (field: AnyField) => void;
  /** Opens a field with a text in it, which may be none. */
  readonly startAt: (field: ReadingField, text: TypedText | undefined) => void;
}

/** What a field can be given otherwise than by typing a reading, and the answers to what is asked about one. */
export function answersOf({ session, open, typing, writing, goTo, goOnFrom, startAt, ...display }: AtHand) {
  return {
    /** The display was at its end. */
    over(end: string) {
      if (open === undefined || !isReading(open)) return;
      if (end !== display.top) display.keepTop(end);
      typing.drop();
      writing.writeShown(open, `>${end}`);
      goOnFrom(open);
    },
    /** Takes a word; whoever goes through the words by the arrow keys stays among them. */
    choose(field: AnyField, word: string, stay: boolean) {
      put(session, changeAt(session.record, field.spot, word));
      if (!stay) goOnFrom(field);
    },
    /** What was asked about stays as it is. */
    keep(field: ReadingField) {
      writing.askNothing();
      goOnFrom(field);
    },
    /** The reading is rejected: its place is empty again, and the record keeps it with its time. */
    measureAgain(field: ReadingField) {
      put(session, ...rejecting(session.record, field.spot, newName("r"), momentNow(), session.person));
      startAt(field, undefined);
    },
    /** What was typed is in the field again, to be put right; it stands until something else is entered. */
    correct(field: ReadingField) {
      startAt(field, typing.shownOf(field));
    },
    keepNoValue(value: NoValue | undefined) {
      if (open === undefined) return;
      const member = isReading(open) ? "notTaken" : "notKnown";
      writing.write(open, value === undefined ? null : { [member]: value.kind, reason: value.reason });
      typing.drop();
      writing.askNothing();
      if (value === undefined) goTo(idOf(open));
      else goOnFrom(open);
    },
  };
}
