import { all, any, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Heat marks at a socket-outlet, switch, dimmer, connection unit, transformer or driver. */
export const accessoryOverheated = topic({
  id: "accessory-overheated",
  title: "Overheated accessory or control gear",
  group: "accessories",
  items: ["accessories.condition", "accessories.connections", "fire.hot-surfaces"],
  facts: {
    marks: ranked({
      asks: "What has heat done to it?",
      effort: "glance",
      values: {
        none: "there is no mark of heat",
        browned: "it is browned or discoloured by heat",
        melted: "its body or insulation is melted, brittle or charred, and covers live metal",
        "burnt-open": "it is burnt open, and a finger gets at live metal",
      },
    }),
    "cause-removed": yesNo({
      asks: "Has the cause been found and put right, such as a bad plug or a loose terminal since remade?",
      effort: "opened",
      yes: "the cause of the heat has been found and put right",
      no: "the cause of the heat has not been put right",
      worse: "no",
    }),
    "hot-now": yesNo({
      asks: "Is it smelling, crackling or too hot to hold now, or whenever it carries its load?",
      effort: "glance",
      yes: "it smells, crackles or is too hot to hold in use",
      no: "it is neither hot nor crackling in use",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "heat-again",
      hazard: "burns-or-fire",
      route: "the hot connection sets the accessory or what is near it alight",
      exists: any(yes("hot-now"), all(is("marks", "browned", "melted", "burnt-open"), no("cause-removed"))),
      layers: [
        {
          id: "body",
          provision: "thermal-protection",
          words: "the body of the accessory and its box, which hold the heat in",
          gone: all(yes("hot-now"), is("marks", "melted", "burnt-open")),
          sound: NEVER,
          regulations: ["421.1.1", "526.1"],
        },
      ],
    },
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "the body weakened by heat breaks and somebody touches live metal",
      exists: is("marks", "melted", "burnt-open"),
      layers: [
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "what heat has left of the enclosure",
          gone: is("marks", "burnt-open"),
          sound: NEVER,
          regulations: ["416.2.1", "416.2.3"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("marks", "browned", "melted", "burnt-open"),
      words: "the accessory bears the marks of heat",
      regulations: ["134.1.1", "526.1"],
    },
  ],
  client: {
    C1: "A socket, switch or its gear is burnt and is a danger now. Do not use it. Have it made safe at once.",
    C2: "A socket, switch or its gear is or was too hot. It could start a fire. Do not use it until it is changed.",
    C3: "A socket or switch got hot in the past. The cause is now gone. A new one would be better.",
    FI: [
      unsure(
        "A socket or switch shows marks of heat. We could not find the cause. It must be looked at soon.",
        ["cause-removed"],
        is("marks", "browned", "melted", "burnt-open"),
      ),
      unsure("We could not find out if a socket or switch gets too hot. It must be looked at soon.", [
        "marks",
        "hot-now",
        "cause-removed",
      ]),
    ],
    none: "There are no marks of heat.",
  },
  remedies: [
    {
      words: "Replace the accessory, cut the cores back to sound copper and make tight terminations.",
      changes: { marks: "none", "cause-removed": "yes", "hot-now": "no" },
    },
  ],
  examples: [
    {
      name: "burn marks round a socket aperture, cause not dealt with",
      facts: { marks: "browned", "cause-removed": false, "hot-now": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: signs of overheating",
    },
    {
      name: "melted switch, not hot at the moment",
      facts: { marks: "melted", "cause-removed": false, "hot-now": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: signs of overheating",
    },
    {
      name: "melted and crackling under load",
      facts: { marks: "melted", "cause-removed": false, "hot-now": true },
      possible: ["C1"],
      source: "trade practice: burning now",
    },
    {
      name: "melted away from a live terminal",
      facts: { marks: "burnt-open" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: bare live metal in reach",
    },
    {
      name: "browned by a plug since replaced",
      facts: { marks: "browned", "cause-removed": true, "hot-now": false },
      possible: ["C3"],
      source: "trade practice: mark of a cured fault",
    },
    {
      name: "browned, not opened",
      facts: { marks: "browned", "hot-now": false },
      possible: ["C3", "C2"],
      missing: ["cause-removed"],
      source: "union over what opening would show",
    },
  ],
});
