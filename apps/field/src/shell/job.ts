import { createContext } from "preact";
import { useContext, useEffect, useReducer } from "preact/hooks";
import type { Entry, Value } from "../record/entry.ts";
import type { Session } from "../record/session.ts";

/** The open job, for every screen below. */
export const JobContext = createContext<Session | undefined>(undefined);

/** The open job, without being drawn again when it changes. */
export function useSession(): Session {
  const session = useContext(JobContext);
  if (session === undefined) throw new Error("no job is open here");
  return session;
}

/** The open job; the component is drawn again whenever something of it changes. */
export function useJob(): Session {
  const session = useSession();
  const [, again] = useReducer((count: number) => count + 1, 0);
  useEffect(() => session.listen(() => again(undefined)), [session]);
  return session;
}

/** Changes on their way to the disk. */
const onTheWay = new Set<Promise<void>>();

/** Writes values as one change. A failure is told in the header, which tries again; nobody else has to wait for it. */
export function put(session: Session, ...changes: readonly (readonly [path: string, value: Value])[]): void {
  const change = session
    .write(...changes)
    .catch(() => undefined)
    .finally(() => onTheWay.delete(change));
  onTheWay.add(change);
}

/** Resolves when every change made so far is on the disk, or has failed to get there and is told of. */
export async function arrived(): Promise<void> {
  await Promise.all(onTheWay);
}

/** What stands at one place of the job, and how to write it. */
export interface Field {
  /** Undefined where there is nothing, or where several values stand. */
  readonly value: Value | undefined;
  readonly standing: readonly Entry[];
  readonly write: (value: Value) => void;
}

/** One place of the job; the component is drawn again only when that place changes. */
export function useField(path: string): Field {
  const session = useSession();
  const [, again] = useReducer((count: number) => count + 1, 0);
  useEffect(() => {
    let last = session.record.standing(path);
    return session.listen(() => {
      const now = session.record.standing(path);
      if (now !== last) again(undefined);
      last = now;
    });
  }, [session, path]);
  return {
    value: session.record.value(path),
    standing: session.record.standing(path),
    write: (value) => put(session, [path, value]),
  };
}

/** A name for a new member of a list that no other copy of the job gives to another. */
export function newName(prefix: string): string {
  return `${prefix}-${crypto.randomUUID().slice(0, 8)}`;
}

/** Now, with the offset from UTC of the place where the device is. */
export function momentNow(now = new Date()): string {
  const ahead = -now.getTimezoneOffset();
  const two = (n: number) => String(n).padStart(2, "0");
  const local = new Date(now.getTime() + ahead * 60_000).toISOString().slice(0, 19);
  return `${local}${ahead < 0 ? "-" : "+"}${two(Math.floor(Math.abs(ahead) / 60))}:${two(Math.abs(ahead) % 60)}`;
}

/** Today, where the device is. */
export function today(): string {
  return momentNow().slice(0, 10);
}
