import { type Fact, fact, factNotKnown, matter, type Path, type Silence } from "@good-grounds/core";
import type { DraftFile } from "@good-grounds/inspection";
import type { SpokenOf } from "../spoken-of/index.ts";
import type { Leaf } from "./property.ts";

/**
 * What the resolved installation does not carry as leaves of its own: the brief, and marks of boards. This is the one
 * place here that reads the file; a property whose leaf the installation carries reads it there.
 */
type BoardEntry = NonNullable<DraftFile["boards"]>[number];
type Brief = NonNullable<DraftFile["brief"]>;

type Entry<W> = W | { readonly notKnown: Silence; readonly reason: string } | undefined;

/** A leaf of the brief; not known where it is left out. */
export function ofBrief<W extends string | boolean>(
  { installation: { file } }: SpokenOf,
  key: keyof Brief,
  name: string,
  read: (brief: Brief) => W | undefined,
): readonly Leaf<Fact<W>>[] {
  return [[["brief"], leafOf(matter(String(key), name), read(file.brief ?? {}), ["brief", String(key)])]];
}

/** A leaf of the board spoken of, also where one of its circuits is. */
export function ofBoard<W extends string | boolean>(
  { installation: { file }, board }: SpokenOf,
  key: keyof BoardEntry,
  name: string,
  read: (entry: BoardEntry) => Entry<W>,
): readonly Leaf<Fact<W>>[] {
  const { boards = [] } = file;
  const at = boards.findIndex(({ id }) => id === board?.id);
  const entry = boards[at];
  if (entry === undefined) return [];
  return [[["boards", at], leafOf(matter(String(key), name), read(entry), ["boards", at, String(key)])]];
}

function leafOf<W extends string | boolean>(about: ReturnType<typeof matter>, entry: Entry<W>, path: Path): Fact<W> {
  if (entry === undefined) return factNotKnown(about, path);
  if (typeof entry === "object") return factNotKnown(about, path, entry.notKnown, entry.reason);
  return fact(about, entry, path);
}
