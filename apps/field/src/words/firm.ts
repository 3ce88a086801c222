const counted = (count: number, one: string, more = `${one}s`) => `${count} ${count === 1 ? one : more}`;

/** Words about a firm's own folder of topics and standing views. */
export const FIRM = {
  title: "Topics of your firm",
  help: "A folder of your firm's own topics and standing views, as texts. It is read wholly or not at all, and held to the same laws as the app's own topics. Observations then search, ask and reason with it.",
  none: "No folder is on this device: observations reason with the app's own topics alone.",
  held: (name: string, answersFor: string) => `${name}, answered for by ${answersFor}.`,
  hash: "Hash of its texts",
  texts: (count: number) => counted(count, "text"),
  chooseFolder: "Choose a folder",
  chooseFiles: "Choose files or a ZIP archive",
  filesHelp:
    "All its texts at once: folder.topics, views.topics and the .topic files; or the folder as a ZIP archive. Of files without their folders, shared texts are told by their first line.",
  replaceFolder: "Choose another folder",
  reading: "The texts are read and proved. This can take a minute.",
  took: (name: string) => `${name} is on this device now. Observations reason with it.`,
  holds: (topics: number, changed: number, views: number, laws: number) =>
    `${counted(topics, "topic")}, ${changed} changed, ${counted(views, "view")}; ${counted(laws, "law")} kept.`,
  written: (release: string) => `It was written against another release of the app's topics (${release}).`,
  notTaken: (count: number) =>
    `Nothing of it was taken: ${counted(count, "problem")}. Put the texts right and choose them again.`,
  remove: "Take the folder off this device",
  removed: "The folder is off this device. Observations reason with the app's own topics alone.",
  putBack: "Put it back",
  noTexts: "There is no text of topics among what was chosen. Choose a folder with folder.topics in it.",
  tooMany: (count: number, most: number) => `${count} texts, where at most ${most} were expected.`,
  tooLarge: (file: string, bytes: number, most: number) =>
    `${file}: ${bytes} bytes, where at most ${most} were expected.`,
  notText: (file: string) => `${file}: not UTF-8 text, where a text of topics was expected. Save it as UTF-8.`,
  twice: (file: string) => `${file}: chosen twice. Choose the folder, or each text once.`,
  badArchive: (file: string) => `${file}: not a ZIP archive that can be read, or damaged. Pack the folder again.`,
  failed: (reason: string) => `It could not be read: ${reason}`,
  notKept: (reason: string) => `It could not be kept on this device, and is not used: ${reason}`,
  changed: "Its texts are not those that were proved.",
  unusable: (name: string, problems: readonly string[]) =>
    `The topics of ${name} on this device cannot be used, so nothing is reasoned without them. Choose the folder again, or take it off the device, in the settings. ${problems[0] ?? ""}`.trim(),
  own: "the app's own topics",
  called: (name: string, hash: string) => `topics of ${name} (${hash.slice(0, 12)})`,
  differs: "Judged with other topics",
  differsHelp: (then: string, now: string) =>
    `This job was judged with ${then}. This device has ${now}. What follows from the facts may differ.`,
  several: "several: copies of this job say different things",
  judgeAgain: (now: string) => `Judge this job with ${now}`,
} as const;
