import type { Draws } from "../draws.ts";
import type { Circuit, House } from "../house/house.ts";
import { cpcAlone } from "../site/dead.ts";
import { loopAtPoint } from "../site/loop.ts";
import type { Written, WrittenCircuit } from "../site/write.ts";
import { everywhere, isRadial, isRing, oneOf } from "./edit.ts";
import type { Fault } from "./fault.ts";

function written({ boards }: Written, id: string): WrittenCircuit {
  const found = boards.flatMap(({ circuits }) => circuits).find((circuit) => circuit.id === id);
  if (found === undefined) throw new Error(`no circuit ${id} in the file`);
  return found;
}

const shownAt = (circuit: WrittenCircuit, name: string) =>
  (circuit.readings[name] as { shown?: string } | undefined)?.shown;

/** Two columns of one row exchanged, where both hold something. */
function columns(file: Written, id: string, one: string, two: string): void {
  const { readings } = written(file, id);
  [readings[one], readings[two]] = [readings[two], readings[one]];
  for (const name of [one, two]) if (readings[name] === undefined) delete readings[name];
}

/** Two circuits of one board and one shape. */
function pair(house: House, draws: Draws): readonly [Circuit, Circuit] | null {
  const one = oneOf(house, draws, isRadial);
  if (one === null) return null;
  const two = oneOf(
    house,
    draws.of("other"),
    (other) => isRadial(other) && other.board === one.board && other.id !== one.id,
  );
  return two === null ? null : [one, two];
}

function slipped(text: string, up: boolean): string {
  const [number = "", unit = ""] = text.split(" ");
  const value = Number(number) * (up ? 10 : 0.1);
  return `${value.toFixed(value < 9.995 ? 2 : value < 99.95 ? 1 : 0)} ${unit}`;
}

/** Slips of reading and writing: the installation is sound. */
export const IN_WRITING: readonly Fault[] = [
  {
    id: "columns-r1r2-r2",
    says: "R1+R2 and R2 exchanged",
    innocent: true,
    named: /column|r1r2-and-r2|exchanged/,
    plant(house, draws) {
      const circuit = oneOf(house, draws, isRadial);
      if (circuit === null) return null;
      const alone = cpcAlone(house, circuit, circuit.points.length - 1, false, () => house.ambient);
      const slip = (file: Written) => {
        written(file, circuit.id).readings.r2Only ??= { shown: `${alone.toFixed(2)} Ω`, with: "mft" };
        columns(file, circuit.id, "r1r2", "r2Only");
      };
      return { slip, at: [circuit.id] };
    },
  },
  {
    id: "columns-ring",
    says: "r2 of a ring exchanged with r1 or rn",
    innocent: true,
    named: /ring-ends-exchanged|column|r[1n]-and-r2-exchanged/,
    plant(house, draws) {
      const ring = oneOf(house, draws, (one) => isRing(one) && one.cable.cpc !== one.cable.line);
      return ring && { slip: (file) => columns(file, ring.id, draws.one("which", ["r1", "rn"]), "r2"), at: [ring.id] };
    },
  },
  {
    id: "rows-exchanged",
    says: "readings of two circuits exchanged",
    innocent: true,
    named: /rows|another-circuit|not-of-this-circuit/,
    plant(house, draws) {
      const two = pair(house, draws);
      if (two === null) return null;
      const [a, b] = two.map(({ id }) => id) as [string, string];
      const slip = (file: Written) => {
        const [one, other] = [written(file, a), written(file, b)];
        [one.readings, other.readings] = [other.readings, one.readings];
      };
      return { slip, at: [a, b, two[0].board] };
    },
  },
  {
    id: "row-copied",
    says: "readings of another circuit copied whole",
    innocent: true,
    named: /copied|rows|another-circuit|not-of-this-circuit/,
    plant(house, draws) {
      const two = pair(house, draws);
      if (two === null) return null;
      const [a, b] = two.map(({ id }) => id) as [string, string];
      const slip = (file: Written) => {
        written(file, a).readings = structuredClone(written(file, b).readings);
      };
      return { slip, at: [a, b, two[0].board] };
    },
  },
  {
    id: "decimal",
    says: "decimal slipped in R1+R2, Zs, r1 or r2",
    innocent: true,
    named: /decimal|not-of-this-circuit/,
    plant(house, draws) {
      const circuit = oneOf(house, draws, () => true);
      if (circuit === null) return null;
      const slip = (file: Written) => {
        const entry = written(file, circuit.id);
        const held = ["r1r2", "zs", "r1", "r2"].filter((name) => !(shownAt(entry, name) ?? ">").startsWith(">"));
        if (held.length === 0) return;
        const name = draws.one("reading", held);
        entry.readings[name] = { shown: slipped(shownAt(entry, name) ?? "", draws.happens("up", 0.5)), with: "mft" };
      };
      return { slip, at: [circuit.id] };
    },
  },
  {
    id: "length",
    says: "length written wrongly",
    unit: "times",
    innocent: true,
    named: /length/,
    plant(house, draws) {
      const circuit = oneOf(house, draws, () => true);
      if (circuit === null) return null;
      const larger = draws.acrossDecades("size", 1.15, 3);
      const size = draws.happens("shorter", 0.5) ? 1 / larger : larger;
      const slip = (file: Written) => {
        const { cable } = written(file, circuit.id);
        if (cable.length !== undefined) cable.length = `${Math.max(1, Math.round(circuit.metres * size))} m`;
      };
      return { slip, at: [circuit.id], size };
    },
  },
  {
    id: "leads",
    says: "leads not nulled",
    unit: "Ω",
    innocent: true,
    named: /leads/,
    plant(house, draws) {
      const size = draws.acrossDecades("size", 0.03, 0.6);
      return { notNulled: size, at: everywhere(house), size };
    },
  },
  {
    id: "zs-line-neutral",
    says: "Zs read between line and neutral",
    innocent: true,
    named: /loop-line-to-neutral/,
    plant(house, draws) {
      const circuit = oneOf(house, draws, () => true);
      if (circuit === null) return null;
      const point = circuit.points.length - 1;
      const loop = loopAtPoint(house, circuit, point, "N", () => house.ambient);
      const slip = (file: Written) => {
        written(file, circuit.id).readings.zs = { shown: `${loop.toFixed(2)} Ω`, with: "mft" };
      };
      return { slip, at: [circuit.id] };
    },
  },
  {
    id: "outcome",
    says: "satisfactory written over an observation of C2",
    innocent: true,
    inOutcome: true,
    named: /.*/,
    plant(house) {
      const slip = (file: Written) => {
        const choice = { classification: "C2", reason: "One event away from a shock.", by: "inspector" };
        file.observations = [
          { id: "o1", place: "hall", what: "Socket cracked, its parts cannot be reached yet.", choice },
        ];
      };
      return { slip, at: everywhere(house) };
    },
  },
];
