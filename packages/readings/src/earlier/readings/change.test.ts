import { resolveInstallation } from "@good-grounds/inspection";
import { describe, expect, test } from "vitest";
import { smallestFile } from "../../../../../outside/files/arbitrary-file.ts";
import { thenAndNow } from "../then-and-now.ts";

interface Told {
  readonly day: string;
  readonly zs?: string;
  readonly ze?: string;
  readonly r1r2?: string;
  readonly insulation?: string;
  readonly voltage?: "250 V" | "500 V";
  readonly serial?: string;
  readonly accuracy?: string | null;
  readonly temperature?: string;
  readonly ra?: string;
  readonly next?: string;
}

function inspection(told: Told) {
  const { day, serial = "A", accuracy = "±(2 % + 2 digits)" } = told;
  const readings = {
    ...(told.zs === undefined ? {} : { zs: { shown: told.zs } }),
    ...(told.r1r2 === undefined ? {} : { r1r2: { shown: told.r1r2 } }),
    ...(told.insulation === undefined ? {} : { insulationLiveEarth: { shown: told.insulation } }),
    ...(told.voltage === undefined ? {} : { insulationVoltage: told.voltage }),
    ...(told.temperature === undefined ? {} : { temperature: { shown: told.temperature } }),
  };
  const ranges =
    accuracy === null
      ? {}
      : { accuracy: { continuity: accuracy, loop: accuracy, insulation: accuracy, electrode: accuracy } };
  return resolveInstallation({
    ...smallestFile(),
    id: `day-${day}`,
    inspectedOn: day,
    instruments: [{ id: "m", kind: "tester", serial, ...ranges }],
    supply: {
      bonding: [],
      readings: {
        ...(told.ze === undefined ? {} : { ze: { shown: told.ze } }),
        ...(told.ra === undefined ? {} : { ra: { shown: told.ra } }),
      },
    },
    boards: [
      {
        id: "b",
        name: "Board",
        fedFrom: "supply",
        circuits: [{ id: "c", designation: "1", description: "cooker", load: "cooker", points: 1, readings }],
      },
    ],
    ...(told.next === undefined ? {} : { conclusion: { nextInspection: { by: told.next, reason: "five years" } } }),
  });
}

const [THEN, NOW] = ["2021-10-05", "2026-10-06"];
function changes(past: Omit<Told, "day">, now: Omit<Told, "day">) {
  const result = thenAndNow(inspection({ day: NOW, ...now }), [inspection({ day: THEN, ...past })]);
  const [earlier] = result.earlier;
  const all = [...(earlier?.supply ?? []), ...(earlier?.circuits.flatMap(({ readings }) => readings) ?? [])];
  return Object.fromEntries(all.map((one) => [one.reading, one]));
}

