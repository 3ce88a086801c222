import { CIRCUIT_CHECKS, DoesNotArise } from "@good-grounds/computations";
import {
  type Conclusion,
  type Fact,
  fact,
  factNotKnown,
  isKnownFact,
  notKnown,
  REFERENCE_METHODS,
  Reckoner,
  type ReferenceMethod,
  TERM,
  type Worked,
} from "@good-grounds/core";
import { type Circuit, type Installation, MATTER, type Thing } from "@good-grounds/inspection";
import type { Topic } from "@good-grounds/topics";
import type { WorkedFact } from "../results.ts";
import type { SpokenOf } from "../spoken-of/index.ts";
import { answered, judgedPart, partsOf } from "./link.ts";

/** The check of which a length of conductors with a size of its own is another subject. */
const CHECK = CIRCUIT_CHECKS.find(({ id }) => id === "cable-capacity");
const RECKON = new Reckoner(true);

type Section = Thing<"sections">;

/** A circuit as it would be with a section for its cable, and whether the route of that was recorded. */
interface OnDevice {
  readonly circuit: Circuit;
  readonly isRouted: boolean;
}

/**
 * What the named lengths of conductors say of the facts of a topic, each by its own size, material, insulation and methods
 * on the device of its circuit. Where a topic asks of another cable than the circuit's, it is judged as a radial and
 * answers either way. Where a topic asks of the circuit, a length that is too small is enough, one that is not says
 * nothing of the rest; and a length of a ring may be a leg of it. Of a route nobody recorded, every method is tried:
 * that none of them will do answers, and nothing else.
 */
export function answersFromSections(topic: Topic, spoken: SpokenOf): readonly WorkedFact[] {
  const sections = spoken.things.filter((thing): thing is Section => thing.kind === "sections");
  if (sections.length === 0) return [];
  return Object.entries(topic.facts).flatMap(([name, { worked: link }]) =>
    link === undefined || partsOf(link).some(({ by }) => by !== CHECK?.id)
      ? []
      : sections.flatMap((section) => answerOf(name, link, section, spoken)),
  );
}

function answerOf(name: string, link: Worked, section: Section, spoken: SpokenOf): readonly WorkedFact[] {
  const circuit = circuitOf(section, spoken);
  if (circuit === undefined) return [];
  const isOther = link.findings === "none";
  if (!isOther && !(isKnownFact(circuit.shape) && circuit.shape.word !== "ring")) return [];
  const on = onDevice(section, circuit, isOther, spoken.installation);
  const conclusion = concluded(on.circuit, spoken.installation);
  const { met: _, ...notMetOnly } = link;
  const held = isOther && on.isRouted ? link : notMetOnly;
  const answer = answered(
    name,
    held,
    partsOf(link).map((part) => judgedPart(part, conclusion)),
  );
  if (answer === undefined || (answer.value === null && !isOther)) return [];
  return [{ ...answer, of: [section.path] }];
}

/** The circuit the observation names, else the one the section is recorded at. */
function circuitOf({ board, circuit }: Section, spoken: SpokenOf): Circuit | undefined {
  if (spoken.circuit !== undefined) return spoken.circuit;
  return spoken.installation.circuits.find((one) => one.id === circuit && one.board.id === board);
}

/** The circuit as it would be with the section for its cable; nothing of the circuit's own route is taken for it. */
function onDevice(section: Section, circuit: Circuit, isOther: boolean, installation: Installation): OnDevice {
  const { path, state } = section;
  const { cable: kind, insulation, material, line } = state;
  const recorded = state.methods.filter((method) => isKnownFact(method));
  const cable = {
    ...circuit.cable,
    kind,
    insulation,
    material,
    line,
    ambient: notKnown(TERM.ambientTemperature, path),
    grouping: factNotKnown(MATTER.grouping, path),
    groupedCircuits: notKnown(TERM.count, path),
    surroundedByInsulation: notKnown(TERM.length, path),
  };
  const shape = isOther
    ? fact(MATTER.circuitShape, "radial", path, "radial", "assumed", "a length of its own shares its current with none")
    : circuit.shape;
  const withMethods = (methods: readonly Fact<ReferenceMethod>[]): Circuit => ({
    ...circuit,
    shape,
    cable: { ...cable, methods },
  });
  if (recorded.length > 0) return { circuit: withMethods(recorded), isRouted: true };
  const tried = REFERENCE_METHODS.map((method) =>
    fact(MATTER.method, method, [...path, "methods"], method, "assumed", "the route was not recorded"),
  ).filter((method) => isTabulated(concluded(withMethods([method]), installation)));
  return { circuit: withMethods(tried), isRouted: false };
}

function concluded(circuit: Circuit, installation: Installation): Conclusion | undefined {
  const given = CHECK?.gather(circuit, installation);
  return given === undefined || given instanceof DoesNotArise ? undefined : CHECK?.conclude(given, RECKON);
}

/** Whether the tables have a capacity for the cable by this method. */
function isTabulated(conclusion: Conclusion | undefined): boolean {
  return conclusion?.settles?.some(({ verdict }) => verdict !== "not-known") ?? false;
}
