import type { Basis, Source } from "@good-grounds/core";

/** States where a group of rows comes from. Rows share the object, so that a source is listed once. */
export function source(
  work: string,
  edition: string,
  basis: Basis,
  more: { readonly formula?: string; readonly doubt?: string } = {},
): Source {
  return Object.freeze({ work, edition, basis, ...more });
}
