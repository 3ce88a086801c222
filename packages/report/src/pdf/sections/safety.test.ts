import { PRECAUTIONS } from "@good-grounds/inspection";
import { describe, expect, test } from "vitest";
import { changed, EXAMPLE, inputOf } from "../../../../../outside/reports/example.ts";
import { safety } from "./safety.ts";

const at = (time: string) => `2026-10-06T${time}:00+01:00`;
const sectionOf = (edit: Parameters<typeof changed>[0]) => safety(inputOf(changed(edit)));
/** What stands beside each step, by its words. */
const steps = ({ columns }: ReturnType<typeof safety>) =>
  new Map(columns.flatMap((stages) => stages.flatMap(({ rows }) => rows.map(([step, said]) => [step?.words, said]))));
const rowOf = ({ rows }: ReturnType<typeof safety>, label: string) =>
  rows.find(([name]) => name.startsWith(label))?.[1];

describe("steps for safety", () => {
  test("where none is recorded, one sentence says so", () => {
    const section = safety(inputOf(EXAMPLE));
    expect(section.none).toMatchObject({ open: true, words: expect.stringContaining("No step is recorded") });
    expect(section.columns).toEqual([]);
  });

  test("stand each once, with the clock; one person and one day stand once for all", () => {
    const section = sectionOf((file) => {
      file.precautions = PRECAUTIONS.map((step, i) => ({
        step,
        outcome: step === "leave.alarms" ? "not-applicable" : "done",
        at: at(`09:${10 + i}`),
        by: "inspector",
      }));
    });
    expect(section.intro.words).toContain("by J. Sample (invented) on 6 October 2026");
    expect(steps(section).size).toBe(27);
    expect(steps(section).get("Proved dead, every conductor to every other and to earth")).toEqual({
      words: "09:18",
      open: false,
    });
    expect(steps(section).get("Alarms on")?.words).toMatch(/^does not arise, 09:\d\d$/);
  });

  test("one that is not recorded is a gap, and several people or days stand beside each", () => {
    const section = sectionOf((file) => {
      file.precautions = [
        { step: "covers.isolated", outcome: "done", at: at("09:10"), by: "inspector" },
        { step: "covers.dead", outcome: "done", at: "2026-10-07T08:00:00+01:00" },
        { step: "covers.dead", outcome: "done", at: at("09:12"), by: "inspector" },
      ];
    });
    expect(section.intro.words).not.toContain("J. Sample");
    const said = steps(section);
    expect(said.get("Isolated at a point that cuts every live conductor")?.words).toBe(
      "6 October 2026, 09:10, J. Sample (invented)",
    );
    expect(said.get("Proved dead, every conductor to every other and to earth")?.words).toBe(
      "7 October 2026, 08:00, by nobody named; 6 October 2026, 09:12, J. Sample (invented)",
    );
    expect(said.get("Tester proved")).toEqual({ words: "not recorded", open: true });
  });
});

describe("the earthing conductor", () => {
  test("stands with both times, who, and how long it was off", () => {
    const said = rowOf(
      sectionOf((file) => {
        file.earthingOff = [{ off: { at: at("09:20"), by: "inspector" }, on: { at: at("09:31") } }];
      }),
      "Earthing conductor",
    );
    expect(said?.open).toBe(false);
    expect(said?.words).toContain("Disconnected 6 October 2026, 09:20 by J. Sample (invented); connected again");
    expect(said?.words).toContain("09:31 (11 min).");
  });

  test("that is still off by the record is a gap beside the time it came off", () => {
    const said = rowOf(
      sectionOf((file) => {
        file.earthingOff = [{ off: { at: at("09:20") } }];
      }),
      "Earthing conductor",
    );
    expect(said?.parts?.filter(({ open }) => open).map(({ words }) => words)).toEqual([
      "that it was connected again is NOT recorded.",
    ]);
  });

  test("times that run backwards are not made a length of time", () => {
    const said = rowOf(
      sectionOf((file) => {
        file.earthingOff = [{ off: { at: at("09:20") }, on: { at: at("09:10") } }];
      }),
      "Earthing conductor",
    );
    expect(said?.words).toContain("a time before the first");
  });

  test("without times and without a method of Ze, both are gaps", () => {
    const said = rowOf(
      sectionOf((file) => {
        const { readings } = file.supply as { readings: { ze: { method?: string } } };
        delete readings.ze.method;
      }),
      "Earthing conductor",
    );
    expect(said).toEqual({
      words: "No time of disconnecting it is recorded. Whether Ze was read with it disconnected is not recorded.",
      open: true,
    });
  });
});

describe("live tests", () => {
  type Circuits = { circuits: { liveBeforeContinuity?: unknown; readings: Record<string, unknown> }[] }[];

  test("before the protective conductor was proved stand with their reason", () => {
    const section = sectionOf((file) => {
      const [board] = file.boards as Circuits;
      Object.assign(board?.circuits[3] ?? {}, {
        liveBeforeContinuity: { reason: "The shower cannot be disconnected", at: at("11:05"), by: "inspector" },
      });
    });
    expect(rowOf(section, "Tested live")).toEqual({
      words:
        "Consumer unit, 4 shower 8.5 kW, 6 October 2026, 11:05 by J. Sample (invented): The shower cannot be disconnected.",
      open: false,
    });
  });

  test("without a reading of the protective conductor and without a reason are named", () => {
    const section = sectionOf((file) => {
      const [board] = file.boards as Circuits;
      delete board?.circuits[2]?.readings.r1r2;
    });
    const said = rowOf(section, "Tested live");
    expect(said?.open).toBe(true);
    expect(said?.words).toContain("no reason recorded: Consumer unit, 3 cooker.");
  });

  test.each([["45 Ω"], [">1999 Ω"], ["0.00 Ω"]])("on a reading of %s, which proves nothing, are named", (shown) => {
    const section = sectionOf((file) => {
      const [board] = file.boards as Circuits;
      Object.assign(board?.circuits[2]?.readings ?? {}, { r1r2: { shown } });
    });
    const said = rowOf(section, "Tested live");
    expect(said).toMatchObject({
      open: true,
      words: expect.stringContaining("no reason recorded: Consumer unit, 3 cooker."),
    });
  });

  test("with every protective conductor measured there was none", () => {
    expect(rowOf(safety(inputOf(EXAMPLE)), "Tested live")).toMatchObject({
      open: false,
      words: expect.stringMatching(/^No such test/),
    });
  });
});

describe("danger found", () => {
  const dangers = (edit: (danger: Record<string, unknown>) => void) =>
    rowOf(
      sectionOf(({ observations }) => {
        for (const one of observations) if (one.madeSafe !== undefined) edit(one);
      }),
      "Danger found",
    );

  test("names whom the inspector told and when", () => {
    expect(dangers(() => undefined)).toEqual({
      words: "Observation 1: told on 6 October 2026, 10:41: tenant at once; landlord by telephone.",
      open: false,
    });
  });

  test("says why nobody was told, or that it is not recorded", () => {
    expect(
      dangers((danger) => {
        delete danger.madeSafe;
        danger.untold = "The house was empty";
      })?.words,
    ).toBe("Observation 1: nobody told before leaving. The house was empty.");
    expect(
      dangers((danger) => {
        delete danger.madeSafe;
      }),
    ).toEqual({ words: "Observation 1: who was told is not recorded.", open: true });
  });
});
