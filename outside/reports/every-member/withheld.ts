/** Members of the file that no page shows, each with the reason. The attached file has all of them but the inspector's own notes. */
export const WITHHELD: readonly { readonly members: RegExp; readonly why: string }[] = [
  { members: /^(format|version)$/, why: "how the file is written says nothing of the installation" },
  { members: /(^|\/)id$/, why: "ids join the parts of the file; what they name is printed by its name" },
  { members: /^ownFigures\//, why: "notes to a check of one's own figures are for the inspector alone" },
];
