/** An amount of storage in words: "48 MB". */
export function bytes(count: number): string {
  if (count < 1e6) return `${Math.ceil(count / 1e3)} kB`;
  if (count < 1e9) return `${Math.round(count / 1e6)} MB`;
  return `${(count / 1e9).toFixed(1)} GB`;
}
