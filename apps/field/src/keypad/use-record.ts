import { useEffect, useReducer, useRef } from "preact/hooks";
import type { Record as JobRecord } from "../record/record.ts";
import { useSession } from "../shell/job.ts";

/** The record of the open job; drawn again when something was written, not when it was kept. */
export function useRecord(): JobRecord {
  const { record } = useRecordSession();
  return record;
}

function useRecordSession() {
  const session = useSession();
  const [, again] = useReducer((count: number) => count + 1, 0);
  useEffect(() => {
    let { size } = session.record;
    return session.listen(() => {
      if (session.record.size === size) return;
      ({ size } = session.record);
      again(undefined);
    });
  }, [session]);
  return session;
}

/** What `pick` takes from the record; drawn again only when that is another text or number. */
export function usePicked<T extends string | number | boolean | undefined>(pick: (record: JobRecord) => T): T {
  const session = useSession();
  const [, again] = useReducer((count: number) => count + 1, 0);
  const picked = pick(session.record);
  const last = useRef({ picked, pick });
  last.current = { picked, pick };
  useEffect(
    () =>
      session.listen(() => {
        if (last.current.pick(session.record) !== last.current.picked) again(undefined);
      }),
    [session],
  );
  return picked;
}
