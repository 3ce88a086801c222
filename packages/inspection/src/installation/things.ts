import type { Path } from "@good-grounds/core";
import type { LeavesOf } from "../fields/field.ts";
import type { FieldsOf, OPENING, ThingKind } from "../fields/things/index.ts";

/** A thing of the installation: where it is, and each of its properties as evidence. */
export interface Thing<K extends ThingKind = ThingKind> {
  readonly kind: K;
  readonly id: string;
  /** Where it stands in the file; what an observation brings in stands there. */
  readonly path: Path;
  /** What somebody called it; undefined where nobody did. */
  readonly name: string | undefined;
  /** Ids of the board, the circuit of that board and the place it is at; without a board it is at the origin or serves all. */
  readonly board: string | undefined;
  readonly circuit: string | undefined;
  readonly place: string | undefined;
  /** How many of them are alike: one where nothing else was written. */
  readonly quantity: number;
  /** Id of the observation that brought it in; undefined for a listed one. */
  readonly broughtBy: string | undefined;
  /** Ids of other things, or of circuits, that it names, by the member that names them. */
  readonly links: Readonly<Record<string, readonly string[]>>;
  /** Its properties, every one a leaf. */
  readonly state: LeavesOf<FieldsOf<K>>;
  /** Openings of an enclosure; none for anything else. */
  readonly openings: readonly LeavesOf<typeof OPENING>[];
}

/** Where to look: a board, one circuit of it, a place; `origin` for what is at no board. */
export interface Whereabouts {
  readonly board?: string | undefined;
  readonly circuit?: string | undefined;
  readonly place?: string | undefined;
}

/** Every thing, by its id and by where it is. */
export interface Things {
  readonly all: readonly Thing[];
  readonly byId: (id: string) => Thing | undefined;
  readonly ofKind: <K extends ThingKind>(kind: K) => readonly Thing<K>[];
  /** Those of a kind at a place: all members given have to agree; with none, those at the origin. */
  readonly at: <K extends ThingKind>(kind: K, where: Whereabouts) => readonly Thing<K>[];
}
