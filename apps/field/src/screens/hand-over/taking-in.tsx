import { useEffect, useRef, useState } from "preact/hooks";
import type { Copy } from "../../hand-over/copy.ts";
import { Refused } from "../../hand-over/refused.ts";
import { Stalled, type Watch } from "../../hand-over/watch.ts";
import { Notice } from "../../parts/notice.tsx";
import { Progress } from "../../parts/progress.tsx";
import { Contradiction } from "../../record/session.ts";
import { COPIES } from "../../words/copies.ts";
import { HAND_OVER } from "../../words/finish.ts";

type State =
  | { readonly is: "idle" }
  | { readonly is: "working"; readonly what: string; readonly done: number; readonly of: number }
  | { readonly is: "asking"; readonly copy: Copy }
  | { readonly is: "said"; readonly words: string; readonly isFault: boolean };

/** Taking in a copy: a file was chosen, is read, may have to be asked about, and is taken in. */
export interface TakingIn {
  readonly state: State;
  readonly isBusy: boolean;
  readonly open: (file: File) => void;
  readonly goOn: () => void;
  readonly stop: () => void;
}

/**
 * How a copy is taken in: `refuse` looks at it before anything is asked and says why not; `take` does it and says what
 * came of it.
 */
export function useTakingIn(
  take: (copy: Copy, watch: Watch) => Promise<string>,
  refuse: (copy: Copy) => string | undefined = () => undefined,
): TakingIn {
  const [state, setState] = useState<State>({ is: "idle" });
  const working = useRef<AbortController>(undefined);
  useEffect(() => () => working.current?.abort(), []);

  const run = async (what: string, work: (watch: Watch) => Promise<State>, words: (error: unknown) => string) => {
    const stop = new AbortController();
    working.current = stop;
    setState({ is: "working", what, done: 0, of: 0 });
    const onMoved = (done: number, of: number) => setState({ is: "working", what, done, of });
    try {
      setState(await work({ signal: stop.signal, onMoved }));
    } catch (error) {
      setState({ is: "said", words: stop.signal.aborted ? COPIES.left : words(error), isFault: !stop.signal.aborted });
    }
  };
  const taken = (copy: Copy) =>
    run(COPIES.taking, async (watch) => ({ is: "said", words: await take(copy, watch), isFault: false }), keepingWords);
  const open = async (file: File) => {
    let found: Copy | undefined;
    await run(
      COPIES.reading,
      async (watch) => {
        const { openCopy } = await import("../../hand-over/copier.ts");
        const copy = await openCopy(file, watch);
        const why = refuse(copy);
        if (why !== undefined) return { is: "said", words: why, isFault: true };
        if (!copy.proved || copy.damaged > 0) return { is: "asking", copy };
        found = copy;
        return { is: "working", what: COPIES.taking, done: 0, of: 0 };
      },
      readingWords,
    );
    if (found !== undefined) await taken(found);
  };
  return {
    state,
    isBusy: state.is === "working" || state.is === "asking",
    open: (file) => void open(file),
    goOn: () => state.is === "asking" && void taken(state.copy),
    stop: () =>
      state.is === "asking" ? setState({ is: "said", words: COPIES.left, isFault: false }) : working.current?.abort(),
  };
}

/** What is shown of it, below the button that chooses the file. */
export function TakingInShown({ of: { state, goOn, stop } }: { readonly of: TakingIn }) {
  if (state.is === "working") return <Progress what={state.what} done={state.done} of={state.of} onStop={stop} />;
  if (state.is === "asking")
    return (
      <Notice kind="alert" title={COPIES.ask}>
        {!state.copy.proved && <p>{COPIES.unproved}</p>}
        {state.copy.damaged > 0 && <p>{COPIES.damaged(state.copy.damaged)}</p>}
        <div class="stack">
          <button type="button" class="main" onClick={stop}>
            {COPIES.leave}
          </button>
          <button type="button" onClick={goOn}>
            {COPIES.goOn}
          </button>
        </div>
      </Notice>
    );
  return <div role="status">{state.is === "said" && <p class={state.isFault ? "fault" : ""}>{state.words}</p>}</div>;
}

function readingWords(error: unknown): string {
  if (error instanceof Refused) return COPIES.refused[error.reason];
  return error instanceof Stalled ? COPIES.readStalled : COPIES.readFailed(reasonOf(error));
}

function keepingWords(error: unknown): string {
  if (error instanceof Contradiction) return HAND_OVER.contradicts;
  if (error instanceof DOMException && error.name === "QuotaExceededError") return COPIES.noRoom;
  return COPIES.notKept(error instanceof Stalled ? COPIES.stalled : reasonOf(error));
}

function reasonOf(error: unknown): string {
  return error instanceof Error ? `${error.name}: ${error.message}` : String(error);
}
