import { all, any, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Extra-low voltage lighting: its transformer or driver, and the wiring after it. */
export const lightingTransformer = topic({
  id: "lighting-transformer",
  title: "Transformer, driver or wiring of extra-low voltage lights",
  group: "accessories",
  items: ["accessories.luminaires"],
  facts: {
    place: ranked({
      asks: "Where does the transformer or driver lie?",
      effort: "opened",
      values: {
        "room-to-cool": "the transformer or driver is fixed or laid with room to cool, and its cables are held",
        loose: "the transformer or driver hangs by its cables, or its cables are not held",
        covered: "the transformer or driver is covered by insulation or lies against what can burn",
      },
    }),
    heat: ranked({
      asks: "What has heat done to it, its terminals or what is round it?",
      effort: "opened",
      values: {
        none: "heat has left no mark",
        browned: "terminals, cable or surroundings are browned",
        melted: "a terminal, cable or the case is melted or charred, and current still flows",
      },
    }),
    "safe-source": yesNo({
      asks: "Is it marked as a safety isolating source?",
      effort: "opened",
      yes: "the source is marked as a safety isolating one",
      no: "nothing shows the source to be a safety isolating one",
      worse: "no",
    }),
    bare: ranked({
      asks: "After it, can bare conductors be touched or bridged, and what switches a short circuit off?",
      effort: "glance",
      values: {
        insulated: "the conductors after it are insulated",
        "bare-protected": "bare conductors are open to touch, and a short circuit between them is switched off",
        "bare-unprotected": "bare conductors are open to touch, and nothing switches a short circuit between them off",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "heat",
      hazard: "burns-or-fire",
      route: "heat from the transformer or a bad connection sets something alight",
      exists: any(is("place", "covered"), is("heat", "browned", "melted")),
      layers: [
        {
          id: "cool",
          provision: "thermal-protection",
          words: "a source and connections that stay cool",
          gone: is("heat", "browned", "melted"),
          sound: NEVER,
          regulations: ["421.1.2", "559.4.1"],
        },
        {
          id: "case",
          provision: "thermal-protection",
          words: "its case, or its own cut-out",
          gone: is("heat", "melted"),
          sound: NEVER,
          regulations: ["421.1.2"],
        },
      ],
    },
    {
      id: "bridged",
      hazard: "burns-or-fire",
      route: "something falls across the bare conductors, and they glow",
      exists: is("bare", "bare-unprotected"),
      layers: [
        oneEventAway("nothing-across", "surroundings", "nothing lying across them", ["715.422.107.1"]),
        {
          id: "switches-off",
          provision: "overcurrent-protection",
          words: "a device that switches a short circuit off",
          gone: is("bare", "bare-unprotected"),
          sound: NEVER,
          regulations: ["715.433", "715.422.107.1"],
        },
      ],
    },
    {
      id: "mains-through",
      hazard: "contact-with-live-parts",
      route: "the source fails, and mains comes through to bare conductors that people touch",
      exists: all(no("safe-source"), is("bare", "bare-protected", "bare-unprotected")),
      layers: [
        {
          id: "separation",
          provision: "insulation",
          words: "insulation inside the source, of a kind not shown to be enough",
          gone: NEVER,
          sound: NEVER,
          regulations: ["715.414", "414.3"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(is("place", "loose", "covered"), is("heat", "browned", "melted")),
      words: "the source is not fixed and placed as its maker asks",
      regulations: ["134.1.1", "559.4.1"],
    },
    {
      when: no("safe-source"),
      words: "the source is not shown to be a safety isolating one",
      regulations: ["715.414", "414.3"],
    },
  ],
  client: {
    C1: "A part of the ceiling lights is melting. It could start a fire now. Leave the lights off until it is made safe.",
    C2: "A part of the ceiling lights gets too hot or is not safe. It could start a fire or give a shock. Fix it soon.",
    C3: "A part of the ceiling lights is not of the right kind or not fixed well. It is not a danger now. A repair would be better.",
    FI: [
      unsure("We could not see the parts above the ceiling lights. They may get too hot. They must be looked at.", [
        "place",
        "heat",
      ]),
      unsure("We could not find out if the parts above the ceiling lights are safe. They must be looked at.", [
        "safe-source",
        "bare",
      ]),
    ],
    none: "The parts above the ceiling lights are in order.",
  },
  remedies: [
    {
      words: "Fix it with room to cool, and clamp its cables.",
      changes: { place: "room-to-cool" },
    },
    {
      words: "Replace source and burnt ends by a safety isolating source of the right size.",
      changes: { place: "room-to-cool", heat: "none", "safe-source": "yes" },
    },
    { words: "Replace the bare conductors by insulated ones.", changes: { bare: "insulated" } },
  ],
  examples: [
    {
      name: "driver lying loose in the void, cool",
      facts: { place: "loose", heat: "none", "safe-source": true, bare: "insulated" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice",
    },
    {
      name: "terminal browned",
      facts: { heat: "browned", bare: "insulated" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: heat goes on at a bad connection",
    },
    {
      name: "bare wires across a ceiling with nothing that detects a short circuit",
      facts: { place: "room-to-cool", heat: "none", "safe-source": true, bare: "bare-unprotected" },
      possible: ["C2"],
      source: "regulation 715.422.107",
    },
    {
      name: "all in order",
      facts: { place: "room-to-cool", heat: "none", "safe-source": true, bare: "insulated" },
      possible: ["none"],
      source: "trade practice",
    },
    {
      name: "above the ceiling not opened",
      facts: { bare: "insulated", place: "loose", "safe-source": true },
      possible: ["C3", "C2", "C1"],
      missing: ["heat"],
      source: "union over what heat did",
    },
  ],
});
