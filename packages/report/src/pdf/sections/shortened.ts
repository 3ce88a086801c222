/** A text at most so long, cut at a word; the whole of it stands elsewhere in the report. */
export function shortened(text: string, longest = 240): string {
  const points = [...text];
  if (points.length <= longest) return text;
  const cut = points.slice(0, longest).join("");
  const space = cut.lastIndexOf(" ");
  return `${space > longest / 2 ? cut.slice(0, space) : cut} …`;
}
