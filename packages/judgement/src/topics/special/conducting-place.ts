import { all, any, is, NEVER, no, oneKind, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Narrow places of conducting surfaces, such as tanks and boiler chambers, and what is used by hand in them. */
export const conductingPlace = topic({
  id: "conducting-place",
  title: "Supply in a narrow conducting place",
  group: "special",
  items: ["special.conducting-places"],
  facts: {
    "hand-held": ranked({
      asks: "How are hand-held tools and lamps supplied there?",
      effort: "glance",
      values: {
        "selv-or-separated": "hand-held equipment is supplied by SELV or a transformer for one item",
        mains: "hand-held equipment is supplied at mains voltage",
      },
    }),
    fixed: ranked({
      asks: "How is fixed equipment there protected?",
      effort: "opened",
      values: {
        "as-section-asks":
          "fixed equipment is protected by SELV, separation, or disconnection with bonding of all conducting parts",
        "without-bonding": "fixed equipment relies on disconnection without bonding of the conducting parts",
      },
    }),
    "source-outside": yesNo({
      asks: "Does the source stand outside the place, unless it is part of it?",
      effort: "glance",
      yes: "the source of the supply stands outside",
      no: "the source of the supply stands inside",
      worse: "no",
    }),
    used: oneKind({
      asks: "Is the place entered for work at all?",
      effort: "glance",
      values: { entered: "people work in the place", closed: "the place is closed and not entered" },
    }),
  },
  contested: {},
  paths: [
    {
      id: "held-tool",
      hazard: "contact-with-live-parts",
      route: "a tool at mains voltage fails in the hand of somebody surrounded by earthed metal",
      exists: all(is("used", "entered"), is("hand-held", "mains")),
      layers: [oneEventAway("tool", "insulation", "the insulation of the tool and its lead", ["706.410.3.10"])],
    },
    {
      id: "fixed-fault",
      hazard: "shock-under-fault",
      route: "a fault puts a voltage between fixed equipment and the metal somebody leans on",
      exists: all(is("used", "entered"), is("fixed", "without-bonding")),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of live parts", ["416.1"]),
        {
          id: "bonding",
          provision: "equipotential-bonding",
          words: "bonding that keeps the voltage down",
          gone: is("fixed", "without-bonding"),
          sound: NEVER,
          regulations: ["706.410.3.10", "415.2.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(is("hand-held", "mains"), is("fixed", "without-bonding"), no("source-outside")),
      words: "the supply is not what a narrow conducting place asks for",
      regulations: ["706.410.3.10", "706.414.3"],
    },
  ],
  client: {
    C2: [
      says(
        "Mains tools are used in a narrow metal space. One fault could kill. Stop using them there until put right.",
        is("hand-held", "mains"),
      ),
      says(
        "Metal parts in a narrow metal space are not linked. One fault could kill. Nobody should work there until this is put right.",
        is("fixed", "without-bonding"),
      ),
    ],
    C3: [
      says(
        "The supply in the narrow metal space should be better. It is not a danger while nobody works there.",
        is("used", "closed"),
      ),
      "The supply in the narrow metal space should be better. It is not a danger now.",
    ],
    FI: [
      unsure(
        "We could not find out how tools are fed in the narrow metal space. Nobody should work there until this is known.",
        ["hand-held"],
      ),
      unsure(
        "We could not find out how safe the narrow metal space is. Nobody should work there until this is known.",
        ["fixed", "used"],
      ),
    ],
    none: "The supply in the narrow metal space is as it should be.",
  },
  remedies: [
    {
      words: "Supply tools from SELV or a separating transformer outside.",
      changes: { "hand-held": "selv-or-separated", "source-outside": "yes" },
    },
    { words: "Bond the conducting parts to the fixed equipment.", changes: { fixed: "as-section-asks" } },
  ],
  examples: [
    {
      name: "mains hand lamp in a tank",
      facts: { "hand-held": "mains", fixed: "as-section-asks", "source-outside": true, used: "entered" },
      possible: ["C2"],
      source: "706.410.3.10",
    },
    {
      name: "the same in a closed chamber",
      facts: { "hand-held": "mains", fixed: "as-section-asks", "source-outside": true, used: "closed" },
      possible: ["C3"],
      source: "arithmetic of layers: nobody is there",
    },
    {
      name: "whether it is entered is not known",
      facts: { "hand-held": "mains", fixed: "as-section-asks", "source-outside": true },
      possible: ["C3", "C2"],
      missing: ["used"],
      source: "union over its use",
    },
  ],
});
