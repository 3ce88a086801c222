import { leavesOf } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { readLibrary } from "../library.ts";

const SHARED = {
  file: "shared/cover.topic",
  text: `shared cover: What covers a live part

  fact bare: Is the part bare?
    found by glance
    no: it is covered
    yes: it is bare
  fact near: Is it in reach?
    found by glance
    no: out of reach
    yes: in reach
  state kept-off of a part: what keeps people off
    holds: is there
    gone: is not there
      when bare and near
  state guarded of a part: what guards it
    holds: is there
    gone: is not there
      when kept-off is gone

  danger touchable C2: live metal can be touched [416.1]
    when bare and near
`,
};

/** The facts that the shared danger rests on in a topic with these lines; undefined where it is not there. */
function restsOn(...lines: readonly string[]): readonly string[] | undefined {
  const text = `topic some-part: Some part
  in boards

  fact shut: Is it shut?
    found by glance
    yes: shut
    no: not shut
  fact loose: Is it loose?
    found by glance
    no: firm
    yes: loose

  said none: Nothing.
`.replace("  in boards\n", `  in boards\n  uses guarded\n${lines.map((line) => `  ${line}\n`).join("")}`);
  const { topics, faults } = readLibrary([SHARED, { file: "boards/some-part.topic", text }]);
  expect(faults).toEqual([]);
  const danger = topics[0]?.dangers?.find(({ id }) => id === "touchable");
  return danger === undefined
    ? undefined
    : [...leavesOf(danger.when)].flatMap((leaf) => ("fact" in leaf ? [leaf.fact] : [])).sort();
}

const route = (name: string, layer: string, there?: string): readonly string[] => [
  `route ${name} (contact with live parts): somebody touches it`,
  ...(there === undefined ? [] : [`  there when ${there}`]),
  "  layer between (barrier or enclosure): what is between [416.1]",
  `    ${layer}`,
];

describe("a shared danger of which the topic gives a fact", () => {
  test("is there with the route whose layer rests on that fact, also through other states", () => {
    expect(restsOn("given bare yes", ...route("touch", "as kept-off", "not shut"))).toEqual(["near", "shut"]);
    expect(restsOn("given bare yes", ...route("touch", "as guarded", "not shut"))).toEqual(["near", "shut"]);
  });

  test("is there with any of several such routes", () => {
    const routes = [...route("touch", "as kept-off", "not shut"), ...route("reach", "as guarded", "loose")];
    expect(restsOn("given bare yes", ...routes)).toEqual(["loose", "near", "shut"]);
  });

  test("is there whatever else is so where one of these routes always is", () => {
    const routes = [...route("touch", "as kept-off"), ...route("reach", "as guarded", "loose")];
    expect(restsOn("given bare yes", ...routes)).toEqual(["near"]);
  });

  test("hears of no route whose layers rest on something else", () => {
    const other = route("fall", "holds until one event", "loose");
    expect(restsOn("given bare yes", ...other)).toEqual(["near"]);
    expect(restsOn("given bare yes", ...other, ...route("touch", "as kept-off", "not shut"))).toEqual(["near", "shut"]);
  });

  test("is not there where the fact that is given rules it out", () => {
    expect(restsOn("given bare no", ...route("touch", "as kept-off", "not shut"))).toBeUndefined();
  });
});

test("a shared danger whose facts are all asked holds whatever route is there", () => {
  expect(restsOn(...route("touch", "as kept-off", "not shut"))).toEqual(["bare", "near"]);
});
