import type { Entry, Value } from "./entry.ts";
import { equal, Record as JobRecord } from "./record.ts";
import { contradicts, isPath, isValue } from "./sound.ts";
import { discardJob, entriesOf, keep } from "./store.ts";

/** How far the changes of a job are kept. */
export interface Keeping {
  /** Changes shown but not yet on the disk. */
  readonly waiting: number;
  /** Why the last attempt failed; changes are tried again. */
  readonly trouble: string | undefined;
}

type Change = readonly [path: string, value: Value];

/** One change as its entries and what stood at each place before. */
interface Made {
  readonly entries: readonly Entry[];
  readonly before: readonly Change[];
}

/** What tabs of one job tell each other. */
type Message = { readonly kept: readonly Entry[] } | { readonly gone: true };

/** How long until what could not be kept is tried again, in milliseconds. */
const AGAIN = 5000;

/** So many of the last changes can be undone one after the other. */
const UNDOABLE = 50;

/** Taking back that the earthing conductor is off would hide a danger; its own screen records that it is back. */
const NOT_UNDONE = /^earthingOff(\/|$)/;

/** Open and closed jobs with changes that the disk does not have yet, by job: they go on trying. */
const unkept = new Map<string, Session>();

/** Leaving the app while something is not kept asks first. */
const ask = (event: BeforeUnloadEvent) => event.preventDefault();

/** A copy holds something else under the name of an entry that is here. */
export class Contradiction extends Error {
  override name = "Contradiction";
}

/** Jobs with changes that are not on the disk, and why, whether or not they are open. */
export function unkeptJobs(): readonly Session[] {
  return [...unkept.values()].filter(({ keeping }) => keeping.trouble !== undefined);
}

const channelOf = (job: string) => `job ${job}`;

/** Throws a job away; tabs that have it open hear of it and write nothing more. */
export async function discard(job: string): Promise<void> {
  unkept.get(job)?.giveUp();
  await discardJob(job);
  post(job, { gone: true });
}

function post(job: string, message: Message): void {
  const channel = new BroadcastChannel(channelOf(job));
  channel.postMessage(message);
  channel.close();
}

/**
 * An open job in one tab. A change is taken in at once and counts as kept only when the disk has it; other tabs of the
 * same job hear of it then.
 */
export class Session {
  readonly job: string;
  readonly record = new JobRecord();
  /** One author a tab: two tabs never give the same number to different entries. */
  readonly #author = crypto.randomUUID().slice(0, 13);
  readonly #channel: BroadcastChannel;
  readonly #listeners = new Set<() => void>();
  #early: Message[] | undefined = [];
  #waiting: readonly Entry[] = [];
  #trouble: string | undefined;
  #writing: Promise<void> | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #closed = false;
  #silent = false;
  #gone = false;
  #by = "";
  #made: readonly Made[] = [];

  private constructor(job: string) {
    this.job = job;
    this.#channel = new BroadcastChannel(channelOf(job));
    this.#channel.onmessage = ({ data }: MessageEvent<Message>) => void this.#hear(data);
  }

