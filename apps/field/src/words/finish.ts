import { OUTCOME } from "@good-grounds/report/labels";

/** Words of finishing a job. */
export const FINISH = {
  way: "What stands in the way",
  wayNone: "Nothing stands in the way of the report.",
  earthing: "The earthing conductor is recorded as disconnected.",
  untold: (count: number) =>
    `${count} ${count === 1 ? "danger" : "dangers"} (C1) without anybody told, and no reason why.`,
  unchecked: "Whether anything stands in the way could not be found out. Open this screen again.",
  checking: "Looking for what stands in the way …",
  conflicts: (count: number) => `At ${count} ${count === 1 ? "place" : "places"} two people wrote different values.`,
  unclassified: (count: number) => `${count} ${count === 1 ? "observation" : "observations"} without a classification.`,
  more: (count: number) => `and ${count} more`,
  thereIsNone: "There is none",
  stated: "Your conclusion",
  outcome: "Outcome as you state it",
  satisfactory: OUTCOME.satisfactory,
  unsatisfactory: OUTCOME.unsatisfactory,
  general: "General condition",
  nextBy: "Next inspection by",
  nextReason: "Reason for that date",
  sign: "Sign",
  signHelp: "A signature holds for what stands in the job now. Any change after it shows.",
  person: "Who signs",
  capacity: "As",
  inspected: "inspected and tested",
  authorised: "authorises the report for issue",
  draw: "Draw the signature, or leave it empty: the name stands for it.",
  clear: "Clear the drawing",
  signNow: "Sign now",
  cannotSign: "Signing needs a report that nothing stands in the way of, and a person.",
  signed: "Signatures",
  none: "Nobody has signed yet.",
  far: (count: number) => (count === 0 ? "not signed" : `${count} ${count === 1 ? "signature" : "signatures"} given`),
  standing: {
    signed: "signed for what stands here now",
    changed: "the job was changed after this: it does not count as signed for what stands here now",
    unbound: "it says of no content that it was signed: it does not count as signed for what stands here now",
  },
  withdraw: "Withdraw",
  unnamed: "somebody without a name",
};

/** Words of the private check of one's own figures. */
export const OWN_FIGURES = {
  title: "Private check of your own figures",
  help: "For you alone: none of it is in the report. It asks what a careful reader might ask. Measure again or write a note; never change a reading to satisfy it.",
  look: "Look now",
  looking: "Looking …",
  nothing: "Nothing to confirm.",
  confirm: "Please confirm",
  innocent: "How it comes about in honest work",
  readings: "The readings",
  note: "Your note",
  more: (count: number) => `and ${count} more`,
};

/** Words of handing a job over. */
export const HAND_OVER = {
  report: "The report",
  save: "Save the inspection file",
  pdf: "Make the PDF on this device",
  pdfAgain: "Try the PDF again",
  saveHelp:
    "The file holds everything the report says, for another program or another inspector. On a computer the archive form PDF/A is made from it, with the file attached.",
  pdfHelp: "The first time it fetches about 12 MB, once, and then works without a signal.",
  writing: "Writing the report …",
  pdfFailed: (reason: string) =>
    `The report could not be written: ${reason}. The inspection file can be saved all the same.`,
  notYet: "Something still stands in the way",
  copy: "A copy of the whole job",
  copyHelp: "Everything of the job, photographs and history too, as one file: to keep, or for a colleague to join.",
  saveCopy: "Save a copy",
  join: "Join a colleague's copy",
  joinHelp:
    "Takes in what a colleague recorded in their copy of this job. Nothing is lost; where both wrote different values, both are shown.",
  joined: (count: number) =>
    count === 0 ? "Nothing in it was new." : `${count} ${count === 1 ? "entry" : "entries"} taken in.`,
  contradicts:
    "This copy holds something else where this device holds an entry of the same name. One of them was altered outside the app. Nothing of it was taken in.",
  otherJob: "This is a copy of another job. It was not taken in.",
  conflicts: "Written differently",
  conflictsHelp: "Choose which is right, or measure again.",
  history: "History",
  historyHelp:
    "Every change, newest first: when, by whom, what. An earlier value can be put back; the history keeps both.",
  putBack: "Put this back",
  standsNow: "stands now",
  rejected: (shown: string, taken: string | undefined) =>
    `${shown}${taken === undefined ? "" : ` of ${taken}`} rejected, to be measured again`,
  takenOut: "Taken out by one, written in by another",
  takenOutHelp: "Somebody took this out; somebody who did not know of that wrote in it. It stays until you decide.",
  keep: "Keep it",
  takeOut: "Take it out",
  nobody: "nobody named",
  removed: "taken out",
  yes: "yes",
  no: "no",
  noneOfIt: "none",
  added: "added",
  aPhotograph: "a photograph",
  showMore: "Show more",
  working: "Working …",
};
