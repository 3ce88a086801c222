import { describe, expect, test } from "vitest";
import { changed, EXAMPLE, inputOf, nearlyNothing } from "../../../../../outside/reports/example.ts";
import { Drawings } from "../drawings.ts";
import { firstPage } from "./first-page.ts";

const pageOf = (text: string) => firstPage(inputOf(text), new Drawings());

describe("the first page", () => {
  test("gives the dates of the law that come first, and points to the others", () => {
    const { law } = pageOf(EXAMPLE);
    expect(law[0]).toBe("Work and investigations done: by 2 November 2026");
    expect(law.at(-1)).toMatch(/^\d+ more in “What the law asks”\.$/);
  });

  test("puts danger first, then what could become dangerous, what is not settled, and improvements", () => {
    expect(pageOf(EXAMPLE).groups.map(({ code }) => code)).toEqual(["C1", "C2", "FI", "C3"]);
  });

  test("numbers the observations through in that order", () => {
    const numbers = pageOf(EXAMPLE).groups.flatMap(({ members }) => members.map(({ number }) => number));
    expect(numbers).toEqual([1, 2, 3, 4, 5, 6, 7]);
  });

  test("counts every class in one line, and what has none yet", () => {
    expect(pageOf(EXAMPLE).counts).toBe("C1 1, C2 2, C3 3, FI 1.");
    const text = changed(({ observations }) => {
      delete observations[1]?.choice;
    });
    expect(pageOf(text).counts).toMatch(/^C1 \d, C2 \d, C3 \d, FI \d; not classified yet 1\.$/);
    expect(pageOf(changed(nearlyNothing)).counts).toBe("C1 0, C2 0, C3 0, FI 0.");
  });

  test("says each observation in its first sentence and cuts a very long one at a word", () => {
    const text = changed(({ observations: [first, second] }) => {
      Object.assign(first as object, { what: "The lid is off at 1.5 mm. It was put back.", place: "hall" });
      Object.assign(second as object, { what: "word ".repeat(200).trim() });
    });
    const members = pageOf(text).groups.flatMap(({ members: all }) => all);
    expect(members.find(({ place }) => place === "Hall")?.what).toBe("The lid is off at 1.5 mm.");
    expect(members.find(({ what }) => what.startsWith("word"))?.what).toMatch(/word …$/);
  });

  test("shows the stated and the derived outcome side by side and says plainly when they differ", () => {
    const same = pageOf(EXAMPLE);
    expect([same.stated, same.derived, same.differs]).toEqual(["Unsatisfactory", "Unsatisfactory", ""]);
    const other = pageOf(changed((file) => Object.assign(file.conclusion as object, { outcome: "satisfactory" })));
    expect([other.stated, other.derived]).toEqual(["Satisfactory", "Unsatisfactory"]);
    expect(other.differs).toContain("The inspector states “Satisfactory”");
  });

  test("says of a C1 without a record that nobody knows whether it was made safe", () => {
    const text = changed(({ observations }) => {
      for (const one of observations) delete one.madeSafe;
    });
    const [danger] = pageOf(text).groups;
    expect(danger?.members[0]?.safe).toBe("Not recorded: whether it was made safe, and who was told.");
  });

  test("puts an observation without a classification before the improvements", () => {
    const text = changed(({ observations }) => {
      delete observations[1]?.choice;
    });
    const page = pageOf(text);
    expect(page.groups.map(({ code }) => code)).toEqual(["C1", "C2", "FI", "?", "C3"]);
    expect(page.groups[3]?.mark).toBe("");
  });

  test("does not call an inspection satisfactory in which nothing was looked at", () => {
    const page = pageOf(changed(nearlyNothing));
    expect(page.derived).toBe("Not determined yet");
    expect(page["derived-open"]).toBe(true);
    expect(page.points).toEqual([
      "No test of any circuit is recorded.",
      "No item of the inspection is recorded as looked at.",
    ]);
    expect(page.stated).toBe("Not stated");
  });

  test("names every capacity nobody has signed in", () => {
    const text = changed((file) => {
      file.signatures = (file.signatures as unknown[]).slice(0, 1);
    });
    const [, authorised] = pageOf(text).who;
    expect(authorised?.[1]).toEqual({ words: "Not signed yet: a draft until it is", open: true });
  });

  test("lists a few limits and says how many more there are", () => {
    const text = changed((file) => {
      file.limitations = Array.from({ length: 20 }, (_, i) => ({
        id: `l${i}`,
        kind: "agreed",
        what: `Room ${i}`,
        why: "Locked.",
      }));
    });
    // Not covered, twenty limitations, one sample: seven shown, fifteen left.
    expect(pageOf(text).unseen).toContain("15 further limits stand in “Extent, sampling and limitations”.");
  });

  test("does not tell in the summary what a limitation tells", () => {
    // The summary of the example names the concealed cables and the loft; so do two of its limitations.
    const { unseen } = pageOf(EXAMPLE);
    expect(unseen.filter((one) => /concealed cables/i.test(one))).toHaveLength(1);
    expect(unseen.filter((one) => /loft/i.test(one))).toHaveLength(1);
    const more = pageOf(
      changed((file) => Object.assign(file.extent as object, { notCovered: "Concealed cables; portable equipment." })),
    );
    expect(more.unseen[0]).toBe("Portable equipment.");
  });

  test("says whom the inspector told of danger, when, and what they said", () => {
    const [danger] = pageOf(EXAMPLE).groups;
    expect(danger?.members[0]?.safe).toMatch(
      /Told at 10:41: tenant at once; landlord by telephone\. Reply: landlord will have the socket replaced this week\.$/,
    );
  });

  test("does not call made safe what was refused", () => {
    const text = changed(({ observations }) => {
      for (const one of observations)
        if (one.madeSafe !== undefined) Object.assign(one.madeSafe as object, { done: "Refused." });
    });
    expect(pageOf(text).groups[0]?.members[0]?.safe).toMatch(/^Done about it on 6 October 2026: Refused\./);
  });

  test("says why nobody was told, and that it is not recorded as made safe", () => {
    const text = changed(({ observations }) => {
      for (const one of observations)
        if (one.madeSafe !== undefined) {
          delete one.madeSafe;
          one.untold = "The house was empty";
        }
    });
    expect(pageOf(text).groups[0]?.members[0]?.safe).toBe(
      "Not recorded as made safe. Nobody was told before leaving: The house was empty.",
    );
  });

  test("warns before all else of an earthing conductor that by the record is still off", () => {
    const off = { at: "2026-10-06T09:20:00+01:00" };
    const pageWith = (times: object[]) =>
      pageOf(
        changed((file) => {
          file.earthingOff = times;
        }),
      ).alarm;
    expect(pageWith([])).toBe("");
    expect(pageWith([{ off, on: { at: "2026-10-06T09:31:00+01:00" } }])).toBe("");
    expect(pageWith([{ off, on: { at: "2026-10-06T09:31:00+01:00" } }, { off }])).toMatch(
      /disconnected on 6 October 2026, 09:20 and not that it was connected again/,
    );
  });

  test("says how long the inspector was there, or in how many visits", () => {
    expect(pageOf(EXAMPLE).facts[0]).toEqual(["Inspected", "6 October 2026, 09:05 to 12:10"]);
    const text = changed((file) => {
      (file.visits as object[]).push({ date: "2026-10-07" });
    });
    expect(pageOf(text).facts[0]?.[1]).toBe("6 October 2026, in 2 visits");
  });

  test("names many observations of a classification by the first and the last", () => {
    const text = changed((file) => {
      const danger = file.observations.find(({ id }) => id === "o6") as object;
      for (const id of ["d1", "d2", "d3"]) file.observations.push({ ...danger, id });
    });
    expect(pageOf(text).because).toMatch(/^6 observations make it so: C1 \(1 to 4\), C2 \(5, 6\)\./);
  });
});
