import { readFileSync } from "node:fs";
import { describe, expect, it, vi } from "vitest";
import { Engine, type Port } from "./messenger.ts";
import { oneCircuit } from "./one-circuit.ts";
import type { Data, Reply, Request } from "./protocol.ts";
import { openService } from "./service/index.ts";

const EXAMPLE = new URL("../../../../examples/terraced-house.json", import.meta.url);
const house = (): Data => JSON.parse(readFileSync(EXAMPLE, "utf8")) as Data;

/** The service without a worker: answers come later, in turn, as from a worker. */
class InProcess implements Port {
  onmessage: Port["onmessage"] = null;
  onerror: Port["onerror"] = null;
  readonly asked: Request[] = [];
  readonly #service = openService();
  /** Answers wait for this. */
  until: Promise<void> = Promise.resolve();
  terminate(): void {}

  postMessage(request: Request): void {
    this.asked.push(request);
    void this.#answer(structuredClone(request)).then((data) => this.onmessage?.({ data }));
  }

  async #answer({ id, name, args }: Request): Promise<Reply> {
    await this.until;
    try {
      return { id, value: structuredClone(await (this.#service[name] as (...given: unknown[]) => unknown)(...args)) };
    } catch (error) {
      return { id, failed: String(error) };
    }
  }
}

function open(): { readonly engine: Engine; readonly port: InProcess } {
  const port = new InProcess();
  return { engine: new Engine(() => port), port };
}

describe("papers for one reader", () => {
  // The layout engine is fetched from beside the app, by names the build writes; the other forms need none.
  vi.stubGlobal("WRITER_PARTS", {});
  it.each([
    ["letter", "html", "<!DOCTYPE html>"],
    ["letter", "txt", "Your electric safety test"],
    ["works", "csv", "\u{feff}Report,"],
    ["tenant", "html", "<!DOCTYPE html>"],
  ] as const)("%s as %s", async (kind, form, begins) => {
    const { engine } = open();
    const written = await engine.paper(kind, form, readFileSync(EXAMPLE, "utf8"));
    expect(String(written).startsWith(begins)).toBe(true);
  });

  it("the list of works as workbook", async () => {
    const { engine } = open();
    const written = await engine.paper("works", "xlsx", readFileSync(EXAMPLE, "utf8"));
    expect(
      Buffer.from(written as Uint8Array)
        .subarray(0, 2)
        .toString(),
    ).toBe("PK");
  });

  it("none of a file that is not complete", async () => {
    const { engine } = open();
    await expect(engine.paper("letter", "html", "{}")).rejects.toThrow("not complete");
  });
});

describe("the engine, weighing a job", () => {
  it("weighs a job with every place named as in the record", async () => {
    const view = await open().engine.weigh(house());
    expect(view?.missing).toEqual([]);
    const circuit = view?.places.find(({ path }) => path === "boards/cu/circuits/c1");
    expect(circuit?.kind).toBe("circuit");
    const zs = circuit?.findings.find(({ check }) => check === "maximum-zs");
    expect(zs).toMatchObject({ verdict: "met", limit: "at most 1.37 Ω", marginWords: "63\u00a0% in hand" });
    expect(zs?.bar).toMatch(/^<svg/);
    expect(view?.places.filter(({ kind }) => kind === "bond").map(({ path }) => path)).toEqual([
      "supply/bonding/gas",
      "supply/bonding/water",
    ]);
  });

  it("gives no verdict that would rest on what nobody wrote down", async () => {
    const data = oneCircuit({});
    const { use: _, ...brief } = data.brief as { readonly use: string };
    const lights = structuredClone(data) as { boards: { circuits: { load?: string; socketOutlets?: boolean }[] }[] };
    Object.assign(lights.boards[0]?.circuits[0] ?? {}, { load: "lighting", socketOutlets: false });
    const { engine } = open();
    const find = (view: Awaited<ReturnType<Engine["weigh"]>>) =>
      view?.places
        .find(({ kind }) => kind === "circuit")
        ?.findings.find(({ check }) => check === "additional-protection");
    expect(find(await engine.weigh(lights as unknown as Data))?.verdict).toBe("not-met");
    const without = find(await engine.weigh({ ...(lights as unknown as Data), brief }));
    expect(without?.verdict).toBe("not-known");
    expect(without?.missing).toContain("use of the premises");
  });

  it("keeps places that did not change as the same objects", async () => {
    const { engine } = open();
    const before = await engine.weigh(house());
    const data = structuredClone(house()) as { boards: { circuits: { readings: { zs: { shown: string } } }[] }[] };
    Object.assign(data.boards[0]?.circuits[0]?.readings.zs ?? {}, { shown: "1.36 Ω" });
    const after = await engine.weigh(data as unknown as Data);
    const at = (view: typeof before, path: string) => view?.places.find((place) => place.path === path);
    expect(at(after, "boards/cu/circuits/c2")).toBe(at(before, "boards/cu/circuits/c2"));
    expect(at(after, "boards/cu/circuits/c1")).not.toBe(at(before, "boards/cu/circuits/c1"));
    expect(at(after, "boards/cu/circuits/c1")?.worst).not.toBe("met");
  });

  it("tells what damaged data is about and weighs the rest", async () => {
    const view = await open().engine.weigh(oneCircuit({ zs: { shown: "abc" } }));
    expect(view?.trouble[0]?.path).toBe("boards/cu/circuits/c1/readings/zs/shown");
    expect(view?.trouble[0]?.place).toBe("CU, circuit 1, zs, shown");
    expect(view?.places.some(({ kind }) => kind === "circuit")).toBe(true);
  });

  it("names what keeps a job from being finished", async () => {
    const { engine } = open();
    expect(await engine.check(house())).toEqual([]);
    const troubles = await engine.check(oneCircuit({}));
    expect(troubles.map(({ words }) => words)).toContain("Extent is missing.");
  });
});

describe("the engine, asked again and again", () => {
  it("answers the last of several requests and lets the others go", async () => {
    const { engine, port } = open();
    const answers = await Promise.all([
      engine.weigh(oneCircuit({})),
      engine.weigh(oneCircuit({ zs: { shown: "1.00 Ω" } })),
      engine.weigh(oneCircuit({ zs: { shown: "9.00 Ω" } })),
    ]);
    expect(answers.slice(0, 2)).toEqual([undefined, undefined]);
    const zs = answers[2]?.places
      .find(({ kind }) => kind === "circuit")
      ?.findings.find((one) => one.check === "maximum-zs");
    expect(zs?.verdict).toBe("not-met");
    expect(port.asked.length).toBe(1);
  });

  it("lets go of a request that is overtaken while it is worked on", async () => {
    const { engine, port } = open();
    let goOn = () => {};
    port.until = new Promise((done) => {
      goOn = done;
    });
    const first = engine.weigh(oneCircuit({}));
    await expect.poll(() => port.asked.length).toBe(1);
    const second = engine.weigh(house());
    goOn();
    expect(await first).toBeUndefined();
    expect((await second)?.places.some(({ path }) => path === "boards/cu/circuits/c9")).toBe(true);
  });

  it("says why where nothing can be read, and goes on working", async () => {
    const { engine } = open();
    await expect(engine.weigh([] as unknown as Data)).rejects.toThrow(/cannot be read/);
    expect((await engine.weigh(house()))?.places.length).toBeGreaterThan(3);
  });

  it("starts again after it broke down", async () => {
    const ports = [new InProcess(), new InProcess()];
    const started: InProcess[] = [];
    const engine = new Engine(() => {
      const port = ports[started.length] as InProcess;
      started.push(port);
      return port;
    });
    const broken = ports[0] as InProcess;
    broken.postMessage = () => broken.onerror?.({ message: "out of memory" });
    await expect(engine.check(house())).rejects.toThrow("out of memory");
    expect(await engine.check(house())).toEqual([]);
    expect(started.length).toBe(2);
  });
});

describe("the engine, about what was weighed", () => {
  it("gives the argument of a finding line by line", async () => {
    const { engine } = open();
    await engine.weigh(house());
    const lines = await engine.argument("boards/cu/circuits/c1", "maximum-zs");
    expect(lines[0]).toMatchObject({ depth: 0, tag: "met" });
    expect(lines.some(({ tag, words }) => tag === "measured" && words.includes("0.45 Ω"))).toBe(true);
    expect(await engine.argument("boards/cu/circuits/c1", "no-such-check")).toEqual([]);
  });

  it("draws what was weighed", async () => {
    const { engine } = open();
    await engine.weigh(house());
    const { diagram, curves, rings, samples } = await engine.pictures();
    expect(diagram[0]).toMatch(/Consumer unit/);
    expect(curves.every(({ svg }) => svg.startsWith("<svg"))).toBe(true);
    expect(samples[0]?.leaves).toMatch(/95 % assurance/);
    expect(rings.map(({ words: [first] }) => first?.replace(/\d+ %/, "p %").slice(0, 31))).toEqual([
      "Most likely (p %): a sound ring",
      "Most likely (p %): socket 5 han",
    ]);
    expect(rings[1]?.svg).toMatch(/spur, about 3\.[1-5] m/);
  });

  it("sets readings beside those of earlier inspections", async () => {
    const { engine } = open();
    await engine.weigh(house());
    const earlier = { ...house(), id: "earlier", inspectedOn: "2021-09-30" };
    const trends = await engine.trends([earlier, { ...earlier, id: "later", inspectedOn: "2027-01-01" }]);
    expect(trends.length).toBeGreaterThan(0);
    expect(trends.every(({ svg, words }) => svg.startsWith("<svg") && words !== "")).toBe(true);
    expect(await engine.trends([])).toEqual([]);
  });
});

describe("the engine, reasoning", () => {
  it("reasons about a topic, and takes in what was measured at the place", async () => {
    const { engine } = open();
    const [topic] = (await engine.topics()).filter(({ id }) => id === "accessory-broken");
    expect(topic?.groupTitle).toBe("Accessories and equipment");
    const view = await engine.reason("accessory-broken", {});
    expect(view.next?.leaves.length).toBeGreaterThan(1);
    const [value] = view.next?.leaves ?? [];
    const after = await engine.reason("accessory-broken", { [view.next?.fact ?? ""]: value?.value ?? "" });
    expect(after.facts.find(({ fact }) => fact === view.next?.fact)?.known?.words).toBeTruthy();
    expect((await engine.reason("accessory-broken", { nonsense: "yes" })).faults[0]?.name).toBe("nonsense");
    await expect(engine.reason("no-such-topic", {})).rejects.toThrow(/no-such-topic/);
  });

  it("tells whether a bare part lies out of arm's reach, and draws it", async () => {
    const { engine } = open();
    const answer = async (height: number, beside: number, objects: number) =>
      (await engine.reach({ height, beside, objects })).answer;
    expect(await answer(3.2, 0, 0)).toBe("beyond");
    expect(await answer(3.2, 0, 2)).toBe("long-objects");
    expect(await answer(2, 0.5, 0)).toBe("in-reach");
    expect((await engine.reach({ height: 2, beside: 0.5, objects: 0 })).svg).toContain("<svg");
  });

  it("takes the measures of an opening instead of a probe, and draws the section", async () => {
    const { engine } = open();
    const opening = {
      shape: "rectangular",
      width: "17.5 mm",
      height: "45 mm",
      offset: "0 mm",
      face: "front",
      "barrier-behind": "none",
    };
    const near = await engine.reason("board-blank-missing", { ...opening, depth: "25 mm" });
    const far = await engine.reason("board-blank-missing", { ...opening, depth: "300 mm" });
    expect(near.worked.map(({ by }) => by)).toEqual(["opening-access"]);
    expect(near.worked[0]?.words).not.toBe(far.worked[0]?.words);
    expect(near.section).toContain("<svg");
    expect(near.figures.find(({ name }) => name === "depth")?.given).toBe("25 mm");
    expect((await engine.reason("board-blank-missing", {})).section).toBeUndefined();
    expect((await engine.reason("ring-broken", {})).figures).toEqual([]);
  });
});
