const entries = (count: number) => (count === 1 ? "one entry" : `${count} entries`);
const jobs = (count: number) => (count === 1 ? "one job" : `${count} jobs`);

/** Words of the two stores that hold every job on a device: the browser's database, and a file for each job. */
export const STORES = {
  oneOnly: "One of the two stores of this device does not work",
  databaseFails: (why: string) =>
    `The browser's database does not take or give anything (${why}). What you write is kept in the files of the jobs alone. The database is tried again by itself.`,
  filesFail: (why: string) =>
    `The files of the jobs do not take or give anything (${why}). They are tried again by itself. What the header does not show as kept is not safe yet.`,
  takeAway: "Save a copy of your jobs and take it off this device.",
  foundShort: "A store of this device was found short and was mended",
  lost: "Entries are missing on this device",
  fromFiles: (count: number, inJobs: number) =>
    `The browser's database lacked ${entries(count)} of ${jobs(inJobs)}. The files of the jobs had them, and now it has them again.`,
  fromDatabase: (count: number, inJobs: number) =>
    `The files of the jobs lacked ${entries(count)} of ${jobs(inJobs)}. The browser's database had them, and now they have them again.`,
  damaged: (bytes: number) => `${bytes} bytes of the files of the jobs could not be read.`,
  nothingLost: "Nothing that was shown as kept is missing.",
  nowhere: (count: number) =>
    `${entries(count)} could be read from neither store. Go through the jobs of this device and compare them with your copies before you rely on them.`,
  read: "I have read this",
  keptOnce: "kept in one store only",
  two: "Every job is in two stores on this device: the browser's database and a file of its own.",
  one: "This browser offers one store only. Most others hold every job in a second one, from which it is put back when the first is damaged.",
} as const;
