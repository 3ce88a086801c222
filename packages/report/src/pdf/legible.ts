/** The smallest print of the report, in points. */
const SMALLEST = 7;

/** The width, in points, at which the smallest letters of a drawing are as large as the smallest print of the report. */
export function legibleWidth(svg: string): number {
  const width = Number(/viewBox="0 0 ([\d.]+) /.exec(svg)?.[1] ?? 0);
  const sizes = [...svg.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size));
  return (width * SMALLEST) / Math.min(...sizes);
}
