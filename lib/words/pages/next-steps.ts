import { de, en, es, fr } from "../phrases-in-each.ts";
import { alike, type Texts } from "../texts.ts";
import type { InEach } from "../in-each.ts";
import { given } from "../../quantities/given.ts";

function lines(count: number): InEach {
  return {
    en: `${count} ${count === 1 ? "line" : "lines"}`,
    de: `${count} ${count === 1 ? "Zeile" : "Zeilen"}`,
    fr: `${count} ${count === 1 ? "ligne" : "lignes"}`,
    es: `${count} ${count === 1 ? "línea" : "líneas"}`,
  };
}

const RECORD = { pigment: "pigments", vehicle: "vehicles", colour: "colours" } as const;

const ENDING = { pigment: "yaml", vehicle: "yaml", colour: "md" } as const;

/** What the page What to do next, and its command, say. */
export const NEXT_STEPS = {
  heading: {
    en: "What to do next",
    de: "Was als Nächstes zu tun ist",
    fr: "Que faire ensuite",
    es: "Qué hacer después",
  },
  lead: {
    en: "Each line was tried: a plausible value went into the records, the sheets were worked out again, and what they gained was counted. The best gain for an hour of work comes first; hours are of hands, not of waiting, and our own guess.",
    de: "Jede Zeile wurde durchgerechnet: Ein plausibler Wert kam in die Aufzeichnungen, die Blätter wurden neu errechnet, und gezählt wurde, was sie dadurch gewannen. Der beste Gewinn je Arbeitsstunde steht zuerst; gezählt sind Arbeitsstunden ohne Wartezeit, nach unserer eigenen Schätzung.",
    fr: "Chaque ligne a été essayée\u202f: une valeur plausible est entrée dans les relevés, les fiches ont été recalculées, et l’on a compté ce qu’elles y gagnaient. Le meilleur gain pour une heure de travail vient d’abord\u202f; les heures sont de travail, non d’attente, et c’est nous qui les estimons.",
    es: "Cada línea se ha probado: un valor plausible entró en los registros, las fichas se calcularon de nuevo, y se contó lo que ganaban. Primero viene la mayor ganancia por hora de trabajo; las horas son de trabajo, no de espera, y las estimamos nosotros.",
  },
  steps: {
    en: "What clears most",
    de: "Was am meisten klärt",
    fr: "Ce qui apporte le plus",
    es: "Lo que más aporta",
  },
  stepsCaption: {
    en: "What to find out, what the sheets gain, and the work it takes",
    de: "Was herauszufinden ist, was die Blätter gewinnen und welche Arbeit es macht",
    fr: "Ce qu’il faut trouver, ce que les fiches y gagnent, et le travail que cela prend",
    es: "Qué averiguar, qué ganan las fichas, y el trabajo que cuesta",
  },
  columns: {
    what: { en: "What", de: "Was", fr: "Quoi", es: "Qué" },
    gain: { en: "Each gains", de: "Gewinn je Fall", fr: "Gain pour chacune", es: "Gana cada una" },
    hours: { en: "Work", de: "Arbeit", fr: "Travail", es: "Trabajo" },
    record: { en: "To write", de: "Einzutragen", fr: "À écrire", es: "Dónde escribirlo" },
  },
  none: {
    en: "Nothing that a workshop could find out would clear or firm up a line.",
    de: "Nichts, was eine Werkstatt herausfinden könnte, würde eine Zeile klären oder festigen.",
    fr: "Rien de ce qu’un atelier peut trouver ne compléterait ni n’affermirait une ligne.",
    es: "Nada de lo que un taller puede averiguar completaría ni afianzaría una línea.",
  },
  due: {
    en: "What falls due",
    de: "Was fällig ist",
    fr: "Ce qui vient à échéance",
    es: "Lo que vence",
  },
  dueCaption: {
    en: "What time has made due",
    de: "Was mit der Zeit fällig wurde",
    fr: "Ce que le temps a rendu nécessaire",
    es: "Lo que el tiempo ha hecho necesario",
  },
  dueColumns: {
    what: { en: "What", de: "Was", fr: "Quoi", es: "Qué" },
    where: { en: "Record", de: "Aufzeichnung", fr: "Relevé", es: "Registro" },
  },
  nothingDue: {
    en: "Nothing falls due.",
    de: "Nichts ist fällig.",
    fr: "Rien ne vient à échéance.",
    es: "Nada vence.",
  },
  open: {
    en: "Left open",
    de: "Was offen ist",
    fr: "Ce qui reste ouvert",
    es: "Lo que queda abierto",
  },
  openCaption: {
    en: "What labels and lots still want, on no day",
    de: "Was Etiketten und Chargen noch fehlt, ohne Termin",
    fr: "Ce qui manque encore aux étiquettes et aux lots, sans échéance",
    es: "Lo que aún falta a etiquetas y lotes, sin plazo",
  },
  things: {
    densityGPerCm3: { en: "Density", de: "Dichte", fr: "Masse volumique", es: "Densidad" },
    oilAbsorptionGPer100g: {
      en: "Oil absorption by rub-out",
      de: "Ölzahl durch Anreiben",
      fr: "Prise d’huile au couteau",
      es: "Absorción de aceite por amasado",
    },
    bulkDensities: {
      en: "A measure of the powder weighed, poured and tapped",
      de: "Ein Messgefäß voll Pulver, gewogen, geschüttet und gestampft",
      fr: "Une mesure de poudre pesée, non tassée et tassée",
      es: "Una medida de polvo pesada, sin compactar y compactada",
    },
    lightfastness: {
      en: "Lightfastness as the supplier states it",
      de: "Lichtechtheit nach Angabe des Lieferanten",
      fr: "La solidité à la lumière que déclare le fournisseur",
      es: "La solidez a la luz que declara el proveedor",
    },
    hazards: {
      en: "The supplier's safety data sheet",
      de: "Das Sicherheitsdatenblatt des Lieferanten",
      fr: "La fiche de données de sécurité du fournisseur",
      es: "La ficha de datos de seguridad del proveedor",
    },
    parts: {
      en: "Parts of its pigments, from the batch book",
      de: "Teile der Pigmente, aus dem Ansatzbuch",
      fr: "Les parts de ses pigments, au cahier de fabrication",
      es: "Las partes de sus pigmentos, del libro de fabricación",
    },
    oilIndexGPer100g: {
      en: "Oil weighed into the next batch",
      de: "Das Öl, das in den nächsten Ansatz eingewogen wird",
      fr: "L’huile pesée à la prochaine fabrication",
      es: "El aceite pesado en la próxima fabricación",
    },
    masstone: {
      en: "A drawdown of the masstone, read",
      de: "Ein Aufstrich des Volltons, gemessen",
      fr: "Une application du ton plein, mesurée",
      es: "Una aplicación del tono pleno, medida",
    },
    tints: {
      en: "Three let-downs in a white, read",
      de: "Drei Aufhellungen in einem Weiß, gemessen",
      fr: "Trois dégradés dans un blanc, mesurés",
      es: "Tres rebajes en un blanco, medidos",
    },
    films: {
      en: "Films of known thickness over black and white, read",
      de: "Filme bekannter Dicke über Schwarz und Weiß, gemessen",
      fr: "Des films d’épaisseur connue sur noir et blanc, mesurés",
      es: "Películas de espesor conocido sobre negro y blanco, medidas",
    },
    dryingTrials: {
      en: "A drying trial",
      de: "Ein Trockenversuch",
      fr: "Un essai de séchage",
      es: "Un ensayo de secado",
    },
    exposures: {
      en: "An exposure under glass, masstone and tint",
      de: "Eine Belichtung hinter Glas, Vollton und Aufhellung",
      fr: "Une exposition sous verre, ton plein et dégradé",
      es: "Una exposición bajo vidrio, tono pleno y rebaje",
    },
    gloss60: {
      en: "Gloss of a drawdown at 60\u00b0",
      de: "Glanz eines Aufstrichs bei 60\u00b0",
      fr: "La brillance d’une application à 60\u00b0",
      es: "El brillo de una aplicación a 60\u00b0",
    },
    finenessOfGrindUm: {
      en: "Fineness on the gauge",
      de: "Mahlfeinheit auf dem Grindometer",
      fr: "La finesse à la jauge",
      es: "La finura con la galga",
    },
    bodyAndSeparation: {
      en: "Body and oil separation, looked at",
      de: "Konsistenz und Ölabscheidung, betrachtet",
      fr: "La consistance et la séparation d’huile, observées",
      es: "La consistencia y la separación de aceite, observadas",
    },
  },
  of: (thing: string, names: readonly string[]) => ({
    en: `${thing}: ${en.listed(names.length > 4 ? [...names.slice(0, 4), `${names.length - 4} more`] : names)}`,
    de: `${thing}: ${de.listed(names.length > 4 ? [...names.slice(0, 4), `${names.length - 4} weitere`] : names)}`,
    fr: `${thing}\u202f: ${fr.listed(names.length > 4 ? [...names.slice(0, 4), `${names.length - 4} de plus`] : names)}`,
    es: `${thing}: ${es.listed(names.length > 4 ? [...names.slice(0, 4), `${names.length - 4} más`] : names)}`,
  }),
  gain: (cleared: number, firmer: number, added: number, claims: number) => ({
    en: given([
      cleared !== 0 &&
        `${lines(cleared).en} stated that ${cleared === 1 ? "is" : "are"} missing now`,
      firmer !== 0 &&
        `${lines(firmer).en} firm that ${firmer === 1 ? "is an estimate" : "are estimates"} now`,
      added !== 0 && `${lines(added).en} that ${added === 1 ? "is" : "are"} new`,
      claims !== 0 && `${claims} ${claims === 1 ? "claim" : "claims"} of answers`,
    ]).join(", "),
    de: given([
      cleared !== 0 && `${lines(cleared).de} nicht mehr „keine Angabe“`,
      firmer !== 0 && `${lines(firmer).de} nicht mehr geschätzt`,
      added !== 0 && `${lines(added).de} neu`,
      claims !== 0 && `${claims} ${claims === 1 ? "Aussage" : "Aussagen"} in Antworten`,
    ]).join(", "),
    fr: given([
      cleared !== 0 &&
        `${lines(cleared).fr} qui ${cleared === 1 ? "n’est" : "ne sont"} plus «\u202fnon indiqué\u202f»`,
      firmer !== 0 &&
        `${lines(firmer).fr} qui ${firmer === 1 ? "n’est" : "ne sont"} plus une estimation`,
      added !== 0 && `${lines(added).fr} en plus`,
      claims !== 0 && `${claims} ${claims === 1 ? "affirmation" : "affirmations"} de réponses`,
    ]).join(", "),
    es: given([
      cleared !== 0 &&
        `${lines(cleared).es} que ya no ${cleared === 1 ? "es" : "son"} «no indicado»`,
      firmer !== 0 && `${lines(firmer).es} que ya no ${firmer === 1 ? "es" : "son"} una estimación`,
      added !== 0 && `${lines(added).es} más`,
      claims !== 0 && `${claims} ${claims === 1 ? "afirmación" : "afirmaciones"} de respuestas`,
    ]).join(", "),
  }),
  triedOn: (tried: number, all: number) => ({
    en: `found on ${tried} of the ${all} colours and taken to be alike on the others`,
    de: `gezählt an ${tried} von ${all} Farben, für die übrigen ebenso angenommen`,
    fr: `compté sur ${tried} des ${all} couleurs, les autres supposées pareilles`,
    es: `contado en ${tried} de los ${all} colores, y supuesto igual en los demás`,
  }),
  mask: {
    en: "with a P3 mask and the extractor on",
    de: "mit P3-Maske und laufender Absaugung",
    fr: "avec un masque P3 et l’aspiration en marche",
    es: "con mascarilla P3 y la extracción en marcha",
  },
  maskFor: (names: string) => ({
    en: `with a P3 mask and the extractor on for ${names}`,
    de: `mit P3-Maske und laufender Absaugung bei ${names}`,
    fr: `avec un masque P3 et l’aspiration en marche pour ${names}`,
    es: `con mascarilla P3 y la extracción en marcha para ${names}`,
  }),
  hours: (hours: number) => ({
    en: hours < 1 ? `${Math.round(60 * hours)} min` : `${hours} h`,
    de: hours < 1 ? `${Math.round(60 * hours)}\u00a0min` : `${de.NUMBERS.plain(hours)}\u00a0h`,
    fr: hours < 1 ? `${Math.round(60 * hours)}\u00a0min` : `${fr.NUMBERS.plain(hours)}\u00a0h`,
    es: hours < 1 ? `${Math.round(60 * hours)}\u00a0min` : `${es.NUMBERS.plain(hours)}\u00a0h`,
  }),
  file: (kind: keyof typeof RECORD, slug: string) =>
    alike(`${RECORD[kind]}/${slug}.${ENDING[kind]}`),

  /** Where no manifest of the last printing was named, nobody knows which cards are out of date. */
  reprintsUnknown: {
    en: "Which shelf cards are to be printed again is known once cards has printed them: what they said then is kept beside the records, in printed-cards.json.",
    de: "Welche Regalkarten neu zu drucken sind, ist bekannt, sobald cards sie gedruckt hat: Was dann darauf stand, bleibt bei den Aufzeichnungen, in printed-cards.json.",
    fr: "Quelles cartes de rayon sont à réimprimer se sait dès que cards les a imprimées\u202f: ce qu’elles portaient alors reste auprès des relevés, dans printed-cards.json.",
    es: "Qué tarjetas de estante hay que volver a imprimir se sabe en cuanto cards las ha impreso: lo que decían entonces queda junto a los registros, en printed-cards.json.",
  },
  dueLines: {
    reprint: (changes: readonly string[]) => ({
      en: `Shelf card to print again: ${changes.join("; ")}`,
      de: `Regalkarte neu zu drucken: ${changes.join("; ")}`,
      fr: `Carte de rayon à réimprimer\u202f: ${changes.join("\u202f; ")}`,
      es: `Tarjeta de estante que hay que volver a imprimir: ${changes.join("; ")}`,
    }),
    "old-paper": (name: string, date: string) => ({
      en: `The hazards of ${name} are of ${date}, more than three years ago: ask the supplier for the safety data sheet of today`,
      de: `${name}: Die Gefahrenangaben sind vom ${date} und damit älter als drei Jahre; beim Lieferanten das aktuelle Sicherheitsdatenblatt anfordern`,
      fr: `${name}\u202f: ses dangers datent du ${date}, il y a plus de trois ans\u202f; demander au fournisseur la fiche de données de sécurité d’aujourd’hui`,
      es: `${name}: sus peligros son del ${date}, hace más de tres años; pida al proveedor la ficha de datos de seguridad actual`,
    }),
    trial: (name: string, date: string) => ({
      en: `${name}: to be looked at on ${date}`,
      de: `${name}: am ${date} nachzusehen`,
      fr: `${name}\u202f: à regarder le ${date}`,
      es: `${name}: hay que mirarlo el ${date}`,
    }),
    "exposure-result": (name: string, date: string, deltaEab: string, category: string) => ({
      en: `${name}: it ended on ${date} at \u0394E*ab ${deltaEab} (category\u00a0${category}), and the colour\u2019s record does not have it: write it under exposures`,
      de: `${name}: beendet am ${date} bei \u0394E*ab ${deltaEab} (Kategorie\u00a0${category}); in den Aufzeichnungen der Farbe fehlt das noch und gehört unter exposures`,
      fr: `${name}\u202f: terminé le ${date} à \u0394E*ab ${deltaEab} (catégorie\u00a0${category})\u202f; le relevé de la couleur ne le porte pas encore\u202f: à écrire sous exposures`,
      es: `${name}: terminado el ${date} con \u0394E*ab ${deltaEab} (categoría\u00a0${category}); el registro del color aún no lo tiene: escríbalo en exposures`,
    }),
    "drying-result": (name: string, date: string, from: number, to: number) => ({
      en: `${name}: it ended on ${date}, dry to the touch between day ${from} and day ${to}, and the colour\u2019s record does not have it: write it under dryingTrials`,
      de: `${name}: beendet am ${date}, grifftrocken zwischen Tag ${from} und Tag ${to}; in den Aufzeichnungen der Farbe fehlt das noch und gehört unter dryingTrials`,
      fr: `${name}\u202f: terminé le ${date}, sec au toucher entre le jour ${from} et le jour ${to}\u202f; le relevé de la couleur ne le porte pas encore\u202f: à écrire sous dryingTrials`,
      es: `${name}: terminado el ${date}, seco al tacto entre el día ${from} y el día ${to}; el registro del color aún no lo tiene: escríbalo en dryingTrials`,
    }),
    "second-lot": (lots: 0 | 1, colours: string) => ({
      en:
        lots === 0
          ? `These have no lot recorded yet, so that nothing tells how their lots differ: ${colours}`
          : `Of these one lot is recorded; a second would tell how their lots differ: ${colours}`,
      de:
        lots === 0
          ? `Von diesen Farben ist noch keine Charge aufgezeichnet; wie sich ihre Chargen unterscheiden, ist daher unbekannt: ${colours}`
          : `Von diesen Farben ist eine Charge aufgezeichnet; eine zweite würde zeigen, wie sich ihre Chargen unterscheiden: ${colours}`,
      fr:
        lots === 0
          ? `Aucun lot de ces couleurs n’est encore consigné, et rien ne dit comment leurs lots diffèrent\u202f: ${colours}`
          : `De chacune de ces couleurs, un seul lot est consigné\u202f; un second dirait comment leurs lots diffèrent\u202f: ${colours}`,
      es:
        lots === 0
          ? `De estos colores aún no hay ningún lote registrado, así que nada dice cómo difieren sus lotes: ${colours}`
          : `De cada uno de estos colores hay un solo lote registrado; un segundo diría cómo difieren sus lotes: ${colours}`,
    }),
    "lot-planned": (number: string) => ({
      en: `Lot ${number} is planned and not made: its batch sheet is ready`,
      de: `Charge ${number} ist geplant und noch nicht hergestellt: Das Ansatzblatt liegt bereit`,
      fr: `Le lot ${number} est prévu et pas encore fait\u202f: sa fiche de fabrication est prête`,
      es: `El lote ${number} está previsto y sin hacer: su hoja de fabricación está lista`,
    }),
    "lot-unread": (number: string) => ({
      en: `Lot ${number} is held against nothing yet: draw it down and read it`,
      de: `Charge ${number} ist noch mit nichts verglichen: aufstreichen und messen`,
      fr: `Le lot ${number} n’est encore comparé à rien\u202f: l’étirer et le mesurer`,
      es: `El lote ${number} no se ha comparado aún con nada: extiéndalo y mídalo`,
    }),
    "lot-unjudged": (number: string) => ({
      en: `Lot ${number} was read, and not as its standard was: its page says what to let down or read again`,
      de: `Charge ${number} wurde gemessen, aber nicht wie ihr Standard: Auf ihrer Seite steht, was noch einmal aufzuhellen oder zu messen ist`,
      fr: `Le lot ${number} a été mesuré, mais pas comme son étalon\u202f: sa page dit quel dégradé refaire ou quoi mesurer encore`,
      es: `El lote ${number} se midió, pero no como su patrón: su página dice qué rebajar o medir otra vez`,
    }),
    "lot-recalled": (number: string) => ({
      en: `Lot ${number} is recalled: call back what went out of it`,
      de: `Charge ${number} ist zurückgerufen: zurückholen, was davon ausgeliefert wurde`,
      fr: `Le lot ${number} est rappelé\u202f: rappeler ce qui en est sorti`,
      es: `El lote ${number} está retirado: recupere lo que salió de él`,
    }),
    "lot-conceded": (number: string) => ({
      en: `Lot ${number} is sold by concession: see that the next one passes`,
      de: `Charge ${number} wird mit Sonderfreigabe verkauft: Die nächste soll bestehen`,
      fr: `Le lot ${number} est vendu par dérogation\u202f: que le prochain soit conforme`,
      es: `El lote ${number} se vende por concesión: que el próximo sea conforme`,
    }),
    "lot-failed": (number: string) => ({
      en: `Lot ${number} fails against its standard: its page says why, and what to do`,
      de: `Charge ${number} besteht im Vergleich mit ihrem Standard nicht: Auf ihrer Seite steht, warum und was zu tun ist`,
      fr: `Le lot ${number} n’est pas conforme à son étalon\u202f: sa page dit pourquoi, et que faire`,
      es: `El lote ${number} no es conforme a su patrón: su página dice por qué y qué hacer`,
    }),
    "undated-papers": (names: string) => ({
      en: `The hazards of ${names} bear no date: write down under date of what day the supplier's paper is`,
      de: `${names}: Die Gefahrenangaben tragen kein Datum; unter date notieren, von wann die Unterlagen des Lieferanten sind`,
      fr: `${names}\u202f: les dangers ne portent pas de date\u202f; noter sous date de quel jour est le document du fournisseur`,
      es: `${names}: los peligros no llevan fecha; anote en date de qué día es el documento del proveedor`,
    }),
  },
} satisfies Texts;
