/** Words of the frame around every screen. */
export const PART = {
  before: "Before",
  walk: "Walk round",
  test: "Test",
  judge: "Judge",
  finish: "Finish",
} as const;

export const SHELL = {
  skip: "Skip to content",
  jobs: "Jobs",
  overview: "The visit",
  back: "Back",
  next: (title: string) => `Next: ${title}`,
  loading: "Opening…",
  kept: "kept",
  keeping: (count: number) => `keeping ${count}`,
  writing: "writing…",
  notKept: (reason: string) => `not kept: ${reason}`,
  noRoom: "the device has no room left. Free some space or take the job file off this device.",
  theme: { device: "Light as the device", light: "Light", dim: "Dim" },
  invented: "Demonstration: names and figures are invented.",
  unnamed: "Job without a name",
  noScreen: "There is no such place in this job.",
  noJob: "This job is not on this device.",
} as const;
