import type { Word } from "../document/condition.ts";
import type { ViewNode } from "../document/folder.ts";
import type { TextFault } from "../text/fault.ts";
import { type Line, linesOf, spotIn } from "../text/lines.ts";
import { Desk, match } from "./desk.ts";
import { placed } from "./link.ts";
import { behind, readBelow } from "./statements.ts";

/** `views.topics`: standing views, one after the other. */
export function readViews(
  text: string,
  file: string,
): { readonly views: readonly ViewNode[]; readonly faults: readonly TextFault[] } {
  const { lines, faults } = linesOf(text, file);
  if (faults.length > 0) return { views: [], faults };
  const desk = new Desk(file);
  const views = lines.flatMap((line) => readView(line, desk) ?? []);
  return { views, faults: desk.faults };
}

/** `view POINT [of TOPIC]: POSITION`, below it `since DATE`, `by PERSON` and `because WORDS`. */
function readView(line: Line, desk: Desk): ViewNode | undefined {
  const { point, topic, position } =
    match(line, /^view (?<point>[a-z0-9-]+)(?: of (?<topic>[a-z0-9-]+))?: (?<position>[a-z0-9-]+)$/) ?? {};
  if (point === undefined || position === undefined)
    return desk.misspelt(line, '"view", a contested point, perhaps "of" and a topic, ":", and the position held');
  return desk.within(`view ${point.text}`, () => {
    let since: Word | undefined;
    let by = "";
    let because = "";
    readBelow(line, desk, [
      {
        begins: "since",
        read: (one) => {
          since = match(one, /^since (?<day>\S+)$/)?.day;
        },
      },
      {
        begins: "by",
        read: (one) => {
          by = behind(one, "by").text;
        },
      },
      {
        begins: "because",
        read: (one) => {
          because = behind(one, "because").text;
        },
      },
    ]);
    if (since === undefined || !isDay(since.text))
      return desk.fault(
        since?.at ?? spotIn(line),
        since === undefined ? "nothing says since when" : `"${since.text}"`,
        '"since" and a day as year, month and day',
        'write it as "since 2026-01-31"',
      );
    if (by === "") return desk.fault(spotIn(line), "nobody holds it", '"by" and a person', "say who answers for it");
    if (because === "")
      return desk.fault(
        spotIn(line),
        "a view without its ground",
        '"because" and what it rests on',
        "say below it why it is held",
      );
    return { ...placed(line), point, ...(topic === undefined ? {} : { topic }), position, since, by, because };
  });
}

/** A day there is, written YYYY-MM-DD. */
function isDay(text: string): boolean {
  const [, year, month, day] = (/^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined || month < 1 || month > 12 || day < 1)
    return false;
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const longest = month === 2 ? (leap ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;
  return day <= longest;
}
