import { parseWritten } from "@good-grounds/core";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { documentOf } from "../record/document.ts";
import type { Value } from "../record/entry.ts";
import { Record as JobRecord } from "../record/record.ts";
import { KEYPAD } from "../words/keypad.ts";
import { KINDS, type Kind, type KindId } from "./kinds.ts";
import { doubtAbout } from "./plausible.ts";
import { readStated } from "./read-stated.ts";
import { rejectedAt, rejecting } from "./rejected.ts";
import { replaced, valueAt, within } from "./spot.ts";
import { pressed, readTyped, splitShown, type TextKey } from "./typed.ts";

const typed = (text: string, kind: KindId = "continuity", top?: string) =>
  readTyped(text, KINDS[kind].symbols[0], kind, top);

describe("what is typed", () => {
  it.each([
    ["0.42", "continuity", "0.42 Ω"],
    ["0,42", "continuity", "0.42 Ω"],
    [".42", "continuity", "0.42 Ω"],
    ["0.", "continuity", "0 Ω"],
    ["00.40", "continuity", "0.40 Ω"],
    ["0.40", "continuity", "0.40 Ω"],
    ["420m", "continuity", "420 mΩ"],
    ["420 mohm", "continuity", "420 mΩ"],
    ["1.2 ohms", "continuity", "1.2 Ω"],
    [">999", "insulation", ">999 MΩ"],
    ["> 20 G", "insulation", ">20 GΩ"],
    ["450k", "insulation", "450 kΩ"],
    ["627", "insulation", "627 MΩ"],
    ["28,2", "time", "28.2 ms"],
    ["1.35", "fault-current", "1.35 kA"],
    ["850A", "fault-current", "850 A"],
    ["<0.05", "loop", "<0.05 Ω"],
    ["-4", "temperature", "-4 °C"],
  ] as const)("%s in %s is %s", (text, kind, shown) => {
    expect(typed(text, kind)).toEqual({ shown });
  });

  it.each([
    ["OL", "999 MΩ"],
    ["ol", "999 MΩ"],
    ["O.L.", "999 MΩ"],
    [">", "999 MΩ"],
  ])("%s is the end of the display", (text, top) => {
    expect(typed(text, "insulation", top)).toEqual({ shown: ">999 MΩ" });
    // Where the display ends is never made up.
    expect(typed(text, "continuity")).toHaveProperty("fault");
  });

  it.each([["abc"], ["1.2.3"], ["-1"], ["."], ["12 V"], ["1 2"]])("%s is told to be no reading", (text) => {
    expect(typed(text)).toHaveProperty("fault");
  });

  it("is nothing when it is blank", () => {
    expect(typed("  ")).toEqual({ empty: true });
  });

  it("never becomes text the file would refuse, whatever is typed", () => {
    void fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(..."0123456789.,<>- kMmGΩVAs°CohmOL") }),
        fc.constantFrom(...(Object.keys(KINDS) as KindId[])),
        (text, id) => {
          const result = typed(text, id, KINDS[id].tops[0]);
          if ("shown" in result)
            expect(parseWritten(result.shown, (KINDS[id] as Kind).unit)).not.toHaveProperty("code");
        },
      ),
    );
  });
});

describe("what is typed key by key", () => {
  it("is read as it stands on the display", () => {
    const keys = (...all: TextKey[]) => all.reduce(pressed, "");
    expect(keys("0", ".", "4", "2")).toBe("0.42");
    expect(keys(".", "4")).toBe("0.4");
    expect(keys("1", ".", "2", ".", "3")).toBe("1.23");
    expect(keys("1", "2", "back", "5")).toBe("15");
    expect(keys("4", "sign")).toBe("-4");
    expect(keys("4", "sign", "sign")).toBe("4");
    expect(keys("1", "clear")).toBe("");
  });

  it("is split for typing on as it was joined", () => {
    expect(splitShown(">999 MΩ", KINDS.insulation)).toEqual({ text: ">999", symbol: "MΩ" });
    expect(splitShown("0.42 ohm", KINDS.continuity)).toEqual({ text: "0.42 ohm", symbol: "Ω" });
  });
});

