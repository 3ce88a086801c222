import type { Draws } from "../draws.ts";
import type { House } from "../house/house.ts";
import type { Written } from "../site/write.ts";

/** A fault as planted in one job. */
export interface Planted {
  /** The installation with it, where it lies there. */
  readonly house?: House;
  /** What it does to the file, where it lies in the writing. */
  readonly slip?: (file: Written) => void;
  /** What the leads add to every reading of continuity, Ω. */
  readonly notNulled?: number;
  /** Ids of the circuits and boards it may be told of at; "supply" for the origin. */
  readonly at: readonly string[];
  /** How large it is, in the unit of its kind. */
  readonly size?: number;
}

/** A kind of fault. */
export interface Fault {
  readonly id: string;
  readonly says: string;
  /** Ω, MΩ, ms, or a factor; none where it has no size. */
  readonly unit?: "Ω" | "MΩ" | "ms" | "times";
  /** A matter of reading or writing: nothing is wrong with the installation. */
  readonly innocent?: true;
  /** No reading that is written down depends on it. */
  readonly hidden?: true;
  /** Ids of the explanations that name it, in whole or from their beginning. */
  readonly named: RegExp;
  /** Whether the outcome alone has to show it. */
  readonly inOutcome?: true;
  /** The fault at a place of this house; null where it has no place for it. */
  plant(house: House, draws: Draws): Planted | null;
}
