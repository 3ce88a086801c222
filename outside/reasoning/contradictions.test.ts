import { CHECKS } from "@good-grounds/computations";
import { outcomeOf, reasonObservations } from "@good-grounds/judgement";
import { openPointWords } from "@good-grounds/report";
import { describe, expect, test } from "vitest";
import { delayedRcd, rcd, reasonedIn, weighedHouse } from "./rcd-house.ts";

const dead = { circuit: rcd("30 mA", "dead"), board: delayedRcd("100 mA", "dead") };

/** An observation about the socket circuit of the house. */
function about(topic: string, facts: Record<string, unknown>, choice?: string, rcds: Record<string, unknown> = dead) {
  const chosen = choice === undefined ? {} : { choice: { classification: choice, reason: "as seen", by: "inspector" } };
  return reasonedIn({ rcds, observation: { topic, board: "b", circuit: "c", facts, ...chosen } } as never);
}

describe("what the observation says against what a finding of the same subject shows", () => {
  const pond = { voltage: "mains", cable: "sound" };

  test("neither is silently preferred: both readings stay possible, and the fact stays open", () => {
    const one = about("pond-or-water-feature", { ...pond, "rcd-30ma": true });
    expect(one.against.map(({ fact, value }) => [fact, value])).toEqual([["rcd-30ma", "no"]]);
    expect(one.reasoning.possible).toContain("C2");
    expect(one.reasoning.classification).toBeNull();
    expect(one.reasoning.open).toContain("rcd-30ma");
  });

  test("a choice below the worse of both readings differs, whichever of them was stated", () => {
    expect(about("pond-or-water-feature", { ...pond, "rcd-30ma": true }, "none").choice).toBe("differs");
    expect(about("pond-or-water-feature", { ...pond, "rcd-30ma": true }, "C2").choice).not.toBe("differs");
    const sound = { circuit: rcd("30 mA", "works") };
    const stated = { disconnects: "not-in-time" };
    expect(about("zs-over-limit", stated, "none", sound).choice).toBe("differs");
    expect(about("zs-over-limit", stated, "none", sound).reasoning.possible).toContain("C2");
  });

  test("a limitation is no contradiction: it stands, and what the finding shows is beside it", () => {
    const limited = { notKnown: "limited", reason: "the board could not be opened" };
    const one = about("pond-or-water-feature", { ...pond, "rcd-30ma": limited });
    expect(one.worked).toEqual([]);
    expect(one.reasoning.unsettled).toEqual(["rcd-30ma"]);
    expect(one.against.map(({ fact, value }) => [fact, value])).toEqual([["rcd-30ma", "no"]]);
  });

  test("what the observation left open as several is narrowed by what a finding shows", () => {
    const one = about("rcd-none-tt", { rcd: "working | none", "earthing-system": "tt" });
    expect(one.recorded.find(({ fact }) => fact === "rcd")?.value).toBe("none");
    expect(one.against).toEqual([]);
  });
});

describe("in the ledger of what stands open", () => {
  const pond = { voltage: "mains", cable: "sound" };
  const pointsOf = (facts: Record<string, unknown>, reason: string) => {
    const choice = { classification: "C3", reason, by: "inspector" };
    const observation = { topic: "pond-or-water-feature", board: "b", circuit: "c", facts, choice };
    const { installation, weighing } = weighedHouse({ rcds: dead, observation });
    const { points } = outcomeOf(installation, weighing, reasonObservations(installation, weighing), []);
    return { points: points.filter(({ kind }) => kind === "contradiction"), installation };
  };

  test("a contradiction without a written reason is a point of its own", () => {
    const { points, installation } = pointsOf({ ...pond, "rcd-30ma": true }, "–");
    expect(points).toEqual([{ kind: "contradiction", about: "stated-against-file", places: [["observations", 0]] }]);
    const [point] = points;
    if (point === undefined) throw new Error("no point");
    expect(openPointWords(point, { installation, checks: CHECKS })).toMatch(
      /contradicts.*house \(observation 1\).*Settle/,
    );
  });

  test("one that somebody wrote a reason for is none, nor is what fits", () => {
    expect(pointsOf({ ...pond, "rcd-30ma": true }, "The pond has an RCD of its own, tested.").points).toEqual([]);
    expect(pointsOf({ ...pond, "rcd-30ma": false }, "–").points).toEqual([]);
    const limited = { notKnown: "limited", reason: "the board could not be opened" };
    expect(pointsOf({ ...pond, "rcd-30ma": limited }, "–").points).toEqual([]);
  });
});
