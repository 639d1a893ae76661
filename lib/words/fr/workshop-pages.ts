import type { WORKSHOP_PAGES as ENGLISH_PAGES } from "../en/workshop-pages.ts";
import type { AnyWords } from "../any-words.ts";
import { listed } from "./phrases.ts";

/** What the workshop's own pages say, which nobody outside reads. */
export const WORKSHOP_PAGES: AnyWords<typeof ENGLISH_PAGES> = {
  heading: "L’atelier",
  lead: "Pour l’atelier seul\u202f: coûts, fournisseurs, fabrications, réponses et projets d’étiquettes. Rien de cela n’est sur le site public.",
  name: (workshop) => `${workshop}, l’atelier`,
  notice: "Non publié",
  nav: {
    colours: "Couleurs",
    lots: "Lots",
    labels: "Étiquettes",
    trials: "Essais",
    answers: "Réponses",
  },
  home: {
    colours: "Couleurs",
    coloursCaption: "Ce que coûte une fabrication, et ce qui reste à compléter d’une fiche",
    /** Beside a cost, what it leaves out. */
    costWithout: (names) => `sans ${listed(names)}, sans prix`,
    columns: {
      colour: "Couleur",
      cost: (pigmentG, currency) => `Fabrication avec ${pigmentG}\u00a0g de pigment, ${currency}`,
      wanting: "Non indiqué",
      suppliers: "Fournisseurs",
    },
    answers: "Réponses",
    answersNone: "Aucune question n’a encore de réponse.",
    faults: "Ce qui ne s’accorde pas",
    faultsLead: "Trouvé au calcul des fiches.",
    noFaults: "Rien ne se contredit.",
    faultsCaption: "Ce qui a été trouvé, et où",
    faultColumns: { what: "Quoi", where: "Où" },
  },
  colour: {
    heading: (name) => `${name} à l’atelier`,
    description: (name) =>
      `${name}\u202f: fabrication, coûts, fournisseurs, ce qui manque, étiquette, réponse.`,
    back: "L’atelier",
    sections: {
      batch: "Une fabrication",
      costs: "Coûts et fournisseurs",
      gaps: "Non indiqué",
      answers: "Ce que demandent les clients",
      label: "Texte d’étiquette",
      reply: "Une réponse à envoyer",
      lots: "Lots",
    },
    batchSheet: "Fiche de fabrication à imprimer",
    costsCaption: "À qui nous l’achetons, et à quel prix",
    costColumns: {
      what: "Quoi",
      supplier: "Fournisseur",
      price: (currency) => `${currency}/kg`,
      date: "Relevé du",
    },
    gapsLead: (count) =>
      count === 1
        ? "Un chiffre de la fiche n’est pas indiqué."
        : `${count} chiffres de la fiche ne sont pas indiqués.`,
    noGaps: "Chaque chiffre de la fiche est indiqué.",
    gapsCaption: "Ce qui manque, pourquoi, et ce qui le donnerait",
    gapColumns: { figure: "Chiffre", reason: "Pourquoi", wanting: "Ce qui le donnerait" },
  },
  answer: {
    description: (question) =>
      `Une réponse à envoyer, et ce sur quoi elle repose\u202f: ${question}`,
    claims: "Ce sur quoi repose la réponse",
    privateClaims: "Vérifié, et gardé hors de la réponse publiée",
    back: "L’atelier",
  },
};
