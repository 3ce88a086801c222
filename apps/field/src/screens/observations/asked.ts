import type { Facts, Positions, Where } from "../../engine/reason-view.ts";
import { join } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import type { Answered } from "./answered.ts";
import { textAt, valuesBelow } from "./read.ts";

/** What is asked of the engine about an observation: its subject, what is known of it and where it is. */
export interface Asked {
  readonly topic: string;
  readonly facts: Facts;
  readonly positions: Positions;
  readonly place: Where;
}

/** What an observation as recorded asks. */
export function askedOf(record: JobRecord, observation: string): Asked {
  const [board, circuit] = [textAt(record, join(observation, "board")), textAt(record, join(observation, "circuit"))];
  return {
    topic: textAt(record, join(observation, "topic")),
    facts: valuesBelow(record, join(observation, "facts")) as Facts,
    positions: Object.fromEntries(
      Object.entries(valuesBelow(record, join(observation, "positions"))).flatMap(([point, value]) => {
        const position = (value as { readonly position?: Value }).position;
        return typeof position === "string" ? [[point, position]] : [];
      }),
    ),
    place: {
      ...(board === "" ? {} : circuit === "" ? { board } : { board, circuit }),
      ...partsNamed(record.value(join(observation, "answers"))),
    },
  };
}

/** The RCDs and bonding conductors among the checks that it names. */
function partsNamed(answers: Value | undefined): Pick<Where, "parts"> {
  const named = (Array.isArray(answers) ? answers : []) as unknown as readonly Answered[];
  const parts = named.flatMap(({ part, board }) =>
    part === undefined ? [] : [board === undefined ? { id: part } : { id: part, board }],
  );
  return parts.length === 0 ? {} : { parts };
}
