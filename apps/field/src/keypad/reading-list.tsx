import { useEffect, useRef, useState } from "preact/hooks";
import { useWeighing } from "../engine/follow.ts";
import { LiveGate } from "../parts/live-gate.tsx";
import type { Value } from "../record/entry.ts";
import type { Record as JobRecord } from "../record/record.ts";
import { momentNow, put, useSession } from "../shell/job.ts";
import { mayTestLive } from "../shell/safety.ts";
import { KEYPAD } from "../words/keypad.ts";
import { AboutDialog } from "./about.tsx";
import { type AnyField, type FieldGroup, fieldAfter, fieldBefore, isReading, type ReadingField } from "./fields.ts";
import { InHand, useInHand } from "./instrument.tsx";
import { Keypad, useTop } from "./keypad.tsx";
import { KINDS, type Kind } from "./kinds.ts";
import { NoValueDialog } from "./no-value.tsx";
import { type Doubt, doubtAbout } from "./plausible.ts";
import { type NoValue, noValueOf, takenOf } from "./reading.ts";
import { ReadingRow, type TypedText, WordRow } from "./reading-row.tsx";
import { changeAt, spotId, valueAt } from "./spot.ts";
import { pressed, readTyped, splitShown, type TextKey } from "./typed.ts";
import { useRecord } from "./use-record.ts";
import { verdictWords } from "./verdict.tsx";

interface ReadingListProps {
  /** The fields in the order of the tests, from what stands in the record. */
  readonly groupsOf: (record: JobRecord) => readonly FieldGroup[];
  /** Where the way leads after the last field. */
  readonly endId: string;
}

const idOf = (field: AnyField) => `at:${spotId(field.spot)}`;

