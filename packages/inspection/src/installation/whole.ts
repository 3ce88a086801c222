import type { InspectionFile } from "../schema/file.ts";
import type { Installation } from "./model.ts";

/** A finished inspection, resolved: what a report is made from. */
export type WholeInstallation = Installation<InspectionFile>;
