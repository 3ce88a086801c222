import { CHECKS } from "@good-grounds/computations";
import { nodesOf, SEVERITIES } from "@good-grounds/core";
import { TOPICS } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import {
  delayedRcd,
  FAILED,
  findingOf,
  type House,
  missing,
  OPEN,
  type RcdState,
  rcd,
  reasonedIn,
  verdictOf,
} from "./rcd-house.ts";

/** Checks that an RCD can carry by itself: each asks what its test showed. */
const LEANING = CHECKS.filter(({ needs }) => Object.values(needs).some(({ kind }) => kind === "rcd-tests"));

const behind = (state: RcdState, more: Partial<House> = {}): House => ({
  rcds: { circuit: rcd("30 mA", state) },
  ...more,
});

test("the checks that lean on an RCD are known", () => {
  expect(LEANING.map(({ id }) => id).sort()).toEqual([
    "additional-protection",
    "cpc-adiabatic",
    "electrode",
    "maximum-zs",
  ]);
});

describe.each(["maximum-zs", "additional-protection", "electrode"])("%s, resting on one RCD", (check) => {
  test.each(["works", "works, button dead"] as const)("%s: met", (state) => {
    expect(verdictOf(behind(state), check)).toBe("met");
  });
  test.each(FAILED)("%s: not met", (state) => {
    expect(verdictOf(behind(state), check)).toBe("not-met");
  });
  test.each(OPEN)("%s: not known, and the test is named", (state) => {
    expect(verdictOf(behind(state), check)).toBe("not-known");
    expect(missing(behind(state), check)).toContain("rcd-time");
  });
});

describe("a delayed RCD that opened in time and whose button is dead", () => {
  const readings = { atRated: { shown: "212 ms" }, button: "does-not-trip" };
  const house = { rcds: { circuit: { ...delayedRcd("100 mA", "works"), readings } } } as unknown as House;
  test.each(["maximum-zs", "electrode"])("covers no circuit: %s is not known", (check) => {
    expect(verdictOf(house, check)).toBe("not-known");
  });
  test("the reader is told that nothing shows that it works", () => {
    expect(findingOf(house, "maximum-zs").remarks.map(({ code }) => code)).toContain("rcd-not-shown");
  });
});

describe("a protective conductor that only an RCD saves", () => {
  test("an RCD that works bounds the energy", () => {
    expect(verdictOf(behind("works"), "cpc-adiabatic")).toBe("met");
  });
  test.each([...FAILED, ...OPEN])("%s: not shown", (state) => {
    expect(verdictOf(behind(state), "cpc-adiabatic")).toBe("not-known");
  });
  test("one that opens, but slower at five times its current than its standard allows, bounds it by that time", () => {
    const readings = { atRated: { shown: "24.3 ms" }, atFive: { shown: "640 ms" }, button: "trips" };
    const slow = { ...rcd("30 mA", "works"), readings };
    const house = { rcds: { circuit: slow }, earthing: "TN-S" } as const;
    expect(verdictOf(behind("works", { earthing: "TN-S" }), "cpc-adiabatic")).toBe("met");
    // It is the breaker then that is expected to save it, which nothing proves.
    expect(findingOf(house, "cpc-adiabatic").judgement).toMatchObject({ verdict: "met", grade: "expected" });
    expect(findingOf(behind("works", { earthing: "TN-S" }), "cpc-adiabatic").judgement.grade).toBe("proven");
  });
});

test("the reader is told what became of an RCD that does not count, and not that one is missing", () => {
  const codes = (state: RcdState, check: string) => findingOf(behind(state), check).remarks.map(({ code }) => code);
  for (const check of ["maximum-zs", "additional-protection"]) {
    for (const state of FAILED) expect(codes(state, check)).toContain("rcd-failed");
    for (const state of OPEN) expect(codes(state, check)).toContain("rcd-not-shown");
    expect(codes("works", check)).not.toContain("rcd-failed");
  }
  expect(codes("dead", "additional-protection")).not.toContain("departure-from-today");
});

