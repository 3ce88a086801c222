import { any, is, NEVER, ranked, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

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
    "live-now": yesNo({
      asks: "Is the metal live: near the supply voltage to earth on a low-impedance tester?",
      effort: "measured",
      yes: "the metal is live",
      no: "the metal is not live",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "live-metal",
      hazard: "shock-under-fault",
      route: "the metal becomes live through a fault, stays live, and somebody touches it",
      exists: any(is("metal", "screws", "plate"), yes("live-now")),
      layers: [
        {
          id: "basic",
          provision: "insulation",
          words: "the insulation of the conductors inside",
          gone: yes("live-now"),
          sound: NEVER,
          regulations: ["416.1"],
        },
        {
          id: "earth",
          provision: "fault-protection",
          words: "earthing and disconnection, or double insulation in place of it",
          // Metal that stays live shows that the disconnection does not work, whatever it looks like.
          gone: any(is("earthing", "none"), yes("live-now")),
          sound: NEVER,
          regulations: ["411.3.1.1", "412.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("earthing", "loose-lugs", "none"),
      words: "metal has no lasting connection to earth",
      regulations: ["411.3.1.1", "543.2.7"],
    },
  ],
  client: {
    C1: "Metal on a switch, socket or light is live. Touching it could kill. Turn it off and have it fixed now.",
    C2: "Metal on a switch, socket or light has no earth wire. If a wire comes loose, the metal could give a shock.",
    C3: "Some metal has a weak or missing link to earth. It is not a danger now. It should be put right.",
    FI: "We could not find out if some metal parts are joined to earth. This must be looked at soon.",
    none: "The metal parts are safe.",
  },
  remedies: [
    {
      words: "Find the fault, make it dead, and connect the metal to the protective conductor.",
      changes: { earthing: "conductor", "live-now": "no" },
    },
    {
      words: "Replace it by an all-insulated or class II one with insulated screws.",
      changes: { earthing: "class-2", metal: "hidden", "live-now": "no" },
    },
  ],
  examples: [
    {
      name: "metal switch plate at 228 V to earth",
      facts: { metal: "plate", "live-now": true },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: a conductive part is live now",
    },
    {
      name: "metal switch plate, no connection to earth",
      facts: { metal: "plate", earthing: "none", "live-now": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: fault protection absent",
    },
    {
      name: "insulated plate, unearthed metal box, screws in reach",
      facts: { metal: "screws", earthing: "none", "live-now": false },
      possible: ["C2"],
      source: "trade discussion: metal boxes with reachable screws",
    },
    {
      name: "insulated plate, screws covered, metal box unearthed",
      facts: { metal: "hidden", earthing: "none", "live-now": false },
      possible: ["C3"],
      source: "trade practice: nobody can touch it",
    },
    {
      name: "flush metal socket, fixed lug, no tail from the box",
      facts: { metal: "plate", earthing: "fixed-lug", "live-now": false },
      possible: ["none"],
      source: "trade practice: a fixed lug is accepted",
    },
    {
      name: "class II fitting",
      facts: { metal: "plate", earthing: "class-2", "live-now": false },
      possible: ["none"],
      source: "regulation: class II is not to be earthed",
    },
    {
      name: "connection hidden",
      facts: { metal: "plate", "live-now": false },
      possible: ["none", "C3", "C2"],
      missing: ["earthing"],
      source: "union over what opening would show",
    },
  ],
});
