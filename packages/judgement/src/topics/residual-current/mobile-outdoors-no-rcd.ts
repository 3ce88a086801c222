import { all, is, NEVER, no, not, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

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
      asks: "Is its supply, up to 32 A, behind an RCD of 30 mA or less that works, or of separated extra-low voltage?",
      effort: "glance",
      yes: "a working RCD of 30 mA or less protects its supply, or it is of separated extra-low voltage",
      no: "no working RCD of 30 mA or less protects its supply from the mains",
      worse: "no",
      worked: { by: "additional-protection", met: "yes", notMet: "no" },
    }),
  },
  contested: {},
  paths: [
    {
      id: "cut-lead",
      hazard: "contact-with-live-parts",
      route: "its lead is cut or wet, and somebody on the ground touches the core",
      exists: is("used-outdoors", "open"),
      layers: [
        oneEventAway("lead", "insulation", "the insulation of lead and casing", ["416.1"]),
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
  ],
  departures: [
    {
      when: all(not(is("used-outdoors", "no")), no("rcd-30ma")),
      words: "mobile equipment used outdoors has no RCD of 30 mA or less",
      regulations: ["411.3.3"],
    },
  ],
  client: {
    C2: "No fast safety switch that works guards something used outside. A cut lead could kill. Fix this soon.",
    C3: "No fast safety switch that works guards something used under cover outside. Adding one makes it safer.",
    FI: [
      unsure("We could not find out if things used outside have a fast safety switch. It must be looked at soon.", [
        "rcd-30ma",
      ]),
      unsure(
        "We could not find out what is used outside without a fast safety switch. It must be looked at soon.",
        ["used-outdoors"],
        no("rcd-30ma"),
      ),
    ],
    none: "Things used outside are protected well enough, or none are used.",
  },
  remedies: [
    { words: "Feed it from an RCD socket-outlet of 30 mA, or protect the circuit.", changes: { "rcd-30ma": "yes" } },
  ],
  examples: [
    {
      name: "pressure washer in the yard, no RCD",
      facts: { "used-outdoors": "open", "rcd-30ma": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: outdoor equipment without RCD",
    },
    {
      name: "the same behind 30 mA",
      facts: { "used-outdoors": "open", "rcd-30ma": true },
      possible: ["none"],
      source: "regulation 411.3.3",
    },
    {
      name: "fridge in a carport",
      facts: { "used-outdoors": "dry", "rcd-30ma": false },
      possible: ["C3"],
      source: "trade practice: asked for, with no likely route",
    },
    {
      name: "RCD not verified",
      facts: { "used-outdoors": "open" },
      possible: ["none", "C2"],
      missing: ["rcd-30ma"],
      source: "union over the RCD",
    },
  ],
});
