/** Words about readings that do not agree. */
export const MISFITS = Object.freeze({
  title: "Readings that do not agree",
  intro:
    "These readings cannot all be true of a sound installation, as far as the instruments' uncertainty goes. None of this is a classification.",
  more: (count: number) =>
    count === 1 ? "One more is less clear; --all shows it." : `${count} more are less clear; --all shows them.`,
  lessClear: "less clear",
  expected: (low: string, high: string) => `by the cable and the other readings ${low} to ${high}`,
  would: (reading: string, value: string) => `${reading} about ${value}`,
  wouldRead: (readings: readonly string[]) => `then ${readings.join(", ")}`,
  leading: (words: string, share: string) => `Most likely (${share}): ${words}`,
  tied: (words: string, share: string) => `Cannot be told apart (${share}): ${words}`,
  other: (words: string, share: string) => `Or (${share}): ${words}`,
  noFault: "no fault of the installation",
  next: (words: string) => `Next: ${words}`,
  expects: (words: string, explanation: string) => `${words} if ${explanation}`,
  /** An explanation by its id, short: "joint in protective conductor". */
  short: (id: string) =>
    id
      .replaceAll("-", " ")
      .replace(/\br1r2\b/, "R1+R2")
      .replace(/\bzs\b/, "Zs")
      .replace(/\brcd\b/, "RCD")
      .replace("TN C S", "TN-C-S")
      .replace("TN S", "TN-S"),
  innocent: (causes: readonly string[]) => `No fault at all may be: ${causes.join("; ")}`,
  rule: (formula: string) => `Held against: ${formula}`,
  assumed: (why: string) => `Assumed: ${why}`,
  share: (part: number) => `${Math.min(99, Math.max(1, Math.round(part * 100)))} %`,
  sharedTitle: "Readings that do not agree, and what they may mean",
  sharedIntro: "The inspector chose to show these. They ask for another look; they are no classification.",
  boardInsulation: {
    liveLive: "Insulation of all circuits, live to live",
    liveEarth: "Insulation of all circuits, to earth",
  },
  betweenNeutrals: (circuit: string, reading: string) =>
    `Circuit ${circuit}: insulation between its neutral and those of the others ${reading}.`,
  ringShows: (circuit: string, words: string) =>
    `${circuit}: the ring and its readings beside what is expected; ${words}`,
  note: (words: string) => `Inspector's note: ${words}`,
  notFound: "Named to be shown here, but the readings now agree.",
});
