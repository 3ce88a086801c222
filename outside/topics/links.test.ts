import { COMPUTATIONS } from "@good-grounds/computations";
import { type Finding, matter, Reckoner, type Verdict } from "@good-grounds/core";
import { knownFromFindings } from "@good-grounds/judgement";
import { compiledTopic, TOPICS, type Topic, topicById } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import { LINKS, type Link } from "./links.ts";

const reckon = new Reckoner(true);
const about = (id: string, verdict: Verdict) => reckon.settled(matter(id, id), verdict, "as the test has it");

/** A finding of a check: its whole, and within it the matter asked for. */
function finding(by: string, whole: Verdict, within?: readonly [matter: string, verdict: Verdict], at = 0): Finding {
  const settles = within === undefined ? {} : { settles: [about(within[0], within[1])] };
  return { check: by, path: ["circuits", at], judgement: about(by, whole), beside: [], remarks: [], ...settles };
}

function topicOf({ topic }: Link) {
  const subject = topicById(topic);
  if (subject === undefined) throw new Error(`no topic ${topic}`);
  return subject;
}

/** What findings answer of a fact, or null where they leave it open. */
function answerOf(topic: Topic, findings: readonly Finding[], fact: string): string | null {
  const known = knownFromFindings(topic, findings, compiledTopic(topic));
  return known.get(fact)?.answer?.known.value ?? null;
}

/** What findings that all say the same make of a fact; every further computation of the link says it too. */
function answerTo(link: Link, verdict: Verdict, whole: Verdict = verdict): string | null {
  const subject = topicOf(link);
  const { and = [] } = subject.facts[link.fact]?.worked ?? {};
  const findings = [link, ...and].map((part) =>
    finding(part.by, whole, part.matter === undefined ? undefined : [part.matter, verdict]),
  );
  return answerOf(subject, findings, link.fact);
}

/** Whether the file itself gives findings of it. */
function isCheck(by: string): boolean {
  const one = COMPUTATIONS.get(by);
  return one !== undefined && "scope" in one;
}

const cases = LINKS.map((link) => [`${link.topic}, ${link.fact}`, link] as const);

test("every link of every topic was looked at", () => {
  const there = TOPICS.flatMap(({ id, facts }) =>
    Object.entries(facts).flatMap(([fact, { worked }]) =>
      worked === undefined ? [] : [[id, fact, worked.by, worked.matter ?? ""].join(" ")],
    ),
  );
  expect(LINKS.map(({ topic, fact, by, matter: within = "" }) => [topic, fact, by, within].join(" ")).sort()).toEqual(
    there.sort(),
  );
});

describe.each(cases)("%s", (_, link) => {
  test("a finding answers what it speaks of", () => {
    if (!isCheck(link.by)) {
      // Only figures given with the observation reach it, and they are of the thing itself.
      expect([link.met, link.notMet]).toEqual([undefined, undefined]);
      return;
    }
    expect(answerTo(link, "met")).toBe(link.met ?? null);
    expect(answerTo(link, "not-met")).toBe(link.notMet ?? null);
  });

  test(`leaves open: ${link.leaves}`, () => {
    expect(link.leaves).not.toBe("");
    for (const verdict of ["too-near", "not-known", "not-applicable"] as const)
      expect(answerTo(link, verdict)).toBeNull();
    // The whole of a check says nothing where a matter within it is what is asked.
    if (link.matter !== undefined) {
      expect(answerTo(link, "not-known", "met")).toBeNull();
      expect(answerTo(link, "not-known", "not-met")).toBeNull();
    }
  });

  test("two findings that do not say the same leave it open", () => {
    const within = (verdict: Verdict) => (link.matter === undefined ? undefined : ([link.matter, verdict] as const));
    const { and = [] } = topicOf(link).facts[link.fact]?.worked ?? {};
    const rest = and.map((part) =>
      finding(part.by, "met", part.matter === undefined ? undefined : [part.matter, "met"]),
    );
    const two = [finding(link.by, "met", within("met"), 0), finding(link.by, "not-met", within("not-met"), 1), ...rest];
    expect(answerOf(topicOf(link), two, link.fact)).toBeNull();
  });
});

describe("a link that takes two computations together", () => {
  const link = LINKS.find(({ topic, fact }) => topic === "zs-over-limit" && fact === "unaccounted") as Link;
  const fits = finding("r1r2-length", "met", ["resistance-not-above", "met"]);
  const value = (findings: readonly Finding[]) => answerOf(topicOf(link), findings, "unaccounted");

  test("one that is met alone leaves it open", () => {
    expect(value([fits])).toBeNull();
  });

  test("both met answer it, and one that is not met is enough", () => {
    expect(value([fits, finding("zs-agreement", "met", ["readings-not-above", "met"])])).toBe("no");
    expect(value([fits, finding("zs-agreement", "not-met", ["readings-not-above", "not-met"])])).toBe("yes");
    expect(value([finding("zs-agreement", "not-met", ["readings-not-above", "not-met"])])).toBe("yes");
  });

  test("a reading lower than the parts explain is no sign of a joint", () => {
    expect(value([fits, finding("zs-agreement", "not-met", ["readings-not-above", "met"])])).toBe("no");
  });
});
