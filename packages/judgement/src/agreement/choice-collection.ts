import type { ChoiceComparison, ChosenBy } from "@good-grounds/core";
import type { InspectionFile } from "@good-grounds/inspection";
import { agreementFigures } from "./figures.ts";
import { addTo, type Group, keyOf, newGroup, shownSet } from "./group.ts";
import { MOST_ENTRIES, nearDifferences } from "./near.ts";
import { observedIn } from "./observed.ts";
import { byText, differ } from "./order.ts";
import { withoutCopies } from "./without-copies.ts";

/**
 * Choices of classification gathered from inspections, one after the other, in any order. Of a file only its choices
 * are kept, so memory grows with the observations compared and not with the size of the files.
 */
export class ChoiceCollection {
  readonly #groups = new Map<string, Group>();
  readonly #left = { withoutChoice: 0, withoutTopic: 0, withoutFacts: 0 };
  #inspections = 0;
  #invented = 0;
  #observations = 0;

  /** Adds the choices of one inspection. `source` names where it was read: a file, or a line of a stream. */
  add(file: InspectionFile, source: string): void {
    this.#inspections += 1;
    if (file.invented === true) this.#invented += 1;
    for (const observed of observedIn(file, source)) {
      this.#observations += 1;
      if (typeof observed === "string") {
        this.#left[observed] += 1;
        continue;
      }
      const key = keyOf(observed);
      const group = this.#groups.get(key) ?? newGroup(key, observed.topic);
      this.#groups.set(key, group);
      addTo(group, observed);
    }
  }

  /** What was gathered so far, held against each other. The order in which files were added plays no part. */
  compare(by: ChosenBy): ChoiceComparison {
    const groups = [...this.#groups.values()]
      .sort((a, b) => byText(a.key, b.key))
      .map((group) => ({ ...group, choices: [...withoutCopies(group.choices)] }));
    const near = nearDifferences(groups);
    const different = groups.flatMap(({ choices }, i) => (differ(choices) ? [i] : []));
    const kept = [...new Set([...different, ...near.flatMap(({ members }) => members.map(({ set }) => set))])].sort(
      (a, b) => a - b,
    );
    const place = new Map(kept.map((index, i) => [index, i]));
    const at = (index: number) => place.get(index) ?? 0;
    const compared = groups.reduce((sum, { choices }) => sum + choices.length, 0);
    const gathered = [...this.#groups.values()].reduce((sum, { choices }) => sum + choices.length, 0);
    return {
      count: {
        inspections: this.#inspections,
        invented: this.#invented,
        observations: this.#observations,
        compared,
        ...this.#left,
        copies: gathered - compared,
        factSets: groups.length,
        judgedAgain: groups.filter(({ choices }) => choices.length > 1).length,
        tooManyFacts: groups.filter(({ entries }) => entries.size > MOST_ENTRIES).length,
      },
      sets: kept.flatMap((index) => groups[index] ?? []).map(shownSet),
      differences: different.map(at),
      near: near.map(({ differs, members }) => ({
        differs,
        members: members.map(({ set, value }) => ({ set: at(set), value })),
      })),
      agreement: agreementFigures(
        groups.map(({ choices }) => choices),
        by,
      ),
    };
  }
}
