import type { LawBreak, LawSubject } from "./law.ts";

/** Every fact and every contested point can change what follows. */
export function everythingMatters({ topic, document, compiled }: LawSubject): readonly LawBreak[] {
  const { diagram, root, variables } = compiled;
  const matter = new Set(diagram.support(root).map((variable) => variables[variable]?.name));
  return [...Object.keys(topic.facts), ...Object.keys(topic.contested)]
    .filter((name) => !matter.has(name))
    .map((name) => {
      const at = document.statements.find(
        (one) => "name" in one && typeof one.name === "object" && one.name.text === name,
      )?.at;
      return {
        law: "matters",
        topic: topic.id,
        found: `"${name}" never changes what follows`,
        expected: "facts and contested points that change it in some state",
        ...(at === undefined ? {} : { at }),
      };
    });
}
