import { readFileSync } from "node:fs";
import { parseInspection } from "@good-grounds/inspection";
import { describe, expect, test } from "vitest";
import { assemble } from "./assemble.ts";

const HOUSE = readFileSync(new URL("../../../examples/terraced-house.json", import.meta.url), "utf8");

/** The layers drawn of the cable of the first observation, those that are gone in brackets; undefined where none is drawn. */
function layers(topic: string, facts: object, cable: object = {}) {
  const file = JSON.parse(HOUSE);
  const [first] = file.observations;
  Object.assign(first, { topic, facts, positions: {} });
  const circuit = file.boards[0].circuits.find(({ id }: { id: string }) => id === first.circuit);
  Object.assign(circuit.cable, cable);
  const parsed = parseInspection(JSON.stringify(file));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const drawn = assemble(parsed.file).reasoned.find(({ observation }) => observation === first.id)?.cable;
  return drawn?.layers
    .filter(({ around }) => around !== "protective conductor")
    .map(({ role, gone }) => (gone === true ? `(${role})` : role));
}

const ARMOURED = { kind: "armoured", insulation: "90C-thermosetting" };

describe("the cable an observation is about", () => {
  // Flat twin: copper, insulation, sheath. Armoured: copper, insulation, bedding, armour, sheath (BS 6004, BS 5467).
  test.each([
    ["sheath-missing", { "live-covering": "basic-sound" }, {}, ["conductor", "insulation", "(sheath)"]],
    ["sheath-missing", { "live-covering": "bare" }, {}, ["conductor", "(insulation)", "(sheath)"]],
    ["cable-damaged", { "live-covering": "basic-sound" }, {}, ["conductor", "insulation", "(sheath)"]],
    ["cable-damaged", { "live-covering": "bare" }, {}, ["conductor", "(insulation)", "(sheath)"]],
    // As earlier files say it.
    ["sheath-missing", { cores: "whole" }, {}, ["conductor", "insulation", "(sheath)"]],
    ["sheath-missing", { cores: "live-bare" }, {}, ["conductor", "(insulation)", "(sheath)"]],
    ["cable-damaged", { damage: "sheath" }, {}, ["conductor", "insulation", "(sheath)"]],
    ["cable-damaged", { damage: "bare-metal" }, {}, ["conductor", "(insulation)", "(sheath)"]],
    [
      "cable-damaged",
      { damage: "insulation" },
      ARMOURED,
      ["conductor", "insulation", "(bedding)", "(armour)", "(sheath)"],
    ],
  ])("%s %j %j shows what is left", (topic, facts, cable, shown) => {
    expect(layers(topic, facts, cable)).toEqual(shown);
  });

  test.each([
    ["a sheath that is only marked", "cable-damaged", { "live-covering": "sheathed" }, {}],
    ["a sheath that is only marked, as earlier files say it", "cable-damaged", { damage: "surface" }, {}],
    ["an armour of which nothing is known", "cable-damaged", { "live-covering": "basic-sound" }, ARMOURED],
    [
      "a fact that is not settled",
      "cable-damaged",
      { "live-covering": { notKnown: "limited", reason: "boxed in" } },
      {},
    ],
    ["several that are possible", "cable-damaged", { "live-covering": "basic-sound | basic-damaged" }, {}],
    ["a construction that is not one", "cable-damaged", { damage: "bare-metal" }, { kind: "rubber" }],
    ["a cable nobody saw", "cable-damaged", { damage: "bare-metal" }, { kind: { notKnown: "limited", reason: "-" } }],
    ["another subject", "lighting-no-rcd", { premises: "home" }, {}],
  ])("is not drawn for %s", (_, topic, facts, cable) => {
    expect(layers(topic, facts, cable)).toBeUndefined();
  });
});
