/** The release of this program, as statements of issue name it. It is that of every package here. */
export const RELEASE = "0.1.0";