  static async open(job: string): Promise<Session> {
    const left = unkept.get(job);
    if (left !== undefined) {
      left.#closed = false;
      return left;
    }
    const session = new Session(job);
    try {
      // What another tab keeps while these are read is heard over the channel and taken in after them.
      for (const entry of await entriesOf(job)) session.record.add(entry);
    } catch (error) {
      session.close();
      throw error;
    }
    const early = session.#early ?? [];
    session.#early = undefined;
    for (const message of early) await session.#hear(message);
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

  /** Whether the job was thrown away, here or in another tab. */
  get gone(): boolean {
    return this.#gone;
  }

  /** Writes values at places as one change; resolves when the disk has it. */
  async write(...changes: readonly Change[]): Promise<void> {
    const before = changes.flatMap(([path]): readonly Change[] => {
      const standing = this.record.standing(path);
      const [first] = standing;
      // Where several values stood there is no single one to go back to.
      return standing.some(({ value }) => !equal(value, first?.value ?? null)) ? [] : [[path, first?.value ?? null]];
    });
    const entries = this.#add(changes);
    this.#made = [...this.#made.slice(1 - UNDOABLE), { entries, before }];
    await this.#keep(entries);
  }

  /** Places that the next undo writes, with what it writes there; none where there is nothing to undo. */
  get undoable(): readonly Change[] {
    for (let i = this.#made.length - 1; i >= 0; i--) {
      const changes = this.#backwards(this.#made[i] as Made);
      if (changes.length > 0) return changes;
    }
    return [];
  }

  /** Takes back the last change made in this tab: what stood before is written anew, and the history keeps both. */
  async undo(): Promise<void> {
    const changes = this.undoable;
    while (this.#made.length > 0 && this.#backwards(this.#made.at(-1) as Made).length === 0)
      this.#made = this.#made.slice(0, -1);
    this.#made = this.#made.slice(0, -1);
    if (changes.length > 0) await this.#keep(this.#add(changes));
  }

  /** Takes in entries of another copy, or none of them; resolves to how many were new when the disk has them. */
  async join(entries: readonly Entry[]): Promise<number> {
    this.#refuseGone();
    if (contradicts(entries, this.record)) throw new Contradiction();
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

  /** Leaves the job. What is not kept yet goes on being tried; opening the job again brings it back. */
  close(): void {
    this.#closed = true;
    this.#listeners.clear();
    if (this.#waiting.length === 0) this.#fallSilent();
  }

  /** Writes nothing more: the job was thrown away. */
  giveUp(): void {
    this.#gone = true;
    this.#waiting = [];
    this.#made = [];
    this.#settle(undefined);
  }

  #add(changes: readonly Change[]): readonly Entry[] {
    this.#refuseGone();
    const at = new Date().toISOString();
    const plain = changes.map(([path, value]) => [path, plainValue(value)] as const);
    // What a copy could not carry is refused before anything of the change is taken in.
    for (const [path, value] of plain)
      if (!isPath(path) || !isValue(value)) throw new Error(`nothing can be written at ${path.slice(0, 400)}`);
    return plain.map(([path, value]) => {
      const entry = this.record.next(this.#author, this.#by, at, path, value);
      this.record.add(entry);
      return entry;
    });
  }

  /** What takes a change back: only where it still stands, for nothing that somebody wrote since may be lost. */
  #backwards({ entries, before }: Made): readonly Change[] {
    if (entries.some(({ path }) => NOT_UNDONE.test(path))) return [];
    return before.filter(([path, value]) => {
      const [standing, ...others] = this.record.standing(path);
      const mine = others.length === 0 && standing !== undefined && entries.includes(standing);
      return mine && !equal(standing.value, value);
    });
  }

  async #keep(entries: readonly Entry[]): Promise<void> {
    if (entries.length === 0) return;
    this.#waiting = [...this.#waiting, ...entries];
    this.#mark();
    this.#tell();
    await this.#flush();
  }

  async #flush(): Promise<void> {
    while (this.#writing !== undefined) await this.#writing;
    if (this.#waiting.length === 0) return;
    let over = () => {};
    this.#writing = new Promise((done) => {
      over = done;
    });
    let trouble: string | undefined;
    try {
      await this.#keepAll();
    } catch (error) {
      trouble = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
      throw error;
    } finally {
      this.#writing = undefined;
      over();
      this.#settle(trouble);
    }
  }

  async #keepAll(): Promise<void> {
    const batch = this.#waiting;
    // The browser may have emptied a store under an open job: then all of it is written, not only what is new.
    await keep(this.job, batch, () => this.record.entries());
    const kept = new Set(batch);
    this.#waiting = this.#waiting.filter((entry) => !kept.has(entry));
    const message: Message = { kept: batch };
    // A field may hand over what was typed after its job was left.
    if (this.#silent) post(this.job, message);
    else this.#channel.postMessage(message);
  }

  /** After an attempt: what is left is tried again by itself. */
  #settle(trouble: string | undefined): void {
    this.#trouble = trouble;
    clearTimeout(this.#timer);
    if (trouble !== undefined) this.#timer = setTimeout(() => this.#flush().catch(() => undefined), AGAIN);
    this.#mark();
    if (this.#closed && this.#waiting.length === 0) this.#fallSilent();
    this.#tell();
  }

  #fallSilent(): void {
    this.#silent = true;
    this.#channel.close();
  }

  /** Notes whether anything of this job is not on the disk. */
  #mark(): void {
    if (this.#waiting.length > 0) unkept.set(this.job, this);
    else if (unkept.get(this.job) === this) unkept.delete(this.job);
    if (unkept.size > 0) addEventListener("beforeunload", ask);
    else removeEventListener("beforeunload", ask);
  }

  async #hear(message: Message): Promise<void> {
    if (this.#early !== undefined) {
      this.#early.push(message);
      return;
    }
    if ("gone" in message) return this.giveUp();
    const size = this.record.size;
    for (const entry of message.kept) {
      // A message may come before another that its author had heard: the disk has both.
      if (!this.record.covers(entry)) {
        for (const one of await entriesOf(this.job)) this.record.add(one);
        break;
      }
      this.record.add(entry);
    }
    if (this.record.size !== size) this.#tell();
  }

  #refuseGone(): void {
    if (this.#gone) throw new Error("this job was thrown away");
  }

  #tell(): void {
    for (const listener of [...this.#listeners]) listener();
  }
}

/** The value as a file holds it, so that it is the same in every copy. */
function plainValue(value: Value): Value {
  return typeof value === "object" && value !== null ? JSON.parse(JSON.stringify(value)) : value;
}
