const SIGNS: Readonly<Record<string, string>> = { lt: "<", gt: ">", quot: '"', amp: "&" };

/** The description a drawing carries for readers who do not see it. */
export function describedIn(svg: string): string {
  const written = /<desc>([^<]*)<\/desc>/.exec(svg)?.[1] ?? "";
  return written.replaceAll(/&(lt|gt|quot|amp);/g, (sign, name: string) => SIGNS[name] ?? sign);
}
