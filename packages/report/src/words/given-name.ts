/** The name by which a figure is given by hand: "atRated" is given as "at-rated". */
export function givenName(need: string): string {
  return need.replaceAll(/([a-z0-9])([A-Z])/g, "$1-$2").toLowerCase();
}
