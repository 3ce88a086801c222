import { bitsOf, possibleLeaves, SEVERITIES } from "@good-grounds/core";
import { decidedBy } from "./decided.ts";
import { fullMasks } from "./draw.ts";
import { exampleLines, type LawBreak, type LawSubject } from "./law.ts";

/** No worsening of a fact lowers the severity, whatever else is so. Proved for every assignment. */
export function noWorseningLowers(subject: LawSubject): readonly LawBreak[] {
  const { topic, compiled } = subject;
  const { diagram, root, variables } = compiled;
  return variables.flatMap(({ name, cells }, variable) =>
    !cells.ordered
      ? []
      : cells.values.slice(1).flatMap((worse, at): LawBreak[] => {
          const rises = diagram.apply(
            (a, b) => (a <= b ? 1 : 0),
            diagram.restrict(root, variable, at),
            diagram.restrict(root, variable, at + 1),
          );
          if (rises === 1) return [];
          const values = witness(compiled, rises, 0).with(variable, at);
          const before = SEVERITIES[diagram.at(root, values)] ?? "none";
          const after = values.with(variable, at + 1);
          return [
            {
              law: "monotone",
              topic: topic.id,
              found: `${name}: from ${cells.values[at]} to ${worse}, which is worse, ${before} falls to ${SEVERITIES[diagram.at(root, after)]}`,
              expected: `at least ${before}; or the values of ${name} from best to worst, or "in no order"`,
              example: exampleLines({ compiled }, `${name} is ${worse}`, after, before),
              decided: decidedBy(
                subject,
                values.map((value) => 1 << value),
              ),
            },
          ];
        }),
  );
}

/** A full assignment under which a function has a leaf. */
export function witness(compiled: LawSubject["compiled"], node: number, leaf: number): readonly number[] {
  let masks = fullMasks(compiled);
  for (const [variable, full] of masks.entries())
    for (const value of bitsOf(full)) {
      const narrower = masks.with(variable, 1 << value);
      if (((possibleLeaves(compiled, node, narrower) >> leaf) & 1) === 0) continue;
      masks = narrower;
      break;
    }
  return masks.map((mask) => bitsOf(mask)[0] ?? 0);
}
