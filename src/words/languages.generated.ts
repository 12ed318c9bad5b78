/** Languages that there are words for, English first; written by `npm run generate`, never by hand. Apart from the words, which
 *  the command line's help need not load. */
export const languages = ["en", "de"] as const;
export type LanguageCode = (typeof languages)[number];
