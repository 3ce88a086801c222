import { htmlOf, plainText } from "@good-grounds/report/document";
import { paperOf } from "@good-grounds/report/papers";
import { worksListCsv, worksListXlsx } from "@good-grounds/report/papers/works-list";
import fc from "fast-check";
import Papa from "papaparse";
import readXlsxFile from "read-excel-file/node";
import { describe, expect, test } from "vitest";
import { type Data, dataOf, EXAMPLES, inputOf, nothingInspected, said } from "./jobs.ts";

/** The table as another program reads it. */
function csvOf(data: Data): readonly string[][] {
  const read = Papa.parse<string[]>(worksListCsv(inputOf(data)).replace(/^\u{feff}/u, ""), {
    delimiter: ",",
    newline: "\r\n",
  });
  expect(read.errors).toEqual([]);
  return read.data.filter((row) => row.length > 1);
}

async function sheetOf(data: Data): Promise<readonly (readonly unknown[])[]> {
  const written = worksListXlsx(inputOf(data));
  const [sheet] = await readXlsxFile(Buffer.from(written));
  return sheet?.data ?? [];
}

const column = (rows: readonly (readonly unknown[])[], name: string) => {
  const at = rows[0]?.indexOf(name) ?? -1;
  expect(at).toBeGreaterThan(-1);
  return rows.slice(1).map((row) => row[at]);
};

describe("the list of works", () => {
  test.each(EXAMPLES)(
    "%s: every observation that needs work stands in document, CSV and workbook alike",
    async (name) => {
      const data = dataOf(name);
      const works = data.observations.filter((one: Data) => one.choice?.classification !== "none");
      const csv = csvOf(data);
      const sheet = await sheetOf(data);
      const words = said("works", inputOf(data));
      expect(column(csv, "Found").toSorted()).toEqual(works.map((one: Data) => one.what).toSorted());
      expect(column(sheet, "Found")).toEqual(column(csv, "Found"));
      expect(column(sheet, "No").map(String)).toEqual(column(csv, "No"));
      for (const { what } of works) expect(words).toContain(what);
    },
  );

  test("stands by board in the order of the file, worst first, then what is at no board", () => {
    const rows = csvOf(dataOf("farmhouse"));
    expect(column(rows, "Board")).toEqual(["House board", "Barn board", ""]);
    expect(column(csvOf(dataOf("terraced-house")), "Class")).toEqual(["C1", "C2", "C2", "FI", "C3", "C3", "C3"]);
  });

  test("has the remedy, what each other way leads to, device, cable, readings and photographs", () => {
    const words = said("works", inputOf(dataOf("terraced-house")));
    expect(words).toContain("To do: Remake the joint and repeat R1+R2 and Zs.");
    expect(words).toContain(
      "Cut back, remake and tighten the connection, and open others to compare. Leads to: no classification.",
    );
    expect(words).toContain("Circuit: Circuit 6, lights, first floor");
    expect(words).toContain("Device: 6 A, type B, BS EN 60898");
    expect(words).toContain("Cable: flat twin and cpc, live 1 mm², cpc 1 mm², 31 m");
    expect(words).toContain("R1+R2 1.60 Ω");
    expect(words).toContain("socket-found.jpg: broken socket as found");
    expect(words).toContain(
      "Done (what, and by what) | Test after the work (reading, instrument) | Name, date, signature",
    );
  });

  test("names every circuit whose check an observation answers", () => {
    const [row] = csvOf(dataOf("terraced-house")).filter((one) =>
      one.some((cell) => cell.startsWith("The two lighting")),
    );
    expect(row).toContain("Circuit 5, lights, ground floor\nCircuit 6, lights, first floor");
  });

  test("shows photographs that are at hand, with what they show", () => {
    const input = inputOf(dataOf("terraced-house"));
    const [hash = ""] = input.installation.file.observations.flatMap(({ photographs = [] }) => photographs);
    const image = { bytes: new Uint8Array([255, 216, 255]), type: "image/jpeg" } as const;
    const html = htmlOf(paperOf("works", { ...input, photographs: new Map([[hash, image]]) }));
    expect(html.match(/<img [^>]*>/g)).toEqual([expect.stringContaining('alt="loft hatch and boards"')]);
    expect(htmlOf(paperOf("works", input))).not.toContain("<img");
  });

  test("counts what the observation counts", () => {
    const data = dataOf("terraced-house", (changed) => {
      changed.observations[0].brings = { enclosures: [{ id: "socket", name: "double socket" }] };
      changed.observations[0].things = [{ thing: "socket", quantity: 14 }];
    });
    expect(column(csvOf(data), "Quantity")).toContain("14 × double socket");
    expect(said("works", inputOf(data))).toContain("Quantity: 14 × double socket");
  });

  test("of danger that was made safe it says so", () => {
    const words = said("works", inputOf(dataOf("terraced-house")));
    expect(words).toContain("Danger found, made safe before the inspector left");
    expect(words).not.toContain("Danger now");
  });

  test("an RCD ahead of the board is named beside a circuit that has none in its own", () => {
    expect(said("works", inputOf(dataOf("farmhouse")))).toContain(
      "RCD: none in this board; ahead of the board: RCD main, 100 mA, type A, time-delayed (S)",
    );
  });

  test("nothing found and nothing inspected are told apart", () => {
    const nothing = said("works", inputOf(dataOf("terraced-house", nothingInspected)));
    expect(nothing).toContain("this list says nothing of what may be wrong");
    const clean = said(
      "works",
      inputOf(
        dataOf("workshop", (data) => {
          data.observations = data.observations.filter((one: Data) => one.choice.classification === "none");
          data.inspected = data.inspected.map((one: Data) =>
            one.outcome === "observed" ? { item: one.item, outcome: "in-order" } : one,
          );
        }),
      ),
    );
    expect(clean).toContain("Nothing that needs work was recorded.");
    expect(clean).not.toContain("this list says nothing of what may be wrong");
  });
});

