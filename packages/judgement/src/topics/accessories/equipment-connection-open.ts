import { all, any, is, NEVER, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Fixed equipment joined to the wiring without a connection unit, flex outlet or closed joint. */
export const equipmentConnectionOpen = topic({
  id: "equipment-connection-open",
  title: "Equipment joined without a proper outlet",
  group: "accessories",
  items: ["accessories.connections", "accessories.fixed-equipment"],
  facts: {
    joint: ranked({
      asks: "How is the flex of the equipment joined to the wiring?",
      effort: "opened",
      values: {
        outlet: "a connection unit, flex outlet, plug or terminal box joins it",
        "closed-joint": "a closed joint box joins it, and the flex is not gripped",
        open: "connectors or twisted and taped cores without a box join it",
        bare: "a joint whose live metal can be touched joins it",
      },
    }),
    "fuse-over-flex": yesNo({
      asks: "Is the fuse or breaker in front of it too large for the flex?",
      effort: "opened",
      yes: "the fuse or breaker in front is too large for the flex",
      no: "the fuse or breaker in front protects the flex",
      worse: "yes",
    }),
    overload: yesNo({
      asks: "Can the equipment draw more than the flex carries?",
      effort: "opened",
      yes: "the equipment can draw more than its flex carries",
      no: "the flex carries what the equipment draws",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "open-joint",
      hazard: "contact-with-live-parts",
      route: "a joint without a box is pulled apart or touched",
      exists: is("joint", "open", "bare"),
      layers: [
        {
          id: "tape",
          provision: "insulation",
          words: "tape or a connector in place of a box",
          gone: is("joint", "bare"),
          sound: NEVER,
          regulations: ["526.5", "416.2.1"],
        },
      ],
    },
    {
      id: "flex-burns",
      hazard: "burns-or-fire",
      route: "the flex overheats before anything cuts it off",
      exists: all(yes("fuse-over-flex"), yes("overload")),
      layers: [oneEventAway("flex", "insulation", "the insulation of the flex", ["433.1.1"])],
    },
  ],
  departures: [
    {
      when: any(is("joint", "closed-joint", "open", "bare"), yes("fuse-over-flex")),
      words: "the equipment is not connected or protected as it should be",
      regulations: ["526.5", "526.6", "433.1.1"],
    },
  ],
  client: {
    C1: "Live metal can be touched where a machine or heater is wired in. Keep away. Have it made safe now.",
    C2: "A machine or heater is wired in with a poor joint or a thin lead. It could cause a fire or a shock. Fix it soon.",
    C3: "A machine or heater is not wired in the best way. It is not a danger now. It should be put right.",
    FI: unsure("We could not see how a machine or heater is wired in. This must be looked at soon.", [
      "joint",
      "fuse-over-flex",
      "overload",
    ]),
    none: "The machines and heaters are wired in well.",
  },
  remedies: [
    { words: "Fit the right fuse.", changes: { "fuse-over-flex": "no" } },
    {
      words: "Fit a connection unit or flex outlet with a cord grip.",
      changes: { joint: "outlet", "fuse-over-flex": "no" },
    },
  ],
  examples: [
    {
      name: "oven joined by connectors in the cupboard without a box",
      facts: { joint: "open", "fuse-over-flex": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: open joint",
    },
    {
      name: "bare connector screw in reach",
      facts: { joint: "bare" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: bare live metal in reach",
    },
    {
      name: "fan on a 13 A fuse, thin flex",
      facts: { joint: "outlet", "fuse-over-flex": true, overload: false },
      possible: ["C3"],
      source: "trade practice: the fan cannot overload its flex",
    },
    {
      name: "heater on a flex too thin and a fuse too large",
      facts: { joint: "outlet", "fuse-over-flex": true, overload: true },
      possible: ["C2"],
      source: "regulation: no protection against overload",
    },
    {
      name: "joint behind the appliance not seen",
      facts: { "fuse-over-flex": false },
      possible: ["none", "C3", "C2", "C1"],
      missing: ["joint"],
      source: "union over joints",
    },
  ],
});
