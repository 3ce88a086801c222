import type { FiguresToConfirm, OwnFigures } from "@good-grounds/core";
import { type InspectionFile, type Installation, resolveInstallation } from "@good-grounds/inspection";
import { entriesOf } from "./entries.ts";
import { type Found, type Job, type Look, SHOWN_BELOW } from "./look.ts";
import { LOOKS } from "./looks/index.ts";
import { rowsOf } from "./rows.ts";

/** No chance counts for more than this many powers of ten: the models behind them are not that good. */
const MOST_WEIGHT = 12;

/** Tests that explain the same readings in different ways: only the one that explains most is shown for them. */
const ONE_STORY: ReadonlySet<string> = new Set([
  "shifted-rows",
  "swapped-rows",
  "repeated-row",
  "copied-row",
  "slipped-decimal",
  "impossible-length",
]);

/**
 * Looks at the figures of an inspection as a sceptical reader would, before one does: what is worth confirming, heaviest
 * first, each with its test, numbers, innocent causes and the notes written to it. It decides nothing and blocks nothing,
 * and no report carries it. With an `earlier` file of the same installation it is held against that too.
 */
export function lookAtOwnFigures(installation: Installation, earlier?: InspectionFile): OwnFigures {
  const job = jobOf(installation, earlier === undefined ? undefined : jobOf(resolveInstallation(earlier), undefined));
  const notes = installation.ownFigures;
  const looked = LOOKS.map((look) => ({ look, result: look.look(job) }));
  const toConfirm = oneStory(
    looked
      .flatMap(({ look, result }) =>
        "because" in result
          ? []
          : result.filter((found) => isShown(look, found)).map((found) => toConfirmOf(look, found, notes)),
      )
      .sort((a, b) => b.weight - a.weight),
  );
  const shown = new Set(toConfirm.map(({ check }) => check));
  return {
    toConfirm,
    notLookedAt: looked.flatMap(({ look: { id, title }, result }) =>
      "because" in result ? [{ check: id, title, because: result.because }] : [],
    ),
    // A note to a test that is not there stands under the name that whoever wrote it gave.
    otherNotes: notes
      .filter(({ check }) => !shown.has(check))
      .map(({ check, note }) => ({ check, title: LOOKS.find(({ id }) => id === check)?.title ?? check, note })),
  };
}

function isShown({ shownBelow = SHOWN_BELOW }: Look, { chance }: Found): boolean {
  return chance === null || chance <= shownBelow;
}

function jobOf(installation: Installation, earlier: Job | undefined): Job {
  return { installation, rows: rowsOf(installation), entries: entriesOf(installation.file), earlier };
}

type Notes = readonly { readonly check: string; readonly note: string }[];

function toConfirmOf({ id, title, test, assumed, innocent }: Look, found: Found, notes: Notes): FiguresToConfirm {
  const { words, numbers, readings, chance } = found;
  return {
    check: id,
    title,
    test,
    words,
    numbers,
    readings,
    assumed,
    innocent,
    chance,
    weight: chance === null ? (found.weight ?? 0) : Math.min(MOST_WEIGHT, -Math.log10(Math.max(chance, 1e-300))),
    notes: notes.filter(({ check }) => check === id).map(({ note }) => note),
  };
}

/** Leaves out what a heavier explanation of the same readings already covers. */
function oneStory(ranked: readonly FiguresToConfirm[]): readonly FiguresToConfirm[] {
  const told = new Set<unknown>();
  return ranked.filter(({ check, readings }) => {
    if (!ONE_STORY.has(check)) return true;
    const leaves = readings.map(({ detail }) => detail.path.join("/"));
    const isTold = leaves.length > 0 && leaves.some((leaf) => told.has(leaf));
    for (const leaf of leaves) told.add(leaf);
    return !isTold;
  });
}
