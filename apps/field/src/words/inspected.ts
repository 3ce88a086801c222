import type { Circumstance } from "@good-grounds/inspection/items";

/** What is said where a circumstance is absent; it becomes the reason of every item that rests on it. */
export const ABSENT: Readonly<Record<Exclude<Circumstance, "always">, string>> = {
  dwelling: "Not a dwelling",
  "earth-electrode": "No earth electrode",
  "bath-or-shower": "No room with a bath or shower",
  "outdoor-equipment": "No outdoor sockets or equipment",
  "buried-cable": "No buried cable",
  outbuilding: "No outbuilding",
  "escape-route": "No protected escape route",
  "combustible-contents": "Nothing kept or worked that burns easily",
  "combustible-construction": "No construction that burns or passes fire on",
  "fire-alarm": "No fire or smoke alarm on a circuit",
  pool: "No pool or fountain",
  farm: "No farm",
  "conducting-place": "No narrow conducting place",
  "medical-place": "No medical place",
  "caravan-or-boat": "No pitches or moorings",
  "other-special-place": "No other special place",
  generator: "No generator",
  photovoltaic: "No photovoltaic supply",
  battery: "No battery",
  "vehicle-charging": "No vehicle charging",
  "other-source": "No other source of supply",
};

/** Answers to an item, in words. */
export const ANSWERS = {
  "in-order": "In order",
  observed: "Observation",
  limited: "Limited",
  "not-verified": "Not verified",
  "not-applicable": "Not applicable",
} as const;

/** Words of the inspected items. */
export const INSPECTED = {
  intro: "Nothing is answered beforehand. What was not looked at is said to be so, with the reason.",
  groups: "Groups of items",
  onwards: "Onwards",
  far: (answered: number, of: number) => `${answered} of ${of} answered`,
  open: (count: number) => `${count} open`,
  done: "all answered",
  absent: (what: string, count: number) => `${what}: ${count === 1 ? "1 item" : `${count} items`} not applicable`,
  absentTitle: "What is not here at all",
  regulations: (numbers: readonly string[]) => numbers.join(", "),
  clear: "Clear the answer",
  reasonFree: "Reason, if there is more to say",
  which: "Which observation",
  none: "No observation is written yet.",
  write: "Write a new observation",
  whichNeeded: "Choose or write the observation.",
  next: (title: string) => `Next: ${title}`,
  all: "All groups",
  noGroup: "There is no such group.",
} as const;
