/** The tint bench, and what the pages that mix have in common; their scripts carry these words too. */
import type { AnyWords } from "../any-words.ts";
import type { MixingWords } from "../en/mixing-pages.ts";
import type { ByLamp, Lamp } from "../../colorimetry/lamps.ts";
import type { Interval } from "../../quantities/interval.ts";
import { inGerman, METAL_NAMES, OPACITY_WORDS, SIGNAL_WORDS } from "./closed-sets.ts";
import { COLON, SEMICOLON, dayCount, decimals, listed, micrometres, within } from "./phrases.ts";

const LAMP_NAMES: Readonly<Record<Lamp, string>> = {
  incandescent: "Lampenlicht",
  led: "weißem LED-Licht",
  fluorescent: "Leuchtstofflicht",
};

function metalNames(metals: readonly string[]): string {
  return listed(metals.map((metal) => inGerman(METAL_NAMES, metal)));
}

export const MIXING_PAGES: AnyWords<MixingWords> = {
  ways: {
    bench: "Mischtisch",
    recipes: "Rezept finden",
    map: "Karte des Sortiments",
    palette: "Palette",
    label: "Mischen",
  },
  offered: (offered: number, all: number) =>
    `Von ${all} Farben lassen sich hier ${offered} wählen, die am weitesten auseinanderliegen; jede andere lässt sich von ihrem eigenen Blatt aus mitnehmen.`,
  notPredicted: (names: readonly string[]) =>
    `Nicht dabei, da sich weder fluoreszierende Pigmente noch Plättchen vorhersagen lassen: ${listed(names)}.`,
  without:
    "Zum Mischen braucht es hier das Skript der Seite. Was wir im Voraus errechnet haben, steht in der Tabelle unten.",
  olderData:
    "Die Werte hier stammen aus einer anderen Fassung der Seite als ihr Skript. Laden Sie die Seite neu; hilft das nicht, gilt nur die Tabelle unten.",
  noData:
    "Die Werte wurden nicht geladen. Laden Sie die Seite neu; die Tabelle unten braucht kein Skript.",
  demonstration: "Erfundene Werte, um zu zeigen, wie es geht.",
  lamps: LAMP_NAMES,
  bench: {
    heading: "Mischtisch",
    lead: "Mischen Sie bis zu drei unserer Farben mit einem Weiß und sehen Sie, was herauskäme und wie verlässlich das ist.",
    description:
      "Farben des Sortiments mit einem Weiß mischen und die Farbe sehen, ihre Notationen und wie weit ihr zu trauen ist.",
    swatch: (what: string) => `Die Mischung: ${what}`,
    colourHeads: ["Erste Farbe", "Zweite Farbe", "Dritte Farbe", "Vierte Farbe"],
    partHeads: [
      "Teile der ersten Farbe",
      "Teile der zweiten Farbe",
      "Teile der dritten Farbe",
      "Teile der vierten Farbe",
    ],
    whiteHead: "Teile Weiß",
    noPaint: "keine",
    partsShort: "Teile",
    white: "Weiß",
    by: { legend: "Teile nach", volume: "Volumen, Tube zu Tube", mass: "Gewicht" },
    medium: "Streckmedium",
    volumes: "Teile Medium auf einen Teil der Mischung",
    film: "Filmdicke in \u00b5m (leer: ein deckender Auftrag)",
    finish: { legend: "Oberfläche", glossy: "glänzend", matte: "matt" },
    light: {
      legend: "Licht",
      daylight: "Tageslicht",
      incandescent: "Lampenlicht",
      led: "weiße LED",
      fluorescent: "Leuchtstofflicht",
    },
    controls: "Die Mischung",
    view: "Wie sie betrachtet wird",
    halo: "Oder so könnte sie sein",
    ways: {
      paler: "heller",
      darker: "dunkler",
      redder: "röter",
      greener: "grüner",
      yellower: "gelber",
      bluer: "blauer",
    },
    read: (p68: string) => `Wie wir sie gemessen haben, auf \u0394E00\u00a0${p68} genau.`,
    predicted: (p68: string, p90: string) =>
      `Eine Vorhersage. In zwei von drei Fällen liegt sie innerhalb von \u0394E00\u00a0${p68}, in neun von zehn innerhalb von \u0394E00\u00a0${p90}.`,
    beyond:
      "Viel heller als jede Mischung, die wir erprobt haben; niemand hat nachgesehen, wie gut sich das vorhersagen lässt.",
    outOfGamut:
      "Ihr Bildschirm kann diese Farbe nicht zeigen; das Farbfeld kommt ihr so nahe, wie er kann.",
    lampNote: (lamp: string) =>
      `Gezeigt, wie ein Auge sie sieht, das sich an dieses Licht gewöhnt hat: ${lamp}.`,
    matteNote: "Ein matter Film wirft sein Oberflächenlicht nach allen Seiten und wirkt heller.",
    overBlack: "über Schwarz",
    overWhite: "über Weiß",
    filmSentence: (um: string, ratio: string, p68: string) =>
      `${um} getrocknete Farbe: Kontrastverhältnis ${ratio}, Farbe in zwei von drei Fällen innerhalb von \u0394E00\u00a0${p68}.`,
    asCoat: "Gezeigt als deckender Auftrag.",
    notations: {
      munsell: "Munsell",
      lab: "L*a*b* (D65, 10\u00b0)",
      name: "In Worten (englisch)",
      lasts: "Lichtechtheit",
      dries: "Grifftrocken",
      hides: "Deckt",
      warning: "Warnung",
      price: "Preis von 10 ml",
    },
    munsellNone: "außerhalb der Notation",
    munsellUncertain: (value: string, chroma: string) =>
      `\u00b1${value} Helligkeit, \u00b1${chroma} Chroma`,
    lab: (L: string, a: string, b: string) => `${L}, ${a}, ${b}`,
    spectrumTitle: "Reflexion der Mischung",
    wavelength: "Wellenlänge, nm",
    reflectance: "Reflexion",
    reflectanceTo: (end: string) => `Reflexion, 0 bis ${end}`,
    find: "Andere Mischungen dieser Farbe",
    copy: "Adresse kopieren",
    copied: "Die Adresse ist kopiert.",
    copyFailed: "Die Adresse ließ sich nicht kopieren: sie steht in der Adresszeile des Browsers.",
    print: "Als Rezeptkarte drucken",
    keep: "Zur Palette hinzufügen",
    card: {
      heading: "Rezeptkarte",
      byVolume: "nach Volumen",
      byMass: "nach Gewicht",
      share: (text: string) => `${text}\u00a0%`,
      part: "Farbe",
      madeOn: "Gemischt am",
      notes: "Notizen",
      from: (workshop: string, revision: string) => `${workshop}, Werte der Fassung ${revision}`,
      paperNote: "Das Farbfeld ist nur so treu wie Ihr Drucker.",
    },
    static: {
      heading: (white: string) => `Im Voraus errechnet: jede Farbe in ${within(white)}`,
      note: (white: string) =>
        `Gewichtsteile Farbe zu ${within(white)}. Vorhergesagt aus unseren Messungen; neben jeder Zeile steht, wie weit die hellste abweichen kann.`,
      caption: (white: string) => `Jede Farbe aufgehellt in ${within(white)}`,
      colour: "Farbe",
      said: "Bei 1:20, und wie verlässlich",
      finding: (munsell: string, p68: string) => `${munsell}, innerhalb von \u0394E00 ${p68}`,
    },
    fromSheet: "Am Mischtisch aufhellen",
  },
  facts: {
    semicolon: SEMICOLON,
    weakest: (word: string, of: string) => `${word} (durch ${within(of)})`,
    unknown: (names: readonly string[]) => `nicht bekannt für ${listed(names.map(within))}`,
    notKnown: "nicht bekannt",
    days: (days: Interval) => dayCount(days),
    daysEstimate: "eine Schätzung aus den Tuben",
    /** @param ratio of the film, from the least to the most that it may be. */
    hiding: {
      hides: (ratio: string, um: string) =>
        `deckt eine Karte bei ${um} (Kontrastverhältnis ${ratio})`,
      "may hide": (ratio: string, um: string) =>
        `deckt bei ${um} vielleicht eine Karte (Kontrastverhältnis ${ratio})`,
      "does not hide": (ratio: string, um: string) =>
        `deckt bei ${um} keine Karte (Kontrastverhältnis ${ratio})`,
    },
    dark: (word, um, hides) =>
      `${OPACITY_WORDS[word]} bei ${um}${hides ? ", auch wenn ihre Dunkelheit eine Karte deckt" : ""}`,
    warning: (signal: string | null, metals: readonly string[]) =>
      signal === null && metals.length === 0
        ? "keine nötig"
        : [
            ...(signal === null ? [] : [inGerman(SIGNAL_WORDS, signal)]),
            ...(metals.length === 0 ? [] : [`enthält ${metalNames(metals)}`]),
          ].join("; "),
    restricted: (names: readonly string[]) => `${listed(names)}: nicht für jeden verkäuflich`,
    price: (text: string) => `etwa ${text}`,
    /** @param p68 of the mixture; under a lamp as in daylight, at most. */
    lampsPart: (worst: Lamp, of: ByLamp, p68: number) =>
      of[worst] < 2
        ? "passt auch unter Lampen"
        : `weicht bei ${LAMP_NAMES[worst]} um \u0394E00\u00a0${decimals(of[worst], 1)} ±${decimals(p68, 1)} davon ab`,
    lampsShift: (worst: Lamp, of: ByLamp, p68: number) =>
      of[worst] < 2
        ? "hält ihre Farbe unter Lampen"
        : `ändert sich bei ${LAMP_NAMES[worst]} um \u0394E00\u00a0${decimals(of[worst], 1)} ±${decimals(p68, 1)}`,
  },
  micrometres,
  recipes: {
    colon: COLON,
    heading: "Rezept finden",
    lead: "Nennen Sie eine Farbe; wir gehen alle Mischungen unserer Farben durch und suchen, was ihr nahekommt.",
    description:
      "Alle Mischungen weniger Farben des Sortiments, die einer Farbe nahekommen, mit Lichtechtheit, Trocknung und Deckvermögen.",
    without:
      "Um Rezepte zu suchen, braucht es das Skript der Seite. Was wir im Voraus gesucht haben, steht in den Tabellen unten.",
    target: "Die gesuchte Farbe",
    text: "Eine Notation: 5PB 4/2, oder L*a*b* 42 \u22121 \u22127, oder eine Bildschirmfarbe #6b6f76",
    colour: "Oder eine Farbe des Sortiments",
    file: "Oder eine eigene Messung (.csv, .cgats, .txt, .cxf)",
    column: "Welche Messung der Datei",
    percent: "Die Datei gibt Prozent an",
    choose: "wählen",
    origin: {
      range: "wie wir sie gemessen haben",
      reading: "wie Ihre Datei misst",
      munsell: "ein Muster nach Augenmaß",
      lab: "D65, 10\u00b0",
      screen: "eine Bildschirmfarbe: nur ungefähr",
    },
    targetName: (name: string, origin: string) => `${name} (${origin})`,
    limits: "Was sie erfüllen muss",
    white: "Weiß",
    anyWhite: "jedes unserer Weiß",
    withoutMetals: "Ohne",
    metals: {
      lead: METAL_NAMES.lead,
      cadmium: METAL_NAMES.cadmium,
      cobalt: METAL_NAMES.cobalt,
      nickel: METAL_NAMES.nickel,
    },
    unlabelled: "keine Farbe, die einen Gefahrenhinweis trägt",
    lightfastness: "Lichtechtheit mindestens",
    lightfastnessChoices: ["", "ausgezeichnet", "sehr gut", "mäßig", "gering"],
    any: "beliebig",
    days: "Grifftrocken binnen (Tage)",
    opacity: "Deckt mindestens",
    opacityChoices: ["", "deckend", "halbdeckend", "halblasierend"],
    price: "Höchstens, für 10 ml",
    four: "bis zu vier Farben (langsamer)",
    whiteFree: "auch ohne Weiß",
    leaveOut: "Auslassen",
    mustHold: "Muss enthalten",
    order: "Zuerst kommen",
    orders: {
      fewest: "die mit den wenigsten Farben",
      nearest: "die nächsten",
      drying: "die am schnellsten trocknenden",
      lightfastness: "die lichtechtesten",
      lamps: "die unter Lampen halten",
      price: "die günstigsten",
    },
    find: "Rezepte suchen",
    looking: (tried: number) => `Suche läuft… ${tried} Mischungen durchgerechnet.`,
    found: (inside: number, near: number, tried: number, isAtLeast: boolean) =>
      inside > 0
        ? `${inside === 1 ? "Eine Mischung kann" : `${isAtLeast ? "Mindestens " : ""}${inside} Mischungen können`} diese Farbe sein, soweit sich das sagen lässt; ${near === 1 ? "eine weitere kommt" : `${near} weitere kommen`} nahe. ${tried} wurden durchgerechnet.`
        : near > 0
          ? `Keine ist diese Farbe; ${near === 1 ? "eine kommt" : `${near} kommen`} nahe. ${tried} wurden durchgerechnet.`
          : `Keine kommt nahe. ${tried} wurden durchgerechnet.`,
    shown: (shown: number) => `Die ersten ${shown} sind aufgeführt.`,
    nothingMixes: "Mit diesen Wünschen bleiben keine Farben zum Mischen.",
    within: "Diese können es sein: näher, als sich unterscheiden lässt",
    near: "Diese kommen nahe",
    quickest: (days: Interval) =>
      `Die schnellste, die nahekommt und Ihre übrigen Wünsche erfüllt, ist in ${dayCount(days, "dative")} grifftrocken, eine Schätzung.`,
    none: "Keine Mischung unserer Farben kommt mit diesen Wünschen der Farbe nahe.",
    tryIt: "Am Mischtisch",
    failed: "Die Suche brach wegen eines Fehlers bei uns ab. Laden Sie die Seite neu.",
    more: "Mehr zeigen",
    lamps: "Lampen",
    lightfast: "Lichtechtheit",
    parts: "Volumenteile",
    partsMass: "Gewichtsteile",
    replaces: {
      heading: "Was sie ersetzt",
      onRecipes: (name: string) => `Anstelle von ${within(name)}`,
      because: (name: string, metals: readonly string[], isNone: boolean) =>
        `${name} enthält ${metalNames(metals)}.${isNone ? "" : " Am nächsten unter unseren Farben ohne Blei und Cadmium:"}`,
      discontinued: (name: string, date: string, isNone: boolean) =>
        `${name} wird ab dem ${date} nicht mehr hergestellt.${isNone ? "" : " Am nächsten unter unseren Farben:"}`,
      caption: (name: string) => `Anstelle von ${within(name)}, und was sich ändert`,
      columns: {
        what: "Stattdessen",
        difference: "Wie weit entfernt",
        lasts: "Lichtechtheit",
        dries: "Grifftrocken",
        hides: "Deckvermögen",
      },
      itself: "sie selbst",
      single: "allein",
      none: "Keine unserer Farben kommt ihr nahe.",
      noneKnown:
        "Keine unserer Farben, von der bekannt ist, dass sie weder Blei noch Cadmium enthält, kommt ihr nahe; was noch nicht eingestuft ist, blieb außer Betracht.",
      note: "Verglichen sind die Volltöne: ein \u0394E00 von etwa 1 ist nebeneinander kaum zu sehen. In Aufhellungen kann die Farbstärke eine andere sein. Einzelne Tuben sind gemessen, Mischungen vorhergesagt.",
      more: "Andere Rezepte, nach Ihren eigenen Wünschen",
    },
  },
  map: {
    heading: "Karte des Sortiments",
    headingIn: (white: string) => `Karte des Sortiments, in ${within(white)}`,
    lead: "Wo unsere Farben liegen, wie sie sich beim Aufhellen verschieben, und wie weit ihre Mischungen reichen.",
    description:
      "Die Farben des Sortiments nach Buntton, Chroma und Helligkeit, und der Umriss dessen, was sich aus ihnen mischen lässt.",
    title: (white: string) =>
      `Das Sortiment in a* und b*, jede Farbe mit ihrem Weg in ${within(white)}`,
    describe: (count: number, white: string, area: string) =>
      count === 1
        ? `Eine Farbe, mit ihrem Weg von der Tube bis zu einer blassen Aufhellung in ${within(white)}. Die Umrisse umschließen alles, was sich aus ihr und dem Weiß mischen lässt, bei L* 30, 50 und 70; bei L* 50 umfassen sie eine Fläche von ${area}.`
        : `${count} Farben, jede mit ihrem Weg von der Tube bis zu einer blassen Aufhellung in ${within(white)}. Die Umrisse umschließen alles, was sich aus je zwei von ihnen und dem Weiß mischen lässt, bei L* 30, 50 und 70; bei L* 50 umfassen sie eine Fläche von ${area}.`,
    axes: { a: "a* (nach rechts: röter)", b: "b* (nach oben: gelber)" },
    outline: (L: number) => `L* ${L}`,
    whites: "In welchem Weiß",
    nearNeutral: "nahe der Mitte:",
    key: (p68: string) =>
      `Durchgezogene Linien: L* 30; lange Striche: L* 50; kurze Striche: L* 70. Was innerhalb einer Linie liegt, lässt sich mischen; die Linie selbst ist eine Vorhersage, in zwei von drei Fällen innerhalb von \u0394E00 ${p68}.`,
    without: "Ohne welche Farbe?",
    withoutSaid: (name: string, shares: readonly string[]) =>
      `Ohne ${within(name)} ist das Sortiment kleiner (gepunktete Linien) um ${listed(shares)}: Flächen, in zwei von drei Fällen innerhalb des \u00b1 richtig.`,
    withoutAt: (share: string, L: number) => `${share} bei L* ${L}`,
    withoutNothing: (name: string) =>
      `Ohne ${within(name)} reicht das Sortiment ebenso weit: andere Farben ergeben dieselben Bunttöne.`,
    adds: {
      heading: "Was jede Tube hinzufügt",
      caption: "Wie viel kleiner das Sortiment ohne sie wäre",
      colour: "Ohne",
      column: (L: number) => `bei L* ${L}`,
      note: "Anteil der Fläche im Umriss, den nur diese Farbe erreicht; in zwei von drei Fällen innerhalb des \u00b1. Nicht kleiner: weniger, als sich unterscheiden lässt.",
      none: "nicht kleiner",
      others: (names: readonly string[]) =>
        `Soweit sich das sagen lässt, reicht das Sortiment ebenso weit ohne ${names.length === 1 ? "" : "eine der folgenden: "}${listed(names)}.`,
    },
    absent: "Nicht auf der Karte",
    notMapped: (untried: readonly string[], otherwise: readonly string[]) =>
      [
        ...(untried.length === 0
          ? []
          : [`In diesem Weiß nicht aufgehellt und darum nicht auf der Karte: ${listed(untried)}.`]),
        ...(otherwise.length === 0
          ? []
          : [
              `Anders gemessen als die übrigen und darum nicht auf der Karte: ${listed(otherwise)}.`,
            ]),
      ].join(" "),
  },
  palette: {
    heading: "Palette",
    lead: "Wählen Sie Ihre Tuben: was sie erreichen, was fehlt, und in welcher Reihenfolge damit zu malen ist.",
    description:
      "Eine gewählte Reihe von Farben: ihre Karte, ihre Lücken und die Reihenfolge der Schichten.",
    without:
      "Um eine Palette zu wählen, braucht es das Skript der Seite. Die Reihenfolge der Schichten für das ganze Sortiment steht in der Tabelle unten.",
    choose: "Ihre Tuben",
    reach: "Was sie erreichen",
    reachTitle: "Ihre Tuben und was sich aus ihnen mischen lässt",
    white: "In welchem Weiß",
    level: "Die Karte bei",
    levelName: (L: number) => `L* ${L}`,
    shown: (white: string, L: number) => `Mit ${within(white)} gemischt; die Karte bei L* ${L}.`,
    share: (shares: readonly string[]) =>
      `Von dem, was das ganze Sortiment erreicht, erreichen Ihre ${listed(shares)}.`,
    shareAt: (share: string, L: number) => `${share} bei L* ${L}`,
    unlike: (names: readonly string[], white: string) =>
      `${listed(names)}: in ${within(white)} nicht erprobt oder anders gemessen, daher nicht mitgezählt.`,
    gaps: "Was fehlt",
    gapsCaption: "Bunttöne, in denen das Sortiment weiter reicht als Ihre Tuben",
    gapColumns: { hue: "Nichts nahe bei", bring: "Was es brächte" },
    gapHue: (hue: string) => `reinem ${hue}`,
    gapAt: (L: number) => `L* ${L}`,
    gapNone: "nahe",
    gapBy: (names: readonly string[]) => listed(names, "or"),
    gapByNone: "mehrere zusammen",
    gapsNote:
      "Wie weit Ihre hinter dem Sortiment zurückbleiben; in zwei von drei Fällen innerhalb des \u00b1. Nahe: um weniger als \u0394E00\u00a08.",
    noGaps: "Keine Lücke, die eine andere unserer Tuben füllen würde.",
    tooFew: "Wählen Sie zwei Farben oder mehr.",
    hues: [
      "Rot",
      "Orange",
      "Gelb",
      "Gelbgrün",
      "Grün",
      "Blaugrün",
      "Blau",
      "Violett",
      "Purpur",
      "Rosa",
    ],
    order: "In welcher Reihenfolge zu malen ist",
    orderNote:
      "Schnell und mager unten, langsam und fett oben: legen Sie in Schichten eine Farbe über eine, die vor ihr steht, nicht darunter. Über einer mit mehr Öl etwas Malmittel zugeben.",
    columns: {
      colour: "Farbe",
      dries: "Grifftrocken",
      oil: "Öl im trockenen Film, nach Volumen",
      lasts: "Lichtechtheit",
    },
    leaner: (below: string) => `magerer als ${below} darunter: etwas Malmittel zugeben`,
    print: "Diese Palette drucken",
    yours: "Ihre",
    wholeRange: "das Sortiment",
  },
};
