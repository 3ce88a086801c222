import { ALWAYS, all, any, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Flexible cord, extension leads or adaptors used as part of the fixed wiring. */
export const flexibleCordAsFixedWiring = topic({
  id: "flexible-cord-as-fixed-wiring",
  title: "Flexible cord joined to the wiring as part of it",
  group: "cables",
  items: ["circuits.support", "circuits.insulation", "circuits.capacity"],
  facts: {
    "used-as-fixed": yesNo({
      asks: "Is flexible cord joined to the wiring for good, where it is not made for that? (A lead on a plug is adaptors-as-fixed-wiring.)",
      effort: "glance",
      yes: "flexible cord serves as fixed wiring",
      no: "no flexible cord serves as fixed wiring, or it is made and put up for it",
      worse: "yes",
    }),
    exposure: ranked({
      asks: "What is it exposed to?",
      effort: "glance",
      values: {
        protected: "it is clipped or enclosed where nothing harms it",
        exposed: "it runs under carpets, through gaps of doors or windows, or where it is trodden on or pulled",
      },
    }),
    state: ranked({
      asks: "What is it like?",
      effort: "glance",
      values: {
        sound: "it is sound",
        worn: "its sheath is worn, hard or taped",
        "live-bare": "live metal shows",
      },
    }),
    "within-cable": yesNo({
      asks: "Does its size carry the rated current of the device or fuse before it?",
      effort: "opened",
      yes: "it carries the rated current of the device or fuse before it",
      no: "the device or fuse before it is too large for it",
      worse: "no",
      worked: { by: "cable-capacity", matter: "device-within-cable", met: "yes", notMet: "no", findings: "none" },
    }),
    ends: ranked({
      asks: "How do its ends connect?",
      effort: "opened",
      values: {
        held: "the ends are gripped and joined in enclosures",
        loose: "an end is not gripped, is joined in the open, or strands stray",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "the cord wears through and somebody touches a conductor",
      exists: any(yes("used-as-fixed"), is("state", "live-bare")),
      layers: [
        {
          id: "cord",
          provision: "insulation",
          words: "sheath and insulation of the cord",
          gone: is("state", "live-bare"),
          sound: NEVER,
          regulations: ["416.1"],
        },
        {
          id: "sheltered",
          provision: "barrier-or-enclosure",
          words: "a place where nothing wears it, and ends that hold",
          gone: any(is("exposure", "exposed"), is("ends", "loose"), is("state", "worn")),
          sound: NEVER,
          regulations: ["522.8.1", "526.6"],
        },
      ],
    },
    {
      id: "overheat",
      hazard: "burns-or-fire",
      route: "the cord carries more than it can and overheats",
      exists: all(yes("used-as-fixed"), no("within-cable")),
      layers: [
        {
          id: "device",
          provision: "overcurrent-protection",
          words: "a device or fuse that protects the cord",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["433.1.1"],
        },
        oneEventAway("load", "thermal-protection", "a load that is seldom so high"),
      ],
    },
  ],
  departures: [
    {
      when: yes("used-as-fixed"),
      words: "flexible cord is used as fixed wiring",
      regulations: ["521.9.1"],
    },
    { when: is("state", "live-bare"), words: "live metal shows on a cord", regulations: ["416.1"] },
  ],
  client: {
    C1: "A cord has bare live metal that can be touched. It can kill. Keep away. The power to it must stay off until it is replaced.",
    C2: [
      says("Live metal shows on a cord. It could give a shock. Have it replaced soon.", is("state", "live-bare")),
      says(
        "A loose cord is used in place of a proper cable. It is worn, exposed, too thin or badly joined. It could give a shock or start a fire.",
        yes("used-as-fixed"),
      ),
    ],
    C3: "A loose cord is used in place of a proper cable. It is sound now. A proper cable would be better.",
    FI: [
      unsure(
        "We could not see how a cord used as a cable is joined or how thick it is. This must be looked at.",
        ["exposure", "state", "within-cable", "ends"],
        yes("used-as-fixed"),
      ),
      unsure("We could not find out if a cord is used in a safe way. This must be looked at.", [
        "used-as-fixed",
        "exposure",
        "state",
        "within-cable",
        "ends",
      ]),
    ],
    none: [
      says("Cords are used as they should be.", is("state", "sound")),
      "No loose cord is used in place of a proper cable.",
    ],
  },
  remedies: [
    {
      words: "Fit a fuse that the cord can stand, grip its ends and enclose it.",
      changes: { "within-cable": "yes", ends: "held", exposure: "protected" },
    },
    {
      words: "Replace it by fixed cable and an outlet where it is wanted.",
      changes: { "used-as-fixed": "no", state: "sound" },
    },
  ],
  examples: [
    {
      name: "clipped cord behind a 3 A fuse to a shaving light",
      facts: { "used-as-fixed": true, exposure: "protected", state: "sound", "within-cable": true, ends: "held" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice",
    },
    {
      name: "0.75 mm² cord from a 32 A ring to an outdoor light",
      facts: { "used-as-fixed": true, exposure: "exposed", state: "sound", "within-cable": false, ends: "held" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice; regulation 433.1.1",
    },
    {
      name: "cord under a carpet to three sockets",
      facts: { "used-as-fixed": true, exposure: "exposed", state: "worn", "within-cable": true, ends: "held" },
      possible: ["C2"],
      source: "trade practice: wear to be expected",
    },
    {
      name: "worn to the copper",
      facts: { "used-as-fixed": true, exposure: "exposed", state: "live-bare" },
      possible: ["C1"],
      source: "trade practice: live metal in reach",
    },
    {
      name: "cord goes into a wall and cannot be followed",
      facts: {
        "used-as-fixed": true,
        exposure: "protected",
        state: "sound",
        "within-cable": true,
        ends: { notKnown: "limited", reason: "behind fixed panels" },
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over its ends",
    },
    {
      name: "fuse not looked at",
      facts: { "used-as-fixed": true, exposure: "protected", state: "sound", ends: "held" },
      possible: ["C3", "C2"],
      missing: ["within-cable"],
      source: "union over the fuse",
    },
  ],
});
