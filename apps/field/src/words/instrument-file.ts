import type { Plan } from "../instrument-file/plan.ts";

/** Words of taking readings in from a file. */
export const INSTRUMENT_FILE = {
  intro:
    "A file of separated values from an instrument. Every line is shown; nothing is taken in before you say so, and the file is kept as it is.",
  choose: "Choose a file",
  refused: "This file is too large to be a list of readings.",
  columns: "What the columns hold",
  unused: "not used",
  unit: "unit of bare numbers",
  range: "End of the display's range, for OL",
  rows: (count: number) => `All ${count} lines`,
  line: "Line",
  takeIn: (count: number) => (count === 1 ? "Take in 1 reading" : `Take in ${count} readings`),
  taken: (count: number) => `${count} taken in. The file is kept with the job.`,
  over: (place: string, now: string, file: string) => `${place}: ${now} stands there, the file says ${file}.`,
  twice: "Stands twice in the file: choose one",
  unplaced: (count: number) => `${count} ${count === 1 ? "value" : "values"} not placed`,
  instrument: "Taken with",
  noInstrument: "not said",
  unnamed: "an instrument without a name",
  because: {
    "no-circuit": "names no circuit of this job, or more than one",
    "not-a-reading": "is no reading in that unit",
    "no-column": "stands in a column that is not used",
  } satisfies Readonly<Record<Plan["unplaced"][number]["because"], string>>,
};
