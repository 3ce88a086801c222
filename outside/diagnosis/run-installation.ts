import type { Misfit } from "@good-grounds/core";
import { parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { Chance } from "../../examples/simulate/chance.ts";
import { diagnoseInstallation } from "../../packages/readings/src/diagnosis/installation/index.ts";
import { PLANTED, type Planted } from "./planted.ts";
import { randomInstallation, roughened, type WrittenFile, writtenFile } from "./random-installation.ts";

/** What came of one kind of fault. */
interface KindResult {
  readonly name: string;
  readonly threshold: string;
  planted: number;
  found: number;
  detectable: number;
  detectableFound: number;
  /** Of those above the threshold: the right explanation leads; or stands with the leading one as not told apart. */
  first: number;
  firstOrTied: number;
  /** Misfits shown unasked at places where nothing was planted. */
  elsewhere: number;
}

export interface RunResult {
  readonly kinds: readonly KindResult[];
  readonly circuits: number;
  /** Sound installations: their circuits, and what was shown unasked at circuits, boards and the origin. */
  readonly soundCircuits: number;
  readonly alarmsAtCircuits: number;
  readonly alarmsElsewhere: number;
  readonly soundInstallations: number;
  readonly alarms: readonly string[];
  /** The same where errors reach the whole stated accuracy and lengths are a twelfth out. */
  readonly rough: { readonly circuits: number; readonly alarmsAtCircuits: number; readonly alarmsElsewhere: number };
  /** Greatest time of one diagnosis, ms, and the mean. */
  readonly slowest: number;
  readonly mean: number;
}

/** Where a misfit is, as the planted faults name places. */
function placeOf({ path }: Misfit, file: WrittenFile): string {
  if (path[0] !== "boards") return "";
  const board = file.boards[Number(path[1])];
  if (path[2] === "circuits") return `${board?.id} ${board?.circuits[Number(path[3])]?.id}`;
  return path[2] === "rcds" ? `${board?.id} rcd` : `${board?.id}`;
}

export function diagnosed(file: WrittenFile): readonly Misfit[] {
  const parsed = parseInspectionData(file);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 3)));
  return diagnoseInstallation(resolveInstallation(parsed.file));
}

const NEAR_TIE = 1 / 3;

/** Diagnoses files, counts their circuits and takes the time. */
class Watch {
  circuits = 0;
  slowest = 0;
  readonly alarms: string[] = [];
  #total = 0;
  #runs = 0;

  /** Mean time of one diagnosis, ms. */
  get mean(): number {
    return this.#total / this.#runs;
  }

  look(file: WrittenFile): readonly Misfit[] {
    this.circuits += file.boards.reduce((sum, board) => sum + board.circuits.length, 0);
    const from = performance.now();
    const clear = diagnosed(file).filter((one) => one.clear);
    const took = performance.now() - from;
    if (this.#runs > 20) this.slowest = Math.max(this.slowest, took);
    this.#total += took;
    this.#runs += 1;
    return clear;
  }

  /** What is shown unasked in so many sound installations. */
  alarmsIn(sound: number, fileOf: (i: number) => WrittenFile) {
    const seen = { circuits: 0, alarmsAtCircuits: 0, alarmsElsewhere: 0 };
    for (let i = 0; i < sound; i++) {
      const file = fileOf(i);
      seen.circuits += file.boards.reduce((sum, board) => sum + board.circuits.length, 0);
      for (const one of this.look(file)) {
        if (one.path[2] === "circuits") seen.alarmsAtCircuits += 1;
        else seen.alarmsElsewhere += 1;
        const first = one.explanations[0]?.id;
        this.alarms.push(`${one.kind} at ${placeOf(one, file)}, odds ${one.odds.toFixed(1)}: ${first}`);
      }
    }
    return seen;
  }
}

/** Sets down what came of one planted fault. */
function count(result: KindResult, planted: Planted, clear: readonly Misfit[]): void {
  const { file, kind, at, right, detectable } = planted;
  const hit = clear.find((one) => one.kind === kind && placeOf(one, file) === at);
  result.planted += 1;
  // What is common to the whole job shows at every board.
  const same = (one: Misfit) => one.kind === kind && kind !== "circuit-readings";
  result.elsewhere += clear.filter((one) => placeOf(one, file) !== at && !same(one)).length;
  if (hit !== undefined) result.found += 1;
  if (!detectable) return;
  result.detectable += 1;
  if (hit === undefined) return;
  result.detectableFound += 1;
  const leading = hit.explanations[0];
  const ids = new Set(right);
  if (leading !== undefined && ids.has(leading.id)) result.first += 1;
  const tied = hit.explanations.filter(({ share }) => share >= (leading?.share ?? 1) * NEAR_TIE);
  if (tied.some(({ id }) => ids.has(id))) result.firstOrTied += 1;
}

/** Plants every kind of fault `each` times and looks at `sound` installations without any. */
export function run(seed: number, each: number, sound: number): RunResult {
  const chance = new Chance(seed);
  const watch = new Watch();
  const kinds = PLANTED.map(({ name, threshold, plant }, k) => {
    const result: KindResult = {
      name,
      threshold,
      planted: 0,
      found: 0,
      detectable: 0,
      detectableFound: 0,
      first: 0,
      firstOrTied: 0,
      elsewhere: 0,
    };
    for (let i = 0; result.planted < each && i < 20 * each; i++) {
      const planted = plant(randomInstallation(seed + 7919 * k + i, chance), chance);
      if (planted !== undefined) count(result, planted, watch.look(planted.file));
    }
    return result;
  });
  const plain = watch.alarmsIn(sound, (i) => writtenFile(randomInstallation(seed + 1_000_000 + i, chance)));
  const rough = watch.alarmsIn(sound, (i) =>
    roughened(writtenFile(randomInstallation(seed + 2_000_000 + i, chance)), chance),
  );
  const { circuits, alarms, slowest, mean } = watch;
  return {
    kinds,
    circuits,
    soundCircuits: plain.circuits,
    alarmsAtCircuits: plain.alarmsAtCircuits,
    alarmsElsewhere: plain.alarmsElsewhere,
    rough,
    soundInstallations: sound,
    alarms,
    slowest,
    mean,
  };
}
