import { describe, expect, test } from "vitest";
import { smallestFile } from "../../../outside/files/arbitrary-file.ts";
import { answerIssues } from "./answers.ts";
import type { InspectionFile } from "./schema/file.ts";

const issuesOf = (inspected: InspectionFile["inspected"]) =>
  answerIssues({ ...smallestFile(), inspected }).map(({ code, path }) => `${code} ${path.join("/")}`);

describe("answers to the inspection items", () => {
  test("stand with what they rest on", () => {
    expect(
      issuesOf([
        { item: "intake.meter", outcome: "in-order" },
        { item: "intake.cut-out", outcome: "observed", observations: ["o"] },
        { item: "boards.access", outcome: "limited", reason: "locked" },
        { item: "boards.fixing", outcome: "not-verified", reason: "boxed in" },
        { item: "boards.surge", outcome: "not-applicable" },
      ]),
    ).toEqual([]);
  });

  test("given twice, without an observation, or without a reason are told", () => {
    expect(
      issuesOf([
        { item: "intake.meter", outcome: "in-order" },
        { item: "intake.meter", outcome: "in-order" },
        { item: "intake.cut-out", outcome: "observed" },
        { item: "intake.polarity", outcome: "observed", observations: [] },
        { item: "boards.access", outcome: "limited" },
        { item: "boards.fixing", outcome: "not-verified" },
      ]),
    ).toEqual([
      "answered-twice inspected/1/item",
      "without-observation inspected/2/observations",
      "without-observation inspected/3/observations",
      "without-reason inspected/4/reason",
      "without-reason inspected/5/reason",
    ]);
  });
});

describe("counts of a sample", () => {
  test.each([
    [20, 20, 20, []],
    [20, 0, 0, []],
    [20, 21, 0, ["inspected"]],
    [20, 5, 6, ["defective"]],
    [1, 5, 9, ["inspected", "defective"]],
  ])("of %i, %i inspected and %i defective", (population, inspected, defective, wrong) => {
    const extent = { covered: "all", sampling: [{ what: "sockets", population, inspected, defective }] };
    expect(answerIssues({ ...smallestFile(), extent }).map(({ code, path }) => `${code} ${path.join("/")}`)).toEqual(
      wrong.map((member) => `more-than-there-are extent/sampling/0/${member}`),
    );
  });
});

describe("RCDs that cannot be tested", () => {
  const rcd = { testability: "cannot-be-tested" as const };
  const boards = (more: object): InspectionFile["boards"] => [
    {
      id: "b",
      name: "b",
      fedFrom: "supply",
      rcds: [{ id: "r", serves: "listed", ...rcd, ...more }],
      circuits: [{ id: "c", designation: "1", description: "sockets", rcd: { own: { ...rcd, ...more } } }],
    },
  ];
  const found = (more: object) =>
    answerIssues({ ...smallestFile(), boards: boards(more) }).map(({ code, path }) => `${code} ${path.join("/")}`);

  test("say why", () => {
    expect(found({})).toEqual([
      "without-reason boards/0/rcds/0/whyNotTested",
      "without-reason boards/0/circuits/0/rcd/own/whyNotTested",
    ]);
    expect(found({ whyNotTested: "medical equipment behind it" })).toEqual([]);
    expect(found({ testability: "can-be-tested" })).toEqual([]);
  });
});
