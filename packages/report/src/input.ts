import type {
  Basis,
  CheckLabel,
  Conformity,
  Duty,
  EditionId,
  Finding,
  Misfit,
  Outcome,
  Path,
  ThenAndNow,
  Weighing,
} from "@good-grounds/core";
import type { WholeInstallation } from "@good-grounds/inspection";
import type { Photograph } from "./document/model.ts";
import type { RingDrawing } from "./drawings/ring-drawing.ts";
import type { ReasonedObservation } from "./words/reasoning.ts";
import type { Ranked } from "./words/worst-first.ts";

/** One known point of a device's time-current characteristic: it operates within `seconds` somewhere from `low` to `high` amperes. */
export interface CurvePoint {
  readonly seconds: number;
  readonly low: number;
  readonly high: number;
  readonly basis: Basis;
}

/** What a time-current drawing of one circuit shows. */
export interface CurvesOfCircuit {
  readonly circuit: Path;
  /** The device in words: "32 A type B, BS EN 60898". */
  readonly device: string;
  readonly points: readonly CurvePoint[];
  /** Energy the weakest conductor withstands, k²S² in A²s; null where it is not known. */
  readonly withstand: number | null;
  readonly conductor: string;
  /** Prospective fault current at the far end as a band in amperes; null where it is not known. */
  readonly faultCurrent: readonly [low: number, high: number] | null;
  /** Permitted disconnection time in seconds; null where it is not known. */
  readonly permittedTime: number | null;
}

/** What a sample says of all parts of its kind. */
export interface SampleReach {
  /** Parts that may be defective among all, with this assurance (a part of 1), those found included. */
  readonly most: number;
  readonly assurance: number;
}

/** Readings that do not agree; those of a ring with what its drawing shows. */
export interface ReportMisfit extends Misfit {
  readonly ring?: RingDrawing;
}

/** A firm's own folder of topics and standing views, as results name it. */
export interface FolderOfTopics {
  readonly name: string;
  readonly answersFor: string;
  /** SHA-256 over the names and bytes of its texts, in hexadecimal. */
  readonly hash: string;
}

/** Everything a report is made from. Nothing else is looked up; nothing is judged again. */
export interface ReportInput {
  /** Set while the report is not issued: every page says so. */
  readonly draft?: true;
  /** Which issue of the report it is, and the statement of the issue it replaces, by hash; left out where nothing is issued. */
  readonly issue?: { readonly number: number; readonly replaces?: string | undefined };
  /** Photographs that are at hand, by the SHA-256 of their bytes; what is not there is named and not shown. */
  readonly photographs?: ReadonlyMap<string, Photograph>;
  readonly installation: WholeInstallation;
  readonly weighing: Weighing;
  readonly outcome: Outcome;
  /** What the law asks because of this inspection; apart from the outcome. */
  readonly duties: readonly Duty[];
  /** Titles and rules of every check, and how near to harm its failure is. */
  readonly checks: readonly (CheckLabel & Ranked)[];
  readonly edition: { readonly id: EditionId; readonly label: string; readonly notes: readonly string[] };
  /** The firm's own folder of topics and standing views that was reasoned with; none where there was none. */
  readonly folder?: FolderOfTopics;
  readonly curves: readonly CurvesOfCircuit[];
  /** What each sample of the extent leaves possible, in the order of the file; null where its counts are no sample. */
  readonly samples: readonly (SampleReach | null)[];
  /** The reasoning of every observation that names its topic. */
  readonly reasoned: readonly ReasonedObservation[];
  /** How sure each finding is; left out where it was not asked for. */
  readonly conformity?: ReadonlyMap<Finding, Conformity>;
  /** Readings that do not agree, worst first; left out where they were not looked for. */
  readonly misfits?: readonly ReportMisfit[];
  /** The comparison with earlier inspections, where any were given. */
  readonly thenAndNow?: ThenAndNow;
}
