import type { Laid, LaidRow } from "../../../answers/laid.js";
import { inForm } from "../form/inForm.js";
import { inPage } from "../inPage.js";

const said = (words: string): string => inForm(inPage(words));

/** An answer in parts, each a table; rows in which nothing changes are folded. */
export function Parts({ parts, label }: { readonly parts: readonly Laid[]; readonly label: string }) {
  return (
    <div class="parts" role="status" aria-label={label}>
      {parts.map(({ heading, about, columns, rows, after = [] }) => {
        const same = rows.filter((row) => row.same);
        return (
          <section key={heading}>
            <h3>{said(heading)}</h3>
            {about !== undefined && <p class="formula">{about}</p>}
            <Rows columns={columns} rows={rows.filter((row) => !row.same)} />
            {same.length > 0 && (
              <details>
                <summary>{same.length} as before</summary>
                <Rows columns={undefined} rows={same.map(({ cells }) => ({ cells: cells.slice(0, 2) }))} />
              </details>
            )}
            {after.map((words, index) => (
              <p key={words} class={index === 0 ? "result" : undefined}>
                {said(words)}
              </p>
            ))}
          </section>
        );
      })}
    </div>
  );
}

type RowsProps = { readonly columns: readonly string[] | undefined; readonly rows: readonly LaidRow[] };

/** The first cell names its row. What has no head of its own stands under the last one. */
function Rows({ columns, rows }: RowsProps) {
  if (rows.length === 0) return null;
  return (
    <table>
      {columns !== undefined && (
        <thead>
          <tr>
            {columns.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
      )}
      <tbody>
        {rows.map(({ cells: [name = "", ...cells] }) => {
          const last = Math.max(0, (columns?.length ?? cells.length + 1) - 2);
          return (
            <tr key={name}>
              <th scope="row">{name}</th>
              {cells.slice(0, last).map((words, at) => (
                <td key={at}>{said(words)}</td>
              ))}
              <td>
                {cells.slice(last).map((words, at) => (
                  <span key={at}>{said(words)} </span>
                ))}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
