import type { Word } from "../document/condition.ts";
import type { ViewNode } from "../document/folder.ts";
import type { TextFault } from "../text/fault.ts";
import { nearTo } from "../text/near.ts";
import type { Topic } from "../topic.ts";

/** What is wrong with standing views: topics, points or positions that are not there, and a point on which two are held. */
export function viewFaults(views: readonly ViewNode[], topics: readonly Topic[], file: string): readonly TextFault[] {
  const seen = new Set<string>();
  return views.flatMap((view) => {
    const key = JSON.stringify([view.point.text, view.topic?.text]);
    const isSecond = seen.has(key);
    seen.add(key);
    const within = [`view ${view.point.text}`];
    const tell = (word: Word, found: string, expected: string, advice: string): TextFault[] => [
      { file, at: word.at, found, expected, advice, within },
    ];
    if (isSecond)
      return tell(
        view.point,
        `a second view on "${view.point.text}"`,
        "one for each point",
        "keep the one that is held",
      );
    const wanted = topics.filter(({ id }) => view.topic === undefined || id === view.topic.text);
    if (view.topic !== undefined && wanted.length === 0)
      return tell(
        view.topic,
        `no topic is called "${view.topic.text}"`,
        "the id of a topic",
        advised(
          view.topic,
          topics.map(({ id }) => id),
        ),
      );
    const having = wanted.filter(({ contested }) => Object.hasOwn(contested, view.point.text));
    const points = [...new Set(wanted.flatMap(({ contested }) => Object.keys(contested)))];
    if (having.length === 0)
      return tell(
        view.point,
        `no contested point ${view.topic === undefined ? "" : `of "${view.topic.text}" `}is called "${view.point.text}"`,
        points.length > 12
          ? "a contested point that topics have"
          : `one of ${points.join(", ") || "none: it has no contested point"}`,
        advised(view.point, points),
      );
    if (view.topic === undefined && having.some(({ shared }) => !shared.includes(view.point.text)))
      return tell(
        view.point,
        `"${view.point.text}" is a point of single topics`,
        '"of" and a topic behind it',
        `write "view ${view.point.text} of ${having[0]?.id}: ${view.position.text}"`,
      );
    const positions = Object.keys(having[0]?.contested[view.point.text]?.positions ?? {});
    return positions.includes(view.position.text)
      ? []
      : tell(
          view.position,
          `"${view.position.text}" is no position on "${view.point.text}"`,
          `one of ${positions.join(", ")}`,
          advised(view.position, positions),
        );
  });
}

function advised({ text }: Word, names: readonly string[]): string {
  const [near] = nearTo(text, names);
  return near === undefined ? "write one that is there" : `is it "${near}"?`;
}
