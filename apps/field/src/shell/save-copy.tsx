import { useEffect, useRef, useState } from "preact/hooks";
import type { Made } from "../hand-over/copy.ts";
import { textOf } from "../hand-over/record-text.ts";
import { Refused } from "../hand-over/refused.ts";
import { fileOf, handOver } from "../hand-over/save.ts";
import { Stalled, watched } from "../hand-over/watch.ts";
import { Progress } from "../parts/progress.tsx";
import type { Entry } from "../record/entry.ts";
import { COPIES } from "../words/copies.ts";
import { bytes } from "./bytes.ts";

/** The entries of a job, and what its file is called. */
export interface Source {
  readonly name: string;
  readonly entries: readonly Entry[];
}

interface SaveCopyProps {
  readonly job: string;
  /** Words of the button. */
  readonly words: string;
  readonly read: () => Promise<Source>;
  /** Where a copy with photographs cannot be made, the record alone is saved without asking. */
  readonly inNeed?: boolean;
}

type State =
  | { readonly is: "idle" }
  | { readonly is: "making"; readonly done: number; readonly of: number }
  | { readonly is: "stopped" }
  | { readonly is: "ready"; readonly made: Made; readonly file: File; readonly isAsked: boolean }
  | { readonly is: "alone"; readonly entries: number }
  | { readonly is: "failed"; readonly reason: string; readonly source: Source | undefined };

/**
 * Makes a copy of a job and hands it over: how far it is, the way to stop, and at the end what is in it. Everything
 * this needs to save the record alone is here with it; what packs photographs is fetched and may fail.
 */
export function SaveCopy({ job, words, read, inNeed = false }: SaveCopyProps) {
  const [state, setState] = useState<State>({ is: "idle" });
  const working = useRef<AbortController>(undefined);
  // Whoever leaves the screen would not see what came of it.
  useEffect(() => () => working.current?.abort(), []);

  const start = async () => {
    const stop = new AbortController();
    working.current = stop;
    setState({ is: "making", done: 0, of: 0 });
    const watch = {
      signal: stop.signal,
      onMoved: (done: number, of: number) => setState({ is: "making", done, of }),
    };
    let source: Source | undefined;
    try {
      const found = await watched(read, watch);
      source = found;
      const { makeCopy } = await watched(() => import("../hand-over/copier.ts"), watch);
      const made = await makeCopy(job, found.entries, watch);
      const file = fileOf(`${found.name}.good-grounds-job`, "application/zip", made.file);
      setState({ is: "ready", made, file, isAsked: false });
      // The sheet may stay open as long as somebody likes; the copy is ready all the while.
      if ((await handOver(file)) === "asked") setState({ is: "ready", made, file, isAsked: true });
    } catch (error) {
      if (stop.signal.aborted) setState({ is: "stopped" });
      else if (inNeed && source !== undefined) await saveAlone(source);
      else setState({ is: "failed", reason: reasonOf(error), source });
    }
  };
  const saveAlone = async ({ name, entries }: Source) => {
    await handOver(fileOf(`${name}.json`, "application/json", await recordAlone(job, entries)));
    setState({ is: "alone", entries: entries.length });
  };

  if (state.is === "making")
    return <Progress what={COPIES.making} done={state.done} of={state.of} onStop={() => working.current?.abort()} />;
  return (
    <>
      <button type="button" onClick={() => void start()}>
        {words}
      </button>
      <div role="status">
        {state.is === "stopped" && <p>{COPIES.stopped}</p>}
        {state.is === "alone" && <p class="fault">{COPIES.aloneReady(state.entries)}</p>}
        {state.is === "failed" && <p class="fault">{COPIES.failed(state.reason)}</p>}
        {state.is === "ready" && (
          <p>{COPIES.ready(bytes(state.file.size), state.made.entries, state.made.photographs)}</p>
        )}
        {state.is === "ready" && state.made.missing > 0 && <p class="fault">{COPIES.missing(state.made.missing)}</p>}
      </div>
      {state.is === "ready" && (
        <button type="button" class={state.isAsked ? "main" : ""} onClick={() => void handOver(state.file)}>
          {state.isAsked ? COPIES.handOver : COPIES.again}
        </button>
      )}
      {state.is === "failed" && state.source !== undefined && (
        <button type="button" onClick={() => state.source && void saveAlone(state.source)}>
          {COPIES.alone}
        </button>
      )}
    </>
  );
}

/** The record as a file without photographs; where no hash can be made, without one, as copies once were. */
async function recordAlone(job: string, entries: readonly Entry[]): Promise<string> {
  try {
    return await textOf({ job, entries, photographs: [] });
  } catch {
    return JSON.stringify({ job, entries });
  }
}

function reasonOf(error: unknown): string {
  if (error instanceof Stalled) return COPIES.stalled;
  if (error instanceof Refused) return error.reason === "too-large" ? COPIES.tooLarge : COPIES.notSame;
  return error instanceof Error ? `${error.name}: ${error.message}` : String(error);
}
