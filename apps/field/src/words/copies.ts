/** Words of making a copy of a job and of taking one in. */
export const COPIES = {
  making: "Making the copy",
  reading: "Reading the copy",
  taking: "Taking it in",
  how: (what: string, done: string, of: string) => `${what}: ${done} of ${of}`,
  beginning: (what: string) => `${what} …`,
  stop: "Stop",
  stopped: "Stopped. Nothing was changed.",
  ready: (size: string, entries: number, photographs: number) =>
    `The copy is made and was read back without a fault: ${size}, ${count(entries, "entry", "entries")}, ${count(photographs, "photograph", "photographs")}.`,
  missing: (missing: number) =>
    `${count(missing, "photograph", "photographs")} of this job ${missing === 1 ? "is" : "are"} not on this device, or no longer readable, and not in the copy.`,
  handOver: "Send or save the copy",
  again: "Save it once more",
  aloneReady: (entries: number) =>
    `The copy with photographs could not be made. A file with the record alone was saved: ${count(entries, "entry", "entries")}, no photographs.`,
  alone: "Save the record without photographs",
  failed: (reason: string) => `The copy could not be made: ${reason}.`,
  stalled: "nothing moved for half a minute",
  tooLarge: "the job is larger than a copy can be (2 GB)",
  notSame: "what was read back is not what was written",
  refused: {
    "no-copy": "This file is not a copy of a job. Nothing of it was taken in.",
    damaged:
      "This copy is not what was written: it was damaged or altered on the way. Ask for it again. Nothing of it was taken in.",
    "not-whole":
      "This copy is not whole: something that its entries rest on is missing or cannot be read. Ask for it again. Nothing of it was taken in.",
    newer:
      "A newer version of the app made this copy. Bring this app up to date, then take it in. Nothing of it was taken in.",
    "too-large":
      "This file is larger, or claims to unpack to more, than any copy of a job. Nothing of it was taken in.",
  },
  readStalled:
    "The copy could not be read: nothing moved for half a minute. Save it on this device and try again. Nothing of it was taken in.",
  readFailed: (reason: string) => `The copy could not be read (${reason}). Nothing of it was taken in.`,
  noRoom:
    "There is no room on this device for what the copy holds. Free some space, then take it in again: nothing is doubled.",
  notKept: (reason: string) =>
    `What the copy holds could not be kept on this device (${reason}). Take it in again: nothing is doubled.`,
  ask: "Before it is taken in",
  unproved:
    "An older version of the app made this copy. It carries no proof that nothing was altered or damaged on the way. Compare it with its author, or ask for a copy made by the present version.",
  damaged: (damaged: number) =>
    `${count(damaged, "photograph", "photographs")} in it ${damaged === 1 ? "was" : "were"} damaged or lost on the way. Ask for the copy again; or take in the rest without ${damaged === 1 ? "it" : "them"}.`,
  goOn: "Take it in all the same",
  leave: "Leave it",
  left: "Nothing of it was taken in.",
} as const;

function count(number: number, one: string, more: string): string {
  return `${number} ${number === 1 ? one : more}`;
}
