import { parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { LOOKS } from "./looks/index.ts";
import { lookAtOwnFigures } from "./own-figures.ts";

interface Given {
  readonly r1r2?: string;
  readonly zs?: string;
  readonly insulation?: readonly [string, string];
  readonly rcd?: string | { readonly id: string; readonly time: string; readonly five?: string };
  readonly length?: number;
  readonly points?: number;
  readonly temperature?: string;
  readonly times?: readonly [r1r2: string, zs: string, insulation: string];
  readonly ring?: Readonly<Record<"r1" | "rn" | "r2", string>> & { readonly points: readonly string[] };
}

const DAY = "2026-10-20";
const at = (time: string | undefined) => (time === undefined ? {} : { at: `${DAY}T${time}:00+01:00` });
const shown = (text: string | undefined, time?: string) =>
  text === undefined ? undefined : { shown: text, ...at(time) };

/** A circuit of 1.5 mm² with 1 mm² protective conductor, 29 mΩ/m, or a ring of 2.5 mm² with 1.5 mm². */
function circuit(given: Given, i: number): object {
  const { ring, rcd, times = [] } = given;
  const device = typeof rcd === "string" ? { time: rcd } : rcd;
  const own = {
    ...(device !== undefined && "id" in device ? { id: device.id } : {}),
    readings: {
      atRated: shown(device?.time),
      ...(device !== undefined && "five" in device ? { atFive: shown(device.five) } : {}),
    },
  };
  return {
    id: `c${i + 1}`,
    designation: String(i + 1),
    description: `lights ${i + 1}`,
    shape: ring === undefined ? "radial" : "ring",
    points: given.points ?? 4,
    ...(device === undefined ? {} : { rcd: { own } }),
    cable: {
      material: "copper",
      line: ring === undefined ? "1.5 mm²" : "2.5 mm²",
      cpc: ring === undefined ? "1 mm²" : "1.5 mm²",
      cpcArrangement: "in-cable",
      ...(given.length === undefined ? {} : { length: `${given.length} m` }),
    },
    readings: {
      temperature: shown(given.temperature),
      r1r2: shown(given.r1r2, times[0]),
      zs: shown(given.zs, times[1]),
      insulationLiveLive: shown(given.insulation?.[0], times[2]),
      insulationLiveEarth: shown(given.insulation?.[1], times[2]),
      ...(ring === undefined
        ? {}
        : {
            r1: shown(ring.r1),
            rn: shown(ring.rn),
            r2: shown(ring.r2),
            crossLineNeutral: ring.points.map((text, k) => ({ point: `socket ${k + 1}`, reading: shown(text) })),
          }),
    },
  };
}

function resolved(circuits: readonly Given[], more: object = {}) {
  const data = {
    format: "good-grounds-inspection",
    version: 3,
    id: "job",
    edition: "2018+A4",
    inspectedOn: DAY,
    brief: {
      client: { name: "Client" },
      premises: { address: ["1 Lane"] },
      use: "dwelling",
      tenure: "owner-occupied",
      nation: "england",
      purpose: "test",
      records: [],
    },
    visits: [{ date: DAY }],
    people: [],
    instruments: [
      {
        id: "m",
        kind: "tester",
        serial: "1",
        checked: "2026-03-01",
        accuracy: { continuity: "±(2 % + 2 digits)", loop: "±(5 % + 3 digits)", insulation: "±(3 % + 1 digit)" },
      },
    ],
    extent: { covered: "all", sampling: [] },
    limitations: [],
    supply: { earthing: "TN-C-S", bonding: [], readings: { ze: { shown: "0.20 Ω" } } },
    boards: [
      {
        id: "b",
        name: "Board",
        fedFrom: "supply",
        readings: { zdb: { shown: "0.20 Ω" } },
        circuits: circuits.map(circuit),
      },
    ],
    inspected: [],
    observations: [],
    photographs: [],
    signatures: [],
    ...more,
  };
  const parsed = parseInspectionData(JSON.parse(JSON.stringify(data)));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues, null, 1));
  return parsed.file;
}

const looked = (circuits: readonly Given[], more: object = {}) =>
  lookAtOwnFigures(resolveInstallation(resolved(circuits, more)));
const shownFor = (circuits: readonly Given[], more: object = {}) =>
  looked(circuits, more).toConfirm.map(({ check }) => check);

