import type { Path } from "@good-grounds/core";

type Holder = Record<string | number, unknown>;

const GONE = Symbol("left out");

/** Takes what stands at places out of a document, in place; where nothing stands there, what lacks it. */
export function leaveOut(document: object, places: readonly Path[]): void {
  for (const path of places) mark(document as Holder, path);
  sweep(document);
}

function mark(root: Holder, path: Path): void {
  let holder: Holder = root;
  let last: (() => void) | undefined;
  for (const step of path) {
    const here = holder;
    if (!Object.hasOwn(here, step) || here[step] === GONE) break;
    last = () => {
      here[step] = GONE;
    };
    const next = here[step];
    if (typeof next !== "object" || next === null) break;
    holder = next as Holder;
  }
  last?.();
}

function sweep(value: unknown): void {
  if (Array.isArray(value)) {
    for (let i = value.length - 1; i >= 0; i -= 1) if (value[i] === GONE) value.splice(i, 1);
    for (const member of value) sweep(member);
  } else if (typeof value === "object" && value !== null) {
    for (const [name, member] of Object.entries(value)) {
      if (member === GONE) delete (value as Holder)[name];
      else sweep(member);
    }
  }
}
