import { ALWAYS, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Isolation of a battery store from the installation it feeds. */
export const batteryIsolation = topic({
  id: "battery-isolation",
  title: "Isolation of a battery store",
  group: "sources",
  items: ["sources.storage", "notices.other-sources"],
  facts: {
    isolator: ranked({
      asks: "Is there a means of isolation between the battery's inverter and the board, and can it be locked?",
      effort: "glance",
      values: {
        lockable: "an isolator between inverter and board can be locked off",
        "not-lockable": "an isolator between inverter and board cannot be locked off",
        absent: "nothing isolates the inverter from the board",
      },
    }),
    "backup-output": yesNo({
      asks: "Does the store feed anything when the mains is off?",
      effort: "opened",
      yes: "the store feeds circuits while the mains is off",
      no: "the store stops when the mains goes off",
      worse: "yes",
    }),
    label: yesNo({
      asks: "Do notices at the origin, meter, board and isolation points tell of the second source?",
      effort: "glance",
      yes: "notices tell of the second source",
      no: "notices of the second source are missing",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "fed-from-battery",
      hazard: "contact-with-live-parts",
      route: "somebody works on a circuit believed dead while the store feeds it",
      exists: ALWAYS,
      layers: [
        {
          id: "isolator",
          provision: "isolation",
          words: "a means of isolation of the store",
          gone: is("isolator", "absent"),
          sound: NEVER,
          regulations: ["462.1", "551.7"],
        },
        oneEventAway("proving", "information", "proving dead before work, as every skilled person does"),
      ],
    },
    {
      id: "nobody-knows",
      hazard: "contact-with-live-parts",
      route: "nobody expects a source that goes on feeding after the main switch is off",
      exists: is("backup-output", "yes"),
      layers: [
        {
          id: "notice",
          provision: "information",
          words: "notices that tell of the second source",
          gone: no("label"),
          sound: NEVER,
          regulations: ["514.15.1"],
        },
        oneEventAway("proving", "information", "proving dead before work, as every skilled person does"),
      ],
    },
  ],
  departures: [
    {
      when: is("isolator", "not-lockable", "absent"),
      words: "the store cannot be isolated and locked off",
      regulations: ["462.1", "462.3"],
    },
    { when: no("label"), words: "notices of the second source are missing", regulations: ["514.15.1"] },
  ],
  client: {
    C2: "The battery cannot be switched off safely, or nothing warns of it. A person at work could get a shock. Put it right soon.",
    C3: "The battery lacks a label or a lock on its switch. It works safely. This would make it better.",
    FI: [
      unsure("We could not find out how the battery is switched off. This must be looked at soon.", ["isolator"]),
      unsure("We could not find out if people are warned of the battery. This must be looked at soon.", [
        "label",
        "backup-output",
      ]),
    ],
    none: "The battery can be switched off safely and is marked.",
  },
  remedies: [
    { words: "Fix notices of the second source where they are missing.", changes: { label: "yes" } },
    {
      words: "Fit a lockable isolator between inverter and board, with notices.",
      changes: { isolator: "lockable", label: "yes" },
    },
  ],
  examples: [
    {
      name: "no isolation, no label",
      facts: { isolator: "absent", "backup-output": false, label: false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: a second source that cannot be made dead",
    },
    {
      name: "isolator there, label missing, stops with the mains",
      facts: { isolator: "lockable", "backup-output": false, label: false },
      possible: ["C3"],
      source: "trade practice: label missing",
    },
    {
      name: "feeds circuits when the mains is off, nothing says so",
      facts: { isolator: "lockable", "backup-output": true, label: false },
      possible: ["C2"],
      source: "trade practice: hidden second source",
    },
    {
      name: "whether it feeds without the mains is not known",
      facts: { isolator: "lockable", label: false },
      possible: ["C3", "C2"],
      missing: ["backup-output"],
      source: "union over what it does",
    },
  ],
});
