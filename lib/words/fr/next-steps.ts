import { listed, NUMBERS } from "./phrases.ts";
import { NEXT_STEPS as ENGLISH_STEPS } from "../en/next-steps.ts";
import type { AnyWords } from "../any-words.ts";

/** What the page What to do next, and its command, say. */
export const NEXT_STEPS: AnyWords<typeof ENGLISH_STEPS> = {
  heading: "Que faire ensuite",
  lead: "Chaque ligne a été essayée\u202f: une valeur plausible est entrée dans les relevés, les fiches ont été recalculées, et l’on a compté ce qu’elles y gagnaient. Le meilleur gain pour une heure de travail vient d’abord\u202f; les heures sont de main-d’œuvre, non d’attente, et c’est notre propre estimation.",
  steps: "Ce qui éclaircit le plus",
  stepsCaption: "Ce qu’il faut trouver, ce que les fiches y gagnent, et le travail que cela prend",
  columns: {
    what: "Quoi",
    gain: "Gain pour chacune",
    hours: "Travail",
    record: "À écrire",
  },
  none: "Rien de ce qu’un atelier peut trouver n’éclaircirait ni n’affermirait une ligne.",
  due: "Ce qui vient à échéance",
  dueCaption: "Ce que le temps a rendu nécessaire",
  dueColumns: { what: "Quoi", where: "Relevé" },
  nothingDue: "Rien ne vient à échéance.",
  open: "Ce qui reste ouvert",
  openCaption: "Ce qui manque encore aux étiquettes et aux lots, sans échéance",
  things: {
    densityGPerCm3: "Masse volumique",
    oilAbsorptionGPer100g: "Prise d’huile au couteau",
    bulkDensities: "Une mesure de poudre pesée, non tassée et tassée",
    lightfastness: "La solidité à la lumière que déclare le fournisseur",
    hazards: "La fiche de données de sécurité du fournisseur",
    parts: "Les parts de ses pigments, au cahier de fabrication",
    oilIndexGPer100g: "L’huile pesée à la prochaine fabrication",
    masstone: "Une application du ton plein, mesurée",
    tints: "Trois dégradés dans un blanc, mesurés",
    films: "Des films d’épaisseur connue sur noir et blanc, mesurés",
    dryingTrials: "Un essai de séchage",
    exposures: "Une exposition sous verre, ton plein et dégradé",
    gloss60: "La brillance d’une application à 60\u00b0",
    finenessOfGrindUm: "La finesse à la jauge",
    bodyAndSeparation: "Le corps et la séparation d’huile, regardés",
  },
  of: (thing, names) =>
    `${thing}\u202f: ${listed(names.length > 4 ? [...names.slice(0, 4), `${names.length - 4} de plus`] : names)}`,
  triedOn: (tried, all) =>
    `compté sur ${tried} des ${all} couleurs, les autres supposées pareilles`,
  gain: (cleared, firmer, added, claims) =>
    [
      ...(cleared === 0
        ? []
        : [
            `${lines(cleared)} qui ${cleared === 1 ? "n’est" : "ne sont"} plus «\u202fnon indiqué\u202f»`,
          ]),
      ...(firmer === 0
        ? []
        : [`${lines(firmer)} qui ${firmer === 1 ? "n’est" : "ne sont"} plus une estimation`]),
      ...(added === 0 ? [] : [`${lines(added)} en plus`]),
      ...(claims === 0
        ? []
        : [`${claims} ${claims === 1 ? "affirmation" : "affirmations"} de réponses`]),
    ].join(", "),
  mask: "avec un masque P3 et l’aspiration en marche",
  maskFor: (names) => `avec un masque P3 et l’aspiration en marche pour ${names}`,
  hours: (hours) =>
    hours < 1 ? `${Math.round(60 * hours)}\u00a0min` : `${NUMBERS.plain(hours)}\u00a0h`,
  file: ENGLISH_STEPS.file,
  reprintsUnknown:
    "Quelles cartes de rayon sont à réimprimer se sait dès que cards les a imprimées\u202f: ce qu’elles portaient alors reste auprès des relevés, dans printed-cards.json.",
  dueLines: {
    reprint: (changes) => `Carte de rayon à réimprimer\u202f: ${changes.join("\u202f; ")}`,
    "old-paper": (name, date) =>
      `${name}\u202f: ses dangers datent du ${date}, il y a plus de trois ans\u202f; demander au fournisseur la fiche de données de sécurité d’aujourd’hui`,
    trial: (name, date) => `${name}\u202f: à regarder le ${date}`,
    "exposure-result": (name, date, deltaEab, category) =>
      `${name}\u202f: terminé le ${date} à \u0394E*ab ${deltaEab} (catégorie\u00a0${category})\u202f; le relevé de la couleur ne l’a pas encore\u202f: à écrire sous exposures`,
    "drying-result": (name, date, from, to) =>
      `${name}\u202f: terminé le ${date}, sec au toucher entre le jour ${from} et le jour ${to}\u202f; le relevé de la couleur ne l’a pas encore\u202f: à écrire sous dryingTrials`,
    "second-lot": (lots, colours) =>
      lots === 0
        ? `Aucun lot n’est encore consigné de celles-ci, et rien ne dit comment leurs lots diffèrent\u202f: ${colours}`
        : `Un seul lot est consigné de celles-ci\u202f; un second dirait comment leurs lots diffèrent\u202f: ${colours}`,
    "lot-planned": (number) =>
      `Le lot ${number} est prévu et pas encore fait\u202f: sa fiche de fabrication est prête`,
    "lot-unread": (number) =>
      `Le lot ${number} n’est encore comparé à rien\u202f: l’étirer et le mesurer`,
    "lot-unjudged": (number) =>
      `Le lot ${number} a été mesuré, mais pas comme son étalon\u202f: sa page dit quel dégradé refaire ou quoi mesurer encore`,
    "lot-recalled": (number) => `Le lot ${number} est rappelé\u202f: rappeler ce qui en est sorti`,
    "lot-conceded": (number) =>
      `Le lot ${number} est vendu par dérogation\u202f: que le prochain soit conforme`,
    "lot-failed": (number) =>
      `Le lot ${number} est refusé face à son étalon\u202f: sa page dit pourquoi, et que faire`,
    "undated-paper": (name) =>
      `${name}\u202f: ses dangers ne portent pas de date\u202f; noter de quel jour est le document du fournisseur`,
  },
};

function lines(count: number): string {
  return `${count} ${count === 1 ? "ligne" : "lignes"}`;
}
