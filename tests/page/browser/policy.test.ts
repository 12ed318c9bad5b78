import { describe, expect, test } from "vitest";
import { goTo, hasBrowser, inBrowser, pasted } from "./browser.js";

const outside = "https://example.invalid";
const evil = (word: string) =>
  `${word} <img src=x onerror=ran()><svg onload=ran()></svg></text></svg><script>ran()</script>&#60;b&#62;`;
const quoted = (word: string) => JSON.stringify(evil(word));

/** Markup wherever a machine's file takes words of its owner's. */
const machine = `name: ${quoted("M")}
revision: ${quoted("R")}
drive:
  motor: { speed: 1400 }
  stages:
    - name: ${quoted("S")}
      steps: [{ label: ${quoted("A")}, driver: 80, driven: 50 }, { label: B, driver: 50, driven: 80 }]
handwheels:
  - { name: ${quoted("W")}, feed: 2, moves: across, dial: { shape: drum, diameter: 60, width: 12 } }
stops: [{ name: ${quoted("T")}, handwheel: ${quoted("W")}, length: 10 }]
tapers: [{ name: ${quoted("P")}, included: 5 }]
scales: [{ name: ${quoted("C")}, length: 50, divisions: 1 }]
`;

describe.runIf(hasBrowser)("the page's policy", () => {
  const { written, context, open } = inBrowser();

  test("refuses every script that is not its own, and every way out", async () => {
    const { page, faults } = await open(await written(), await context());
    const found = await page.evaluate(async (to) => {
      const refused: string[] = [];
      document.addEventListener("securitypolicyviolation", ({ effectiveDirective }) =>
        refused.push(effectiveDirective),
      );
      const scope = globalThis as unknown as { ran?: boolean };
      const said = async (work: () => unknown): Promise<string> => {
        try {
          await work();
          return "went through";
        } catch {
          return "refused";
        }
      };
      const script = document.createElement("script");
      script.textContent = "globalThis.ran = true";
      document.body.append(script);
      const from = document.createElement("script");
      from.src = `${to}/x.js`;
      document.body.append(from);
      const holder = document.createElement("div");
      holder.innerHTML = `<img src=x onerror="globalThis.ran = true"><img src="${to}/x.png"><iframe src="${to}"></iframe><object data="${to}"></object>
        <link rel=stylesheet href="${to}/x.css"><a href="javascript:globalThis.ran = true">x</a><form action="${to}"><button>x</button></form>`;
      document.body.append(holder);
      holder.querySelector("a")?.click();
      holder.querySelector("button")?.click();
      const ways = {
        fetch: await said(() => fetch(to)),
        request: await said(
          () =>
            new Promise((done, failed) => {
              const asked = new XMLHttpRequest();
              asked.onload = done;
              asked.onerror = failed;
              asked.open("GET", to);
              asked.send();
            }),
        ),
        socket: await said(
          () =>
            new Promise((done, failed) => {
              const socket = new WebSocket(to.replace("https", "wss"));
              socket.onopen = done;
              socket.onerror = failed;
            }),
        ),
        function: await said(() => new Function("globalThis.ran = true")()),
        import: await said(() => import(/* @vite-ignore */ `${to}/x.mjs`)),
      };
      navigator.sendBeacon(to, "x");
      await new Promise((done) => setTimeout(done, 500));
      return { ran: scope.ran ?? false, ways, refused: [...new Set(refused)].sort() };
    }, outside);
    expect(found.ran).toBe(false);
    expect(new Set(Object.values(found.ways))).toEqual(new Set(["refused"]));
    for (const kind of ["connect-src", "script-src-elem", "script-src-attr", "img-src", "frame-src", "style-src-elem"])
      expect(found.refused, kind).toContain(kind);
    expect(faults.filter((words) => words.startsWith("asked for"))).toEqual([]);
  });

  test("what a reader writes is text on every sheet and in every view", async () => {
    const { page, faults } = await open(await written("templates/machines/boathouse.yaml"), await context());
    await page.evaluate(() => {
      (globalThis as unknown as { ran: () => void }).ran = () => {
        throw new Error("something was run");
      };
    });
    await page.getByRole("button", { name: "text", exact: true }).click();
    await pasted(page, machine);
    await page.locator(".sheet svg").first().waitFor();
    const strange = () =>
      page.evaluate(() => [
        ...[...document.querySelectorAll("img, iframe, object, script[src], #root script, foreignObject")].map(
          ({ outerHTML }) => outerHTML.slice(0, 100),
        ),
        ...[...document.querySelectorAll("*")].flatMap((one) =>
          [...one.attributes].filter(({ name }) => name.startsWith("on")).map(({ name }) => `${one.nodeName} ${name}`),
        ),
        ...[...document.querySelectorAll(".sheet script, .sheet a, .sheet image, .sheet use[href^='http']")].map(
          ({ nodeName }) => nodeName,
        ),
      ]);
    let shown = 0;
    for (const sheet of await page
      .locator("#sheet option")
      .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value))) {
      await page.locator("#sheet").selectOption(sheet);
      await page.waitForTimeout(150);
      shown += await page.locator(".sheet text", { hasText: "<img" }).count();
      expect(await strange(), sheet).toEqual([]);
    }
    expect(shown).toBeGreaterThan(0);
    for (const view of await page.locator(".rule li button").allInnerTexts()) {
      await goTo(page, view);
      await page.waitForTimeout(150);
      expect(await strange(), view).toEqual([]);
    }
    expect(faults).toEqual([]);
  });
});
