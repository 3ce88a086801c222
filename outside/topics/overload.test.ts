import { possibleSeverities, readAnswers, severitiesOf } from "@good-grounds/core";
import { compiledTopic, topicById } from "@good-grounds/topics";
import { expect, test } from "vitest";

/** Cord that serves as wiring and has nothing else against it. */
const CORD = { "used-as-fixed": true, "live-covering": "sheathed", wears: "nothing", ends: "held" } as const;
const EXCESSES = ["slight", "large"];
const LOADS = ["cannot-overload", "stays-under", "can-exceed"];
const HEATS = ["none", "marks", "now"];
const VIEWS = ["improve", "danger"].flatMap((slight) =>
  ["does-not-count", "counts"].map((load) => ({ "slight-excess": slight, "load-today": load })),
);

const STATES = EXCESSES.flatMap((excess) =>
  LOADS.flatMap((load) =>
    HEATS.flatMap((heat) =>
      VIEWS.map((positions) => ({ facts: { "within-cable": false, excess, "cable-load": load, heat }, positions })),
    ),
  ),
);

function possible(id: string, facts: Readonly<Record<string, string | boolean>>, positions: Record<string, string>) {
  const topic = topicById(id);
  if (topic === undefined) throw new Error(`no topic ${id}`);
  const compiled = compiledTopic(topic);
  const { knowledge, faults } = readAnswers(compiled, { facts, positions });
  expect(faults).toEqual([]);
  return severitiesOf(possibleSeverities(compiled, knowledge.masks));
}

test.each(STATES)(
  "a device too large for a cable or for a cord is one state: $facts $positions",
  ({ facts, positions }) => {
    const [ofCable] = possible("overload-device-oversize", facts, positions);
    const ofCord = possible("flexible-cord-as-fixed-wiring", { ...CORD, ...facts }, positions);
    // Cord in place of fixed wiring is to be improved whatever protects it.
    expect(ofCord).toEqual([ofCable === "none" ? "C3" : ofCable]);
  },
);
