/** Words of the private look at one's own figures. */
export const OWN_FIGURES = Object.freeze({
  title: "Please confirm: your own figures",
  private: "For you alone: no report carries any of this.",
  means:
    "Each of these has innocent causes. Repeat the reading or write down why it stands; do not alter a reading to satisfy a check.",
  nothing: "Nothing stands out.",
  shown: (shown: number, all: number) =>
    shown === all
      ? `${all} to confirm, heaviest first.`
      : `The ${shown} heaviest of ${all} to confirm; --all shows the rest.`,
  against: (id: string) => `Held against the earlier file ${id}.`,
  test: "Test:",
  numbers: "Numbers:",
  chance: (words: string) => `sound readings look like this in at most ${words} jobs`,
  record: "no matter of chance: it is what the file says",
  taken: "Taken to be so:",
  readings: "Readings:",
  more: (count: number) => `and ${count} more`,
  innocent: "Innocent causes:",
  notes: "Your note:",
  noNote: (check: string) =>
    `none yet; a note goes into the file under ownFigures as {"check": "${check}", "note": "…"}`,
  otherNotes: "Notes to checks that find nothing now:",
  notLookedAt: "Not looked at:",
  lookedAt: (looked: number, all: number) =>
    `${looked} of ${all} checks had something to look at; --all names the others.`,
});
