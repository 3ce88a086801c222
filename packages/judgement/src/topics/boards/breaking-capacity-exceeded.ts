import { all, any, held, is, no, not, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Fault current beyond what a device can break. */
export const breakingCapacityExceeded = topic({
  id: "breaking-capacity-exceeded",
  title: "Fault current beyond the breaking capacity",
  group: "boards",
  items: ["boards.devices", "circuits.protection"],
  facts: {
    rated: yesNo({
      asks: "Is the fault current at the board within the device's own marking, or within the conditional rating of the assembly?",
      effort: "measured",
      yes: "the fault current is within the device's marking or the assembly's conditional rating",
      no: "the fault current is beyond the device's marking and any conditional rating",
      worse: "no",
      worked: { by: "breaking-capacity", matter: "fault-within-rating", met: "yes", notMet: "no" },
    }),
    conditions: ranked({
      asks: "Where the conditional rating is what counts: is the fuse ahead the named one, and are all devices of the assembly's own range?",
      effort: "opened",
      values: {
        "not-needed": "no conditional rating is relied on",
        kept: "the named fuse stands ahead and all devices are of the assembly's own range",
        broken: "the fuse ahead is not the named one, or devices of another range are fitted",
      },
    }),
    "backed-up": yesNo({
      asks: "Does the maker's data show that the device ahead limits the let-through energy to what this device withstands?",
      effort: "opened",
      yes: "data show that the device ahead protects this one",
      no: "no data show that the device ahead protects this one",
      worse: "no",
    }),
    "supply-fuse-ahead": yesNo({
      asks: "Is the device ahead a cartridge supply fuse of 100 A or less that can itself break the fault current?",
      effort: "glance",
      yes: "a supply fuse of 100 A or less, which can break the fault current, stands ahead",
      no: "no such supply fuse stands ahead",
      worse: "no",
    }),
  },
  contested: {
    "supply-fuse": {
      question: "Does a supply fuse count as back-up without data for the pair of devices?",
      positions: {
        "data-only": {
          words: "only data for the very pair count",
          because: "the regulation asks that the energy let through be known to be withstood",
        },
        "fuse-counts": {
          words: "a supply fuse of 100 A or less counts as a layer, and the shortfall is a matter for improvement",
          because: "such fuses limit the energy at these currents, and few such devices are known to have burst",
        },
      },
    },
  },
  paths: [
    {
      id: "device-bursts",
      hazard: "burns-or-fire",
      route: "a short circuit is more than the device can break, and it bursts or welds shut",
      exists: all(any(no("rated"), is("conditions", "broken")), no("backed-up")),
      layers: [
        oneEventAway("no-short-circuit", "insulation", "the insulation of the circuit", ["416.1"]),
        {
          id: "breaking",
          provision: "overcurrent-protection",
          words: "a device, or one ahead of it, that clears the fault current",
          gone: not(all(yes("supply-fuse-ahead"), held("supply-fuse", "fuse-counts"))),
          sound: all(yes("rated"), not(is("conditions", "broken"))),
          regulations: ["434.5.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(any(no("rated"), is("conditions", "broken")), no("backed-up")),
      words: "a device is not rated for the prospective fault current where it stands",
      regulations: ["434.5.1", "536.4.203"],
    },
  ],
  client: {
    C2: "A safety part in the fuse box is too weak for this supply. It could burst in a fault. Change it soon.",
    C3: "A safety part in the fuse box is a bit weak for this supply. The main fuse helps. A better one is advised.",
    FI: unsure("We could not find out if the parts in the fuse box are strong enough. This must be looked at soon.", [
      "rated",
      "conditions",
      "backed-up",
      "supply-fuse-ahead",
    ]),
    none: "The parts in the fuse box are strong enough for a fault.",
  },
  remedies: [
    {
      words: "Obtain the maker's back-up data for the device with the one ahead of it.",
      changes: { "backed-up": "yes" },
    },
    {
      words: "Restore the assembly to its own range of devices behind the named fuse.",
      changes: { conditions: "kept" },
    },
    {
      words: "Replace the device by one rated for the fault current.",
      changes: { rated: "yes", conditions: "not-needed" },
    },
  ],
  examples: [
    {
      name: "7.7 kA, 6 kA devices, assembly rated 16 kA behind the fuse that is there",
      facts: { rated: true, conditions: "kept" },
      possible: ["none"],
      classification: "none",
      source: "arithmetic: 7.7 kA ≤ 16 kA, its conditions kept",
    },
    {
      name: "2.3 kA on a 1 kA carrier",
      facts: { rated: false, conditions: "not-needed", "backed-up": false, "supply-fuse-ahead": true },
      possible: ["C2"],
      classification: "C2",
      source: "arithmetic: 2.3 kA > 1 kA; regulation 434.5.1",
    },
    {
      name: "the same where the supply fuse is held to count",
      facts: { rated: false, conditions: "not-needed", "backed-up": false, "supply-fuse-ahead": true },
      positions: { "supply-fuse": "fuse-counts" },
      possible: ["C3"],
      source: "trade discussion: old carriers behind a supply fuse",
    },
    {
      name: "conditional rating, one device of another range",
      facts: { rated: true, conditions: "broken", "backed-up": false, "supply-fuse-ahead": true },
      possible: ["C2"],
      source: "regulation 536.4.203",
    },
    {
      name: "reading too near to call",
      facts: {
        rated: { notKnown: "limited", reason: "reading across the limit, no better instrument at hand" },
        conditions: "not-needed",
        "backed-up": false,
        "supply-fuse-ahead": true,
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "arithmetic: a band across the limit",
    },
    {
      name: "not yet measured",
      facts: { conditions: "not-needed", "backed-up": false, "supply-fuse-ahead": false },
      possible: ["none", "C2"],
      missing: ["rated"],
      source: "union over the measurement",
    },
  ],
});
