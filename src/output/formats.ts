/** The kinds of file that a print can become; the first is what one gets without asking. */
export const formats = ["pdf", "svg", "dxf", "png"] as const;
export type Format = (typeof formats)[number];
