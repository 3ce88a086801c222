import { all, is, NEVER, no, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A breaker or switch that does not do what its handle says. */
export const deviceFaulty = topic({
  id: "device-faulty",
  title: "Device does not operate or reset",
  group: "boards",
  items: ["boards.devices"],
  facts: {
    behaviour: ranked({
      asks: "Worked by hand, what does it do?",
      effort: "opened",
      values: {
        well: "the device opens, closes and stays as set",
        stiff: "the device is stiff or its marking is worn, and it opens and closes",
        "stays-off": "the device does not stay closed",
        "stays-on": "the device does not open, or it is held closed by something put there",
      },
    }),
    "circuit-sound": yesNo({
      asks: "Is its circuit free of faults by test?",
      effort: "measured",
      yes: "tests show its circuit free of faults",
      no: "tests show a fault on its circuit",
      worse: "no",
    }),
    "left-off": yesNo({
      asks: "Is the circuit disconnected, or locked off, until it is put right?",
      effort: "glance",
      yes: "the circuit is disconnected or locked off",
      no: "somebody can try to switch the circuit on again",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "does-not-open",
      hazard: "burns-or-fire",
      route: "an overload or fault comes, the device does not open, and the cable burns or metal stays live",
      exists: all(is("behaviour", "stays-on"), no("left-off")),
      layers: [
        oneEventAway("no-fault", "insulation", "a circuit without fault or overload", ["416.1"]),
        {
          id: "device",
          provision: "overcurrent-protection",
          words: "a device that opens",
          gone: is("behaviour", "stays-on"),
          sound: NEVER,
          regulations: ["432", "411.3.2"],
        },
      ],
    },
    {
      id: "forced-on",
      hazard: "burns-or-fire",
      route: "somebody forces or replaces the device and puts the faulty circuit on",
      exists: all(is("behaviour", "stays-off"), no("left-off")),
      layers: [
        {
          id: "no-fault-there",
          provision: "insulation",
          words: "a circuit without fault",
          gone: no("circuit-sound"),
          sound: yes("circuit-sound"),
          regulations: ["416.1"],
        },
        oneEventAway("stays-off", "overcurrent-protection", "the device while it stays off", ["432"]),
      ],
    },
  ],
  departures: [
    {
      when: not(is("behaviour", "well")),
      words: "a device does not work as its handle shows",
      regulations: ["643.10"],
    },
  ],
  client: {
    C2: [
      says(
        "A fuse switch does not work as it should. A fault could start a fire or give a shock. Change it soon.",
        is("behaviour", "stays-on"),
      ),
      says(
        "A fuse switch does not stay on, and its wiring has a fault. Do not force it on. Have it put right soon.",
        is("behaviour", "stays-off"),
      ),
    ],
    C3: "A fuse switch is worn or does not work as it should. It is not a danger now. It would be good to change it.",
    FI: [
      unsure(
        "A fuse switch does not work, and we could not find out why. It must be looked at soon.",
        ["circuit-sound"],
        is("behaviour", "stays-off"),
      ),
      unsure("We could not find out if a fuse switch works as it should. It must be looked at soon.", [
        "behaviour",
        "left-off",
        "circuit-sound",
      ]),
    ],
    none: "The fuse switches work.",
  },
  remedies: [
    { words: "Disconnect or lock off the circuit until it is put right.", changes: { "left-off": "yes" } },
    {
      words: "Find and repair the fault of the circuit, and replace the device by one of the board's own range.",
      changes: { behaviour: "well", "circuit-sound": "yes" },
    },
  ],
  examples: [
    {
      name: "does not stay closed, circuit sound",
      facts: { behaviour: "stays-off", "circuit-sound": true, "left-off": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: device fails to the safe side",
    },
    {
      name: "cannot be switched off",
      facts: { behaviour: "stays-on", "circuit-sound": true, "left-off": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: overcurrent protection not to be counted on",
    },
    {
      name: "does not stay closed, circuit not tested for want of access",
      facts: {
        behaviour: "stays-off",
        "circuit-sound": { notKnown: "limited", reason: "no access to the flat it feeds" },
        "left-off": false,
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over the circuit",
    },
    {
      name: "held closed by tape, whether left so not noted",
      facts: { behaviour: "stays-on" },
      possible: ["C3", "C2"],
      missing: ["left-off"],
      source: "union over how it was left",
    },
  ],
});
