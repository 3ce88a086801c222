/** One thing the law asks, in words. */
export interface DutyView {
  readonly id: string;
  readonly line: string;
  readonly asks: string;
  readonly grounds: string;
}

/** What the law asks because of a job as far as it goes: reminders, what presses first. */
export interface DutiesView {
  readonly notAdvice: string;
  /** That the report has to be passed on, or that nothing is known; empty where neither is so. */
  readonly remark: string;
  readonly duties: readonly DutyView[];
  /** Those with a date as an iCalendar file; none where no duty has one, or the day of the inspection is not recorded. */
  readonly calendar?: string;
}
