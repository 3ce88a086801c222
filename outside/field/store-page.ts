/// <reference lib="dom" />
import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** What the page of the stores has of the app, as `window.store`. */
export interface StoreWindow {
  readonly store: Pick<typeof import("../../apps/field/src/record/session.ts"), "Session" | "discard"> &
    Pick<typeof import("../../apps/field/src/record/sound.ts"), "isEntry" | "isWhole"> &
    Pick<typeof import("../../apps/field/src/record/store.ts"), "entriesOf" | "jobs" | "storesChecked"> &
    Pick<typeof import("../../apps/field/src/record/stores.ts"), "stores">;
}

/** Writes a site to a folder that is nothing but a page with the app's own stores. */
export async function buildStorePage(folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true });
  writeFileSync(
    `${folder}/index.html`,
    '<!doctype html><title>Stores</title><script type="module" src="store.js"></script>',
  );
  await build({
    stdin: {
      contents: `import { discard, Session } from "./apps/field/src/record/session.ts";
        import { isEntry, isWhole } from "./apps/field/src/record/sound.ts";
        import { entriesOf, jobs, storesChecked } from "./apps/field/src/record/store.ts";
        import { stores } from "./apps/field/src/record/stores.ts";
        window.store = { discard, Session, isEntry, isWhole, entriesOf, jobs, storesChecked, stores };`,
      resolveDir: root,
    },
    bundle: true,
    format: "esm",
    outfile: `${folder}/store.js`,
  });
  await build({
    entryPoints: [`${root}apps/field/src/record/job-files-worker.ts`],
    bundle: true,
    format: "esm",
    outfile: `${folder}/job-files.js`,
  });
}
