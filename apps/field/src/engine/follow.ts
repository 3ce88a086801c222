import { useEffect, useReducer, useRef } from "preact/hooks";
import { documentOf } from "../record/document.ts";
import type { Session } from "../record/session.ts";
import { useSession } from "../shell/job.ts";
import { engine } from "./client.ts";
import type { PlaceView, View } from "./view.ts";

/** How the weighing of an open job stands. */
export interface Weighing {
  readonly view: View | undefined;
  /** Something changed that is not weighed yet. */
  readonly behind: boolean;
  /** Why it could not be weighed. */
  readonly failed: string | undefined;
}

const NOTHING: Weighing = { view: undefined, behind: true, failed: undefined };

/** Weighs a job whenever it changes, as long as something shows what comes of it. */
class Follower {
  state = NOTHING;
  readonly #session: Session;
  readonly #listeners = new Set<() => void>();
  #stop: (() => void) | undefined;
  #size = -1;
  #turn = 0;

  constructor(session: Session) {
    this.#session = session;
  }

  listen(listener: () => void): () => void {
    this.#listeners.add(listener);
    this.#stop ??= this.#session.listen(() => this.#look());
    this.#look();
    return () => {
      this.#listeners.delete(listener);
      if (this.#listeners.size > 0) return;
      this.#stop?.();
      this.#stop = undefined;
    };
  }

  #look(): void {
    const { size } = this.#session.record;
    if (size === this.#size) return;
    this.#size = size;
    this.#set({ ...this.state, behind: true });
    this.#turn += 1;
    const turn = this.#turn;
    // The screen draws what was entered first; the document is put together when there is time.
    whenIdle(() => {
      if (turn === this.#turn) void this.#weigh();
    });
  }

  async #weigh(): Promise<void> {
    const size = this.#size;
    try {
      const view = await engine.weigh(documentOf(this.#session.record));
      if (view !== undefined) this.#set({ view, behind: size !== this.#size, failed: undefined });
    } catch (error) {
      this.#set({ ...this.state, behind: false, failed: error instanceof Error ? error.message : String(error) });
    }
  }

  #set(state: Weighing): void {
    this.state = state;
    for (const listener of this.#listeners) listener();
  }
}

function whenIdle(run: () => void): void {
  if ("requestIdleCallback" in globalThis) requestIdleCallback(run, { timeout: 300 });
  else setTimeout(run, 50);
}

const FOLLOWERS = new WeakMap<Session, Follower>();

function followerOf(session: Session): Follower {
  const known = FOLLOWERS.get(session) ?? new Follower(session);
  FOLLOWERS.set(session, known);
  return known;
}

/** What `pick` takes from the weighing of the open job; drawn again only when that is another value. */
export function useWeighing<T>(pick: (weighing: Weighing) => T): T {
  const follower = followerOf(useSession());
  const [, again] = useReducer((count: number) => count + 1, 0);
  const picked = pick(follower.state);
  const last = useRef({ picked, pick });
  last.current = { picked, pick };
  useEffect(
    () =>
      follower.listen(() => {
        if (last.current.pick(follower.state) !== last.current.picked) again(undefined);
      }),
    [follower],
  );
  return picked;
}

/** The findings about one place of the open job, as in the record: "boards/cu/circuits/c1". */
export function usePlace(path: string): PlaceView | undefined {
  return useWeighing(({ view }) => view?.places.find((place) => place.path === path));
}
