import type { ComponentChildren } from "preact";
import { useRef, useState } from "preact/hooks";
import type { Record as JobRecord } from "../record/record.ts";
import { AboutDialog } from "./about.tsx";
import { Announce } from "./announce.tsx";
import { FieldGroup } from "./field-group.tsx";
import { type AnyField, fieldToStart, type FieldGroup as GroupOfFields, idOf, isReading } from "./fields.ts";
import { InHand, useInHand } from "./instrument.tsx";
import { Keypad } from "./keypad.tsx";
import { memo } from "./memo.tsx";
import { NoValueDialog } from "./no-value.tsx";
import { noValueOf } from "./reading.ts";
import { ReadingRow } from "./reading-row.tsx";
import { spotId, valueAt } from "./spot.ts";
import { type Entry, useEntry } from "./use-entry.ts";
import { WordRow } from "./word-row.tsx";

interface ReadingListProps {
  /** What the fields belong to: a circuit, a board, the origin. */
  readonly label: string;
  /** The fields in the order of the tests, from what stands in the record. */
  readonly groupsOf: (record: JobRecord) => readonly GroupOfFields[];
  /** The control the way leads to after the last field. */
  readonly endId: string;
  /** What stands after the last field, with that control in it. */
  readonly children: ComponentChildren;
}

/** Fields for readings with the keypad: type, on to the next, and what follows from each beside it. */
export function ReadingList({ label, groupsOf, endId, children }: ReadingListProps) {
  const [inHand, take] = useInHand();
  const entry = useEntry(groupsOf, endId, inHand);
  const [dialog, setDialog] = useState<"none" | "about">();
  const { open, record } = entry;
  // Rows are drawn again only when they show something else, so they reach what holds now by this.
  const now = useRef(entry);
  now.current = entry;
  const close = () => setDialog(undefined);
  const start = open === undefined ? fieldToStart(record, entry.groups) : undefined;
  return (
    <section class="reading-list" aria-label={label}>
      <div class="readings">
        <InHand inHand={inHand} take={take} />
        {entry.groups.map((group) => (
          <FieldGroup key={group.title} group={group}>
            {group.fields.map((field) => row(field, entry, now, field === start, setDialog))}
          </FieldGroup>
        ))}
        {children}
        <Announce entered={entry.entered} />
      </div>
      <Keypad
        kind={open !== undefined && isReading(open) ? open.kind : undefined}
        top={entry.top}
        symbol={entry.symbol}
        label={open?.label ?? ""}
        onKey={entry.key}
        onUnit={entry.changeUnit}
        onOver={entry.over}
        onNoValue={open === undefined ? undefined : () => setDialog("none")}
        onAbout={open === undefined ? undefined : () => setDialog("about")}
        onNext={entry.next}
        onBack={entry.back}
      />
      {dialog === "none" && open !== undefined && (
        <NoValueDialog
          label={open.label}
          path={spotId(open.spot)}
          value={noValueOf(valueAt(record, open.spot))}
          hasValue={valueAt(record, open.spot) !== undefined}
          onClose={close}
          onKeep={(value) => {
            close();
            entry.keepNoValue(value);
          }}
        />
      )}
      {dialog === "about" && open !== undefined && (
        <AboutDialog
          label={open.label}
          spot={open.spot}
          pointPath={isReading(open) ? open.pointPath : undefined}
          onClose={close}
        />
      )}
    </section>
  );
}

const Reading = memo(ReadingRow);
const Word = memo(WordRow);

function row(
  field: AnyField,
  entry: Entry,
  now: { readonly current: Entry },
  startsHere: boolean,
  ask: (dialog: "none" | "about") => void,
) {
  const id = idOf(field);
  const isOpen = entry.open !== undefined && idOf(entry.open) === id;
  const shared = {
    id,
    isOpen,
    startsHere,
    onOpen: () => now.current.enter(field),
    onNext: () => now.current.next(),
    onNoValue: () => ask("none"),
    onAbout: () => ask("about"),
  };
  if (!isReading(field))
    return <Word key={id} {...shared} field={field} onChoose={(word, stay) => now.current.choose(field, word, stay)} />;
  return (
    <Reading
      key={id}
      {...shared}
      field={field}
      typed={isOpen ? entry.typed : undefined}
      fault={isOpen ? entry.fault : undefined}
      doubt={entry.doubt?.id === id ? entry.doubt.about : undefined}
      onType={(text) => now.current.type(text)}
      onLeave={() => now.current.leave()}
      onKeep={() => now.current.keep(field)}
      onAgain={() => now.current.measureAgain(field)}
      onMistyped={() => now.current.correct(field)}
    />
  );
}
