import { listed, NUMBERS } from "./phrases.ts";
import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";
import { NEXT_STEPS as ENGLISH } from "../en/next-steps.ts";

/** What the page What to do next, and its command, say. */
export const NEXT_STEPS: AnyWords<PageWords["nextSteps"]> = {
  heading: "Was als Nächstes zu tun ist",
  lead: "Jede Zeile wurde durchgerechnet: ein plausibler Wert kam in die Aufzeichnungen, die Blätter wurden neu errechnet, und was sie gewannen, wurde gezählt. Der beste Gewinn je Arbeitsstunde steht zuerst; gezählt sind Arbeitsstunden ohne Wartezeit, nach unserer eigenen Schätzung.",
  steps: "Was am meisten klärt",
  stepsCaption: "Was herauszufinden ist, was die Blätter gewinnen und welche Arbeit es macht",
  columns: {
    what: "Was",
    gain: "Jedes gewinnt",
    hours: "Arbeit",
    record: "Zu schreiben",
  },
  none: "Nichts, was eine Werkstatt herausfinden könnte, würde eine Zeile klären oder festigen.",
  due: "Was fällig ist",
  dueCaption: "Was mit der Zeit fällig wurde",
  dueColumns: { what: "Was", where: "Aufzeichnung" },
  /** Where no manifest of the last printing was named, nobody knows which cards are out of date. */
  reprintsUnknown:
    "Welche Regalkarten neu zu drucken sind, ist bekannt, sobald cards sie gedruckt hat: was dann darauf stand, bleibt bei den Aufzeichnungen, in printed-cards.json.",
  nothingDue: "Nichts ist fällig.",
  open: "Was offen ist",
  openCaption: "Was Etiketten und Chargen noch fehlt, ohne Termin",
  things: {
    densityGPerCm3: "Dichte",
    oilAbsorptionGPer100g: "Ölzahl durch Anreiben",
    bulkDensities: "Ein Maß Pulver gewogen, geschüttet und gestampft",
    lightfastness: "Lichtechtheit nach Angabe des Lieferanten",
    hazards: "Das Sicherheitsdatenblatt des Lieferanten",
    parts: "Teile der Pigmente, aus dem Ansatzbuch",
    oilIndexGPer100g: "Öl, in den nächsten Ansatz eingewogen",
    masstone: "Ein Aufstrich des Volltons, gemessen",
    tints: "Drei Aufhellungen in einem Weiß, gemessen",
    films: "Filme bekannter Dicke über Schwarz und Weiß, gemessen",
    dryingTrials: "Ein Trockenversuch",
    exposures: "Eine Belichtung hinter Glas, Vollton und Aufhellung",
    gloss60: "Glanz eines Aufstrichs bei 60\u00b0",
    finenessOfGrindUm: "Mahlfeinheit auf dem Grindometer",
    bodyAndSeparation: "Konsistenz und Ölabscheidung, betrachtet",
  },
  of: (thing: string, names: readonly string[]) =>
    `${thing}: ${listed(names.length > 4 ? [...names.slice(0, 4), `${names.length - 4} weitere`] : names)}`,
  gain: (cleared: number, firmer: number, added: number, claims: number) =>
    [
      ...(cleared === 0 ? [] : [`${lines(cleared)} nicht mehr „keine Angabe“`]),
      ...(firmer === 0 ? [] : [`${lines(firmer)} nicht mehr geschätzt`]),
      ...(added === 0 ? [] : [`${lines(added)} neu`]),
      ...(claims === 0 ? [] : [`${claims} ${claims === 1 ? "Aussage" : "Aussagen"} in Antworten`]),
    ].join(", "),
  triedOn: (tried: number, all: number) =>
    `gezählt an ${tried} von ${all} Farben, für die übrigen ebenso angenommen`,
  mask: "mit P3-Maske und laufender Absaugung",
  maskFor: (names: string) => `mit P3-Maske und laufender Absaugung bei ${names}`,
  hours: (hours: number) =>
    hours < 1 ? `${Math.round(60 * hours)} min` : `${NUMBERS.plain(hours)} h`,
  file: ENGLISH.file,
  dueLines: {
    "old-paper": (name: string, date: string) =>
      `${name}: die Gefahrenangaben sind vom ${date}, älter als drei Jahre; beim Lieferanten das heutige Sicherheitsdatenblatt anfordern`,
    trial: (name: string, date: string) => `${name}: am ${date} nachzusehen`,
    "exposure-result": (name: string, date: string, deltaEab: string, category: string) =>
      `${name}: beendet am ${date} bei \u0394E*ab ${deltaEab} (Kategorie\u00a0${category}); in den Aufzeichnungen der Farbe fehlt das noch und gehört unter exposures`,
    "drying-result": (name: string, date: string, from: number, to: number) =>
      `${name}: beendet am ${date}, grifftrocken zwischen Tag ${from} und Tag ${to}; in den Aufzeichnungen der Farbe fehlt das noch und gehört unter dryingTrials`,
    "second-lot": (lots: 0 | 1, colours: string) =>
      lots === 0
        ? `Von diesen ist noch keine Charge aufgezeichnet, daher sagt nichts, wie ihre Chargen sich unterscheiden: ${colours}`
        : `Von diesen ist eine Charge aufgezeichnet; eine zweite würde sagen, wie ihre Chargen sich unterscheiden: ${colours}`,
    "lot-planned": (number: string) =>
      `Charge ${number} ist geplant und noch nicht hergestellt: ihr Ansatzblatt liegt bereit`,
    "lot-unread": (number: string) =>
      `Charge ${number} ist noch mit nichts verglichen: aufstreichen und messen`,
    "lot-unjudged": (number: string) =>
      `Charge ${number} wurde gemessen, aber nicht wie ihr Standard: ihre Seite sagt, was noch einmal aufzuhellen oder zu messen ist`,
    "lot-recalled": (number: string) =>
      `Charge ${number} ist zurückgerufen: was davon hinausging, zurückrufen`,
    "lot-conceded": (number: string) =>
      `Charge ${number} wird mit Sonderfreigabe verkauft: die nächste soll bestehen`,
    "lot-failed": (number: string) =>
      `Charge ${number} besteht gegen ihren Standard nicht: ihre Seite sagt, warum und was zu tun ist`,
    reprint: (changes: readonly string[]) => `Regalkarte neu zu drucken: ${changes.join("; ")}`,
    "undated-paper": (name: string) =>
      `${name}: die Gefahrenangaben tragen kein Datum; notieren, von wann das Papier des Lieferanten ist`,
  },
};

function lines(count: number): string {
  return `${count} ${count === 1 ? "Zeile" : "Zeilen"}`;
}
