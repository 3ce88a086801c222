import { type Block, inlines, isBlocks, type Words } from "../document/model.ts";
import { REPORT } from "../locales/report-en.ts";
import { type firstPage, spanned } from "../pdf/sections/first-page.ts";
import { shortened } from "../pdf/sections/shortened.ts";

type First = ReturnType<typeof firstPage>;
type Member = First["groups"][number]["members"][number];

/** How much of it the first page tells: characters of a text, entries of a list, observations, and limits. */
interface Room {
  readonly text: number;
  readonly list: number;
  readonly observations: number;
  readonly unseen: number;
  readonly facts: number;
}

/** From all there is to the least that still tells what was found; everything stands whole on the pages behind. */
const ROOMS: readonly Room[] = [
  { text: 600, list: 5, observations: 1000, unseen: 10, facts: 300 },
  { text: 200, list: 4, observations: 24, unseen: 8, facts: 160 },
  { text: 130, list: 3, observations: 14, unseen: 5, facts: 100 },
  { text: 90, list: 2, observations: 10, unseen: 4, facts: 80 },
  { text: 70, list: 2, observations: 7, unseen: 3, facts: 60 },
  { text: 50, list: 1, observations: 5, unseen: 2, facts: 50 },
];

/** Lines of text that the first page holds. */
const LINES = 84;

/** The first page with as much of everything as one page holds. */
export function onePage(d: First, blocks: (d: First) => readonly Block[]): readonly Block[] {
  let made: readonly Block[] = [];
  for (const room of ROOMS) {
    made = blocks(within(d, room));
    if (linesOf(made) <= LINES) return made;
  }
  return made;
}

function within(d: First, room: Room): First {
  const few = (list: readonly string[], most = room.list) => {
    // What stands open and what was chosen below the facts is told in a whole clause.
    const cut = list.map((words) => shortened(words, Math.max(130, room.text)));
    return cut.length <= most ? cut : [...cut.slice(0, most), REPORT.furtherBehind];
  };
  return {
    ...d,
    address: shortened(d.address, Math.max(90, room.facts)),
    facts: d.facts.map(([name = "", value = ""]) => [name, shortened(value, room.facts)]),
    points: few(d.points),
    below: few(d.below),
    dismissed: few(d.dismissed),
    investigate: few(d.investigate),
    summary: shortened(d.summary, room.text),
    because: shortened(d.because, 700),
    groups: groupsWithin(d.groups, room),
    unseen: few(d.unseen, room.unseen).map((words) => shortened(words, room.text)),
    law: few(d.law, room.list + 1),
    next: shortened(d.next, room.text),
    within: shortened(d.within, room.text),
    who: d.who.slice(0, 5),
  };
}

/** The most urgent observations; of the others how many there are and under which numbers they stand. */
function groupsWithin(groups: First["groups"], room: Room): First["groups"] {
  let left = room.observations;
  return groups.map((group) => {
    // Of every class something is told: what is left out is counted.
    // What was chosen below the facts comes first, so that it is not among those.
    const ordered = [...group.members].sort((a, b) => Number(b.below !== "") - Number(a.below !== ""));
    const shown = new Set(ordered.slice(0, Math.max(1, left)));
    left -= shown.size;
    const rest = group.members.filter((one) => !shown.has(one));
    return {
      ...group,
      members: group.members.filter((one) => shown.has(one)).map((one) => memberWithin(one, room)),
      more: rest.length === 0 ? "" : REPORT.moreOfClass(rest.length, spanned(rest.map(({ number }) => number))),
    };
  });
}

function memberWithin(one: Member, { text }: Room): Member {
  return {
    ...one,
    place: shortened(one.place, text),
    what: shortened(one.what, text),
    todo: shortened(one.todo, text),
    below: shortened(one.below, Math.max(160, text)),
    // What was done about danger, and who was told, is told longer.
    safe: shortened(one.safe, Math.max(220, text)),
  };
}

/** Letters on a line of the page, and on one beside a name in two columns. */
const LINE = 104;
const HALF = 38;

/** About how many lines blocks take. */
function linesOf(blocks: readonly Block[]): number {
  return blocks.reduce((sum, block) => sum + linesOfBlock(block), 0);
}

function linesOfBlock(block: Block): number {
  switch (block.kind) {
    case "title":
      return 1 + 1.7 * linesIn(block.words, 62);
    case "heading":
      return block.level === 2 ? 1.9 : 1.7;
    case "paragraph":
      return block.as === "large" ? 2 : linesIn(block.words, LINE) + 0.35;
    case "list":
      return block.entries.reduce(
        (sum, entry) => sum + 0.35 + (isBlocks(entry) ? linesOf(entry) : linesIn(entry, LINE - 6)),
        0,
      );
    case "facts": {
      const half = Math.ceil(block.rows.length / 2);
      const tall = (rows: typeof block.rows) => rows.reduce((sum, [, value]) => sum + linesIn(value, HALF) + 0.1, 0);
      return Math.max(tall(block.rows.slice(0, half)), tall(block.rows.slice(half))) + 0.5;
    }
    case "columns":
      return Math.max(...block.columns.map(linesOf));
    case "frame":
      return linesOf(block.blocks) + 1;
    case "table":
      return (
        1.5 +
        block.rows.reduce(
          (sum, row) => sum + 0.5 + Math.max(...row.map((one) => (isBlocks(one) ? 1 : linesIn(one, 55)))),
          0,
        )
      );
    case "contents":
      return 4.5;
    default:
      return 0;
  }
}

function linesIn(words: Words, width: number): number {
  const letters = inlines(words).reduce((sum, one) => sum + ("text" in one ? one.text.length : 0), 0);
  return Math.max(1, Math.ceil(letters / width));
}
