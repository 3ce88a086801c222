import { ALWAYS, all, any, held, is, NEVER, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { ROLE } from "./facts.ts";

/** An RCD that is not made for the direct current that the loads behind it can leak. */
export const rcdTypeAc = topic({
  id: "rcd-type-ac",
  title: "RCD of a type that does not suit the loads",
  group: "residual-current",
  items: ["boards.rcd"],
  facts: {
    type: ranked({
      asks: "Of what type is the RCD?",
      effort: "glance",
      values: {
        b: "the RCD is of type B",
        a: "the RCD is of type A or F",
        ac: "the RCD is of type AC, or bears no mark of type",
      },
    }),
    loads: ranked({
      asks: "What direct current can the equipment behind it leak?",
      effort: "glance",
      values: {
        none: "only fixed equipment without electronics is fed: heating elements, plain lamps",
        pulsating: "electronics are fed or can be plugged in: washing machines, chargers, LED drivers",
        smooth:
          "a converter is fed whose maker says, or whose design makes it likely, that it can leak smooth direct current above 6 mA",
      },
    }),
    role: ROLE,
    "asked-when-made": yesNo({
      asks: "Was it fitted when type AC was already restricted to loads without electronics (from 2022)?",
      effort: "opened",
      yes: "the RCD was fitted when its type was already restricted",
      no: "the RCD was fitted before its type was restricted",
      worse: "yes",
    }),
  },
  contested: {
    "older-type": {
      question: "Is an RCD of type AC from before the restriction worth an entry where ordinary electronics are fed?",
      positions: {
        improvement: {
          words: "it is an improvement to advise",
          because: "its response to pulsating current is not defined, and nothing shows that it fails",
        },
        "no-entry": {
          words: "it is no matter for the report where it trips in its test",
          because: "it met its edition, and no harm from it is known in homes",
        },
        "fault-protection-counts": {
          words: "it is potentially dangerous where it is the fault protection",
          because: "on TT nothing else disconnects if pulsating current dulls it",
        },
      },
    },
  },
  paths: [
    {
      id: "blinded",
      hazard: "shock-under-fault",
      route: "direct current from a load blinds the RCD, and a shock or fault behind it is not cut off",
      exists: ALWAYS,
      layers: [
        oneEventAway("basic", "insulation", "the insulation of live parts, leads and tools", ["416.1"]),
        {
          id: "rcd-sees",
          provision: "additional-protection",
          words: "an RCD that still sees a fault beside the direct current",
          gone: any(
            all(is("loads", "smooth"), is("type", "ac", "a")),
            all(
              is("loads", "pulsating"),
              is("type", "ac"),
              is("role", "fault-protection"),
              held("older-type", "fault-protection-counts"),
            ),
          ),
          sound: NEVER,
          regulations: ["531.3.3"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(
        all(is("loads", "smooth"), is("type", "ac", "a")),
        all(
          is("loads", "pulsating"),
          is("type", "ac"),
          any(yes("asked-when-made"), not(held("older-type", "no-entry"))),
        ),
      ),
      words: "the type of the RCD does not suit what it feeds",
      regulations: ["531.3.3"],
    },
  ],
  client: {
    C2: "The safety switch is of the wrong kind for what it feeds. It may not work in a fault. Change it soon.",
    C3: "The safety switch is of an older kind. It is not a danger now. A newer kind suits your devices better.",
    FI: unsure("We could not find out if the safety switch suits what it feeds. This must be looked at soon.", [
      "type",
      "loads",
      "role",
    ]),
    none: says(
      "The safety switch suits what it feeds.",
      any(is("type", "b"), is("loads", "none"), all(is("type", "a"), is("loads", "pulsating"))),
    ),
  },
  remedies: [
    {
      words: "Feed the converter by a circuit and an RCD of its own, of the type its maker asks for.",
      changes: { loads: "none" },
    },
    { words: "Replace the RCD by one of the type that suits all loads behind it.", changes: { type: "b" } },
  ],
  examples: [
    {
      name: "type AC before the sockets of an older house",
      facts: { type: "ac", loads: "pulsating", role: "additional", "asked-when-made": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion: RCDs of type AC",
    },
    {
      name: "the same held to be no entry",
      facts: { type: "ac", loads: "pulsating", role: "additional", "asked-when-made": false },
      positions: { "older-type": "no-entry" },
      possible: ["none"],
      source: "trade discussion: RCDs of type AC",
    },
    {
      name: "type AC before a car charger without d.c. detection",
      facts: { type: "ac", loads: "smooth", role: "wet-or-outdoors" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: potentially dangerous where direct current is certain",
    },
    {
      name: "type AC as the fault protection on TT",
      facts: { type: "ac", loads: "pulsating", role: "fault-protection", "asked-when-made": false },
      positions: { "older-type": "fault-protection-counts" },
      possible: ["C2"],
      source: "trade discussion: type AC on TT",
    },
    {
      name: "immersion heater only",
      facts: { type: "ac", loads: "none" },
      possible: ["none"],
      source: "regulation 531.3.3: fixed equipment known to have no direct current",
    },
    {
      name: "loads not listed",
      facts: { type: "ac", role: "additional", "asked-when-made": false },
      possible: ["none", "C3", "C2"],
      missing: ["loads"],
      source: "union over the loads",
    },
  ],
});
