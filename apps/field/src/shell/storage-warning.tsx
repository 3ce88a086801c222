import { Notice } from "../parts/notice.tsx";
import { SHELL } from "../words/shell.ts";
import { bytes } from "./bytes.ts";
import { isLittle, useStorage } from "./storage.ts";

/** Warns while there is still time to do something about it. */
export function StorageWarning() {
  const storage = useStorage();
  if (storage?.leftBytes === undefined || !isLittle(storage)) return null;
  return (
    <Notice kind="status">
      <p>{SHELL.little(bytes(storage.leftBytes))}</p>
    </Notice>
  );
}
