import type { ReadonlySignal } from "@preact/signals";
import { useComputed, useSignal } from "@preact/signals";
import { useEffect, useMemo, useRef } from "preact/hooks";
import type { DrawnPage } from "../work/protocol.js";
import { type Desk, isBeginning } from "./desk.js";
import { inForm } from "./form/inForm.js";
import { inPage } from "./inPage.js";
import { Refused } from "./Refused.js";
import type { View } from "./view.js";
import { newest } from "./worker.js";

type PaperProps = {
  readonly desk: Desk;
  readonly view: View;
  /** As measured on this screen; undefined while nobody has. */
  readonly pixelsPerMm: ReadonlySignal<number | undefined>;
};

/** What a browser takes a millimetre for, whatever the screen. */
const SUPPOSED = 96 / 25.4;

/** A sheet as it will come out, redrawn while one types. */
export function Paper({ desk, view: { sheet, chosen }, pixelsPerMm }: PaperProps) {
  const { answer, stop } = useMemo(
    () =>
      newest(desk.asker, "sheet", () => {
        const job = desk.job.value?.name.value;
        return { files: desk.files.value, asked: { sheet: sheet.value, ...(job !== undefined && { job }) } };
      }),
    [desk],
  );
  useEffect(() => stop, [stop]);
  const near = useSignal<"fit" | "near" | "true">("fit");
  const pages = useComputed(() => answer.value?.pages ?? []);
  const [size] = pages.value;
  const refused = answer.value?.refused ?? [];
  /** The sheet whose printing waits for a word, since a job on it is refused. */
  const asking = useSignal<string | undefined>(undefined);
  const title = desk.sheets.value.find(({ name }) => name === sheet.value)?.title ?? sheet.value;
  return (
    <section class="paper" aria-label={`Paper: ${title}`}>
      <div class="chooser">
        <label for="sheet">Sheet</label>
        <select id="sheet" value={sheet.value} onChange={(event) => (chosen.value = event.currentTarget.value)}>
          {desk.sheets.value.map(({ name, title: words, why }) => (
            <option value={name} key={name}>
              {why === undefined ? "● " : "○ "}
              {words}
            </option>
          ))}
        </select>
        <span class="about">● is made, ○ is not made yet</span>
        <fieldset class="sizes bare" aria-label="Size on the screen">
          {(["fit", "near", "true"] as const).map((size) => (
            <button type="button" key={size} aria-pressed={near.value === size} onClick={() => (near.value = size)}>
              {size === "fit" ? "whole" : size === "near" ? "close up" : "true size"}
            </button>
          ))}
        </fieldset>
        <button
          type="button"
          disabled={pages.value.length === 0}
          onClick={() => {
            if (refused.length > 0) asking.value = sheet.value;
            else print();
          }}
        >
          print
        </button>
        {chosen.value !== undefined && (
          <p class="about">
            It stays while you go about.{" "}
            <button type="button" onClick={() => (chosen.value = undefined)}>
              let the stations choose
            </button>
          </p>
        )}
        {size && <style>{`@page { size: ${size.width}mm ${size.height}mm; margin: 0 }`}</style>}
      </div>
      {answer.value?.why !== undefined && (
        <p class="lacking" role="status">
          Not yet:{" "}
          {isBeginning(desk.machine.value.text.value) ? "the machine has no name" : inForm(inPage(answer.value.why))}.
        </p>
      )}
      {asking.value === sheet.value && refused.length > 0 && (
        <Refused files={refused}>
          <button
            type="button"
            onClick={() => {
              asking.value = undefined;
              requestAnimationFrame(() => print());
            }}
          >
            print it all the same
          </button>{" "}
          <button type="button" onClick={() => (asking.value = undefined)}>
            do not print
          </button>
        </Refused>
      )}
      {near.value === "true" && (
        <p class="about" role="status">
          {pixelsPerMm.value === undefined
            ? "Not yet measured on this screen, and so not true: hold a bank card against the frame at “Paper”."
            : "True as measured on this screen: lay a rule on a check bar."}
        </p>
      )}
      <div
        class={`pages ${near.value}`}
        {...(near.value !== "fit" && { tabIndex: 0, role: "group", "aria-label": "Larger than its place: to scroll" })}
      >
        {pages.value.map((page, index) => (
          <Sheet
            page={page}
            after={index > 0}
            key={`${sheet.value}${index}`}
            label={`${title}, page ${index + 1} of ${pages.value.length}`}
            width={near.value === "fit" ? undefined : page.width * (pixelsPerMm.value ?? SUPPOSED)}
          />
        ))}
      </div>
    </section>
  );
}

/** A page as it will come out. */
export function Sheet({
  page,
  label,
  width,
  after = false,
}: {
  readonly page: DrawnPage;
  readonly label: string;
  readonly width: number | undefined;
  /** Drawn once what stands before it is seen: nobody waits for a page further down. */
  readonly after?: boolean;
}) {
  const host = useRef<HTMLDivElement>(null);
  const [a, b, c, d, e, f] = page.correction;
  const turned = [a, b, c, d];
  useEffect(() => {
    const draw = (): void => {
      const drawn = new DOMParser().parseFromString(page.svg, "image/svg+xml").documentElement;
      drawn.setAttribute("aria-hidden", "true");
      host.current?.replaceChildren(document.importNode(drawn, true));
    };
    if (!after) {
      draw();
      return undefined;
    }
    const timer = setTimeout(draw);
    return () => clearTimeout(timer);
  }, [page.svg]);
  return (
    <div
      class="sheet"
      role="img"
      aria-label={label}
      ref={host}
      style={{
        aspectRatio: `${page.width} / ${page.height}`,
        "--across": page.width,
        "--down": page.height,
        "--correction": `translate(${e}mm, ${f}mm) matrix(${[...turned, 0, 0].join(", ")})`,
        ...(width && { "--on-screen": `${width}px` }),
      }}
    />
  );
}
