import { ALWAYS, all, any, held, is, NEVER, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** An external loop impedance above what the system usually has. */
export const externalImpedanceHigh = topic({
  id: "external-impedance-high",
  title: "External loop impedance higher than usual",
  group: "earthing",
  items: ["earthing.arrangement", "earthing.conductor"],
  facts: {
    usual: yesNo({
      asks: "Is the external loop impedance as usual for the system, or as the distributor declares it here?",
      effort: "measured",
      yes: "the external loop impedance is as usual or as declared",
      no: "the external loop impedance is higher than usual and than declared",
      worse: "no",
      worked: { by: "external-impedance", met: "yes" },
    }),
    disconnects: yesNo({
      asks: "With it, are faults on every circuit still disconnected in time, by breaker, fuse or RCD?",
      effort: "measured",
      yes: "faults on every circuit are still disconnected in time",
      no: "faults on at least one circuit are not disconnected in time",
      worse: "no",
    }),
    cause: ranked({
      asks: "What does the distributor or a trace say is the cause?",
      effort: "beyond",
      values: {
        network: "the distributor confirms that the network gives this value here",
        connection: "a joint or the earth of the supply is failing",
        lost: "the supply's earth is broken, and the value comes from pipes or other chance paths",
      },
    }),
  },
  contested: {
    "while-it-disconnects": {
      question: "Is a high external impedance an observation while every circuit disconnects in time?",
      positions: {
        "cause-first": {
          words: "the cause has to be found out",
          because: "a value that does not fit the system is the sign of a failing joint, and such a joint gets worse",
        },
        "no-observation": {
          words: "it is told to the distributor and not classified",
          because: "the usual values are not limits, and what the installation has to do it does",
        },
      },
    },
  },
  paths: [
    {
      id: "metal-stays-live",
      hazard: "shock-under-fault",
      route: "metal becomes live through a fault, and the supply's earth passes too little current to disconnect it",
      exists: ALWAYS,
      layers: [
        oneEventAway("basic", "insulation", "the insulation between live parts and earthed metal", ["416.1"]),
        {
          id: "earth",
          provision: "fault-protection",
          words: "a means of earthing through which faults are disconnected, today and tomorrow",
          gone: any(
            no("disconnects"),
            all(no("usual"), is("cause", "connection", "lost"), held("while-it-disconnects", "cause-first")),
          ),
          sound: NEVER,
          regulations: ["313.1", "411.3.2", "542.1.2"],
        },
      ],
    },
  ],
  departures: [],
  dangers: [
    {
      id: "earth-lost",
      least: "C2",
      when: is("cause", "lost"),
      words: "the supply's earth is broken, and only chance paths stand in for it",
      regulations: ["411.3.1.1", "542.1.2"],
    },
  ],
  client: {
    C2: [
      says(
        "The earth from the street is broken. In a fault, metal could stay live. Call the power network soon.",
        is("cause", "lost"),
      ),
      says(
        "The earth from the street is not good enough. In a fault, metal could stay live. Call the power network soon.",
        no("usual"),
      ),
      says("In a fault, some metal could stay live. Have this put right soon.", no("disconnects")),
    ],
    FI: [
      unsure(
        "The earth from the street gave a poor test. The power network must find out why.",
        ["cause"],
        no("usual"),
      ),
      unsure("We could not find out if the earth from the street is good enough. It must be tested.", [
        "usual",
        "disconnects",
        "cause",
      ]),
    ],
    none: [
      says("The earth from the street is good enough.", is("cause", "network")),
      "A fault here is cut off in time today.",
    ],
  },
  remedies: [
    {
      words: "Report the reading to the distributor, and ask it to find and mend the joint or declare the value.",
      changes: { usual: "yes", cause: "network" },
    },
    { words: "Protect every circuit by RCDs that disconnect in time.", changes: { disconnects: "yes" } },
  ],
  examples: [
    {
      name: "1.9 Ω on TN-S, all circuits on RCDs, no answer from the distributor",
      facts: {
        usual: false,
        disconnects: true,
        cause: { notKnown: "limited", reason: "the distributor has not come yet" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "trade practice: a value that does not fit the system",
    },
    {
      name: "the same where disconnection is held to be enough",
      facts: { usual: false, disconnects: true, cause: "connection" },
      positions: { "while-it-disconnects": "no-observation" },
      possible: ["none"],
      source: "trade discussion of usual values",
    },
    {
      name: "the supply's earth found broken, faults cleared through water pipes",
      facts: { usual: true, disconnects: true, cause: "lost" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: a chance path may go at any time",
    },
    {
      name: "1.9 Ω, breakers only",
      facts: { usual: false, disconnects: false },
      possible: ["C2"],
      source: "regulation 411.3.2",
    },
    {
      name: "distributor confirms 0.95 Ω",
      facts: { usual: false, disconnects: true, cause: "network" },
      possible: ["none"],
      source: "regulation 313.1",
    },
    {
      name: "reading alone",
      facts: { usual: false },
      possible: ["none", "C2"],
      missing: ["disconnects", "cause"],
      source: "union over what is not known",
    },
  ],
});
