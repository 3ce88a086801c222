import { all, is, NEVER, no, not, oneKind, ranked, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Equipment that is moved about outdoors and is fed without 30 mA RCD protection, whatever it is plugged or wired into. */
export const mobileOutdoorsNoRcd = topic({
  id: "mobile-outdoors-no-rcd",
  title: "Mobile equipment outdoors without RCD",
  group: "residual-current",
  items: ["outdoors.rcd", "circuits.additional-protection"],
  facts: {
    "used-outdoors": ranked({
      asks: "Is equipment that is moved about in use outdoors?",
      effort: "glance",
      values: {
        no: "no mobile equipment is used outdoors",
        dry: "mobile equipment is used outdoors under cover",
        open: "mobile equipment is used in the open: tools, pumps, a pressure washer, a hot tub on a lead",
      },
    }),
    "rcd-30ma": yesNo({
      asks: "Is its supply, up to 32 A, behind an RCD of 30 mA or less that works?",
      effort: "glance",
      yes: "a working RCD of 30 mA or less protects its supply",
      no: "no RCD of 30 mA or less protects its supply",
      worse: "no",
      worked: { by: "additional-protection", met: "yes", notMet: "no" },
    }),
    source: oneKind({
      asks: "What feeds it?",
      effort: "glance",
      values: {
        mains: "the mains feed it",
        "apart-or-low": "separated extra-low voltage or an isolating transformer for one piece of equipment feeds it",
      },
    }),
    lead: ranked({
      asks: "In what state are its lead and casing?",
      effort: "glance",
      values: {
        sound: "its lead and casing are sound",
        damaged: "its lead or casing is cut, taped or cracked",
        "live-open": "live metal can be touched at its lead or casing",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "cut-lead",
      hazard: "contact-with-live-parts",
      route: "its lead is cut or wet, and somebody on the ground touches the core",
      exists: all(is("used-outdoors", "open"), is("source", "mains")),
      layers: [
        {
          id: "lead",
          provision: "insulation",
          words: "the insulation of lead and casing",
          gone: is("lead", "live-open"),
          sound: NEVER,
          regulations: ["416.1"],
        },
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less",
          gone: no("rcd-30ma"),
          sound: NEVER,
          regulations: ["411.3.3", "415.1.1"],
        },
      ],
    },
    {
      id: "damaged-lead",
      hazard: "contact-with-live-parts",
      route: "somebody handles the damaged lead and touches the core",
      exists: all(is("source", "mains"), not(is("used-outdoors", "no")), not(is("lead", "sound"))),
      layers: [
        {
          id: "what-is-left",
          provision: "insulation",
          words: "what is left of the insulation",
          gone: is("lead", "live-open"),
          sound: NEVER,
          regulations: ["416.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(not(is("used-outdoors", "no")), no("rcd-30ma"), is("source", "mains")),
      words: "mobile equipment used outdoors has no RCD of 30 mA or less",
      regulations: ["411.3.3"],
    },
  ],
  client: {
    C1: "Live metal can be touched on a lead used outside. It could kill. Unplug it now and do not use it.",
    C2: "Something used outside has no fast safety switch or has a bad lead. A cut lead could kill. Fix this soon.",
    C3: "Something used under cover outside has no fast safety switch. Adding one makes it safer.",
    FI: "We could not find out if things used outside have a fast safety switch. It must be looked at soon.",
    none: "Things used outside are protected well enough.",
  },
  remedies: [
    { words: "Replace the damaged lead or casing.", changes: { lead: "sound" } },
    { words: "Feed it from an RCD socket-outlet of 30 mA, or protect the circuit.", changes: { "rcd-30ma": "yes" } },
  ],
  examples: [
    {
      name: "pressure washer in the yard, no RCD",
      facts: { "used-outdoors": "open", "rcd-30ma": false, source: "mains", lead: "sound" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: outdoor equipment without RCD",
    },
    {
      name: "the same behind 30 mA",
      facts: { "used-outdoors": "open", "rcd-30ma": true, source: "mains", lead: "sound" },
      possible: ["none"],
      source: "regulation 411.3.3",
    },
    {
      name: "fridge in a carport",
      facts: { "used-outdoors": "dry", "rcd-30ma": false, source: "mains", lead: "sound" },
      possible: ["C3"],
      source: "trade practice: asked for, with no likely route",
    },
    {
      name: "RCD not verified",
      facts: { "used-outdoors": "open", source: "mains", lead: "sound" },
      possible: ["none", "C2"],
      missing: ["rcd-30ma"],
      source: "union over the RCD",
    },
  ],
});
