import { all, any, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Metal of an accessory or fitting, or the box behind it, without a connection to earth. */
export const metalAccessoryUnearthed = topic({
  id: "metal-accessory-unearthed",
  title: "Metal accessory or fitting not earthed",
  group: "accessories",
  items: ["accessories.connections", "accessories.luminaires", "circuits.cpc"],
  facts: {
    earthing: ranked({
      asks: "How is the metal joined to earth?",
      effort: "opened",
      values: {
        "class-2": "it is marked class II, so its metal is not to be earthed",
        conductor: "a protective conductor is joined to its earth terminal",
        "fixed-lug": "it is earthed through a fixed lug of an earthed box",
        "loose-lugs": "it is earthed only through screws in adjustable lugs",
        none: "nothing joins the metal to earth",
      },
    }),
    metal: ranked({
      asks: "What metal is it that can be touched?",
      effort: "glance",
      values: {
        hidden: "only a box that nobody can touch is of metal",
        screws: "only fixing screws that go into a metal box can be touched",
        plate: "a metal plate, body or fitting can be touched",
      },
    }),
    continuous: yesNo({
      asks: "Does the metal read low to the main earthing terminal?",
      effort: "measured",
      yes: "the metal reads low to the main earthing terminal",
      no: "the metal does not read low to the main earthing terminal",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "live-metal",
      hazard: "shock-under-fault",
      route: "the metal becomes live through a fault, stays live, and somebody touches it",
      exists: is("metal", "screws", "plate"),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of the conductors inside", ["416.1"]),
        {
          id: "earth",
          provision: "fault-protection",
          words: "earthing and disconnection, or double insulation in place of it",
          // What looks connected and reads open is not connected.
          gone: any(
            is("earthing", "none"),
            all(is("earthing", "conductor", "fixed-lug", "loose-lugs"), no("continuous")),
          ),
          sound: NEVER,
          regulations: ["411.3.1.1", "412.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(is("earthing", "loose-lugs", "none"), all(is("earthing", "conductor", "fixed-lug"), no("continuous"))),
      words: "metal has no lasting connection to earth",
      regulations: ["411.3.1.1", "543.2.7"],
    },
  ],
  client: {
    C2: "Metal on a switch, socket or light has no earth that works. If a wire comes loose, the metal could give a shock. Have it earthed soon.",
    C3: "Some metal has a weak or missing link to earth. It is not a danger now. It should be put right.",
    FI: unsure("We could not find out if some metal parts are joined to earth. This must be looked at soon.", [
      "earthing",
      "continuous",
      "metal",
    ]),
    none: "The metal parts are safe.",
  },
  remedies: [
    {
      words: "Replace it by an all-insulated or class II one, with screws that are covered.",
      changes: { earthing: "class-2", metal: "hidden" },
    },
    {
      words: "Connect the metal to the protective conductor and measure.",
      changes: { earthing: "conductor", continuous: "yes" },
    },
  ],
  examples: [
    {
      name: "metal switch plate, no connection to earth",
      facts: { metal: "plate", earthing: "none" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: fault protection absent",
    },
    {
      name: "insulated plate, unearthed metal box, screws in reach",
      facts: { metal: "screws", earthing: "none" },
      possible: ["C2"],
      source: "trade discussion: metal boxes with reachable screws",
    },
    {
      name: "insulated plate, screws covered, metal box unearthed",
      facts: { metal: "hidden", earthing: "none" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: nobody can touch it",
    },
    {
      name: "flush metal socket, fixed lug, no tail from the box",
      facts: { metal: "plate", earthing: "fixed-lug", continuous: true },
      possible: ["none"],
      source: "trade practice: a fixed lug is accepted",
    },
    {
      name: "earthed only by screws in adjustable lugs, reads low",
      facts: { metal: "plate", earthing: "loose-lugs", continuous: true },
      possible: ["C3"],
      source: "trade practice: no lasting connection",
    },
    {
      name: "connected to look at, reads open",
      facts: { metal: "plate", earthing: "conductor", continuous: false },
      possible: ["C2"],
      source: "trade practice: fault protection absent",
    },
    {
      name: "class II fitting",
      facts: { metal: "plate", earthing: "class-2" },
      possible: ["none"],
      classification: "none",
      source: "regulation: class II is not to be earthed",
    },
    {
      name: "connection hidden",
      facts: { metal: "plate", continuous: true },
      possible: ["none", "C3", "C2"],
      missing: ["earthing"],
      source: "union over what opening would show",
    },
  ],
});
