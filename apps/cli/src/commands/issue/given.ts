import { RELEASE } from "@good-grounds/core";
import { type Given, type Register, readRegister } from "@good-grounds/issue";
import { readGiven } from "@good-grounds/issue/pdf";
import { readBytes, readText } from "../../read.ts";
import { ofFile } from "./faults.ts";

/** Reads a file and tells what it is. */
export async function givenAt(path: string): Promise<Given> {
  const bytes = new Uint8Array(await readBytes(path));
  return ofFile(path, () => readGiven(path, bytes, RELEASE));
}

/** The register of a firm from a file. */
export async function registerOf(path: string | undefined): Promise<Register | undefined> {
  if (path === undefined) return undefined;
  const text = await readText(path);
  return ofFile(path, () => readRegister(text));
}
