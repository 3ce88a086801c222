type Segment = readonly [first: number, last: number];

/** The characters a font has glyphs for, from the Unicode table of its `cmap` (OpenType, formats 4 and 12). */
export function coverageOf(bytes: Uint8Array): (point: number) => boolean {
  const font = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
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

function tableOf(font: DataView, tag: string): number {
  const count = font.getUint16(4);
  for (let i = 0; i < count; i++) {
    const at = 12 + 16 * i;
    if (tagAt(font, at) === tag) return font.getUint32(at + 8);
  }
  throw new Error(`the font has no table ${tag}`);
}

function segmentsOf(font: DataView, cmap: number): readonly Segment[] {
  const count = font.getUint16(cmap + 2);
  let best: number | undefined;
  for (let i = 0; i < count; i++) {
    const at = cmap + 4 + 8 * i;
    const [platform, encoding] = [font.getUint16(at), font.getUint16(at + 2)];
    const table = cmap + font.getUint32(at + 4);
    const format = font.getUint16(table);
    if (platform === 3 && (encoding === 10 || encoding === 1) && (format === 12 || format === 4)) {
      if (best === undefined || format === 12) best = table;
    }
  }
  if (best === undefined) throw new Error("the font has no Unicode character map");
  return font.getUint16(best) === 12 ? groups(font, best) : ranges(font, best);
}

/** Format 12: groups of consecutive characters. */
function groups(font: DataView, table: number): readonly Segment[] {
  return Array.from({ length: font.getUint32(table + 12) }, (_, i) => {
    const at = table + 16 + 12 * i;
    return [font.getUint32(at), font.getUint32(at + 4)] as const;
  });
}

/** Format 4: ends and starts of segments in two arrays. The last segment only closes the list. */
function ranges(font: DataView, table: number): readonly Segment[] {
  const twice = font.getUint16(table + 6);
  return Array.from({ length: twice / 2 - 1 }, (_, i) => {
    return [font.getUint16(table + 16 + twice + 2 * i), font.getUint16(table + 14 + 2 * i)] as const;
  });
}

function tagAt(font: DataView, at: number): string {
  return String.fromCharCode(...[0, 1, 2, 3].map((i) => font.getUint8(at + i)));
}
