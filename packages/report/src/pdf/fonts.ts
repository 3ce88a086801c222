import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { coverageOf } from "./coverage.ts";

/** The faces the layout uses; loading no others keeps the start short. */
const FACES = [
  "400Regular/SourceSans3_400Regular",
  "400Regular_Italic/SourceSans3_400Regular_Italic",
  "600SemiBold/SourceSans3_600SemiBold",
  "700Bold/SourceSans3_700Bold",
];

/** Faces as bytes, and the characters that every one of them has a glyph for. */
export interface Fonts {
  readonly faces: readonly Buffer[];
  readonly covers: (point: number) => boolean;
}

let loaded: Fonts | undefined;

/** Reads the faces from their package once. They are looked for from this module on, bundled or not. */
export function fonts(): Fonts {
  if (loaded !== undefined) return loaded;
  const require = createRequire(import.meta.url);
  const faces = FACES.map((face) => readFileSync(require.resolve(`@expo-google-fonts/source-sans-3/${face}.ttf`)));
  const coverages = faces.map(coverageOf);
  loaded = { faces, covers: (point) => coverages.every((has) => has(point)) };
  return loaded;
}
