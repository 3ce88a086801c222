import { readFileSync } from "node:fs";
import { assemble } from "@good-grounds/assembly";
import {
  type InspectionFile,
  parseInspectionData,
  printInspection,
  resolveInstallation,
} from "@good-grounds/inspection";
import { diagnoseRings, lookAtRings } from "@good-grounds/readings";
import { describe, expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import { reportModel } from "../../packages/report/src/pdf/model.ts";
import { misfitLines } from "../../packages/report/src/text/misfits.ts";
import { adaptCase, type CaseFile } from "../cases/adapt.ts";
import { houseWithRing } from "./ring-in-house.ts";
import type { Planted } from "./simulated-ring.ts";

const caseOf = (name: string) =>
  adaptCase(JSON.parse(readFileSync(new URL(`../cases/data/${name}.json`, import.meta.url), "utf8")) as CaseFile);

/** The misfits of the first circuit, in which the ring was planted. */
const misfitsOf = (file: InspectionFile) =>
  (assemble(file).misfits ?? []).filter(({ path }) => path.join("/") === "boards/0/circuits/0");

const saidOf = (planted: Planted) => {
  const [misfit, ...more] = misfitsOf(houseWithRing(planted, 5));
  if (misfit === undefined || more.length > 0) throw new Error(`${more.length + 1} misfits or none`);
  return {
    misfit,
    said: misfitLines([misfit], 10_000, true)
      .slice(5)
      .map((line) => line.trim()),
  };
};

describe("a ring's fault in words", () => {
  test("an open line: where, between which sockets, and what was expected", () => {
    const { misfit, said } = saidOf({ kind: "open", conductors: ["line"], leg: 2 });
    expect(misfit).toMatchObject({
      kind: "ring",
      clear: true,
      title: "Circuit 1: readings of the ring that do not agree",
    });
    expect(said).toContain("r1 >99.9 Ω: by the cable and the other readings 0.406 Ω to 0.501 Ω");
    expect(said.find((line) => line.startsWith("Most likely"))).toMatch(
      /^Most likely \(99 %\): the line is open, about 18 m \(15 m to 21 m\) along from the outgoing end, between socket 2 and socket 3;/,
    );
    expect(misfit.ring?.marks).toMatchObject([{ kind: "break", label: "line open" }]);
  });

  test("a bridge: both its ends and how long it is", () => {
    const { misfit, said } = saidOf({ kind: "interconnection", from: 1, to: 5, metres: 3 });
    expect(said.find((line) => line.startsWith("Most likely"))).toMatch(
      /a cable about 5\.0 m \(0\.0 m to 23 m\) long bridges the ring: one end about 14 m \(1\.4 m to 27 m\) along from the outgoing end, between socket 1 and socket 2; the other about 44 m \(30 m to 58 m\)/,
    );
    expect(misfit.ring?.marks).toMatchObject([{ kind: "bridge", label: "bridge, about 5.0 m" }]);
  });

  test("a loose joint: how many ohms, in which conductor, and the reading that tells where", () => {
    const { said } = saidOf({ kind: "joint", conductor: "cpc", leg: 3, ohms: 0.8 });
    expect(said.find((line) => line.startsWith("Most likely"))).toMatch(
      /a loose joint of about 0\.82 Ω \(0\.75 Ω to 0\.88 Ω\) in the cpc, or a break that other metal bridges, about 31 m/,
    );
    expect(said).toContain(
      "Next: join neutral and cpc at the outgoing end only, leave the returning end apart, and read between them at socket 4; about 1.32 Ω if it lies at the likeliest place, about 0.58 Ω at the next likeliest",
    );
  });

  test("a joint of as many ohms as a smaller conductor would have more: both, and the reading that tells", () => {
    const { misfit, said } = saidOf({ kind: "joint", conductor: "cpc", leg: 3, ohms: 0.4 });
    expect(misfit).toMatchObject({ clear: true, toldApart: false });
    expect(said.find((line) => line.startsWith("Most likely"))).toMatch(
      /a loose joint of about 0\.42 Ω \(0\.36 Ω to 0\.48 Ω\) in the cpc, or a break that other metal bridges, about 32 m/,
    );
    expect(said.join("\n")).toMatch(/Cannot be told apart \(\d+ %\): the cpc has 1 mm² and not the size written down/);
    expect(said).toContain(
      "Next: join line and cpc at the outgoing end only, leave the returning end apart, and read between them at socket 4; about 0.89 Ω if joint in cpc; about 0.63 Ω if cpc of 1 mm2",
    );
  });

  test("conductors swapped at a socket cannot be told from one that is off, and the next reading tells", () => {
    const { misfit, said } = saidOf({ kind: "swapped", point: 4, pair: "neutral-cpc" });
    expect(said.join("\n")).toMatch(/Most likely \(8\d %\): neutral and cpc are at each other's terminals at socket 5/);
    expect(said.join("\n")).toMatch(/Cannot be told apart \(1\d %\): the line is off its terminal at socket 5/);
    expect(said).toContain(
      "Next: cross-connect the opposite ends of line and neutral and read between line and cpc at socket 5; about 0.23 Ω if neutral cpc swapped at socket 5; open if line off at socket 5",
    );
    expect(misfit).toMatchObject({ tied: 2, toldApart: false });
  });

  test("a spur is permitted: it is told when asked for, not as a fault", () => {
    const { misfit, said } = saidOf({ kind: "spur", point: 2, metres: 6 });
    expect(misfit).toMatchObject({ clear: false, title: "Circuit 1: the ring seems to have a spur" });
    expect(said.find((line) => line.startsWith("Most likely"))).toMatch(
      /socket 3 hangs on a spur of about \d\.\d m \(.*; no fault of the installation$/,
    );
  });

  test("a place these readings do not hold is not made up", () => {
    expect(saidOf({ kind: "open", conductors: ["neutral"], leg: 2 }).said.join("\n")).toContain(
      "the neutral is open, these readings do not say where",
    );
  });

  test("a sound ring is not spoken of", () => {
    expect(misfitsOf(houseWithRing({ kind: "sound" }, 5))).toEqual([]);
  });
});

describe("false alarms", () => {
  test("of sound rings fewer than one in a hundred is spoken of, of rings with a spur none as a fault", () => {
    const rings = (planted: Planted) =>
      Array.from({ length: 40 }, (_, seed) =>
        diagnoseRings(resolveInstallation(houseWithRing(planted, seed))).filter(
          ({ designation }) => designation === "1",
        ),
      );
    expect(rings({ kind: "sound" }).flat()).toEqual([]);
    expect(rings({ kind: "spur", point: 6, metres: 3 }).flatMap((found) => found.filter(({ clear }) => clear))).toEqual(
      [],
    );
  });

  test("the spur of 3 m of the terraced house is found and raises no alarm", () => {
    const house = parseInspectionData(
      JSON.parse(readFileSync(new URL("../../examples/terraced-house.json", import.meta.url), "utf8")),
    );
    if (!house.ok) throw new Error("unreadable");
    const [ring, ...more] = diagnoseRings(resolveInstallation(house.file));
    expect(more).toEqual([]);
    expect(ring).toMatchObject({
      designation: "2",
      clear: false,
      stories: [{ faults: [{ kind: "spur", point: 4 }] }, {}],
    });
  });

  test("nothing is said of the rings of case 2", () => {
    expect(diagnoseRings(resolveInstallation(caseOf("case-2")))).toEqual([]);
  });
});

describe("the report", () => {
  interface Shown {
    readonly list: readonly { readonly title: string; readonly lines: readonly string[]; readonly drawing: string }[];
  }
  const modelOf = (file: InspectionFile) => {
    const { data, drawings } = reportModel(assemble(file));
    return { shown: data.misfits as Shown, drawings: drawings.filter(({ svg }) => svg.includes("Ring of Circuit")) };
  };

  test("shows the bridged ring of case 1 with place and drawing where it is shared, and once", () => {
    const document = JSON.parse(printInspection(caseOf("case-1")));
    document.boards[0].circuits[0].sharedMisfits = [{ kind: "ring", note: "Traced." }];
    const parsed = parseInspectionData(document);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
    const { shown, drawings } = modelOf(parsed.file);
    expect(shown.list).toHaveLength(1);
    expect(shown.list[0]?.lines.join("\n")).toMatch(/bridges the ring: one end about 15 m .* the other about 48 m/);
    expect(shown.list[0]?.lines).toContain("Inspector's note: Traced.");
    expect(drawings.map(({ name }) => name)).toEqual([shown.list[0]?.drawing]);
    expect(drawings[0]?.svg).toContain("bridge, about 5.7 m");
  });

  test("shows nothing of it otherwise", () => {
    const { shown, drawings } = modelOf(caseOf("case-1"));
    expect(shown.list).toEqual([]);
    expect(drawings).toEqual([]);
  });

  test("no ring is told of twice", () => {
    const about = (assemble(caseOf("case-1")).misfits ?? []).filter(
      ({ path }) => path.at(-1) === 0 && path.length === 4,
    );
    expect(about.map(({ kind }) => kind)).toEqual(["ring"]);
  });
});

describe("many rings and large ones", () => {
  test("are looked at within a bound, and a ring of more than 200 points not at all", () => {
    const file = houseWithRing({ kind: "joint", conductor: "line", leg: 2, ohms: 0.5 }, 3);
    const [board] = file.boards;
    const [circuit] = board?.circuits ?? [];
    const [entry] = circuit?.readings?.crossLineNeutral ?? [];
    if (board === undefined || circuit === undefined || entry === undefined) throw new Error("no ring");
    const many = (count: number, change: Partial<typeof circuit> = {}) => {
      const circuits = Array.from({ length: count }, (_, i) => ({
        ...circuit,
        ...change,
        id: `r${i}`,
        designation: String(i),
      }));
      return resolveInstallation({ ...file, boards: [{ ...board, circuits }] });
    };
    expect(diagnoseRings(many(300)).length).toBeLessThan(70);
    const crossLineNeutral = Array.from({ length: 201 }, (_, i) => ({ ...entry, point: `p${i}` }));
    const large = { readings: { ...circuit.readings, crossLineNeutral } };
    expect(lookAtRings(many(1, large))).toEqual([]);
  });

  test("every reading that is looked at carries its place in the file", () => {
    const chance = new Chance(9);
    const planted: Planted = { kind: "joint", conductor: "line", leg: 1, ohms: chance.between(0.3, 0.6) };
    const [ring] = diagnoseRings(resolveInstallation(houseWithRing(planted, 1)));
    expect(ring?.readings.map(({ path }) => path.join("/"))).toContain("boards/0/circuits/0/readings/r1");
  });
});
