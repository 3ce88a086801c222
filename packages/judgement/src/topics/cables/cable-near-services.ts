import { any, is, NEVER, ranked, says, unsure } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Cables too near pipes and flues: heat, water, rubbing. Wiring of other voltages is a topic of its own. */
export const cableNearServices = topic({
  id: "cable-near-services",
  title: "Cable on or near a pipe or flue",
  group: "cables",
  items: ["circuits.segregation"],
  facts: {
    pipe: ranked({
      asks: "How does it lie to pipes and flues?",
      effort: "glance",
      values: {
        clear: "the cable is clear of pipes and flues",
        touching: "the cable touches a pipe that is neither hot nor dripping",
        heated: "the cable lies on a pipe or flue that heats it beyond what it is made for, or water drips on it",
      },
    }),
    sheath: ranked({
      asks: "What is the cable like at the nearest place?",
      effort: "glance",
      values: {
        sound: "the cable is sound there",
        marked: "its sheath is marked by heat, rubbing or water",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "sheath-fails",
      hazard: "contact-with-live-parts",
      route: "heat, water or rubbing goes on until insulation fails and a pipe becomes live",
      exists: is("pipe", "touching", "heated"),
      layers: [
        {
          id: "clear",
          provision: "thermal-protection",
          words: "distance or a shield from the pipe",
          gone: is("sheath", "marked"),
          sound: NEVER,
          regulations: ["528.3.1", "522.2.1"],
        },
        oneEventAway("insulation", "insulation", "the insulation of the cable", ["416.1"]),
      ],
    },
  ],
  departures: [
    {
      when: any(is("pipe", "touching", "heated"), is("sheath", "marked")),
      words: "a cable is exposed to harm from a pipe or flue",
      regulations: ["528.3.1", "528.3.4"],
    },
  ],
  dangers: [
    {
      id: "marked",
      least: "C2",
      when: is("sheath", "marked"),
      words: "the sheath is marked by heat, rubbing or water",
      regulations: ["134.1.1", "528.3.4"],
    },
  ],
  client: {
    C2: [
      says(
        "A power cable is marked where it lies on or near a pipe. Its cover could fail and give a shock. Have it moved soon.",
        is("pipe", "touching", "heated"),
      ),
      "A power cable is marked by heat, rubbing or water. Its cover could fail and give a shock. Have it put right soon.",
    ],
    C3: "A power cable lies on a pipe. It is sound now. Moving it would be better.",
    FI: [
      unsure("We could not see how a power cable lies on a pipe. This must be looked at.", ["pipe"]),
      unsure("We could not see if a power cable is marked by heat, rubbing or water. This must be looked at.", [
        "sheath",
      ]),
    ],
    none: "The power cables are far enough from pipes.",
  },
  remedies: [
    {
      words: "Move or clip the cable clear of the pipe, and replace a marked length.",
      changes: { pipe: "clear", sheath: "sound" },
    },
  ],
  examples: [
    {
      name: "cable tied to a heating pipe, sheath marked",
      facts: { pipe: "heated", sheath: "marked" },
      possible: ["C2"],
      source: "regulation 528.3.1",
    },
    {
      name: "cable across a cold pipe",
      facts: { pipe: "touching", sheath: "sound" },
      possible: ["C3"],
      source: "trade practice",
    },
    {
      name: "clear of every pipe",
      facts: { pipe: "clear", sheath: "sound" },
      possible: ["none"],
      source: "trade practice",
    },
    {
      name: "pipe boxed in",
      facts: { sheath: { notKnown: "limited", reason: "boxed in" }, pipe: "touching" },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over the sheath",
    },
    {
      name: "sheath under the lagging not looked at",
      facts: { pipe: "touching" },
      possible: ["C3", "C2"],
      missing: ["sheath"],
      source: "union over the sheath",
    },
  ],
});
