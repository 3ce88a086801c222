import { ALWAYS, all, held, is, NEVER, ranked, unsure } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Insulation resistance that still meets its limit and has fallen far since the last report. */
export const insulationFalling = topic({
  id: "insulation-falling",
  title: "Insulation resistance falling",
  group: "circuits",
  items: ["circuits.insulation"],
  facts: {
    fall: ranked({
      asks: "How does the reading stand against the last report, taken in the same way?",
      effort: "glance",
      values: {
        steady: "the reading is much as it was, or both are far above any concern",
        "other-way":
          "the reading is far lower, but was not taken in the same way: other things connected, other weather",
        fallen:
          "the reading, taken in the same way, has fallen more than tenfold and is now within a few times the limit",
      },
    }),
    cause: ranked({
      asks: "What has brought it down?",
      effort: "beyond",
      values: {
        harmless: "a harmless cause was found: a new filter, a surge device, surface damp that has dried",
        "lengthy-circuit": "the circuit was extended, and the value suits its length and number of points",
        deteriorating: "cable or equipment is getting damp, hot or brittle",
      },
    }),
  },
  contested: {
    trend: {
      question: "Does a reading that meets its limit count for less because it is falling fast?",
      positions: {
        counts: {
          words: "a fall of this size shows insulation on its way to failing, until its cause is found",
          because:
            "an inspection has to look for deterioration, 651.2, and a limit says nothing about the next five years",
        },
        "meets-limit": {
          words: "a reading that meets the limit is enough; note it and test sooner",
          because: "the limit is the only measure that the standard gives",
        },
      },
    },
  },
  paths: [
    {
      id: "failure-ahead",
      hazard: "shock-under-fault",
      route: "the insulation goes on failing until current leaks into metal that somebody touches",
      exists: all(is("fall", "fallen"), is("cause", "deteriorating"), held("trend", "counts")),
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "insulation that lasts until the next inspection",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["416.1", "651.2"],
        },
        oneEventAway("margin", "insulation", "the margin that is left above the limit", ["643.3.2"]),
      ],
    },
  ],
  departures: [
    {
      when: all(is("fall", "fallen"), is("cause", "deteriorating"), held("trend", "counts")),
      words: "the insulation is deteriorating",
      regulations: ["134.1.1", "651.2"],
    },
  ],
  client: {
    C2: "The cover of the wires is going bad fast. Soon power could leak out and give a shock. Have the bad part replaced.",
    FI: [
      unsure(
        "The cover of the wires tests far worse than last time. It still passes, but we do not know why it fell. Have it looked at.",
        ["cause"],
        is("fall", "fallen"),
      ),
      unsure("We could not find out if the cover of the wires is getting worse. Have it looked at.", ["fall", "cause"]),
    ],
    none: "The cover of the wires is good enough. It should be tested again next time.",
  },
  remedies: [
    { words: "Read again with the same things disconnected as last time.", changes: { fall: "other-way" } },
    {
      words: "Test section by section, dry or replace the part that brings it down, and test again.",
      changes: { fall: "steady", cause: "harmless" },
    },
  ],
  examples: [
    {
      name: "180 MΩ at the last report, 2.2 MΩ now, cause not found",
      facts: { fall: "fallen", cause: { notKnown: "limited", reason: "not traced within the visit" } },
      possible: ["none", "C2"],
      classification: "FI",
      source: "trade practice: passes, and is falling fast",
    },
    {
      name: "the same where meeting the limit is held to be enough",
      facts: { fall: "fallen", cause: { notKnown: "limited", reason: "not traced within the visit" } },
      positions: { trend: "meets-limit" },
      possible: ["none"],
      classification: "none",
      source: "trade discussion: the value meets its limit",
    },
    {
      name: "last time nothing was connected, this time a filter was",
      facts: { fall: "other-way" },
      possible: ["none"],
      source: "trade practice: readings taken in different ways do not show a trend",
    },
    {
      name: "water in an outdoor box found to be the cause",
      facts: { fall: "fallen", cause: "deteriorating" },
      possible: ["C2"],
      source: "trade practice: deterioration that goes on",
    },
    {
      name: "way of testing not known",
      facts: { fall: "other-way | fallen" },
      possible: ["none", "C2"],
      missing: ["cause"],
      source: "union over cause and method",
    },
  ],
});
