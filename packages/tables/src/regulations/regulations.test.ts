import { expect, test } from "vitest";
import { REGULATION_GROUPS, REGULATIONS, regulation } from "./index.ts";

/** Numbers with the basis of what is said about them: p seen on a page, m remembered. */
const EXPECTED = `
  411.3.3 p  411.3.4 m  415.1.1 p  522.6.202 p  522.6.203 p  522.6.201 m  701.411.3.3 p  701.415.2 p  531.3.3 p
  411.5.2 p  411.5.3 p  421.1.201 p  421.1.7 p  443.4.1 p  521.10.202 p  411.3.1.2 p  411.3.1.1 m  462.1 m  462.2 m
  537.2 m  530.3.201 p  514.8.1 m  514.9.1 m  514.10.1 m  514.11.1 m  514.12.1 p  514.12.2 p  514.13.1 m  514.14.1 m
  514.15.1 m  416.1 m  416.2.1 p  416.2.2 p  416.2.3 m  416.2.4 p  417.2 m  417.3 m  410.3.5 m  651.1 m  651.2 m  651.3 m
  651.4 p  651.5 m  652.1 m  652.2 m  653.1 p  653.2 p  653.3 m  653.4 p  653.5 m
`
  .trim()
  .split(/\s{2,}/)
  .map((pair) => pair.split(" "));

test.each(EXPECTED)("%s is carried, with its basis (%s)", (id = "", mark) => {
  expect(regulation(id)?.source.basis).toBe(mark === "p" ? "published" : "memory");
});

test("the model forms are carried and informative", () => {
  expect(regulation("Appendix 6")).toMatchObject({ group: "periodic-inspection", source: { basis: "published" } });
  expect(regulation("Appendix 6")?.gist).toContain("informative");
});

test("every regulation is found by its number, and by nothing else", () => {
  for (const one of REGULATIONS) expect(regulation(one.id)).toBe(one);
  for (const id of ["", "411.3.33", "411.3", " 411.3.3", "toString", "__proto__"])
    expect(regulation(id)).toBeUndefined();
});

test("numbers have the form of a regulation or an appendix, gists are whole sentences, groups are known", () => {
  const groups = new Set<string>();
  for (const { id, gist, group, source } of REGULATIONS) {
    expect(id).toMatch(/^(\d{3}(\.\d{1,3}){0,3}|Appendix \d{1,2})$/);
    expect(gist, id).toMatch(/^[A-Z].*\.$/s);
    expect(gist.length, id).toBeLessThan(260);
    expect(source.work).toBe(`BS 7671 ${id}`);
    groups.add(group);
  }
  expect([...groups].sort()).toEqual([...REGULATION_GROUPS].sort());
});

test("doubts are kept: numbering of 522.6, notices, arc fault detection", () => {
  for (const id of ["522.6.202", "522.6.203", "514.12.1", "514.12.2", "421.1.7"])
    expect(regulation(id)?.source.doubt?.length, id).toBeGreaterThan(20);
  expect(regulation("530.3.201")?.source.edition).toBe("2018+A3 and later");
});
