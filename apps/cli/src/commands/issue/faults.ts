import { StatementFault } from "@good-grounds/issue";
import { EXIT, Stop } from "../../host.ts";

/** Does something with what a file says; a fault in it stops the command with the name of the file. */
export async function ofFile<T>(name: string, act: () => T | Promise<T>): Promise<T> {
  try {
    return await act();
  } catch (error) {
    if (error instanceof StatementFault) throw new Stop(EXIT.input, `${name}: ${error.message}.`);
    throw error;
  }
}
