import { de, en, es, fr } from "../phrases-in-each.ts";
import { alike, type Texts } from "../texts.ts";
import { LABEL_TEXT, REPLY_TO_SEND } from "../shared-rows.ts";

/** What the workshop's own pages say, which nobody outside reads. */
export const WORKSHOP = {
  heading: { en: "The workshop", de: "Die Werkstatt", fr: "L’atelier", es: "El taller" },
  lead: {
    en: "For the workshop alone: costs, suppliers, batches, replies and labels in draft. None of it stands on the public site.",
    de: "Nur für die Werkstatt: Kosten, Lieferanten, Ansätze, Antworten und Etiketten im Entwurf. Nichts davon steht auf der öffentlichen Website.",
    fr: "Pour l’atelier seul\u202f: coûts, fournisseurs, fabrications, réponses et projets d’étiquettes. Rien de cela n’est sur le site public.",
    es: "Solo para el taller: costes, proveedores, fabricaciones, respuestas y borradores de etiquetas. Nada de esto está en el sitio público.",
  },
  name: (workshop: string) => ({
    en: `${workshop}, the workshop`,
    de: `${workshop}, die Werkstatt`,
    fr: `${workshop}, l’atelier`,
    es: `${workshop}, el taller`,
  }),
  notice: { en: "Not published", de: "Nicht veröffentlicht", fr: "Non publié", es: "No publicado" },
  nav: {
    colours: { en: "Colours", de: "Farben", fr: "Couleurs", es: "Colores" },
    lots: { en: "Lots", de: "Chargen", fr: "Lots", es: "Lotes" },
    labels: { en: "Labels", de: "Etiketten", fr: "Étiquettes", es: "Etiquetas" },
    trials: { en: "Trials", de: "Versuche", fr: "Essais", es: "Ensayos" },
    answers: { en: "Replies", de: "Antworten", fr: "Réponses", es: "Respuestas" },
  },
  home: {
    colours: { en: "Colours", de: "Farben", fr: "Couleurs", es: "Colores" },
    coloursCaption: {
      en: "What a batch costs, and how much of a sheet is still open",
      de: "Was ein Ansatz kostet und wie viel von einem Blatt noch offen ist",
      fr: "Ce que coûte une fabrication, et ce qui reste à compléter d’une fiche",
      es: "Lo que cuesta una fabricación, y cuánto de cada ficha queda por completar",
    },

    /** Beside a cost, what it leaves out. */
    costWithout: (names: readonly string[]) => ({
      en: `without ${en.listed(names)}, unpriced`,
      de: `ohne ${de.listed(names)}: kein Preis`,
      fr: `sans ${fr.listed(names)}, sans prix`,
      es: `sin ${es.listed(names)}, sin precio`,
    }),
    recordLine: (record: string, line: number) => ({
      en: `${record}, line ${line}`,
      de: `${record}, Zeile ${line}`,
      fr: `${record}, ligne ${line}`,
      es: `${record}, línea ${line}`,
    }),
    columns: {
      colour: { en: "Colour", de: "Farbe", fr: "Couleur", es: "Color" },
      cost: (pigmentG: number, currency: string) => ({
        en: `Batch of ${pigmentG}\u00a0g of pigment, ${currency}`,
        de: `Ansatz mit ${pigmentG}\u00a0g Pigment, ${currency}`,
        fr: `Fabrication avec ${pigmentG}\u00a0g de pigment, ${currency}`,
        es: `Fabricación con ${pigmentG}\u00a0g de pigmento, ${currency}`,
      }),
      wanting: { en: "Not stated", de: "Keine Angabe", fr: "Non indiqué", es: "No indicado" },
      suppliers: { en: "Suppliers", de: "Lieferanten", fr: "Fournisseurs", es: "Proveedores" },
    },
    answers: { en: "Replies", de: "Antworten", fr: "Réponses", es: "Respuestas" },
    answersNone: {
      en: "No question is answered yet.",
      de: "Noch ist keine Frage beantwortet.",
      fr: "Aucune question n’a encore de réponse.",
      es: "Aún no se ha respondido ninguna pregunta.",
    },
    faults: {
      en: "What does not agree",
      de: "Was nicht zusammenpasst",
      fr: "Ce qui ne s’accorde pas",
      es: "Lo que no concuerda",
    },
    faultsLead: {
      en: "Found when the sheets were worked out.",
      de: "Beim Errechnen der Blätter gefunden.",
      fr: "Trouvé au calcul des fiches.",
      es: "Hallado al calcular las fichas.",
    },
    noFaults: {
      en: "Nothing contradicts itself.",
      de: "Nichts widerspricht sich.",
      fr: "Rien ne se contredit.",
      es: "Nada se contradice.",
    },
    faultsCaption: {
      en: "What was found, and where",
      de: "Was gefunden wurde und wo",
      fr: "Ce qui a été trouvé, et où",
      es: "Qué se halló, y dónde",
    },
    faultColumns: {
      what: { en: "What", de: "Was", fr: "Quoi", es: "Qué" },
      where: { en: "Where", de: "Wo", fr: "Où", es: "Dónde" },
    },
  },
  colour: {
    heading: (name: string) => ({
      en: `${name} in the workshop`,
      de: `${name} in der Werkstatt`,
      fr: `${name} à l’atelier`,
      es: `${name} en el taller`,
    }),
    description: (name: string) => ({
      en: `${name}: batch, costs, suppliers, what is missing, label, reply.`,
      de: `${name}: Ansatz, Kosten, Lieferanten, was fehlt, Etikett, Antwort.`,
      fr: `${name}\u202f: fabrication, coûts, fournisseurs, ce qui manque, étiquette, réponse.`,
      es: `${name}: fabricación, costes, proveedores, lo que falta, etiqueta, respuesta.`,
    }),
    back: { en: "The workshop", de: "Die Werkstatt", fr: "L’atelier", es: "El taller" },
    sections: {
      batch: { en: "A batch", de: "Ein Ansatz", fr: "Une fabrication", es: "Una fabricación" },
      costs: {
        en: "Costs and suppliers",
        de: "Kosten und Lieferanten",
        fr: "Coûts et fournisseurs",
        es: "Costes y proveedores",
      },
      gaps: { en: "Not stated", de: "Keine Angabe", fr: "Non indiqué", es: "No indicado" },
      answers: {
        en: "What customers ask",
        de: "Was Kunden fragen",
        fr: "Ce que demandent les clients",
        es: "Lo que preguntan los clientes",
      },
      label: LABEL_TEXT,
      reply: REPLY_TO_SEND,
      lots: { en: "Lots", de: "Chargen", fr: "Lots", es: "Lotes" },
    },
    batchSheet: {
      en: "Batch sheet to print",
      de: "Ansatzblatt zum Drucken",
      fr: "Fiche de fabrication à imprimer",
      es: "Hoja de fabricación para imprimir",
    },
    costsCaption: {
      en: "From whom we buy it, and for how much",
      de: "Bei wem wir kaufen und zu welchem Preis",
      fr: "À qui nous l’achetons, et à quel prix",
      es: "A quién lo compramos, y por cuánto",
    },
    costColumns: {
      what: { en: "What", de: "Was", fr: "Quoi", es: "Qué" },
      supplier: { en: "Supplier", de: "Lieferant", fr: "Fournisseur", es: "Proveedor" },
      price: (currency: string) => alike(`${currency}/kg`),
      date: { en: "Record of", de: "Aufzeichnung vom", fr: "Relevé du", es: "Registro del" },
    },
    gapsLead: (count: number) => ({
      en:
        count === 1
          ? "One figure of the sheet is not stated."
          : `${count} figures of the sheet are not stated.`,
      de:
        count === 1
          ? "Zu einem Wert des Blatts gibt es keine Angabe."
          : `Zu ${count} Werten des Blatts gibt es keine Angabe.`,
      fr:
        count === 1
          ? "Un chiffre de la fiche n’est pas indiqué."
          : `${count} chiffres de la fiche ne sont pas indiqués.`,
      es:
        count === 1
          ? "Una cifra de la ficha no está indicada."
          : `${count} cifras de la ficha no están indicadas.`,
    }),
    noGaps: {
      en: "Every figure of the sheet is stated.",
      de: "Jeder Wert des Blatts ist angegeben.",
      fr: "Chaque chiffre de la fiche est indiqué.",
      es: "Todas las cifras de la ficha están indicadas.",
    },
    gapsCaption: {
      en: "What is missing, why, and what would give it",
      de: "Was fehlt, warum und woraus es sich ergäbe",
      fr: "Ce qui manque, pourquoi, et ce qui le donnerait",
      es: "Qué falta, por qué, y qué lo daría",
    },
    gapColumns: {
      figure: { en: "Figure", de: "Wert", fr: "Chiffre", es: "Cifra" },
      reason: { en: "Why", de: "Warum", fr: "Pourquoi", es: "Por qué" },
      wanting: {
        en: "What would give it",
        de: "Woraus es sich ergäbe",
        fr: "Ce qui le donnerait",
        es: "Qué lo daría",
      },
    },
  },
  answer: {
    description: (question: string) => ({
      en: `A reply to send, and what the answer rests on: ${question}`,
      de: `Eine Antwort zum Verschicken und worauf sie sich stützt: ${question}`,
      fr: `Une réponse à envoyer, et ce sur quoi elle repose\u202f: ${question}`,
      es: `Una respuesta para enviar, y en qué se apoya la respuesta: ${question}`,
    }),
    claims: {
      en: "What the answer rests on",
      de: "Worauf sich die Antwort stützt",
      fr: "Ce sur quoi repose la réponse",
      es: "En qué se apoya la respuesta",
    },
    privateClaims: {
      en: "Held, and kept out of the published answer",
      de: "Geprüft, bleibt aber aus der veröffentlichten Antwort heraus",
      fr: "Vérifié, et tenu hors de la réponse publiée",
      es: "Comprobado, pero fuera de la respuesta publicada",
    },
    back: { en: "The workshop", de: "Die Werkstatt", fr: "L’atelier", es: "El taller" },
  },
} satisfies Texts;
