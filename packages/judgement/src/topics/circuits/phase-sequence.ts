import { ALWAYS, all, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A three-phase outlet or machine whose phases follow one another the wrong way round. */
export const phaseSequence = topic({
  id: "phase-sequence",
  title: "Phase sequence (rotation) wrong at a three-phase point",
  group: "circuits",
  items: ["accessories.connections", "circuits.terminations"],
  facts: {
    same: yesNo({
      asks: "By the phase rotation tester: do the phases follow one another here as they do at the origin?",
      effort: "measured",
      yes: "the phases follow one another as at the origin",
      no: "two phases are the other way round than at the origin",
      worse: "no",
    }),
    feeds: ranked({
      asks: "What is fed there, or can be plugged in there?",
      effort: "glance",
      values: {
        "seen-right": "one fixed machine is fed there, and was seen to turn the right way",
        "not-turning": "only things that do not turn are fed there, such as heaters",
        turning: "machines that turn are, or can be, fed there",
      },
    }),
    backwards: ranked({
      asks: "What would happen if such a machine ran backwards?",
      effort: "glance",
      values: {
        nuisance: "a machine that ran backwards would fail to do its work, and hurt nobody",
        dangerous: "a machine that ran backwards could throw, draw in, come undone or let a load go",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "runs-backwards",
      hazard: "mechanical-movement",
      route: "a machine starts backwards and catches or throws something at somebody",
      exists: all(no("same"), is("feeds", "turning"), is("backwards", "dangerous")),
      layers: [
        {
          id: "sequence",
          provision: "isolation",
          words: "phases that follow one another the same way at every point",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["643.9"],
        },
        oneEventAway("tried-first", "surroundings", "an operator who tries the way of turning before working with it"),
      ],
    },
  ],
  departures: [
    {
      when: all(no("same"), is("feeds", "not-turning", "turning")),
      words: "the phase sequence is not kept throughout",
      regulations: ["643.9"],
    },
  ],
  client: {
    C2: "Two wires of a big power point are swapped. A machine could run backwards and hurt someone. Have them put right soon.",
    C3: "Two wires of a big power point are swapped. It is not a danger now. Have them put right.",
    FI: unsure("We could not test if machines at one point turn the right way. This must be tested soon.", [
      "same",
      "feeds",
      "backwards",
    ]),
    none: "Machines turn the right way.",
  },
  remedies: [
    { words: "Isolate, swap two line conductors at the point, and test the sequence again.", changes: { same: "yes" } },
    {
      words:
        "Where it is wrong at several points, put it right where they divide, and try every machine that was right.",
      changes: { same: "yes" },
    },
  ],
  examples: [
    {
      name: "one of two 32 A outlets the other way round, saws plugged in",
      facts: { same: false, feeds: "turning", backwards: "dangerous" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: the next machine plugged in runs backwards",
    },
    {
      name: "the same, only heaters are used",
      facts: { same: false, feeds: "not-turning" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice; regulation 643.9",
    },
    {
      name: "a pump wired in and seen to pump",
      facts: { same: false, feeds: "seen-right" },
      possible: ["none"],
      source: "trade practice: what counts is the way it turns",
    },
    {
      name: "not tested while the works ran",
      facts: {
        feeds: "turning",
        backwards: "dangerous",
        same: { notKnown: "limited", reason: "the works could not be stopped" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over what the tester would show",
    },
    {
      name: "what is plugged in not asked",
      facts: { same: false, backwards: "dangerous" },
      possible: ["none", "C3", "C2"],
      missing: ["feeds"],
      source: "union over what is fed",
    },
  ],
});
