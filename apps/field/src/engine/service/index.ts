import type { Service } from "../protocol.ts";
import type { Desk } from "./desk.ts";
import { troublesOf } from "./trouble.ts";
import { argumentOf, weighData } from "./weigh.ts";

/** Topics are many and large: they come when they are first asked for. */
const topicPiece = () => import("./topics.ts");

/** The outcome reasons about topics: it comes with them. */
const outcomePiece = () => import("./outcome.ts");

/** Wanted once, before signing. */
const ownFiguresPiece = () => import("./own-figures.ts");

/** Geometry that few jobs need. */
const reachPiece = () => import("./reach.ts");

/** The writer brings a layout engine with it: it comes when a report is first written on the device. */
const writerPiece = () => import("../../writer/write.ts");

/** Signing and checking what was signed. */
const issuePiece = () => import("./issue.ts");

/** What lays a report out, for those who sign one or compare one with its evidence. */
const layout = {
  toIssue: async (...args: Parameters<Writer["toIssue"]>) => (await writerPiece()).toIssue(...args),
  writeIssue: async (...args: Parameters<Writer["writeIssue"]>) => (await writerPiece()).writeIssue(...args),
};

/** The texts of all topics and their laws, for those who keep a folder of their own. */
const folderPiece = () => import("./folder.ts");

type Writer = Awaited<ReturnType<typeof writerPiece>>;

/** Everything the engine answers, with a desk of its own. */
export function openService(): Service {
  const desk: Desk = { weighed: undefined, topics: undefined, answered: new Map() };
  return {
    weigh: (data) => weighData(desk, data),
    argument: (path, check) => argumentOf(desk, path, check),
    pictures: async () => (await import("./pictures.ts")).picturesOf(desk),
    trends: async (earlier) => (await import("./trends.ts")).trendsOf(desk.weighed, earlier),
    check: (data) => troublesOf(desk, data),
    topics: async (words) => (await topicPiece()).labels(await desk.topics, words),
    outcome: async (data) => (await outcomePiece()).outcomeOfData(data, await desk.topics),
    misfits: async (data) => (await import("./misfits.ts")).misfitsOfData(data),
    duties: async (data) => (await outcomePiece()).dutiesOfData(data, await desk.topics),
    ownFigures: async (data, earlier) => (await ownFiguresPiece()).ownFiguresOf(data, earlier),
    reach: async (asked) => (await reachPiece()).reachOf(asked),
    report: async (json) => (await writerPiece()).writePdf(json, await desk.topics),
    pointsToAnswer: async (json) => (await writerPiece()).pointsToAnswer(json, await desk.topics),
    issue: async (asked) => (await issuePiece()).issue(asked, layout, await desk.topics),
    checkIssued: async (files, root) => (await issuePiece()).check(files, root, layout, await desk.topics),
    makeKey: async (...args) => (await issuePiece()).makeKey(...args),
    keyView: async (text) => (await issuePiece()).keyView(text),
    tryRegister: async (text) => (await issuePiece()).tryRegister(text),
    paper: async (kind, form, json) => (await writerPiece()).writePaper(kind, form, json, await desk.topics),
    reason: async (...args) => (await topicPiece()).reasonView(desk.weighed, await desk.topics, ...args),
    tryFolder: async (texts) => (await folderPiece()).tryFolder(texts),
    useFolder: async (kept) => {
      desk.topics = kept === undefined ? undefined : folderPiece().then((piece) => piece.openFolder(kept));
      // Told to whoever asks for what rests on it.
      desk.topics?.catch(() => undefined);
    },
  };
}
