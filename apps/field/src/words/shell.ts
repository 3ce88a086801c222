/** Words of the frame around every screen. */
export const PART = {
  before: "Before",
  walk: "Walk round",
  test: "Test",
  judge: "Judge",
  finish: "Finish",
} as const;

export const SHELL = {
  app: "Good Grounds",
  skip: "Skip to content",
  jobs: "Jobs",
  overview: "The visit",
  settings: "Settings",
  back: "Back",
  next: (title: string) => `Next: ${title}`,
  notices: "Notices",
  loading: "Opening…",
  nothingYet: "nothing yet",
  kept: "kept",
  keeping: (count: number) => `keeping ${count}`,
  writing: "writing…",
  notKept: (reason: string) => `not kept: ${reason}`,
  noRoom: "no room left on this device. Free some space and leave the app open; this is tried again by itself.",
  failing: (why: string) => `the device did not take it (${why}). Leave the app open; this is tried again by itself.`,
  cannotKeep: "This browser keeps nothing",
  cannotKeepWhy:
    "It refuses the app any storage, as some do in a private window. Open the app in an ordinary window before you record anything.",
  undo: "undo",
  undone: (where: string) => `Taken back: ${where}`,
  gone: "This job was thrown away.",
  theme: { device: "Light as the device says", light: "Light theme", dim: "Dim theme" },
  themeShort: { device: "auto", light: "light", dim: "dim" },
  invented: "Demonstration. Names and figures are invented.",
  unnamed: "Job without a name",
  jobOf: (day: string) => `Job of ${day}`,
  lostPlace: "The place the app was left at cannot be read",
  lostPlaceWhy: "It opens at the list of jobs instead. Nothing in any job was changed by it.",
  noJob: "This job is not on this device.",
  updates: "Newer version",
  update: "A newer version is ready. What you typed stays.",
  takeUpdate: "Change over now",
  little: (left: string) =>
    `Only ${left} of room left for this app. Free some space on the device before taking photographs.`,
  conflicts: (count: number) =>
    count === 1 ? "One place holds two different answers." : `${count} places hold different answers.`,
} as const;

export const TROUBLE = {
  title: "Something went wrong on this screen",
  kept: "Everything that was shown as kept is still on this device.",
  todo: "Try the screen again. If it fails again, save the job file first, then go on with another screen.",
  again: "Try the screen again",
  reload: "Start the app again",
  save: "Save the job file",
  jobs: "Go to the list of jobs",
  details: "What happened",
} as const;

/** Words of danger that nobody was told of, on every screen. */
export const DANGER_BANNER = {
  untold: (count: number) => (count === 1 ? "C1: nobody told yet" : `C1, ${count} times: nobody told yet`),
  tell: "Make safe and tell",
} as const;

export const EARTHING = {
  off: "Earthing conductor disconnected",
  since: (time: string, who: string | undefined) => `since ${time}${who === undefined ? "" : `, by ${who}`}`,
  stay: "Keep the installation isolated.",
  putBack: "Put it back",
  open: (job: string) => `Open ${job}`,
  stillTitle: "The earthing conductor was left disconnected",
  stillAsk: "Nothing in the record says that it is back. Go and look before anything else.",
  stillOff: "It is still off",
  goBack: "Record that it is back",
} as const;
