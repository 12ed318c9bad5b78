/** Of what the trade's long words are put together, in both languages, with their syllables: no rule finds these joints. None so short
 *  that it turns up inside other words by chance. */
export const tradeParts: readonly string[] = [
  ..."an-schlag an-trieb an-triebs ba-cken bar-rel bett boh-rer boh-rung bohr bol-zen bund buch-se car-ri-age".split(
    " ",
  ),
  ..."dicht dreh drei dorn fut-ter ge-trie-be ge-win-de grund hand-rad hand-wheel hand haupt he-bel hül-se".split(" "),
  ..."ke-gel kreuz kupp-lung kur-bel längs la-ger lead lehr-lings leit loch ma-schi-ne ma-schi-nen mes-ser mo-tor".split(
    " ",
  ),
  ..."mut-ter no-ni-us ober pi-no-le pi-no-len plan plat-te quer rä-der reit-stock rie-men rohr schal-tung schei-be".split(
    " ",
  ),
  ..."schlit-ten schloss schne-cke schrau-be schul-ter screw slide spann spin-del stahl stock sup-port tail teil tie-fe".split(
    " ",
  ),
  ..."tie-fen trom-mel un-ter ver-schrau-bung ver-schrau-bungs ver-stell vor-ge-le-ge vor-rich-tung vor-schub wel-le".split(
    " ",
  ),
  ..."werk-statt werk-stück werk-zeug wheel zahn-rad zan-ge zan-gen zap-fen zu-stell zy-lin-der".split(" "),
];
