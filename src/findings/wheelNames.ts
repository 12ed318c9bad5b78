import type { Moves } from "../machine/machine.js";

/** The usual names of slides, by language (common practice). Each is a whole word or words, run together or apart; one with a
 *  dash at its end begins a compound. In the order in which they are tried: a name may hold words for two of them, as
 *  "leadscrew of the cross slide", "tailstock quill" or "carrello superiore" do, and the last list's are the most general. */
const names: readonly (readonly [Moves, readonly (readonly string[])[]])[] = [
  [
    "across",
    [
      ["cross", "cross slide", "crosslide", "cross feed", "across"],
      ["planschlitten-", "plansupport-", "planzug-", "planspindel-"],
      ["querschlitten-", "quersupport-", "querzug-", "querspindel-"],
      ["transversal", "transversale"],
      ["dwarsslede-", "dwarsslee-", "dwarssupport-"],
      ["trasversale"],
    ],
  ],
  [
    "barrel",
    [
      ["tail stock-", "barrel"],
      ["reitstock-", "pinole-"],
      ["fourreau", "contre pointe", "poupee mobile"],
      ["cana", "contra punto", "contra cabezal"],
      ["losse kop"],
      ["canotto", "contro punta", "contro testa"],
    ],
  ],
  [
    "quill",
    [
      ["quill", "down feed"],
      ["bohrpinole-", "bohrspindel-"],
    ],
  ],
  [
    "angled",
    [
      ["top", "top slide", "upper slide", "tool slide", "swivel slide", "swivelling slide", "compound"],
      ["oberschlitten-", "obersupport-"],
      ["superieur", "orientable", "pivotant", "petit chariot", "porte outil", "porte outils"],
      ["superior", "carro auxiliar", "porta herramienta", "porta herramientas"],
      ["bovenslede-", "bovenslee-", "bovensupport-", "beitelslede-", "gereedschapsslede-"],
      ["slittino", "superiore", "orientabile", "porta utensile", "porta utensili"],
    ],
  ],
  [
    "along",
    [
      ["carriage", "saddle", "apron", "lead screw"],
      ["bettschlitten-", "schlosskasten-", "leitspindel-", "zugspindel-"],
      ["langsschlitten-", "langssupport-", "langszug-", "laengsschlitten-", "laengssupport-", "laengszug-"],
      ["trainard", "longitudinal", "tablier", "vis mere"],
      ["carro principal", "delantal", "husillo patron", "tornillo patron"],
      ["langsslede-", "langsslee-", "bedslede-", "leispindel-"],
      ["carrello", "longitudinale", "vite madre"],
    ],
  ],
];

const pattern = (name: string): string => `${name}\\b`.replace("-\\b", "").replaceAll(" ", " ?");

const patterns = names.map(
  ([moves, languages]) => [moves, new RegExp(`\\b(?:${languages.flat().map(pattern).join("|")})`)] as const,
);

/** What a wheel of this name most likely moves. Undefined where no usual word stands in it. */
export function movesByName(name: string): Moves | undefined {
  const words = name
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll("ß", "ss")
    .replace(/[^a-z0-9]+/g, " ");
  return patterns.find(([, usual]) => usual.test(words))?.[0];
}
