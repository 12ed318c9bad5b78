import { useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { Lines } from "../ask/Lines.js";
import type { Desk } from "../desk.js";
import { sheetSchema } from "../sheetSchema.js";

/** All that a template may say, to be copied from. */
export function AllBlocks({ desk }: { readonly desk: Desk }) {
  const lines = useSignal<readonly string[]>([]);
  useEffect(() => {
    void desk.asker.ask("blocks", desk.files.peek(), {}).then(({ lines: all, schema }) => {
      lines.value = all;
      sheetSchema.value = schema;
    });
  }, [desk]);
  return (
    <details>
      <summary>All blocks, and what may be set of each</summary>
      <Lines lines={lines.value} />
    </details>
  );
}
