import { describe, expect, test } from "vitest";
import { readLibrary } from "../library.ts";
import { ownTexts } from "../texts.js";

const SHARED = ownTexts().filter(({ file }) => file.startsWith("shared/"));

/** A topic of touch alone, with what it says itself. */
function touching(...given: readonly string[]) {
  const text = `topic some-part: Some part
  in boards 1
  answers boards.enclosure
  uses basic-protection

${given.map((one) => `  given ${one}\n`).join("")}
  route touch (contact with live parts): somebody touches it
    layer between (barrier or enclosure): what is between [416.1]
      as basic-protection

  said none: Nothing.
`;
  const { topics, faults } = readLibrary([...SHARED, { file: "boards/some-part.topic", text }]);
  expect(faults).toEqual([]);
  const [topic] = topics;
  if (topic === undefined) throw new Error("no topic");
  return topic;
}

const asked = ({ facts, contested }: ReturnType<typeof touching>) => [...Object.keys(facts), ...Object.keys(contested)];

describe("what a subject says itself", () => {
  test("nothing: everything the state rests on is asked", () => {
    expect(asked(touching())).toEqual(expect.arrayContaining(["live-covering", "wears", "open-cores", "lamp-contact"]));
  });

  test("bare: what rests on insulation alone is no question, and no contested point", () => {
    const names = asked(touching("live-covering bare", "meant-insulated no", "allowed-opening no"));
    for (const gone of [
      "live-covering",
      "wears",
      "open-cores",
      "damaged-behind-cover",
      "lamp-contact",
      "allowed-opening",
    ])
      expect(names).not.toContain(gone);
    expect(names).toEqual(expect.arrayContaining(["gets-in", "who-comes", "arms-reach", "many-keys", "distance"]));
  });

  test("bare and in reach with nothing in the way: distance is settled, and with it what would undo it", () => {
    const topic = touching("live-covering bare", "meant-insulated no", "arms-reach within", "obstacle none");
    expect(asked(topic)).not.toContain("wet-or-conductive");
    expect(asked(topic)).not.toContain("distance");
    const { holds, gone } = topic.states?.["distance-layer"]?.values ?? {};
    expect([holds?.when, gone?.when?.op]).toEqual([undefined, "always"]);
  });

  test("doubly insulated: nothing is left to ask", () => {
    const names = asked(touching("live-covering double-or-reinforced"));
    expect(names).not.toContain("wears");
    expect(names).not.toContain("damaged-behind-cover");
  });
});