describe("a reading, then and now", () => {
  test("is the same within what the instruments may give, and has changed beyond it", () => {
    const temperature = "20 °C";
    expect(changes({ r1r2: "1.00 Ω", temperature }, { r1r2: "1.05 Ω", temperature }).r1r2?.change).toBe("within");
    expect(changes({ r1r2: "1.00 Ω", temperature }, { r1r2: "1.25 Ω", temperature }).r1r2?.change).toBe("up");
    expect(changes({ r1r2: "1.25 Ω", temperature }, { r1r2: "1.00 Ω", temperature }).r1r2?.change).toBe("down");
  });

  test("a difference of temperature is no change, and a change it hides is one", () => {
    // Copper: 1 + 0.004 (θ − 20): 1.00 Ω at 20 °C is 1.12 Ω at 50 °C.
    const warm = changes({ r1r2: "10.00 Ω", temperature: "20 °C" }, { r1r2: "11.20 Ω", temperature: "50 °C" }).r1r2;
    expect(warm?.change).toBe("within");
    expect(warm?.amount).toBeCloseTo(0, 9);
    expect(
      changes({ r1r2: "10.00 Ω", temperature: "20 °C" }, { r1r2: "10.00 Ω", temperature: "70 °C" }).r1r2?.change,
    ).toBe("down");
    // Without temperatures 10 % may be nothing but the season.
    const unknown = changes({ r1r2: "10.00 Ω" }, { r1r2: "11.00 Ω" }).r1r2;
    expect(unknown?.change).toBe("within");
    expect(unknown?.notes).toContain("temperature-assumed");
  });

  test("one instrument tells smaller changes than two", () => {
    const same = changes({ r1r2: "10.00 Ω", temperature: "20 °C" }, { r1r2: "10.00 Ω", temperature: "20 °C" }).r1r2;
    const other = changes(
      { r1r2: "10.00 Ω", temperature: "20 °C", serial: "B" },
      { r1r2: "10.00 Ω", temperature: "20 °C" },
    ).r1r2;
    expect(same?.standard).toBeLessThan(other?.standard ?? 0);
    expect(same?.notes).toContain("same-instrument");
    expect(other?.notes).not.toContain("same-instrument");
  });

  test("where no accuracy was stated a usual instrument's is taken, and that is said", () => {
    const between = (now: string) => changes({ r1r2: "1.00 Ω", accuracy: null }, { r1r2: now, accuracy: null }).r1r2;
    // ±(2 % + 3 digits) twice, leads and contacts: a standard deviation of about 0.05 Ω.
    expect([between("1.08 Ω")?.change, between("1.30 Ω")?.change]).toEqual(["within", "up"]);
    expect(between("1.08 Ω")?.notes).toContain("accuracy-assumed");
  });

  test("what the supply changes is told of the supply and not of the circuit", () => {
    const temperature = "20 °C";
    const both = changes({ zs: "1.00 Ω", ze: "0.20 Ω", temperature }, { zs: "1.40 Ω", ze: "0.60 Ω", temperature });
    expect([both.ze?.change, both.zs?.change]).toEqual(["up", "within"]);
    const circuit = changes({ zs: "1.00 Ω", ze: "0.20 Ω", temperature }, { zs: "1.80 Ω", ze: "0.60 Ω", temperature });
    expect([circuit.ze?.change, circuit.zs?.change]).toEqual(["up", "up"]);
    const hidden = changes({ zs: "1.00 Ω", ze: "0.60 Ω", temperature }, { zs: "1.00 Ω", ze: "0.20 Ω", temperature });
    expect(hidden.zs?.change).toBe("up");
    const open = changes({ zs: "1.00 Ω", temperature }, { zs: "1.40 Ω", ze: "0.60 Ω", temperature });
    expect([open.zs?.change, open.zs?.why]).toEqual(["cannot-say", "supply-not-known"]);
  });

  test("the end of a display is at least its figure and never the figure", () => {
    const told = (past: string, now: string) => {
      const one = changes({ insulation: past }, { insulation: now }).insulationLiveEarth;
      return [one?.change, one?.why];
    };
    expect(told(">999 MΩ", ">999 MΩ")).toEqual(["cannot-say", "display-ended"]);
    expect(told(">999 MΩ", "400 MΩ")).toEqual(["cannot-say", "display-ended"]);
    expect(told(">999 MΩ", "2.00 MΩ")).toEqual(["down", null]);
    expect(told("2.00 MΩ", ">999 MΩ")).toEqual(["up", null]);
    expect(told(">200 MΩ", ">999 MΩ")).toEqual(["cannot-say", "display-ended"]);
    // Above 2 MΩ then, 400 MΩ now: it may have been 400 MΩ all along.
    expect(told(">2.00 MΩ", "400 MΩ")).toEqual(["cannot-say", "display-ended"]);
    expect(told("200 MΩ", "100 MΩ")).toEqual(["within", null]);
    expect(told("200 MΩ", "0.00 MΩ")).toEqual(["down", null]);
  });

  test("what was not taken, or tested at another voltage, cannot be told", () => {
    expect(changes({ r1r2: "1.00 Ω" }, {}).r1r2).toMatchObject({ change: "cannot-say", why: "not-taken-now" });
    expect(changes({}, { r1r2: "1.00 Ω" }).r1r2).toMatchObject({ change: "cannot-say", why: "not-taken-then" });
    expect(changes({}, {}).r1r2).toBeUndefined();
    const voltages = changes({ insulation: "200 MΩ", voltage: "250 V" }, { insulation: "1.00 MΩ", voltage: "500 V" });
    expect(voltages.insulationLiveEarth).toMatchObject({ change: "cannot-say", why: "test-voltages-differ" });
  });

  test("an inspection that is not earlier is refused", () => {
    expect(() => thenAndNow(inspection({ day: THEN }), [inspection({ day: NOW })])).toThrow(RangeError);
    expect(() => thenAndNow(inspection({ day: NOW }), [inspection({ day: NOW })])).toThrow(RangeError);
  });
});

