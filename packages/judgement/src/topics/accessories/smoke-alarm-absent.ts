import { all, any, held, is, NEVER, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Smoke and heat alarms: outside the technical outcome where none is fitted, inside it where wiring is at fault. */
export const smokeAlarmAbsent = topic({
  id: "smoke-alarm-absent",
  title: "Smoke alarm missing or not working",
  group: "accessories",
  items: ["fire.alarms"],
  facts: {
    alarms: ranked({
      asks: "What alarms are there, going by their test buttons and dates?",
      effort: "glance",
      values: {
        work: "the alarms work and are within their dates",
        "none-fitted": "no alarm, or only a battery alarm, is fitted",
        "wired-and-failed": "alarms wired to the supply are fitted and do not work, or are past their dates",
        "open-base": "an alarm wired to the supply has been taken down, and its live connections can be touched",
      },
    }),
    "relied-on": yesNo({
      asks: "Does the way out depend on the alarms: shared house, flats with one stair, care, upper storeys?",
      effort: "glance",
      yes: "people depend on the alarms to get out",
      no: "people do not depend on wired alarms to get out",
      worse: "yes",
    }),
  },
  contested: {
    "missing-alarm": {
      question: "Does a missing alarm belong in the outcome of an electrical report?",
      positions: {
        outside: {
          words: "it is mentioned and does not count",
          because: "alarms are asked for by building and housing law, and no rule for wiring is broken",
        },
        improvement: {
          words: "it is recorded as an improvement",
          because: "the report is where the owner will read it, and it costs the wiring nothing",
        },
      },
    },
  },
  paths: [
    {
      id: "fire-not-noticed",
      hazard: "burns-or-fire",
      route: "a fire is not noticed in time because the alarm that people depend on is dead",
      exists: all(is("alarms", "wired-and-failed", "open-base"), yes("relied-on")),
      layers: [oneEventAway("no-fire", "surroundings", "there being no fire", ["134.1.1", "651.2"])],
    },
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches the open connections of an alarm base",
      exists: is("alarms", "open-base"),
      layers: [
        {
          id: "head",
          provision: "barrier-or-enclosure",
          words: "the head of the alarm as a cover",
          gone: is("alarms", "open-base"),
          sound: NEVER,
          regulations: ["416.2.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(
        is("alarms", "wired-and-failed", "open-base"),
        all(is("alarms", "none-fitted"), held("missing-alarm", "improvement")),
      ),
      words: "the alarms do not warn of a fire",
      regulations: ["134.1.1", "651.2"],
    },
  ],
  client: {
    C1: "Live wires of a smoke alarm can be touched. Keep away from them. Have them made safe now.",
    C2: "The smoke alarms that you need to get out in a fire do not work or are too old. Have them put right soon.",
    C3: "Smoke alarms are missing, too old or do not work. The wiring is safe. New alarms are advised, and the law may ask for them.",
    FI: [
      unsure("We could not find out if the smoke alarms work. This must be looked at soon.", ["alarms"]),
      unsure(
        "The smoke alarms do not work or are too old. We could not find out if people need them to get out. This must be looked at soon.",
        ["relied-on"],
        is("alarms", "wired-and-failed"),
      ),
    ],
    none: [
      says(
        "The wiring of the alarms is safe. The law on homes may still ask for alarms. Ask about that.",
        is("alarms", "work"),
      ),
      says(
        "No smoke alarm is wired in. The law on homes may ask for alarms. Ask about that.",
        is("alarms", "none-fitted"),
      ),
    ],
  },
  remedies: [
    {
      words: "Replace heads and bases that are past their dates and test them together.",
      changes: { alarms: "work" },
    },
  ],
  examples: [
    {
      name: "no alarm in a let house",
      facts: { alarms: "none-fitted" },
      possible: ["none"],
      classification: "none",
      source: "trade discussion: outside the technical outcome, inside housing law",
    },
    {
      name: "the same, recorded as an improvement",
      facts: { alarms: "none-fitted" },
      positions: { "missing-alarm": "improvement" },
      possible: ["C3"],
      source: "trade discussion: outside the technical outcome, inside housing law",
    },
    {
      name: "wired alarms past their dates in an ordinary house",
      facts: { alarms: "wired-and-failed", "relied-on": false },
      possible: ["C3"],
      source: "trade practice: equipment does not do its work",
    },
    {
      name: "dead wired alarms in a shared house",
      facts: { alarms: "wired-and-failed", "relied-on": true },
      possible: ["C2"],
      source: "trade practice: people depend on them",
    },
    {
      name: "open base in reach",
      facts: { alarms: "open-base" },
      possible: ["C1"],
      source: "trade practice: bare live metal in reach",
    },
    {
      name: "not tested",
      facts: { "relied-on": true },
      possible: ["none", "C2", "C1"],
      missing: ["alarms"],
      source: "union over the test",
    },
  ],
});
