/**
 * A word of the inspection file as a reader would say it: "flat-twin-and-cpc" is "flat twin and cpc",
 * "70C-thermoplastic" is "70 °C thermoplastic". A socket-outlet keeps its hyphen; numbers of standards and systems ("BS 88-2", "TN-C-S") stay as they are.
 */
export function spoken(word: string): string {
  return word.replace(/\b(\d+)C-(?=[a-z])/g, "$1 °C ").replace(/(?<=[a-z])(?<!\bsocket)-(?=[a-z])/g, " ");
}
