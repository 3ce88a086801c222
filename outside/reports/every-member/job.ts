import type { InspectionFile } from "@good-grounds/inspection";
import { type Filled, Filler, type Form, opened, wrongIn } from "./filled.ts";

/** Ids that are the same wherever something is named. */
const ID = {
  by: "who",
  person: "who",
  with: "meter",
  board: "board",
  circuit: "circuit",
  place: "somewhere",
  enclosure: "cupboard",
  part: "bond",
  thing: "somewhere",
} as const;

/** Members whose value is chosen: they lead elsewhere, or have to agree with others. */
const GIVEN: Readonly<Record<string, unknown>> = {
  "people/*/id": "who",
  "instruments/*/id": "meter",
  "boards/*/id": "board",
  "boards/*/fedFrom": "supply",
  "boards/*/circuits/*/id": "circuit",
  "boards/*/enclosure": "metal",
  "supply/bonding/*/id": "bond",
  "supply/earthing": "TT",
  "things/places/*/id": "somewhere",
  "things/enclosures/*/id": "cupboard",
  "things/sections/*/id": "run",
  "observations/*/id": "seen",
  "observations/*/topic": undefined,
  "observations/*/answers": [{ check: "polarity" }],
  "observations/*/facts": { "burn-marks": true, "how-hot": "Zqfact words" },
  "observations/*/positions": { "point-of-it": { position: "one-side", reason: "Zqposition words" } },
  "instruments/*/accuracy": { loop: "±(7.3 % + 4 digits)" },
  "extent/sampling/*/population": 47,
  "extent/sampling/*/inspected": 43,
  "extent/sampling/*/defective": 39,
  "inspected/*/outcome": "observed",
  "inspected/*/observations": ["seen"],
  "boards/*/rcds/*/testability": "cannot-be-tested",
  "boards/*/circuits/*/rcd/own/testability": "cannot-be-tested",
  "boards/*/phases": 3,
  "supply/phases": 3,
  "boards/*/rcds/*/serves": "listed",
  "observations/*/choice/classification": "C1",
  standingViews: [],
};

const DRAWN_ID = /^id\d+$/;

/** References of a drawn file led to what is there; a thing that an observation brings in has ids of its own. */
function led(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(led);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, inner]) => {
      if (inner === undefined) return [];
      if (typeof inner === "string" && DRAWN_ID.test(inner) && Object.hasOwn(ID, name))
        return [[name, ID[name as keyof typeof ID]]];
      if (name === "between") return [[name, ["run"]]];
      if (name === "feeds") return [[name, ["circuit"]]];
      return [[name, led(inner)]];
    }),
  );
}

/** What an observation brings in: ids of its own, and what it names. */
function broughtIn(lists: Readonly<Record<string, readonly Readonly<Record<string, unknown>>[]>>): unknown {
  const own = { place: "elsewhere", enclosure: "lid", between: ["drop"] } as const;
  const ids: Readonly<Record<string, string>> = { places: "elsewhere", enclosures: "lid", sections: "drop" };
  return Object.fromEntries(
    Object.entries(lists).map(([kind, list]) => [
      kind,
      list.map((one) => ({
        ...one,
        id: ids[kind] ?? `brought-${kind}`,
        ...Object.fromEntries(Object.entries(own).filter(([name]) => name in one)),
      })),
    ]),
  );
}

export interface FilledJob {
  readonly data: unknown;
  readonly file: InspectionFile;
  readonly found: readonly Filled[];
}

/** An inspection in which every member of the schema is filled. */
export function filledJob(form: Form): FilledJob {
  const filler = new Filler(form, GIVEN);
  const drawn = led(filler.file()) as Readonly<Record<string, unknown>> & {
    readonly observations: readonly (Readonly<Record<string, unknown>> & { readonly brings: never })[];
    readonly photographs: readonly { readonly sha256: string }[];
  };
  const [observation] = drawn.observations;
  const [photograph] = drawn.photographs;
  if (observation === undefined || photograph === undefined) throw new Error("nothing was observed");
  const data = {
    ...drawn,
    observations: [{ ...observation, brings: broughtIn(observation.brings), photographs: [photograph.sha256] }],
  };
  const file = opened(data);
  if (file === undefined) throw new Error(wrongIn(data));
  return { data, file, found: filler.found };
}
