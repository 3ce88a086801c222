/** The release of this program, as statements of issue name it. */
export const VERSION = "0.1.0";