/** Fields for readings with the keypad: type, on to the next, and what follows from each beside it. */
export function ReadingList({ groupsOf, endId }: ReadingListProps) {
  const session = useSession();
  const record = useRecord();
  const groups = groupsOf(record);
  const fields = groups.flatMap((group) => group.fields);
  const [openId, setOpenId] = useState<string>();
  const open = fields.find((field) => idOf(field) === openId);
  const [typed, setTyped] = useState<TypedText>();
  const [fault, setFault] = useState<string>();
  const [doubt, setDoubt] = useState<{ readonly id: string; readonly about: Doubt }>();
  const [dialog, setDialog] = useState<"none" | "about">();
  const [inHand, take] = useInHand();
  const kind = open !== undefined && isReading(open) ? open.kind : undefined;
  const [top] = useTop(kind);
  const seek = useRef<string>();
  const state = useRef({ typed, open });
  state.current = { typed, open };

  // The field sought may be drawn only now: a point that was added, live tests that were waiting.
  useEffect(() => {
    if (seek.current === undefined) return;
    const found = document.getElementById(seek.current) ?? document.querySelector<HTMLElement>(".live-gate button");
    seek.current = undefined;
    found?.focus({ preventScroll: true });
    found?.closest(".reading, .live-gate")?.scrollIntoView({ block: "nearest" });
  });
  // A phone may throw the tab away once it is in the background.
  useEffect(() => {
    const hidden = () => document.visibilityState === "hidden" && commit();
    document.addEventListener("visibilitychange", hidden);
    return () => document.removeEventListener("visibilitychange", hidden);
  });

  const write = (field: AnyField, value: Value) => {
    const extra = isReading(field) && valueAt(session.record, field.spot) === undefined ? (field.with ?? []) : [];
    put(session, ...extra, changeAt(session.record, field.spot, value));
  };

  const writeShown = (field: ReadingField, shown: string) => {
    if (takenOf(valueAt(session.record, field.spot))?.shown === shown) return;
    const by = session.person === "" ? {} : { by: session.person };
    const tool = inHand === undefined ? {} : { with: inHand };
    write(field, { shown, at: momentNow(), ...by, ...tool });
    const about = doubtAbout(shown, field.kind, field.expected);
    setDoubt(about === undefined ? undefined : { id: idOf(field), about });
  };

  /** Takes what was typed; false where it is no reading, which then stays to be put right. */
  const commit = (): boolean => {
    const { typed: now, open: field } = state.current;
    if (now === undefined || field === undefined || !isReading(field)) return true;
    const read = readTyped(now.text, now.symbol, field.kind, top);
    if ("fault" in read) {
      setFault(read.fault);
      return false;
    }
    state.current.typed = undefined;
    setTyped(undefined);
    setFault(undefined);
    if ("shown" in read) writeShown(field, read.shown);
    else if (valueAt(session.record, field.spot) !== undefined) write(field, null);
    return true;
  };

  const goTo = (id: string | undefined) => {
    seek.current = id ?? endId;
    setOpenId((now) => (id === undefined ? now : id));
    // Drawn again even where nothing else changes, so that the focus moves.
    setDialog(undefined);
    tick((count) => count + 1);
  };
  const [, tick] = useState(0);

  const next = () => {
    if (open === undefined || !commit()) return;
    // A value that is asked about is looked at once; the next press goes on.
    const isAsked = doubt?.id !== idOf(open) && wantsLook(open);
    if (isAsked) return;
    setDoubt(undefined);
    const after = fieldAfter(session.record, groupsOf(session.record), idOf(open), idOf);
    goTo(after === undefined ? undefined : idOf(after));
  };

  const wantsLook = (field: AnyField): boolean => {
    if (!isReading(field) || state.current.typed !== undefined) return false;
    const taken = takenOf(valueAt(session.record, field.spot));
    return (
      taken !== undefined && typed !== undefined && doubtAbout(taken.shown, field.kind, field.expected) !== undefined
    );
  };

  const back = () => {
    if (open === undefined || !commit()) return;
    const before = fieldBefore(groups, idOf(open), idOf);
    if (before !== undefined) goTo(idOf(before));
  };

  const symbolNow = (): string => {
    if (open === undefined || !isReading(open)) return "";
    const about: Kind = KINDS[open.kind];
    const taken = takenOf(valueAt(session.record, open.spot));
    return typed?.symbol ?? (taken === undefined ? about.symbols[0] : splitShown(taken.shown, about).symbol) ?? "";
  };

  const key = (name: TextKey) => {
    if (open === undefined || !isReading(open)) return;
    const taken = takenOf(valueAt(session.record, open.spot));
    // Digits start afresh over what stands there; deleting takes it apart.
    const from =
      typed?.text ?? (name === "back" && taken !== undefined ? splitShown(taken.shown, KINDS[open.kind]).text : "");
    setTyped({ text: pressed(from, name), symbol: symbolNow() });
    setFault(undefined);
  };

  const changeUnit = () => {
    if (open === undefined || !isReading(open)) return;
    const { symbols }: Kind = KINDS[open.kind];
    const taken = takenOf(valueAt(session.record, open.spot));
    const symbol = symbols[(symbols.indexOf(symbolNow()) + 1) % symbols.length] ?? "";
    setTyped({
      text: typed?.text ?? (taken === undefined ? "" : splitShown(taken.shown, KINDS[open.kind]).text),
      symbol,
    });
  };

  const keepNoValue = (value: NoValue | undefined) => {
    if (open === undefined) return;
    const member = isReading(open) ? "notTaken" : "notKnown";
    write(open, value === undefined ? null : { [member]: value.kind, reason: value.reason });
    setTyped(undefined);
    setFault(undefined);
    const after = value === undefined ? open : fieldAfter(session.record, groupsOf(session.record), idOf(open), idOf);
    goTo(after === undefined ? undefined : idOf(after));
  };

  const row = (field: AnyField) => {
    const id = idOf(field);
    const isOpen = id === openId;
    const onOpen = () => {
      if (id === openId) return;
      setOpenId(id);
      setTyped(undefined);
      setFault(undefined);
    };
    if (!isReading(field))
      return (
        <WordRow
          key={id}
          field={field}
          id={id}
          isOpen={isOpen}
          onOpen={onOpen}
          onChoose={(word) => {
            put(session, changeAt(session.record, field.spot, word));
            const after = fieldAfter(session.record, groupsOf(session.record), id, idOf);
            goTo(after === undefined ? undefined : idOf(after));
          }}
        />
      );
    return (
      <ReadingRow
        key={id}
        field={field}
        id={id}
        isOpen={isOpen}
        typed={isOpen ? typed : undefined}
        fault={isOpen ? fault : undefined}
        doubt={doubt?.id === id ? doubt.about : undefined}
        onOpen={onOpen}
        onType={(text) => {
          setTyped({ text, symbol: symbolNow() });
          setFault(undefined);
        }}
        onLeave={() => commit()}
        onNext={next}
        onInstead={(shown) => {
          if (shown !== undefined) writeShown(field, shown);
          setDoubt(undefined);
          const after = fieldAfter(session.record, groupsOf(session.record), id, idOf);
          goTo(after === undefined ? undefined : idOf(after));
        }}
      />
    );
  };

  const canGoBack = open !== undefined && fieldBefore(groups, idOf(open), idOf) !== undefined;
  return (
    <div class="reading-list">
      <div class="readings">
        <InHand inHand={inHand} take={take} />
        {groups.map((group) => (
          <Group key={group.title} group={group} record={record}>
            {group.fields.map(row)}
          </Group>
        ))}
        <Announce open={open} />
      </div>
      <Keypad
        kind={kind}
        symbol={symbolNow()}
        label={open?.label ?? ""}
        onKey={key}
        onUnit={changeUnit}
        onOver={(shown) => {
          if (open === undefined || !isReading(open)) return;
          setTyped(undefined);
          setFault(undefined);
          writeShown(open, shown);
          const after = fieldAfter(session.record, groupsOf(session.record), idOf(open), idOf);
          goTo(after === undefined ? undefined : idOf(after));
        }}
        onNoValue={() => open !== undefined && setDialog("none")}
        onAbout={() => open !== undefined && setDialog("about")}
        onNext={next}
        onBack={canGoBack ? back : undefined}
      />
      {dialog === "none" && open !== undefined && (
        <NoValueDialog
          label={open.label}
          path={spotId(open.spot)}
          value={noValueOf(valueAt(record, open.spot))}
          hasValue={valueAt(record, open.spot) !== undefined}
          onClose={() => goTo(openId)}
          onKeep={keepNoValue}
        />
      )}
      {dialog === "about" && open !== undefined && (
        <AboutDialog
          label={open.label}
          spot={open.spot}
          {...(isReading(open) && open.with !== undefined
            ? { pointPath: open.spot.path.replace(/\/reading$/, "/point") }
            : {})}
          onClose={() => goTo(openId)}
        />
      )}
    </div>
  );
}

