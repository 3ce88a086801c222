/// <reference lib="dom" />

/** What of a screen does not hold when its text is twice as large; run in the page. */
export interface Lost {
  /** How far the page can be scrolled sideways. */
  readonly over: number;
  /** Elements that stand out of the page sideways, outside of what is meant to be scrolled by itself. */
  readonly outside: readonly string[];
  /** Words that are cut off where nothing can be scrolled to show them. */
  readonly cut: readonly string[];
  /** The part of the height that stays covered while the page is scrolled: its head, its alarms, its keys. */
  readonly covered: number;
}

export function lostAtThisSize(): Lost {
  const width = document.documentElement.clientWidth;
  const name = (one: Element) =>
    `${one.tagName.toLowerCase()}.${one.className} ${one.textContent?.trim().slice(0, 30)}`;
  const seen = (one: Element) =>
    one.checkVisibility({ opacityProperty: true, visibilityProperty: true }) &&
    one.closest(".unseen, .skip, .on-focus, svg, [aria-hidden=true]") === null;
  // A drawing at its full size, and a table, may be scrolled by themselves: they have two dimensions of their own.
  const scrolled = (one: Element) => one.closest(".picture, .full-size, .scroll") !== null;
  const all = [...document.querySelectorAll("body *")].filter((one) => seen(one) && !scrolled(one));
  const outside = all.filter((one) => {
    const { left, right, width: own } = one.getBoundingClientRect();
    return own > 0 && (right > width + 1 || left < -1);
  });
  const cut = all.filter((one) => {
    const { overflowX, overflowY } = getComputedStyle(one);
    const hides = (overflow: string) => overflow === "hidden" || overflow === "clip";
    const hasWords = [...one.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim());
    return (
      hasWords &&
      ((hides(overflowX) && one.scrollWidth > one.clientWidth + 1) ||
        (hides(overflowY) && one.scrollHeight > one.clientHeight + 1))
    );
  });
  scrollTo(0, document.documentElement.scrollHeight / 2);
  const stays = all
    .filter((one) => ["fixed", "sticky"].includes(getComputedStyle(one).position))
    .map((one) => ({ one, box: one.getBoundingClientRect() }))
    // What sticks at neither edge now covers nothing it would not cover anyway.
    .filter(({ box }) => box.height > 0 && (box.top <= 1 || box.bottom >= innerHeight - 1 || isUnder(box)));
  function isUnder(box: DOMRect): boolean {
    const head = document.querySelector(".top")?.getBoundingClientRect();
    return head !== undefined && Math.abs(box.top - head.bottom) <= 1;
  }
  const lines = new Set<number>();
  for (const { box } of stays)
    for (let y = Math.max(0, Math.round(box.top)); y < Math.min(innerHeight, box.bottom); y += 1) lines.add(y);
  scrollTo(0, 0);
  return {
    over: document.documentElement.scrollWidth - width,
    outside: outside.slice(0, 5).map(name),
    cut: cut.slice(0, 5).map(name),
    covered: Math.round((lines.size / innerHeight) * 100) / 100,
  };
}
