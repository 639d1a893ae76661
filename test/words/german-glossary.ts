import { glossaryFaults, type Setting, type Term } from "./glossary.ts";

export const GLOSSARY: readonly Term[] = [
  { english: "masstone", said: "Vollton", instead: /Purton|Masseton/ },
  {
    english: "tint, let-down",
    said: "Aufhellung",
    instead: /Abmischung|Ausmischung|Verschnitt|Weißabtönung/,
  },
  { english: "drawdown", said: "Aufstrich", instead: /Aufzug|Aufzüge|Ausstrich/ },
  { english: "oil absorption", said: "Ölzahl", instead: /Öl(?:absorption|aufnahme)/ },
  { english: "oil demand", said: "Ölbedarf", instead: /Ölhunger/ },
  { english: "opacity", said: "Deckvermögen", instead: /Deckkraft|Opazität/ },
  { english: "opacity chart", said: "Prüfkarte", instead: /Kontrastkarte|Deckkarte/ },
  { english: "lightfastness", said: "Lichtechtheit", instead: /Lichtbeständigkeit/ },
  { english: "permanence", said: "Beständigkeit", instead: /Haltbarkeit|Permanenz/ },
  {
    english: "tinting strength",
    said: "Farbstärke",
    instead: /Färbe(?:kraft|vermögen)|Farbkraft|Farbintensität/,
  },
  { english: "whitening power", said: "Aufhellvermögen", instead: /Weißkraft/ },
  { english: "finish", said: "Glanzgrad", instead: /Finish/ },
  { english: "vehicle", said: "Bindemittel", instead: /Vehikel/ },
  { english: "drier", said: "Sikkativ", instead: /Trockenstoff|Trockner/ },
  {
    english: "touch dry",
    said: "grifftrocken",
    instead: /(?:hand|staub|berührungs)trocken|grifff?est/i,
  },
  { english: "lot", said: "Charge", instead: /Partie|(?<!\p{L})Los(?!\p{L})/u },
  { english: "batch", said: "Ansatz", instead: /Batch/ },
  { english: "muller", said: "Läufer", instead: /Reibstein/ },
  { english: "slab", said: "Reibplatte", instead: /Glasplatte|Reibstein/ },
  { english: "clumps, lumps", said: "Agglomerate", instead: /Klumpen|Klümpchen/ },
  { english: "fineness of grind", said: "Mahlfeinheit", instead: /Kornfeinheit/ },
  { english: "PVC, CPVC", said: "PVK, KPVK", instead: /C?PVC|CPVK/ },
  { english: "middle tone", said: "Mittelton", instead: /mittlere\p{L} Ton/u },
  { english: "left out", said: "weggelassen", instead: /ausgelassen/ },
  {
    english: "suppliers\u2019 papers",
    said: "Unterlagen der Lieferanten",
    instead: /Papier\p{L}* (?:de[rs]|eines|unserer) Lieferant/u,
  },
  { english: "reckoning", said: "Berechnung", instead: /(?<!\p{L})Rechnung(?!\p{L})/u },
  { english: "demonstration", said: "Demonstration", instead: /Vorführung/ },
  {
    english: "you",
    said: "Sie",
    instead: /(?<!\p{L})(?:[Dd]u|[Dd]ich|[Dd]ir|[Dd]ein\p{Ll}*)(?!\p{L})/u,
  },
];

/** How German print is set (DIN 5008), and what it looks like where it is not; "Alba" stands where a figure is put in. */
const SETTING: Setting = [
  [
    "a space that breaks before a unit",
    /(?:\d|Alba) (?:%|[gl]|kg|ml|mm|cm[²³]?|µm|nm|°C|kB|MB)(?![\p{L}\d])/u,
  ],
  ["a decimal point", /(?<![\d.])\d+\.\d+ ?(?:%|g|ml|µm|Tage)/],
  ["a straight quotation mark", /"/],
  ["a hyphen for a dash", /\s-\s/],
  ["three dots without a space before them", /\p{L}…|\.{3}/u],
];

/** Where a German text has another word than the glossary's, or is not set as German print is. */
export function germanFaults(text: string): string[] {
  return glossaryFaults(text, GLOSSARY, SETTING);
}
