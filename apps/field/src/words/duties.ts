/** Words around what the law asks; what it asks comes from the report's own words. */
export const DUTIES = {
  title: "What the law asks",
  looking: "Looking up what the law asks …",
  failed: "What the law asks could not be found out. Open this screen again.",
  more: (count: number) => `Show all (${count} more)`,
  calendar: "Save the dates as a calendar",
  ordered: "The letting",
  orderedHelp:
    "The dates of the law run from these. What is left out is not known, and the report then says “would apply if”.",
  starts: "First day the tenant may live there",
  granted: "Day the tenancy was granted",
  equipmentChecked: "Day the landlord's equipment was last checked",
  workWithin: "Days this report allows for the work",
  workWithinHelp:
    "Only where it is less than the law allows. The day of the inspection is day 1. Leave it empty otherwise.",
} as const;
