import { all, is, NEVER, no, oneKind, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** An overcurrent device ahead that opens together with, or before, the one behind it. */
export const selectivityLacking = topic({
  id: "selectivity-lacking",
  title: "Devices in series that do not grade",
  group: "boards",
  items: ["boards.devices"],
  facts: {
    grades: yesNo({
      asks: "By the makers' data, does the device behind open first at the fault currents to be expected?",
      effort: "opened",
      yes: "the device behind opens first at the fault currents to be expected",
      no: "the device ahead opens together with the one behind, or first",
      worse: "no",
      worked: { by: "devices-grade", met: "yes", notMet: "no" },
    }),
    "what-is-lost": oneKind({
      asks: "What goes out when the device ahead opens?",
      effort: "opened",
      values: {
        same: "nothing more than the faulty circuit is lost",
        others: "other circuits are lost, which is a nuisance",
        vital: "light on escape routes, a safety service or a machine that somebody's life hangs on is lost",
      },
    }),
    "standby-supply": yesNo({
      asks: "Does what must not fail have a supply that takes over?",
      effort: "glance",
      yes: "what must not fail has a supply that takes over",
      no: "nothing takes over",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "vital-lost",
      hazard: "loss-of-supply",
      route: "a fault in one circuit puts out what somebody's safety hangs on",
      exists: all(no("grades"), is("what-is-lost", "vital")),
      layers: [
        oneEventAway("no-fault", "insulation", "circuits and equipment that have no fault", ["416.1"]),
        {
          id: "takes-over",
          provision: "surroundings",
          words: "a supply that takes over",
          gone: no("standby-supply"),
          sound: NEVER,
          regulations: ["560.7", "314.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(no("grades"), is("what-is-lost", "others", "vital")),
      words: "the devices in series do not grade, so that a fault puts out more than its own circuit",
      regulations: ["536.4.1", "314.1"],
    },
  ],
  client: {
    C2: "A fault in one place can put out lights or machines that keep people safe. Put this right soon.",
    C3: "A fault in one place may turn off more than it should. That is a nuisance. A change is advised.",
    FI: unsure("We could not find out what a fault would turn off. It may matter for safety. It must be looked at.", [
      "grades",
      "what-is-lost",
      "standby-supply",
    ]),
    none: "A fault turns off no more than it should.",
  },
  remedies: [
    { words: "Give what must not fail a supply that takes over.", changes: { "standby-supply": "yes" } },
    {
      words: "Choose devices that grade by the makers' data, such as a fuse ahead of the right ratio.",
      changes: { grades: "yes" },
    },
  ],
  examples: [
    {
      name: "32 A breaker behind a 40 A breaker, workshop",
      facts: { grades: false, "what-is-lost": "others" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: breakers in series grade only below the magnetic level of the one ahead",
    },
    {
      name: "escape lights without a standby supply",
      facts: { grades: false, "what-is-lost": "vital", "standby-supply": false },
      possible: ["C2"],
      source: "trade practice: loss of light on the escape route",
    },
    {
      name: "outbuilding with one circuit",
      facts: { grades: false, "what-is-lost": "same" },
      possible: ["none"],
      source: "trade practice: nothing more is lost",
    },
    {
      name: "what is lost not traced",
      facts: { grades: false, "standby-supply": true },
      possible: ["none", "C3"],
      missing: ["what-is-lost"],
      source: "union over what is lost",
    },
  ],
});
