import { assemble } from "@good-grounds/assembly";
import { parseInspectionData } from "@good-grounds/inspection";
import type { Written } from "./site/write.ts";

type Path = readonly (string | number)[];

/** A check that is not met, too near to call or not known. */
interface Raised {
  readonly check: string;
  readonly verdict: "not-met" | "too-near" | "not-known";
  /** Id of the circuit or board, or "supply". */
  readonly at: string;
  readonly key: string;
}

/** Readings that do not agree, as they are told. */
export interface Told {
  readonly kind: string;
  readonly at: string;
  readonly clear: boolean;
  readonly toldApart: boolean;
  /** Ids of the explanations, most likely first. */
  readonly explanations: readonly string[];
  /** Whether the first says that nothing is wrong with the installation. */
  readonly innocent: boolean;
  /** How many from the first on are said not to be told apart. */
  readonly tied: number;
  /** Whether it is said in the first line that even this does not account for the readings. */
  readonly unaccounted: boolean;
  readonly key: string;
}

/** What a job comes to. */
export interface Judged {
  readonly raised: readonly Raised[];
  readonly told: readonly Told[];
  readonly open: readonly { readonly kind: string; readonly at: readonly string[]; readonly key: string }[];
  readonly outcome: string;
}

/** Judges a file the way everybody comes in: from its data, by everything there is. */
export function judged(file: Written): Judged {
  const parsed = parseInspectionData(structuredClone(file));
  if (!parsed.ok) throw new Error(`the simulated file is refused: ${JSON.stringify(parsed.issues.slice(0, 3))}`);
  const { weighing, misfits = [], outcome } = assemble(parsed.file);
  const findings = [...weighing.supply, ...weighing.boards.flat(), ...weighing.circuits.flat()];
  const whose = (path: Path) => ownerOf(file, path);
  return {
    raised: findings.flatMap(({ check, path, judgement: { verdict } }) =>
      verdict === "met" || verdict === "not-applicable"
        ? []
        : [{ check, verdict, at: whose(path), key: `${verdict} ${check} ${path.join("/")}` }],
    ),
    told: misfits.map(({ kind, path, clear, toldApart, explanations, tied }) => ({
      kind,
      at: whose(path),
      clear,
      toldApart,
      explanations: explanations.map(({ id }) => id),
      innocent: explanations[0]?.innocent ?? false,
      tied: tied ?? (toldApart ? 1 : 2),
      unaccounted: /further from it/.test(explanations[0]?.words ?? ""),
      key: `${kind} ${path.join("/")} ${explanations[0]?.id}`,
    })),
    open: outcome.points.map((point) => ({
      kind: point.kind,
      at: point.places.map(whose),
      key: `${point.kind} ${"check" in point ? point.check : ""} ${point.places.map((path) => path.join("/")).join()}`,
    })),
    outcome: outcome.outcome,
  };
}

/** The circuit, board or origin that a place of the file belongs to. */
function ownerOf({ boards }: Written, path: Path): string {
  const [first, board, second, circuit] = path;
  if (first !== "boards" || typeof board !== "number") return "supply";
  const found = boards[board];
  if (second === "circuits" && typeof circuit === "number") return found?.circuits[circuit]?.id ?? "supply";
  return found?.id ?? "supply";
}

/** What leads, by its kind and its id, whatever point it names. */
export function leadOf({ kind, explanations }: Told): string {
  return `${kind}: ${(explanations[0] ?? "").replaceAll(/-at-(?:(?!-and-)[a-z0-9-])*/g, "-at-a-point")}`;
}
