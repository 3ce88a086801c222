import type { Entry, Value } from "./entry.ts";
import { Record as JobRecord } from "./record.ts";
import { entriesOf, keep } from "./store.ts";

/** How far the changes of a job are kept. */
export interface Keeping {
  /** Changes shown but not yet on the disk. */
  readonly waiting: number;
  /** Why the last attempt failed; changes are tried again. */
  readonly trouble: string | undefined;
}

/**
 * An open job in one tab. A change is taken in at once and counts as kept only when the disk has it; other tabs of the
 * same job hear of it then.
 */
export class Session {
  readonly job: string;
  readonly record: JobRecord;
  readonly #author: string;
  readonly #channel: BroadcastChannel;
  readonly #listeners = new Set<() => void>();
  #waiting: readonly Entry[] = [];
  #trouble: string | undefined;
  #writing = false;
  #by = "";

  private constructor(job: string, record: JobRecord) {
    this.job = job;
    this.record = record;
    // One author a tab: two tabs never give the same number to different entries.
    this.#author = crypto.randomUUID().slice(0, 13);
    this.#channel = new BroadcastChannel(`job ${job}`);
    this.#channel.onmessage = ({ data }: MessageEvent<readonly Entry[]>) => {
      if (data.filter((entry) => this.record.add(entry)).length > 0) this.#tell();
    };
  }

  static async open(job: string): Promise<Session> {
    const session = new Session(job, new JobRecord());
    // Entries another tab keeps while these are read arrive over the channel.
    for (const entry of await entriesOf(job)) session.record.add(entry);
    return session;
  }

  /** Who is at work from now on, as a person's id. */
  set person(id: string) {
    this.#by = id;
    this.#tell();
  }

  get person(): string {
    return this.#by;
  }

  get keeping(): Keeping {
    return { waiting: this.#waiting.length, trouble: this.#trouble };
  }

  /** Writes values at places as one change; resolves when the disk has it. */
  async write(...changes: readonly (readonly [path: string, value: Value])[]): Promise<void> {
    const at = new Date().toISOString();
    const entries = changes.map(([path, value]) => {
      const entry = this.record.next(this.#author, this.#by, at, path, value);
      this.record.add(entry);
      return entry;
    });
    await this.#keep(entries);
  }

  /** Takes in entries of another copy; resolves when the disk has those that were new. */
  async join(entries: readonly Entry[]): Promise<number> {
    const fresh = entries.filter((entry) => this.record.add(entry));
    await this.#keep(fresh);
    return fresh.length;
  }

  /** Tries again to keep what is not kept yet. */
  async again(): Promise<void> {
    await this.#flush();
  }

  /** Calls back whenever something of the job changes; returns how to stop that. */
  listen(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  close(): void {
    this.#channel.close();
    this.#listeners.clear();
  }

  async #keep(entries: readonly Entry[]): Promise<void> {
    if (entries.length === 0) return;
    this.#waiting = [...this.#waiting, ...entries];
    this.#tell();
    await this.#flush();
  }

  async #flush(): Promise<void> {
    while (this.#writing) await new Promise((done) => setTimeout(done, 5));
    if (this.#waiting.length === 0) return;
    this.#writing = true;
    const batch = this.#waiting;
    try {
      await keep(this.job, batch);
      const kept = new Set(batch);
      this.#waiting = this.#waiting.filter((entry) => !kept.has(entry));
      this.#trouble = undefined;
      this.#channel.postMessage(batch);
    } catch (error) {
      this.#trouble = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
      throw error;
    } finally {
      this.#writing = false;
      this.#tell();
    }
  }

  #tell(): void {
    for (const listener of this.#listeners) listener();
  }
}
