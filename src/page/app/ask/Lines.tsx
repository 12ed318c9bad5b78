/** Lines as the command prints them, columns and all. One that is longer than the page goes on further in. `label`: of an answer. */
export function Lines({ lines, label }: { readonly lines: readonly string[]; readonly label?: string }) {
  return (
    <div class="lines" {...(label !== undefined && { role: "status", "aria-label": label })}>
      {lines.map((line, index) => (
        <div key={index} style={{ "--in": (/^ */.exec(line)?.[0].length ?? 0) + 2 }}>
          {line === "" ? "\u00a0" : line}
        </div>
      ))}
    </div>
  );
}
