import fc from "fast-check";

/** The whole check draws the same examples each time, so that what is handed in is judged by itself and not by luck; `npm run
 *  soak` draws others and says which. */
export const seed = process.env.SEED === "any" ? Math.floor(Math.random() * 2 ** 31) : Number(process.env.SEED ?? 12);
fc.configureGlobal({ seed });
