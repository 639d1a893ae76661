import type { RangeCounts } from "../range-counts.ts";
import type { MeasuredErrors } from "../../optics/fit/measured-errors.ts";
import { EXPECTATIONS } from "../../permanence/expected-lightfastness.ts";
import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";
import { upperFirst } from "../letter-case.ts";
import { ANSWER_PAGES } from "./answer-pages.ts";
import { BLACKS_PAGES } from "./blacks-pages.ts";
import { CARDS } from "./cards.ts";
import { CHANGES } from "./changes.ts";
import { EXPECTATION_WORDS, inGerman } from "./closed-sets.ts";
import { COMPARE_PAGES } from "./compare-pages.ts";
import { GEOMETRY_NAMES } from "./geometry-names.ts";
import { HANDLING } from "./handling.ts";
import { LABEL_PAGE } from "./label-page.ts";
import { LOT_PAGES } from "./lot-pages.ts";
import { MIXING_PAGES } from "./mixing-pages.ts";
import { MIXTURE_PAGES } from "./mixture-pages.ts";
import { NEXT_STEPS } from "./next-steps.ts";
import { OPTICS_PAGES } from "./optics-pages.ts";
import { PACKAGE_LABELS } from "./package-labels.ts";
import { PAINT_PAGES } from "./paint-pages.ts";
import { LISTING } from "./listing.ts";
import { PHOTOGRAPHS } from "./photographs.ts";
import { PIGMENT_INDEX } from "./pigment-index.ts";
import { SHEET_PAGE } from "./sheet-page.ts";
import { SHEET_PAPER } from "./sheet-paper.ts";
import { NUMBERS, listed } from "./phrases.ts";
import { TERMS } from "./terms.ts";
import { WORKSHOP_PAGES } from "./workshop-pages.ts";

const MEASURED: Readonly<Record<MeasuredErrors["what"], string>> = {
  "let-downs that hide": "Aufhellungen, die decken",
  "all let-downs": "alle Aufhellungen",
  "mixtures with black": "Mischungen mit Schwarz",
  "in a white not tried": "in einem nicht erprobten Weiß",
};

