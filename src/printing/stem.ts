/** What the pages of a file are named after: its name without the ending, and without dots in front, which would hide them. */
export const stemOf = (name: string): string => name.replace(/(?!^)\.[^.]*$/, "").replace(/^\.+/, "") || "unnamed";