describe("what does not hang on the test", () => {
  test("a low loop: the breaker disconnects by itself, whatever the RCD does", () => {
    for (const state of ["works", ...FAILED, ...OPEN] as const)
      expect(verdictOf(behind(state, { earthing: "TN-S" }), "maximum-zs"), state).toBe("met");
  });
  test("no RCD at all", () => {
    expect(verdictOf({ rcds: {} }, "maximum-zs")).toBe("not-met");
    expect(verdictOf({ rcds: {} }, "additional-protection")).toBe("not-met");
  });
  test("an RCD that is not sensitive enough is none of additional protection, tested or not", () => {
    for (const state of ["works", ...FAILED, ...OPEN] as const)
      expect(verdictOf({ rcds: { circuit: rcd("300 mA", state) } }, "additional-protection"), state).toBe("not-met");
  });
  test("a display that ended at the limit is beyond it", () => {
    const readings = { atRated: { shown: ">300 ms" }, button: "trips" };
    const house = { rcds: { circuit: { ...rcd("30 mA", "works"), readings } } } as unknown as House;
    expect(verdictOf(house, "additional-protection")).toBe("not-met");
    expect(verdictOf(house, "rcd-time")).toBe("not-met");
  });
  test("a delayed RCD that opens too soon costs selectivity, and still disconnects", () => {
    const readings = { atRated: { shown: "96 ms" }, button: "trips" };
    const house = { rcds: { circuit: { ...delayedRcd("100 mA", "works"), readings } } } as unknown as House;
    expect(verdictOf(house, "maximum-zs")).toBe("met");
    expect(verdictOf(house, "rcd-time")).toBe("not-met");
  });
});

describe("marks that were not read", () => {
  const unmarked = (shown: string) => {
    const { standard: _, delay: __, ...rest } = rcd("30 mA", "works");
    return { rcds: { circuit: { ...rest, readings: { atRated: { shown } } } } } as unknown as House;
  };
  test.each([
    ["24.3 ms", "met", "in time by every standard"],
    ["210 ms", "not-known", "in time by some"],
    [">1999 ms", "not-met", "in time by none"],
  ])("%s: %s, %s", (shown, verdict) => {
    expect(verdictOf(unmarked(shown), "maximum-zs")).toBe(verdict);
    expect(verdictOf(unmarked(shown), "additional-protection")).toBe(verdict);
  });
});

describe("RCDs in series, the one at the circuit dead", () => {
  const dead = rcd("30 mA", "dead");
  test.each(["board", "feeder"] as const)("one of 30 mA that works, in the %s, stands in for it", (place) => {
    const house = { rcds: { circuit: dead, [place]: rcd("30 mA", "works") } };
    expect(verdictOf(house, "maximum-zs")).toBe("met");
    expect(verdictOf(house, "additional-protection")).toBe("met");
    expect(verdictOf(house, "electrode")).toBe("met");
  });
  test.each(["board", "feeder"] as const)(
    "a delayed one of 100 mA in the %s does so for disconnection only",
    (place) => {
      const house = { rcds: { circuit: dead, [place]: delayedRcd("100 mA", "works") } };
      expect(verdictOf(house, "maximum-zs")).toBe("met");
      expect(verdictOf(house, "electrode")).toBe("met");
      expect(verdictOf(house, "additional-protection")).toBe("not-met");
    },
  );
  test("a delayed one of 30 mA is no additional protection", () => {
    const house = { rcds: { circuit: dead, board: delayedRcd("30 mA", "works") } };
    expect(verdictOf(house, "additional-protection")).toBe("not-met");
  });
  test("one ahead that was not tested leaves it open", () => {
    const house = { rcds: { circuit: dead, feeder: rcd("30 mA", "untested") } };
    for (const check of ["maximum-zs", "additional-protection", "electrode"]) {
      expect(verdictOf(house, check)).toBe("not-known");
      expect(missing(house, check)).toContain("rcd-time");
    }
  });
  test("all of them dead: nothing disconnects", () => {
    const house = { rcds: { circuit: dead, board: rcd("30 mA", "dead"), feeder: delayedRcd("300 mA", "slow") } };
    for (const check of ["maximum-zs", "additional-protection", "electrode"])
      expect(verdictOf(house, check)).toBe("not-met");
  });
  test("both readings stand among the grounds", () => {
    const house = { rcds: { circuit: dead, board: rcd("30 mA", "works") } };
    const shown = [...nodesOf(findingOf(house, "maximum-zs").judgement)].flatMap((node) =>
      node.kind === "measured" && node.term.id === "rcd-time" ? [node.detail.text] : [],
    );
    expect(shown).toEqual([">1999 ms", "24.3 ms"]);
  });
});

