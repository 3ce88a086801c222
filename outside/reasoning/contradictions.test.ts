import { describe, expect, test } from "vitest";
import { delayedRcd, rcd, reasonedIn } from "./rcd-house.ts";

const dead = { circuit: rcd("30 mA", "dead"), board: delayedRcd("100 mA", "dead") };

/** An observation about the socket circuit of the house. */
function about(topic: string, facts: Record<string, unknown>, choice?: string, rcds: Record<string, unknown> = dead) {
  const chosen = choice === undefined ? {} : { choice: { classification: choice, reason: "as seen", by: "inspector" } };
  return reasonedIn({ rcds, observation: { topic, board: "b", circuit: "c", facts, ...chosen } } as never);
}

describe("what the observation says against what a finding of the same subject shows", () => {
  const bath = { bonding: false, parts: "earthed-metal", "electric-shower": false };

  test("neither is silently preferred: both readings stay possible, and the fact stays open", () => {
    const one = about("bath-rcd-and-bonding", { ...bath, "rcd-30ma": true });
    expect(one.against.map(({ fact, value }) => [fact, value])).toEqual([["rcd-30ma", "no"]]);
    expect(one.reasoning.possible).toContain("C2");
    expect(one.reasoning.classification).toBeNull();
    expect(one.reasoning.open).toContain("rcd-30ma");
  });

  test("a choice below the worse of both readings differs, whichever of them was stated", () => {
    expect(about("bath-rcd-and-bonding", { ...bath, "rcd-30ma": true }, "none").choice).toBe("differs");
    expect(about("bath-rcd-and-bonding", { ...bath, "rcd-30ma": true }, "C2").choice).not.toBe("differs");
    const sound = { circuit: rcd("30 mA", "works") };
    const stated = { disconnects: "not-in-time" };
    expect(about("zs-over-limit", stated, "none", sound).choice).toBe("differs");
    expect(about("zs-over-limit", stated, "none", sound).reasoning.possible).toContain("C2");
  });

  test("a limitation is no contradiction: it stands, and what the finding shows is beside it", () => {
    const limited = { notKnown: "limited", reason: "the board could not be opened" };
    const one = about("bath-rcd-and-bonding", { ...bath, "rcd-30ma": limited });
    expect(one.worked).toEqual([]);
    expect(one.reasoning.unsettled).toEqual(["rcd-30ma"]);
    expect(one.against.map(({ fact, value }) => [fact, value])).toEqual([["rcd-30ma", "no"]]);
  });

  test("what the observation left open as several is narrowed by what a finding shows", () => {
    const one = about("rcd-none-tt", { rcd: "working | none", system: "tt" });
    expect(one.worked.find(({ fact }) => fact === "rcd")?.value).toBe("none");
    expect(one.against).toEqual([]);
  });
});
