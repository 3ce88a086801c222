import type { FolderText, KeptFolder } from "./folder-view.ts";
import type { FileToCheck, IssueAsked } from "./issue-view.ts";
import type { PaperForm, PaperKind } from "./paper-view.ts";
import type { Data, Reply, Request, Service } from "./protocol.ts";
import type { ReachAsked } from "./reach-view.ts";
import type { Facts, Positions, Where } from "./reason-view.ts";
import type { PlaceView, View, ViewChange } from "./view.ts";

/** As much of a worker as the client needs; tests bring their own. */
export interface Port {
  postMessage(request: Request): void;
  terminate(): void;
  onmessage: ((event: { readonly data: Reply }) => void) | null;
  onerror: ((event: { readonly message?: string }) => void) | null;
}

type Answer<K extends keyof Service> = Awaited<ReturnType<Service[K]>>;

interface Waiting {
  readonly resolve: (value: never) => void;
  readonly reject: (reason: Error) => void;
}

/** The folder of topics as one engine was told of it. */
interface ToldFolder {
  readonly port: Port;
  readonly told: Promise<void>;
}

/** Changes that follow each other within this time are weighed together. */
const PAUSE = 60;

/**
 * The engine as screens see it. It starts when it is first asked and starts again if it breaks down. Of requests to
 * weigh, the last one wins: those before it are answered with undefined.
 */
export class Engine {
  readonly #start: () => Port;
  #port: Port | undefined;
  #count = 0;
  readonly #waiting = new Map<number, Waiting>();
  #last = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #held: (() => void) | undefined;
  #weighing: Promise<unknown> = Promise.resolve();
  readonly #places = new Map<string, PlaceView>();

  /** The firm's folder that is kept on the device, as it was told to an engine. */
  #folder: ToldFolder | undefined;
  readonly #kept: () => Promise<KeptFolder | undefined>;

  constructor(start: () => Port, kept: () => Promise<KeptFolder | undefined> = async () => undefined) {
    this.#start = start;
    this.#kept = kept;
  }

