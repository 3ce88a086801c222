/** Shows the row of a field whole, once it is drawn as the open one. */
export function bringIntoView(control: HTMLElement | null): void {
  requestAnimationFrame(() => control?.closest(".reading, .live-gate")?.scrollIntoView({ block: "nearest" }));
}
