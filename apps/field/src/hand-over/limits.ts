/** More than any job's copy has, as a file and unpacked, in bytes; beyond it nothing is written and nothing unpacked. */
export const LARGEST = 2_000_000_000;
/** More than the record of any job has without its photographs, in bytes. */
export const LARGEST_RECORD = 256 * 1024 * 1024;
/** More than any photograph has, in bytes. */
export const LARGEST_PHOTOGRAPH = 30 * 1024 * 1024;