/** Lengths of the cables in m, and readings that scatter as measured ones do: R1+R2 of 29.3 mΩ/m, Zs off the sum. */
const LENGTHS = [12, 31, 19, 44, 26, 37, 15, 23, 52];
const OFF = [0.02, -0.03, 0.01, 0.04, -0.01, 0.03, -0.02, 0.02, -0.04];
const HONEST: readonly Given[] = LENGTHS.map((length, i) => ({
  length,
  r1r2: `${(0.0293 * length).toFixed(2)} Ω`,
  zs: `${(0.2 + 0.0293 * length + (OFF[i] as number)).toFixed(2)} Ω`,
}));
const with_ = (changes: Readonly<Record<number, Given>>): readonly Given[] =>
  HONEST.map((given, i) => ({ ...given, ...changes[i] }));

test("readings that scatter as measured ones do show nothing", () => {
  const { toConfirm, notLookedAt } = looked(HONEST);
  expect(toConfirm).toEqual([]);
  // What there was nothing to look at for is named with its reason.
  expect(notLookedAt.map(({ check }) => check)).toContain("copied-schedule");
  for (const { because } of notLookedAt) expect(because.length).toBeGreaterThan(5);
});

describe("readings that are sums", () => {
  const sums = HONEST.map(({ length = 0, r1r2 }) => ({
    length,
    r1r2,
    zs: `${(0.2 + Number.parseFloat(r1r2 ?? "")).toFixed(2)} Ω`,
  }));

  test("to the last digit on every circuit are to be confirmed, with the count", () => {
    const [first] = looked(sums as readonly Given[]).toConfirm;
    expect(first?.check).toBe("zs-sum");
    expect(first?.numbers[1]?.value).toBe("9");
    // At most 0.25 for each of nine: below 0.25⁹ · 2 with room to spare for the looser bound on the larger readings.
    expect(first?.chance).toBeLessThan(1e-4);
  });

  test("with R1+R2 written down after Zs are said to be worked back", () => {
    const later = sums.map((one, i) => ({ ...one, times: ["14:30", `10:0${i}`, "09:30"] as const }));
    expect(shownFor(later as readonly Given[])).toContain("r1r2-difference");
    expect(shownFor(later as readonly Given[])).not.toContain("zs-sum");
  });

  test("on a few circuits are chance", () => {
    expect(shownFor(with_({ 0: { zs: "0.55 Ω" }, 1: { zs: "1.11 Ω" }, 2: { zs: "0.76 Ω" } }))).toEqual([]);
  });
});

describe("rows", () => {
  const swap = (a: number, b: number) =>
    with_({
      [a]: { r1r2: HONEST[b]?.r1r2 as string, zs: HONEST[b]?.zs as string },
      [b]: { r1r2: HONEST[a]?.r1r2 as string, zs: HONEST[a]?.zs as string },
    });

  test("that changed places are found, and both are named", () => {
    const [first] = looked(swap(0, 3)).toConfirm;
    expect(first?.check).toBe("swapped-rows");
    expect(first?.words).toContain("circuit 1 (lights 1) and circuit 4 (lights 4)");
  });

  test("that slipped by one are found", () => {
    const slipped = HONEST.map((given, i) => ({
      ...given,
      r1r2: HONEST[(i + 1) % 9]?.r1r2 as string,
      zs: HONEST[(i + 1) % 9]?.zs as string,
    }));
    expect(shownFor(slipped)[0]).toBe("shifted-rows");
  });

  test("with a loose joint, in R1+R2 and Zs alike, are a fault and no slip of the pen", () => {
    expect(shownFor(with_({ 4: { r1r2: "2.96 Ω", zs: "3.15 Ω" } }))).toEqual([]);
    expect(shownFor(with_({ 2: { r1r2: "5.6 Ω", zs: "5.81 Ω" } }))).toEqual([]);
  });

  test("whose decimal point slipped are found either way", () => {
    for (const r1r2 of ["7.6 Ω", "0.08 Ω"]) {
      const [first] = looked(with_({ 4: { r1r2 } })).toConfirm;
      expect(first?.check).toBe("slipped-decimal");
      expect(first?.words).toContain("circuit 5 (lights 5): R1+R2");
    }
    expect(shownFor(with_({ 4: { zs: "9.5 Ω" } }))).toEqual(["slipped-decimal"]);
  });

  test("with R1+R2 of the row above, against cable and Zs, are found", () => {
    const [first] = looked(with_({ 4: { r1r2: HONEST[3]?.r1r2 as string } })).toConfirm;
    expect(first?.check).toBe("repeated-row");
  });

  test("too short for their points are found, unless read so", () => {
    expect(shownFor([{ length: 30, points: 20, r1r2: "0.02 Ω" }])).toEqual(["impossible-length"]);
    expect(shownFor([{ length: 30, points: 20, r1r2: "0.88 Ω" }])).toEqual([]);
  });
});

