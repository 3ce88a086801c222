import { is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** How a surge protective device that is there is connected. */
export const surgeProtectionConnection = topic({
  id: "surge-protection-connection",
  title: "Connection of a surge protective device",
  group: "boards",
  items: ["boards.surge", "boards.connections"],
  facts: {
    "fuse-ahead": yesNo({
      asks: "Does a device no larger than its maker allows stand ahead of it: one of its own, or the supply fuse?",
      effort: "opened",
      yes: "a device no larger than its maker allows stands ahead of it",
      no: "no device of a size its maker allows stands ahead of it",
      worse: "no",
    }),
    leads: ranked({
      asks: "How long are its leads to line, neutral and earth together?",
      effort: "opened",
      values: {
        short: "its leads are together at most a metre, better half of that",
        "too-long": "its leads are together longer than a metre",
      },
    }),
    "suits-system": yesNo({
      asks: "Is its manner of connection right for the system of earthing, on TT with the RCD behind it or between line and neutral?",
      effort: "opened",
      yes: "its manner of connection is right for the system of earthing",
      no: "its manner of connection is not right for the system of earthing",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "fails-short",
      hazard: "burns-or-fire",
      route: "the device fails at the end of its life, carries current and burns",
      exists: no("fuse-ahead"),
      layers: [
        oneEventAway("own-cut-out", "thermal-protection", "the cut-out inside the device", ["534.4"]),
        {
          id: "fuse",
          provision: "overcurrent-protection",
          words: "a device ahead of a size its maker allows",
          gone: no("fuse-ahead"),
          sound: NEVER,
          regulations: ["534.4"],
        },
      ],
    },
    {
      id: "earth-held-live",
      hazard: "shock-under-fault",
      route: "the device fails between line and earth, and metalwork stays live",
      exists: no("suits-system"),
      layers: [
        oneEventAway("whole", "insulation", "the device, while it is whole", ["534.4"]),
        {
          id: "disconnection",
          provision: "fault-protection",
          words: "disconnection when it fails to earth",
          gone: no("suits-system"),
          sound: NEVER,
          regulations: ["534.4", "411.5.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("leads", "too-long"),
      words: "the leads of the surge protective device are longer than a metre",
      regulations: ["534.4.8"],
    },
  ],
  client: {
    C2: "The guard against power surges is wired in a way that could start a fire or give a shock. Fix it soon.",
    C3: "The wires of the guard against power surges are too long. It helps less than it could.",
    FI: unsure("We could not find out how the guard against power surges is wired. It must be looked at soon.", [
      "fuse-ahead",
      "suits-system",
    ]),
    none: "The guard against power surges is wired well.",
  },
  remedies: [
    { words: "Shorten the leads.", changes: { leads: "short" } },
    { words: "Feed it by a device of a size its maker allows.", changes: { "fuse-ahead": "yes" } },
    { words: "Connect it as its maker shows for the system of earthing.", changes: { "suits-system": "yes" } },
  ],
  examples: [
    {
      name: "leads of a metre and a half",
      facts: { "fuse-ahead": true, leads: "too-long", "suits-system": true },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: long leads take away protection",
    },
    {
      name: "fed from the busbar behind a fuse larger than the maker allows",
      facts: { "fuse-ahead": false, leads: "short", "suits-system": true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: nothing clears it when it fails",
    },
    {
      name: "line to earth ahead of the RCD on TT",
      facts: { "fuse-ahead": true, leads: "short", "suits-system": false },
      possible: ["C2"],
      source: "trade practice: a failed device would hold the earth live",
    },
    {
      name: "maker's limit not known",
      facts: {
        "fuse-ahead": { notKnown: "limited", reason: "no paper of the maker to be found" },
        leads: "short",
        "suits-system": true,
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over the maker's limit",
    },
    {
      name: "leads not looked at",
      facts: { "fuse-ahead": true, "suits-system": true },
      possible: ["none", "C3"],
      missing: ["leads"],
      source: "union over the leads",
    },
  ],
});
