import { all, any, held, no, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** An electric shower, or other large fixed load, on a cable that is small for it as it is installed. */
export const showerOverloaded = topic({
  id: "shower-overloaded",
  title: "Shower on a cable too small for it",
  group: "accessories",
  items: ["circuits.capacity", "circuits.protection", "accessories.fixed-equipment"],
  facts: {
    "load-over-cable": yesNo({
      asks: "Does the shower draw more than the cable carries along its worst stretch, with insulation and grouping counted?",
      effort: "measured",
      yes: "the shower draws more than the cable carries as installed",
      no: "the cable carries what the shower draws",
      worse: "yes",
    }),
    "device-over-cable": yesNo({
      asks: "Is the protective device rated above what the cable carries as installed?",
      effort: "measured",
      yes: "the device is rated above what the cable carries as installed",
      no: "the device is rated within what the cable carries",
      worse: "yes",
      worked: { by: "cable-capacity", matter: "device-within-cable", met: "no", notMet: "yes" },
    }),
    heat: yesNo({
      asks: "Are cable, switch or terminals browned, softened or melted?",
      effort: "opened",
      yes: "heat has marked cable, switch or terminals",
      no: "heat has left no mark on cable, switch or terminals",
      worse: "yes",
    }),
  },
  contested: {
    "short-use": {
      question: "Does short use save a cable that is too small while it shows no heat?",
      positions: {
        "no-answer": {
          words: "how long people shower is no protection",
          because: "433.1.1 asks for a cable that carries the load, and use changes with the people",
        },
        "is-an-answer": {
          words: "a shower runs for minutes, so a small shortfall without a mark is a departure and no more",
          because: "the conductor needs longer than a shower to reach its final temperature",
        },
      },
    },
    "next-shower": {
      question: "Is a device too large for the cable worth recording where the shower itself is small enough?",
      positions: {
        record: {
          words: "it is worth recording as an improvement",
          because: "the next shower may be a larger one, and nothing will cut it off",
        },
        "leave-it": {
          words: "it is not recorded",
          because: "a fixed load cannot overload the cable, 433.3.1, and faults are cleared",
        },
      },
    },
  },
  paths: [
    {
      id: "cable-overheats",
      hazard: "burns-or-fire",
      route: "the cable or a terminal overheats under the load and sets something alight or breaks down",
      exists: any(yes("heat"), all(yes("load-over-cable"), held("short-use", "no-answer"))),
      layers: [
        oneEventAway("insulation", "insulation", "insulation that has withstood the heat so far", ["433.1.1", "523.1"]),
      ],
    },
  ],
  departures: [
    {
      when: any(yes("heat"), yes("load-over-cable")),
      words: "the cable does not carry the load as it is installed",
      regulations: ["433.1.1", "523.1"],
    },
    {
      when: all(yes("device-over-cable"), held("next-shower", "record")),
      words: "the device is rated above what the cable carries",
      regulations: ["433.1.1"],
    },
  ],
  client: {
    C2: [
      says(
        "The shower takes more power than its cable can stand. The cable could get hot and burn. Have it put right soon.",
        yes("load-over-cable"),
      ),
      says("The cable or a joint of the shower has been hot. It could burn. Have it put right soon.", yes("heat")),
    ],
    C3: [
      says(
        "The fuse for the shower is too large for its cable. It is safe with this shower. Do not fit a larger one.",
        all(yes("device-over-cable"), no("load-over-cable")),
      ),
      says(
        "The shower takes more power than its cable is made for. It is not a danger as it is used now. A thicker cable is better.",
        yes("load-over-cable"),
      ),
    ],
    FI: [
      unsure("We could not find out if the shower cable is thick enough. This must be looked at soon.", [
        "load-over-cable",
      ]),
      unsure("We could not see if the cable of the shower has been hot. This must be looked at soon.", ["heat"]),
    ],
    none: "The shower cable is thick enough.",
  },
  remedies: [
    {
      words: "Fit a shower and a device that the cable carries, once the terminals are sound.",
      changes: { "load-over-cable": "no", "device-over-cable": "no", heat: "no" },
    },
    {
      words: "Free the cable from insulation, or run a larger one, and remake the terminals.",
      changes: { "load-over-cable": "no", "device-over-cable": "no", heat: "no" },
    },
  ],
  examples: [
    {
      name: "40 A shower on 6 mm² under deep insulation (23.5 A)",
      facts: { "load-over-cable": true, "device-over-cable": true, heat: false },
      possible: ["C2"],
      classification: "C2",
      source: "arithmetic: 40 A through a cable that carries 23.5 A",
    },
    {
      name: "37 A shower on 6 mm² in a stud wall (35 A), short use accepted",
      facts: { "load-over-cable": true, "device-over-cable": true, heat: false },
      positions: { "short-use": "is-an-answer" },
      possible: ["C3"],
      source: "trade discussion of showers and small cables",
    },
    {
      name: "the same, terminals browned",
      facts: { "load-over-cable": true, "device-over-cable": true, heat: true },
      positions: { "short-use": "is-an-answer" },
      possible: ["C2"],
      source: "trade practice: signs of overheating",
    },
    {
      name: "45 A device, cable for 40 A, shower of 37 A",
      facts: { "load-over-cable": false, "device-over-cable": true, heat: false },
      possible: ["C3"],
      source: "regulation: a fixed load needs no overload device, yet it invites a larger one",
    },
    {
      name: "the same, held not worth recording",
      facts: { "load-over-cable": false, "device-over-cable": true, heat: false },
      positions: { "next-shower": "leave-it" },
      possible: ["none"],
      source: "regulation: a fixed load needs no overload device",
    },
    {
      name: "route of the cable not seen",
      facts: { "device-over-cable": false, heat: false },
      possible: ["none", "C2"],
      missing: ["load-over-cable"],
      source: "union over the route",
    },
  ],
});