interface GroupProps {
  readonly group: FieldGroup;
  readonly record: JobRecord;
  readonly children: preact.ComponentChildren;
}

function Group({ group, record, children }: GroupProps) {
  const { title, help, liveOf, folded } = group;
  const inside =
    liveOf === undefined ? (
      children
    ) : (
      <div class={mayTestLive(record, liveOf) ? "" : "live-gate"}>
        <LiveGate circuit={liveOf}>{children}</LiveGate>
      </div>
    );
  if (folded === true)
    return (
      <details>
        <summary>{title}</summary>
        {inside}
      </details>
    );
  return (
    <section aria-label={title}>
      <h3>{title}</h3>
      {help !== undefined && <p class="quiet small">{help}</p>}
      {inside}
    </section>
  );
}

/** Says what came of the field entered last, once it is weighed. */
function Announce({ open }: { readonly open: AnyField | undefined }) {
  const session = useSession();
  const last = useRef<AnyField>();
  const said = useRef("");
  const view = useWeighing(({ view, behind }) => (behind ? undefined : view));
  const field = last.current;
  if (field !== undefined && view !== undefined) {
    const [about] = field.about ?? [];
    const finding = view.places
      .find(({ path }) => path === about?.place)
      ?.findings.find(({ check }) => check === about?.check);
    const shown = takenOf(valueAt(session.record, field.spot))?.shown;
    if (finding !== undefined && shown !== undefined)
      said.current = KEYPAD.announce(
        field.label,
        shown,
        `${finding.verdict.replace("-", " ")}. ${verdictWords(finding)}`,
      );
  }
  useEffect(() => {
    last.current = open;
  }, [open?.spot.path]);
  return (
    <p class="unseen" role="status">
      {said.current}
    </p>
  );
}
