import { assumed, matter, notKnown, Reckoner, TERM } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { EXAMPLE, inputOf } from "../../../../outside/reports/example.ts";
import { renderFinding } from "./finding.ts";
import { renderWeighing } from "./weighing.ts";

const reckon = new Reckoner(true);
const label = { id: "any", title: "Any check", formula: "", regulations: [] };
const about = matter("about", "what it is about");
const ohms = (value: number) => assumed(TERM.measuredZs, value, "given");

function text(judgement: ReturnType<typeof reckon.all> | ReturnType<typeof reckon.settled>): string {
  const finding = { judgement, beside: [], remarks: [] };
  return renderFinding(label, finding, { width: 80, place: () => "", grounds: false }).join("\n");
}

describe("a finding as text", () => {
  test("tells every part that is not met, the worst first", () => {
    const said = text(
      reckon.all(
        about,
        reckon.atMost(about, ohms(2), ohms(1)),
        reckon.atMost(about, ohms(9), ohms(1)),
        reckon.atMost(about, ohms(0.5), ohms(1)),
        reckon.settled(matter("button", "test button"), "not-met", "does not trip"),
      ),
    );
    expect(said).toMatch(
      /9\.00 Ω at most.*\n.*also: Zs 2\.00 Ω at most Zs 1\.00 Ω\n.*also: test button: does not trip/,
    );
    expect(said).not.toContain("0.500");
  });

  test("of many parts tells four and how many more", () => {
    const parts = Array.from({ length: 30 }, (_, i) => reckon.atMost(about, ohms(10 + i), ohms(1)));
    const said = text(reckon.all(about, ...parts));
    expect(said.match(/also:/g)).toHaveLength(4);
    expect(said).toContain("and 25 more");
  });

  test("of ways of which one would be enough, tells the preferred one", () => {
    const said = text(
      reckon.any(about, reckon.atMost(about, ohms(2), ohms(1)), reckon.atMost(about, ohms(3), ohms(1))),
    );
    expect(said).toContain("2.00 Ω");
    expect(said).not.toContain("3.00 Ω");
  });

  test("what is not known says what is missing, or else what leaves it open", () => {
    expect(text(reckon.all(about, reckon.atMost(about, notKnown(TERM.measuredZs, []), ohms(1))))).toContain(
      "missing: measured earth fault loop impedance",
    );
    expect(text(reckon.settled(about, "not-known", "it rests on something else"))).toContain(
      "it rests on something else",
    );
  });

  test("a limit missed a thousandfold is not given a figure that would be wrong", () => {
    expect(text(reckon.all(about, reckon.atMost(about, ohms(1000), ohms(1))))).toContain("<−999 %");
    expect(text(reckon.all(about, reckon.atMost(about, ohms(9), ohms(1))))).toContain(" −800 %");
  });
});

test("an inspection without observations does not pass for a satisfactory one", () => {
  const file = JSON.parse(EXAMPLE);
  const words = "No observation is recorded, so nothing is classified yet.";
  expect(renderWeighing(inputOf(EXAMPLE))).not.toContain(words);
  const bare = { ...file, observations: [], inspected: [] };
  expect(renderWeighing(inputOf(JSON.stringify(bare))).replaceAll("\n", " ")).toContain(words);
});
