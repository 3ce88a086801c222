/** The marker every inspection file carries, so that another kind of document is recognised as such. */
export const FORMAT = "good-grounds-inspection";

/** The version this program writes. Older ones are migrated; newer ones are refused. */
export const VERSION = 3;
