import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";
import { BY_WORDS, inGerman, SIGNAL_WORDS } from "./closed-sets.ts";
import { upperFirst } from "../letter-case.ts";
import { listed } from "./phrases.ts";

/** What a colour's page says to a painter, and its bench page to whoever makes the paint. */
export const SHEET_PAGE: AnyWords<PageWords["sheetPage"]> = {
  asOf: (date: string) => `Stand ${date}.`,
  alone: "allein",
  levels: { "70": "hell", "50": "mittel", "30": "dunkel" },
  notReached: "nicht erreicht",
  tintsDescription: (name: string, parts: readonly string[]) =>
    `${name} mit Weiß, nach Helligkeit: ${parts.join("; ")}.`,
  tintCell: (level: string, white: string, munsell: string) => `${level} in ${white}, ${munsell}`,
  whiteSentence: (count: number) =>
    count === 0
      ? "Ein Weiß. Noch keine unserer Farben wurde darin erprobt."
      : count === 1
        ? "Ein Weiß. Eine Farbe des Sortiments wurde darin erprobt."
        : `Ein Weiß. ${count} Farben des Sortiments wurden darin erprobt.`,
  extenderSentence: "Ein Malmittel für Lasuren und für mehr Körper, kein Weiß.",
  notTried: "Noch in keinem Weiß erprobt.",
  noPrice: (markets: readonly string[]) =>
    `Kein Preis hier: nicht frei verkäuflich in: ${listed(markets)}.`,
  notForSale: "Noch nicht im Verkauf.",
  discontinued: (date: string) => `Wird ab dem ${date} nicht mehr hergestellt.`,
  unknownHazard: "Noch nicht eingestuft: als gefährlich behandeln.",
  print: "Blatt zum Drucken",
  compare: "Vergleichen",
  facts: {
    lasts: "Lichtechtheit",
    hides: "Deckvermögen",
    dries: "Trocknet",
    strength: "Farbstärke",
    whitens: "Aufhellvermögen",
    middleTone: "Bis Mittelton",
    oil: "Öl",
    safety: "Sicherheit",
  },
  asDrawn: {
    "coat-hides-as-drawn": "Deckt im Aufstrich",
    "masstone-by-both-grounds": "Deckt im Aufstrich nicht",
    "masstone-is-a-film": "Deckt im Aufstrich nicht",
  },
  dries: {
    fast: "Schnell",
    medium: "Mittel",
    slow: "Langsam",
    "very slow": "Sehr langsam",
  },
  oil: {
    "very low": "Sehr wenig",
    low: "Wenig",
    medium: "Mittel",
    high: "Viel",
    "very high": "Sehr viel",
  },
  /** In place of a class, where an estimate reaches over several. */
  estimatedOil: "Nicht gewogen",
  detail: {
    stated: {
      paint: (category: string) =>
        `Kategorie\u00a0${category}, für die Farbe angegeben; hier nicht geprüft`,
      pigment: (category: string) =>
        `Kategorie\u00a0${category}, Angabe des Lieferanten für das Pigment; hier nicht geprüft`,
      mixture: (category: string) =>
        `Kategorie\u00a0${category}, aus den Pigmenten geschlossen; die Mischung ist hier nicht geprüft`,
    },
    exposed: (category: string) => `Kategorie\u00a0${category}, nach der Norm geprüft`,
    own: (category: string) =>
      `eigene Prüfung im Fenster: änderte sich so stark, wie Kategorie\u00a0${category} es zulässt; zählt mehr als die Angabe eines Lieferanten, weniger als die Prüfung der Norm`,
    expected: "was das Pigment erwarten lässt; hier nicht geprüft",
    film: (film: string) => `${film} trockener Film decken Schwarz und Weiß`,
    filmUnknown: "ein dicker Film deckt Schwarz und Weiß",
    byDarkness: (hides: string) => `${hides}, durch ihre Dunkelheit`,
    contrast: (ratio: string) => `Kontrastverhältnis ${ratio}`,
    asDrawn: "über einer schwarzweißen Prüfkarte; wie dick der Film war, ist nicht aufgezeichnet",
    days: (touch: string, through: string | undefined) =>
      through === undefined
        ? `${touch} bis grifftrocken`
        : `${touch} bis grifftrocken, ${through} bis durchgetrocknet`,
    trial: (days: string) => `${days}; unser Versuch`,
    trialInDoubt: (days: string) => `${days}; unser Versuch, doch ein anderer Film brauchte länger`,
    parts: (parts: string, white: string, by: string) =>
      `${parts} Teile ${white} bis zu einem mittleren Ton, ${inGerman(BY_WORDS, by)}`,
    reference: "daran werden die anderen gemessen",
    oil: (grams: string) => `${grams} Pigment`,
    unknown: "noch nicht bekannt",
    noStrength: "keine eigene: es streckt die Farbe",
    lighter: "von sich aus heller als ein Mittelton",
    never: "kein üblicher Film deckt Schwarz und Weiß",
    noWarning: "das trockene Pigment aus der Luft halten; ölige Lappen können sich entzünden",
    noWarningDryOil: "das trockene Pigment aus der Luft halten",
    seeLabel: "das ganze Etikett unter Sicherheit",
    unknownHazard: (names: readonly string[]) => `keine Gefahrendaten für ${listed(names)}`,
  },
  brief: {
    stated: "angegeben, nicht geprüft",
    fromPigments: "aus den Pigmenten, nicht geprüft",
    exposed: "nach der Norm geprüft",
    own: "eigene Prüfung",
  },
  white: {
    names: { use: "Gut für", whitens: "Aufhellvermögen", bright: "Helligkeit", yellow: "Gelb" },
    uses: {
      strongest:
        "Das stärkste unserer Weiß: für blasse Aufhellungen und zum Decken. Ein wenig überschwemmt eine schwache Farbe.",
      weakest:
        "Das sanfteste unserer Weiß: für dünne Schleier und für Aufhellungen, die ein starkes Weiß überschwemmen würde.",
      fastest: "Das Weiß, das bei uns zuerst trocknet: für die unteren Schichten.",
      slowest:
        "Das Weiß, das bei uns zuletzt trocknet: für die oberen Schichten und zum Malen nass in nass.",
    },
    whitens: (parts: string, reference: string, by: string) =>
      `${parts} Teile bringen einen Teil ${reference} auf einen mittleren Ton, ${inGerman(BY_WORDS, by)}; je weniger, desto stärker.`,
    bright: (L: string) => `Helligkeit L*\u00a0${L} von 100.`,
    yellow: (b: string) => `b*\u00a0${b}: 0 ist neutral, darüber ist Gelb.`,
    others: (parts: string) => `Von den anderen: ${parts}.`,
    other: (white: string, value: string) => `${white} ${value}`,
    tints:
      "Jede Farbe aus der Tube, darunter ihre dunkle, mittlere und helle Aufhellung in diesem Weiß.",
    tintsMissing: "Ein leerer Rahmen: Keine Messung kommt dieser Helligkeit nahe.",
  },
  strengthOf: (percent: string, reference: string) => `${percent} von ${reference}`,
  strengthByWeight: (percent: string, reference: string) =>
    `${percent} von ${reference} nach Gewicht`,
  whitens: (parts: string) => `${parts} Teile`,
  whitensDetail: (reference: string, by: string) =>
    `davon bringen einen Teil ${reference} auf einen mittleren Ton, ${inGerman(BY_WORDS, by)}`,
  partsOfWhite: (parts: string) => `${parts} Teile Weiß`,
  toMiddle: (white: string, by: string) =>
    `${white} auf einen Teil der Farbe, ${inGerman(BY_WORDS, by)}`,
  safe: {
    Danger: SIGNAL_WORDS.Danger,
    Warning: SIGNAL_WORDS.Warning,
    care: "Vorsicht",
    none: "Keine Warnung",
    unknown: "Als gefährlich behandeln",
  },
  sections: {
    whites: "Aufhellen",
    ofWhite: "Als Weiß",
    painting: "Damit malen",
    permanence: "Ob sie hält",
    handling: "Sicherheit",
    range: "Neben anderen",
    questions: "Dazu gefragt",
    unknown: "Noch nicht bekannt, und was dazu nötig wäre",
    bench: "Für die Werkbank",
  },
  ladder: {
    key: "Farbe zu Weiß, nach Gewicht der Farbe. Ein Punkt markiert, was wir aufgestrichen und gemessen haben; die Stufen dazwischen sind errechnet.",
    keyPigment:
      "Farbe zu Weiß, nach Gewicht des trockenen Pigments. Ein Punkt markiert, was wir aufgestrichen und gemessen haben; die Stufen dazwischen sind errechnet.",
    noSentence: "In Weiß erprobt; die Messung reicht nicht, um mehr zu sagen.",
    notDrawn: (whites: readonly string[]) => `Nicht erprobt in ${listed(whites)}.`,
    expected: (whites: readonly string[]) =>
      `Was in ${listed(whites)} zu erwarten ist, nicht aufgestrichen`,
    expectedIn: (white: string) => `${white}, nicht aufgestrichen`,
  },
  lines: {
    dries: "Trocknet",
    layers: "Schichten",
    hides: "Deckt",
    finish: "Glanzgrad",
    age: "Mit dem Alter",
    whites: "In Weiß",
    mixing: "Mischen",
    oil: "Öl",
  },
  /** Where it would take more paint than anybody lays. */
  hidesNever:
    "Sie deckt nie von sich aus: auch eine Schicht von einem halben Millimeter täte es nicht.",
  hidesLine: (film: string) =>
    `Es braucht einen trockenen Film von ${film}, um eine schwarzweiße Prüfkarte zu decken.`,
  hidesByDarkness: (film: string) =>
    `Ein trockener Film von ${film} deckt eine schwarzweiße Prüfkarte, aber durch seine Dunkelheit, nicht weil er Licht zurückwirft: dünner ausgestrichen lasiert er.`,
  /** @param area with its unit, "360 cm²/ml". */
  covers: (area: string) => `Ein Milliliter aus der Tube deckt ${area.replace(/\/ml$/, "")}.`,
  finishLine: (finish: string) => `${upperFirst(finish)} nach dem Trocknen.`,
  inWhite: (white: string, days: string, isTried: boolean) =>
    `${days} bis grifftrocken in ${white}${isTried ? ", nach Versuch" : ""}`,
  inWhiteParts: (parts: number) => `Errechnet für einen Teil auf ${parts} Teile Weiß.`,
  oilLine: {
    weighed: (grams: string) => `${grams} Pigment, so wie wir sie herstellen.`,
    recorded: (grams: string) =>
      `${grams} Pigment nach unserer Aufzeichnung, die nicht sagt, woher wir es wissen.`,
    told: (grams: string) => `${grams} Pigment nach Angabe anderer; hier nicht gewogen.`,
    expected: (grams: string) => `${grams} Pigment sind zu erwarten; hier nicht gewogen.`,
  },
  unknown: {
    colour: [
      "Die Farbe",
      "Ein Aufstrich, mit einem Gerät gemessen oder mit einem Munsell-Muster verglichen.",
    ],
    whites: [
      "In Weiß",
      "Drei Mischungen mit einem Weiß, 1:1, 1:5 und 1:20, aufgestrichen und gemessen.",
    ],
    opacity: [
      "Wie sie deckt",
      "Ein Film bekannter Dicke über einer schwarzweißen Prüfkarte, gemessen.",
    ],
    filmSpectra: [
      "Wie sie deckt",
      "Die Spektren ihrer Filme über einer schwarzweißen Prüfkarte: gemessen sind sie ohne.",
    ],
    oil: ["Das Öl", "Eine Ölzahl durch Anreiben, oder das eingewogene Öl eines Ansatzes."],
    drying: ["Wann sie trocknet", "Ein Film bekannter Dicke, und die Tage bis grifftrocken."],
    permanence: [
      "Ob sie hält",
      "Eine Belichtung im Fenster, eine Hälfte dunkel gehalten, oder die Angabe des Lieferanten.",
    ],
    hazard: [
      "Die Gefahren",
      "Das Sicherheitsdatenblatt des Lieferanten, Abschnitte 2 und 3. Bis dahin als gefährlich behandeln.",
    ],
  },
  standingsFold: "Was die Zeichen bedeuten",
  benchLead: "Öl und Packung, das Pigment, Notationen, Spektren, und woher wir jeden Wert haben.",
  benchLink: (name: string) => `${name} an der Werkbank`,
  dryPigment: "Abwiegen, Anreiben und trockenes Pigment: siehe die Seite für die Werkbank.",
  bench: {
    heading: (name: string) => `${name} an der Werkbank`,
    description: (name: string) =>
      `${name} für alle, die solche Farbe herstellen: Öl, Packung, Pigment, Notationen und Spektren.`,
    back: (name: string) => `${name}, für die Malerei`,
    evidenceLead: "Jeder Wert, woher wir ihn haben, woraus er errechnet ist, und die Quellen:",
    evidenceLink: (name: string) => `die Nachweise zu ${name}`,
    sections: {
      ladders: "In Weiß, in Zahlen",
      strength: "Farbstärke, Decken, Lasur",
      drying: "Trocknung in Zahlen",
      permanence: "Beständigkeit in Zahlen",
      mixture: "Als Mischung",
      oil: "Öl und Packung",
      dry: "Trockenes Pigment und Zusätze",
      pigment: "Das Pigment",
      range: "Im Sortiment",
      notations: "Notationen",
      evidence: "Nachweise",
      downloads: "Daten",
    },
    weighing: "Abwiegen und Anreiben",
  },
  evidence: {
    heading: (name: string) => `Nachweise zu ${name}`,
    description: (name: string) =>
      `Jeder Wert auf dem Blatt von ${name}, wie er gefunden und woraus er errechnet wurde.`,
    back: (name: string) => `${name} an der Werkbank`,
  },
};
