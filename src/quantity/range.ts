/** From where to where, of words that say both: `300 to 3000`, `11.98 – 12.00`, `[11.98, 12.00]`; undefined of others. A bare hyphen
 *  may as well be a minus, or stand in a mixed fraction: what it means is for those to tell who know what is written. */
export function rangeIn(text: string): readonly [from: string, to: string] | undefined {
  const [, inside] = /^\[(.*)\]$/.exec(text.trim()) ?? [];
  // A comma without a space behind it parts two numbers only where it is no decimal comma of either.
  const [, from, to] =
    (inside === undefined
      ? /^(\S.*?)(?:\s+to\s+|\s*(?:[–—…]|\.\.+)\s*)(\S.*)$/i.exec(text.trim())
      : (/^(.+?)[,;]\s+(\S.*)$/.exec(inside) ?? /^([^,;]+)[,;]([^,;]+)$/.exec(inside))) ?? [];
  return from === undefined || to === undefined ? undefined : [from.trim(), to.trim()];
}
