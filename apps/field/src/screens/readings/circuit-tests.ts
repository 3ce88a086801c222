import type { About, ReadingField, WordField } from "../../keypad/fields.ts";
import type { KindId } from "../../keypad/kinds.ts";
import { join } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { READINGS } from "../../words/readings.ts";
import { expectedOfCircuit } from "./expected.ts";

/** What the fields of one circuit's tests are made with. */
export interface CircuitTests {
  readonly record: JobRecord;
  /** Its place: "boards/cu/circuits/c1". */
  readonly circuit: string;
  readonly isRing: boolean;
  /** What other readings lead to expect, by the name of the reading. */
  readonly expected: ReturnType<typeof expectedOfCircuit>;
  /** Findings of these checks at the circuit. */
  readonly about: (...checks: readonly string[]) => readonly About[];
  readonly reading: (
    name: string,
    kind: KindId,
    label: string,
    hint: string | undefined,
    checks: readonly string[],
    more?: Partial<ReadingField>,
  ) => ReadingField;
  readonly words: (name: "polarity" | "insulationVoltage", label: string, checks: readonly string[]) => WordField;
}

export function circuitTests(record: JobRecord, boardId: string, circuitId: string): CircuitTests {
  const board = `boards/${boardId}`;
  const circuit = `${board}/circuits/${circuitId}`;
  const expected = expectedOfCircuit(record, board, circuit);
  const about = (...checks: readonly string[]): readonly About[] => checks.map((check) => ({ place: circuit, check }));
  return {
    record,
    circuit,
    isRing: record.value(join(circuit, "shape")) === "ring",
    expected,
    about,
    reading: (name, kind, label, hint, checks, more = {}) => ({
      spot: { path: join(circuit, `readings/${name}`) },
      kind,
      label,
      ...(hint === undefined ? {} : { hint }),
      about: about(...checks),
      ...(expected[name] === undefined ? {} : { expected: expected[name] }),
      ...more,
    }),
    words: (name, label, checks) => ({
      spot: { path: join(circuit, `readings/${name}`) },
      label,
      words: READINGS.words[name],
      about: about(...checks),
    }),
  };
}
