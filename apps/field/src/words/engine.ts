/** What the engine says of a job that is not finished, or not readable. */
export const ENGINE = {
  reachFloor: "floor",
  reachPart: "bare part",
  reachTitle: "Arm's reach, seen from the side",
  failed: (reason: string) => `This could not be worked out: ${reason}`,
  notAJob: "This is not a job that can be read.",
  unreadable: "So much of this job cannot be read that nothing can be worked out.",
  nothingWeighed: "Nothing has been weighed yet.",
  missing: (what: string) => `${capital(what)} is missing.`,
  unsaid: (what: string) => `Nothing is said of ${what}.`,
  wrong: (found: string, expected: string) => `${found} stands here; expected is ${expected}.`,
  something: "What stands here",
  unknownMember: "Something stands here for which a report has no place.",
  reference: (kind: string) => `The ${kind} named here is not in this job. Choose another.`,
  notOneOf: (found: string) => `${found} is none of the answers there are here. Choose one.`,
  answeredTwice: "Answered twice; one answer has to go.",
  withoutObservation: "It is answered with an observation, and none is named.",
  withoutReason: "It is answered without the reason it needs.",
  circuitWithoutBoard: "The board of this circuit is not named.",
  twice: "Two things carry the same name in the file.",
  circle: "Boards feed each other in a circle. Correct what feeds them.",
  unusable: (found: string) => `${found} cannot be used. Enter it again.`,
  more: (found: string) => `And ${found}.`,
  noTopic: (id: string) => `No subject is called ${id}.`,
  notAnAnswer: (found: string, expected: readonly string[]) =>
    `${found} is no answer here; one of ${expected.join(", ")}.`,
  notAQuantity: (found: string, expected: readonly string[]) =>
    `${found} is not a number with its unit (${expected.join(", ")}).`,
  sampled: (inspected: number, population: number, defective: number) =>
    `${inspected} of ${population} inspected, ${defective === 0 ? "none" : defective} defective`,
  leaves: (most: number, population: number, percent: number) =>
    `with ${percent} % assurance at most ${most} of all ${population} are defective`,
  notASample: "no sample",
} as const;

/** What an unfinished job lacks, by member. */
export const LACKS = {
  edition: "the edition the report is made to",
  inspectedOn: "the date of the inspection",
  client: "the client's name",
  address: "the address of the premises",
  use: "the use of the premises",
  tenure: "the tenure",
  nation: "the nation, which settles whose law applies",
  purpose: "the purpose of the inspection",
  visits: "the date of a visit",
  covered: "what the inspection covers",
  boards: "a board",
  boardName: "the name of the board",
  fedFrom: "what feeds the board",
  designation: "the number of the circuit",
  description: "what the circuit supplies",
  place: "the place of the observation",
  what: "what was observed",
} as const;

/** Names that stand where nobody has named a thing yet. */
export const UNNAMED = {
  board: "board without a name",
  designation: "–",
  description: "not described yet",
} as const;

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
