/** The id of the control that writes a place; the app goes back to it by this name. */
export function fieldId(path: string, value?: string): string {
  return value === undefined ? `at:${path}` : `at:${path}=${value}`;
}
