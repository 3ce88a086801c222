import { htmlOf } from "@good-grounds/report/document";
import { pdfOf } from "@good-grounds/report/document/pdf";
import { PAPER_KINDS, type PaperKind, paperOf } from "@good-grounds/report/papers";
import { worksListCsv } from "@good-grounds/report/papers/works-list";
import { describe, expect, test } from "vitest";
import { type Data, dataOf, EXAMPLES, inputOf, nothingInspected, said } from "./jobs.ts";

/** Pages of a PDF, as its page tree counts them. */
function pagesOf(pdf: Uint8Array): number {
  const text = Buffer.from(pdf).toString("latin1");
  return [...text.matchAll(/\/Type\s*\/Page(?![a-zA-Z])/g)].length;
}

const pages = (kind: PaperKind, data: Data) => pagesOf(pdfOf(paperOf(kind, inputOf(data))));
const danger = (data: Data) => data.observations.find((one: Data) => one.choice.classification === "C1");

/** Nothing was found in what was looked at. */
function noObservations(data: Data): void {
  data.observations = [];
  data.inspected = data.inspected.map((one: Data) =>
    one.outcome === "observed" ? { item: one.item, outcome: "in-order" } : one,
  );
}

const SECRET = "I may have read circuit 4 twice";

describe("what is for the inspector alone, and what is in doubt, is in no paper", () => {
  test.each(EXAMPLES)("%s", (name) => {
    const input = inputOf(
      dataOf(name, (data) => {
        data.ownFigures = [{ check: "repeated-values", note: SECRET }];
      }),
    );
    const all = [
      ...PAPER_KINDS.flatMap((kind) => [said(kind, input), htmlOf(paperOf(kind, input))]),
      worksListCsv(input),
    ];
    for (const words of all) {
      expect(words).not.toContain(SECRET);
      expect(words).not.toMatch(/from memory|to be checked against|common practice/i);
      expect(words).not.toMatch(/undefined|NaN|\[object/);
    }
  });
});

describe("every paper says so where", () => {
  const unsigned = () => inputOf(dataOf("terraced-house", (data) => (data.signatures = [])));
  const open = () => inputOf(dataOf("terraced-house"));
  const issued = () => {
    const { draft: _, ...rest } = open();
    return rest;
  };

  test.each(["letter", "works", "tenant"] as const)("%s: nobody signed, or something stands open", (kind) => {
    expect(said(kind, unsigned())).toMatch(/DRAFT: not issued[\s\S]+Nobody has signed/);
    expect(said(kind, open())).toMatch(/DRAFT: not issued[\s\S]+Something that decides is still open/);
    expect(said(kind, issued())).not.toMatch(/DRAFT|draft/);
  });

  test("what a circuit is does not wait for what is to be decided of it, but for somebody who signs", () => {
    expect(said("chart", unsigned())).toContain("DRAFT: not issued");
    expect(said("chart", open())).not.toMatch(/DRAFT|draft/);
  });

  test("danger is told before anything is signed", () => {
    expect(said("notice", unsigned())).toContain("This notice holds all the same.");
    expect(said("notice", unsigned())).not.toMatch(/DRAFT|draft/);
  });

  test.each(PAPER_KINDS)("%s: the example is invented", (kind) => {
    expect(said(kind, open())).toContain("INVENTED EXAMPLE");
  });

  test.each(["letter", "works", "notice", "tenant"] as const)("%s: nothing was inspected", (kind) => {
    expect(said(kind, inputOf(dataOf("terraced-house", nothingInspected)))).toMatch(
      /does not say that (it is safe|there is no danger)|says nothing of what may be wrong/,
    );
  });

  test.each(["letter", "works", "notice", "tenant"] as const)("%s: the earthing conductor may be off", (kind) => {
    const input = inputOf(
      dataOf("terraced-house", (data) => {
        data.earthingOff = [{ off: { at: "2026-10-06T09:30:00+01:00" } }];
      }),
    );
    expect(said(kind, input)).toMatch(/earth wire may still be off|earthing conductor (is still|was) disconnected/);
  });
});

describe("the notice of danger", () => {
  test("says what, where, what was done, who was told when, the reply and what not to do", () => {
    const words = said("notice", inputOf(dataOf("terraced-house")));
    expect(words).toContain("What was found: The front of the socket was broken");
    expect(words).toContain(
      "Where: Living room, socket beside the window; Consumer unit; circuit 1 sockets, ground floor",
    );
    expect(words).toContain("What was done: Socket removed, conductors joined and enclosed");
    expect(words).toContain("Told: 6 October 2026, 10:41: tenant at once; landlord by telephone.");
    expect(words).toContain("Reply: landlord will have the socket replaced this week");
    expect(words).toContain("What not to do: Leave it as it was left.");
  });

  test("of danger that nobody made safe says that it is dangerous now, and why nobody was told", () => {
    const words = said(
      "notice",
      inputOf(
        dataOf("terraced-house", (data) => {
          delete danger(data).madeSafe;
          danger(data).untold = "nobody was at home";
        }),
      ),
    );
    expect(words).toContain("Take it that it is dangerous now.");
    expect(words).toContain("Nobody was told before the inspector left: nobody was at home.");
    expect(words).toContain("Do not touch it and do not use it.");
  });

  test("tells of danger that the facts show and the inspector chose lower, and says which is which", () => {
    const words = said(
      "notice",
      inputOf(
        dataOf("terraced-house", (data) => {
          danger(data).choice = {
            classification: "C2",
            reason: "A cupboard stands before it, and nobody comes to it without moving it.",
            by: "inspector",
          };
        }),
      ),
    );
    expect(words).toContain(
      "The inspector chose C2. Reason: A cupboard stands before it, and nobody comes to it without moving it.",
    );
    expect(words).toContain("By the facts that are written down it is danger now (C1)");
  });

  test("tells of danger that the record shows and nobody wrote of; so do letter and note", () => {
    const house = inputOf(dataOf("terraced-house"));
    const opened = {
      kind: "opened",
      topic: "polarity-reversed",
      title: "Polarity reversed",
      possible: ["C1"],
      places: [["boards", 0, "circuits", 2]],
    } as const;
    const input = { ...house, outcome: { ...house.outcome, points: [opened, ...house.outcome.points] } };
    expect(said("notice", input)).toContain("By what the file records C1 follows");
    expect(said("notice", input)).toContain("Take it that it is dangerous now.");
    expect(said("letter", input)).toContain(
      "One of them is danger now by the facts, and nobody wrote of it. Call us at once.",
    );
    expect(said("tenant", input)).toContain("Do not use: Consumer unit, circuit 3.");
  });

  test("tells of danger that nobody classified", () => {
    const words = said(
      "notice",
      inputOf(
        dataOf("terraced-house", (data) => {
          delete danger(data).choice;
        }),
      ),
    );
    expect(words).toContain("The inspector has not classified this.");
  });

  test("that names none proves nothing", () => {
    const words = said("notice", inputOf(dataOf("workshop")));
    expect(words).toContain("No danger now (C1) is recorded in this inspection.");
    expect(words).toContain("That says nothing of what was not seen or not tested.");
  });

  test.each([
    ["england", "call the network operator on 105"],
    ["scotland", "call the network operator on 105"],
    ["northern-ireland", "on the number that stands at the meter or on the bill"],
  ])("%s: %s", (nation, words) => {
    const input = inputOf(dataOf("terraced-house", (data) => Object.assign(data.brief, { nation })));
    expect(said("notice", input)).toContain(words);
    expect(said("tenant", input).includes("call 105")).toBe(nation !== "northern-ireland");
  });
});

describe("the circuit chart", () => {
  test("has every circuit of every board with its device and RCD, and lines to write on", () => {
    const data = dataOf("farmhouse");
    const words = said("chart", inputOf(data));
    for (const board of data.boards) {
      expect(words).toContain(`Circuits of ${board.name}`);
      for (const { designation, description } of board.circuits)
        expect(words).toMatch(new RegExp(`^${designation} \\| ${description} \\| .+ \\| .+ \\|`, "mi"));
    }
    expect(words.match(/^ \| {2}\| {2}\| {2}\| $/gm)?.length).toBeGreaterThanOrEqual(8);
    expect(words).toContain("Fed from: House board, circuit 6");
    expect(words).toContain("RCD ahead of it: RCD main 100 mA type A");
  });

  test("a device of which nothing is recorded is not left blank", () => {
    const words = said(
      "chart",
      inputOf(
        dataOf("terraced-house", (data) => {
          const [circuit] = data.boards[0].circuits;
          delete circuit.device;
          circuit.rcd = { notKnown: "limited", reason: "not accessible" };
        }),
      ),
    );
    expect(words).toMatch(/^1 \| Sockets, ground floor \| not recorded.* \| not recorded \|/m);
  });

  test("warns of every other source", () => {
    const input = inputOf(
      dataOf("terraced-house", (data) => {
        data.supply.otherSources = [{ id: "roof", kind: "photovoltaic" }];
      }),
    );
    expect(said("chart", input)).toContain("More than one source: solar panels may feed this installation as well.");
  });

  test("a board stands on a sheet of its own", () => {
    expect(pages("chart", dataOf("farmhouse"))).toBe(2);
    expect(pages("chart", dataOf("workshop"))).toBe(3);
  });

  test("a board without circuits says so", () => {
    const input = inputOf(
      dataOf("farmhouse", (data) => {
        data.boards[1].circuits = [];
        noObservations(data);
      }),
    );
    expect(said("chart", input)).toContain("No circuits are recorded on this board.");
  });
});

describe("the note for who lives there", () => {
  test("has nothing of the owner, whoever wrote it", () => {
    const input = inputOf(
      dataOf("terraced-house", (data) => {
        data.brief.client = { name: "Quentin Ownerson", address: ["99 Faraway Lane"] };
        const one = danger(data);
        one.place = "living room, where Mr Ownerson keeps his desk";
        one.madeSafe.done = "Quentin Ownerson of 99 Faraway Lane broke it and was asked to leave it.";
        one.madeSafe.reply = "Ownerson will not pay";
      }),
    );
    const words = said("tenant", input);
    expect(words).not.toMatch(/Ownerson|Quentin|Faraway/);
    expect(words).toContain("Made safe: Living room, where Mr the owner keeps his desk.");
  });

  test("does not tell who is to blame in the inspector's words", () => {
    const input = inputOf(
      dataOf("terraced-house", (data) => {
        danger(data).what = "The tenant hit the socket with a chair.";
      }),
    );
    expect(said("tenant", input)).not.toContain("chair");
  });

  test("danger that is there is not to be used", () => {
    const words = said(
      "tenant",
      inputOf(
        dataOf("terraced-house", (data) => {
          delete danger(data).madeSafe;
        }),
      ),
    );
    expect(words).toContain("Do not use: Living room, socket beside the window.");
    expect(words).toContain("Do not touch it or use it. Keep children away.");
  });

  test("while points stand open it does not say that the rest is safe", () => {
    const words = said("tenant", inputOf(dataOf("terraced-house")));
    expect(words).toContain("nobody can say yet that all of it is safe");
    expect(words).not.toContain("You may go on using");
  });

  test("where it is known that there is no RCD, it does not ask to look for a button", () => {
    const bare = dataOf("terraced-house", (data) => {
      for (const board of data.boards) {
        board.rcds = [];
        for (const circuit of board.circuits) circuit.rcd = "none";
      }
      noObservations(data);
    });
    expect(said("tenant", inputOf(bare))).not.toContain("Test the safety switch");
    expect(said("tenant", inputOf(dataOf("terraced-house")))).toContain("Press it twice a year.");
  });
});

describe("on paper", () => {
  /** Sixty observations with the longest places and words that a file may hold. */
  const crowded = (data: Data) => {
    const one = danger(data);
    data.observations = Array.from({ length: 60 }, (_, i) => ({
      id: `m${i}`,
      board: one.board,
      place: `${"a very long name of a place ".repeat(10)}${i}`,
      what: "It was found like this, and more than that is to be said of it. ".repeat(30),
      choice: { ...one.choice, classification: (["C1", "C2", "FI", "C3"] as const)[i % 4] },
      remedy: "Put it right by all that it takes. ".repeat(20),
    }));
    data.inspected = data.inspected.map((item: Data) => ({ item: item.item, outcome: "in-order" }));
  };

  test.each(EXAMPLES)("%s: the letter takes one or two pages, the note one", (name) => {
    expect(pages("letter", dataOf(name))).toBeLessThanOrEqual(2);
    expect(pages("tenant", dataOf(name))).toBe(1);
  });

  test("so they do with sixty observations", () => {
    const data = dataOf("terraced-house", crowded);
    expect(pages("letter", data)).toBeLessThanOrEqual(2);
    expect(pages("tenant", data)).toBe(1);
    expect(pages("works", data)).toBeGreaterThan(10);
  });

  test.each(PAPER_KINDS)("%s: names in any script, with signs and turned letters, are laid out", (kind) => {
    const name = "שלום 👩‍🔧 \u{202e}mora 東京 Ωμέγα";
    const data = dataOf("terraced-house", (changed) => {
      changed.signatures = [];
      changed.brief.premises.address = [name];
      changed.brief.client.name = name;
      changed.boards[0].name = name;
      changed.boards[0].circuits[0].description = name;
      danger(changed).place = name;
      changed.people[0].firm = name;
    });
    const paper = paperOf(kind, inputOf(data));
    expect(pagesOf(pdfOf(paper))).toBeGreaterThan(0);
    expect(htmlOf(paper)).toContain("שלום");
  });

  test.each(PAPER_KINDS)("%s: nothing found, nothing inspected is laid out", (kind) => {
    expect(pages(kind, dataOf("terraced-house", nothingInspected))).toBeGreaterThan(0);
  });

  test("the same paper gives the same bytes", () => {
    const paper = paperOf("letter", inputOf(dataOf("farmhouse")));
    expect(Buffer.from(pdfOf(paper)).equals(Buffer.from(pdfOf(paper)))).toBe(true);
  });
});
