import { namesKnown } from "@good-grounds/judgement";
import type { Topics } from "@good-grounds/topics";
import { breakLines, checkFolder, LAWS } from "@good-grounds/topics/laws";
import { type Folder, faultText, ownTexts, readFolder, type TextFault } from "@good-grounds/topics/texts";
import { FIRM } from "../../words/firm.ts";
import type { FolderText, FolderTried, KeptFolder } from "../folder-view.ts";

/** Reads a firm's folder and holds it to every law, in the words of the command. */
export function tryFolder(texts: readonly FolderText[]): FolderTried {
  const { folder, faults } = readFolder(texts, ownTexts());
  const label = folder?.topics.folder;
  if (folder === undefined || label === undefined || faults.length > 0)
    return { isWell: false, problems: faultsIn(faults, texts) };
  const problems = broken(folder, texts);
  if (problems.length > 0) return { isWell: false, problems };
  const { written, here } = folder.release;
  return {
    isWell: true,
    kept: { texts, label, provedBeside: here },
    words: countWords(folder),
    ...(written === here ? {} : { writtenAgainst: written }),
  };
}

/**
 * The topics that are reasoned with under a folder that was kept. It was proved when it was taken; where the app's own
 * topics are others since, it is proved again. Nothing is reasoned with a folder that fails.
 */
export function openFolder({ texts, label, provedBeside }: KeptFolder): Topics {
  const { folder, faults } = readFolder(texts, ownTexts());
  if (folder === undefined || faults.length > 0) throw new Error(FIRM.unusable(label.name, faultsIn(faults, texts)));
  if (folder.topics.folder?.hash !== label.hash) throw new Error(FIRM.unusable(label.name, [FIRM.changed]));
  const problems = folder.release.here === provedBeside ? [] : broken(folder, texts);
  if (problems.length > 0) throw new Error(FIRM.unusable(label.name, problems));
  return folder.topics;
}

/** Names that are not there and laws that are not kept, each as lines. */
function broken(folder: Folder, texts: readonly FolderText[]): readonly string[] {
  const { faults, broken: laws, files } = checkFolder(folder, namesKnown());
  return [...faultsIn(faults, texts), ...laws.map((one) => breakLines(one, files).join("\n"))];
}

function faultsIn(faults: readonly TextFault[], texts: readonly FolderText[]): readonly string[] {
  return faults.map((fault) => faultText(fault, texts.find(({ file }) => file === fault.file)?.text ?? ""));
}

function countWords({ own, topics }: Folder): string {
  const brought = own.filter(({ before }) => before === undefined).length;
  return FIRM.holds(brought, own.length - brought, topics.views.length, Object.keys(LAWS).length);
}