describe("no cell is taken as a formula", () => {
  const EVIL = [
    '=HYPERLINK("http://example.invalid","x")',
    "+1",
    "-2",
    "@SUM(A1)",
    " =1+1",
    "＝1+1",
    '"quoted", and\nbroken',
  ];

  test.each(EVIL)("%j", async (text) => {
    const place = text.replaceAll("\n", " ");
    const data = dataOf("terraced-house", (changed) => {
      changed.observations[0] = { ...changed.observations[0], what: text, remedy: text, place };
    });
    const csv = csvOf(data);
    for (const cell of csv.flat()) expect(cell).not.toMatch(/^\s*[=+\-@＝＋－＠]/u);
    expect(column(csv, "Found").map((cell) => String(cell).replace(/^'/, ""))).toContain(text);
    expect(column(await sheetOf(data), "Found")).toContain(text.trim());
  });

  test("whatever is written is read again as it was, row by row", () => {
    const words = fc
      .string({ unit: "grapheme", minLength: 1, maxLength: 30 })
      .filter((text) => /^[^\p{C}]+$/u.test(text));
    fc.assert(
      fc.property(words, (text) => {
        const data = dataOf("terraced-house", (changed) => {
          changed.observations[0].what = text;
        });
        const found = column(csvOf(data), "Found").map((cell) => String(cell).replace(/^'(?=\s*[=+\-@＝＋－＠])/u, ""));
        expect(found).toContain(text);
      }),
      { numRuns: 20 },
    );
  });
});

describe("for other programs", () => {
  test("the CSV is UTF-8 with its mark, and every line ends with CR LF", () => {
    const text = worksListCsv(inputOf(dataOf("terraced-house")));
    expect(text.startsWith("\u{feff}Report,Premises,No,Class")).toBe(true);
    expect(text.endsWith("\r\n")).toBe(true);
  });

  test("a text that turns others around is shown as what it is", async () => {
    const data = dataOf("terraced-house", (changed) => {
      changed.observations[0].what = "safe \u{202e}efas ton";
    });
    expect(column(csvOf(data), "Found")).toContain("safe [U+202E]efas ton");
    expect(column(await sheetOf(data), "Found")).toContain("safe [U+202E]efas ton");
  });

  test("the same list gives the same bytes", () => {
    const input = inputOf(dataOf("terraced-house"));
    expect(Buffer.from(worksListXlsx(input)).equals(Buffer.from(worksListXlsx(input)))).toBe(true);
  });

  test("sixty observations over several boards are all there", async () => {
    const data = dataOf("farmhouse", (changed) => {
      const { answers: _, ...one } = changed.observations[0];
      changed.observations = Array.from({ length: 60 }, (_, i) => ({
        ...one,
        id: `m${i}`,
        board: changed.boards[i % 2].id,
        what: `finding ${i}`,
      }));
      changed.inspected = changed.inspected.map((item: Data) =>
        item.outcome === "observed" ? { item: item.item, outcome: "in-order" } : item,
      );
    });
    expect(await sheetOf(data)).toHaveLength(61);
    const words = plainText(paperOf("works", inputOf(data)));
    for (let i = 0; i < 60; i++) expect(words).toContain(`Found: finding ${i}\n`);
  });
});
