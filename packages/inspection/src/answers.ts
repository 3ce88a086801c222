import type { Issue, Path } from "@good-grounds/core";
import type { InspectionFile } from "./schema/file.ts";

/** Answers and counts that cannot stand as they are: given twice, without what they rest on, or more than there are. */
export function answerIssues(file: InspectionFile): readonly Issue[] {
  return [...itemIssues(file), ...samplingIssues(file), ...untestableIssues(file)];
}

function itemIssues(file: InspectionFile): Issue[] {
  const issues: Issue[] = [];
  const first = new Map<string, number>();
  for (const [i, { item, outcome, observations, reason }] of file.inspected.entries()) {
    const path: Path = ["inspected", i];
    const earlier = first.get(item);
    if (earlier === undefined) first.set(item, i);
    else {
      issues.push({
        code: "answered-twice",
        path: [...path, "item"],
        found: item,
        expected: "one answer to each item",
        advice: `entry ${earlier} answers it already; keep one`,
      });
    }
    if (outcome === "observed" && (observations ?? []).length === 0) {
      issues.push({
        code: "without-observation",
        path: [...path, "observations"],
        found: "nothing",
        expected: "the id of each observation made here",
        advice: "name the observations, or choose another outcome",
      });
    }
    if ((outcome === "limited" || outcome === "not-verified") && reason === undefined) {
      issues.push({
        code: "without-reason",
        path: [...path, "reason"],
        found: "nothing",
        expected: `why the item is ${outcome}`,
        advice: "say in a line what stood in the way",
      });
    }
  }
  return issues;
}

/** An RCD that is said to be beyond testing, without a word why. */
function untestableIssues({ boards }: InspectionFile): Issue[] {
  return boards.flatMap(({ rcds = [], circuits }, i) => [
    ...rcds.flatMap((rcd, j) => withoutWhy(rcd, ["boards", i, "rcds", j])),
    ...circuits.flatMap(({ rcd }, j) =>
      rcd !== undefined && rcd !== "none" && "own" in rcd
        ? withoutWhy(rcd.own, ["boards", i, "circuits", j, "rcd", "own"])
        : [],
    ),
  ]);
}

type Rcd = NonNullable<InspectionFile["boards"][number]["rcds"]>[number];

function withoutWhy({ testability, whyNotTested }: Pick<Rcd, "testability" | "whyNotTested">, path: Path): Issue[] {
  if (testability !== "cannot-be-tested" || whyNotTested !== undefined) return [];
  return [
    {
      code: "without-reason",
      path: [...path, "whyNotTested"],
      found: "nothing",
      expected: "why the device cannot be tested",
      advice: "say in a line what stood in the way",
    },
  ];
}

function samplingIssues(file: InspectionFile): Issue[] {
  return file.extent.sampling.flatMap(({ population, inspected, defective }, i) => {
    const path: Path = ["extent", "sampling", i];
    return [
      ...(inspected > population ? [moreThan([...path, "inspected"], inspected, population, "there are")] : []),
      ...(defective > inspected ? [moreThan([...path, "defective"], defective, inspected, "were inspected")] : []),
    ];
  });
}

function moreThan(path: Path, found: number, most: number, words: string): Issue {
  return {
    code: "more-than-there-are",
    path,
    found: String(found),
    expected: `at most ${most}, as many as ${words}`,
    advice: "correct one of the two counts",
  };
}
