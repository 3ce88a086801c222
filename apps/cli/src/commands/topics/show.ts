import { ownTexts, printDocument, readDocument } from "@good-grounds/topics/texts";
import { EXIT, type ExitCode, type Host, Stop } from "../../host.ts";
import { textsIn, topicsIn } from "../../topics-in.ts";
import type { TopicsOptions } from "./topics.ts";

/** `topics show ID [--topics FOLDER]`: the text of a topic, which is its page of documentation, and what the folder adds. */
export function showCommand(id: string, { topics: folder }: Pick<TopicsOptions, "topics">, host: Host): ExitCode {
  const topics = topicsIn(folder);
  const own = folder === undefined ? [] : textsIn(folder);
  const documents = [...ownTexts(), ...own]
    .filter(({ file }) => file.endsWith(".topic"))
    .flatMap(({ file, text }) => readDocument(text, file).document ?? []);
  const pages = documents.filter((one) => one.id.text === id);
  if (pages.length === 0) {
    const close = topics.find(id).slice(0, 5);
    throw new Stop(
      EXIT.input,
      `topics show: no topic or shared text is called ${JSON.stringify(id.slice(0, 60))}.${close.length === 0 ? " `goodgrounds reason --list` shows the topics." : ` Did you mean ${close.map((one) => one.id).join(", ")}?`}`,
    );
  }
  host.stdout.write(pages.map(printDocument).join("\n"));
  return EXIT.done;
}
