import type { Block, Document } from "../document/model.ts";
import type { ReportInput } from "../input.ts";
import { REPORT } from "../locales/report-en.ts";
import type { sources } from "../pdf/sections/evidence.ts";
import type { calculations } from "../pdf/sections/findings.ts";
import type { frame } from "../pdf/sections/frame.ts";
import { workings } from "../pdf/sections/workings.ts";
import { sourceBlocks } from "./back.ts";
import { calculationBlocks } from "./findings.ts";
import { alert, heading, paragraph, quiet } from "./made.ts";

type Workings = ReturnType<typeof workings>;

interface About {
  readonly frame: ReturnType<typeof frame>;
  readonly calculations: ReturnType<typeof calculations>;
  readonly sources: ReturnType<typeof sources>;
}

/** What the report rests on: every argument whole, and the sources of the figures. */
export function workingsOf(input: ReportInput, { frame: f, calculations: made, sources: from }: About): Document {
  const d = workings(input);
  const [year = 0, month = 0, day = 0] = f.date;
  return {
    title: d.title,
    description: f.description,
    authors: f.authors,
    date: [year, month, day],
    running: {
      head: f.header,
      foot: f.footer,
      page: ["", ""],
      draft: f.draft,
      invented: f.invented,
      skip: REPORT.workingsPage.skip,
    },
    blocks: [
      { kind: "title", over: d.kind, words: d.title },
      paragraph(d.intro),
      { kind: "contents", title: REPORT.contentsTitle },
      ...d.places.flatMap(({ heading: place, findings }) => [heading(1, place), ...findings.flatMap(workingBlocks)]),
      ...calculationBlocks(made),
      ...sourceBlocks(from),
    ],
  };
}

function workingBlocks(one: Workings["places"][number]["findings"][number]): readonly Block[] {
  return [
    heading(2, `${one.title}: ${one.verdict}`, one.rule === "" ? {} : { beside: one.rule }),
    ...(one.memory === "" ? [] : [paragraph([alert(one.memory)])]),
    {
      kind: "argument",
      lines: one.argument.map(({ depth, tag, words, note }) => ({
        depth,
        tag,
        words: note === "" ? words : [{ text: words }, quiet(` – ${note}`)],
      })),
    },
  ];
}
