import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";
import { listed } from "./phrases.ts";

/** What the workshop's own pages say, which nobody outside reads. */
export const WORKSHOP_PAGES: AnyWords<PageWords["workshop"]> = {
  heading: "Die Werkstatt",
  lead: "Nur für die Werkstatt: Kosten, Lieferanten, Ansätze, Antworten und Etiketten im Entwurf. Nichts davon steht auf der öffentlichen Website.",
  name: (workshop: string) => `${workshop}, die Werkstatt`,
  notice: "Nicht veröffentlicht",
  nav: {
    colours: "Farben",
    lots: "Chargen",
    labels: "Etiketten",
    trials: "Versuche",
    answers: "Antworten",
  },
  home: {
    colours: "Farben",
    coloursCaption: "Was ein Ansatz kostet, und wie viel eines Blatts noch offen ist",
    /** Beside a cost, what it leaves out. */
    costWithout: (names: readonly string[]) => `ohne ${listed(names)}: kein Preis`,
    columns: {
      colour: "Farbe",
      cost: (pigmentG: number, currency: string) =>
        `Ansatz mit ${pigmentG}\u00a0g Pigment, ${currency}`,
      wanting: "Keine Angabe",
      suppliers: "Lieferanten",
    },
    answers: "Antworten",
    answersNone: "Noch keine Frage beantwortet.",
    faults: "Was nicht zusammenpasst",
    faultsLead: "Gefunden, als die Blätter errechnet wurden.",
    noFaults: "Nichts widerspricht sich.",
    faultsCaption: "Was gefunden wurde, und wo",
    faultColumns: { what: "Was", where: "Wo" },
  },
  colour: {
    heading: (name: string) => `${name} in der Werkstatt`,
    description: (name: string) =>
      `${name}: Ansatz, Kosten, Lieferanten, was fehlt, Etikett, Antwort.`,
    back: "Die Werkstatt",
    sections: {
      batch: "Ein Ansatz",
      costs: "Kosten und Lieferanten",
      gaps: "Keine Angabe",
      label: "Etikettentext",
      reply: "Eine Antwort zum Verschicken",
      lots: "Chargen",
      answers: "Was Kunden fragen",
    },
    batchSheet: "Ansatzblatt zum Drucken",
    costsCaption: "Bei wem wir kaufen, und zu welchem Preis",
    costColumns: {
      what: "Was",
      supplier: "Lieferant",
      price: (currency: string) => `${currency}/kg`,
      date: "Aufzeichnung vom",
    },
    gapsLead: (count: number) =>
      count === 1
        ? "Zu einem Wert des Blatts gibt es keine Angabe."
        : `Zu ${count} Werten des Blatts gibt es keine Angabe.`,
    noGaps: "Jeder Wert des Blatts ist angegeben.",
    gapsCaption: "Was fehlt, warum, und woraus es sich ergäbe",
    gapColumns: { figure: "Wert", reason: "Warum", wanting: "Woraus es sich ergäbe" },
  },
  answer: {
    description: (question: string) =>
      `Eine Antwort zum Verschicken, und worauf sie sich stützt: ${question}`,
    claims: "Worauf sich die Antwort stützt",
    privateClaims: "Gilt, bleibt aber aus der veröffentlichten Antwort heraus",
    back: "Die Werkstatt",
  },
};
