import { all, any, held, is, NEVER, not, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A ring final circuit that is not whole: a line, neutral or protective conductor open somewhere. */
export const ringBroken = topic({
  id: "ring-broken",
  title: "Ring final circuit not continuous",
  group: "circuits",
  items: ["circuits.capacity", "circuits.protection", "circuits.cpc"],
  facts: {
    "live-conductor-open": yesNo({
      asks: "End to end, is the line or the neutral of the ring open?",
      effort: "measured",
      yes: "the line or the neutral of the ring is open",
      no: "line and neutral of the ring are continuous end to end",
      worse: "yes",
    }),
    cpc: ranked({
      asks: "End to end, is the protective conductor continuous, and does every point still reach earth?",
      effort: "measured",
      values: {
        whole: "the protective conductor of the ring is continuous end to end",
        "open-once": "the protective conductor is open at one place and every point still reaches earth",
        "point-lost": "the protective conductor is open and a point no longer reaches earth",
      },
    }),
    legs: ranked({
      asks: "What can one leg carry as installed, against the rating of the device and the load?",
      effort: "opened",
      values: {
        "carries-device": "one leg alone carries the rated current of the device",
        "light-load": "one leg carries less than the rating of the device, and what is used stays well within it",
        overloadable: "one leg carries less than the rating of the device, and heavy loads are likely on it",
      },
    }),
    heat: ranked({
      asks: "Is there any sign of heat at the board, in the sockets or along the cable?",
      effort: "opened",
      values: {
        none: "no sign of heat was found",
        marks: "browning, softening or smell shows earlier heat",
      },
    }),
  },
  contested: {
    "one-sided-earth": {
      question: "A protective conductor open at one place, with every point still earthed: danger or improvement?",
      positions: {
        improve: {
          words: "while every point reaches earth and faults are cleared it is to be improved",
          because: "a further break and a fault in equipment are two events, and a radial is earthed from one side too",
        },
        danger: {
          words: "it is potentially dangerous",
          because: "a loose connection is behind it, and the next one takes the earth from every point beyond",
        },
      },
    },
    "light-load": {
      question: "Does a light load today keep the broken ring safe?",
      positions: {
        "does-not-count": {
          words: "what is plugged in today is no protection against overload",
          because: "users plug in what they like, and the device lets the leg carry its full rating",
        },
        counts: {
          words: "a leg that is lightly used in all foreseeable use is not a step from danger",
          because: "an overload of long duration has to be likely, 433.1.204",
        },
      },
    },
  },
  paths: [
    {
      id: "overheating",
      hazard: "burns-or-fire",
      route: "the whole load runs through one leg, which overheats without the device opening",
      exists: yes("live-conductor-open"),
      layers: [
        {
          id: "device",
          provision: "overcurrent-protection",
          words: "the device, rated for what one leg carries",
          gone: not(is("legs", "carries-device")),
          sound: all(is("legs", "carries-device"), is("heat", "none")),
          regulations: ["433.1.1", "433.1.204"],
        },
        {
          id: "load",
          provision: "thermal-protection",
          words: "a load that does not heat the leg today",
          gone: all(is("heat", "marks"), is("legs", "carries-device")),
          sound: all(is("heat", "none"), is("legs", "light-load", "carries-device"), held("light-load", "counts")),
        },
      ],
    },
    {
      id: "live-case",
      hazard: "shock-under-fault",
      route: "a fault makes a metal case live at a point that no longer reaches earth",
      exists: is("cpc", "open-once", "point-lost"),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of live parts in the equipment", ["416.1"]),
        {
          id: "earth",
          provision: "fault-protection",
          words: "a path to earth that clears the fault",
          gone: any(is("cpc", "point-lost"), all(is("cpc", "open-once"), held("one-sided-earth", "danger"))),
          sound: NEVER,
          regulations: ["411.3.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: yes("live-conductor-open"),
      words: "line or neutral do not form a ring",
      regulations: ["433.1.204", "643.2.1"],
    },
    {
      when: is("cpc", "open-once", "point-lost"),
      words: "the protective conductor does not form a ring",
      regulations: ["543.2.9"],
    },
  ],
  dangers: [
    {
      id: "hot",
      least: "C2",
      when: is("heat", "marks"),
      words: "browning, softening or smell shows that a part of the ring has been hot",
      regulations: ["526.1", "134.1.1"],
    },
  ],
  client: {
    C2: "The loop that feeds the sockets is broken or has been hot. It may burn, or metal may give a shock. Have it fixed soon.",
    C3: "A wire in the loop that feeds the sockets is broken. The rest copes for now. It should be joined again.",
    FI: [
      unsure(
        "A wire in the loop that feeds the sockets is broken. We could not find out if the rest can cope. This must be looked at.",
        ["legs", "heat"],
        yes("live-conductor-open"),
      ),
      unsure(
        "A wire in the loop that feeds the sockets may be broken. We could not find out if the rest can cope. This must be looked at.",
        ["live-conductor-open", "cpc"],
      ),
      unsure("We could not find out if the loop that feeds the sockets can cope. This must be looked at.", [
        "legs",
        "heat",
      ]),
    ],
    none: "The loop that feeds the sockets is whole.",
  },
  remedies: [
    {
      words: "Until it is mended, fit a device that one leg can carry.",
      changes: { legs: "carries-device" },
    },
    {
      words:
        "Find the break by reading from point to point, make it good with what heat has harmed, and test the ring again.",
      changes: { "live-conductor-open": "no", cpc: "whole", heat: "none" },
    },
    {
      words:
        "Split the ring at the break into two radial circuits with devices to suit, replace what heat has harmed, and test each.",
      changes: { "live-conductor-open": "no", cpc: "whole", heat: "none" },
    },
  ],
  examples: [
    {
      name: "line open, 2.5 mm² legs on 32 A, kitchen loads",
      facts: { "live-conductor-open": true, cpc: "whole", legs: "overloadable", heat: "none" },
      possible: ["C2"],
      classification: "C2",
      source: "trade discussion: each leg could carry more than its capacity; regulation 433.1.204",
    },
    {
      name: "neutral open, 4 mm² legs clipped direct on 32 A",
      facts: { "live-conductor-open": true, cpc: "whole", legs: "carries-device", heat: "none" },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion; arithmetic: a leg of 37 A carries 32 A",
    },
    {
      name: "line open, bedroom sockets only",
      facts: { "live-conductor-open": true, cpc: "whole", legs: "light-load", heat: "none" },
      possible: ["C2"],
      source: "trade discussion: the load is in the users' hands",
    },
    {
      name: "the same where a light load is held to count",
      facts: { "live-conductor-open": true, cpc: "whole", legs: "light-load", heat: "none" },
      positions: { "light-load": "counts" },
      possible: ["C3"],
      source: "trade discussion: loads light",
    },
    {
      name: "protective conductor open at one place, every point earthed",
      facts: { "live-conductor-open": false, cpc: "open-once", heat: "none" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: fault protection remains from one side",
    },
    {
      name: "ring whole, socket browned",
      facts: { "live-conductor-open": false, cpc: "whole", heat: "marks" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: what has been hot goes on heating",
    },
    {
      name: "the same held to be a danger",
      facts: { "live-conductor-open": false, cpc: "open-once" },
      positions: { "one-sided-earth": "danger" },
      possible: ["C2"],
      source: "trade discussion: any conductor of a ring that is open",
    },
    {
      name: "protective conductor open, one socket without earth",
      facts: { "live-conductor-open": false, cpc: "point-lost" },
      possible: ["C2"],
      source: "trade practice: no fault protection at a socket",
    },
    {
      name: "line open, legs not traced",
      facts: {
        "live-conductor-open": true,
        cpc: "whole",
        heat: "none",
        legs: { notKnown: "limited", reason: "route under fixed floors" },
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over what a leg carries",
    },
    {
      name: "end to end not measured",
      facts: { legs: "overloadable", heat: "none" },
      possible: ["none", "C3", "C2"],
      missing: ["live-conductor-open", "cpc"],
      source: "union over what the readings would show",
    },
  ],
});
