import { LENGTH_FOUND } from "@good-grounds/core";
import type { ComponentChildren, VNode } from "preact";
import { describe, expect, it, vi } from "vitest";
import type { Spot } from "../../keypad/spot.ts";
import type { Value } from "../../record/entry.ts";

// Screens listen to the window when they are loaded; there is none here.
vi.hoisted(() => {
  vi.stubGlobal("addEventListener", () => undefined);
  vi.stubGlobal("document", { addEventListener: () => undefined, documentElement: {} });
});

/** A component of a screen, loaded by its place: tests are checked without the types of markup. */
async function component(place: string, name: string): Promise<(props: object) => VNode> {
  const screen: Readonly<Record<string, (props: object) => VNode>> = await import(new URL(place, import.meta.url).href);
  const found = screen[name];
  if (found === undefined) throw new Error(`no ${name} in ${place}`);
  return found;
}

const MainSwitchFields = await component("../circuit/main-switch-fields.tsx", "MainSwitchFields");
const CableFields = await component("../circuit/cable-fields.tsx", "CableFields");
const OtherSources = await component("../supply/other-sources.tsx", "OtherSources");

interface Asked {
  readonly spot: Spot;
  readonly options: Readonly<Record<string, string>>;
  readonly written?: (word: string) => Value;
  readonly isStated?: boolean;
}

/** Every question of a tree that is answered by a word. */
function asked(tree: ComponentChildren): readonly Asked[] {
  if (Array.isArray(tree)) return tree.flatMap(asked);
  if (typeof tree !== "object" || tree === null || !("props" in tree)) return [];
  const { props } = tree as VNode<Partial<Asked>>;
  return [...(props.options === undefined ? [] : [props as Asked]), ...asked(props.children)];
}

const at = (questions: readonly Asked[], member: string) =>
  questions.find(({ spot }) => [spot.path, ...(spot.inner ?? [])].join("/").endsWith(`/${member}`));

describe("what the app asks about parts of the installation", () => {
  const path = "boards/cu/mainSwitch";
  const ofSwitch = asked(MainSwitchFields({ path, rated: "Rated", usual: [], asksFitted: true }));
  const members = OtherSources({}).props as unknown as { readonly children: (at: string) => ComponentChildren };
  const ofSource = asked(members.children("supply/otherSources/s1"));

  it("asks whether a board has a main switch, with a way to say that it is not known", () => {
    const fitted = at(ofSwitch, "fitted");
    expect(fitted?.spot).toEqual({ path, inner: ["fitted"] });
    expect(Object.keys(fitted?.options ?? {}).map((word) => fitted?.written?.(word))).toEqual([true, false]);
    expect(fitted?.isStated).not.toBe(false);
  });

  it("asks how the length of a cable was found, in every word that a file may have", () => {
    const found = at(asked(CableFields({ circuit: "boards/cu/circuits/c1" })), "lengthFound");
    expect(found?.spot).toEqual({ path: "boards/cu/circuits/c1/cable/lengthFound" });
    expect(Object.keys(found?.options ?? {})).toEqual([...LENGTH_FOUND]);
  });

  it("asks whether notices warn of another source", () => {
    const notice = at(ofSource, "notice");
    expect(notice?.spot).toEqual({ path: "supply/otherSources/s1/notice" });
    expect(Object.keys(notice?.options ?? {}).map((word) => notice?.written?.(word))).toEqual([true, false]);
    expect(notice?.isStated).not.toBe(false);
  });
});
