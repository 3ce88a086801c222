import type { Answer, Classification } from "@good-grounds/core";
import { reasonAbout, type TopicReasoning } from "@good-grounds/judgement";
import { clientSentence } from "@good-grounds/report";
import { topicById } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";

type Facts = Readonly<Record<string, Answer>>;

function about(id: string, said: Facts, positions: Readonly<Record<string, string>> = {}): TopicReasoning {
  const topic = topicById(id);
  if (topic === undefined) throw new Error(`no topic ${id}`);
  const one = reasonAbout({ topic, said, positions });
  expect(one.faults).toEqual([]);
  return one;
}

/** One circuit, one lamp; a switch stands in the neutral, and the line of the lamp stays connected. */
const NEUTRAL_SWITCHED: readonly (readonly [topic: string, facts: Facts])[] = [
  ["main-switch-poles", { poles: "neutral-only", phases: "one", "earthing-system": "tn-s", "otherwise-sound": true }],
  ["neutral-fused", { "in-neutral": "switch" }],
  ["neutral-switched-or-fused", { opens: "by-switch", "line-also": false }],
  ["polarity-reversed-at-point", { swapped: "line-neutral", switching: "one-pole", "class-1-metal": false }],
  ["supply-polarity-reversed", { correct: false, "metal-live": false, "all-double-pole": false, heat: "none" }],
];

describe("switched off in the neutral: one question, one point, one class", () => {
  test.each(NEUTRAL_SWITCHED)("%s %j", (topic, facts) => {
    const open = about(topic, facts).reasoning;
    expect(open.possible).toEqual(["C2", "C1"]);
    expect(open.open).toEqual(["live-when-off"]);

    const inUse = { ...facts, "live-when-off": "in-use" };
    expect(about(topic, inUse).reasoning.classification).toBe("C1");
    expect(about(topic, inUse, { "off-yet-live": "one-event" }).reasoning.classification).toBe("C2");
    const needsTool = { ...facts, "live-when-off": "needs-tool" };
    expect(about(topic, needsTool).reasoning.classification).toBe("C2");

    const told = [
      clientSentence(about(topic, inUse)),
      clientSentence(about(topic, inUse, { "off-yet-live": "one-event" })),
      clientSentence(about(topic, needsTool)),
    ];
    for (const words of told) {
      expect(words).toMatch(/stays? live when (it is |they are )?(switched|turned)? ?off/);
      // The switch that leaves the line connected is no way to make it dead.
      expect(words).not.toContain("main power off");
    }
  });
});

/** The place asks for bonding, RCDs work, and nothing joins the metal. */
const PLACE_ASKS: readonly (readonly [topic: string, facts: Facts])[] = [
  ["supplementary-bonding-needed", { "in-time": true, "rcd-in-time": true, "asked-by-place": true, bonded: false }],
  ["farm-protection", { "rcd-socket": true, "rcd-fire": true, livestock: true, bonding: false, damage: "sound" }],
  ["pool-equipment", { zone: "outside", protection: "rcd-30ma", bonding: false, ip: true }],
  ["pool-equipment", { zone: "outside", protection: "selv", bonding: false, ip: true }],
];

describe("bonding that the place asks for is missing: one point wherever it is met", () => {
  test.each(PLACE_ASKS)("%s %j", (topic, facts) => {
    const classOf = (position?: string): Classification | null =>
      about(topic, facts, position === undefined ? {} : { "place-with-rcd": position }).reasoning.classification;
    expect(classOf()).toBe("C2");
    expect(classOf("danger")).toBe("C2");
    expect(classOf("improvement")).toBe("C3");
  });

  test.each<readonly [topic: string, facts: Facts]>([
    ["supplementary-bonding-needed", { "in-time": true, "rcd-in-time": false, "asked-by-place": true, bonded: false }],
    ["farm-protection", { "rcd-socket": true, "rcd-fire": false, livestock: true, bonding: false, damage: "sound" }],
    ["farm-protection", { "rcd-socket": false, "rcd-fire": true, livestock: true, bonding: false, damage: "sound" }],
    ["pool-equipment", { zone: "outside", protection: "neither", bonding: false, ip: true }],
  ])("%s %j: without a working RCD both positions find danger", (topic, facts) => {
    for (const position of ["danger", "improvement"])
      expect(about(topic, facts, { "place-with-rcd": position }).reasoning.classification).toBe("C2");
  });
});
