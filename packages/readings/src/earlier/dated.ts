import type { DraftFile, Installation } from "@good-grounds/inspection";

/** An inspection whose date is recorded: without one nothing can be said of what came before and after. */
export type DatedInstallation = Installation<DraftFile & { readonly inspectedOn: string }>;

/** Tells whether the date of an inspection is recorded. */
export function isDated(installation: Installation): installation is DatedInstallation {
  return installation.inspectedOn !== undefined;
}
