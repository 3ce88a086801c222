/** Standard conductor sizes, mm² (IEC 60228). */
export const STANDARD_SIZES = [
  0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240, 300, 400, 500, 630,
] as const;

/** The next standard size that is not smaller, mm². */
export function nextStandardSize(area: number): number | undefined {
  return STANDARD_SIZES.find((size) => size >= area - 1e-9);
}
