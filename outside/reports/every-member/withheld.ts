/** Members of the file that no page shows, each with the reason. The attached file has all of them but the inspector's own notes. */
export const WITHHELD: readonly { readonly members: RegExp; readonly why: string }[] = [
  { members: /^(format|version)$/, why: "how the file is written says nothing of the installation" },
  { members: /(^|\/)id$/, why: "ids join the parts of the file; what they name is printed by its name" },
  { members: /^ownFigures\//, why: "notes to a check of one's own figures are for the inspector alone" },
  {
    members: /(readings\/\w+|esistance|\/reading|conductorTemperature)\/at$/,
    why: "readings of a part are told from the first to the last; the time of each stands in the attached file",
  },
  { members: /^edition$/, why: "the edition is printed by its full name, which comes with what was worked out" },
  {
    members: /sharedMisfits\/\*\/kind$/,
    why: "says which misfit is shown; the misfit itself is worked out from the readings",
  },
  { members: /^topics\//, why: "printed of the folder that was reasoned with, not of the one the file names" },
  { members: /^signatures\/\*\/(content|drawn)$/, why: "printed only where the signature stands for the content" },
];
