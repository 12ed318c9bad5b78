/** Signs that nobody sees and that lead a terminal, a page or the eye astray: controls (save the tab and the end of a line), what turns
 *  the direction of writing, joins or parts words unseen, and halves of a letter. */
const hidden =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u00ad\u061c\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]|\p{Cs}/u;

/** The first of them in a text, as it is told: "a hidden sign (U+202E)". */
export function hiddenSign(text: string): string | undefined {
  const [sign] = hidden.exec(text) ?? [];
  return sign && `a hidden sign (U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")})`;
}
