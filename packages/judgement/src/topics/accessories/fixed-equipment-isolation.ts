import { all, held, is, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Fixed equipment (boiler, fan, motor, heater, heat pump) without a means to cut it off and keep it off. */
export const fixedEquipmentIsolation = topic({
  id: "fixed-equipment-isolation",
  title: "Fixed equipment without isolation",
  group: "accessories",
  items: ["accessories.isolation"],
  facts: {
    means: ranked({
      asks: "What cuts the equipment off from the supply for work on it?",
      effort: "glance",
      values: {
        secured: "a plug, switch or isolator cuts it off and stays under the worker's control, by lock or by sight",
        "line-only": "the only device leaves the neutral or another live conductor connected",
        "not-secured": "a device cuts it off, and anyone can put it back on unseen",
        none: "no device cuts it off on its own or with its circuit",
      },
    }),
    beside: yesNo({
      asks: "Is what cuts it off beside the equipment?",
      effort: "glance",
      yes: "what cuts it off is beside the equipment",
      no: "what cuts it off is elsewhere",
      worse: "no",
    }),
    movement: yesNo({
      asks: "Could it start to move or heat while somebody has hands in it?",
      effort: "glance",
      yes: "it could start and hurt somebody who has hands in it",
      no: "it has no moving or hot part that work exposes",
      worse: "yes",
    }),
    "own-device": yesNo({
      asks: "Is it clear which device feeds it, by label or because it stands alone?",
      effort: "glance",
      yes: "it is clear which device feeds it",
      no: "nothing shows which device feeds it",
      worse: "no",
    }),
  },
  contested: {
    elsewhere: {
      question: "Is it worth recording that a secured device elsewhere is the only one?",
      positions: {
        enough: {
          words: "a device that is secured elsewhere is isolation enough",
          because: "462.2 and 464.1 want a means under the worker's control, and name no distance",
        },
        record: {
          words: "it is worth recording that there is none beside the equipment",
          because: "people who cannot lock a breaker will work on it, and makers often ask for a switch beside it",
        },
      },
    },
  },
  paths: [
    {
      id: "works-on-live",
      hazard: "contact-with-live-parts",
      route: "somebody works on the equipment while it is still live",
      exists: is("means", "none"),
      layers: [oneEventAway("care", "information", "the care of the person who works on it", ["462.1", "462.2"])],
    },
    {
      id: "starts-up",
      hazard: "mechanical-movement",
      route: "somebody switches it on while another person has hands in it",
      exists: all(yes("movement"), is("means", "not-secured", "none")),
      layers: [
        oneEventAway("nobody-near", "information", "nobody touching the switch meanwhile", ["464.1", "537.3.2"]),
      ],
    },
  ],
  departures: [
    {
      when: all(is("means", "secured"), no("beside"), held("elsewhere", "record")),
      words: "nothing beside the equipment cuts it off",
      regulations: ["462.2", "134.1.1"],
    },
    {
      when: is("means", "not-secured", "line-only", "none"),
      words: "the equipment cannot be cut off and kept off",
      regulations: ["462.1", "462.2", "464.1"],
    },
    {
      when: all(no("own-device"), is("means", "secured"), no("beside")),
      words: "nothing shows which device cuts the equipment off",
      regulations: ["514.1.1", "462.2"],
    },
  ],
  client: {
    C2: "A machine or heater cannot be turned off in a safe way to work on it. Someone could be hurt. Fit a switch soon.",
    C3: "A machine or heater has no good switch of its own. It is not a danger in use. A switch should be fitted.",
    FI: [
      unsure("We could not find what turns a machine or heater off. This must be looked at soon.", ["means"]),
      unsure("We could not find out if a machine could start while someone works on it. This must be looked at soon.", [
        "movement",
      ]),
    ],
    none: "The machine or heater can be turned off in a safe way.",
  },
  remedies: [
    {
      words: "Provide a locking device for the breaker and mark it.",
      changes: { means: "secured", "own-device": "yes" },
    },
    {
      words: "Fit a double-pole switch or isolator beside the equipment.",
      changes: { means: "secured", beside: "yes" },
    },
  ],
  examples: [
    {
      name: "bathroom fan with no isolator, fed from the lighting circuit whose breaker can be locked",
      facts: { means: "secured", beside: false, "own-device": true },
      possible: ["none"],
      source: "regulation: isolation by the circuit's device under control",
    },
    {
      name: "the same, held worth recording",
      facts: { means: "secured", beside: false, "own-device": true },
      positions: { elsewhere: "record" },
      possible: ["C3"],
      source: "trade discussion of fans without an isolator",
    },
    {
      name: "boiler cut off only at a board without a lock",
      facts: { means: "not-secured", movement: false, "own-device": true },
      possible: ["C3"],
      source: "trade practice: cut off, but not secured",
    },
    {
      name: "belt-driven extractor cut off only at a board in the next room",
      facts: { means: "not-secured", movement: true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: no switching off for mechanical maintenance",
    },
    {
      name: "single-pole switch to a boiler",
      facts: { means: "line-only", movement: false, "own-device": true },
      possible: ["C3"],
      source: "trade practice: neutral not cut off",
    },
    {
      name: "wired in ahead of the main switch with no device",
      facts: { means: "none", movement: false },
      possible: ["C2"],
      source: "trade practice: cannot be made dead",
    },
    {
      name: "device not found",
      facts: { movement: false, "own-device": true },
      possible: ["none", "C3", "C2"],
      missing: ["means"],
      source: "union over what feeds it",
    },
  ],
});
