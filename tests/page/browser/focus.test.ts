import { describe, expect, test } from "vitest";
import { goTo, hasBrowser, inBrowser } from "./browser.js";

describe.runIf(hasBrowser)("where the keyboard is", () => {
  const { written, context, open } = inBrowser();

  test.each([
    ["a desk", 1280],
    ["a phone", 360],
  ])("is framed in black, 2 pixels or more, on a light ground: %s", async (_, width) => {
    const { page, faults } = await open(
      await written("templates/machines/boathouse.yaml", "--job", "templates/jobs/deck-pin.yaml"),
      await context({ viewport: { width, height: 800 } }),
    );
    const seen: string[] = [];
    for (const name of await page.locator(".rule li button").allTextContents()) {
      await goTo(page, name);
      await page.waitForTimeout(300);
      // From here on the browser shows where the focus is.
      await page.keyboard.press("Tab");
      const found = await page.evaluate(() => {
        const black = "rgb(0, 0, 0)";
        const light = (one: Element | null): boolean => {
          for (let at = one; at; at = at.parentElement) {
            const [r = 0, g = 0, b = 0, a = 1] = (getComputedStyle(at).backgroundColor.match(/[\d.]+/g) ?? []).map(
              Number,
            );
            if (a > 0) return r + g + b > 3 * 128;
          }
          return false;
        };
        const all = [
          ...document.querySelectorAll<HTMLElement>(
            "button, input, select, summary, a[href], [tabindex='0'], [contenteditable]",
          ),
        ].filter((one) => one.checkVisibility() && !(one as HTMLInputElement).disabled);
        const tried: string[] = [];
        const wrong = all.flatMap((one) => {
          one.focus();
          const framed = one.closest(".open") ?? one.closest(".cm-editor") ?? one;
          const style = getComputedStyle(framed);
          const inside = Number.parseFloat(style.outlineOffset) < 0;
          // A white ring beneath the frame, or the ground it lies on.
          const ringed = /^rgb\(255, 255, 255\) 0px 0px 0px (?:[5-9]|\d\d)px/.test(style.boxShadow);
          const ground = ringed || light(inside ? framed : framed.parentElement);
          tried.push(one.tagName);
          const framedBlack = style.outlineStyle === "solid" && style.outlineColor === black;
          return framedBlack && Number.parseFloat(style.outlineWidth) >= 2 && ground
            ? []
            : [`${one.outerHTML.slice(0, 80)}: ${style.outline}, ${style.boxShadow}`];
        });
        return { tried, wrong };
      });
      expect(found.wrong, name).toEqual([]);
      seen.push(...found.tried);
    }
    expect(seen.length).toBeGreaterThan(300);
    expect(faults).toEqual([]);
  });
});
