import type { Layout, Statement } from "../statement/statement.ts";

/** What this program would make the pages with. */
export interface Maker {
  readonly release: string;
  readonly layout: Layout;
  /** The hash of the firm's own folder of topics in use here, where there is one. */
  readonly topics: string | undefined;
  /** Hashes of the earlier inspections handed in, in their order. */
  readonly earlier: readonly string[];
}

const WHERE: Readonly<Record<Layout, string>> = {
  command: "laid out by the command on a computer; it makes them again.",
  device: "laid out by the app on a device; its page for checking reports makes them again.",
};

/** Why the pages of a statement cannot be made again here, byte by byte; undefined where they can. */
export function whyNotAgain(statement: Statement, here: Maker): string | undefined {
  const { release, layout, topics, earlier } = statement;
  if (release !== here.release)
    return `made by release ${release}, and this is ${here.release}. That release makes them again.`;
  if (layout !== here.layout) return WHERE[layout];
  if (topics !== here.topics)
    return topics === undefined
      ? "made without a firm's own topics, and there are such here. Take them away to compare."
      : "made with another folder of topics than the one here. Use the firm's own to compare.";
  if (earlier.join() !== here.earlier.join())
    return `held against ${earlier.length} earlier inspections, which have to be handed in, in their order, to compare.`;
  return undefined;
}
