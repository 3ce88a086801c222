import { ALWAYS, all, any, held, is, NEVER, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { HOT_NOW, HOT_NOW_TOLD, heatAtIntake } from "./facts.ts";

/** A supply, neutral or earth that this installation shares with another. */
export const loopedSupply = topic({
  id: "looped-supply",
  title: "Supply, neutral or earth shared with another property",
  group: "intake",
  items: ["intake.service-cable", "intake.cut-out", "earthing.arrangement"],
  facts: {
    shared: ranked({
      asks: "What is shared with the other property, and where?",
      effort: "opened",
      values: {
        nothing: "nothing is shared but the network",
        "before-the-fuse": "the service is looped from another cut-out, before the main fuse of each property",
        "after-the-fuse": "a line conductor of this installation is fed from the other property's side of its meter",
        neutral: "a neutral of this installation is shared with the other, after the cut-out",
      },
    }),
    "earth-from": ranked({
      asks: "Where does the earth of this installation come from?",
      effort: "beyond",
      values: {
        own: "the distributor has confirmed its earthing terminal here, or an electrode of its own is there",
        "neighbours-wiring": "the earth comes through the other property's wiring, which can be taken off there",
        "own-link": "somebody other than the distributor joined the earth to the neutral here",
      },
    }),
    "notice-and-isolation": yesNo({
      asks: "Can everything that comes from the other property be isolated here, and does a notice say so?",
      effort: "glance",
      yes: "all that comes from the other property can be isolated here, and a notice says so",
      no: "parts stay live from the other property with this installation isolated, or no notice says so",
      worse: "no",
    }),
    heat: heatAtIntake({
      asks: "Do cut-out, looped terminals or cable show signs of heat?",
      effort: "glance",
      none: "the shared parts show no sign of heat",
      marks: "the shared parts show signs of heat",
    }),
  },
  contested: {
    loop: {
      question: "Is a service looped between properties by the distributor worth an observation?",
      positions: {
        "not-classified": {
          words: "it is noted and not classified",
          because: "it is a usual arrangement of the network, before the origin of this installation",
        },
        improvement: {
          words: "it is an improvement to have it separated",
          because: "either home loses supply with the other's, and it stands in the way of larger loads",
        },
      },
    },
  },
  paths: [
    {
      id: "earth-lost",
      hazard: "shock-under-fault",
      route: "the shared earth or neutral is taken off or breaks, and metal here becomes live",
      exists: ALWAYS,
      layers: [
        oneEventAway("basic", "insulation", "the insulation between live parts and earthed metal", ["416.1"]),
        {
          id: "earth",
          provision: "fault-protection",
          words: "a means of earthing that nobody else takes away",
          gone: is("earth-from", "neighbours-wiring", "own-link"),
          sound: NEVER,
          regulations: ["411.3.1.1", "542.1.2"],
        },
      ],
    },
    {
      id: "off-yet-live",
      hazard: "contact-with-live-parts",
      route: "somebody works on what is switched off here, and it is live from the other property",
      exists: is("shared", "after-the-fuse", "neutral"),
      layers: [
        oneEventAway("covers", "barrier-or-enclosure", "the covers of what is worked on", ["416.2.1"]),
        {
          id: "isolation",
          provision: "isolation",
          words: "isolation of everything that comes in, with a notice",
          gone: any(no("notice-and-isolation"), is("shared", "neutral")),
          sound: NEVER,
          regulations: ["314.4", "462.1", "514.11.1"],
        },
      ],
    },
    {
      id: "heat",
      hazard: "burns-or-fire",
      route: "the shared parts carry the load of both and overheat",
      exists: ALWAYS,
      layers: [
        {
          id: "no-heat",
          provision: "thermal-protection",
          words: "shared parts that stay cool",
          gone: is("heat", "marks", "now"),
          sound: NEVER,
          regulations: ["421.1.1"],
        },
        oneEventAway("around", "surroundings", "enclosures and surroundings that do not burn", ["421.1.1"]),
      ],
    },
  ],
  departures: [
    {
      when: is("shared", "after-the-fuse", "neutral"),
      words: "the installation is not kept apart from the other",
      regulations: ["314.4", "462.1"],
    },
    {
      when: all(is("shared", "before-the-fuse", "after-the-fuse", "neutral"), held("loop", "improvement")),
      words: "the service is shared with another property",
      regulations: ["313.1"],
    },
  ],
  dangers: [HOT_NOW],
  client: {
    C1: HOT_NOW_TOLD,
    C2: [
      says(
        "This place shares wires with the one next door. Parts here may stay live when you turn the power off. Have this put right soon.",
        all(is("shared", "after-the-fuse", "neutral"), any(no("notice-and-isolation"), is("shared", "neutral"))),
      ),
      says(
        "The earth here comes by way of next door. If it is lost, metal here could give a shock. Have this put right soon.",
        is("earth-from", "neighbours-wiring"),
      ),
      says(
        "Someone joined the earth here to another wire. If that wire breaks, metal could give a shock. Have this put right soon.",
        is("earth-from", "own-link"),
      ),
      says(
        "Parts shared with the place next door have been hot. They could burn. Have this put right soon.",
        is("heat", "marks"),
      ),
    ],
    C3: "This place shares its supply with next door. It is not a danger now. Having its own is better.",
    FI: [
      unsure("We could not find out how the supply here is shared or earthed. The power network must tell.", [
        "shared",
        "earth-from",
      ]),
      unsure(
        "Parts here are shared with next door. We could not find out all about them. They must be looked at.",
        ["heat", "notice-and-isolation"],
        is("shared", "before-the-fuse", "after-the-fuse", "neutral"),
      ),
      unsure("We could not see if parts where the power comes in have been hot. They must be looked at.", ["heat"]),
    ],
    none: "The way power comes in here is in order.",
  },
  remedies: [
    {
      words: "Fit isolation for what comes from the other property, and a notice at both boards.",
      changes: { "notice-and-isolation": "yes" },
    },
    {
      words: "Ask the distributor to confirm or provide an earthing terminal, or install an electrode with RCDs.",
      changes: { "earth-from": "own" },
    },
    {
      words: "Ask the distributor for a service of its own, and rewire what is shared after the meters.",
      changes: { shared: "nothing", "notice-and-isolation": "yes", heat: "none" },
    },
  ],
  examples: [
    {
      name: "service looped by the distributor, earth confirmed",
      facts: { shared: "before-the-fuse", "earth-from": "own", heat: "none" },
      possible: ["none"],
      source: "trade discussion of looped services",
    },
    {
      name: "the same where separating is held to be an improvement",
      facts: { shared: "before-the-fuse", "earth-from": "own", heat: "none" },
      positions: { loop: "improvement" },
      possible: ["C3"],
      source: "trade discussion of looped services",
    },
    {
      name: "looped, and not clear whether the distributor provides the earth",
      facts: {
        shared: "before-the-fuse",
        heat: "none",
        "earth-from": { notKnown: "limited", reason: "the distributor has not answered" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "trade practice: system of earthing not settled",
    },
    {
      name: "stair light of the flats on this flat's neutral",
      facts: { shared: "neutral", "earth-from": "own", heat: "none" },
      possible: ["C2"],
      source: "regulation 314.4",
    },
    {
      name: "garage fed from next door, isolator and notice",
      facts: { shared: "after-the-fuse", "earth-from": "own", "notice-and-isolation": true, heat: "none" },
      possible: ["C3"],
      source: "regulation 514.11.1",
    },
    {
      name: "nothing known yet",
      facts: { heat: "none" },
      possible: ["none", "C3", "C2"],
      missing: ["shared", "earth-from"],
      source: "union over what is shared",
    },
  ],
});
