import { ALWAYS, all, any, held, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Isolation of a photovoltaic supply on both sides of its inverter. */
export const pvIsolation = topic({
  id: "pv-isolation",
  title: "Isolation of a photovoltaic supply",
  group: "sources",
  items: ["sources.photovoltaic", "notices.other-sources"],
  facts: {
    "ac-isolator": ranked({
      asks: "Is there an isolator on the a.c. side of the inverter, and can it be locked off?",
      effort: "glance",
      values: {
        lockable: "the a.c. side has an isolator that can be locked off",
        "not-lockable": "the a.c. side has an isolator that cannot be locked off",
        absent: "the a.c. side has no isolator",
      },
    }),
    "dc-isolator": ranked({
      asks: "Is there a means of isolation on the d.c. side, rated for d.c. on load?",
      effort: "glance",
      values: {
        rated: "the d.c. side can be isolated by a switch rated for d.c. on load",
        unrated: "the d.c. isolator shows no rating for d.c. on load",
        absent: "the d.c. side has no means of isolation",
      },
    }),
    "ac-label": yesNo({
      asks: "Is the a.c. isolator labelled as that of the photovoltaic supply?",
      effort: "glance",
      yes: "the a.c. isolator is labelled",
      no: "the a.c. isolator is not labelled",
      worse: "no",
    }),
    "dc-marked": yesNo({
      asks: "Are the d.c. parts marked as staying live after the inverter is isolated?",
      effort: "glance",
      yes: "the d.c. parts are marked as staying live",
      no: "nothing marks the d.c. parts as staying live",
      worse: "no",
    }),
  },
  contested: {
    "dc-marking": {
      question: "Does a missing mark on d.c. parts that stay live put the next person at risk?",
      positions: {
        improves: {
          words: "the mark is an improvement: d.c. equipment is opened with a tool by people who expect it live",
          because: "the parts stay enclosed while nobody opens them",
        },
        "puts-at-risk": {
          words: "without the mark somebody may take the d.c. side for dead",
          because: "an inverter switched off looks isolated, and d.c. at this voltage holds on",
        },
      },
    },
  },
  paths: [
    {
      id: "fed-from-inverter",
      hazard: "contact-with-live-parts",
      route: "somebody works on what they believe dead while the inverter feeds it",
      exists: ALWAYS,
      layers: [
        oneEventAway("shut-down", "isolation", "the inverter's own stopping when the mains goes", ["551.7.4"]),
        {
          id: "ac-isolator",
          provision: "isolation",
          words: "an isolator on the a.c. side",
          gone: is("ac-isolator", "absent"),
          sound: NEVER,
          regulations: ["537.2", "712.537.2"],
        },
      ],
    },
    {
      id: "dc-stays-live",
      hazard: "contact-with-live-parts",
      route: "somebody opens d.c. equipment that stays live in daylight, or draws an arc with a switch not made for it",
      exists: ALWAYS,
      layers: [
        oneEventAway("closed", "barrier-or-enclosure", "the closed enclosure of the d.c. equipment", ["416.2.4"]),
        {
          id: "dc-isolation",
          provision: "isolation",
          words: "isolation on the d.c. side that is rated for it and known to leave the array live",
          gone: any(is("dc-isolator", "unrated", "absent"), all(no("dc-marked"), held("dc-marking", "puts-at-risk"))),
          sound: NEVER,
          regulations: ["712.537.2", "514.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(is("ac-isolator", "not-lockable", "absent"), is("dc-isolator", "unrated", "absent")),
      words: "isolation of the photovoltaic supply is incomplete",
      regulations: ["712.537.2", "537.2"],
    },
    {
      when: any(no("ac-label"), no("dc-marked")),
      words: "isolators or d.c. parts are not marked",
      regulations: ["514.1.1", "514.15.1"],
    },
  ],
  client: {
    C2: "The solar panels cannot be switched off safely. Somebody working here could get a shock. This must be put right soon.",
    C3: "The switch for the solar panels lacks a label or a lock. It is not a danger now. This would help the next person.",
    FI: unsure("We could not find out how the solar panels are switched off. This must be looked at soon.", [
      "ac-isolator",
      "dc-isolator",
      "dc-marked",
    ]),
    none: "The solar panels can be switched off safely and the switches are marked.",
  },
  remedies: [
    { words: "Label the isolators and the d.c. parts.", changes: { "ac-label": "yes", "dc-marked": "yes" } },
    {
      words: "Fit isolators of the right rating on the side that lacks one, and label them.",
      changes: { "ac-isolator": "lockable", "dc-isolator": "rated", "ac-label": "yes", "dc-marked": "yes" },
    },
  ],
  examples: [
    {
      name: "a.c. isolator lockable, not labelled",
      facts: { "ac-isolator": "lockable", "dc-isolator": "rated", "ac-label": false, "dc-marked": true },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: the isolator is there, the label is not",
    },
    {
      name: "d.c. isolator missing",
      facts: { "ac-isolator": "lockable", "dc-isolator": "absent", "ac-label": true, "dc-marked": true },
      possible: ["C2"],
      source: "trade practice: the d.c. side cannot be isolated",
    },
    {
      name: "d.c. parts unmarked where that is held to put people at risk",
      facts: { "ac-isolator": "lockable", "dc-isolator": "rated", "ac-label": true, "dc-marked": false },
      positions: { "dc-marking": "puts-at-risk" },
      possible: ["C2"],
      source: "trade practice: unmarked d.c. parts",
    },
    {
      name: "d.c. side not looked at",
      facts: { "ac-isolator": "lockable", "ac-label": true, "dc-marked": true },
      possible: ["none", "C2"],
      missing: ["dc-isolator"],
      source: "union over what may be there",
    },
  ],
});
