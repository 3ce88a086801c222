/** Now by the clock of this device: UTC, to the second, as statements of issue write a moment. */
export function secondNow(): string {
  return `${new Date().toISOString().slice(0, 19)}Z`;
}
