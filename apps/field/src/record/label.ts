/** A job as the list of jobs shows it. */
export interface JobLabel {
  readonly id: string;
  readonly title: string;
  readonly changed: string;
  /** The demonstration, which may be thrown away. */
  readonly invented: boolean;
}
