import { keptFolder, listenToFolder } from "../firm/kept.ts";
import { Engine, type Port } from "./messenger.ts";

/** The engine of this tab. */
export const engine = new Engine(
  () => new Worker(new URL("engine.js", document.baseURI), { type: "module" }) as unknown as Port,
  keptFolder,
);
listenToFolder(() => engine.folderChanged());
