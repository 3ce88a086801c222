import type { PRECAUTIONS } from "@good-grounds/inspection/precautions";
import { networkLine } from "./emergency.ts";

type Step = (typeof PRECAUTIONS)[number];

/** What each step for safety asks, in the order of the visit. */
export const STEPS: Readonly<Record<Step, string>> = {
  "start.competent": "I am competent for this kind of installation. Where I am not, the work stops here.",
  "start.hazards":
    "I looked for asbestos (flash guards, backboards, ducts), heights, voids, floors, animals, needles, damp.",
  "start.life-support":
    "I asked whether anybody depends on equipment that must not lose its supply, and arranged for it.",
  "start.told": "People there know what goes off, when and for how long.",
  "covers.isolated": "Isolated at a point that cuts every live conductor.",
  "covers.locked": "Locked off; the key is with me.",
  "covers.second-supplies":
    "Looked for second supplies: photovoltaic, battery, generator, UPS, vehicle, a neighbour's loop, a shared neutral.",
  "covers.tester-before": "Tester proved.",
  "covers.dead": "Proved dead: every conductor to every other and to earth.",
  "covers.tester-after": "Tester proved again.",
  "insulation.people-away": "Nobody touches the circuit; no medical equipment is on it.",
  "insulation.electronics": "Electronics and controls are off the circuit. Where some may remain, 250 V first.",
  "insulation.surge": "Surge protection is disconnected.",
  "live.justified": "It is not reasonable to get this result dead, and it can be done safely.",
  "live.leads": "Leads and probes to GS38: fused, tips bare 4 mm at most, better 2 mm.",
  "live.footing": "Firm footing, light, room to move; somebody knows where I am.",
  "live.others-away": "Others are away from metalwork: loop and RCD tests put voltage on it for a moment.",
  "leave.earthing": "Earthing conductor connected and tight.",
  "leave.bonding": "Bonding conductors connected.",
  "leave.links": "Links, neutrals and surge protection back as they were.",
  "leave.covers": "Covers, blanks and seals in place.",
  "leave.rcd-buttons": "RCD buttons pressed after the tests, devices set again.",
  "leave.alarms": "Alarms and their supply on.",
  "leave.freezers": "Freezers and fridges run.",
  "leave.boilers": "Boiler, heating and time switches set.",
  "leave.locks": "Locks and notices of mine taken away.",
  "leave.told": "Occupier told what was done and what is off.",
};

/** The stages at which cautions are due. */
export const STAGES = {
  start: {
    title: "On arrival",
    points: ["Do not disturb what may be asbestos.", "Smell of burning, a shock, fire: out, 999."],
  },
  covers: {
    title: "Before covers come off",
    points: [
      "A main switch that is off proves nothing: cut-out and tails stay live.",
      "The distributor's seals are not broken without authority.",
    ],
  },
  earthing: { title: "Earthing conductor, before Ze", points: [] },
  insulation: {
    title: "Before insulation tests",
    points: ["Discharge the circuit afterwards, before anybody touches it."],
  },
  live: {
    title: "Before live tests",
    points: [
      "Live tests of a circuit stay shut until its protective conductor is proved. Whoever tests all the same says why, and that goes into the record.",
      "A reading is not changed to satisfy a warning: test again, or explain.",
    ],
  },
  danger: {
    title: "Danger found",
    points: [
      "Make it safe as far as you can, with agreement.",
      "Tell occupier and duty holder before leaving, in writing. Record a refusal.",
    ],
  },
  leave: {
    title: "Before leaving",
    points: ["Photographs show no people and no papers."],
  },
} as const;
export type Stage = keyof typeof STAGES;

/** The cautions of a stage, with whom to call about danger on the supply side where that may come up. */
export function pointsOf(stage: Stage, nation: string): readonly string[] {
  const { points } = STAGES[stage];
  if (stage === "start") return [...points, `Danger on the supply side: ${networkLine(nation)}.`];
  if (stage !== "danger") return points;
  return [
    ...points,
    `Refused, or on the supply side: ${networkLine(nation)}, or the emergency services. Nobody leaves in silence.`,
  ];
}

/** Words of the cautions. */
export const CAUTIONS = {
  intro: "What is due before each part of the work. Each step you confirm carries your name and the time.",
  stages: "Stages",
  onwards: "Onwards",
  done: "Done",
  doesNotArise: "Does not arise",
  clear: "Clear",
  at: (time: string, who: string | undefined) => (who === undefined ? time : `${time}, ${who}`),
  far: (have: number, of: number) => `${have} of ${of} steps`,
  read: "to read",
  off: "earthing conductor off",
  never: "not disconnected",
  back: "connected again",
  danger: "Go to observations",
  all: "All stages",
  next: (title: string) => `Next: ${title}`,
  noStage: "There is no such stage.",
  summary: (off: boolean, have: number, of: number) =>
    off ? "earthing conductor off" : have === of ? "all confirmed" : `${have} of ${of} steps`,
} as const;

/** Words of the earthing conductor's own page. */
export const EARTHING_PAGE = {
  before:
    "It may be disconnected only with the installation isolated: with supply on, a fault anywhere puts every earthed metal part at mains voltage.",
  first: "First, and proved:",
  disconnect: "The earthing conductor is disconnected now",
  lacking: "Shut until the installation is isolated, locked off and proved dead.",
  offTitle: "Disconnected",
  offTodo:
    "Measure Ze at the incoming earthing conductor. Then put it back before anything else, and only then the supply.",
  putBack: "It is connected again",
  ask: "Is the earthing conductor connected again?",
  asks: [
    "Earthing conductor in the main earthing terminal, tight, pulled by hand.",
    "Bonding conductors connected.",
    "The supply is still off while you look.",
  ],
  yes: "Yes, connected and tight",
  no: "Not yet",
  times: "Times off",
  time: (off: string, on: string | undefined) => `off ${off}, ${on === undefined ? "still off" : `back ${on}`}`,
} as const;
