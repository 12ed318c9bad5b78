/** A fault of the YAML itself in our own words; the parser's never reach the user. `offset`: where it is best looked for. */
export type YamlFault = { readonly offset: number; readonly what: string; readonly remedy: string };

/** `code`, `message`, `offset`: as the parser gives them. */
export function yamlFault(text: string, code: string, message: string, offset: number): YamlFault {
  const fault = (what: string, remedy: string, at = offset): YamlFault => ({ offset: at, what, remedy });
  if (message.startsWith("Maximum call stack"))
    return fault("brackets are nested too deep to follow", "write the lists out in lines");
  if (code === "TAB_AS_INDENT") return fault("a tab is used to indent", "indent with spaces");

  const start = text.lastIndexOf("\n", offset - 1) + 1;
  const line = text.slice(start, lineEnd(text, start)).replace(/\s+#.*$/, "");
  if (/open|close|must end with|sufficiently indented/.test(message) && !message.includes("quote"))
    return unclosed(text, offset);
  const tight = /^(\s*(?:- )?)([A-Za-z][\w ]*):(?=[^\s:])(.*)$/.exec(line);
  if (tight && keyFaults.has(code))
    return fault(
      `there is no space after "${tight[2]}:"`,
      `write  ${tight[2]}: ${tight[3]}`,
      start + (tight[1] ?? "").length,
    );
  const dash = /^(\s*)-(?=[^\s-])(.*)$/.exec(line);
  if (dash && keyFaults.has(code))
    return fault("there is no space after the dash", `write  - ${dash[2]}`, start + (dash[1] ?? "").length);

  switch (code) {
    case "MISSING_CHAR":
      if (message.includes("quote"))
        return fault("a quote is opened and not closed", "close it on the same line", quoteBefore(text, offset));
      if (message.includes("- indicator"))
        return fault(
          "this line is indented like neither the list above it nor its entries",
          "indent it like the keys that it belongs to",
        );
      return fault(
        `"${line.trim().slice(0, 40)}" is no key with its value`,
        "write a key, a colon and a space:  feed: 2 mm",
      );
    case "BLOCK_AS_IMPLICIT_KEY":
    case "MULTILINE_IMPLICIT_KEY":
      return /:\s.*:(\s|$)/.test(line)
        ? fault(
            "two colons stand on one line",
            "put a value that holds a colon in quotes, or each key on a line of its own",
          )
        : fault(
            "the line below is indented further, though this one has its value already",
            "indent keys of one part alike",
          );
    case "BAD_INDENT":
      return fault("this line begins in another column than those it belongs to", "indent lines of one part alike");
    case "UNEXPECTED_TOKEN":
      if (message.includes("seq-ind"))
        return fault("a list begins on the line of its key", "put each dash on a line of its own, or write [a, b]");
      if (/end token|-end/.test(message))
        return fault("a bracket closes that was not opened", "take it out, or open it before");
      return fault(
        "something stands behind the end of this value",
        "put the whole value into one pair of quotes; for an inch mark use '3\" rod'",
      );
    case "BAD_SCALAR_START":
      return fault(`a value cannot begin with ${text[offset] ?? "this sign"}`, "put it in quotes");
    case "MULTIPLE_DOCS":
      return fault("a line of --- begins a second document", "keep each machine in a file of its own");
    case "BAD_DQ_ESCAPE":
      return fault("a backslash in double quotes begins a special sign", "use single quotes, or / in a path");
    case "BAD_DIRECTIVE":
      return fault("a line cannot begin with % here", "take it out, or put the value in quotes");
    case "BLOCK_IN_FLOW":
      return fault("within brackets the entries are not parted by commas", "part them:  { shape: drum, width: 9 }");
    case "KEY_OVER_1024_CHARS":
      return fault("this key is longer than any", "look for a colon or a quote that is missing");
    default:
      return fault("this line is not YAML", "mind indentation, colons, brackets and quotes near here");
  }
}

/** Faults that a lost space after a colon or dash ends in. */
const keyFaults = new Set([
  "MULTILINE_IMPLICIT_KEY",
  "BLOCK_AS_IMPLICIT_KEY",
  "MISSING_CHAR",
  "BAD_INDENT",
  "UNEXPECTED_TOKEN",
]);

const lineEnd = (text: string, from: number): number => {
  const end = text.indexOf("\n", from);
  return end < 0 ? text.length : end;
};

/** Where the quote opened that is still open at the end; the last one before `offset` is near enough. */
const quoteBefore = (text: string, offset: number): number => {
  const at = Math.max(text.lastIndexOf('"', offset - 1), text.lastIndexOf("'", offset - 1));
  const line = text.lastIndexOf("\n", at) + 1;
  const first = text.slice(line, lineEnd(text, line)).search(/["']/);
  return first < 0 ? offset : line + first;
};

/** A bracket that is open where it should not be: told where it opens, or at the # that cut its end off. */
function unclosed(text: string, offset: number): YamlFault {
  const open: number[] = [];
  let comment: number | undefined;
  let quote = "";
  for (let at = 0; at < offset; at++) {
    const sign = text[at] ?? "";
    if (quote !== "") quote = sign === quote ? "" : quote;
    // A quote opens only where a value begins; an apostrophe or inch mark stands inside one.
    else if (/["']/.test(sign) && /[\s,[{:]/.test(text[at - 1] ?? " ")) quote = sign;
    else if (sign === "#" && /\s/.test(text[at - 1] ?? "\n")) {
      if (open.length > 0) comment ??= at;
      at = lineEnd(text, at);
    } else if (sign === "[" || sign === "{") open.push(at);
    else if (sign === "]" || sign === "}") {
      open.pop();
      if (open.length === 0) comment = undefined;
    }
  }
  const at = open[0] ?? offset;
  const cut = comment === undefined ? "" : text.slice(comment, lineEnd(text, comment));
  if (comment !== undefined && /[\]}]/.test(cut))
    return {
      offset: comment,
      what: "# begins a comment, which cuts off the bracket's end",
      remedy: `put the value with # in quotes: "… ${cut.split(/[,\]}]/)[0]?.trim()}"`,
    };
  return {
    offset: at,
    what: `the bracket ${text[at] ?? ""} is opened and not closed`,
    remedy: `close it with ${text[at] === "[" ? "]" : "}"}`,
  };
}