describe("insulation resistances", () => {
  const values = ["612", "433", "871", "529", "745", "318", "906", "667", "284"].map((n) => `${n} MΩ`);
  const each = (of: (i: number) => readonly [string, string]) =>
    HONEST.map((given, i) => ({ ...given, insulation: of(i) }));

  test("that differ, or stand at the end of the range, are as they should be", () => {
    expect(shownFor(each((i) => [values[i] as string, ">999 MΩ"]))).toEqual([]);
    expect(shownFor(each(() => [">999 MΩ", ">999 MΩ"]))).toEqual([]);
    expect(shownFor(each(() => ["200 MΩ", "200 MΩ"]))).toEqual([]);
  });

  test("that are one finite value on several circuits, or twice on one, are found", () => {
    expect(shownFor(each((i) => [i % 2 === 0 ? "187 MΩ" : (values[i] as string), ">999 MΩ"]))).toEqual([
      "identical-insulation",
    ]);
    expect(shownFor(each((i) => [values[i] as string, values[i] as string]))).toEqual(["identical-insulation"]);
  });

  test("with two ends of range from one instrument are found, from two instruments not", () => {
    const mixed = each((i) => [i < 4 ? ">999 MΩ" : ">200 MΩ", values[i] as string]);
    expect(shownFor(mixed)).toEqual(["mixed-range-ends"]);
    const second = { id: "m2", kind: "tester", serial: "2" };
    const first = { id: "m", kind: "tester", serial: "1" };
    expect(shownFor(mixed, { instruments: [first, second] })).not.toContain("mixed-range-ends");
  });
});

describe("RCD times", () => {
  const times = ["21.4", "30.2", "25.9", "19.8", "28.3", "33.1", "22.7", "26.6", "24.0"].map((n) => `${n} ms`);
  const each = (of: (i: number) => NonNullable<Given["rcd"]>) => HONEST.map((given, i) => ({ ...given, rcd: of(i) }));

  test("of separate devices that differ are as they should be; one alike is chance", () => {
    expect(shownFor(each((i) => times[i] as string))).toEqual([]);
    expect(shownFor(each((i) => (i === 1 ? (times[0] as string) : (times[i] as string))))).toEqual([]);
  });

  test("that are all alike, at five times too, or differ for one device, are found", () => {
    expect(shownFor(each(() => "23.4 ms"))).toEqual(["rcd-times"]);
    expect(shownFor(each((i) => ({ id: `r${i}`, time: times[i] as string, five: times[i] as string })))).toEqual([
      "rcd-times",
    ]);
    expect(shownFor(each((i) => ({ id: "r1", time: times[i] as string })))).toEqual(["rcd-times"]);
    expect(shownFor(each(() => ({ id: "r1", time: "23.4 ms" })))).toEqual([]);
  });
});

