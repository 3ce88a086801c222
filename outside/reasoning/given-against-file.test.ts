import { CHECKS } from "@good-grounds/computations";
import { COMERS, COVERINGS, ENTRIES, FIRMNESSES, OBSTACLES, OPENED_BY } from "@good-grounds/core";
import { outcomeOf, reasonObservations } from "@good-grounds/judgement";
import { openPointWords, reasoningParts } from "@good-grounds/report";
import { TOPICS, topicById } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import { weighedHouse } from "./rcd-house.ts";
import { reasonedInExample } from "./reasoned-example.ts";

/** An observation with an enclosure that it brings in, recorded as given. */
const about = (topic: string, board: Record<string, unknown>, facts: Record<string, unknown> = {}, choice?: object) =>
  reasonedInExample({ topic, facts, brings: { enclosures: [{ id: "it", kind: "board", ...board }] }, ...choice });

const SCREWED = { firmness: "whole", hinges: true, openedBy: "tool", comers: "anyone" };

describe("what a subject takes as given and the file records otherwise", () => {
  test("a hand gets in, under the missing inner shield: shown, nothing follows, and no choice below C1 passes", () => {
    const one = about(
      "board-inner-shield",
      { ...SCREWED, entry: "hand" },
      { "barrier-behind": true },
      { choice: { classification: "none", reason: "–", by: "inspector" } },
    );
    expect(one.against.map(({ fact, value, stated }) => [fact, value, stated])).toEqual([
      ["gets-in", "hand", "nothing"],
    ]);
    expect(one.reasoning.possible).toContain("C1");
    expect(one.reasoning.classification).toBeNull();
    expect([one.least, one.choice]).toEqual(["C1", "differs"]);
    const [first] = reasoningParts(one);
    expect(first?.lines.map(({ words }) => words)).toEqual([
      "The inspection file (what gets in: hand) says that a hand or more goes in and reaches the live part, or nothing is around it. The subject of the observation takes it that nothing that matters gets in. Settle which is so; where the file is right, another subject is meant, such as basic-protection.",
    ]);
  });

  test("nothing gets in, under bare parts out of reach: better than the subject has it, and not preferred", () => {
    const one = about(
      "live-parts-out-of-reach",
      { ...SCREWED, entry: "nothing" },
      { "arms-reach": "within", obstacle: "none" },
    );
    expect(one.against.map(({ fact, value, stated }) => [fact, value, stated])).toContainEqual([
      "gets-in",
      "nothing",
      "hand",
    ]);
    expect(one.reasoning.possible).toContain("C1");
    expect(one.reasoning.classification).toBeNull();
    expect(one.least).toBe("C1");
  });

  test("stands open in the ledger until somebody writes why", () => {
    const pointsOf = (reason: string) => {
      const { installation, weighing } = weighedHouse({
        rcds: {},
        observation: {
          topic: "board-inner-shield",
          facts: { "barrier-behind": true },
          brings: { enclosures: [{ id: "it", kind: "board", ...SCREWED, entry: "hand" }] },
          choice: { classification: "C1", reason, by: "inspector" },
        },
      } as never);
      const { points } = outcomeOf(installation, weighing, reasonObservations(installation, weighing), []);
      return points
        .filter(({ kind }) => kind === "contradiction")
        .map((point) => openPointWords(point, { installation, checks: CHECKS }));
    };
    expect(pointsOf("–")).toEqual([expect.stringMatching(/contradicts.*Settle/)]);
    expect(pointsOf("The board was opened afterwards, and closed again.")).toEqual([]);
  });

  test("what the subject makes of it by other means is no matter: no route to live metal, no contradiction", () => {
    const one = about(
      "farm-protection",
      { entry: "hand", openedBy: "hand" },
      { "rcd-socket": true, "rcd-fire": true, livestock: false, damage: "sound" },
    );
    expect(one.against).toEqual([]);
    expect(one.reasoning.possible).toEqual(["none"]);
  });

  test("what fits is neither shown nor asked", () => {
    const one = about(
      "board-inner-shield",
      { ...SCREWED, entry: "nothing", covering: "bare" },
      { "barrier-behind": false },
    );
    expect(one.against).toEqual([]);
    expect(one.reasoning.possible).toEqual(["C3"]);
  });
});

/** Every value of the properties of an enclosure on which basic protection rests. */
const RECORDS = Object.entries({
  covering: COVERINGS,
  entry: ENTRIES,
  firmness: FIRMNESSES,
  openedBy: OPENED_BY,
  obstacle: OBSTACLES,
  comers: COMERS,
}).flatMap(([member, words]) => words.map((word) => ({ [member]: word })));

const OF_TOUCH = TOPICS.filter(({ given }) => given !== undefined);

test("there are enough subjects that take something as given", () => {
  expect(OF_TOUCH.length).toBeGreaterThan(30);
});

describe.each(OF_TOUCH.map((topic) => [topic.id, topic] as const))("%s", (id, topic) => {
  test("nothing that the file records of the state is passed over: what it gives stays possible", () => {
    const owner = topicById("basic-protection");
    if (owner === undefined) throw new Error("no topic basic-protection");
    for (const record of RECORDS) {
      const one = about(id, record);
      const isThere = one.reasoning.paths.some(
        ({ exists, layers }) =>
          exists.truth !== "false" &&
          layers.some(({ layer }) => layer.gone.op === "state" && layer.gone.state === "basic-protection"),
      );
      if (!isThere) continue;
      const given = Object.entries(topic.given ?? {});
      for (const { fact, value } of about("basic-protection", record).recorded) {
        const left = given.find(([name]) => name === fact)?.[1];
        if (left === undefined) continue;
        const said = value.split(" | ");
        const others = Object.fromEntries(given.map(([name, values]) => [name, values.join(" | ")]));
        const by = (answer: string) =>
          reasonedInExample({ topic: "basic-protection", facts: { ...others, [fact]: answer } }).reasoning.possible;
        const [byFile, bySubject] = [by(value), by(left.join(" | "))];
        const fits = left.length === 1 ? said.includes(left[0] ?? "") : said.every((one) => left.includes(one));
        if (fits || byFile.join() === bySubject.join()) continue;
        const place = `${id}: ${JSON.stringify(record)}`;
        expect(one.reasoning.possible, place).toEqual(expect.arrayContaining([...byFile]));
        if (!said.some((answer) => left.includes(answer)))
          expect(
            one.against.map((other) => [other.fact, other.value]),
            place,
          ).toContainEqual([fact, value]);
      }
    }
  });
});

describe("one state recorded in the file has one class", () => {
  const RECORDED = { entry: "nothing", firmness: "fixings-missing", hinges: true, openedBy: "tool", comers: "anyone" };

  test.each([
    [
      "basic-protection",
      { "live-covering": "bare", "meant-insulated": "no", "barrier-behind": false, "arms-reach": "within" },
    ],
    ["board-cover-missing", {}],
    ["board-blank-missing", {}],
    ["board-cable-entry", { edge: "guarded", "case-fault-cleared": true }],
    ["fuse-carrier-broken", { drawn: "shielded" }],
    ["board-inner-shield", { "barrier-behind": false }],
  ])("%s: a lid that lost fixings and is held all the same", (topic, facts) => {
    expect(about(topic, RECORDED, facts).reasoning.possible).toEqual(["C3", "C2"]);
  });

  test.each(["board-cover-missing", "board-blank-missing"])("%s: two of six screws, said by the inspector", (topic) => {
    const { reasoning } = about(topic, { ...RECORDED, firmness: undefined }, { "cover-fixing": "part-held" });
    expect(reasoning.classification).toBe("C2");
  });
});
