import { parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { reasonAbout, reasonObservations, topicIssues, weigh } from "@good-grounds/judgement";
import { topicById } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import { changed } from "../reports/example.ts";

/** The invented terraced house with one observation of its own. */
function withObservation(observation: Record<string, unknown>, rest: Record<string, unknown> = {}) {
  const text = changed((file) => {
    Object.assign(file, {
      observations: [{ id: "x", place: "somewhere", what: "something", ...observation }],
      inspected: [],
      ...rest,
    });
  });
  const parsed = parseInspection(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.file;
}

function reasoned(observation: Record<string, unknown>, rest: Record<string, unknown> = {}) {
  const file = withObservation(observation, rest);
  expect(topicIssues(file)).toEqual([]);
  const installation = resolveInstallation(file);
  const [one] = reasonObservations(installation, weigh(installation));
  if (one === undefined) throw new Error("not reasoned about");
  return one;
}

const choice = (classification: string) => ({ choice: { classification, reason: "r", by: "inspector" } });

describe("facts that the checks settle", () => {
  test("are taken from the findings of the circuit the observation names, with their argument", () => {
    // Circuit 5 of the example has no RCD, which the check of additional protection finds.
    const one = reasoned({
      topic: "lighting-no-rcd",
      board: "cu",
      circuit: "c5",
      facts: { premises: "home", "asked-when-made": false },
    });
    expect(one.worked.map(({ fact, by, value }) => [fact, by, value])).toEqual([
      ["rcd-30ma", "additional-protection", "no"],
    ]);
    expect(one.reasoning.classification).toBe("C3");
  });

  test("stay open where the observation names no circuit", () => {
    const one = reasoned({
      topic: "lighting-no-rcd",
      facts: { premises: "home", "asked-when-made": false },
    });
    expect(one.worked).toEqual([]);
    expect(one.reasoning.open).toContain("rcd-30ma");
  });

  test("do not replace what somebody stated: both stay possible until it is settled", () => {
    const one = reasoned({
      topic: "lighting-no-rcd",
      board: "cu",
      circuit: "c5",
      facts: { "rcd-30ma": true, premises: "home", "asked-when-made": false },
    });
    expect(one.against.map(({ fact, value }) => [fact, value])).toEqual([["rcd-30ma", "no"]]);
    expect(one.reasoning.possible).toEqual(["none", "C3"]);
    expect(one.reasoning.classification).toBeNull();
  });
});

describe("an RCD whose button is dead and whose time is good", () => {
  const figures = {
    standard: "BS EN 61008",
    delay: "general",
    "at-rated": "22 ms",
    "at-five": "18 ms",
    button: "does-not-trip",
  };

  // What the topic itself asks, such as the button, is an answer and no figure.
  const figuresOnly = ({ facts }: { readonly facts: object }) =>
    Object.fromEntries(Object.entries(figures).filter(([name]) => !Object.hasOwn(facts, name)));

  test.each([
    ["rcd-does-not-trip", { "rcd-operates": "yes" }],
    ["rcd-slow-at-five-times", { "rcd-operates": "yes", "in-time-at-five": "yes" }],
    ["rcd-test-not-possible", { "rcd-operates": "yes" }],
  ])("%s reads the time from its time only", (id, expected) => {
    const topic = topicById(id);
    if (topic === undefined) throw new Error(id);
    const { worked, issues } = reasonAbout({ topic, said: figuresOnly(topic) });
    expect(issues).toEqual([]);
    expect(Object.fromEntries(worked.map(({ fact, value }) => [fact, value]))).toEqual(expected);
  });

  test.each([true, false])("from the readings of a file too, grounds kept: %s", (grounds) => {
    const installation = resolveInstallation(withObservation({}));
    const { boards, circuits } = weigh(installation, grounds);
    const times = [...boards, ...circuits].flat().filter(({ check }) => check === "rcd-time");
    expect(times.length).toBeGreaterThan(0);
    for (const { settles } of times) expect(settles?.map(({ matter }) => matter.id)).toContain("rcd-not-slow");
  });
});

describe("how a choice stands to what follows", () => {
  const facts = {
    combustible: true,
    premises: "home",
    "asked-when-fitted": false,
    heat: "none",

    "only-way-out": true,
    "alarm-near": false,
  };
  test.each([
    ["C3", "same"],
    ["none", "allowed"],
    ["C2", "allowed"],
    ["C1", "differs"],
    ["FI", "differs"],
  ])("%s for a combustible board with nothing wrong: %s", (chosen, stands) => {
    expect(reasoned({ topic: "board-combustible", facts, ...choice(chosen) }).choice).toBe(stands);
  });

  test("FI is allowed while danger is possible and something is open", () => {
    const { heat: _, ...open } = facts;
    expect(reasoned({ topic: "board-combustible", facts: open, ...choice("FI") }).choice).toBe("allowed");
  });

  test.each([
    ["C3", "allowed"],
    ["none", "allowed"],
    ["FI", "differs"],
    ["C2", "differs"],
  ] as const)("%s of what is C3 or none and cannot be settled: %s", (classification, stands) => {
    const one = reasoned({
      topic: "meter-tails-entry",
      facts: { edge: "bushed", held: { notKnown: "limited", reason: "sealed" }, "one-opening": true, heat: "none" },
      ...choice(classification),
    });
    expect(one.reasoning).toMatchObject({ classification: null, ending: "no-danger", unsettled: ["held"] });
    expect(one.choice).toBe(stands);
  });
});

describe("positions", () => {
  const facts = {
    combustible: true,
    premises: "home",
    "asked-when-fitted": false,
    heat: "none",

    "only-way-out": true,
    "alarm-near": false,
  };
  const standingViews = [
    { topic: "board-combustible", point: "standing", position: "way-out-counts", reason: "decided by the supervisor" },
  ];

  test("the firm's standing view holds where the observation states none", () => {
    expect(reasoned({ topic: "board-combustible", facts }).reasoning.classification).toBe("C3");
    expect(reasoned({ topic: "board-combustible", facts }, { standingViews }).reasoning.classification).toBe("C2");
  });

  test("the observation's own position goes before it", () => {
    const positions = { standing: { position: "met-its-edition", reason: "sound" } };
    expect(reasoned({ topic: "board-combustible", facts, positions }, { standingViews }).reasoning.classification).toBe(
      "none",
    );
  });
});

test("everything wrong with topics, facts and positions is placed, all at once", () => {
  const file = withObservation(
    {
      topic: "board-combustible",
      facts: { combustible: "perhaps", colour: "white" },
      positions: { standing: { position: "never" }, other: { position: "a" } },
    },
    {
      standingViews: [
        { topic: "nothing-such", point: "p", position: "q", reason: "r" },
        { topic: "board-combustible", point: "standing", position: "z", reason: "r" },
      ],
    },
  );
  expect(topicIssues(file).map(({ code, path }) => `${code} ${path.join("/")}`)).toEqual([
    "not-a-value observations/0/facts/combustible",
    "unknown-fact observations/0/facts/colour",
    "not-a-value observations/0/positions/standing",
    "unknown-point observations/0/positions/other",
    "unknown-topic standingViews/0/topic",
    "not-a-value standingViews/1/position",
  ]);
  expect(topicIssues(withObservation({ topic: "board-combustable" }))[0]?.expected).toContain("board-");
});

test("what follows from the facts of an observation does not hang on the edition that the report is made to", () => {
  const one = (edition: string) =>
    JSON.stringify(reasoned({ topic: "board-combustible", facts: { combustible: false } }, { edition }).reasoning);
  expect(one("2018+A2+A3")).toBe(one("2018+A4"));
});

test("two standing views on one point are a problem, for only one can hold", () => {
  const view = { topic: "board-blank-missing", point: "locked-board", reason: "r" };
  const file = withObservation(
    {},
    {
      standingViews: [
        { ...view, position: "counts" },
        { ...view, position: "does-not-count" },
      ],
    },
  );
  expect(topicIssues(file).map(({ code, path }) => [code, path])).toEqual([
    ["given-twice", ["standingViews", 1, "point"]],
  ]);
});