describe("an old house on TT, both RCDs dead", () => {
  const rcds = { circuit: rcd("30 mA", "dead"), board: delayedRcd("100 mA", "dead") };
  const about = (topic: string, facts: Record<string, unknown>) =>
    reasonedIn({ rcds, observation: { topic, board: "b", circuit: "c", facts } });

  test("91 Ω: a fault is not disconnected", () => {
    expect(verdictOf({ rcds }, "maximum-zs")).toBe("not-met");
  });
  test("a bathroom without supplementary bonding is C2", () => {
    const facts = { bonding: false, parts: "earthed-metal", "electric-shower": false };
    expect(about("bath-rcd-and-bonding", facts).reasoning.classification).toBe("C2");
  });
  test("with its bonding it is a departure, and never nothing", () => {
    const facts = { bonding: true, parts: "earthed-metal", "electric-shower": false };
    expect(about("bath-rcd-and-bonding", facts).reasoning.classification).toBe("C3");
  });
  test("supplementary bonding where it is needed: neither the breaker nor an RCD disconnects", () => {
    const { worked, reasoning } = about("supplementary-bonding-needed", { "asked-by-place": false, bonded: false });
    expect(worked.map(({ fact, value }) => [fact, value])).toEqual([
      ["in-time", "no"],
      ["rcd-in-time", "no"],
    ]);
    expect(reasoning.classification).toBe("C2");
  });
  test("the breaker is not said to disconnect where it is an RCD that does", () => {
    const sound = { rcds: { circuit: rcd("30 mA", "works") } };
    const { worked } = reasonedIn({
      ...sound,
      observation: { topic: "supplementary-bonding-needed", board: "b", circuit: "c", facts: {} },
    });
    expect(worked.map(({ fact, value }) => [fact, value])).toEqual([
      ["in-time", "no"],
      ["rcd-in-time", "yes"],
    ]);
  });
  test("no RCD that works on TT", () => {
    const { worked, recorded, reasoning } = about("rcd-none-tt", { "earthing-system": "tt" });
    expect(worked.map(({ fact, value }) => [fact, value])).toEqual([["breaker-disconnects", "no"]]);
    expect(recorded.map(({ fact, value }) => [fact, value])).toContainEqual(["rcd", "none"]);
    expect(reasoning.classification).toBe("C2");
  });
  test("a loop too high", () => {
    expect(about("zs-over-limit", { unaccounted: false }).reasoning.possible).not.toContain("none");
  });
});

/** Every fact of a topic that a check which leans on an RCD answers. */
const LINKS = TOPICS.flatMap((topic) =>
  Object.entries(topic.facts).flatMap(([fact, { worked }]) =>
    worked !== undefined && LEANING.some(({ id }) => id === worked.by) ? [{ topic: topic.id, fact, worked }] : [],
  ),
);

test("topics that lean on an RCD are found by their links", () => {
  expect(new Set(LINKS.map(({ topic }) => topic)).size).toBeGreaterThanOrEqual(19);
});

describe.each(LINKS.map((link) => [`${link.topic}: ${link.fact}`, link] as const))(
  "%s",
  (_, { topic, fact, worked }) => {
    const at = worked.by === "electrode" ? {} : { board: "b", circuit: "c" };
    const with_ = (state: RcdState) => reasonedIn(behind(state, { observation: { topic, facts: {}, ...at } }));
    const valueWith = (state: RcdState) => with_(state).worked.find((one) => one.fact === fact)?.value ?? null;
    const worstOf = (state: RcdState) =>
      Math.max(...with_(state).reasoning.possible.map((severity) => SEVERITIES.indexOf(severity)));

    if (worked.matter === "overcurrent-disconnects") {
      test("the RCD says nothing about the fuse or breaker", () => {
        for (const state of ["works", ...FAILED, ...OPEN] as const) expect(valueWith(state)).toBe(worked.notMet);
      });
      return;
    }
    // Some links leave the fact open where the check is met, and some take nothing from the file: what they may say is less.
    test("an RCD that works gives the better answer", () => {
      expect(valueWith("works")).toBe(worked.findings === "none" ? null : (worked.met ?? null));
    });
    test.each(FAILED)("%s: the worse answer, or none", (state) => {
      const isOpen = worked.by === "cpc-adiabatic" || worked.findings === "none";
      const recorded = with_(state).recorded.find((one) => one.fact === fact);
      // What the file records of the RCD may say more closely which of the worse answers it is.
      if (recorded !== undefined) expect(worked.notMet?.split(" | ")).toContain(recorded.value);
      else expect(valueWith(state)).toBe(isOpen ? null : (worked.notMet ?? null));
      expect(worstOf(state)).toBeGreaterThanOrEqual(worstOf("works"));
    });
    test.each(OPEN)("%s: left open", (state) => {
      expect(valueWith(state)).toBeNull();
      expect(worstOf(state)).toBeGreaterThanOrEqual(worstOf("works"));
    });
  },
);
