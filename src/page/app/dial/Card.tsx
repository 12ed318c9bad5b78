import { useSignal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import type { Desk } from "../desk.js";
import { Sheet } from "../Paper.js";
import { newest, useStopped } from "../worker.js";

/** The sheet that an exercise is to be looked up on, folded until one looks. */
export function Card({ desk, sheet }: { readonly desk: Desk; readonly sheet: string }) {
  const open = useSignal(false);
  const asking = useMemo(
    () => ({
      drawn: newest(desk.asker, "sheet", () =>
        open.value ? { files: desk.files.value, asked: { sheet } } : undefined,
      ),
    }),
    [desk, sheet],
  );
  useStopped(asking);
  const title = desk.sheets.value.find(({ name }) => name === sheet)?.title ?? sheet;
  const { pages = [], why } = asking.drawn.answer.value ?? {};
  return (
    <details
      open={open.value}
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary>{title}</summary>
      {why !== undefined && <p class="lacking">Not yet: {why}.</p>}
      {pages.map((page, index) => (
        <Sheet page={page} key={index} label={`${title}, page ${index + 1} of ${pages.length}`} width={undefined} />
      ))}
    </details>
  );
}