describe("patterns", () => {
  test("even steps are found in ten circuits, not in three", () => {
    const steps = Array.from({ length: 10 }, (_, i) => ({ r1r2: `${(0.41 + 0.02 * i).toFixed(2)} Ω` }));
    expect(shownFor(steps)).toEqual(["even-steps"]);
    expect(shownFor(steps.slice(0, 4))).toEqual([]);
  });

  test("sister circuits that are one value are found, those that scatter not", () => {
    const sisters = (of: (i: number) => string) =>
      Array.from({ length: 16 }, (_, i) => ({ length: 20, r1r2: "0.59 Ω", zs: of(i) }));
    expect(shownFor(sisters(() => "0.81 Ω"))).toContain("little-spread");
    const scattered = Array.from({ length: 16 }, (_, i) => ({
      length: 20,
      r1r2: `${(0.57 + 0.01 * ((i * 7) % 5)).toFixed(2)} Ω`,
      zs: `${(0.76 + 0.01 * ((i * 5) % 9)).toFixed(2)} Ω`,
    }));
    expect(shownFor(scattered)).toEqual([]);
  });

  test("last digits of 0 and 5 only are found from 50 readings on", () => {
    const fives = Array.from({ length: 60 }, (_, i) => ({ r1r2: `${(0.3 + 0.05 * ((i * 11) % 37)).toFixed(2)} Ω` }));
    expect(shownFor(fives)).toContain("last-digits");
    expect(shownFor(fives.slice(0, 49))).not.toContain("last-digits");
    const free = Array.from({ length: 60 }, (_, i) => ({ r1r2: `${(0.3 + 0.01 * ((i * 37) % 181)).toFixed(2)} Ω` }));
    expect(shownFor(free)).not.toContain("last-digits");
  });

  test("rings of exact shares are found, measured ones not", () => {
    // 0.42 · 2.5/1.5 = 0.70; quarters 0.21 and 0.28. 0.48: 0.80, 0.24, 0.32.
    const exact = [
      { r1r2: "0.28 Ω", ring: { r1: "0.42 Ω", rn: "0.42 Ω", r2: "0.70 Ω", points: Array(8).fill("0.21 Ω") } },
      { r1r2: "0.32 Ω", ring: { r1: "0.48 Ω", rn: "0.48 Ω", r2: "0.80 Ω", points: Array(8).fill("0.24 Ω") } },
    ];
    expect(shownFor(exact)).toEqual(["ring-shares"]);
    const read = [
      {
        r1r2: "0.29 Ω",
        ring: { r1: "0.42 Ω", rn: "0.43 Ω", r2: "0.69 Ω", points: ["0.21 Ω", "0.22 Ω", "0.20 Ω", "0.22 Ω", "0.21 Ω"] },
      },
      {
        r1r2: "0.31 Ω",
        ring: { r1: "0.48 Ω", rn: "0.47 Ω", r2: "0.81 Ω", points: ["0.24 Ω", "0.23 Ω", "0.25 Ω", "0.23 Ω", "0.24 Ω"] },
      },
    ];
    expect(shownFor(read)).toEqual([]);
  });

  test("20 °C everywhere in January is found, 12 °C or June not", () => {
    const warm = with_(Object.fromEntries(HONEST.map((_, i) => [i, { temperature: "20 °C" }])));
    expect(shownFor(warm, { inspectedOn: "2026-01-14" })).toContain("same-temperature");
    expect(shownFor(warm, { inspectedOn: "2026-06-14" })).not.toContain("same-temperature");
    const cold = with_(Object.fromEntries(HONEST.map((_, i) => [i, { temperature: "12.0 °C" }])));
    expect(shownFor(cold, { inspectedOn: "2026-01-14" })).not.toContain("same-temperature");
  });
});

describe("time, place and instrument", () => {
  const timed = (of: (i: number) => NonNullable<Given["times"]>) =>
    HONEST.map((given, i) => ({ ...given, times: of(i) }));
  const two = (n: number) => String(n).padStart(2, "0");
  const usual = timed((i) => [`09:${two(10 + i)}`, `11:${two(10 + i)}`, `09:${two(30 + i)}`]);
  const visit = (arrived: string, left: string) => ({
    visits: [{ date: DAY, arrived: `${DAY}T${arrived}:00+01:00`, left: `${DAY}T${left}:00+01:00` }],
  });

  test("dead first, live after, within the visit, is as it should be", () => {
    expect(shownFor(usual, visit("09:00", "12:00"))).toEqual([]);
    // The same hours as Greenwich sees them.
    const zulu = [{ date: DAY, arrived: `${DAY}T08:00:00Z`, left: `${DAY}T11:00:00Z` }];
    expect(shownFor(usual, { visits: zulu })).toEqual([]);
  });

  test("readings after leaving, or on another day, are found", () => {
    expect(shownFor(usual, visit("09:00", "11:12"))).toEqual(["outside-visit"]);
    expect(shownFor(usual, { visits: [{ date: "2026-10-19" }] })).toEqual(["outside-visit"]);
  });

  test("a live reading between the dead ones of its circuit is found", () => {
    const insulationLast = timed((i) => [`09:${two(10 + i)}`, `10:${two(10 + i)}`, `11:${two(10 + i)}`]);
    expect(shownFor(insulationLast.map((one) => ({ ...one, insulation: [">999 MΩ", ">999 MΩ"] as const })))).toEqual([
      "live-between-dead",
    ]);
  });

  test("readings faster than tests can be done are found", () => {
    const quick = timed(() => ["09:10", "09:11", "09:10"]).map((one) => ({
      ...one,
      insulation: [">999 MΩ", ">999 MΩ"] as const,
    }));
    expect(shownFor(quick)).toContain("pace");
    expect(shownFor(usual)).not.toContain("pace");
  });

  test("an instrument that is missing, overdue or checked later is found", () => {
    const meter = (checked: string) => ({ instruments: [{ id: "m", kind: "tester", serial: "1", checked }] });
    expect(shownFor(HONEST, { instruments: [] })).toEqual(["instruments"]);
    expect(shownFor(HONEST, meter("2025-09-01"))).toEqual(["instruments"]);
    expect(shownFor(HONEST, meter("2026-11-01"))).toEqual(["instruments"]);
    expect(shownFor(HONEST, meter("2025-10-21"))).toEqual([]);
  });

  test("the same words for different rooms are found, short ones and the same room not", () => {
    const seen = (what: string, places: readonly string[]) => ({
      observations: places.map((place, i) => ({ id: `o${i}`, place, what })),
    });
    const long = "Socket-outlet beside the window is loose and its front is cracked.";
    expect(shownFor(HONEST, seen(long, ["kitchen", "bedroom"]))).toEqual(["same-words"]);
    expect(shownFor(HONEST, seen(long, ["kitchen", "Kitchen"]))).toEqual([]);
    expect(shownFor(HONEST, seen("Cover missing.", ["kitchen", "bedroom"]))).toEqual([]);
  });
});

