import { ALWAYS, all, any, held, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** RCD protection of a vehicle charging point: rated current, type, and what happens to it under direct current. */
export const evDirectCurrent = topic({
  id: "ev-direct-current",
  title: "Vehicle charging: RCD and direct residual current",
  group: "sources",
  items: ["sources.vehicle-charging", "boards.rcd"],
  facts: {
    "rcd-30ma": yesNo({
      asks: "Is the charging point protected by its own RCD of 30 mA or less that works and cuts all live conductors?",
      effort: "glance",
      yes: "the point has its own working RCD of 30 mA or less in all live conductors",
      no: "the point has no working RCD of 30 mA or less of its own",
      worse: "no",
    }),
    "direct-current": ranked({
      asks: "What deals with smooth d.c. residual current: type B, or type A or F with 6 mA d.c. detection in the point?",
      effort: "opened",
      values: {
        dealt: "type B, or type A or F with 6 mA d.c. detection, is fitted and documented",
        unknown: "d.c. detection is said to be in the point, without papers",
        "type-a-only": "only a type A or F RCD is fitted, without d.c. detection",
        "type-ac": "a type AC RCD is fitted",
      },
    }),
    "fault-protection-by-rcd": yesNo({
      asks: "Is the RCD also what clears earth faults here (TT, or loop impedance too high for the breaker)?",
      effort: "measured",
      yes: "earth faults are cleared by the RCD alone",
      no: "the overcurrent device clears earth faults too",
      worse: "yes",
    }),
  },
  contested: {
    "dc-blinds": {
      question: "How likely is it that d.c. from a car blinds an RCD that is not made for it?",
      positions: {
        "one-event": {
          words: "one fault in the car's charger is enough, and it is to be expected in time",
          because: "722.531.3.101 asks for the measure for exactly this",
        },
        remote: {
          words: "it is remote while the breaker still clears faults",
          because: "cars watch for d.c. themselves and no second layer is lost",
        },
      },
    },
  },
  paths: [
    {
      id: "no-rcd",
      hazard: "contact-with-live-parts",
      route: "a lead or plug outdoors is damaged and somebody touches a live part",
      exists: ALWAYS,
      layers: [
        oneEventAway("lead", "insulation", "the insulation of the charging lead", ["416.1"]),
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less that can see the fault",
          gone: any(
            no("rcd-30ma"),
            all(
              is("direct-current", "type-ac", "type-a-only"),
              any(held("dc-blinds", "one-event"), yes("fault-protection-by-rcd")),
            ),
          ),
          sound: NEVER,
          regulations: ["722.531.3.101", "531.3.3"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(no("rcd-30ma"), is("direct-current", "unknown", "type-a-only", "type-ac")),
      words: "RCD protection of the charging point is not shown to be of the kind asked for",
      regulations: ["722.531.3.101"],
    },
  ],
  client: {
    C2: "The safety switch of the car charger may not work when it has to. Someone could get a shock. Put it right soon.",
    C3: "Nothing shows that the safety switch of the car charger is of the right kind. Have it checked.",
    FI: unsure("We could not find out if the car charger has the right safety switch. This must be looked at.", [
      "rcd-30ma",
      "direct-current",
      "fault-protection-by-rcd",
    ]),
    none: "The car charger has the right safety switch.",
  },
  remedies: [
    { words: "Get the maker's document that d.c. detection is in the point.", changes: { "direct-current": "dealt" } },
    {
      words: "Fit a type B RCD, or a type A with d.c. detection, for this point alone.",
      changes: { "rcd-30ma": "yes", "direct-current": "dealt" },
    },
  ],
  examples: [
    {
      name: "type A with 6 mA detection",
      facts: { "rcd-30ma": true, "direct-current": "dealt", "fault-protection-by-rcd": true },
      possible: ["none"],
      source: "722.531.3.101",
    },
    {
      name: "type AC upstream of a charging point",
      facts: {
        "rcd-30ma": true,
        "direct-current": "type-ac",
        "fault-protection-by-rcd": false,
      },
      possible: ["C2"],
      source: "trade discussion: d.c. load certain",
    },
    {
      name: "the same where blinding is held to be remote",
      facts: {
        "rcd-30ma": true,
        "direct-current": "type-ac",
        "fault-protection-by-rcd": false,
      },
      positions: { "dc-blinds": "remote" },
      possible: ["C3"],
      source: "trade discussion: type AC with charging points",
    },
    {
      name: "papers missing",
      facts: {
        "rcd-30ma": true,
        "direct-current": "unknown",
        "fault-protection-by-rcd": false,
      },
      possible: ["C3"],
      source: "trade practice: documented device asked for",
    },
    {
      name: "type not looked at",
      facts: { "rcd-30ma": true },
      possible: ["none", "C3", "C2"],
      missing: ["direct-current"],
      source: "union over what is fitted",
    },
  ],
});