describe("a value that may have slipped", () => {
  const NO_FIGURE = /[0-9Ω]/u;

  it.each([
    ["4.2 Ω", "continuity", 0.42, "more-than-expected"],
    ["3.10 Ω", "continuity", 0.31, "more-than-expected"],
    ["0.042 Ω", "continuity", 0.42, "less-than-expected"],
    ["42 Ω", "loop", 0.45, "more-than-expected"],
    ["2.4 V", "voltage", undefined, "unusual"],
    ["282 ms", "time", 0.028, "more-than-expected"],
    ["135 kA", "fault-current", undefined, "unusual"],
  ] as const)(
    "%s in %s, about %s expected, is asked about and no other figure is offered",
    (shown, kind, expected, how) => {
      const doubt = doubtAbout(shown, kind, expected);
      expect(doubt).toBe(how);
      // Nothing that is shown with the question may hold a figure to take over.
      expect(JSON.stringify(doubt)).not.toMatch(NO_FIGURE);
      expect(KEYPAD.asks[how]).not.toMatch(NO_FIGURE);
    },
  );

  it.each([
    ["0.42 Ω", "continuity", 0.44],
    ["0.42 Ω", "continuity", undefined],
    ["1.30 Ω", "loop", 0.45],
    [">999 MΩ", "insulation", undefined],
    ["0.9 MΩ", "insulation", undefined],
    ["28.2 ms", "time", undefined],
  ] as const)("%s in %s, about %s expected, is not asked about", (shown, kind, expected) => {
    expect(doubtAbout(shown, kind, expected)).toBeUndefined();
  });
});

describe("a reading that is rejected because it is measured again", () => {
  const spot = { path: "boards/b/circuits/c/readings/r1r2" };
  const AT = "2026-11-01T10:31:00+00:00";

  it("is cleared at its place and stands in the record with its time, once for each time", () => {
    const record = new JobRecord();
    const write = ([path, value]: readonly [path: string, value: Value]) =>
      record.add(record.next("a", "", AT, path, value));
    write([spot.path, { shown: "3.10 Ω", at: "2026-11-01T10:30:00+00:00", by: "p" }]);
    for (const change of rejecting(record, spot, "x1", AT, "p")) write(change);
    expect(valueAt(record, spot)).toBeUndefined();
    expect(rejectedAt(record, "~rejected/x1")).toEqual({
      of: spot.path,
      reading: { shown: "3.10 Ω", at: "2026-11-01T10:30:00+00:00", by: "p" },
      at: AT,
      by: "p",
    });
    write([spot.path, { shown: "0.33 Ω" }]);
    for (const change of rejecting(record, spot, "x2", AT, "")) write(change);
    expect(rejectedAt(record, "~rejected/x2")).toEqual({ of: spot.path, reading: { shown: "0.33 Ω" }, at: AT });
    // Nothing of it gets into the inspection file as a reading.
    expect(JSON.stringify(documentOf(record))).not.toMatch(/3\.10|rejected/);
  });

  it("is taken out of the value it lies in, whose other members stay", () => {
    const record = new JobRecord();
    const rcd = { path: "boards/b/circuits/c/rcd", inner: ["own", "readings", "atRated"] };
    const own = { type: "A", readings: { atRated: { shown: "282 ms" }, button: "trips" } };
    record.add(record.next("a", "", AT, rcd.path, { own }));
    for (const [path, value] of rejecting(record, rcd, "x", AT, "")) record.add(record.next("a", "", AT, path, value));
    expect(record.value(rcd.path)).toEqual({ own: { type: "A", readings: { button: "trips" } } });
    expect(rejectedAt(record, "~rejected/x")?.reading.shown).toBe("282 ms");
  });

  it("is nothing where there is no reading", () => {
    expect(rejecting(new JobRecord(), spot, "x", AT, "p")).toEqual([]);
    expect(rejectedAt(new JobRecord(), "~rejected/x")).toBeUndefined();
  });
});

describe("a member within a value", () => {
  const rcd = { own: { type: "A", readings: { atRated: { shown: "28.2 ms" }, button: "trips" } } };
  it("is found, replaced and taken out without touching the others", () => {
    const inner = ["own", "readings", "atRated"];
    expect(within(rcd, inner)).toEqual({ shown: "28.2 ms" });
    expect(within("none", inner)).toBeUndefined();
    expect(replaced(rcd, inner, { shown: "30 ms" })).toEqual({
      own: { type: "A", readings: { atRated: { shown: "30 ms" }, button: "trips" } },
    });
    expect(replaced(rcd, inner, null)).toEqual({ own: { type: "A", readings: { button: "trips" } } });
    expect(replaced({ own: { readings: { atRated: { shown: "1 ms" } } } }, inner, null)).toBeNull();
    expect(replaced(undefined, ["rated"], "32 A")).toEqual({ rated: "32 A" });
  });
});

describe("a size that is typed", () => {
  it.each([
    ["2,5", "2.5 mm²"],
    ["2.5mm2", "2.5 mm2"],
    ["", null],
    ["10 to 15", { from: "10 mm²", to: "15 mm²" }],
    ["10-15", { from: "10 mm²", to: "15 mm²" }],
    ["about 10", undefined],
    [">10", undefined],
    ["-1", undefined],
    ["1 to 2 to 3", undefined],
  ] as const)("%s is %j", (text, value) => {
    expect(readStated(text, "mm²", "square-millimetre")).toEqual(value);
  });
});
