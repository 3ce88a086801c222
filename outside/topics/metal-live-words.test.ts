import type { Answer } from "@good-grounds/core";
import { reasonAbout } from "@good-grounds/judgement";
import { clientSentence } from "@good-grounds/report";
import { TOPICS, topicById } from "@good-grounds/topics";
import { gradeOf } from "@good-grounds/topics/laws";
import { describe, expect, test } from "vitest";

type Facts = Readonly<Record<string, Answer>>;

function told(id: string, said: Facts): string {
  const topic = topicById(id);
  if (topic === undefined) throw new Error(`no topic ${id}`);
  const one = reasonAbout({ topic, said });
  expect(one.faults).toEqual([]);
  return clientSentence(one);
}

/** Of a broken neutral of the supply: its earth makes the metal live, and no switch of the installation opens that. */
function keepsOffTheMetal(words: string): void {
  expect(words).toContain("Do not touch it");
  expect(words).toContain("keep others away");
  expect(words).toContain("The main switch does not make it safe");
  expect(words).toMatch(/[Cc]all the power network (now|today)/);
  expect(words).not.toMatch(/(turn|keep|have) the power (there )?(switched )?off/i);
  expect(gradeOf(words), words).toBeLessThanOrEqual(7);
}

/** The installation is not joined to an earth of the supply: what makes its metal live is its own. */
const OWN_FAULT: readonly (readonly [topic: string, facts: Facts])[] = [
  ["no-means-of-earthing", { means: "absent" }],
  ["no-means-of-earthing", { means: "not-connected" }],
  ["earthing-conductor-condition", { connection: "off" }],
];

/** Each value of each fact, alone beside metal that is live. */
const MET: readonly (readonly [topic: string, facts: Facts])[] = TOPICS.flatMap((topic) => {
  if (!Object.hasOwn(topic.facts, "metal-live")) return [];
  const others = Object.entries(topic.facts).flatMap(([fact, { kind, ...rest }]): Facts[] => {
    if (fact === "metal-live" || fact === "heat") return [];
    if (kind === "yes-no") return [{ [fact]: true }, { [fact]: false }];
    return "values" in rest ? Object.keys(rest.values).map((value) => ({ [fact]: value })) : [];
  });
  return [{}, ...others].map((facts) => [topic.id, facts] as const);
});

describe("metal that is live, where the neutral or the earth of the supply may be what makes it so", () => {
  const bySupply = MET.filter((one) => !OWN_FAULT.some((own) => JSON.stringify(own) === JSON.stringify(one)));

  test("there are topics of intake and earthing", () => {
    expect(new Set(bySupply.map(([id]) => id)).size).toBeGreaterThanOrEqual(7);
  });

  test.each(bySupply)("%s %j", (id, facts) => keepsOffTheMetal(told(id, { ...facts, "metal-live": true })));

  test.each<Facts>([
    { voltage: "90 V", "holds-under-load": true, earthed: true, "made-dead": false },
    { voltage: "228 V", "made-dead": false },
    { voltage: "60 V", "holds-under-load": true, earthed: true, "made-dead": false },
    { voltage: "40 V", "holds-under-load": true, "wet-or-conductive": false, earthed: true, "made-dead": false },
  ])("metalwork-live %j", (facts) => keepsOffTheMetal(told("metalwork-live", facts)));
});

describe("metal that is live by a fault of the installation's own", () => {
  test.each(OWN_FAULT)("%s %j: not touched, and the power off", (id, facts) => {
    const words = told(id, { ...facts, "metal-live": true });
    expect(words).toContain("Do not touch it");
    expect(words).toContain("Turn the power off");
  });

  test("a plate that no earth reaches: the power there off", () => {
    const words = told("metalwork-live", { voltage: "228 V", earthed: false, "made-dead": false });
    expect(words).toContain("Do not touch it");
    expect(words).toContain("switched off now");
  });
});
