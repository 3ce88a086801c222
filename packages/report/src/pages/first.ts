import type { Block, Inline, Words } from "../document/model.ts";
import type { Drawings } from "../pdf/drawings.ts";
import type { firstPage } from "../pdf/sections/first-page.ts";
import { alert, bullets, heading, paragraph, paragraphIf, said, strong, table } from "./made.ts";
import { onePage } from "./one-page.ts";

type First = ReturnType<typeof firstPage>;
type Group = First["groups"][number];
type Member = Group["members"][number];

/** The page a landlord can read on its own: it is one page, however much was found. */
export function firstBlocks(d: First, drawings: Drawings): readonly Block[] {
  return onePage(d, (cut) => blocksOf(cut, drawings));
}

function blocksOf(d: First, drawings: Drawings): readonly Block[] {
  return [
    { kind: "title", over: d.kind, words: d.address },
    ...(d.invented === "" ? [] : [paragraph([alert(d.invented)])]),
    factsOf(d),
    outcome(d),
    ...(d.alarm === "" ? [] : [frame("alert", paragraph(d.alarm))]),
    heading(2, d["todo-title"], { ...UNLISTED, beside: d.counts }),
    ...(d.groups.length === 0 ? [paragraph(d.nothing)] : d.groups.flatMap((group) => groupBlocks(group, drawings))),
    ...paragraphIf(d["no-work"]),
    paragraph(
      [strong(`${d["law-title"]}: `), { text: d.law.join(" · ") }, { text: ` ${d["law-note"]}`, as: "quiet" }],
      "small",
    ),
    heading(2, d["unseen-title"], UNLISTED),
    ...bullets(d.unseen),
    heading(2, d["next-title"], UNLISTED),
    paragraph(d.next),
    ...paragraphIf(d.within),
    heading(2, d["who-title"], UNLISTED),
    table(d["who-head"], [34, "1fr", 42], d.who),
    paragraph(d.challenge, "small"),
    { kind: "contents", title: d["contents-title"] },
    { kind: "break" },
  ];
}

const UNLISTED = { unlisted: true } as const;

function factsOf(d: First): Block {
  const [name = "", before = "", after = ""] = d.length;
  return {
    kind: "facts",
    columns: 2,
    names: 26,
    rows: [
      ...d.facts.map(([label, value]) => [label ?? "", value ?? ""] as const),
      [name, [{ pages: [before, after] }]],
    ],
  };
}

function outcome(d: First): Block {
  const side = (label: string, words: string, open: boolean): readonly Block[] => [
    paragraph(label, "small"),
    paragraph(open ? [{ text: words, as: "gap" }] : words, "large"),
  ];
  return frame(
    "stated",
    {
      kind: "columns",
      columns: [
        side(d["stated-label"], d.stated, d["stated-open"]),
        side(d["derived-label"], d.derived, d["derived-open"]),
      ],
    },
    ...(d.differs === "" ? [] : [frame("alert", paragraph(d.differs))]),
    paragraph(d.because),
    ...pointsOf(d["points-title"], d.points),
    ...pointsOf(d["below-title"], d.below),
    ...pointsOf(d["dismissed-title"], d.dismissed),
    ...pointsOf(d["investigate-title"], d.investigate),
    ...(d.summary === "" ? [] : [paragraph([strong(d["summary-label"]), { text: d.summary }])]),
  );
}

/** One point stands on the line of its title. */
function pointsOf(title: string, points: readonly string[]): readonly Block[] {
  if (title === "") return [];
  if (points.length === 1) return [paragraph([strong(title), { text: ` ${points[0]}` }])];
  return [paragraph(title, "lead"), ...bullets(points)];
}

function groupBlocks(group: Group, drawings: Drawings): readonly Block[] {
  const { mark, code, heading: words, members, more } = group;
  return [
    heading(
      3,
      words,
      mark === "" ? UNLISTED : { ...UNLISTED, mark: { svg: drawings.svg(mark), alt: code, width: 6.4 } },
    ),
    { kind: "list", numbers: members.map(({ number }) => String(number)), entries: members.map(memberWords) },
    ...paragraphIf(more),
  ];
}

function memberWords(one: Member): Words {
  const { place, what, todo, below, safe } = one;
  const more: readonly Inline[] = [
    ...(below === "" ? [] : [strong(` ${below}`)]),
    ...(safe === "" ? [] : [alert(` ${safe}`)]),
  ];
  return [
    strong(place),
    { text: `. ${what} ` },
    strong(one["todo-label"]),
    ...(said({ words: todo, open: one["todo-open"] }) as readonly Inline[]),
    ...more,
  ];
}

function frame(as: "stated" | "alert" | "aside", ...blocks: readonly Block[]): Block {
  return { kind: "frame", as, blocks };
}
