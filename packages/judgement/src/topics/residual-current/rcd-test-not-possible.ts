import { any, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** An RCD that could not be tested, or whose button the user cannot reach or is not told of. */
export const rcdTestNotPossible = topic({
  id: "rcd-test-not-possible",
  title: "RCD not tested, or its button out of reach",
  group: "residual-current",
  items: ["boards.rcd", "notices.rcd-test"],
  facts: {
    operates: yesNo({
      asks: "Tested by instrument, does it open in time?",
      effort: "measured",
      yes: "the RCD opens in time",
      no: "the RCD does not open in time",
      worse: "no",
      worked: { by: "rcd-time", matter: "rcd-not-slow", met: "yes", notMet: "no" },
    }),
    "button-reach": ranked({
      asks: "Can the user get at the test button?",
      effort: "glance",
      values: {
        free: "the user gets at the test button",
        covered: "the test button is covered, built in or locked away from the user",
      },
    }),
    notice: yesNo({
      asks: "Does a notice tell the user to press the test button from time to time?",
      effort: "glance",
      yes: "a notice tells the user to press the test button",
      no: "no notice tells the user to press the test button",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "not-shown",
      hazard: "shock-under-fault",
      route: "the RCD sticks, and a fault or a shock is not cut off",
      exists: no("operates"),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of live parts, leads and tools", ["416.1"]),
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD that is shown to work",
          gone: no("operates"),
          sound: NEVER,
          regulations: ["643.8", "643.10"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(no("operates"), is("button-reach", "covered")),
      words: "the RCD cannot be exercised by its user, or does not operate",
      regulations: ["643.10"],
    },
    {
      when: no("notice"),
      words: "the notice about the test button is missing",
      regulations: ["514.12.2"],
    },
  ],
  client: {
    C2: "The safety switch does not work. It may not save you from a shock. Change it soon.",
    C3: "You cannot test the safety switch, or no note tells you to. Make the button free and add a note.",
    FI: unsure("We could not test the safety switch. It may not work. A test must be made soon.", ["operates"]),
    none: "The safety switch works, and you can test it.",
  },
  remedies: [
    { words: "Fix the notice about the test button at the board.", changes: { notice: "yes" } },
    { words: "Make the test button free to reach.", changes: { "button-reach": "free" } },
    { words: "Test the device and replace it where it fails.", changes: { operates: "yes" } },
  ],
  examples: [
    {
      name: "could not be switched off for the test",
      facts: {
        operates: { notKnown: "limited", reason: "medical equipment was in use" },
        "button-reach": "free",
        notice: true,
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over the test",
    },
    {
      name: "button behind a fixed panel",
      facts: { operates: true, "button-reach": "covered", notice: true },
      possible: ["C3"],
      source: "trade practice: the user cannot exercise it",
    },
    {
      name: "no notice",
      facts: { operates: true, "button-reach": "free", notice: false },
      possible: ["C3"],
      source: "trade practice: notice missing",
    },
    {
      name: "not yet tested",
      facts: { "button-reach": "free", notice: true },
      possible: ["none", "C2"],
      missing: ["operates"],
      source: "union over the test",
    },
  ],
});