  /** Weighs a job as far as it goes; undefined where a later request took its place. */
  async weigh(data: Data): Promise<View | undefined> {
    this.#last += 1;
    const turn = this.#last;
    clearTimeout(this.#timer);
    this.#held?.();
    await new Promise<void>((done) => {
      this.#held = done;
      this.#timer = setTimeout(done, PAUSE);
    });
    // One at a time: what is being weighed is not waited for twice.
    await this.#weighing.catch(() => undefined);
    if (turn !== this.#last) return undefined;
    const view = this.#call("weigh", data).then((change) => this.#merged(change));
    this.#weighing = view;
    const found = await view;
    return turn === this.#last ? found : undefined;
  }

  /** A place that did not change stays the same object, so that what shows it need not be drawn again. */
  #merged({ order, changed, ...rest }: ViewChange): View {
    for (const place of changed) this.#places.set(place.path, place);
    return { ...rest, places: order.flatMap((path) => this.#places.get(path) ?? []) };
  }

  /** The lines of the argument of one finding of what was weighed last. */
  argument(path: string, check: string): Promise<Answer<"argument">> {
    return this.#call("argument", path, check);
  }

  /** Arm's reach to one bare part beside a floor, with its drawing. */
  reach(asked: ReachAsked): Promise<Answer<"reach">> {
    return this.#call("reach", asked);
  }

  /** The outcome as far as a job goes, and what stands open. */
  outcome(data: Data): Promise<Answer<"outcome">> {
    return this.#callWithFolder("outcome", data);
  }

  /** Readings that do not agree, in a job as far as it goes. */
  misfits(data: Data): Promise<Answer<"misfits">> {
    return this.#call("misfits", data);
  }

  /** What the law asks because of a job as far as it goes. */
  duties(data: Data): Promise<Answer<"duties">> {
    return this.#callWithFolder("duties", data);
  }

  /** What is worth a second look in one's own figures. */
  ownFigures(data: Data, earlier?: Data): Promise<Answer<"ownFigures">> {
    return this.#call("ownFigures", data, earlier);
  }

  /** The condition report of a complete inspection file as PDF; the layout engine is fetched the first time. */
  report(json: string): Promise<Answer<"report">> {
    return this.#callWithFolder("report", json);
  }

  /** A paper for one reader from a complete inspection file; the layout engine is fetched the first time for a PDF. */
  paper(kind: PaperKind, form: PaperForm, json: string): Promise<Answer<"paper">> {
    return this.#callWithFolder("paper", kind, form, json);
  }

  /** Drawings of what was weighed last. */
  pictures(): Promise<Answer<"pictures">> {
    return this.#call("pictures");
  }

  /** Readings of what was weighed last beside those of earlier inspections. */
  trends(earlier: readonly Data[]): Promise<Answer<"trends">> {
    return this.#call("trends", earlier);
  }

  /** What keeps a job from being finished, in plain words with its place. */
  check(data: Data): Promise<Answer<"check">> {
    return this.#call("check", data);
  }

  topics(words?: string): Promise<Answer<"topics">> {
    return words === undefined ? this.#callWithFolder("topics") : this.#callWithFolder("topics", words);
  }

  /** The line of reasoning of a topic from what is said, what is worked out at the place, and the positions taken. */
  reason(topic: string, facts: Facts, positions: Positions = {}, place?: Where): Promise<Answer<"reason">> {
    return this.#callWithFolder("reason", topic, facts, positions, place);
  }

  /** The open points of a complete inspection file that each need a reason before it is issued. */
  pointsToAnswer(json: string): Promise<Answer<"pointsToAnswer">> {
    return this.#callWithFolder("pointsToAnswer", json);
  }

  /** Issues a report: signed, with its statement, read back. The layout engine is fetched the first time. */
  issue(asked: IssueAsked): Promise<Answer<"issue">> {
    return this.#callWithFolder("issue", asked);
  }

  /** The five answers on every issued document among files. */
  checkIssued(files: readonly FileToCheck[], root?: string): Promise<Answer<"checkIssued">> {
    return this.#callWithFolder("checkIssued", files, root);
  }

  /** A new key for a person on this device, encrypted under a passphrase. */
  makeKey(person: string, device: string, passphrase: string, made: string): Promise<Answer<"makeKey">> {
    return this.#call("makeKey", person, device, passphrase, made);
  }

  keyView(text: string): Promise<Answer<"keyView">> {
    return this.#call("keyView", text);
  }

  tryRegister(text: string): Promise<Answer<"tryRegister">> {
    return this.#call("tryRegister", text);
  }

  /** Reads a firm's folder and holds it to every law; nothing of it is used yet. */
  tryFolder(texts: readonly FolderText[]): Promise<Answer<"tryFolder">> {
    return this.#call("tryFolder", texts);
  }

  /** Another folder is kept on the device, or none any more: what is asked from now on is answered with that. */
  folderChanged(): void {
    this.#folder = undefined;
  }

  /** Asks for what rests on topics, once the engine that answers has the folder kept on the device. */
  async #callWithFolder<K extends keyof Service>(name: K, ...args: Parameters<Service[K]>): Promise<Answer<K>> {
    let folder: ToldFolder;
    do {
      folder = this.#folderOf(this.#opened());
      await folder.told;
      // An engine that started again, or another folder, has not been told yet.
    } while (folder !== this.#folder || folder.port !== this.#port);
    return this.#call(name, ...args);
  }

  #folderOf(port: Port): ToldFolder {
    if (this.#folder?.port === port) return this.#folder;
    const told = this.#kept().then((kept) => this.#call("useFolder", kept));
    const folder = { port, told };
    // What could not be told is told again when it is next asked.
    told.catch(() => {
      if (this.#folder === folder) this.#folder = undefined;
    });
    this.#folder = folder;
    return folder;
  }

  #call<K extends keyof Service>(name: K, ...args: Parameters<Service[K]>): Promise<Answer<K>> {
    return new Promise<Answer<K>>((resolve, reject) => {
      this.#count += 1;
      this.#waiting.set(this.#count, { resolve: resolve as Waiting["resolve"], reject });
      try {
        this.#opened().postMessage({ id: this.#count, name, args });
      } catch (error) {
        this.#waiting.delete(this.#count);
        reject(error instanceof Error ? error : new Error(String(error)));
      }
    });
  }

  #opened(): Port {
    if (this.#port !== undefined) return this.#port;
    const port = this.#start();
    port.onmessage = ({ data }) => this.#take(data);
    port.onerror = (event) => this.#broken(event.message || "the engine stopped");
    this.#port = port;
    return port;
  }

  #take(reply: Reply): void {
    const waiting = this.#waiting.get(reply.id);
    this.#waiting.delete(reply.id);
    if ("failed" in reply) waiting?.reject(new Error(reply.failed));
    else waiting?.resolve(reply.value as never);
  }

  /** Nobody waits for an engine that has stopped; the next request starts another. */
  #broken(reason: string): void {
    this.#port?.terminate();
    this.#port = undefined;
    this.#places.clear();
    const waiting = [...this.#waiting.values()];
    this.#waiting.clear();
    for (const { reject } of waiting) reject(new Error(reason));
  }
}
