/** Words of the list of jobs. */
export const JOBS = {
  title: "Jobs",
  none: "There is no job on this device.",
  fresh: "New job",
  fromFile: "Start from last time's inspection file",
  fromFileHelp:
    "Boards, circuits and supply are carried over. Last time's readings are kept aside and never stand as this time's.",
  copy: "Take in a copy of a job",
  copyHelp: "From another device or a colleague. Where the job is here already, the two are joined.",
  copyIn: "The copy is taken in.",
  changed: (when: string) => `changed ${when}`,
  demonstration: "demonstration",
  remove: (title: string) => `Delete ${title}`,
  removeShort: "Delete",
  removeTitle: (title: string) => `Delete "${title}"?`,
  removeAsk:
    "The job goes from this device with everything in it: entries, history, photographs. There is no way back.",
  removeFirst: "If anybody may still need it, save the job file first.",
  throwAway: "Throw the demonstration away",
  yes: "Delete it for good",
  no: "Keep it",
  again: "Make the demonstration again",
  settings: "Settings, storage and about",
  reading: "Reading the file…",
  notRead: "This file could not be used",
  competent:
    "For people competent in this kind of installation. It helps to reckon and to record; the person who signs judges and is responsible.",
} as const;
