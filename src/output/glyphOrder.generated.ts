/** The letters of our font in the order of its glyph numbers, the same in both weights; U+0000 where a glyph stands for
 *  none. Written by `npm run generate` from the font itself, never by hand. */
export const glyphOrder =
  "\u0000 !\"#$%&'()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[\\]^_`abcdefghijklmnopqrstuvwxyz{|}~ ¡¢£¥§¨©ª«¬®¯°±´µ¶·¸º»¿ÀÁÂÃÄÅÆÇÈÉÊËÌÍÎÏÑÒÓÔÕÖØÙÚÛÜßàáâãäåæçèéêëìíîïñòóôõö÷øùúûüÿŒœˆ˚˜–—‘’‚“”„•…‹›€™\u0000¤¦­²³¹¼½¾Ð×ÝÞðýþ′″↑↓−";