/** Headings, captions and sentences of the pages that do not come from a science. */
export const PAGES: AnyWords<PageWords> = {
  nav: {
    colours: "Farben",
    answers: "Fragen",
    compare: "Vergleichen",
    mix: "Mischen",
    pigments: "Pigmente",
    methods: "Woher wir es wissen",
    label: "Etiketten",
    sources: "Quellen",
    about: "Über uns",
  },
  search: {
    text: "Eine Farbe finden",
    nothing: "Nichts gefunden.",
    count: "{count} gefunden.",
    kinds: { pigment: "Pigment", answer: "Frage", comparison: "Nebeneinander" },
  },
  frame: {
    skip: "Zum Text springen",
    mainNavigation: "Seiten",
    more: "Mehr",
    onThisPage: "Auf dieser Seite",
    toContents: "Zurück zum Inhalt",
    property: "Eigenschaft",
    value: "Wert",
    standing: "Herkunft",
    method: "Verfahren und Quelle",
    source: "Quelle",
    standingsHeading: "Woher jeder Wert bekannt ist",
    termsHeading: "Begriffe",
    downloadsHeading: "Daten",
    handlingLink: "Alles zur Sicherheit",
    orders: "Reihenfolge",
    parts: "Seite",
    families: "Familie",
    coloursMade: "Farben daraus",
    languages: "Sprachen",
  },
  demonstration: "Demonstration: alles hier ist erfunden.",
  ragLine:
    "Lappen, mit trocknendem Öl getränkt, können sich selbst entzünden: einzeln im Freien ausbreiten, bis sie hart trocken sind, oder in Wasser in einer geschlossenen Metalldose aufbewahren. Niemals in den Abfalleimer oder auf einen Haufen.",
  fromPapers: "Gefahren: aus den Papieren unserer Lieferanten.",
  cautionLine:
    "Das Etikett, das Sicherheitsdatenblatt, Ihre örtlichen Vorschriften und zugelassene Fachleute gehen vor.",
  build: (date: string | undefined) =>
    date === undefined ? "Aus undatierten Aufzeichnungen." : `Aus Aufzeichnungen bis ${date}.`,
  title: (page: string, workshop: string) =>
    page === workshop ? workshop : `${page} \u2013 ${workshop}`,

  sheet: {
    description: (name: string, madeOf: string) =>
      `${name}: ${madeOf}. Was sie in jedem Weiß tut, ob sie hält, wann sie trocknet und wie mit ihr umzugehen ist.`,
    madeOf: {
      mulled: (vehicle: string) => `; ${vehicle}, von Hand angerieben`,
      milled: (vehicle: string) => `; ${vehicle}, gewalzt`,
      plain: (vehicle: string) => `; ${vehicle}`,
      comma: ", ",
      withAdditions: (names: readonly string[]) => `; außerdem darin: ${listed(names)}`,
    },
    holdsMediums: (mediums: readonly string[]) =>
      `Sie enthält auch ${listed(mediums)}: wie sich das auf Trocknung, Glanzgrad und Vergilbung auswirkt, haben wir nicht erprobt.`,
    noPanel:
      "Es wird keine Farbe gezeigt: noch ist kein Aufstrich davon gemessen oder nach Augenmaß verglichen worden.",
    tintDescription: (level: string, a: string, b: string) => `L* ${level}, a* ${a}, b* ${b}`,
    missing: "keine Angabe",
    approximateColour:
      "Auf dem Bildschirm nur ungefähr: errechnet aus einer Messung unter anderem Licht.",
    outOfGamut:
      "Ein gewöhnlicher Bildschirm kann diese Farbe nicht zeigen; das Farbfeld kommt ihr so nahe, wie er kann.",
    factDetail: {
      category: (category: string) => `Kategorie\u00a0${category}`,
      asCategory: (category: string) => `wie Kategorie\u00a0${category}`,
      notTested: "hier nicht geprüft",
      notTestedInTints: "nach den Aufhellungen, wo sie schwächer ist; hier nicht geprüft",
    },
    expectation: TERMS,
    /** A category in a word. */
    categories: Object.fromEntries(
      EXPECTATIONS.map(({ category, expectation }) => [category, EXPECTATION_WORDS[expectation]]),
    ) as Record<string, string>,
    revision: (revision: string, date: string | undefined) =>
      `Fassung ${revision}${date === undefined ? "" : `, aus Aufzeichnungen vom ${date}`}`,
    whiteSentence: (count: number) =>
      count === 1
        ? "Ein Weiß. Eine Farbe des Sortiments wurde darin erprobt."
        : `Ein Weiß. ${count} Farben des Sortiments wurden darin erprobt.`,
    noSentence: "Noch in keinem Weiß erprobt.",
  },
  sections: {
    reply: "Antwort",
    label: "Etikettentext",
  },
  whites: {
    heading: (name: string, index: string | undefined) =>
      `In ${name}${index === undefined ? "" : ` (${index})`}`,
    ladderTitle: (white: string) => `Mit ${white}, von der kräftigsten Mischung zur hellsten`,
    ladderDescription: (steps: readonly string[]) => `${steps.join("; ")}.`,
    stepDescription: (ratio: string, standing: string, L: string, a: string, b: string) =>
      `${ratio}, ${standing}, L* ${L}, a* ${a}, b* ${b}`,
    suspect: "zweifelhaft",
    steps: (count: number) =>
      count === 1 ? "Die eine Stufe in Zahlen" : `Die ${count} Stufen in Zahlen`,
    stepsCaption: (white: string, kind: "pigment" | "paint") =>
      `Farbe zu ${white} nach Masse ${kind === "paint" ? "der Farbe" : "des trockenen Pigments"}`,
    columns: {
      ratio: "Farbe : Weiß",
      L: "L*",
      a: "a*",
      b: "b*",
      munsell: "Munsell",
      misfit: "\u00b1 oder Abweichung",
    },
    note: "L* a* b* unter D65, 10\u00b0-Beobachter. Letzte Spalte, in \u0394E00: bei einer vorhergesagten Stufe, worin etwa 68\u00a0% der Vorhersagen bleiben; bei einem Aufstrich, wie weit die Anpassung ihn verfehlt, und in Klammern, wie weit, wenn dieser Aufstrich ausgelassen wird.",
    expectedNote:
      "Zu erwarten, nicht aufgestrichen: L* a* b* (D65, 10\u00b0-Beobachter) als der Bereich, in dem neun von zehn solchen Aufhellungen liegen, Munsell in dessen Mitte. Letzte Spalte, in \u0394E00: worin etwa 68\u00a0% bleiben.",
    range: (low: string, high: string) => (low === high ? low : `${low} bis ${high}`),
    trailEnds: { plusA: "Rot", minusA: "Grün", plusB: "Gelb", minusB: "Blau" },
    trailTitle: "Wohin jedes Weiß die Farbe führt: a* und b* der Mischungen",
    trailDescription: (whites: readonly string[]) =>
      `Eine Linie für jedes Weiß, von der Farbe allein bis zur hellsten Mischung: ${whites.join(", ")}.`,
  },
  strength: {
    caption: "Farbstärke und Decken",
    why: "Warum",
    tubeCaption: "Wie viel Weiß auf einen Teil, für einen mittleren Ton (L* 50)",
    tubeColumns: {
      white: "Weiß",
      byVolume: "Tube zu Tube, nach Volumen",
      byMass: "Nach Masse der Farbe",
    },
    tubeNote:
      "Eine starke Farbe nimmt viel Weiß auf. Aus der Tube gedrückt wird nach Volumen; errechnet ist es aus den Gewichten und den Dichten.",
    glazeTitle: "Unterton: immer dickere Filme über Weiß",
    glazeAxis: "Trockener Film, \u00b5m",
    glazeLabel: (filmUm: number) => `${filmUm}`,
    glazeDescription: (films: readonly string[]) => `Filme über Weiß: ${films.join("; ")}.`,
    hidingTitle: "Wie dick ein Film sein muss, um zu decken",
    hidingFilm: "Trockener Film, \u00b5m",
    hidingRatio: "Kontrastverhältnis",
    hides: "deckt",
    hidingDescription: (points: readonly string[]) =>
      `Kontrastverhältnis nach Film: ${points.join("; ")}.`,
  },
  drying: {
    caption: "Trocknung",
    why: "Warum",
    layering: "Schichten",
    film: "Der Film mit dem Alter",
    contradictions: "Wo unser Versuch und die Faustregel sich widersprechen",
    summary: (dryingClass: string, days: string, through: string | undefined) =>
      through === undefined
        ? `${upperFirst(dryingClass)}: ${days} bis grifftrocken. Das ist nicht durchgetrocknet.`
        : `${upperFirst(dryingClass)}: ${days} bis grifftrocken, ${through} bis durchgetrocknet. Ein dickerer Film braucht länger.`,
    none: "Noch nicht bekannt: wir haben keinen Versuch damit und wissen nicht, wie das Pigment auf trocknendes Öl wirkt.",
  },
  permanence: {
    exposed: (word: string, category: string) =>
      `${upperFirst(word)}: in unserer eigenen Belichtung änderte sie sich so stark, wie Kategorie\u00a0${category} es zulässt.`,
    stated: (word: string, told: string) => `${upperFirst(word)}: ${told}.`,
    expected: (word: string) => `${upperFirst(word)}; hier nicht geprüft.`,
    caption: "Lichtechtheit",
    why: "Warum",
    sensitivities: "Weitere Risiken",
    note: "Die Grenzen der Kategorien sind nach der Norm aus dem Gedächtnis zitiert. Eine Kategorie im eigentlichen Sinn braucht die Belichtungen der Norm.",
    none: "Noch nicht bekannt: keine Belichtung, keine Angabe des Lieferanten, und nichts, was die Pigmente erwarten ließen.",
  },
  oil: {
    caption: "Öl, Packung und Glanzgrad",
    why: "Warum",
    contradictions: "Wo unsere Aufzeichnung und die Faustregel sich widersprechen",
    summary: (oilClass: string, line: string) => `Ölbedarf ${oilClass}: ${line}`,
    notClassed: (grams: string) =>
      `Ihr Öl ist noch nicht gewogen, und für ein Wort ist die Schätzung zu weit: ${grams}.`,
    none: "Noch nicht bekannt: wir haben weder eine Ölzahl noch das Öl eines Ansatzes.",
  },
  handling: HANDLING,
  pigmentIndex: PIGMENT_INDEX,
  pigment: {
    share: (share: string) => `${share} des trockenen Pigments`,
    whole: "ein einziges Pigment",
    noShare: "Anteil nicht aufgezeichnet",
    caption: (name: string) => `${name}, trocken`,
    facts: {
      origin: "Herkunft",
      chemistry: "Chemie",
      particle: "Teilchen",
      benchTest: "Ein Versuch an der Werkbank",
    },
    particle: (size: string | undefined, shape: string | undefined, index?: string) =>
      [shape, size, index === undefined ? undefined : `Brechungsindex ${index}`]
        .filter((part) => part !== undefined)
        .join(", "),
    size: (um: string) => `${um} \u00b5m`,
    nothing: "Mehr haben wir darüber nicht aufgeschrieben.",
  },
  range: {
    ends: { low: "am wenigsten", high: "am meisten" },
    sameColour: "Aus der Tube ähnlich",
    samePigment: "Aus demselben Pigment",
    metameric: "Aus der Tube, bei Tageslicht und bei Lampenlicht",
    metamericPair: (name: string, sentence: string) => `${name}: ${sentence}`,
    hueTitle: "Das Sortiment nach Buntton und Chroma",
    hueDescription: (parts: readonly string[]) => `${parts.join("; ")}.`,
    neutral: "neutral",
    chroma: "Munsell-Chroma",
    value: "Munsell-Helligkeit",
    valueTitle: "Das Sortiment nach Helligkeit und Chroma",
    difference: (deltaE: string, inWhite?: { white: string; deltaE: string }) =>
      inWhite === undefined
        ? `allein \u0394E00 ${deltaE}`
        : `allein \u0394E00 ${deltaE}; in ${inWhite.white} \u0394E00 ${inWhite.deltaE}`,
    oilTitle: "Ihr Öl neben dem übrigen Sortiment",
    dryingTitle: "Ihre Trocknung neben dem übrigen Sortiment",
    placeDescription: (name, value, count, [lowest, lower, upper, highest]) =>
      `${name}: ${value}. Die ${count} Farben mit einer Angabe liegen zwischen ${lowest} und ${highest}, die mittlere Hälfte zwischen ${lower} und ${upper}.`,
    box: (count) => `Kasten: die mittlere Hälfte von ${count} Farben`,
  },
  notations: {
    readBy: (geometry: string) => `Gemessen ${inGerman(GEOMETRY_NAMES, geometry)}.`,
    included: (L: string) => `Mit Glanz gemessen; ohne ihn läge L* bei etwa ${L}.`,
    byEye:
      "Nach Augenmaß mit einem Munsell-Muster verglichen; das ist auf eine halbe Stufe Helligkeit und eine Stufe Chroma genau.",
    none: "Noch keine: kein Aufstrich ist gemessen oder nach Augenmaß verglichen worden.",
    labCaption: "Die Farbe allein, unter jedem Licht",
    light: "Licht, Beobachter",
    viewings: {
      "C/2": "C, 2\u00b0",
      "D65/2": "D65, 2\u00b0",
      "D65/10": "D65, 10\u00b0",
      "D50/2": "D50, 2\u00b0",
      "A/10": "A (Lampenlicht), 10\u00b0",
      "A/2": "A (Lampenlicht), 2\u00b0",
      "C/10": "C, 10\u00b0",
      "D50/10": "D50, 10\u00b0",
      "D65/2006": "D65, 10\u00b0 nach CIE 2006",
    },
    caption: "Namen und Bildschirmfarben",
    curveTitle: "Reflexion des Volltons über dem Spektrum",
    curveDescription: (low: string, high: string, lowNm: string, highNm: string) =>
      `Zwischen ${low} bei ${lowNm} nm und ${high} bei ${highNm} nm.`,
    curveLabel: (geometry: string) => `Vollton, ${inGerman(GEOMETRY_NAMES, geometry)}`,
    excludedLabel: "ohne Glanz errechnet",
    wavelength: "Wellenlänge, nm",
    reflectance: "Reflexionsgrad",
    reflectanceTo: (end: string) => `Reflexionsgrad, vergrößert: die Achse endet bei ${end}`,
  },
  evidence: {
    summary:
      "Jeder Wert dieses Blatts, woher wir ihn haben und woraus er errechnet ist. Die Werte stehen unter den Namen, die die Daten des Blatts und die Aussagen der Antworten verwenden.",
    caption: "Werte, und wie jeder gefunden wurde",
    columns: {
      figure: "Wert",
      value: "Betrag",
      standing: "Herkunft",
      method: "Verfahren",
      inputs: "Aus",
    },
    part: (part: string, count: number) => `${part}: ${count} ${count === 1 ? "Wert" : "Werte"}`,
    parts: {
      pigments: "Das Pigment",
      notations: "Notationen",
      tints: "In Weiß",
      mixture: "Als Mischung",
      optics: "Farbstärke, Decken, Glanz und Anpassung",
      oil: "Öl und Glanzgrad",
      batch: "Ein Ansatz",
      fill: "Gläser und Tuben",
      drying: "Trocknung",
      permanence: "Lichtechtheit",
      additions: "Zusätze",
      vehicle: "Bindemittel",
      cautions: "Sicherheit",
      offer: "Größen und Preise",
    },
    notStated: "Noch nicht bekannt",
    notStatedCaption: "Noch nicht bekannt, und was dazu nötig wäre",
    reason: "Warum",
    wanting: "Es fehlt",
    sources: "Quellen",
  },
  downloads: {
    sheet: "jeder Wert dieses Blatts und woher er bekannt ist",
    reading: "der Vollton wie gemessen, Reflexionsgrad nach Wellenlänge",
    csv: "eine Zeile je Größe, für einen Laden zum Einlesen",
    figures: "eine Zeile je Farbe, jeder Wert mit seiner Herkunft",
    json: "die Liste der Blätter, für Programme",
  },
  parts: {
    heading: (heading: string, page: number, pages: number) =>
      `${heading}, Seite ${page} von ${pages}`,
    onThisPage: (what: string) => `${what}, auf dieser Seite`,
    someOf: (shown: number, all: number) =>
      `${shown} von ${all} sind gezeigt, gleichmäßig aus allen genommen.`,
  },
  catalogue: {
    heading: "Farben",
    filters: {
      label: "Das Sortiment eingrenzen",
      families: "Nur",
      heading: "die",
      found: "{count} von {all} Farben",
      nothing: "Keine Farbe erfüllt all das.",
    },
    filterNames: {
      opaque: "decken",
      transparent: "lasieren",
      fast: "schnell trocknen",
      slow: "langsam trocknen",
      lightfast: "lichtecht sind (Kategorie I oder II)",
      unwarned: "keine Warnung brauchen",
    },
    inThisWhite: (white: string) => `in ${white} erprobt sind`,
    gridLead: "Jede Farbe, oben allein und unten mit Weiß, auf einen mittleren Ton gebracht.",
    orders: {
      grid: "Farbfelder nach Familie",
      family: "Tabelle nach Familie",
      value: "Nach Helligkeit",
      hue: "Nach Buntton",
      drying: "Nach Trocknung",
      permanence: "Nach Beständigkeit",
      oil: "Nach Öl",
      strength: "Nach Farbstärke",
      whites: OPTICS_PAGES.inTheWhites.orders,
    },
    leads: {
      family: "Nach Familie, dann nach Name.",
      value: "Von der dunkelsten zur hellsten, wie sie aus der Tube kommen.",
      hue: "Unbunte zuerst, dann um den Farbkreis.",
      drying:
        "Die schnellste zuerst. Wo die Tage ein Bereich sind, entscheidet dessen Mitte; rechnen Sie mit dem späteren Tag.",
      permanence:
        "Die lichtechteste zuerst. In einer Kategorie steht das Geprüfte voran: unsere eigene Prüfung zählt mehr als die Angabe eines Lieferanten, und diese mehr als das, was nur zu erwarten ist.",
      oil: PAINT_PAGES.byOil.lead,
      strength: OPTICS_PAGES.byStrength.lead,
    },
    columns: {
      colour: "Farbe",
      pigments: "Pigmente",
      munsell: "Munsell",
      lightfastness: "Lichtechtheit",
      opacity: "Deckvermögen",
      drying: "Trocknung",
      oil: "Ölindex",
    },
    notRead: "nicht gemessen",
    count: (count: number) => `${count} Farbe${count === 1 ? "" : "n"}`,
    groups: { neutral: "Unbunte", notStated: "Noch nicht bekannt" },
    noSwatch: "noch nicht gemessen",
    madeNoMore: "nicht mehr hergestellt",
    caption: (heading: string) => `Farben: ${heading}`,
    value: (from: number) => `Helligkeit ${from} bis ${from + 1}`,
  },
  pigments: {
    heading: "Pigmente",
    columns: {
      pigment: "Pigment",
      index: "Colour Index",
      density: "Dichte",
      oil: "Ölzahl",
      colours: "Farben",
    },
    properties: "Werte des trockenen Pigments",
    handling: "Umgang mit dem trockenen Pigment",
    noColours: "Keine Farbe ist daraus gemacht.",
    caption: "Trockene Pigmente",
  },
  home: {
    promise: ({ measured, mediums, byEye, unread, tinted }: RangeCounts) =>
      mediums + byEye + unread === 0 && tinted === measured
        ? `${measured} Ölfarben, jede gezeigt, wie wir sie gemessen haben: allein und mit Weiß gemischt.`
        : [
            `${measured} Ölfarben${mediums === 0 ? "" : ` und ${mediums} ${mediums === 1 ? "Streckmedium" : "Streckmedien"}`}, wie wir sie gemessen haben`,
            ...(tinted === measured + mediums
              ? ["allein und mit Weiß gemischt"]
              : tinted === 0
                ? []
                : [`${tinted} davon auch mit Weiß gemischt`]),
          ].join(", ") + ".",
    /** What is shown beside those, and how it is known. */
    besides: ({ byEye, unread }: RangeCounts) =>
      [
        ...(byEye === 0 ? [] : [`${byEye} weitere nach Augenmaß oder nach Angaben anderer`]),
        ...(unread === 0 ? [] : [`${unread} noch zu messen`]),
      ].join(", "),
    pressFamily:
      "Tippen Sie auf eine Familie für ihre Farben und auf eine Farbe für ihr Blatt: was sie in Weiß tut, ob sie hält, wann sie trocknet, was in der Tube ist.",
    press:
      "Tippen Sie auf eine Farbe für ihr Blatt: was sie in Weiß tut, ob sie hält, wann sie trocknet, was in der Tube ist.",
    ask: "Fragen",
    allQuestions: (count: number) => `Alle ${count} Fragen`,
    beside: "Nebeneinandergestellt",
    choose: "Selbst wählen",
    know: "Woher wir es wissen",
    knowText:
      "Wir haben es gemessen, errechnet, geschätzt oder die Angabe eines Lieferanten übernommen. Jedes Blatt sagt, was davon gilt.",
    knowLink: "Wie ein Etikett zu lesen ist",
    wall: "Das Sortiment",
  },
  methods: {
    heading: "Verfahren",
    lead: "Woher wir jeden Wert haben, und wie weit ihm zu trauen ist.",
    /** Below the section on tints. */
    measured: (rows: readonly MeasuredErrors[], areInvented: boolean): string =>
      [
        "Wie weit solche Vorhersagen von gemessenen Ölfarben liegen, in \u0394E00. Jede Aufhellung wird ausgelassen und aus den anderen vorhergesagt; eine Mischung wird aus ihren beiden Farben vorhergesagt, und eine Farbe in Schwerspat oder Kreide aus ihren Aufhellungen in Zinkweiß, über eine andere Farbe, die in beiden aufgehellt wurde. Mit Filmen: Aufstriche über Schwarz und Weiß sagten der Anpassung, wie jede Farbe streut. Die letzten beiden Spalten zählen, was innerhalb der 68 und der 90 % liegt, die wir neben eine Vorhersage drucken.",
        "",
        "| | | wie viele | mittlere | neun von zehn innerhalb | innerhalb 68\u00a0% | innerhalb 90\u00a0% |",
        "|---|---|---|---|---|---|---|",
        ...rows.map(
          ({ what, films, count, median, p90, inside68, inside90 }) =>
            `| ${MEASURED[what]} | ${films ? "mit Filmen" : "ohne Filme"} | ${count} | ${NUMBERS.decimal(median, 1)} | ${NUMBERS.decimal(p90, 1)} | ${inside68} | ${inside90} |`,
        ),
        "",
        `Ein \u00b1 auf einem Blatt richtet sich nach den Messungen dieser Farbe und ist darum enger oder weiter als diese Zahlen.${areInvented ? " Die Messungen dieser Vorführung hat ein Programm gemacht; sie stimmen weit besser überein als Aufstriche von Farbe: von wirklicher Farbe sind die Fehler dieser Tabelle zu erwarten, nicht das kleine \u00b1 dieser Blätter." : ""}`,
      ].join("\n"),
    sections: [
      [
        "colour",
        "Farbe",
        "Eine Messung ist eine Reihe von Reflexionsgraden. Sie wird mit den CIE-Tabellen zu X, Y, Z und L*, a*, b* summiert, für jedes Licht und jeden Beobachter, so skaliert, dass ein vollkommenes Weiß als CIE-Weiß herauskommt. Munsell-Notationen sind die der Renotation, in LCHab interpoliert. Bildschirmfarben gelten für D65 und den 2\u00b0-Beobachter. Neben jeder Messung nennen wir die Geometrie: mit Glanz misst ein Schwarz 13 bis 23 Einheiten L* heller.",
      ],
      [
        "tints",
        "Aufhellungen",
        "Was eine Farbe in einem Weiß tut, kommt aus unseren eigenen Aufstrichen. Zwei Konstanten, Absorption K und Streuung S, werden an alle Aufstriche einer Farbe zusammen angepasst (Kubelka und Munk), nachdem die Oberfläche abgezogen ist. Die Stufen dazwischen sind vorhergesagt und so gekennzeichnet; je weiter von einem Aufstrich, desto ungewisser. Aus der Farbe allein wird nichts vorhergesagt. In einem Weiß, in dem eine Farbe nicht erprobt wurde, sagen wir, was zu erwarten ist, wo andere Farben in beiden erprobt wurden: wie stark die beiden Weiß streuen, folgt aus diesen. Das ist eine Schätzung und ein Bereich. Ein Aufstrich, dem die anderen widersprechen, wird gezeigt und nicht verwendet.",
      ],
      [
        "oil",
        "Öl und Glanzgrad",
        "Der Ölindex ist, was wir eingewogen haben; die Ölzahl ist, was das Pigment gerade bindet. Ölzahl und Dichte ergeben die KPVK, der Ansatz ergibt die PVK, und beide zusammen sagen, ob ein glänzender oder ein matter Film zu erwarten ist. Eine Messung mit dem Glanzmessgerät ersetzt die Erwartung.",
      ],
      [
        "drying",
        "Trocknung",
        "Wir gehen von den Tagen aus, die Leinöl allein braucht, und multiplizieren mit je einem Faktor für das Öl, das Pigment, einen etwaigen Trockenstoff, den Film und den Raum. Das ergibt einen Bereich von Tagen. Unser eigener Versuch ersetzt die Schätzung und wird mit seinen Bedingungen gezeigt.",
      ],
      [
        "permanence",
        "Beständigkeit",
        "Eine Kategorie kommt aus einer Belichtung oder aus der Angabe eines Lieferanten; ohne beides gibt es nur, was die Art des Pigments erwarten lässt. Das Blatt sagt, welches der drei es ist. Die Blauwollskala ist eine andere Skala. Jahre nennen wir nicht: keine Belichtung kann sagen, wie viele.",
      ],
      [
        "handling",
        "Umgang",
        "Ist ein Etikett angegeben, so geht es vor. Wenn nicht, wird es aus den Einstufungen der Lieferanten nach den Regeln für Gemische errechnet, und jeder Hinweis nennt den Bestandteil, dessen Anteil und den Grenzwert. Das ist kein Sicherheitsdatenblatt.",
      ],
    ] as const,
  },
  sources: {
    heading: "Quellen",
    lead: "Die Texte hinter den Werten, und wie weit wir jeden benutzt haben: gelesen, daraus errechnet oder aus dem Gedächtnis zitiert.",
    groups: { used: "Auf diesen Blättern benutzt", other: "Zur Hand, hier nicht benutzt" },
    standings: {
      read: "gelesen",
      derived: "daraus errechnet",
      memory: "aus dem Gedächtnis zitiert",
      practice: "gängige Praxis",
    },
  },
  about: {
    heading: "Über uns",
    lead: (workshop: string) => `Was ${workshop} ist, und was diese Blätter sind.`,
    revision: (revision: string) => `Alle Blätter zusammen: Fassung ${revision}.`,
    sections: [
      [
        "sheets",
        "Was ein Blatt ist",
        "Ein Blatt wird aus unseren Aufzeichnungen errechnet: was in den Ansatz ging, Ölzahlen, Aufstriche, mit einem Gerät gemessen oder nach Augenmaß verglichen, Trockenversuche, Belichtungen, Papiere der Lieferanten. Jeder Wert sagt, woher er bekannt ist. Wo wir es nicht wissen, steht, was dazu nötig wäre.",
      ],
      [
        "limits",
        "Was es nicht ist",
        "Ein Blatt ist kein Sicherheitsdatenblatt und kein Zertifikat. Verlassen Sie sich auf ein aufgestrichenes Muster, nicht auf den Bildschirm.",
      ],
    ] as const,
  },
  blacks: BLACKS_PAGES,
  mixture: MIXTURE_PAGES,
  mixing: MIXING_PAGES,
  paint: PAINT_PAGES,
  listing: LISTING,
  photographs: PHOTOGRAPHS,
  workshop: WORKSHOP_PAGES,
  lots: LOT_PAGES,
  optics: OPTICS_PAGES,
  labelPage: LABEL_PAGE,
  sheetPage: SHEET_PAGE,
  sheetPaper: SHEET_PAPER,
  cards: CARDS,
  changes: CHANGES,
  packageLabels: PACKAGE_LABELS,
  nextSteps: NEXT_STEPS,
  compare: COMPARE_PAGES,
  answers: ANSWER_PAGES,
  former: {
    gone: (name, date) =>
      date === undefined
        ? `${name} gibt es auf dieser Website nicht mehr.`
        : `${name} gibt es auf dieser Website seit dem ${date} nicht mehr.`,
    replacedBy: (name) => `An ihrer Stelle: ${name}`,
  },
  notFound: {
    heading: "Diese Seite gibt es nicht",
    lead: "Unter dieser Adresse ist nichts. Eine Farbe kann umbenannt oder aus dem Sortiment genommen worden sein.",
    link: "Alle Farben",
  },
};
