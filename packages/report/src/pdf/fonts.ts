import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

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

type Segment = readonly [first: number, last: number];

/** The characters a font has glyphs for, from the Unicode table of its `cmap` (OpenType, formats 4 and 12). */
function coverageOf(font: Buffer): (point: number) => boolean {
  const segments = segmentsOf(font, tableOf(font, "cmap"));
  return (point) => {
    let [low, high] = [0, segments.length - 1];
    while (low <= high) {
      const middle = (low + high) >> 1;
      const [first, last] = segments[middle] as Segment;
      if (point < first) high = middle - 1;
      else if (point > last) low = middle + 1;
      else return true;
    }
    return false;
  };
}

function tableOf(font: Buffer, tag: string): number {
  const count = font.readUInt16BE(4);
  for (let i = 0; i < count; i++) {
    const at = 12 + 16 * i;
    if (font.toString("latin1", at, at + 4) === tag) return font.readUInt32BE(at + 8);
  }
  throw new Error(`the font has no table ${tag}`);
}

function segmentsOf(font: Buffer, cmap: number): readonly Segment[] {
  const count = font.readUInt16BE(cmap + 2);
  let best: number | undefined;
  for (let i = 0; i < count; i++) {
    const at = cmap + 4 + 8 * i;
    const [platform, encoding] = [font.readUInt16BE(at), font.readUInt16BE(at + 2)];
    const table = cmap + font.readUInt32BE(at + 4);
    const format = font.readUInt16BE(table);
    if (platform === 3 && (encoding === 10 || encoding === 1) && (format === 12 || format === 4)) {
      if (best === undefined || format === 12) best = table;
    }
  }
  if (best === undefined) throw new Error("the font has no Unicode character map");
  return font.readUInt16BE(best) === 12 ? groups(font, best) : ranges(font, best);
}

/** Format 12: groups of consecutive characters. */
function groups(font: Buffer, table: number): readonly Segment[] {
  return Array.from({ length: font.readUInt32BE(table + 12) }, (_, i) => {
    const at = table + 16 + 12 * i;
    return [font.readUInt32BE(at), font.readUInt32BE(at + 4)] as const;
  });
}

/** Format 4: ends and starts of segments in two arrays. The last segment only closes the list. */
function ranges(font: Buffer, table: number): readonly Segment[] {
  const twice = font.readUInt16BE(table + 6);
  return Array.from({ length: twice / 2 - 1 }, (_, i) => {
    return [font.readUInt16BE(table + 16 + twice + 2 * i), font.readUInt16BE(table + 14 + 2 * i)] as const;
  });
}
