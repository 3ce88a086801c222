import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { hashOf } from "@good-grounds/topics/texts";
import { describe, expect, it } from "vitest";
import type { FolderText, KeptFolder } from "./folder-view.ts";
import { Engine, type Port } from "./messenger.ts";
import type { Data, Reply, Request } from "./protocol.ts";
import { openService } from "./service/index.ts";

const FIRM = fileURLToPath(new URL("../../../../outside/topics/a-firm", import.meta.url));
const HOUSE = readFileSync(new URL("../../../../examples/terraced-house.json", import.meta.url), "utf8");

const texts: readonly FolderText[] = readdirSync(FIRM, { recursive: true, encoding: "utf8" })
  .filter((name) => /\.topics?$/.test(name))
  .map((file) => ({ file, text: readFileSync(join(FIRM, file), "utf8") }));

const STOVE = "topics/socket-behind-stove.topic";
const changed = (file: string, from: string, to: string) =>
  texts.map((one) => (one.file === file ? { file, text: one.text.replaceAll(from, to) } : one));

/** The service without a worker, which can break down. */
class InProcess implements Port {
  onmessage: Port["onmessage"] = null;
  onerror: Port["onerror"] = null;
  readonly asked: string[] = [];
  readonly #service = openService();
  terminate(): void {}
  postMessage({ id, name, args }: Request): void {
    this.asked.push(name);
    void this.#answer(id, name, structuredClone(args)).then((data) => this.onmessage?.({ data }));
  }
  async #answer(id: number, name: Request["name"], args: Request["args"]): Promise<Reply> {
    try {
      return { id, value: structuredClone(await (this.#service[name] as (...given: unknown[]) => unknown)(...args)) };
    } catch (error) {
      return { id, failed: String(error) };
    }
  }
}

function open(kept?: KeptFolder) {
  const ports: InProcess[] = [];
  const start = () => {
    const port = new InProcess();
    ports.push(port);
    return port;
  };
  let held = kept;
  const engine = new Engine(start, async () => held);
  return { engine, ports, keep: (next: KeptFolder | undefined) => (held = next) };
}

async function proved(): Promise<KeptFolder> {
  const tried = await open().engine.tryFolder(texts);
  if (!tried.isWell) throw new Error(tried.problems.join("\n"));
  return tried.kept;
}

describe("a firm's folder, tried", () => {
  it("is taken with its hash where all is well", async () => {
    const tried = await open().engine.tryFolder(texts);
    expect(tried).toMatchObject({
      isWell: true,
      kept: { label: { name: "Example Electrical (an invented firm)", answersFor: "A. Example" } },
      words: "1 topic, 1 changed, 2 views; 9 laws kept.",
      writtenAgainst: "000000000000",
    });
    expect(tried.isWell && tried.kept.label.hash).toMatch(/^[0-9a-f]{64}$/);
  });

  it("tells a misspelt name at its line and column, with the line itself and what may be meant", async () => {
    const tried = await open().engine.tryFolder(changed(STOVE, "when not pulled", "when not puled"));
    if (tried.isWell) throw new Error("it was taken");
    expect(tried.problems[0]).toContain(`${STOVE}:26:14  nothing here is called "puled"`);
    expect(tried.problems[0]).toContain('is it "pulled"?');
  });

  it("tells a law that is not kept with an example and what decided", async () => {
    const tried = await open().engine.tryFolder(
      changed(STOVE, "gone when reached is harmed", "gone when reached is warm"),
    );
    if (tried.isWell) throw new Error("it was taken");
    const words = tried.problems.join("\n");
    expect(words).toContain("law monotone: no worsening of a fact lowers the class");
    expect(words).toContain("an example that shows it, to be pasted:\n    example reached is harmed\n");
    expect(words).toContain(`what decided:\n    ${STOVE}:17  route burns: `);
  });

  it("tells a check that is not there", async () => {
    const tried = await open().engine.tryFolder(
      changed(
        STOVE,
        "found by glance\n    plain if the plug",
        "found by glance\n    answered by plug-pulls: yes when met\n    plain if the plug",
      ),
    );
    expect(tried.isWell ? [] : tried.problems[0]).toContain('no check is called "plug-pulls"');
  });
});

describe("a firm's folder, kept", () => {
  it("is searched, asked and reasoned with, its views taken where the person took none", async () => {
    const { engine } = open(await proved());
    expect((await engine.topics("stove")).map(({ id }) => id)).toContain("socket-behind-stove");
    expect((await engine.reason("socket-behind-stove", { reached: "harmed", pulled: "no" })).classification).toBe("C1");
    const facts = { "gets-in": "finger", "cover-fixing": "hole", "who-comes": "skilled-only" };
    expect((await engine.reason("board-blank-missing", facts)).classification).toBe("C1");
    expect((await engine.reason("board-blank-missing", facts, { "locked-board": "counts" })).classification).toBe("C2");
    expect((await open().engine.reason("board-blank-missing", facts)).classification).toBe("C2");
  });

  it("goes into the outcome as well", async () => {
    const house = JSON.parse(HOUSE) as { observations: object[] };
    house.observations = [
      {
        id: "o1",
        place: "kitchen",
        what: "socket behind the stove",
        topic: "socket-behind-stove",
        facts: { reached: "harmed", pulled: false },
      },
    ];
    const above = async (kept: KeptFolder | undefined) =>
      (await open(kept).engine.outcome(house as unknown as Data)).points.map(({ words }) => words).join("\n");
    expect(await above(await proved())).not.toBe(await above(undefined));
  });

  it("is told again to an engine that starts again, and another one is used from then on", async () => {
    const kept = await proved();
    const { engine, ports, keep } = open(kept);
    await engine.topics();
    await engine.topics();
    expect(ports[0]?.asked).toEqual(["useFolder", "topics", "topics"]);
    ports[0]?.onerror?.({ message: "out of memory" });
    expect((await engine.topics()).some(({ id }) => id === "socket-behind-stove")).toBe(true);
    keep(undefined);
    engine.folderChanged();
    expect((await engine.topics()).some(({ id }) => id === "socket-behind-stove")).toBe(false);
  });

  it("that fails lets nothing be reasoned without it", async () => {
    const kept = await proved();
    const broken = { ...kept, texts: changed(STOVE, "when not pulled", "when not puled") };
    await expect(open(broken).engine.reason("ring-broken", {})).rejects.toThrow(/cannot be used.*puled/s);
    const other = { ...kept, texts: changed("views.topics", "keep lists of keys", "keep lists of all keys") };
    await expect(open(other).engine.topics()).rejects.toThrow(/not those that were proved/);
    const unlawful = changed(STOVE, "gone when reached is harmed", "gone when reached is warm");
    const older = { ...kept, texts: unlawful, label: { ...kept.label, hash: hashOf(unlawful) }, provedBeside: "older" };
    await expect(open(older).engine.outcome({})).rejects.toThrow(/cannot be used.*law examples/s);
  });
});
