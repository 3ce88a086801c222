import { networkLine, networkToCall } from "./emergency.ts";

/** Words of observations. */
export const OBSERVATIONS = {
  add: "Add an observation",
  none: "No observations yet.",
  untitled: "not described yet",
  open: "open",
  back: "All observations",
  all: "Observations",
  notTold: "Nobody has been told yet",
  place: "Where",
  placeHelp: "So that another electrician finds it: room, position, height.",
  what: "What was seen",
  foundOn: "Found on",
  foundOnHelp:
    "Only where the inspection took several days and this was not the first of them: dates the law sets count from it.",
  whatHelp: "The fact, not the judgement.",
  board: "Board",
  circuit: "Circuit",
  noBoard: "not at a board",
  noCircuit: "not at one circuit",
  reasons: "The reasoning",
  subject: "Subject",
  subjectHelp: "Type a word of it: blank, tails, bonding, bath …",
  chooseSubject: "Choose this subject",
  otherSubject: "Another subject",
  noSubjects: "No subject has this word.",
  loading: "Working it out …",
  possible: "Still possible",
  follows: "Follows from the facts",
  derived: "Derived, not decided: you decide and sign.",
  next: "Next question",
  cannot: "Cannot be settled within the agreed extent",
  why: "Why it cannot be settled",
  take: "Take this answer",
  measureOpening: "Measure the opening instead",
  reach: "Measure the distance",
  reachHeight: "Height above the floor people stand on, m",
  reachBeside: "Distance beside the edge of that floor, m (0 over it)",
  reachObjects: "Longest thing handled there, m (0 if nothing long)",
  reachAnswer: {
    beyond: "Out of reach",
    "long-objects": "Within reach of what is handled there",
    "in-reach": "Within arm's reach",
  },
  known: "What is known",
  change: "Change",
  forget: "Take back",
  differ: "Competent inspectors differ",
  taken: "taken here",
  argument: "The whole argument",
  changes: "What would change it",
  to: (severities: string, clauses: string) => `to ${severities} if ${clauses}`,
  remedies: "What would put it right",
  useRemedy: "Use as the remedy",
  choice: "Your classification",
  choiceHelp: "The facts allow; you choose.",
  reason: "Your reason",
  reasonDiffers: "Your choice is not what follows from the facts. Say why.",
  remedy: "What would put it right",
  remove: "Take this observation out",
  removed: "The observation was taken out.",
  undo: "Undo",
  failed: (reason: string) => `This could not be worked out: ${reason}`,
  edition: "The edition is set in the brief.",
} as const;

/** Words of danger found. */
export const DANGER = {
  none: "Nothing is classified C1.",
  intro: (nation: string) =>
    `Make it safe with agreement as far as you can, and tell the occupier and the duty holder before you leave, in writing. Refused, or on the supply side: ${networkLine(nation)}, or 999. Never leave silently.`,
  section: "Make safe and tell",
  done: "What was done to make it safe",
  doneHelp: "Isolated, locked, covered, or refused: by whom.",
  told: "Who was told",
  toldHelp: "Occupier and duty holder, by name, and how.",
  at: "When they were told",
  now: "Now",
  reply: "What they replied",
  untold: "Nobody has been told yet.",
  complete: "Made safe and told.",
  notice: "Notice of danger to hand over",
  copy: "Copy the notice",
  share: "Send the notice",
  copied: "The notice is copied.",
  reasonUntold: "Why nobody could be told",
  reasonUntoldHelp: "A job with an untold C1 counts as finished only with a reason.",
  go: "To the observation",
  text: (parts: {
    readonly address: string;
    readonly date: string;
    readonly where: string;
    readonly what: string;
    readonly done: string;
    readonly by: string;
    /** As recorded; empty where it is not. */
    readonly nation: string;
  }) =>
    [
      "Danger found at an electrical installation",
      "",
      `Place: ${parts.address}`,
      `Found: ${parts.where}`,
      parts.what,
      "",
      parts.done === "" ? "It has not been made safe. Do not use or touch it." : `Done so far: ${parts.done}`,
      "It must be put right by a competent person before it is used again.",
      `If you smell burning, see sparks or feel a shock: keep away, and call 999. For the supplier's equipment call ${networkToCall(parts.nation)}.`,
      "",
      `${parts.date}${parts.by === "" ? "" : `, ${parts.by}`}`,
    ].join("\n"),
} as const;

/** How far observations and dangers are. */
export const HOW_MANY = {
  observations: (count: number, open: number) =>
    open === 0 ? `${count}, all classified` : `${count}, ${open} without classification`,
  dangers: (count: number, untold: number) => (untold === 0 ? `${count}, told` : `${count}, ${untold} not told`),
} as const;
