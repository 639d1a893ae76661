import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";

/** What the workshop's pages of lots, batch sheets and trials say. */
export const LOT_PAGES: AnyWords<PageWords["lots"]> = {
  /** On published pages: which lots the figures are of. */
  describes: (standard: string | undefined, others: readonly string[]) =>
    [
      ...(standard === undefined ? [] : [`Die Werte beschreiben Charge ${standard}.`]),
      ...(others.length === 0
        ? []
        : [
            `${others.length === 1 ? "Charge" : "Chargen"} ${others.join(", ")} ${others.length === 1 ? "stimmt" : "stimmen"} innerhalb der Toleranz mit ${standard === undefined ? "dem Standard" : "ihr"} überein.`,
          ]),
    ].join(" "),
  recalled: (number, since) =>
    `Charge ${number} wurde am ${since} zurückgerufen: nicht verwenden, und uns schreiben.`,
  conceded: (number) =>
    `Charge ${number} wird mit Sonderfreigabe verkauft, obwohl sie außerhalb der Toleranz liegt.`,
  reply: "Chargen",
  verdicts: {
    pass: "Bestanden",
    near: "Grenzfall",
    fail: "Nicht bestanden",
    none: "Nicht beurteilt",
  },
  index: {
    heading: "Chargen",
    lead: "Jede Charge neben ihrem Standard, die neueste zuerst.",
    description: "Chargen der Werkstatt neben ihren Standards.",
    none: "Noch ist keine Charge aufgezeichnet. Eine Charge ist eine Datei in lots/.",
    outcome: "Wie sie ausfielen",
    caption: "Chargen, die neueste zuerst",
    columns: {
      lot: "Charge",
      colour: "Farbe",
      date: "Datum",
      verdict: "Urteil",
      letDown: "Aufhellung, \u0394E00",
      strength: "Farbstärke, %",
    },
    recalled: "zurückgerufen",
    conceded: "Sonderfreigabe",
    standard: "Standard",
    planned: "Geplant",
    spreadHeading: "Wie gut sich unsere Messungen wiederholen lassen",
    spread: (colour: string, strength: string, degrees: number) =>
      `Dieselbe Charge, noch einmal aufgehellt und gemessen, weicht um ${colour} \u0394E*ab und ${strength} % der Farbstärke ab (Standardabweichung, ${degrees} ${degrees === 1 ? "Freiheitsgrad" : "Freiheitsgrade"}).`,
    spreadUsed: "Danach richten sich die Urteile, und zwar nach dem Doppelten.",
    spreadNotUsed:
      "Das ist zu wenig, um sich danach zu richten: die Urteile richten sich nach dem Rauschen des Geräts.",
    spreadOfReadings:
      "Das \u00b1 jeder Messung desselben Geräts, zu der keines angegeben ist, richtet sich nach diesen und allen anderen Wiederholungen.",
    spreadNone:
      "Keine Charge hat eine zweimal gemachte oder gemessene Aufhellung; die Urteile richten sich daher nach dem Rauschen des Geräts.",
  },
  lot: {
    heading: (number: string, colour: string) => `Charge ${number}, ${colour}`,
    description: (number: string, colour: string) =>
      `Charge ${number} von ${colour} neben dem Standard.`,
    back: "Alle Chargen",
    ruled: (since, why) => `Seit ${since}: ${why}`,
    lead: {
      pass: "Sie besteht.",
      near: "Sie liegt zu nah an einer Grenze für ein Urteil.",
      unjudged:
        "Nicht beurteilt: nicht alles, was daran gemessen wurde, lässt sich mit dem Standard vergleichen.",
      fail: "Sie besteht nicht.",
      none: "Nicht beurteilt: weder Vollton noch Aufhellung sind als Spektrum gemessen.",
      standard: "Der zurückgestellte Standard: spätere Chargen werden mit ihm verglichen.",
      recalled: "Zurückgerufen: nichts davon darf verkauft oder verwendet werden.",
      conceded: "Sonderfreigabe: sie wird verkauft, obwohl sie nicht besteht.",
      planned: "Geplant, noch nicht hergestellt.",
    },
    sections: {
      verdict: "Gegen den Standard",
      seen: "Nebeneinander",
      parts: "Der Unterschied in Teilen",
      correction: "Was sie zurückbrächte",
      planned: "Wie sie geplant ist",
      batch: "Wie sie hergestellt wurde",
      next: "Nächste Schritte",
    },
    judgedCaption: "Jedes Merkmal mit seiner Toleranz",
    judgedColumns: { what: "Merkmal", found: "Gefunden", tolerance: "Toleranz", verdict: "Urteil" },
    customary:
      "Toleranzen sind unsere eigene Wahl, wo weder die Werkstatt noch die Farbe sie nennt.",
    seenRows: ["Standard", "Charge"],
    seenDescription: (number: string) =>
      `Der Standard über Charge ${number}, als Vollton und als Aufhellung.`,
    masstone: "Vollton",
    letDown: (white: string, ratio: string) => `${ratio} in ${white}`,
    partsCaption: "Charge weniger Standard, \u0394E00 (D65, 10\u00b0)",
    partsColumns: {
      of: "Was",
      total: "\u0394E00",
      L: "\u0394L\u2032",
      C: "\u0394C\u2032",
      H: "\u0394H\u2032",
    },
    equal: "Aufhellung bei gleicher Stärke",
    strength: (percent: string, nm: number, weighted: string) =>
      `Farbstärke ${percent} % bei ${nm} nm, wo der Standard am stärksten absorbiert; ${weighted} %, gewichtet danach, was das Auge vom Tageslicht aufnimmt.`,
    correctionLead: (best: string, grams: string) =>
      `In je 100 g der Charge ${grams} g ${best} einarbeiten.`,
    correctionForeign: (name: string, pigments: string) =>
      `Mit ${name} enthält sie auch ${pigments}; weder ihr Name noch ihr Etikett sagt das.`,
    correctionNone:
      "Nichts von dem, was versucht wurde, würde den Unterschied halbieren: kein Weiß, kein Füllstoff, keine gleich gemessene Farbe, keine andere Charge. Nicht versucht werden konnte, was nie aufgehellt und auch nicht allein und in Filmen über einer selbst gemessenen Prüfkarte gemessen wurde.",
    correctionUnread: "Es gibt nichts zu berichtigen, bevor sie richtig gemessen ist.",
    correctionCaption: "Auf 100 g der Charge, und was dann gemessen würde",
    correctionColumns: {
      what: "Zugabe",
      grams: "Auf 100 g, g",
      masstone: "Vollton, \u0394E00",
      letDown: "Aufhellung, \u0394E00",
      strength: "Farbstärke, %",
    },
    correctionNote:
      "In Klammern, was herauskommen kann, wenn die Dosis um 5 % danebenliegt, oder so weit, wie der Zusatz ungewiss ist, und mit der Unsicherheit der Messung. Erst an 20 g erproben: was die Theorie auslässt, steckt nicht im Bereich.",
    kinds: { white: "Weiß", extender: "Füllstoff", colour: "Farbe", lot: "Charge" },
    plannedCaption: "Einzuwiegen",
    batchCaption: "Eingewogen, und was herauskam",
    batchColumns: { what: "Was", amount: "Menge" },
    rows: {
      yield: "Ausbeute",
      loss: "Verlust",
      tubes: (ml: string) => `Tuben zu ${ml} ml`,
      packed: (ml: string) => `Tuben zu ${ml} ml müssen im Mittel enthalten`,
      packedMean: (grams: string) => `${grams} oder mehr`,
      packedFew: "Nur wenige davon dürfen weniger enthalten als",
      packedGross: (net: string, gross: string) => `${net}; mit der leeren Tube ${gross}`,
      packedShort: (found: string, ml: string) =>
        `Im Mittel enthalten sie ${found} ml, und ${ml} ml stehen darauf: So dürfen sie nicht verkauft werden (Richtlinie 76/211/EWG).`,
      tubeMass: (ml: string) => `In einer zu ${ml} ml`,
      fineness: "Mahlfeinheit",
      density: "Dichte der Farbe",
      retained: "Rückstellmuster",
      passes: "Durchgänge",
      note: "Notiz",
    },
    steps: {
      recalled: (number) => [
        `Was davon hinausging und zurückzurufen ist: npm run check -- --uses ${number}.`,
        "Etiketten werden von ihr nicht gedruckt.",
      ],
      conceded: (number, howMany) => [
        `Ihre Etiketten: npm run labels -- --lot ${number} ${howMany}.`,
      ],
      planned: () => [
        "Ist sie gemacht: die Gewichte, wie sie waren, in ihre Datei schreiben und planned: true herausnehmen.",
        "Vollton und Aufhellung aufstreichen und messen; npm run read -- DATEI bewahrt die Messungen auf und nennt die Zeilen für ihre Datei.",
      ],
      none: () => [
        "Vollton und Aufhellung aufstreichen und messen; npm run read -- DATEI bewahrt die Messungen auf und nennt die Zeilen für ihre Datei.",
      ],
      pass: (number, howMany) => [`Ihre Etiketten: npm run labels -- --lot ${number} ${howMany}.`],
      standard: (number, howMany) => [
        `Ihre Etiketten: npm run labels -- --lot ${number} ${howMany}.`,
      ],
      unjudged: () => [
        "In dem Weiß und dem Verhältnis des Standards aufhellen und so messen wie den Standard; oder den zurückgestellten Standard so aufhellen wie diese Charge.",
      ],
      near: () => [
        "Noch einmal aufstreichen und messen: mit einem kleineren ± kann sich zeigen, ob sie besteht.",
      ],
      fail: () => [
        "Nach ihrem Blatt korrigieren oder zurückhalten. Was korrigiert wurde, wird neu gemessen, als eigene Charge.",
      ],
      kept: () => [
        "Zurückhalten: nichts, was hier gemessen wurde, brächte sie zu ihrem Standard zurück.",
      ],
    },
    ownSheet: (number) => `Ansatzblatt der Charge ${number}`,
    correctionSheet: (number) => `Blatt zur Korrektur der Charge ${number}`,
    reply: (colour) => `Eine Antwort zu ${colour}`,
    batchSheet: (colour: string) => `Ansatzblatt: ${colour}`,
    colourPage: (colour: string) => `${colour} in der Werkstatt`,
  },
  chart: {
    of: {
      strength: {
        title: (colour: string) => `Farbstärke von ${colour}, Charge für Charge`,
        ranges: (colour: string) => `Farbstärke von ${colour}: von jeder Charge zur nächsten`,
        value: "Farbstärke, % des Standards",
        range: "Unterschied zweier Nachbarn, %",
        column: "Farbstärke, %",
      },
      letDown: {
        title: (colour: string) => `Aufhellung von ${colour} neben dem Standard, Charge für Charge`,
        ranges: (colour: string) => `Aufhellung von ${colour}: von jeder Charge zur nächsten`,
        value: "\u0394E00 der Aufhellung vom Standard",
        range: "Unterschied zweier Nachbarn, \u0394E00",
        column: "Aufhellung, \u0394E00",
      },
      masstone: {
        title: (colour: string) => `Vollton von ${colour} neben dem Standard, Charge für Charge`,
        ranges: (colour: string) => `Vollton von ${colour}: von jeder Charge zur nächsten`,
        value: "\u0394E00 des Volltons vom Standard",
        range: "Unterschied zweier Nachbarn, \u0394E00",
        column: "Vollton, \u0394E00",
      },
    },
    description: (numbers: string) => `Nach Datum geordnet: ${numbers}.`,
    order: "Chargen nach Datum",
    lines: {
      mean: "Mittelwert",
      limits: "Eingriffsgrenzen",
      limit: "Grenze",
      tolerance: "Toleranz",
    },
    provisional: (count: number) =>
      `Grenzen aus ${count} Chargen sind vorläufig: die nächsten verschieben sie. Zwanzig machen sie fest.`,
    quiet:
      "Keine Charge liegt jenseits der Grenzen, und keine Folge ist lang genug, um etwas zu sagen.",
    points: "Welche Charge jede Marke ist",
    columns: { place: "Marke", lot: "Charge", date: "Datum" },
    one: "Eine Charge allein ergibt keine Regelkarte.",
    apart:
      "Keine dieser Chargen ließ sich in Farbe oder Farbstärke mit dem Standard vergleichen; daher gibt es keine Regelkarte.",
  },
  correctionSheet: {
    heading: (number) => `Korrektur der Charge ${number}`,
    description: (number) =>
      `Was abzuwiegen ist, um Charge ${number} zu ihrem Standard zurückzubringen.`,
    rows: {
      trialLot: "Probe: von der Charge",
      trialAdded: (name) => `Probe: ${name}`,
      restLot: "Dann: der Rest der Charge",
      restAdded: (name) => `Dann: ${name}`,
    },
    predicted: (masstone, letDown, strength) =>
      `Sollte dann messen: Vollton \u0394E00 ${masstone}, Aufhellung \u0394E00 ${letDown}, Farbstärke ${strength} %.`,
    dose: (grams, name) => `${grams} g ${name} auf 100 g der Charge.`,
    ofYield: (grams) =>
      `Für die ${grams} g, die herauskamen: was davon schon in Tuben ist, wird abgezogen.`,
    ofWeighed: (grams) =>
      `Für die ${grams} g, die eingewogen wurden: die Datei nennt keine Ausbeute.`,
    order: [
      "Die Probe auf der Reibplatte mit dem Spachtel mischen, bis keine Schlieren mehr zu sehen sind.",
      "Neben dem Standard aufstreichen, Vollton und Aufhellung, und beide messen.",
      "Außerhalb der Toleranz: aufschreiben, was gemessen wurde, und die Charge lassen, wie sie ist.",
      "Innerhalb der Toleranz: den Rest in Dritteln einarbeiten und das Ganze noch einmal durchreiben oder durchwalzen.",
      "Das Ganze aufstreichen, messen und ein neues Rückstellmuster füllen.",
      "Als eigene Charge aufschreiben, mit allem, was hineinging.",
    ],
    cautions: "Vor dem Mischen",
    classified: (name, statements) =>
      `${name} ist eingestuft (${statements}): die Hinweise auf dem Etikett gelten an der Reibplatte, und die Charge braucht ein eigenes Etikett.`,
    fields: {
      masstone: "Probe, Vollton \u0394E00",
      letDown: "Probe, Aufhellung \u0394E00",
      strength: "Probe, Farbstärke %",
    },
  },
  batchSheet: {
    heading: (colour: string) => `Ansatzblatt: ${colour}`,
    description: (colour: string) =>
      `Was für eine Charge ${colour} abzuwiegen ist, zum Drucken und Mitnehmen an die Reibplatte.`,
    back: (colour: string) => `${colour} in der Werkstatt`,
    backToLot: (number) => `Charge ${number}`,
    wanted: "Was gebraucht wird",
    units: { tubes: (ml: string) => `Tuben zu ${ml} ml`, pigmentG: "g Pigment" },
    amount: "Wie viele, oder wie viel",
    fault: "Geben Sie eine Menge über 0 an.",
    print: "Drucken",
    caption: "Was abzuwiegen ist",
    columns: { what: "Was", planned: "Geplant,\u00a0g", weighed: "Gewogen,\u00a0g" },
    rows: { first: "Öl zu Beginn", held: "Zurückgehaltenes Öl", paint: "Farbe insgesamt" },
    comesOut: (from: string, to: string) => `${from} bis ${to} ml sollten herauskommen.`,
    loss: {
      learnt: (from: string, to: string, count: number) =>
        `Verlust ${from} bis ${to} %, wie bei ${count === 1 ? "einer Charge" : `${count} Chargen`} davon.`,
      customary: (from: string, to: string) =>
        `Verlust ${from} bis ${to} %, wie üblich: keine Charge davon ist aufgezeichnet.`,
    },
    fill: (ml: string, really: string) =>
      `Auf jede Tube zu ${ml} ml ${really} ml rechnen: So viel enthielten die früheren.`,
    packed: (ml: string, mean: string, few: string, none: string, density: string) =>
      `Nach dem Gesetz müssen Tuben zu ${ml} ml im Mittel mindestens ${mean} g Farbe enthalten: Das genügt für ${ml} ml bis zu einer Dichte von ${density} g/cm\u00b3. Wenige einer Charge (nach deutschem Recht 2 von 100) dürfen weniger als ${few} g enthalten, keine weniger als ${none} g (Richtlinie 76/211/EWG).`,
    gross: (ml: string, mean: string, few: string, none: string, tare: string) =>
      `Auf der Waage, mit der leeren Tube zu ${ml} ml von ${tare} g: ${mean} g, ${few} g und ${none} g.`,
    tareless: "Die leere Tube mit Kappe kommt hinzu: eine wiegen und als tareG eintragen.",
    densityFirst: "Zuerst die Dichte der Charge wiegen: Die Massen richten sich nach ihr.",
    rubbedOut: (pigment: string, number: string, figure: string) =>
      `${pigment}, Lieferung ${number}: Ölzahl ${figure} g/100 g, nach der sich hier das zurückgehaltene Öl richtet.`,
    step: (grams: string) => `Gewichte auf ${grams} g, die Teilung der Waage.`,
    order: {
      heading: "Arbeitsfolge",
      mulled: [
        "Das Pigment bei laufender Absaugung abwiegen, wie unten gesagt, und das Glas schließen.",
        "Öl zu Beginn: mit dem Spachtel einarbeiten, bis kein trockenes Pigment mehr übrig ist.",
        "In Portionen mit dem Läufer anreiben; nach jedem Durchgang zusammenschaben und wenden.",
        "Zurückgehaltenes Öl: tropfenweise, nur so weit die Paste danach verlangt. Notieren, was übrig bleibt.",
        "Trockenstoffe und Malmittel zuletzt, und gut durchmischen.",
        "Vollton und Aufhellung aufstreichen, das Musterglas füllen, dann die Tuben.",
      ],
      milled: [
        "Das Pigment bei laufender Absaugung abwiegen, wie unten gesagt, und das Glas schließen.",
        "Öl zu Beginn: zu einer steifen Paste mischen und stehen lassen, bis sie durchnetzt ist.",
        "Mit weitem Walzenspalt walzen, dann bei jedem Durchgang enger; nach jedem das Grindometer ablesen.",
        "Zurückgehaltenes Öl: zwischen den Durchgängen, nur so weit die Paste danach verlangt. Notieren, was übrig bleibt.",
        "Trockenstoffe und Malmittel im letzten Durchgang.",
        "Vollton und Aufhellung aufstreichen, das Musterglas füllen, dann die Tuben.",
      ],
    },
    cautions: "Bevor das Pigment Farbe ist",
    defer: "Die Sicherheitsdatenblätter der Lieferanten und örtliche Vorschriften gehen vor.",
    fields: {
      heading: "Auszufüllen",
      lot: "Charge",
      name: "Hergestellt von",
      date: "Datum",
      passes: "Durchgänge",
      fineness: "Mahlfeinheit, \u00b5m",
      left: "Übriges Öl, g",
      yield: "Ausbeute, g",
      tubes: "Gefüllte Tuben",
      sample: "Musternummer",
    },
    none: "Nichts lässt sich abwiegen:",
  },
  labels: {
    heading: "Etiketten zum Aufkleben",
    description: "Etiketten der Werkstatt für Tuben und Gläser.",
    lead: "Ein Etikett jeder Farbe in jeder Größe, in der sie abgefüllt wird, in wirklicher Größe. Ein Etikett ist ein Entwurf für den, der es verantwortet: das Recht jedes Marktes bestimmt, was es tragen muss.",
    sections: {
      print: "Zu drucken",
      refused: "Ohne Etikett",
      remarks: "Zu den gedruckten Etiketten",
    },
    list: "Farbe, Größe und warum",
    caption: "Etiketten nach Größe",
    columns: { size: "Größe", measures: "Etikett, mm", colours: "Farben" },
    measures: (width: number, height: number) => `${width} \u00d7 ${height}`,
    pdf: (pages: number) =>
      `labels.pdf, ${pages} ${pages === 1 ? "Seite" : "Seiten"}, in voller Größe zu drucken`,
    none: "workshop.yaml gibt keine Etiketten an: eine Liste aus { name, kind, ml } sagt, welche es gibt.",
    nothing: "Noch hat keine Farbe, die in einer dieser Größen abgefüllt wird, ein Etikett.",
    command:
      "Für eine Charge, und so viele, wie Tuben gefüllt wurden: npm run labels -- --lot NUMBER --filled.",
  },
  trials: {
    heading: "Versuche",
    lead: "Belichtungen und Trockenversuche, so weit sie gediehen sind.",
    description: "Versuche der Werkstatt als datierte Reihen.",
    none: "Kein Versuch ist als Reihe aufgezeichnet. Ein Versuch ist eine Datei in trials/.",
    due: "Als Nächstes fällig",
    dueCaption: "Wann wieder nachzusehen ist",
    dueColumns: { what: "Versuch", date: "Nachsehen am" },
    ended: "Beendet",
    exposure: (colour: string, form: string) =>
      `${colour}, ${form === "masstone" ? "Vollton" : form === "tint" ? "Aufhellung" : form}, belichtet`,
    drying: (colour: string) => `${colour}, Trocknung`,
    soFar: (category: string, deltaEab: string, days: number) =>
      `Bisher Kategorie\u00a0${category}: \u0394E*ab ${deltaEab} nach ${days} ${days === 1 ? "Tag" : "Tagen"}. Über das Kommende sagt das nichts.`,
    over: (category: string, deltaEab: string, days: number) =>
      `Kategorie\u00a0${category}: \u0394E*ab ${deltaEab} nach ${days} ${days === 1 ? "Tag" : "Tagen"}.`,
    unread: "Noch nicht gemessen.",
    touch: (from: number, to: number) => `Grifftrocken zwischen Tag ${from} und Tag ${to}.`,
    through: (from: number, to: number) => `Durchgetrocknet zwischen Tag ${from} und Tag ${to}.`,
    notYet: "Noch nicht grifftrocken.",
    never: "Bei Versuchsende nicht grifftrocken.",
    day: "Tage seit Beginn",
    change: "\u0394E*ab zur dunkel gehaltenen Hälfte",
    state: "Nass 0, klebrig 1, grifftrocken 2, durchgetrocknet 3",
    limit: (category: string) => `Ende von ${category}`,
    next: (date: string) => `Wieder nachsehen am ${date}.`,
    table: "Jede Messung",
    columns: { date: "Datum", day: "Tag", found: "Gefunden" },
  },
};
