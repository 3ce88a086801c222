import { createContext } from "preact";
import { useContext, useEffect, useReducer } from "preact/hooks";
import type { Value } from "../record/entry.ts";
import type { Session } from "../record/session.ts";

/** The open job, for every screen below. */
export const JobContext = createContext<Session | undefined>(undefined);

/** The open job; the component is drawn again whenever something of it changes. */
export function useJob(): Session {
  const session = useContext(JobContext);
  if (session === undefined) throw new Error("no job is open here");
  const [, again] = useReducer((count: number) => count + 1, 0);
  useEffect(() => session.listen(() => again(undefined)), [session]);
  return session;
}

/** The text at a place of the job and how to write it; an empty text removes it. */
export function useText(path: string): readonly [text: string, write: (text: string) => Promise<void>] {
  const session = useJob();
  const value: Value | undefined = session.record.value(path);
  return [typeof value === "string" ? value : "", (text) => session.write([path, text.trim() === "" ? null : text])];
}
