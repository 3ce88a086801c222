import { all, any, held, is, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A label at a switch or device that is missing, vague or wrong about what it cuts off. */
export const wrongLabel = topic({
  id: "wrong-label",
  title: "Isolator unlabelled or label wrong",
  group: "identification",
  items: ["boards.labels", "circuits.identification", "notices.isolation", "accessories.isolation"],
  facts: {
    label: ranked({
      asks: "What does the label say, checked by switching off?",
      effort: "measured",
      values: {
        right: "the label is right",
        vague: "the label is vague or hard to read",
        none: "there is no label",
        misleads: "the label names something that stays live when the device is off",
      },
    }),
    obvious: yesNo({
      asks: "Is it plain without a label what the device cuts off?",
      effort: "glance",
      yes: "it is plain without a label what the device cuts off",
      no: "it is not plain without a label what the device cuts off",
      worse: "no",
    }),
    "relied-on": yesNo({
      asks: "Would somebody switch off by this label to work, clean or stop a machine?",
      effort: "glance",
      yes: "people switch off by this label to work or to stop a machine",
      no: "nobody but an electrician who proves dead goes by this label",
      worse: "yes",
    }),
  },
  contested: {
    "proving-dead": {
      question: "Does the duty to prove dead make a misleading label harmless?",
      positions: {
        "does-not": {
          words: "a label that misleads is one step from danger",
          because: "people trust labels, and not all who work there can prove dead",
        },
        does: {
          words: "where only electricians go by it, a wrong label is a departure and no more",
          because: "every electrician proves dead at the point of work",
        },
      },
    },
  },
  paths: [
    {
      id: "works-on-live",
      hazard: "contact-with-live-parts",
      route: "somebody switches off by the label and works on what is still live",
      exists: all(is("label", "misleads"), any(yes("relied-on"), held("proving-dead", "does-not"))),
      layers: [oneEventAway("proving", "information", "proving dead at the point of work", ["514.1.1", "462.2"])],
    },
  ],
  departures: [
    {
      when: any(is("label", "misleads"), all(is("label", "vague", "none"), no("obvious"))),
      words: "the device does not show what it cuts off",
      regulations: ["514.1.1", "514.8.1"],
    },
  ],
  client: {
    C2: "A label on a switch is wrong. Someone could think the power is off when it is on. Have it put right soon.",
    C3: [
      says(
        "A switch has no clear label. It is not a danger now. A label should be fitted.",
        is("label", "vague", "none"),
      ),
      "A label on a switch is wrong. It is not a danger now. A right one should be fitted.",
    ],
    FI: unsure("We could not check if the labels on the switches are right. This must be looked at soon.", [
      "label",
      "relied-on",
    ]),
    none: "It is clear what the switches turn off.",
  },
  remedies: [{ words: "Trace what the device cuts off and label it.", changes: { label: "right" } }],
  examples: [
    {
      name: "isolator of a pump without label among others",
      facts: { label: "none", obvious: false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: labels missing",
    },
    {
      name: "unlabelled isolator beside the only fan",
      facts: { label: "none", obvious: true },
      possible: ["none"],
      classification: "none",
      source: "regulation: no possibility of confusion",
    },
    {
      name: "breaker marked for the cooker leaves the cooker live",
      facts: { label: "misleads", "relied-on": true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: somebody will work on it live",
    },
    {
      name: "chart swaps two lighting circuits, only electricians go by it, milder view",
      facts: { label: "misleads", "relied-on": false },
      positions: { "proving-dead": "does" },
      possible: ["C3"],
      source: "trade discussion of labels",
    },
    {
      name: "not tried by switching off",
      facts: { obvious: false, "relied-on": true },
      possible: ["none", "C3", "C2"],
      missing: ["label"],
      source: "union over what switching off would show",
    },
  ],
});
