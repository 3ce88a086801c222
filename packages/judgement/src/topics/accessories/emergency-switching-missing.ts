import { all, any, is, NEVER, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A machine or place where power may have to be cut off at once, without a device at hand for it. */
export const emergencySwitchingMissing = topic({
  id: "emergency-switching-missing",
  title: "Emergency switching off missing",
  group: "accessories",
  items: ["accessories.emergency"],
  facts: {
    danger: ranked({
      asks: "What could happen that wants the power cut off at once?",
      effort: "glance",
      values: {
        none: "nothing here wants the power cut off in a hurry",
        foreseeable: "a person could be caught, cut, burnt or scalded unless the power is cut off at once",
      },
    }),
    device: ranked({
      asks: "What cuts the power off in an emergency, and where is it?",
      effort: "glance",
      values: {
        "at-hand": "a marked device at hand cuts the power off in one movement and stays off",
        "hard-to-reach": "a device cuts the power off, but is unmarked, blocked or some steps away",
        none: "no device for emergencies is there, or it does not work",
      },
    }),
    unguarded: yesNo({
      asks: "Is the moving, hot or cutting part open to people, without a guard that holds?",
      effort: "glance",
      yes: "the dangerous part is open to people",
      no: "a guard keeps people from the dangerous part",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "caught",
      hazard: "mechanical-movement",
      route: "somebody is caught or burnt and nobody can stop the machine in time",
      exists: is("danger", "foreseeable"),
      layers: [
        {
          id: "device",
          provision: "isolation",
          words: "a device that cuts the power off at once",
          gone: any(is("device", "none"), all(is("device", "hard-to-reach"), yes("unguarded"))),
          sound: NEVER,
          regulations: ["465.1", "537.3.3"],
        },
        {
          id: "guard",
          provision: "barrier-or-enclosure",
          words: "a guard, or the care of people who know the machine",
          gone: NEVER,
          sound: NEVER,
          regulations: ["132.10"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("danger", "foreseeable"), is("device", "hard-to-reach", "none")),
      words: "there is no emergency switching as the danger asks",
      regulations: ["465.1", "537.3.3"],
    },
  ],
  client: {
    C2: "A machine cannot be stopped fast if someone is caught or burnt. A stop switch must be fitted soon.",
    C3: "The stop switch of a machine is hard to get at or not marked. It is better moved or marked.",
    FI: [
      unsure("We could not find how a machine is stopped fast. This must be looked at soon.", ["device"]),
      unsure("We could not find out if a machine has to be stopped fast. This must be looked at soon.", [
        "danger",
        "unguarded",
      ]),
    ],
    none: "The power can be cut off fast where it is needed.",
  },
  remedies: [
    { words: "Clear the way to a device that works, and mark it.", changes: { device: "at-hand" } },
    { words: "Fit a stop device at hand that stays off until it is reset.", changes: { device: "at-hand" } },
  ],
  examples: [
    {
      name: "saw in a school workshop, no stop button",
      facts: { danger: "foreseeable", device: "none" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: emergency switching missing",
    },
    {
      name: "stop button behind stored goods",
      facts: { danger: "foreseeable", device: "hard-to-reach", unguarded: false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: there, but poorly placed",
    },
    {
      name: "the same at an open belt drive",
      facts: { danger: "foreseeable", device: "hard-to-reach", unguarded: true },
      possible: ["C2"],
      source: "trade practice: nobody gets to it in time",
    },
    {
      name: "ordinary home",
      facts: { danger: "none" },
      possible: ["none"],
      classification: "none",
      source: "regulation: asked for only where danger may arise",
    },
    {
      name: "button not tried",
      facts: { danger: "foreseeable" },
      possible: ["none", "C3", "C2"],
      missing: ["device"],
      source: "union over the try",
    },
  ],
});
