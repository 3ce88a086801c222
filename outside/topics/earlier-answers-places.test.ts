import type { Answer } from "@good-grounds/core";
import { reasonAbout } from "@good-grounds/judgement";
import { topicById } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";

type Row = readonly [
  topic: string,
  facts: Readonly<Record<string, Answer>>,
  possible: readonly string[],
  positions?: Readonly<Record<string, string>>,
];

/** Answers as earlier files hold them, with the names and values of then, and what they still leave possible. */
const ROWS: readonly Row[] = [
  ["bath-heater-in-reach", { reach: "stretch", "live-element": false, suited: false }, ["C3"]],
  ["bath-heater-in-reach", { reach: "out", "live-element": true }, ["C1"], { distance: "counts" }],
  ["bath-switch-in-reach", { zone: "zone-1", kind: "built-in", wetted: false }, ["none"]],
  ["bath-rcd-and-bonding", { "rcd-30ma": false, bonding: false, parts: "earthed-metal" }, ["C2"]],
  ["garden-cable-unprotected", { cable: "sheathed", route: "loose", condition: "bare-core" }, ["C1"]],
  ["garden-cable-unprotected", { cable: "sheathed", route: "out-of-harm", condition: "split" }, ["C2"]],
  [
    "garden-cable-unprotected",
    { cable: "indoor-type", route: "in-reach", condition: "sound", "rcd-30ma": true },
    ["C3"],
  ],
  ["outdoor-luminaire-damaged", { state: "live-in-reach" }, ["C1"]],
  // An obstacle was not asked then.
  ["outdoor-luminaire-damaged", { state: "live-in-reach" }, ["C2", "C1"], { distance: "counts" }],
  ["outdoor-luminaire-damaged", { state: "weathered", water: false }, ["C3"]],
  ["pv-cable-damaged", { insulation: "conductor-bare", reach: "easy" }, ["C1"]],
  ["pv-cable-damaged", { connectors: "overheated" }, ["C2", "C1"]],
  ["battery-place", { place: "outside", condition: "damaged" }, ["C2", "C1"]],
  ["ev-direct-current", { "own-rcd": true, "direct-current": "dealt", "fault-protection-by-rcd": true }, ["none"]],
  ["ev-direct-current", { "own-rcd": false, "direct-current": "dealt" }, ["C3", "C2"]],
  ["escape-route-equipment", { route: "protected-common", what: "open", "low-smoke": false, heat: false }, ["C2"]],
  ["notice-missing", { which: "other-source", notice: "missing", "stays-live": true }, ["C2"]],
  ["notice-missing", { which: "other-source", notice: "missing", "stays-live": false }, ["C3"]],
  ["notice-missing", { which: "rcd-test", notice: "missing", premises: "elsewhere" }, ["C3"]],
  ["notice-missing", { which: "rcd-test", notice: "in-papers" }, ["none"]],
  ["notice-missing", { which: "voltage", notice: "not-asked-for" }, ["none"]],
  [
    "supply-polarity-reversed",
    { correct: false, "metal-live": false, "all-double-pole": false, heat: "none" },
    ["C2"],
    { "reversed-now": "one-event" },
  ],
  // Whether live metal is met in ordinary use was not asked then.
  [
    "supply-polarity-reversed",
    { correct: false, "metal-live": false, "all-double-pole": false, heat: "none" },
    ["C2", "C1"],
    { "reversed-now": "now" },
  ],
  [
    "medical-place",
    {
      group: "group-2",
      bonding: true,
      rcd: true,
      isolated: true,
      standby: true,
      "suited-type": "a-or-b",
      surge: false,
    },
    ["C2"],
    { "surge-in-care": "danger" },
  ],
];

describe("answers of earlier files are read as far as they can be told today", () => {
  test.each(ROWS.map((row) => [row[0], row[1], row] as const))(
    "%s: %j",
    (_, said, [id, , possible, positions = {}]) => {
      const topic = topicById(id);
      if (topic === undefined) throw new Error(`no topic ${id}`);
      const one = reasonAbout({ topic, said, positions });
      expect(one.faults).toEqual([]);
      expect(one.reasoning.possible).toEqual(possible);
    },
  );
});
