import { ALWAYS, all, any, held, is, NEVER, no, oneKind, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Insulation resistance below the least value that the standard allows. */
export const insulationLow = topic({
  id: "insulation-low",
  title: "Insulation resistance below its limit",
  group: "circuits",
  items: ["circuits.insulation"],
  facts: {
    "reaches-limit": yesNo({
      asks: "At the right test voltage, does every reading reach 1 MΩ (circuits up to 500 V)?",
      effort: "measured",
      yes: "every reading reaches the least value",
      no: "a reading lies below the least value",
      worse: "no",
      worked: { by: "insulation-resistance", met: "yes", notMet: "no" },
    }),
    lies: ranked({
      asks: "With all equipment, electronics and surge devices disconnected, does the low value stay?",
      effort: "opened",
      values: {
        "test-only": "the low value was a load, lamp or electronic part left connected, and clears without it",
        equipment: "the low value lies in one item of equipment that leaks",
        wiring: "the low value stays with everything disconnected: it lies in the fixed wiring",
      },
    }),
    "near-limit": yesNo({
      asks: "Where it reaches the least value: is a reading below twice that?",
      effort: "measured",
      yes: "a reading lies below twice the least value",
      no: "every reading lies well above the least value",
      worse: "yes",
    }),
    between: oneKind({
      asks: "Between which conductors is it low?",
      effort: "measured",
      values: {
        "live-earth": "it is low between line and earth",
        "neutral-earth": "it is low between neutral and earth only",
        "live-live": "it is low between live conductors only",
      },
    }),
    "heavy-leak": yesNo({
      asks: "Is it so low that several milliamps leak (below about 50 kΩ on 230 V)?",
      effort: "measured",
      yes: "it is low enough for several milliamps to leak at mains voltage",
      no: "at mains voltage less than about 5 mA leaks",
      worse: "yes",
    }),
    "metal-earthed": yesNo({
      asks: "Is all metal of the circuit earthed, with a device that clears an earth fault in time?",
      effort: "measured",
      yes: "the metal of the circuit is earthed and a fault is cleared",
      no: "metal of the circuit is not earthed, or a fault is not cleared",
      worse: "no",
    }),
  },
  contested: {
    "just-above": {
      question:
        "A reading that just reaches the least value, with everything disconnected: is that anything to report?",
      positions: {
        "meets-limit": {
          words: "what reaches the least value is in order, and is noted for next time",
          because: "the least value is the only measure that the standard gives",
        },
        "find-the-cause": {
          words: "sound cable reads far more, so its cause wants finding",
          because: "new cable reads hundreds of megohms, and one damp point will soon bring it below the limit",
        },
      },
    },
    "live-live": {
      question:
        "A low value between live conductors only, with nothing connected that explains it: how near is danger?",
      positions: {
        "same-as-earth": {
          words: "insulation that is failing between live conductors is one step from a short circuit and heat",
          because: "the limit of the table is one and the same for both readings",
        },
        lesser: {
          words: "a small leak between live conductors that makes no heat is to be improved",
          because: "no metal can become live through it, and the device clears a short circuit",
        },
      },
    },
  },
  paths: [
    {
      id: "leak-to-metal",
      hazard: "shock-under-fault",
      route: "current leaks through bad insulation to metal or damp structure that somebody touches",
      exists: all(no("reaches-limit"), is("lies", "equipment", "wiring"), is("between", "live-earth")),
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "insulation of the live conductors",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["416.1", "643.3.2"],
        },
        {
          id: "earthing",
          provision: "fault-protection",
          words: "earthing and disconnection, or so small a leak that it cannot harm",
          gone: all(no("metal-earthed"), yes("heavy-leak")),
          sound: NEVER,
          regulations: ["411.3.1.1", "411.3.2"],
        },
      ],
    },
    {
      id: "neutral-to-earth",
      hazard: "shock-under-fault",
      route: "load current runs over the protective conductor, and a break in it makes metal live",
      exists: all(no("reaches-limit"), is("lies", "equipment", "wiring"), is("between", "neutral-earth")),
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "insulation between neutral and earth, without which an RCD may trip late or at random",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["643.3.2", "531.3.2"],
        },
        oneEventAway("continuity", "fault-protection", "a protective conductor that stays whole", ["543.3.1"]),
      ],
    },
    {
      id: "arc-between",
      hazard: "burns-or-fire",
      route: "bad insulation between live conductors breaks down and arcs",
      exists: all(
        no("reaches-limit"),
        is("lies", "wiring"),
        is("between", "live-live"),
        any(held("live-live", "same-as-earth"), yes("heavy-leak")),
      ),
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "insulation between the live conductors",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["643.3.2"],
        },
        oneEventAway("device", "overcurrent-protection", "the overcurrent device", ["434.1"]),
      ],
    },
  ],
  departures: [
    {
      when: all(no("reaches-limit"), is("lies", "equipment", "wiring")),
      words: "the insulation resistance is below the least value",
      regulations: ["643.3.2"],
    },
    {
      when: all(
        yes("reaches-limit"),
        yes("near-limit"),
        is("lies", "equipment", "wiring"),
        held("just-above", "find-the-cause"),
      ),
      words: "the insulation resistance is near its least value, and its cause is not known",
      regulations: ["651.2"],
    },
  ],
  client: {
    C1: "Power is leaking into metal that is not earthed well. Touching it can give a bad shock. Keep it off until it is mended.",
    C2: [
      says(
        "The cover of the wires is failing and power leaks out. It could give a shock or start a fire. Have it fixed soon.",
        is("lies", "wiring"),
      ),
      says("An item on the circuit leaks power. It could give a shock. Have it mended soon.", is("lies", "equipment")),
    ],
    C3: "The cover of the wires, or an item on the circuit, is weaker than it should be. Have it looked at and put right.",
    FI: [
      unsure(
        "A test shows that power may leak from the wires. We could not find out where. It must be looked at soon.",
        ["lies"],
        no("reaches-limit"),
      ),
      unsure("We could not find out if power leaks from the wires in a way that harms. It must be looked at soon.", [
        "reaches-limit",
        "lies",
        "between",
        "heavy-leak",
        "metal-earthed",
      ]),
    ],
    none: "The cover of the wires keeps the power in.",
  },
  remedies: [
    {
      words: "Disconnect everything and test again, section by section, until the place is found.",
      changes: { lies: "test-only" },
    },
    {
      words: "Replace the leaking equipment or the damaged or damp length of cable, and test again.",
      changes: { "reaches-limit": "yes", "near-limit": "no", "heavy-leak": "no" },
    },
  ],
  examples: [
    {
      name: "0.4 MΩ live to earth in the fixed wiring, metal earthed",
      facts: {
        "reaches-limit": false,
        lies: "wiring",
        between: "live-earth",
        "metal-earthed": true,
      },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: below the least value, insulation failing",
    },
    {
      name: "0.2 MΩ line to neutral, a dimmer was connected",
      facts: { "reaches-limit": false, lies: "test-only", between: "live-live" },
      possible: ["none"],
      classification: "none",
      source: "trade practice: a connected load is not bad insulation",
    },
    {
      name: "8 kΩ to earth and the metal has no earth",
      facts: {
        "reaches-limit": false,
        lies: "wiring",
        between: "live-earth",
        "heavy-leak": true,
        "metal-earthed": false,
      },
      possible: ["C1"],
      source: "arithmetic: 230 V ÷ 8 kΩ = 29 mA, which a person would carry",
    },
    {
      name: "20 kΩ neutral to earth behind a socket, metal earthed or not",
      facts: { "reaches-limit": false, lies: "wiring", between: "neutral-earth", "heavy-leak": true },
      possible: ["C2"],
      classification: "C2",
      source:
        "trade practice: neutral to earth fault; the few volts between them drive no dangerous current through a person",
    },
    {
      name: "1.4 MΩ with everything disconnected",
      facts: { "reaches-limit": true, "near-limit": true },
      possible: ["none"],
      classification: "none",
      source: "regulation 643.3.2: 1 MΩ is reached",
    },
    {
      name: "the same where the cause is held to want finding",
      facts: { "reaches-limit": true, "near-limit": true, lies: "wiring" },
      positions: { "just-above": "find-the-cause" },
      possible: ["C3"],
      source: "trade practice: look for the cause below about 2 MΩ",
    },
    {
      name: "0.6 MΩ between live conductors, held to be lesser",
      facts: {
        "reaches-limit": false,
        lies: "wiring",
        between: "live-live",
        "heavy-leak": false,
      },
      positions: { "live-live": "lesser" },
      possible: ["C3"],
      source: "trade discussion of live to live readings",
    },
    {
      name: "0.3 MΩ to earth, equipment could not be disconnected",
      facts: {
        "reaches-limit": false,
        between: "live-earth",
        "metal-earthed": true,
        lies: { notKnown: "limited", reason: "built-in equipment could not be disconnected" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over where the leak lies",
    },
    {
      name: "not yet known where it lies",
      facts: { "reaches-limit": false, between: "live-earth", "metal-earthed": true },
      possible: ["none", "C2"],
      missing: ["lies"],
      source: "union over where the leak lies",
    },
  ],
});
