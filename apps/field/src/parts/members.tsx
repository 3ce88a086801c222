import type { ComponentChildren } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { join, membersOf, ORDER } from "../record/document.ts";
import type { Value } from "../record/entry.ts";
import { newName, put, useJob } from "../shell/job.ts";
import { PARTS } from "../words/parts.ts";
import { Removed } from "./removed.tsx";

interface MembersProps {
  /** The place of the list. */
  readonly path: string;
  /** What one member is called: "person". */
  readonly one: string;
  readonly add: string;
  /** The beginning of the names of new members. */
  readonly prefix: string;
  /** What a new member has from the start, by place below it. */
  readonly fresh?: () => Readonly<Record<string, Value>>;
  readonly title: (path: string, number: number) => string;
  readonly children: (path: string, name: string) => ComponentChildren;
}

/** A list of the job: its members one below the other, to add to and take out of; taking out can be undone. */
export function Members({ path, one, add, prefix, fresh, title, children }: MembersProps) {
  const session = useJob();
  const names = membersOf(session.record, path);
  const [added, setAdded] = useState<string>();
  const [removed, setRemoved] = useState<{ readonly at: string; readonly title: string }>();
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (added === undefined) return;
    list.current?.querySelector<HTMLElement>(`[data-name="${added}"] :is(input, select, textarea)`)?.focus();
    setAdded(undefined);
  }, [added]);
  return (
    <div ref={list}>
      {names.length === 0 && <p class="quiet">{PARTS.none}</p>}
      {names.map((name, number) => {
        const at = join(path, name);
        const called = title(at, number + 1);
        return (
          <fieldset key={name} class="sheet member" aria-label={called} data-name={name}>
            {children(at, name)}
            <button
              type="button"
              class="plain"
              onClick={() => {
                put(session, [at, null]);
                setRemoved({ at, title: called });
                list.current?.querySelector<HTMLElement>("[data-add]")?.focus();
              }}
            >
              {PARTS.remove(one)}
              <span class="unseen">: {called}</span>
            </button>
          </fieldset>
        );
      })}
      <Removed
        title={removed?.title}
        onUndo={() => {
          if (removed !== undefined) put(session, [removed.at, true]);
          setRemoved(undefined);
        }}
      />
      <button
        type="button"
        data-add
        onClick={() => {
          const name = newName(prefix);
          const at = join(path, name);
          const last = names.length === 0 ? -1 : session.record.value(`${path}/${names.at(-1)}/${ORDER}`);
          put(
            session,
            [at, true],
            [`${at}/${ORDER}`, typeof last === "number" ? last + 1 : names.length],
            ...Object.entries(fresh?.() ?? {}).map(([inner, value]) => [join(at, inner), value] as const),
          );
          setAdded(name);
          setRemoved(undefined);
        }}
      >
        {add}
      </button>
    </div>
  );
}
