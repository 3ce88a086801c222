import type { Nation } from "@good-grounds/core";
import { networkEmergencyNumber } from "@good-grounds/core";
import { REPORT } from "./report-en.ts";

/** Words of the notice of danger. */
export const NOTICE = Object.freeze({
  name: "Notice of danger",
  over: "Electrical danger found",
  holds: "The report is not issued yet. This notice holds all the same.",
  intro: (on: string) =>
    `During the inspection that began on ${REPORT.day(on)} danger to people was found in this installation. This notice says what, where, what was done about it, and who was told.`,
  none: "No danger now (C1) is recorded in this inspection.",
  noneMeans: "That says nothing of what was not seen or not tested.",
  nothingInspected:
    "By the record nothing was looked at or tested, so that this notice does not say that there is no danger.",
  open: (count: number) =>
    `${count} ${count === 1 ? "point that decides stands" : "points that decide stand"} open in the inspection; danger cannot be ruled out until ${count === 1 ? "it is" : "they are"} settled.`,
  earthingTitle: "The earthing conductor",
  earthing: (at: string) =>
    `By the record the earthing conductor was disconnected on ${REPORT.moment(at)} and not connected again. Until a competent person has seen that it is connected, any metal part may be live in a fault. Do not use the installation.`,
  heading: (number: number, place: string) => `${number}. ${place}`,
  found: "What was found",
  where: "Where",
  foundOn: "Found on",
  done: "What was done",
  notDone: "It is not recorded that anything was made safe. Take it that it is dangerous now.",
  told: "Told",
  toldWho: (told: string, at: string) => `${REPORT.moment(at)}: ${REPORT.closed(told)}`,
  untold: (reason: string) => `Nobody was told before the inspector left: ${REPORT.closed(reason)}`,
  toldUnsaid: "who was told, and when, is not recorded",
  reply: "Reply",
  noReply: "none recorded",
  dont: "What not to do",
  dontSafe:
    "Leave it as it was left. Do not open it, put it back, switch it on or take off what covers or locks it, until an electrician has put it right and tested it.",
  dontLive:
    "Do not touch it and do not use it. Keep everybody away, children above all. Do not switch it on again. Do not try to mend it.",
  next: "What has to follow",
  noRemedy: "not recorded: a competent electrician has to decide it",
  standing: Object.freeze({
    unclassified:
      "The inspector has not classified this. By the facts that are written down it is danger now (C1), and it is told here for that reason.",
    below: (chosen: string, reason: string | null) =>
      `The inspector chose ${chosen}${reason === null ? ", without a reason of its own." : `. Reason: ${REPORT.closed(reason)}`} By the facts that are written down it is danger now (C1), and it is told here for that reason.`,
  }),
  noClass: "that nothing has to be done",
  emergency: "In an emergency",
  emergencyWords: (nation: Nation | undefined) => {
    const number = nation === undefined ? undefined : networkEmergencyNumber(nation);
    return [
      "Fire, a smell of burning, or somebody has had a shock: get out, and call 999. Do not touch a person who is still in contact with a live part; switch off first.",
      number === undefined
        ? "Damage to the supply cable, the cut-out or the meter: call the network operator on the number that stands at the meter or on the bill."
        : `Damage to the supply cable, the cut-out or the meter: call the network operator on ${number}.`,
    ];
  },
  received: "Received",
  receivedBy: "Name and signature of who was given this notice",
  receivedOn: "Date and time",
  given: "Given by",
});
