import { any, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** How a standby generator is connected, and what keeps it and the mains apart. */
export const generatorChangeover = topic({
  id: "generator-changeover",
  title: "Connection and changeover of a generator",
  group: "sources",
  items: ["sources.generators"],
  facts: {
    changeover: ranked({
      asks: "What keeps generator and mains from feeding at once?",
      effort: "glance",
      values: {
        interlocked: "an interlocked changeover switch keeps generator and mains apart",
        procedure: "only a written routine keeps generator and mains apart",
        nothing: "nothing keeps generator and mains apart",
      },
    }),
    connection: ranked({
      asks: "How is the generator connected: fixed, shrouded inlet, or a lead with pins that can be live and bare?",
      effort: "glance",
      values: {
        fixed: "the generator is wired in",
        "shrouded-inlet": "the generator is plugged into an inlet whose pins are dead or shrouded",
        "bare-pins": "the lead has a plug whose bare pins are live once the generator runs",
      },
    }),
    "lead-in-use": yesNo({
      asks: "Is such a lead in use now, or lying ready to be plugged in?",
      effort: "glance",
      yes: "the lead is in use or lies ready",
      no: "the lead has been taken out of use",
      worse: "yes",
    }),
    "earth-reference": yesNo({
      asks: "Does the generator have its own earth reference, so that protection works when the mains is off?",
      effort: "opened",
      yes: "the generator's neutral is referenced to earth when it feeds",
      no: "the generator's supply floats, so that protection cannot work",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "back-feed",
      hazard: "contact-with-live-parts",
      route: "the generator feeds back into the mains and meets somebody who believes it dead",
      exists: any(is("changeover", "procedure", "nothing")),
      layers: [
        {
          id: "apart",
          provision: "isolation",
          words: "what keeps generator and mains apart",
          gone: is("changeover", "nothing", "procedure"),
          sound: NEVER,
          regulations: ["551.6.1"],
        },
        oneEventAway("routine", "information", "the routine of whoever starts it"),
      ],
    },
    {
      id: "live-pins",
      hazard: "contact-with-live-parts",
      route: "somebody touches bare pins of a lead that is live from the generator",
      exists: is("connection", "bare-pins"),
      layers: [
        {
          id: "pins",
          provision: "barrier-or-enclosure",
          words: "pins that are dead or shrouded when the lead is out",
          gone: is("connection", "bare-pins"),
          sound: NEVER,
          regulations: ["416.2.1", "551.6.1"],
        },
        {
          id: "not-in-use",
          provision: "restricted-access",
          words: "the lead being out of use",
          gone: yes("lead-in-use"),
          sound: NEVER,
        },
      ],
    },
    {
      id: "no-reference",
      hazard: "shock-under-fault",
      route: "a fault while the generator feeds is not disconnected",
      exists: no("earth-reference"),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of live parts", ["416.1"]),
        {
          id: "disconnection",
          provision: "fault-protection",
          words: "disconnection while the generator feeds",
          gone: no("earth-reference"),
          sound: NEVER,
          regulations: ["551.4.3.2.1"],
        },
      ],
    },
  ],
  departures: [
    { when: is("changeover", "procedure", "nothing"), words: "no interlocked changeover", regulations: ["551.6.1"] },
  ],
  client: {
    C1: "The generator lead has bare live pins. Do not use it. Someone could be killed.",
    C2: [
      says(
        "The generator could feed back into the mains. Do not use it until it is put right.",
        is("changeover", "procedure", "nothing"),
      ),
      says(
        "With the generator on, a fault would not be cut off. Do not use it until it is put right.",
        no("earth-reference"),
      ),
      says(
        "A generator lead has bare pins that become live. Keep it out of use and have it changed.",
        is("connection", "bare-pins"),
      ),
    ],
    FI: [
      unsure(
        "We could not find out how the generator is kept apart from the mains. Do not use it until this is known.",
        ["changeover"],
      ),
      unsure("We could not find out if the generator is safe to use. Do not use it until this is known.", [
        "connection",
        "lead-in-use",
        "earth-reference",
      ]),
    ],
    none: "The generator is connected in a safe way.",
  },
  remedies: [
    { words: "Take the lead with bare pins away.", changes: { "lead-in-use": "no", connection: "shrouded-inlet" } },
    {
      words: "Fit an interlocked changeover switch with an inlet and an earth reference for the generator.",
      changes: { changeover: "interlocked", connection: "shrouded-inlet", "earth-reference": "yes" },
    },
  ],
  examples: [
    {
      name: "plug lead without interlock",
      facts: { changeover: "nothing", connection: "shrouded-inlet", "earth-reference": true },
      possible: ["C2"],
      source: "trade practice; 551.6.1",
    },
    {
      name: "plug lead with bare live pins in use",
      facts: { changeover: "nothing", connection: "bare-pins", "lead-in-use": true, "earth-reference": true },
      possible: ["C1"],
      source: "trade practice: live exposed pins in use",
    },
    {
      name: "interlocked, earth reference not looked at",
      facts: { changeover: "interlocked", connection: "fixed" },
      possible: ["none", "C2"],
      missing: ["earth-reference"],
      source: "union over what may be there",
    },
  ],
});
