import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";

type RefusedProps = { readonly files: readonly string[]; readonly children: ComponentChildren };

/** That a job is refused whose plan is about to be printed, and what may be done about it: nobody is to find it in the workshop. */
export function Refused({ files, children }: RefusedProps) {
  const words = useRef<HTMLParagraphElement>(null);
  const named = files.map((file) => `“${file}”`).join(", ");
  useEffect(() => {
    words.current?.focus();
    // With what there is to choose below it.
    words.current?.parentElement?.scrollIntoView({ block: "nearest" });
  }, [named]);
  return (
    <section class="refused" aria-label="Before it is printed">
      <p tabIndex={-1} ref={words}>
        {named} {files.length === 1 ? "is" : "are"} refused: by such a plan a tool breaks, the work is spoilt or
        somebody is hurt. The station Job says why, and what would mend it.
      </p>
      <p class="ways">{children}</p>
    </section>
  );
}
