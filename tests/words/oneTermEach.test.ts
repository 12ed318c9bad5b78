import { describe, expect, test } from "vitest";
import { readWords } from "../../scripts/generated/words.js";

/** For one thing one word: what is not to stand in a words file, and what is said instead. `but`: sections or keys, by their
 *  beginning, where the word means another thing. */
type Term = { readonly never: RegExp; readonly say: string; readonly but?: readonly string[] };

const terms: Readonly<Record<string, readonly Term[]>> = {
  de: [
    { never: /Skale\b/, say: "Skala" },
    { never: /\btote[mnr]? Gang/, say: "Umkehrspiel" },
    { never: /Deckel|Riemenschutz|Schutz stoßen/, say: "Abdeckung" },
    { never: /Riemenlage|Lage des Riemens/, say: "Riemenstellung, Stellung" },
    { never: /langsamste Stufe|jede[rn]? Stufe/, say: "Stellung" },
    { never: /Ablesestrich/, say: "Ablesemarke" },
    {
      never: /\{\} Teile\b|je Teil:|Teilstriche? des Skalenrings|Teilstriche? je Sekunde/,
      say: "Skalenteil, Skt",
      but: ["plan.parts"],
    },
    {
      never: /\b[Vv]om? Vorschub|Vorschub (selbst|ist|dieses|bekannt|von|angegeben)/,
      say: "Weg je Umdrehung",
      but: ["titles.hand feed"],
    },
    { never: /hat einen Vorschub|mit Vorschub\b|hat Vorschub/, say: "Weg je Umdrehung", but: ["drilling card."] },
    { never: /Steigung/, say: "Weg je Umdrehung", but: ["threads.", "student.thread", "measuring form.held screw"] },
    { never: /schließ(t|en) sich/, say: "geht auf" },
    { never: /Spindelsteigung|Nennmaß der Spindel|gelängte Spindel|Spindeln und/, say: "Gewindespindel" },
    { never: /Erfahrungswert/, say: "Werkstattbrauch" },
    { never: /\bRev(ision)?\b/, say: "Stand" },
    { never: /Handbuch des Herstellers|Handbuch der Maschine/, say: "Betriebsanleitung" },
    { never: /örtliche Regeln/, say: "örtliche Vorschriften" },
    { never: /Drehzahlkarte/, say: "Riemenkarte" },
    { never: /Druckprobe/, say: "Druckerprobe" },
    { never: /nach der Übersetzung/, say: "gerechnet" },
    { never: /fraglich/, say: "zweifelhaft" },
    { never: /\bmuss\b[^.;:]*messen/, say: "soll … lang sein", but: ["plan."] },
    {
      never: /geglaubt|nicht darauf\b(?! verlassen)|[Ss]eite geht hinein|gemeint/,
      say: "unberichtigt, nicht aufgedruckt, Abfall",
    },
    { never: /ntast(en|et)\b|[Tt]aste das/, say: "ankratzen" },
    { never: /\bTakte?n?\b/, say: "Sekunden, Schritt, Arbeitsgang" },
    { never: /Kante eines Lochs|Vorher die Kante/, say: "ansenken" },
    { never: /dünn zu[mr]|freies Ende klein|Futterende klein|Ende dick/, say: "am freien Ende dünn, am Futter dünn" },
    { never: /Unified|Whitworth (grob|fein)/, say: "Grobgewinde UNC, Feingewinde UNF" },
    { never: /Längen-Null/, say: "Längsnull" },
    { never: /schwenken um/, say: "Schwenkwinkel" },
    { never: /Entspanen|Ausspanen/, say: "Späne ausräumen" },
    { never: /\b(locker|lose)(e[rnms]?)? Riemen|Riemen[^.:;]* lose\b/, say: "schlaff" },
    { never: /[Aa]bgenutzt/, say: "verschlissen" },
    { never: /Freiheitsgrad|Standardunsicherheit|beweist/, say: "überzählige Ablesungen, Kalibrierschein" },
    { never: /\b(Sie|Ihr|Ihnen) (ein|den|die|das)\b|\b\p{L}+en Sie\b/u, say: "the infinitive, to nobody" },
  ],
  en: [
    { never: /whole angle/, say: "included angle" },
    { never: /speed card/, say: "belt card" },
    { never: /[Cc]over your eyes|eye cover|eyes covered/, say: "safety glasses" },
    { never: /wet the cut|wet it/, say: "cutting fluid" },
    { never: /adjusting strips/, say: "gibs" },
    { never: /one (clamping|holding)/, say: "one setting" },
    { never: /\bhand wheel/, say: "hand crank, handwheel" },
    { never: /\banew\b/, say: "again" },
    { never: /\bmend(ed)?\b/, say: "put right" },
    { never: /\b(be|is|are) told\b/, say: "given" },
    { never: /\bisolated?\b/, say: "plug out" },
    { never: /under the tool/, say: "cutting", but: ["drilling card.largest diameter"] },
    { never: /\bdoubts?\b/, say: "±, may be off by" },
    { never: /believed|not on it/, say: "uncorrected, no room on it for" },
    { never: /thin towards|small end free/, say: "free end small, chuck end small" },
    { never: /\b(loose belt|belt left loose|so loose)/, say: "slack" },
    { never: /degrees of freedom|proves nothing/, say: "readings to spare, no calibration certificate" },
    { never: /unproven|without shake/, say: "unmeasured, free of shake" },
    {
      never: /recommended|parameter|value|compute/,
      say: "shop words",
      but: ["materials and hazards.", "measured report.iso"],
    },
  ],
};

/** Not printed: what stands for a number in a text. */
const nameOfPlace = /\{[^{}]*\}/g;

describe.each(Object.keys(terms))("%s", (code) => {
  const said = Object.entries(readWords(code)).flatMap(([key, text]) =>
    (typeof text === "string" ? [text] : Object.values(text)).map((one) => ({
      key,
      one: one.replace(nameOfPlace, "{}"),
    })),
  );

  test.each(terms[code] ?? [])("says “$say”, and nothing else for it", ({ never, but = [] }) => {
    const others = said.filter(({ key, one }) => never.test(one) && !but.some((start) => key.startsWith(start)));
    expect(others.map(({ key, one }) => `${key}: ${one}`)).toEqual([]);
  });
});

test("the words of a sheet's title are those by which other sheets call it", () => {
  for (const key of ["card key", "card row", "too many cards"])
    for (const [code, word] of [
      ["de", "Riemenkarte"],
      ["en", "belt card"],
    ] as const) {
      expect(String(readWords(code)["titles.belt card"]).toLowerCase()).toBe(word.toLowerCase());
      expect(readWords(code)[`no room.${key}`]).toContain(word);
    }
});