describe("trends", () => {
  const over = (readings: readonly (readonly [day: string, told: Omit<Told, "day">])[]) => {
    const [last, ...earlier] = [...readings].reverse().map(([day, told]) => inspection({ day, ...told }));
    if (last === undefined) throw new Error("no reading");
    return thenAndNow(last, earlier).trends;
  };
  const next = "2031-10-06";

  test("insulation that falls by decades meets its limit, with dates in order", () => {
    const [trend] = over([
      ["2016-10-06", { insulation: "200 MΩ" }],
      ["2021-10-06", { insulation: "40.0 MΩ" }],
      ["2026-10-06", { insulation: "8.00 MΩ", next }],
    ]);
    expect(trend).toMatchObject({ direction: "falling", twoPoints: false, reading: "insulationLiveEarth" });
    // Exactly a fifth in 5 years: 8 MΩ becomes 1.6 MΩ.
    expect((trend?.projected.at(-1)?.value ?? 0) / 1.6e6).toBeCloseTo(1, 2);
    expect(trend?.crossing).toMatchObject({ expected: null, latest: null });
    expect(trend?.crossing?.earliest).toMatch(/^20(2[6-9]|3[01])-/);
    const [steeper] = over([
      ["2016-10-06", { insulation: "300 MΩ" }],
      ["2021-10-06", { insulation: "30.0 MΩ" }],
      ["2026-10-06", { insulation: "3.00 MΩ", next }],
    ]);
    const { earliest = "", expected = "" } = steeper?.crossing ?? {};
    expect(earliest < (expected ?? "")).toBe(true);
    // A tenth in 5 years: a third after log10(3) × 5 = 2.4 years.
    expect(expected).toMatch(/^2029-0[12]/);
  });

  test("two readings are a change and no forecast, however far they are apart", () => {
    const [two] = over([
      ["2021-10-06", { insulation: "200 MΩ" }],
      ["2026-10-06", { insulation: "2.00 MΩ", next }],
    ]);
    expect(two).toMatchObject({ twoPoints: true, projected: [], crossing: null });
    expect(two?.perYear?.value).toBeCloseTo(0.01 ** (1 / 5), 2);
    const [again] = over([
      ["2016-10-06", { insulation: "300 MΩ" }],
      ["2021-10-06", { insulation: "200 MΩ" }],
      ["2026-10-06", { insulation: "2.00 MΩ", next }],
    ]);
    expect(again?.twoPoints).toBe(false);
    expect(again?.projected.length).toBeGreaterThan(0);
  });

  test("a display that ended holds the line up but is not its figure", () => {
    const bounded = over([
      ["2016-10-06", { insulation: ">999 MΩ" }],
      ["2021-10-06", { insulation: "100 MΩ" }],
      ["2026-10-06", { insulation: "20.0 MΩ", next }],
    ])[0];
    const taken = over([
      ["2016-10-06", { insulation: "999 MΩ" }],
      ["2021-10-06", { insulation: "100 MΩ" }],
      ["2026-10-06", { insulation: "20.0 MΩ", next }],
    ])[0];
    expect(bounded?.twoPoints).toBe(true);
    expect(bounded?.perYear?.low).toBeLessThan(taken?.perYear?.low ?? 0);
    const only = over([
      ["2021-10-06", { insulation: ">999 MΩ" }],
      ["2026-10-06", { insulation: ">999 MΩ", next }],
    ])[0];
    expect(only).toMatchObject({ perYear: null, projected: [], crossing: null });
    const one = over([
      ["2021-10-06", { insulation: ">999 MΩ" }],
      ["2026-10-06", { insulation: "50.0 MΩ", next }],
    ])[0];
    expect(one).toMatchObject({ perYear: null, crossing: null });
    expect(one?.projected).toEqual([]);
  });

  test("without a next inspection nothing is carried on", () => {
    const [trend] = over([
      ["2021-10-06", { ra: "100 Ω" }],
      ["2026-10-06", { ra: "200 Ω" }],
    ]);
    expect(trend).toMatchObject({ reading: "ra", worse: "rising", projected: [], crossing: null });
  });
});
