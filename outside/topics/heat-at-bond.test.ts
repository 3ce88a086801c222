import type { Answer } from "@good-grounds/core";
import { reasonAbout } from "@good-grounds/judgement";
import { clientSentence } from "@good-grounds/report";
import { topicById } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";

/** A bond in good order but for what heat has done, in the topics under which it may be met. */
const BONDS: readonly (readonly [topic: string, facts: Readonly<Record<string, Answer>>])[] = [
  ["main-bonding-undersized", { "table-size": true, size: "10 mm²", pme: true, withstands: true }],
  ["main-bonding-absent", { lightning: false, bond: "own", extraneous: "metal-entry" }],
  ["main-bonding-absent", { lightning: false, bond: "through-another", extraneous: "metal-entry" }],
  ["main-bonding-resistance", { "reading-fits": true, "over-5-hundredths": false, cause: "connection" }],
  ["main-bonding-resistance", { "reading-fits": true, "over-5-hundredths": false, cause: "run" }],
];

describe("a bond or its clamp that is browned or hot: one class, whatever the topic", () => {
  test.each(BONDS)("%s %j", (id, facts) => {
    const topic = topicById(id);
    if (topic === undefined) throw new Error(`no topic ${id}`);
    const about = (heat?: string) =>
      reasonAbout({ topic, said: heat === undefined ? facts : { ...facts, heat }, positions: {} });

    expect(about("marks").faults).toEqual([]);
    expect(about("marks").reasoning.classification).toBe("C2");
    expect(clientSentence(about("marks"))).toContain("has been hot");
    expect(about("now").reasoning.classification).toBe("C1");
    // What heats a bond may be the current of a broken supply neutral, which no switch here opens.
    expect(clientSentence(about("now"))).toContain("The main switch does not make it safe");
    expect(about().reasoning.open).toContain("heat");
    expect(["none", "C3"]).toContain(about("none").reasoning.classification);
  });
});
