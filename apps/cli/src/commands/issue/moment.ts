/** Now by the clock of this device: UTC, to the second. */
export function momentNow(): string {
  return `${new Date().toISOString().slice(0, 19)}Z`;
}
