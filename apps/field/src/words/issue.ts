/** Words of issuing a report on the device, of the key for it, and of checking what was issued. */
export const ISSUE = {
  title: "Issue the report",
  help: "An issue is signed with the key of this device and never changed afterwards. Whoever gets it can check it, without a signal too. The PDF above is not signed.",
  begin: "Begin an issue",
  noKey: "There is no key for signing on this device.",
  makeOne: "Make a key in the settings",
  keyOf: (person: string, device: string) => `Signed with the key of ${person} on ${device}.`,
  otherPerson: (person: string, signed: string) =>
    `The key is that of ${person}; the report is signed by ${signed}. Both will be told to whoever checks it.`,
  open: (count: number) =>
    count === 0
      ? "Nothing that decides stands open."
      : `${count} ${count === 1 ? "point stands" : "points stand"} open. Settle each in the job, or write why the report is issued all the same: the reason is part of what is signed.`,
  why: "Why it is issued all the same",
  passphrase: "Passphrase of the key",
  show: "Show the passphrase",
  hide: "Hide the passphrase",
  sign: "Sign and issue",
  working: "Laying out, signing and reading back …",
  looking: "Looking for what stands open …",
  made: (number: number) => `Issue ${number} is made, was read back as signed, and is kept on this device.`,
  notKept: (reason: string) =>
    `It is made and was read back as signed, but could not be kept on this device (${reason}). Save it now.`,
  savePdf: "Save the issued PDF",
  saveRecord: "Save its record",
  saveRecordHelp:
    "The record alone shows what was issued, without the report. Keep it apart from the report, for the firm.",
  failed: (reason: string) => `Nothing was issued: ${reason}`,
  refused: "Nothing was issued.",
  issued: "Issued on this device",
  saveAgain: "Save again",
  row: (number: number, at: string) => `Issue ${number} of ${at}`,
  replaced: (number: number) => `replaced by issue ${number}`,
  gone: "The PDF of this issue is no longer on this device; its record is.",

  notWhole: "the inspection file is not complete",
  nobodySigned: "Nobody has signed the inspection. Sign it at Finish and sign.",
  unanswered: (count: number) =>
    `${count} ${count === 1 ? "point stands" : "points stand"} open without a reason that says something.`,
  notInRegister:
    "The firm's register on this device has no such key, or the key has ended. Add it, or take a newer one.",
  notAsSigned: "What was made did not read back as it was signed, so it is not handed on. Try again.",
  registerChanged: "The register was changed since its root signed it.",
  noPages: "the document itself is not here, or it is not as signed.",
  notLaidOut: (reason: string) => `the pages could not be laid out here: ${reason}.`,
  says: (report: string, number: number, outcome: string) => `Report ${report}, issue ${number}, outcome ${outcome}.`,

  key: "Key for signing reports",
  keyHelp:
    "One key for each person on each device. It is kept encrypted under its passphrase; nobody can bring a forgotten one back, but a new key can be made at any time.",
  none: "No key is on this device. Reports can be written, but not issued.",
  person: "Whose key",
  device: "What this device is called",
  newPassphrase: "A new passphrase",
  newPassphraseHelp: "At least 12 letters. Four words that do not belong together do well.",
  again: "The passphrase again",
  differ: "The two differ.",
  tooShort: "At least 12 letters.",
  make: "Make the key",
  making: "Making the key. This takes some seconds.",
  keyMade: "The key is on this device now. Give its public part to whoever keeps the register of the firm.",
  heldBy: (person: string, device: string) => `${person}, ${device}`,
  madeOn: (day: string) => `Made on ${day}`,
  digits: "Its first digits",
  publicPart: "Save its public part",
  publicPartHelp: "Nothing in it is secret. The register of the firm takes it.",
  backUp: "Save the key, encrypted",
  backUpHelp: "Opens with the same passphrase, with the command too.",
  takeOff: "Take the key off this device",
  takeOffSure: "Without a saved copy this key can sign nothing any more. What it signed stands.",
  takeOffNow: "Take it off",
  cancel: "Keep it here",
  off: "The key is off this device.",
  keyNotKept: (reason: string) => `It could not be kept on this device: ${reason}`,

  register: "Register of the firm's keys",
  registerHelp:
    "Signed by the firm's paper root. It goes into every issue, so that whoever checks it can see whose key signed it.",
  noRegister: "No register is on this device.",
  chooseRegister: "Choose a register",
  registerFile: "The file that the command `keys` wrote for the firm.",
  held: (number: number, keys: number) => `Register ${number}, with ${keys} ${keys === 1 ? "key" : "keys"}`,
  root: "Public root",
  registerNot: (why: string) => `It was not taken: ${why}`,
  registerOff: "Take the register off this device",
} as const;

/** Words of the page for checking issued reports. */
export const CHECK = {
  title: "Check an issued report",
  short: "Check an issued report",
  help: "Five answers on a report that was issued here or elsewhere. Nothing leaves this device, and no signal is needed.",
  choose: "Choose files",
  chooseHelp:
    "The issued PDF, or its record. Other issues of the same report, photographs, the inspection file and the firm's register may be chosen with it: more is answered then.",
  root: "Public root of the firm",
  rootHelp:
    "64 digits, as the firm gives them by another way than the report. Without it nobody else vouches for the names.",
  rootFault: "64 digits from 0 to 9 and a to f were expected.",
  working: "Reading, and making the pages again …",
  nothing: "None of the files is an issued report or the record of one.",
  tooLarge: (name: string) => `${name} is larger than any issued report`,
  failed: (reason: string) => `The files could not be checked: ${reason}`,
  standing: { holds: "Found so", against: "Found otherwise", open: "Not known here" },
  reasons: "Issued while these points stood open",
  reason: (words: string) => `Reason given: ${words}`,
  notShown: "What none of this shows",
  unread: "Could not be read",
} as const;
