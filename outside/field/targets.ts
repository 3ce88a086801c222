/// <reference lib="dom" />

/** Controls lower than a thumb in a wet glove needs, 48 points; run in the page. Links within a sentence are part of it. */
export function smallTargets(): readonly string[] {
  const controls =
    "button, a, summary, select, input:not([type=checkbox]):not([type=radio]), textarea, .choice, .toggle";
  return [...document.querySelectorAll(controls)]
    .filter((one) => one.checkVisibility() && one.closest(".unseen, .skip, .on-focus") === null)
    .filter((one) => !one.matches(".choice input, .button input, .toggle input"))
    .filter((one) => !(one.matches("p a") && one.closest(".way-links") === null && isWithinWords(one)))
    .filter((one) => one.getBoundingClientRect().height < 47.5)
    .map(
      (one) =>
        `${one.tagName.toLowerCase()} ${one.textContent?.trim().slice(0, 30)} ${one.getBoundingClientRect().height}`,
    );

  function isWithinWords(link: Element): boolean {
    const around = link.parentElement?.textContent?.trim() ?? "";
    return around.length > (link.textContent?.trim().length ?? 0);
  }
}