describe("against an earlier file", () => {
  const insulation = ["612", "433", "871", "529", "745", "318", "906", "667", "284"].map(
    (n) => [`${n} MΩ`, ">999 MΩ"] as const,
  );
  const earlier = HONEST.map((given, i) => ({ ...given, insulation: insulation[i] as readonly [string, string] }));
  const moved = (digits: (i: number) => number) =>
    earlier.map((given, i) => ({
      ...given,
      zs: `${(Number.parseFloat(given.zs ?? "") + digits(i) / 100).toFixed(2)} Ω`,
      insulation: [`${300 + 61 * i} MΩ`, ">999 MΩ"] as const,
    }));
  const against = (now: readonly Given[]) =>
    lookAtOwnFigures(resolveInstallation(resolved(now, { id: "later" })), resolved(earlier)).toConfirm.map(
      ({ check }) => check,
    );

  test("the same schedule is found", () => {
    expect(against(earlier)).toContain("copied-schedule");
  });
  test("Zs moved by one constant is found", () => {
    expect(against(moved(() => 3))).toContain("copied-schedule");
  });
  test("readings taken anew are not", () => {
    expect(against(moved((i) => [2, -1, 3, 0, -3, 1, 4, -2, 1][i] as number))).not.toContain("copied-schedule");
  });
});

describe("what is shown", () => {
  const worst = HONEST.map((given) => ({ ...given, insulation: ["187 MΩ", "187 MΩ"] as const, rcd: "23.4 ms" }));
  const notes = [
    { check: "rcd-times", note: "One device serves all." },
    { check: "even-steps", note: "Lamps in a row." },
  ];

  test("stands heaviest first, with test, numbers, innocent causes and its notes; other notes are kept apart", () => {
    const { toConfirm, otherNotes } = looked(worst, { ownFigures: notes, instruments: [] });
    const weights = toConfirm.map(({ weight }) => weight);
    expect(weights).toEqual([...weights].sort((a, b) => b - a));
    expect(toConfirm.length).toBeGreaterThanOrEqual(3);
    for (const { test: words, numbers, innocent } of toConfirm) {
      expect(words.length * numbers.length * innocent.length).toBeGreaterThan(0);
    }
    expect(toConfirm.find(({ check }) => check === "rcd-times")?.notes).toEqual(["One device serves all."]);
    expect(otherNotes).toEqual([{ check: "even-steps", title: "Readings go by even steps", note: "Lamps in a row." }]);
  });

  test("accuses nobody, and every check has an id of its own and innocent causes", () => {
    expect(new Set(LOOKS.map(({ id }) => id)).size).toBe(LOOKS.length);
    for (const { title, test: words, innocent, assumed } of LOOKS) {
      expect([title, words, ...innocent, ...assumed].join(" ")).not.toMatch(
        /fake|fraud|invent|forge|false|cheat|dishonest/i,
      );
      expect(innocent.length).toBeGreaterThan(0);
    }
  });

  test("does not depend on when it is asked, and no reading makes it fail", () => {
    const digits = fc.tuple(fc.constantFrom("", ">", "<"), fc.nat({ max: 999_999 }), fc.integer({ min: 0, max: 4 }));
    const ohms = (unit: string) => digits.map(([bound, n, d]) => `${bound}${(n / 10 ** d).toFixed(d)} ${unit}`);
    const given = fc.record(
      {
        r1r2: ohms("Ω"),
        zs: ohms("Ω"),
        insulation: fc.tuple(ohms("MΩ"), ohms("kΩ")),
        rcd: ohms("ms"),
        length: fc.nat({ max: 400 }),
        temperature: ohms("°C"),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(fc.array(given, { maxLength: 12 }), (circuits) => {
        const once = looked(circuits as readonly Given[]);
        expect(looked(circuits as readonly Given[])).toEqual(once);
        for (const { chance, weight } of once.toConfirm) {
          expect(chance === null || (chance >= 0 && chance <= 1)).toBe(true);
          expect(Number.isFinite(weight)).toBe(true);
        }
      }),
      { numRuns: 150 },
    );
  });
});
