/**
 * Marks a part of the report that is kept on one page as long as it has at most so many characters. An unbreakable part
 * that is longer than a page would be cut off, and one that is nearly as long leaves half a page empty.
 */
export function keptWhole<T extends object>(part: T, longest: number): T & { readonly whole: boolean } {
  return { ...part, whole: characters(part) <= longest };
}

function characters(data: unknown): number {
  if (typeof data === "string") return data.length;
  if (data === null || typeof data !== "object" || data instanceof Uint8Array) return 0;
  return Object.values(data).reduce<number>((sum, part) => sum + characters(part), 0);
}
