import type { PRECAUTIONS } from "@good-grounds/inspection";
import { SILENCE } from "./labels.ts";
import { REPORT } from "./report-en.ts";

type Step = (typeof PRECAUTIONS)[number];
export type Stage = "start" | "covers" | "insulation" | "live" | "leave";

/** Sentences of the section on how the work itself was made safe. */
export const SAFETY = Object.freeze({
  title: "How the work was made safe",
  head: ["Step", "Recorded"],
  intro: (many: string) =>
    `Steps for the safety of people during the visit, as they were confirmed on site${many}. A step that is not recorded may have been taken; nothing here says so.`,
  by: (name: string, on: string) => ` by ${name} on ${REPORT.day(on)}`,
  none: "No step is recorded: neither isolation nor proving dead, nor what was looked at before leaving.",
  doesNotArise: "does not arise",
  notRecorded: SILENCE.absent,
  nobody: "by nobody named",
  stage: Object.freeze({
    start: "On arrival",
    covers: "Before covers came off",
    insulation: "For the insulation tests",
    live: "For the live tests",
    leave: "Before leaving",
  } satisfies Record<Stage, string>),
  step: Object.freeze({
    "start.competent": "Competent for this kind of installation",
    "start.hazards": "Looked for asbestos, heights, voids, damp and other hazards",
    "start.life-support": "Asked about equipment that must not lose its supply",
    "start.told": "People told what goes off, when and for how long",
    "covers.isolated": "Isolated at a point that cuts every live conductor",
    "covers.locked": "Locked off, key kept",
    "covers.second-supplies": "Looked for second supplies",
    "covers.tester-before": "Tester proved",
    "covers.dead": "Proved dead, every conductor to every other and to earth",
    "covers.tester-after": "Tester proved again",
    "insulation.people-away": "Nobody touching the circuits, no medical equipment on them",
    "insulation.electronics": "Electronics off, or 250 V first",
    "insulation.surge": "Surge protection disconnected",
    "live.justified": "Not reasonable to get the result dead",
    "live.leads": "Leads and probes to GS38",
    "live.footing": "Firm footing, light, room; somebody knew",
    "live.others-away": "Others away from metalwork",
    "leave.earthing": "Earthing conductor connected and tight",
    "leave.bonding": "Bonding conductors connected",
    "leave.links": "Links, neutrals and surge protection back",
    "leave.covers": "Covers, blanks and seals in place",
    "leave.rcd-buttons": "RCD buttons pressed, devices set again",
    "leave.alarms": "Alarms on",
    "leave.freezers": "Freezers and fridges run",
    "leave.boilers": "Boiler, heating and time switches set",
    "leave.locks": "Own locks and notices taken away",
    "leave.told": "Occupier told what was done and what is off",
  } satisfies Record<Step, string>),

  earthing: "Earthing conductor",
  noneOff: "No time of disconnecting it is recorded.",
  howZe: (method: string) => `Ze was read with: ${method}.`,
  zeUnsaid: "Whether Ze was read with it disconnected is not recorded.",
  off: (at: string, by: string) => `Disconnected ${REPORT.moment(at)}${by}`,
  on: (at: string, by: string, minutes: number) => `connected again ${REPORT.moment(at)}${by} ${lasting(minutes)}.`,
  stillOff: "that it was connected again is NOT recorded.",
  stillOffAlarm: (at: string) =>
    `The record says that the earthing conductor was disconnected on ${REPORT.moment(at)} and not that it was connected again. Until somebody competent has seen that it is, every metal part may be live in a fault: have it looked at before anything else.`,

  live: "Tested live before the protective conductor was proved",
  liveNone: "No such test: every circuit with a reading of Zs has a reading that proves its protective conductor.",
  liveNever: "No reading of Zs is recorded.",
  liveOne: (where: string, at: string, by: string, reason: string) =>
    `${where}, ${REPORT.moment(at)}${by}: ${REPORT.closed(reason)}`,
  liveUnsaid: (places: readonly string[]) =>
    `Zs without a reading that proves the protective conductor, and no reason recorded: ${places.join("; ")}.`,

  danger: "Danger found, and who was told",
  noDanger: "No observation is classified as danger now (C1).",
  told: (number: number, to: string, at: string) =>
    `Observation ${number}: told on ${REPORT.moment(at)}: ${REPORT.closed(to)}`,
  notTold: (number: number, reason: string) =>
    `Observation ${number}: nobody told before leaving. ${REPORT.closed(reason)}`,
  tellingUnsaid: (number: number) => `Observation ${number}: who was told is not recorded.`,
  person: (name: string) => ` by ${name}`,
});

function lasting(minutes: number): string {
  return minutes < 0 ? "(a time before the first)" : `(${minutes} min)`;
}
