/** What the trade calls a thing in German. One word stands for one thing on pages, papers, cards and labels. */
interface Term {
  readonly english: string;
  readonly german: string;
  /** Words for the same thing that no text uses. */
  readonly instead: RegExp;
}

export const GLOSSARY: readonly Term[] = [
  { english: "masstone", german: "Vollton", instead: /Purton|Masseton/ },
  {
    english: "tint, let-down",
    german: "Aufhellung",
    instead: /Abmischung|Ausmischung|Verschnitt|Weißabtönung/,
  },
  { english: "drawdown", german: "Aufstrich", instead: /Aufzug|Aufzüge|Ausstrich/ },
  { english: "oil absorption", german: "Ölzahl", instead: /Öl(?:absorption|aufnahme)/ },
  { english: "oil demand", german: "Ölbedarf", instead: /Ölhunger/ },
  { english: "opacity", german: "Deckvermögen", instead: /Deckkraft|Opazität/ },
  { english: "opacity chart", german: "Prüfkarte", instead: /Kontrastkarte|Deckkarte/ },
  { english: "lightfastness", german: "Lichtechtheit", instead: /Lichtbeständigkeit/ },
  { english: "permanence", german: "Beständigkeit", instead: /Haltbarkeit|Permanenz/ },
  {
    english: "tinting strength",
    german: "Farbstärke",
    instead: /Färbe(?:kraft|vermögen)|Farbkraft|Farbintensität/,
  },
  { english: "whitening power", german: "Aufhellvermögen", instead: /Weißkraft/ },
  { english: "finish", german: "Glanzgrad", instead: /Finish/ },
  { english: "vehicle", german: "Bindemittel", instead: /Vehikel/ },
  { english: "drier", german: "Sikkativ", instead: /Trockenstoff|Trockner/ },
  {
    english: "touch dry",
    german: "grifftrocken",
    instead: /(?:hand|staub|berührungs)trocken|grifff?est/i,
  },
  { english: "lot", german: "Charge", instead: /Partie|(?<!\p{L})Los(?!\p{L})/u },
  { english: "batch", german: "Ansatz", instead: /Batch/ },
  { english: "muller", german: "Läufer", instead: /Reibstein/ },
  { english: "slab", german: "Reibplatte", instead: /Glasplatte|Reibstein/ },
  { english: "clumps, lumps", german: "Agglomerate", instead: /Klumpen|Klümpchen/ },
  { english: "fineness of grind", german: "Mahlfeinheit", instead: /Kornfeinheit/ },
  { english: "PVC, CPVC", german: "PVK, KPVK", instead: /C?PVC|CPVK/ },
  { english: "middle tone", german: "Mittelton", instead: /mittlere\p{L} Ton/u },
  { english: "left out", german: "weggelassen", instead: /ausgelassen/ },
  {
    english: "suppliers\u2019 papers",
    german: "Unterlagen der Lieferanten",
    instead: /Papier\p{L}* (?:de[rs]|eines|unserer) Lieferant/u,
  },
  { english: "reckoning", german: "Berechnung", instead: /(?<!\p{L})Rechnung(?!\p{L})/u },
  { english: "demonstration", german: "Demonstration", instead: /Vorführung/ },
  {
    english: "you",
    german: "Sie",
    instead: /(?<!\p{L})(?:[Dd]u|[Dd]ich|[Dd]ir|[Dd]ein\p{Ll}*)(?!\p{L})/u,
  },
];

/** How German print is set (DIN 5008), and what it looks like where it is not; "Alba" stands where a figure is put in. */
const SETTING: readonly (readonly [fault: string, RegExp])[] = [
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
  return [
    ...GLOSSARY.filter(({ instead }) => instead.test(text)).map(
      ({ german }) => `another word for ${german}: ${text}`,
    ),
    ...SETTING.filter(([, pattern]) => pattern.test(text)).map(([fault]) => `${fault}: ${text}`),
  ];
}
