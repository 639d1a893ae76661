import { FORMS, wordOf } from "../closed-sets.ts";
import { fr } from "../phrases-in-each.ts";
import { alike, type Texts } from "../texts.ts";
import {
  AMOUNT_ABOVE_NOUGHT,
  FINENESS,
  LET_DOWN_AT_EQUAL_STRENGTH,
  lotNumber,
} from "../shared-rows.ts";
import { given } from "../../quantities/given.ts";

const LET_DOWN_DELTA_E00 = {
  en: "Let-down, \u0394E00",
  de: "Aufhellung, \u0394E00",
  fr: "Dégradé, \u0394E00",
  es: "Rebaje, \u0394E00",
};

const MASSTONE_DELTA_E00 = {
  en: "Masstone, \u0394E00",
  de: "Vollton, \u0394E00",
  fr: "Ton plein, \u0394E00",
  es: "Tono pleno, \u0394E00",
};

const inTheWorkshop = (colour: string) => ({
  en: `${colour} in the workshop`,
  de: `${colour} in der Werkstatt`,
  fr: `${colour} à l’atelier`,
  es: `${colour} en el taller`,
});

const NEIGHBOURS_DELTA_E00 = {
  en: "Difference of two neighbours, \u0394E00",
  de: "Unterschied aufeinanderfolgender Chargen, \u0394E00",
  fr: "Écart de deux voisins, \u0394E00",
  es: "Diferencia de dos vecinos, \u0394E00",
};

const WEIGH_PIGMENT = {
  en: "Weigh the pigment with the extractor on, as said below, and close the jar.",
  de: "Das Pigment bei laufender Absaugung abwiegen, wie unten gesagt, und das Glas schließen.",
  fr: "Peser le pigment aspiration en marche, comme il est dit plus bas, et fermer le pot.",
  es: "Pese el pigmento con el extractor en marcha, como se dice abajo, y cierre el tarro.",
};

const FILL_THE_TUBES = {
  en: "Draw down masstone and let-down, fill the sample jar, then the tubes.",
  de: "Vollton und Aufhellung aufstreichen, das Musterglas füllen, dann die Tuben.",
  fr: "Étirer le ton plein et le dégradé, remplir le pot témoin, puis les tubes.",
  es: "Extienda el tono pleno y el rebaje, llene el tarro de muestra y luego los tubos.",
};

const DRAW_DOWN = {
  text: {
    en: "Draw down masstone and let-down and read them. This keeps the readings and prints the lines for its record:",
    de: "Vollton und Aufhellung aufstreichen und messen. Dieser Befehl legt die Messungen ab und nennt die Zeilen, die in die Datei der Charge gehören:",
    fr: "Étirer le ton plein et le dégradé, les mesurer. Cette commande garde les mesures et donne les lignes à mettre dans son relevé\u202f:",
    es: "Extienda el tono pleno y el rebaje y mídalos. Esta orden guarda las mediciones y da las líneas que van en su registro:",
  },
  code: {
    en: "npm run read -- FILE",
    de: "npm run read -- DATEI",
    fr: "npm run read -- FICHIER",
    es: "npm run read -- ARCHIVO",
  },
};

/** What the workshop's pages of lots, batch sheets and trials say. */
export const LOTS = {
  /** On published pages: which lots the figures are of. */
  describes: (standard: string | undefined, others: readonly string[]) => ({
    en: given([
      standard !== undefined && `The figures describe lot ${standard}.`,
      others.length > 0 &&
        `${others.length === 1 ? "Lot" : "Lots"} ${others.join(", ")} ${others.length === 1 ? "agrees" : "agree"} with ${standard === undefined ? "the standard" : "it"} within tolerance.`,
    ]).join(" "),
    de: given([
      standard !== undefined && `Die Werte beschreiben Charge ${standard}.`,
      others.length > 0 &&
        `Innerhalb der Toleranz ${standard === undefined ? "wie der Standard" : "ebenso"}: ${others.join(", ")}.`,
    ]).join(" "),
    fr: given([
      standard !== undefined && `Les chiffres décrivent le lot ${standard}.`,
      others.length > 0 &&
        `${others.length === 1 ? "Le lot" : "Les lots"} ${others.join(", ")} ${others.length === 1 ? "s’accorde" : "s’accordent"} avec ${standard === undefined ? "l’étalon" : "lui"}, dans la tolérance.`,
    ]).join(" "),
    es: given([
      standard !== undefined && `Las cifras son del lote ${standard}.`,
      others.length > 0 &&
        `${others.length === 1 ? "El lote" : "Los lotes"} ${others.join(", ")} ${others.length === 1 ? "concuerda" : "concuerdan"} con ${standard === undefined ? "el patrón" : "él"} dentro de la tolerancia.`,
    ]).join(" "),
  }),
  recalled: (number: string, since: string) => ({
    en: `Lot ${number} was recalled on ${since}: do not use it, and write to us.`,
    de: `Charge ${number} wurde am ${since} zurückgerufen: Bitte nicht verwenden und uns schreiben.`,
    fr: `Le lot ${number} a été rappelé le ${since}\u202f: ne pas l’utiliser, et nous écrire.`,
    es: `El lote ${number} se retiró el ${since}: no lo use, y escríbanos.`,
  }),
  conceded: (number: string) => ({
    en: `Lot ${number} is sold by concession, though it lies outside tolerance.`,
    de: `Charge ${number} wird mit Sonderfreigabe verkauft, obwohl sie außerhalb der Toleranz liegt.`,
    fr: `Le lot ${number} est vendu par dérogation, bien que hors tolérance.`,
    es: `El lote ${number} se vende por concesión, aunque está fuera de tolerancia.`,
  }),
  reply: { en: "Lots", de: "Chargen", fr: "Lots", es: "Lotes" },
  verdicts: {
    pass: { en: "Pass", de: "Bestanden", fr: "Conforme", es: "Conforme" },
    near: { en: "Near", de: "Grenzfall", fr: "À la limite", es: "En el límite" },
    fail: { en: "Fail", de: "Nicht bestanden", fr: "Non conforme", es: "No conforme" },
    none: { en: "Not judged", de: "Nicht beurteilt", fr: "Non jugé", es: "Sin juzgar" },
  },
  index: {
    heading: { en: "Lots", de: "Chargen", fr: "Lots", es: "Lotes" },
    lead: {
      en: "Every lot beside its standard, the newest first.",
      de: "Jede Charge neben ihrem Standard, die neueste zuerst.",
      fr: "Chaque lot à côté de son étalon, le plus récent d’abord.",
      es: "Cada lote junto a su patrón, el más reciente primero.",
    },
    description: {
      en: "Lots of the workshop beside their standards.",
      de: "Chargen der Werkstatt neben ihren Standards.",
      fr: "Les lots de l’atelier à côté de leurs étalons.",
      es: "Los lotes del taller junto a sus patrones.",
    },
    none: {
      en: "No lot is on record yet. A lot is a file in lots/.",
      de: "Noch ist keine Charge aufgezeichnet. Jede Charge ist eine Datei in lots/.",
      fr: "Aucun lot n’est encore consigné. Un lot est un fichier dans lots/.",
      es: "Aún no hay ningún lote registrado. Un lote es un archivo en lots/.",
    },
    outcome: {
      en: "How they came out",
      de: "Wie sie ausfielen",
      fr: "Ce qu’ils ont donné",
      es: "Cómo salieron",
    },
    caption: {
      en: "Lots, the newest first",
      de: "Chargen, die neueste zuerst",
      fr: "Lots, le plus récent d’abord",
      es: "Lotes, el más reciente primero",
    },
    columns: {
      lot: { en: "Lot", de: "Charge", fr: "Lot", es: "Lote" },
      colour: { en: "Colour", de: "Farbe", fr: "Couleur", es: "Color" },
      date: { en: "Date", de: "Datum", fr: "Date", es: "Fecha" },
      verdict: { en: "Verdict", de: "Urteil", fr: "Verdict", es: "Veredicto" },
      letDown: LET_DOWN_DELTA_E00,
      strength: { en: "Strength, %", de: "Farbstärke, %", fr: "Force, %", es: "Fuerza, %" },
    },
    recalled: { en: "recalled", de: "zurückgerufen", fr: "rappelé", es: "retirado" },
    conceded: { en: "conceded", de: "Sonderfreigabe", fr: "dérogation", es: "concedido" },
    standard: { en: "Standard", de: "Standard", fr: "Étalon", es: "Patrón" },
    planned: { en: "Planned", de: "Geplant", fr: "Prévu", es: "Previsto" },
    spreadHeading: {
      en: "How well we repeat ourselves",
      de: "Wie gut sich unsere Messungen wiederholen lassen",
      fr: "Notre répétabilité",
      es: "Nuestra repetibilidad",
    },
    spread: (colour: string, strength: string, degrees: number) => ({
      en: `The same lot let down and read again differs by ${colour} \u0394E*ab and ${strength}\u00a0% of strength (standard deviation, ${degrees} ${degrees === 1 ? "degree" : "degrees"} of freedom).`,
      de: `Dieselbe Charge, noch einmal aufgehellt und gemessen, weicht um ${colour} \u0394E*ab und ${strength}\u00a0% der Farbstärke ab (Standardabweichung, ${degrees} ${degrees === 1 ? "Freiheitsgrad" : "Freiheitsgrade"}).`,
      fr: `Le même lot, dégradé et mesuré une seconde fois, diffère de \u0394E*ab ${colour} et de ${strength}\u00a0% de force (écart type, ${degrees} ${degrees === 1 ? "degré" : "degrés"} de liberté).`,
      es: `El mismo lote, rebajado y medido otra vez, difiere en \u0394E*ab ${colour} y en un ${strength}\u00a0% de fuerza (desviación típica, ${degrees} ${degrees === 1 ? "grado" : "grados"} de libertad).`,
    }),
    spreadUsed: {
      en: "Verdicts go by that, twice over.",
      de: "Danach richten sich die Urteile, und zwar nach dem Doppelten.",
      fr: "Les verdicts s’appuient sur le double de ces écarts.",
      es: "Los veredictos se rigen por el doble de esas desviaciones.",
    },
    spreadNotUsed: {
      en: "That is too few to go by: verdicts go by the instrument's own noise.",
      de: "Das ist zu wenig, um sich danach zu richten: Die Urteile richten sich nach dem Rauschen des Geräts.",
      fr: "C’est trop peu pour s’y fier\u202f: les verdicts suivent le bruit propre de l’instrument.",
      es: "Es demasiado poco para guiarse: los veredictos se rigen por el ruido propio del instrumento.",
    },
    spreadOfReadings: {
      en: "The \u00b1 of every reading of the same instrument that states none is drawn towards what these and all other replicates show.",
      de: "Das \u00b1 jeder Messung desselben Geräts, zu der keines angegeben ist, richtet sich nach diesen und allen anderen Wiederholungen.",
      fr: "Le \u00b1 de chaque mesure du même instrument qui n’en indique pas tient compte de ces répétitions et de toutes les autres.",
      es: "El \u00b1 de cada medición del mismo instrumento que no indica ninguno tiene en cuenta estas repeticiones y todas las demás.",
    },
    spreadNone: {
      en: "No lot has a let-down that was made or read twice, so that verdicts go by the instrument's own noise.",
      de: "Keine Charge hat eine zweimal gemachte oder gemessene Aufhellung; die Urteile richten sich daher nach dem Rauschen des Geräts.",
      fr: "Aucun lot n’a de dégradé fait ou mesuré deux fois\u202f; les verdicts suivent le bruit propre de l’instrument.",
      es: "Ningún lote tiene un rebaje hecho o medido dos veces, así que los veredictos se rigen por el ruido propio del instrumento.",
    },
  },
  lot: {
    heading: (number: string, colour: string) => ({
      en: `Lot ${number}, ${colour}`,
      de: `Charge ${number}, ${colour}`,
      fr: `Lot ${number}, ${colour}`,
      es: `Lote ${number}, ${colour}`,
    }),
    description: (number: string, colour: string) => ({
      en: `Lot ${number} of ${colour} beside its standard.`,
      de: `Charge ${number} von ${colour} neben dem Standard.`,
      fr: `Le lot ${number} (${colour}) à côté de son étalon.`,
      es: `El lote ${number} de ${colour} junto a su patrón.`,
    }),
    back: { en: "All lots", de: "Alle Chargen", fr: "Tous les lots", es: "Todos los lotes" },
    ruled: (since: string, why: string) => ({
      en: `Since ${since}: ${why}`,
      de: `Seit ${since}: ${why}`,
      fr: `Depuis le ${since}\u202f: ${why}`,
      es: `Desde el ${since}: ${why}`,
    }),
    lead: {
      pass: {
        en: "It passes.",
        de: "Die Charge besteht.",
        fr: "Il est conforme.",
        es: "Es conforme.",
      },
      near: {
        en: "It lies so near to a limit that it neither passes nor fails yet.",
        de: "Die Charge liegt für ein Urteil zu nah an einer Grenze.",
        fr: "Il est trop près d’une limite pour être jugé.",
        es: "Está demasiado cerca de un límite para decidir.",
      },
      unjudged: {
        en: "Not judged: not all that was read of it can be held against the standard.",
        de: "Nicht beurteilt: Nicht alles, was daran gemessen wurde, lässt sich mit dem Standard vergleichen.",
        fr: "Non jugé\u202f: ce qui en a été mesuré ne peut pas être comparé en entier à l’étalon.",
        es: "Sin juzgar: no todo lo que se midió de él puede compararse con el patrón.",
      },
      fail: {
        en: "It fails.",
        de: "Die Charge besteht nicht.",
        fr: "Il n’est pas conforme.",
        es: "No es conforme.",
      },
      none: {
        en: "Not judged: neither its masstone nor its let-down has been read as a spectrum.",
        de: "Nicht beurteilt: Weder Vollton noch Aufhellung sind als Spektrum gemessen.",
        fr: "Non jugé\u202f: ni son ton plein ni son dégradé n’a été mesuré en spectre.",
        es: "Sin juzgar: ni su tono pleno ni su rebaje se han medido como espectro.",
      },
      standard: {
        en: "The retained standard: later lots are held against it.",
        de: "Der Standard, als Rückstellmuster aufbewahrt: Spätere Chargen werden mit ihm verglichen.",
        fr: "L’étalon conservé\u202f: les lots suivants se comparent à lui.",
        es: "El patrón conservado: los lotes siguientes se comparan con él.",
      },
      recalled: {
        en: "Recalled: none of it is to be sold or used.",
        de: "Zurückgerufen: Nichts davon darf verkauft oder verwendet werden.",
        fr: "Rappelé\u202f: rien n’en doit être vendu ni utilisé.",
        es: "Retirado: nada de él debe venderse ni usarse.",
      },
      conceded: {
        en: "Conceded: it is sold though it does not pass.",
        de: "Sonderfreigabe: Die Charge wird verkauft, obwohl sie nicht besteht.",
        fr: "Accordé par dérogation\u202f: il est vendu bien que non conforme.",
        es: "Concedido: se vende aunque no es conforme.",
      },
      planned: {
        en: "Planned, and not made yet.",
        de: "Geplant, noch nicht hergestellt.",
        fr: "Prévu, et pas encore fait.",
        es: "Previsto, y aún no hecho.",
      },
    },
    sections: {
      verdict: {
        en: "Against the standard",
        de: "Gegen den Standard",
        fr: "Face à l’étalon",
        es: "Frente al patrón",
      },
      seen: { en: "Side by side", de: "Nebeneinander", fr: "Côte à côte", es: "Lado a lado" },
      parts: {
        en: "The difference in parts",
        de: "Woraus der Unterschied besteht",
        fr: "L’écart, composante par composante",
        es: "La diferencia, por componentes",
      },
      correction: {
        en: "What would bring it back",
        de: "Was die Charge zum Standard zurückbrächte",
        fr: "Ce qui le corrigerait",
        es: "Qué lo corregiría",
      },
      planned: {
        en: "As it is planned",
        de: "Wie sie geplant ist",
        fr: "Tel qu’il est prévu",
        es: "Como está previsto",
      },
      batch: {
        en: "As it was made",
        de: "Wie sie hergestellt wurde",
        fr: "Tel qu’il a été fait",
        es: "Tal como se hizo",
      },
      next: { en: "Next", de: "Nächste Schritte", fr: "Ensuite", es: "Después" },
    },
    judgedCaption: {
      en: "Each criterion with its tolerance",
      de: "Jedes Merkmal mit seiner Toleranz",
      fr: "Chaque critère avec sa tolérance",
      es: "Cada criterio con su tolerancia",
    },
    judgedColumns: {
      what: { en: "Criterion", de: "Merkmal", fr: "Critère", es: "Criterio" },
      found: { en: "Found", de: "Gefunden", fr: "Trouvé", es: "Hallado" },
      tolerance: { en: "Tolerance", de: "Toleranz", fr: "Tolérance", es: "Tolerancia" },
      verdict: { en: "Verdict", de: "Urteil", fr: "Verdict", es: "Veredicto" },
    },
    customary: {
      en: "Tolerances are our own choice where neither the workshop nor the colour names them.",
      de: "Toleranzen sind unsere eigene Wahl, wo weder die Werkstatt noch die Farbe sie nennt.",
      fr: "Les tolérances sont notre propre choix là où ni l’atelier ni la couleur n’en nomment.",
      es: "Las tolerancias son elección nuestra donde ni el taller ni el color las nombran.",
    },
    seenRows: [
      { en: "Standard", de: "Standard", fr: "Étalon", es: "Patrón" },
      { en: "Lot", de: "Charge", fr: "Lot", es: "Lote" },
    ],
    seenDescription: (number: string) => ({
      en: `The standard above lot ${number}, as masstone and as let-down.`,
      de: `Der Standard über Charge ${number}, als Vollton und als Aufhellung.`,
      fr: `L’étalon au-dessus du lot ${number}, en ton plein et en dégradé.`,
      es: `El patrón encima del lote ${number}, en tono pleno y rebajado.`,
    }),
    masstone: { en: "Masstone", de: "Vollton", fr: "Ton plein", es: "Tono pleno" },
    letDown: (white: string, ratio: string) => ({
      en: `${ratio} in ${white}`,
      de: `${ratio} in ${white}`,
      fr: `${ratio} dans ${white}`,
      es: `${ratio} en ${white}`,
    }),
    partsCaption: {
      en: "Lot less standard, \u0394E00 (D65, 10\u00b0)",
      de: "Charge minus Standard, \u0394E00 (D65, 10\u00b0)",
      fr: "Lot moins étalon, \u0394E00 (D65, 10\u00b0)",
      es: "Lote menos patrón, \u0394E00 (D65, 10\u00b0)",
    },
    partsColumns: {
      of: { en: "What", de: "Was", fr: "Quoi", es: "Qué" },
      total: alike("\u0394E00"),
      L: alike("\u0394L\u2032"),
      C: alike("\u0394C\u2032"),
      H: alike("\u0394H\u2032"),
    },
    equal: LET_DOWN_AT_EQUAL_STRENGTH,
    strength: (percent: string, nm: number, weighted: string) => ({
      en: `Strength ${percent}\u00a0% at ${nm}\u00a0nm, where the standard absorbs most; ${weighted}\u00a0% weighted by what the eye takes of daylight.`,
      de: `Farbstärke ${percent}\u00a0% bei ${nm}\u00a0nm, wo der Standard am stärksten absorbiert; ${weighted}\u00a0%, gewichtet danach, was das Auge vom Tageslicht aufnimmt.`,
      fr: `Force ${percent}\u00a0% à ${nm}\u00a0nm, où l’étalon absorbe le plus\u202f; ${weighted}\u00a0% pondérée par ce que l’œil perçoit de la lumière du jour.`,
      es: `Fuerza del ${percent}\u00a0% a ${nm}\u00a0nm, donde más absorbe el patrón; del ${weighted}\u00a0% ponderada por lo que el ojo percibe de la luz del día.`,
    }),
    correctionLead: (best: string, grams: string) => ({
      en: `Work ${grams}\u00a0g of ${best} into each 100\u00a0g of the lot.`,
      de: `In je 100\u00a0g der Charge ${grams}\u00a0g ${best} einarbeiten.`,
      fr: `Incorporer ${grams}\u00a0g ${fr.of(best)} à 100\u00a0g du lot.`,
      es: `Incorpore ${grams}\u00a0g de ${best} a cada 100\u00a0g del lote.`,
    }),
    correctionForeign: (name: string, pigments: string) => ({
      en: `With ${name} it holds ${pigments} as well, which neither its name nor its label says.`,
      de: `Durch die Zugabe (${name}) enthält die Charge auch ${pigments}; weder ihr Name noch ihr Etikett sagt das.`,
      fr: `Avec ${name} il contient aussi ${pigments}, ce que ne dit ni son nom ni son étiquette.`,
      es: `Con ${name} contiene también ${pigments}, lo que no dicen ni su nombre ni su etiqueta.`,
    }),
    correctionNone: {
      en: "Nothing that we tried would halve the difference: no white, no extender, no other lot, and no colour that was read in the same way. What was never let down, nor read alone and in films over a bare chart that was read itself, could not be tried.",
      de: "Nichts von dem, was durchgerechnet wurde, würde den Unterschied halbieren: kein Weiß, kein Füllstoff, keine gleich gemessene Farbe, keine andere Charge. Nicht durchrechnen ließ sich, was weder aufgehellt noch allein und in Filmen über einer selbst gemessenen Prüfkarte gemessen wurde.",
      fr: "Rien de ce qui a été essayé ne réduirait l’écart de moitié\u202f: ni un blanc, ni une charge, ni une couleur mesurée de la même façon, ni un autre lot. N’a pu être essayé ce qui n’a jamais été coupé de blanc, ni mesuré seul et en films sur une carte de contraste nue, mesurée elle aussi.",
      es: "Nada de lo que se probó reduciría la diferencia a la mitad: ni un blanco, ni una carga, ni un color medido de la misma manera, ni otro lote. No se pudo probar lo que nunca se rebajó con blanco ni se midió solo y en películas sobre una carta de contraste desnuda, medida también.",
    },
    correctionUnread: {
      en: "There is nothing to correct before it has been read rightly.",
      de: "Es gibt nichts zu korrigieren, bevor die Charge richtig gemessen ist.",
      fr: "Rien à corriger avant une mesure juste.",
      es: "No hay nada que corregir antes de una medición correcta.",
    },
    correctionCaption: {
      en: "To 100 g of the lot, and what would then be read",
      de: "Auf 100\u00a0g der Charge und was dann gemessen würde",
      fr: "Pour 100\u00a0g du lot, et ce qu’on mesurerait alors",
      es: "Por 100\u00a0g del lote, y lo que se mediría entonces",
    },
    correctionColumns: {
      what: { en: "Addition", de: "Zugabe", fr: "Ajout", es: "Adición" },
      grams: {
        en: "To 100 g, g",
        de: "Auf 100\u00a0g, g",
        fr: "Pour 100\u00a0g, g",
        es: "Por 100\u00a0g, g",
      },
      masstone: MASSTONE_DELTA_E00,
      letDown: LET_DOWN_DELTA_E00,
      strength: { en: "Strength, %", de: "Farbstärke, %", fr: "Force, %", es: "Fuerza, %" },
    },
    correctionNote: {
      en: "In brackets what it may come to with a dose 5 % off, or as far off as what is added is known, and the reading's uncertainty. Try it on 20 g first: what theory leaves out is not in the range.",
      de: "In Klammern, was herauskommen kann, wenn die Zugabe um 5\u00a0% danebenliegt oder um so viel, wie über sie ungewiss ist, und mit der Unsicherheit der Messung. Erst an 20\u00a0g erproben: Was die Theorie auslässt, ist in dem Bereich nicht enthalten.",
      fr: "Entre parenthèses, l’intervalle possible si la dose est fausse de 5\u00a0% (ou plus, si l’ajout est moins bien connu), incertitude de la mesure comprise. Essayer d’abord sur 20\u00a0g\u202f: ce que la théorie laisse de côté n’est pas dans l’intervalle.",
      es: "Entre paréntesis, el intervalo posible si la dosis se desvía un 5\u00a0% (o más, si lo añadido se conoce peor), con la incertidumbre de la medición incluida. Pruebe antes con 20\u00a0g: lo que la teoría deja fuera no está en el intervalo.",
    },
    kinds: {
      white: { en: "white", de: "Weiß", fr: "blanc", es: "blanco" },
      extender: { en: "extender", de: "Füllstoff", fr: "charge", es: "carga" },
      colour: { en: "colour", de: "Farbe", fr: "couleur", es: "color" },
      lot: { en: "lot", de: "Charge", fr: "lot", es: "lote" },
    },
    plannedCaption: { en: "To be weighed in", de: "Einzuwiegen", fr: "À peser", es: "Por pesar" },
    batchCaption: {
      en: "Weighed in, and what came out",
      de: "Was eingewogen wurde und was herauskam",
      fr: "Pesé, et ce qui en est sorti",
      es: "Pesado, y lo que salió",
    },
    batchColumns: {
      what: { en: "What", de: "Was", fr: "Quoi", es: "Qué" },
      amount: { en: "Amount", de: "Menge", fr: "Quantité", es: "Cantidad" },
    },
    rows: {
      yield: { en: "Yield", de: "Ausbeute", fr: "Quantité obtenue", es: "Cantidad obtenida" },
      loss: { en: "Lost", de: "Verlust", fr: "Perdu", es: "Perdido" },
      tubes: (ml: string) => ({
        en: `Tubes of ${ml}\u00a0ml`,
        de: `Tuben zu ${ml}\u00a0ml`,
        fr: `Tubes de ${ml}\u00a0ml`,
        es: `Tubos de ${ml}\u00a0ml`,
      }),
      packed: (ml: string) => ({
        en: `Tubes of ${ml}\u00a0ml must hold on the mean`,
        de: `Tuben zu ${ml}\u00a0ml müssen im Mittel enthalten`,
        fr: `Les tubes de ${ml}\u00a0ml doivent contenir en moyenne`,
        es: `Los tubos de ${ml}\u00a0ml deben contener de media`,
      }),
      packedMean: (grams: string) => ({
        en: `${grams} or more`,
        de: `${grams} oder mehr`,
        fr: `${grams} ou plus`,
        es: `${grams} o más`,
      }),
      packedFew: {
        en: "Only few of them may hold less than",
        de: "Nur wenige davon dürfen weniger enthalten als",
        fr: "Seuls quelques-uns peuvent contenir moins de",
        es: "Solo unos pocos pueden contener menos de",
      },
      packedGross: (net: string, gross: string) => ({
        en: `${net}; with the empty tube ${gross}`,
        de: `${net}; mit der leeren Tube ${gross}`,
        fr: `${net}\u202f; avec le tube vide ${gross}`,
        es: `${net}; con el tubo vacío ${gross}`,
      }),
      packedShort: (found: string, ml: string) => ({
        en: `On the mean they hold ${found}\u00a0ml, and ${ml}\u00a0ml stands on them: they may not be sold as such (Directive 76/211/EEC).`,
        de: `Im Mittel enthalten sie ${found}\u00a0ml, und ${ml}\u00a0ml stehen darauf: So dürfen sie nicht verkauft werden (Richtlinie 76/211/EWG).`,
        fr: `Ils contiennent en moyenne ${found}\u00a0ml, et ${ml}\u00a0ml y sont inscrits\u202f: ils ne peuvent être vendus ainsi (directive 76/211/CEE).`,
        es: `Contienen de media ${found}\u00a0ml, y en ellos se leen ${ml}\u00a0ml: no pueden venderse así (Directiva 76/211/CEE).`,
      }),
      tubeMass: (ml: string) => ({
        en: `In one of ${ml}\u00a0ml`,
        de: `In einer zu ${ml}\u00a0ml`,
        fr: `Dans un tube de ${ml}\u00a0ml`,
        es: `En un tubo de ${ml}\u00a0ml`,
      }),
      fineness: FINENESS,
      density: {
        en: "Density of the paint",
        de: "Dichte der Farbe",
        fr: "Masse volumique de la peinture",
        es: "Densidad de la pintura",
      },
      retained: {
        en: "Retained sample",
        de: "Rückstellmuster",
        fr: "Échantillon témoin",
        es: "Muestra de retención",
      },
      passes: { en: "Passes", de: "Durchgänge", fr: "Passes", es: "Pasadas" },
      note: { en: "Note", de: "Notiz", fr: "Note", es: "Nota" },
    },

    /** What comes next, by how the lot stands. */
    steps: {
      recalled: (number: string) => [
        {
          text: {
            en: "What went out of it and is to be called back:",
            de: "Was davon ausgeliefert wurde und zurückzurufen ist:",
            fr: "Ce qui en est sorti, à rappeler\u202f:",
            es: "Lo que salió de él, por retirar:",
          },
          code: alike(`npm run check -- --uses ${number}`),
        },
        {
          en: "No labels of it are printed.",
          de: "Für diese Charge werden keine Etiketten gedruckt.",
          fr: "Aucune étiquette n’en est imprimée.",
          es: "No se imprimen etiquetas de él.",
        },
      ],
      conceded: (number: string, howMany: string) => [itsLabels(number, howMany)],
      planned: () => [
        {
          text: {
            en: "Once it is made: put the weights into its record as they were, and take out the line",
            de: "Nach der Herstellung: die tatsächlichen Einwaagen in die Datei der Charge schreiben und diese Zeile herausnehmen:",
            fr: "Une fois fait\u202f: mettre dans son relevé les masses réellement pesées, et en ôter la ligne",
            es: "Una vez hecho: ponga en su registro los pesos reales y quite la línea",
          },
          code: alike("planned: true"),
        },
        DRAW_DOWN,
      ],
      none: () => [DRAW_DOWN],
      pass: (number: string, howMany: string) => [itsLabels(number, howMany)],
      standard: (number: string, howMany: string) => [itsLabels(number, howMany)],
      unjudged: () => [
        {
          en: "Let it down in the white and at the ratio of the standard, and read it as the standard was read; or let the retained standard down as this lot was.",
          de: "Im Weiß und im Verhältnis des Standards aufhellen und so messen wie den Standard; oder das Rückstellmuster des Standards so aufhellen wie diese Charge.",
          fr: "En faire un dégradé dans le blanc et au rapport de l’étalon, et le mesurer comme l’étalon\u202f; ou faire de l’étalon conservé le même dégradé que de ce lot.",
          es: "Rebájelo en el blanco y en la proporción del patrón y mídalo como se midió el patrón; o rebaje el patrón conservado como este lote.",
        },
      ],
      near: () => [
        {
          en: "Draw it down and read it once more: with a smaller \u00b1 it may be clear whether it passes.",
          de: "Noch einmal aufstreichen und messen: Mit einem kleineren ± kann sich zeigen, ob sie besteht.",
          fr: "L’étirer et le mesurer encore une fois\u202f: avec un ± plus petit, on saura peut-être s’il est conforme.",
          es: "Extiéndalo y mídalo otra vez: con un ± menor quizá se vea si es conforme.",
        },
      ],
      fail: () => [
        {
          en: "Correct it by its sheet, or keep it back. What was corrected is read again, as a lot of its own.",
          de: "Nach dem Korrekturblatt korrigieren oder zurückhalten. Was korrigiert wurde, wird neu gemessen, als eigene Charge.",
          fr: "Le corriger d’après sa fiche de correction, ou le retenir. Ce qui a été corrigé se mesure de nouveau, comme un lot à part.",
          es: "Corríjalo según su hoja de corrección, o reténgalo. Lo corregido se mide otra vez, como un lote aparte.",
        },
      ],
      kept: () => [
        {
          en: "Keep it back: nothing that was read here would bring it to its standard.",
          de: "Zurückhalten: Nichts, was hier gemessen wurde, brächte die Charge zu ihrem Standard zurück.",
          fr: "Le retenir\u202f: rien de ce qui a été mesuré ici ne le ramènerait à son étalon.",
          es: "Reténgalo: nada de lo medido aquí lo devolvería a su patrón.",
        },
      ],
    },
    ownSheet: (number: string) => ({
      en: `Batch sheet of lot ${number}`,
      de: `Ansatzblatt der Charge ${number}`,
      fr: `Fiche de fabrication du lot ${number}`,
      es: `Hoja de fabricación del lote ${number}`,
    }),
    correctionSheet: (number: string) => ({
      en: `Sheet for the correction of lot ${number}`,
      de: `Korrekturblatt der Charge ${number}`,
      fr: `Fiche de correction du lot ${number}`,
      es: `Hoja de corrección del lote ${number}`,
    }),
    reply: (colour: string) => ({
      en: `A reply about ${colour}`,
      de: `Eine Antwort zu ${colour}`,
      fr: `Une réponse sur ${colour}`,
      es: `Una respuesta sobre ${colour}`,
    }),
    batchSheet: (colour: string) => ({
      en: `Batch sheet of ${colour}`,
      de: `Ansatzblatt: ${colour}`,
      fr: `Fiche de fabrication\u202f: ${colour}`,
      es: `Hoja de fabricación de ${colour}`,
    }),
    colourPage: inTheWorkshop,
  },
  chart: {
    of: {
      strength: {
        title: (colour: string) => ({
          en: `Strength of ${colour}, lot by lot`,
          de: `Farbstärke von ${colour}, Charge für Charge`,
          fr: `Force ${fr.of(colour)}, lot par lot`,
          es: `Fuerza de ${colour}, lote a lote`,
        }),
        ranges: (colour: string) => ({
          en: `Strength of ${colour}: from each lot to the next`,
          de: `Farbstärke von ${colour}: von jeder Charge zur nächsten`,
          fr: `Force ${fr.of(colour)}\u202f: d’un lot au suivant`,
          es: `Fuerza de ${colour}: de cada lote al siguiente`,
        }),
        value: {
          en: "Tinting strength, % of the standard",
          de: "Farbstärke, % des Standards",
          fr: "Pouvoir colorant, % de l’étalon",
          es: "Poder colorante, % del patrón",
        },
        range: {
          en: "Difference of two neighbours, %",
          de: "Unterschied aufeinanderfolgender Chargen, %",
          fr: "Écart de deux voisins, %",
          es: "Diferencia de dos vecinos, %",
        },
        column: { en: "Strength, %", de: "Farbstärke, %", fr: "Force, %", es: "Fuerza, %" },
      },
      letDown: {
        title: (colour: string) => ({
          en: `Let-down of ${colour} beside the standard, lot by lot`,
          de: `Aufhellung von ${colour} neben dem Standard, Charge für Charge`,
          fr: `Dégradé ${fr.of(colour)} à côté de l’étalon, lot par lot`,
          es: `Rebaje de ${colour} junto al patrón, lote a lote`,
        }),
        ranges: (colour: string) => ({
          en: `Let-down of ${colour}: from each lot to the next`,
          de: `Aufhellung von ${colour}: von jeder Charge zur nächsten`,
          fr: `Dégradé ${fr.of(colour)}\u202f: d’un lot au suivant`,
          es: `Rebaje de ${colour}: de cada lote al siguiente`,
        }),
        value: {
          en: "\u0394E00 of the let-down from the standard",
          de: "\u0394E00 der Aufhellung vom Standard",
          fr: "\u0394E00 du dégradé à l’étalon",
          es: "\u0394E00 del rebaje al patrón",
        },
        range: NEIGHBOURS_DELTA_E00,
        column: LET_DOWN_DELTA_E00,
      },
      masstone: {
        title: (colour: string) => ({
          en: `Masstone of ${colour} beside the standard, lot by lot`,
          de: `Vollton von ${colour} neben dem Standard, Charge für Charge`,
          fr: `Ton plein ${fr.of(colour)} à côté de l’étalon, lot par lot`,
          es: `Tono pleno de ${colour} junto al patrón, lote a lote`,
        }),
        ranges: (colour: string) => ({
          en: `Masstone of ${colour}: from each lot to the next`,
          de: `Vollton von ${colour}: von jeder Charge zur nächsten`,
          fr: `Ton plein ${fr.of(colour)}\u202f: d’un lot au suivant`,
          es: `Tono pleno de ${colour}: de cada lote al siguiente`,
        }),
        value: {
          en: "\u0394E00 of the masstone from the standard",
          de: "\u0394E00 des Volltons vom Standard",
          fr: "\u0394E00 du ton plein à l’étalon",
          es: "\u0394E00 del tono pleno al patrón",
        },
        range: NEIGHBOURS_DELTA_E00,
        column: MASSTONE_DELTA_E00,
      },
    },
    description: (numbers: string) => ({
      en: `In order of date: ${numbers}.`,
      de: `Nach Datum geordnet: ${numbers}.`,
      fr: `Par ordre de date\u202f: ${numbers}.`,
      es: `Por orden de fecha: ${numbers}.`,
    }),
    order: {
      en: "Lots in order of date",
      de: "Chargen nach Datum",
      fr: "Lots par ordre de date",
      es: "Lotes por orden de fecha",
    },
    lines: {
      mean: { en: "mean", de: "Mittelwert", fr: "moyenne", es: "media" },
      limits: {
        en: "control limits",
        de: "Eingriffsgrenzen",
        fr: "limites de contrôle",
        es: "límites de control",
      },
      limit: { en: "limit", de: "Grenze", fr: "limite", es: "límite" },
      tolerance: { en: "tolerance", de: "Toleranz", fr: "tolérance", es: "tolerancia" },
    },
    provisional: (count: number) => ({
      en: `Limits of ${count} lots are provisional: the next few will move them. Twenty make them firm.`,
      de: `Grenzen aus ${count} Chargen sind vorläufig: Die nächsten Chargen verschieben sie noch. Ab zwanzig Chargen stehen die Grenzen fest.`,
      fr: `Les limites de ${count} lots sont provisoires\u202f: les suivants les déplaceront. Il en faut vingt pour qu’elles soient fermes.`,
      es: `Los límites de ${count} lotes son provisionales: los siguientes los moverán. Con veinte son firmes.`,
    }),
    quiet: {
      en: "No lot lies beyond the limits, and none of the runs is long enough to tell.",
      de: "Keine Charge liegt jenseits der Grenzen, und keine Folge ist lang genug, um etwas auszusagen.",
      fr: "Aucun lot ne sort des limites, et aucune suite n’est assez longue pour en conclure quelque chose.",
      es: "Ningún lote sale de los límites, y ninguna serie es lo bastante larga para concluir algo.",
    },
    points: {
      en: "Which lot each mark is",
      de: "Welche Marke für welche Charge steht",
      fr: "À quel lot correspond chaque marque",
      es: "A qué lote corresponde cada marca",
    },
    columns: {
      place: { en: "Mark", de: "Marke", fr: "Marque", es: "Marca" },
      lot: { en: "Lot", de: "Charge", fr: "Lot", es: "Lote" },
      date: { en: "Date", de: "Datum", fr: "Date", es: "Fecha" },
    },
    one: {
      en: "One lot makes no chart.",
      de: "Eine Charge allein ergibt keine Regelkarte.",
      fr: "Un seul lot ne fait pas une carte de contrôle.",
      es: "Un solo lote no hace una gráfica.",
    },
    apart: {
      en: "None of these lots could be held against the standard in colour or strength, so that there is no chart.",
      de: "Keine dieser Chargen ließ sich in Farbe oder Farbstärke mit dem Standard vergleichen; daher gibt es keine Regelkarte.",
      fr: "Aucun de ces lots n’a pu être comparé à l’étalon par la couleur ou la force\u202f; il n’y a donc pas de carte de contrôle.",
      es: "Ninguno de estos lotes pudo compararse con el patrón en color o fuerza, así que no hay gráfica.",
    },
  },
  correctionSheet: {
    heading: (number: string) => ({
      en: `Correction of lot ${number}`,
      de: `Korrektur der Charge ${number}`,
      fr: `Correction du lot ${number}`,
      es: `Corrección del lote ${number}`,
    }),
    description: (number: string) => ({
      en: `What to weigh to bring lot ${number} back to its standard.`,
      de: `Was abzuwiegen ist, um Charge ${number} zu ihrem Standard zurückzubringen.`,
      fr: `Ce qu’il faut peser pour ramener le lot ${number} à son étalon.`,
      es: `Lo que hay que pesar para devolver el lote ${number} a su patrón.`,
    }),
    rows: {
      trialLot: {
        en: "Trial: of the lot",
        de: "Probe: von der Charge",
        fr: "Essai\u202f: du lot",
        es: "Ensayo: del lote",
      },
      trialAdded: (name: string) => ({
        en: `Trial: ${name}`,
        de: `Probe: ${name}`,
        fr: `Essai\u202f: ${name}`,
        es: `Ensayo: ${name}`,
      }),
      restLot: {
        en: "Then: the rest of the lot",
        de: "Dann: der Rest der Charge",
        fr: "Puis\u202f: le reste du lot",
        es: "Después: el resto del lote",
      },
      restAdded: (name: string) => ({
        en: `Then: ${name}`,
        de: `Dann: ${name}`,
        fr: `Puis\u202f: ${name}`,
        es: `Después: ${name}`,
      }),
    },
    predicted: (masstone: string, letDown: string, strength: string) => ({
      en: `Should then read: masstone \u0394E00 ${masstone}, let-down \u0394E00 ${letDown}, strength ${strength}\u00a0%.`,
      de: `Danach zu erwarten: Vollton \u0394E00 ${masstone}, Aufhellung \u0394E00 ${letDown}, Farbstärke ${strength}\u00a0%.`,
      fr: `Devrait alors donner\u202f: ton plein \u0394E00 ${masstone}, dégradé \u0394E00 ${letDown}, force ${strength}\u00a0%.`,
      es: `Debería dar entonces: tono pleno \u0394E00 ${masstone}, rebaje \u0394E00 ${letDown}, fuerza ${strength}\u00a0%.`,
    }),
    dose: (grams: string, name: string) => ({
      en: `${grams}\u00a0g of ${name} to 100\u00a0g of the lot.`,
      de: `${grams}\u00a0g ${name} auf 100\u00a0g der Charge.`,
      fr: `${grams}\u00a0g ${fr.of(name)} pour 100\u00a0g du lot.`,
      es: `${grams}\u00a0g de ${name} por 100\u00a0g del lote.`,
    }),
    ofYield: (grams: string) => ({
      en: `For the ${grams}\u00a0g that came out: of what is in tubes already, that much less.`,
      de: `Für die ${grams}\u00a0g, die herauskamen: Was davon schon in Tuben ist, wird abgezogen.`,
      fr: `Pour les ${grams}\u00a0g obtenus\u202f: en déduire ce qui est déjà en tubes.`,
      es: `Para los ${grams}\u00a0g que salieron: descuente lo que ya esté en tubos.`,
    }),
    ofWeighed: (grams: string) => ({
      en: `For the ${grams}\u00a0g that were weighed in: the record gives no yield.`,
      de: `Für die ${grams}\u00a0g, die eingewogen wurden: Die Datei nennt keine Ausbeute.`,
      fr: `Pour les ${grams}\u00a0g pesés\u202f: le relevé ne donne pas la quantité obtenue.`,
      es: `Para los ${grams}\u00a0g que se pesaron: el registro no da la cantidad obtenida.`,
    }),
    order: [
      {
        en: "Work the trial together on the slab with the knife until no streak is left.",
        de: "Die Probe auf der Reibplatte mit dem Spachtel mischen, bis keine Schlieren mehr zu sehen sind.",
        fr: "Mélanger l’essai sur le marbre au couteau jusqu’à ce qu’il ne reste plus aucune traînée.",
        es: "Mezcle el ensayo en la losa con la espátula hasta que no quede ninguna veta.",
      },
      {
        en: "Draw it down beside the standard, masstone and let-down, and read both.",
        de: "Neben dem Standard aufstreichen, Vollton und Aufhellung, und beide messen.",
        fr: "L’étirer à côté de l’étalon, ton plein et dégradé, et mesurer les deux.",
        es: "Extiéndalo junto al patrón, tono pleno y rebaje, y mida ambos.",
      },
      {
        en: "Not within tolerance: write down what was read, and leave the lot as it is.",
        de: "Außerhalb der Toleranz: aufschreiben, was gemessen wurde, und die Charge lassen, wie sie ist.",
        fr: "Hors tolérance\u202f: noter ce qui a été mesuré, et laisser le lot tel qu’il est.",
        es: "Fuera de tolerancia: anote lo medido y deje el lote como está.",
      },
      {
        en: "Within tolerance: work the rest in by thirds, and give the whole one pass more.",
        de: "Innerhalb der Toleranz: den Rest in Dritteln einarbeiten und das Ganze noch einmal durchreiben oder durchwalzen.",
        fr: "Dans la tolérance\u202f: incorporer le reste par tiers, et donner au tout une passe de plus.",
        es: "Dentro de tolerancia: incorpore el resto por tercios y dé al conjunto una pasada más.",
      },
      {
        en: "Draw down the whole, read it, and fill a new sample jar.",
        de: "Das Ganze aufstreichen, messen und ein neues Rückstellmuster füllen.",
        fr: "Étirer le tout, le mesurer, et remplir un nouvel échantillon témoin.",
        es: "Extienda el conjunto, mídalo y llene un nuevo tarro de muestra.",
      },
      {
        en: "Write it down as a lot of its own, with all that went in.",
        de: "Als eigene Charge aufschreiben, mit allem, was hineinkam.",
        fr: "Le noter comme un lot à part, avec tout ce qui y est entré.",
        es: "Anótelo como un lote aparte, con todo lo que entró.",
      },
    ],
    cautions: {
      en: "Before it is mixed",
      de: "Vor dem Mischen",
      fr: "Avant de mélanger",
      es: "Antes de mezclar",
    },
    classified: (name: string, statements: string) => ({
      en: `${name} is classified (${statements}): its label's cautions hold at the slab, and the lot wants a label of its own.`,
      de: `${name} ist eingestuft (${statements}): Die Hinweise auf dem Etikett gelten auch an der Reibplatte, und die Charge braucht ein eigenes Etikett.`,
      fr: `${name} est classé (${statements})\u202f: les mises en garde de son étiquette valent au marbre, et le lot demande sa propre étiquette.`,
      es: `${name} está clasificado (${statements}): las advertencias de su etiqueta valen en la losa, y el lote pide una etiqueta propia.`,
    }),
    fields: {
      masstone: {
        en: "Trial, masstone \u0394E00",
        de: "Probe, Vollton \u0394E00",
        fr: "Essai, ton plein \u0394E00",
        es: "Ensayo, tono pleno \u0394E00",
      },
      letDown: {
        en: "Trial, let-down \u0394E00",
        de: "Probe, Aufhellung \u0394E00",
        fr: "Essai, dégradé \u0394E00",
        es: "Ensayo, rebaje \u0394E00",
      },
      strength: {
        en: "Trial, strength %",
        de: "Probe, Farbstärke %",
        fr: "Essai, force %",
        es: "Ensayo, fuerza %",
      },
    },
  },
  batchSheet: {
    heading: (colour: string) => ({
      en: `Batch sheet: ${colour}`,
      de: `Ansatzblatt: ${colour}`,
      fr: `Fiche de fabrication\u202f: ${colour}`,
      es: `Hoja de fabricación: ${colour}`,
    }),
    description: (colour: string) => ({
      en: `What to weigh for a lot of ${colour}, to print and take to the slab.`,
      de: `Was für eine Charge ${colour} abzuwiegen ist, zum Drucken und Mitnehmen an die Reibplatte.`,
      fr: `Ce qu’il faut peser pour un lot (${colour}), à imprimer et à porter au marbre.`,
      es: `Qué pesar para un lote de ${colour}, para imprimir y llevar a la losa.`,
    }),
    back: inTheWorkshop,
    backToLot: lotNumber,
    wanted: {
      en: "What is wanted",
      de: "Was gebraucht wird",
      fr: "Ce qu’on veut",
      es: "Qué se quiere",
    },
    units: {
      tubes: (ml: string) => ({
        en: `tubes of ${ml}\u00a0ml`,
        de: `Tuben zu ${ml}\u00a0ml`,
        fr: `tubes de ${ml}\u00a0ml`,
        es: `tubos de ${ml}\u00a0ml`,
      }),
      pigmentG: { en: "g of pigment", de: "g Pigment", fr: "g de pigment", es: "g de pigmento" },
    },
    amount: {
      en: "How many, or how much",
      de: "Wie viele oder wie viel",
      fr: "Combien",
      es: "Cuántos, o cuánto",
    },
    fault: AMOUNT_ABOVE_NOUGHT,
    print: { en: "Print", de: "Drucken", fr: "Imprimer", es: "Imprimir" },
    caption: {
      en: "What to weigh",
      de: "Was abzuwiegen ist",
      fr: "Ce qu’il faut peser",
      es: "Qué pesar",
    },
    columns: {
      what: { en: "What", de: "Was", fr: "Quoi", es: "Qué" },
      planned: {
        en: "Planned,\u00a0g",
        de: "Geplant,\u00a0g",
        fr: "Prévu,\u00a0g",
        es: "Previsto,\u00a0g",
      },
      weighed: {
        en: "Weighed,\u00a0g",
        de: "Gewogen,\u00a0g",
        fr: "Pesé,\u00a0g",
        es: "Pesado,\u00a0g",
      },
    },
    rows: {
      first: {
        en: "Oil to begin with",
        de: "Öl zu Beginn",
        fr: "Huile pour commencer",
        es: "Aceite para empezar",
      },
      held: {
        en: "Oil held back",
        de: "Zurückgehaltenes Öl",
        fr: "Huile gardée en réserve",
        es: "Aceite reservado",
      },
      paint: {
        en: "Paint in all",
        de: "Farbe insgesamt",
        fr: "Peinture en tout",
        es: "Pintura en total",
      },
    },
    /** @param ml how much, as one number or two ends. */
    comesOut: (ml: string) => ({
      en: `${ml}\u00a0ml should come out.`,
      de: `${ml}\u00a0ml sollten herauskommen.`,
      fr: `Il doit en sortir ${ml}\u00a0ml.`,
      es: `Deben salir ${ml}\u00a0ml.`,
    }),
    /** @param percent the share that is lost, as one number or two ends. */
    loss: {
      learnt: (percent: string, count: number) => ({
        en: `Loss ${percent}\u00a0%, as ${count === 1 ? "one lot" : `${count} lots`} of it lost.`,
        de: `Verlust ${percent}\u00a0%, wie bei ${count === 1 ? "einer Charge" : `${count} Chargen`} davon.`,
        fr: `Perte ${percent}\u00a0%, d’après ${count === 1 ? "un lot" : `${count} lots`} de cette couleur.`,
        es: `Pérdida de ${percent}\u00a0%, como ${count === 1 ? "la de un lote suyo" : `la de ${count} lotes suyos`}.`,
      }),
      customary: (percent: string) => ({
        en: `Loss ${percent}\u00a0%, as is customary: no lot of it is on record.`,
        de: `Verlust ${percent}\u00a0%, wie üblich: Es ist keine Charge davon aufgezeichnet.`,
        fr: `Perte ${percent}\u00a0%, selon l’usage\u202f: aucun lot de cette couleur n’est consigné.`,
        es: `Pérdida de ${percent}\u00a0%, como es costumbre: no hay ningún lote suyo registrado.`,
      }),
    },
    fill: (ml: string, really: string) => ({
      en: `Reckon ${really}\u00a0ml to each tube of ${ml}\u00a0ml: that is what earlier ones came to hold.`,
      de: `Auf jede Tube zu ${ml}\u00a0ml ${really}\u00a0ml rechnen: So viel enthielten die früheren.`,
      fr: `Compter ${really}\u00a0ml par tube de ${ml}\u00a0ml\u202f: c’est ce que contenaient les précédents.`,
      es: `Cuente ${really}\u00a0ml por cada tubo de ${ml}\u00a0ml: es lo que contenían los anteriores.`,
    }),
    packed: (ml: string, mean: string, few: string, none: string, density: string) => ({
      en: `By law tubes of ${ml}\u00a0ml must hold ${mean}\u00a0g of paint or more on the mean: enough for ${ml}\u00a0ml up to a density of ${density}\u00a0g/cm\u00b3. Few of a lot (2 in 100 by German law) may hold less than ${few}\u00a0g, and none less than ${none}\u00a0g (Directive 76/211/EEC).`,
      de: `Nach dem Gesetz müssen Tuben zu ${ml}\u00a0ml im Mittel mindestens ${mean}\u00a0g Farbe enthalten: Das genügt für ${ml}\u00a0ml bis zu einer Dichte von ${density}\u00a0g/cm\u00b3. Wenige einer Charge (nach deutschem Recht 2 von 100) dürfen weniger als ${few}\u00a0g enthalten, keine weniger als ${none}\u00a0g (Richtlinie 76/211/EWG).`,
      fr: `La loi veut que les tubes de ${ml}\u00a0ml contiennent en moyenne ${mean}\u00a0g de peinture ou plus\u202f: c\u2019est assez pour ${ml}\u00a0ml jusqu\u2019à une masse volumique de ${density}\u00a0g/cm\u00b3. Peu de tubes d\u2019un lot (2 sur 100 selon le droit allemand) peuvent contenir moins de ${few}\u00a0g, et aucun moins de ${none}\u00a0g (directive 76/211/CEE).`,
      es: `Por ley los tubos de ${ml}\u00a0ml deben contener de media ${mean}\u00a0g de pintura o más: basta para ${ml}\u00a0ml hasta una densidad de ${density}\u00a0g/cm\u00b3. Pocos de un lote (2 de cada 100 según la ley alemana) pueden contener menos de ${few}\u00a0g, y ninguno menos de ${none}\u00a0g (Directiva 76/211/CEE).`,
    }),
    gross: (ml: string, mean: string, few: string, none: string, tare: string) => ({
      en: `On the balance, with an empty tube of ${ml}\u00a0ml of ${tare}\u00a0g: ${mean}\u00a0g, ${few}\u00a0g and ${none}\u00a0g.`,
      de: `Auf der Waage, mit der leeren Tube zu ${ml}\u00a0ml von ${tare}\u00a0g: ${mean}\u00a0g, ${few}\u00a0g und ${none}\u00a0g.`,
      fr: `Sur la balance, avec un tube vide de ${ml}\u00a0ml de ${tare}\u00a0g\u202f: ${mean}\u00a0g, ${few}\u00a0g et ${none}\u00a0g.`,
      es: `En la balanza, con un tubo vacío de ${ml}\u00a0ml de ${tare}\u00a0g: ${mean}\u00a0g, ${few}\u00a0g y ${none}\u00a0g.`,
    }),
    tareless: {
      en: "The empty tube with its cap comes on top: weigh one, and write it down as tareG.",
      de: "Die leere Tube mit Kappe kommt hinzu: eine wiegen und als tareG eintragen.",
      fr: "Le tube vide avec son bouchon s\u2019y ajoute\u202f: en peser un, et l\u2019inscrire comme tareG.",
      es: "El tubo vacío con su tapón va aparte: pese uno y anótelo como tareG.",
    },
    densityFirst: {
      en: "Weigh the density of the lot first: the masses go with it.",
      de: "Zuerst die Dichte der Charge wiegen: Die Massen richten sich nach ihr.",
      fr: "Peser d\u2019abord la masse volumique du lot\u202f: les masses en dépendent.",
      es: "Pese antes la densidad del lote: las masas dependen de ella.",
    },
    rubbedOut: (pigment: string, number: string, figure: string) => ({
      en: `${pigment}, delivery ${number}: rub-out ${figure}\u00a0g/100\u00a0g, by which the oil held back goes here.`,
      de: `${pigment}, Lieferung ${number}: Ölzahl ${figure}\u00a0g/100\u00a0g, nach der sich hier das zurückgehaltene Öl richtet.`,
      fr: `${pigment}, livraison ${number}\u202f: prise d\u2019huile ${figure}\u00a0g/100\u00a0g, d\u2019après laquelle est fixée ici l\u2019huile gardée en réserve.`,
      es: `${pigment}, entrega ${number}: absorción de aceite ${figure}\u00a0g/100\u00a0g, según la cual se fija aquí el aceite reservado.`,
    }),
    step: (grams: string) => ({
      en: `Weights to ${grams}\u00a0g, the step of the balance.`,
      de: `Einwaagen auf ${grams}\u00a0g genau, die Teilung der Waage.`,
      fr: `Pesées à ${grams}\u00a0g près, le pas de la balance.`,
      es: `Pesos a ${grams}\u00a0g, el paso de la balanza.`,
    }),
    order: {
      heading: {
        en: "Order of work",
        de: "Arbeitsfolge",
        fr: "Ordre du travail",
        es: "Orden del trabajo",
      },
      mulled: [
        WEIGH_PIGMENT,
        {
          en: "Oil to begin with: work it in with the knife until no dry pigment is left.",
          de: "Öl zu Beginn: mit dem Spachtel einarbeiten, bis kein trockenes Pigment mehr übrig ist.",
          fr: "Huile pour commencer\u202f: l’incorporer au couteau jusqu’à ce qu’il ne reste plus de pigment sec.",
          es: "Aceite para empezar: incorpórelo con la espátula hasta que no quede pigmento seco.",
        },
        {
          en: "Mull in portions; scrape together and turn after each pass.",
          de: "In Portionen mit dem Läufer anreiben; nach jedem Durchgang zusammenschieben und wenden.",
          fr: "Broyer à la molette par portions\u202f; rassembler et retourner la pâte après chaque passe.",
          es: "Muela con moleta por porciones; recoja la pasta y dele la vuelta después de cada pasada.",
        },
        {
          en: "Oil held back: drop by drop, only as far as the paste asks for it. Write down what is left.",
          de: "Zurückgehaltenes Öl: tropfenweise, nur so weit die Paste danach verlangt. Notieren, was übrig bleibt.",
          fr: "Huile gardée en réserve\u202f: goutte à goutte, et seulement autant que la pâte le demande. Noter ce qui reste.",
          es: "Aceite reservado: gota a gota, solo hasta donde lo pida la pasta. Anote lo que queda.",
        },
        {
          en: "Driers and mediums last, and mix them through.",
          de: "Sikkative und Malmittel zuletzt zugeben und gut durchmischen.",
          fr: "Siccatifs et médiums à la fin, bien incorporés à la pâte.",
          es: "Secantes y médiums al final, bien mezclados con la pasta.",
        },
        FILL_THE_TUBES,
      ],
      milled: [
        WEIGH_PIGMENT,
        {
          en: "Oil to begin with: mix to a stiff paste, and let it stand until it is wet through.",
          de: "Öl zu Beginn: zu einer steifen Paste mischen und stehen lassen, bis sie durchnetzt ist.",
          fr: "Huile pour commencer\u202f: mélanger en une pâte ferme, et laisser reposer jusqu’à ce qu’elle soit mouillée à cœur.",
          es: "Aceite para empezar: mezcle hasta obtener una pasta firme, y déjela reposar hasta que esté mojada por dentro.",
        },
        {
          en: "Mill with the rolls wide, then closer at each pass; read the gauge after each.",
          de: "Mit weitem Walzenspalt walzen, dann bei jedem Durchgang enger; nach jedem das Grindometer ablesen.",
          fr: "Passer à la broyeuse cylindres écartés, puis plus serrés à chaque passe\u202f; lire la jauge après chacune.",
          es: "Muela con los rodillos abiertos, luego más cerrados en cada pasada; lea la galga después de cada una.",
        },
        {
          en: "Oil held back: between passes, only as far as the paste asks for it. Write down what is left.",
          de: "Zurückgehaltenes Öl: zwischen den Durchgängen, nur so weit die Paste danach verlangt. Notieren, was übrig bleibt.",
          fr: "Huile gardée en réserve\u202f: entre les passes, et seulement autant que la pâte le demande. Noter ce qui reste.",
          es: "Aceite reservado: entre pasadas, solo hasta donde lo pida la pasta. Anote lo que queda.",
        },
        {
          en: "Driers and mediums in the last pass.",
          de: "Sikkative und Malmittel im letzten Durchgang zugeben.",
          fr: "Siccatifs et médiums à la dernière passe.",
          es: "Secantes y médiums en la última pasada.",
        },
        FILL_THE_TUBES,
      ],
    },
    cautions: {
      en: "Before the pigment is paint",
      de: "Bevor das Pigment Farbe ist",
      fr: "Avant que le pigment devienne peinture",
      es: "Antes de que el pigmento sea pintura",
    },
    defer: {
      en: "The suppliers' safety data sheets and local rules come first.",
      de: "Die Sicherheitsdatenblätter der Lieferanten und örtliche Vorschriften gehen vor.",
      fr: "Les fiches de données de sécurité des fournisseurs et les règles locales priment.",
      es: "Las fichas de datos de seguridad de los proveedores y las normas locales tienen prioridad.",
    },
    fields: {
      heading: { en: "To fill in", de: "Auszufüllen", fr: "À remplir", es: "Para rellenar" },
      lot: { en: "Lot", de: "Charge", fr: "Lot", es: "Lote" },
      name: { en: "Made by", de: "Hergestellt von", fr: "Fait par", es: "Hecho por" },
      date: { en: "Date", de: "Datum", fr: "Date", es: "Fecha" },
      passes: { en: "Passes", de: "Durchgänge", fr: "Passes", es: "Pasadas" },
      fineness: {
        en: "Fineness, \u00b5m",
        de: "Mahlfeinheit, \u00b5m",
        fr: "Finesse, \u00b5m",
        es: "Finura, \u00b5m",
      },
      left: {
        en: "Oil left over, g",
        de: "Übriges Öl, g",
        fr: "Huile restante, g",
        es: "Aceite sobrante, g",
      },
      yield: {
        en: "Yield, g",
        de: "Ausbeute, g",
        fr: "Quantité obtenue, g",
        es: "Cantidad obtenida, g",
      },
      tubes: { en: "Tubes filled", de: "Gefüllte Tuben", fr: "Tubes remplis", es: "Tubos llenos" },
      sample: {
        en: "Sample number",
        de: "Musternummer",
        fr: "Numéro du témoin",
        es: "Número de muestra",
      },
    },
    none: {
      en: "Nothing can be weighed out:",
      de: "Es lässt sich nichts abwiegen:",
      fr: "Aucune pesée ne peut être calculée\u202f:",
      es: "No puede calcularse ninguna pesada:",
    },
  },
  labels: {
    heading: {
      en: "Labels to stick",
      de: "Etiketten zum Aufkleben",
      fr: "Étiquettes à coller",
      es: "Etiquetas para pegar",
    },
    description: {
      en: "Labels of the workshop for tubes and jars.",
      de: "Etiketten der Werkstatt für Tuben und Gläser.",
      fr: "Les étiquettes de l’atelier pour tubes et pots.",
      es: "Etiquetas del taller para tubos y tarros.",
    },
    lead: {
      en: "One label of each colour in each size that it is put up in, at real size. A label is a draft for whoever signs it: the law of each market decides what it has to carry.",
      de: "Ein Etikett für jede Farbe und jede Größe, in der sie abgefüllt wird, im Maßstab 1:1. Ein Etikett ist ein Entwurf für den, der es verantwortet: Das Recht jedes Marktes bestimmt, was darauf stehen muss.",
      fr: "Une étiquette par couleur et par contenance vendue, en vraie grandeur. Une étiquette est un projet pour qui la signe\u202f: la loi de chaque marché décide de ce qu’elle doit porter.",
      es: "Una etiqueta de cada color en cada tamaño en que se envasa, a tamaño real. Una etiqueta es un borrador para quien la firma: la ley de cada mercado decide lo que tiene que llevar.",
    },
    sections: {
      print: { en: "To print", de: "Zu drucken", fr: "À imprimer", es: "Para imprimir" },
      refused: {
        en: "Without a label",
        de: "Ohne Etikett",
        fr: "Sans étiquette",
        es: "Sin etiqueta",
      },
      remarks: {
        en: "About the labels that are printed",
        de: "Zu den gedruckten Etiketten",
        fr: "Au sujet des étiquettes imprimées",
        es: "Sobre las etiquetas impresas",
      },
    },
    list: {
      en: "Colour, size, and why",
      de: "Farbe, Größe und warum",
      fr: "Couleur, contenance, et pourquoi",
      es: "Color, tamaño, y por qué",
    },
    caption: {
      en: "Labels by size",
      de: "Etiketten nach Größe",
      fr: "Étiquettes par contenance",
      es: "Etiquetas por tamaño",
    },
    columns: {
      size: { en: "Size", de: "Größe", fr: "Contenance", es: "Tamaño" },
      measures: { en: "Label, mm", de: "Etikett, mm", fr: "Étiquette, mm", es: "Etiqueta, mm" },
      colours: { en: "Colours", de: "Farben", fr: "Couleurs", es: "Colores" },
    },
    measures: (width: number, height: number) => alike(`${width} \u00d7 ${height}`),
    pdf: (pages: number) => ({
      en: `labels.pdf, ${pages} ${pages === 1 ? "page" : "pages"}, to print at full size`,
      de: `labels.pdf, ${pages} ${pages === 1 ? "Seite" : "Seiten"}, im Maßstab 1:1 zu drucken`,
      fr: `labels.pdf, ${pages} ${pages === 1 ? "page" : "pages"}, à imprimer en vraie grandeur`,
      es: `labels.pdf, ${pages} ${pages === 1 ? "página" : "páginas"}, para imprimir a tamaño real`,
    }),
    none: {
      en: "workshop.yaml gives no labels: a list of { name, kind, ml } says which there are.",
      de: "workshop.yaml gibt keine Etiketten an: Eine Liste aus { name, kind, ml } sagt, welche es gibt.",
      fr: "workshop.yaml ne donne pas d’étiquettes\u202f: une liste de { name, kind, ml } dit lesquelles il y a.",
      es: "workshop.yaml no da etiquetas: una lista de { name, kind, ml } dice cuáles hay.",
    },
    nothing: {
      en: "No colour that is put up in one of these sizes has a label yet.",
      de: "Noch hat keine Farbe, die in einer dieser Größen abgefüllt wird, ein Etikett.",
      fr: "Aucune couleur vendue dans l’une de ces contenances n’a encore d’étiquette.",
      es: "Ningún color que se envase en uno de estos tamaños tiene aún etiqueta.",
    },
    command: {
      text: {
        en: "For one lot, one label for each tube filled:",
        de: "Für eine Charge, ein Etikett für jede gefüllte Tube:",
        fr: "Pour un lot, une étiquette par tube rempli\u202f:",
        es: "Para un lote, una etiqueta por cada tubo llenado:",
      },
      code: {
        en: "npm run labels -- --lot NUMBER --filled",
        de: "npm run labels -- --lot NUMMER --filled",
        fr: "npm run labels -- --lot NUMÉRO --filled",
        es: "npm run labels -- --lot NÚMERO --filled",
      },
    },
  },
  trials: {
    heading: { en: "Trials", de: "Versuche", fr: "Essais", es: "Ensayos" },
    lead: {
      en: "Exposures and drying trials as far as they have gone.",
      de: "Belichtungen und Trockenversuche, so weit sie bisher gediehen sind.",
      fr: "Expositions et essais de séchage, au point où ils en sont.",
      es: "Exposiciones y ensayos de secado hasta donde han llegado.",
    },
    description: {
      en: "Trials of the workshop as dated series.",
      de: "Versuche der Werkstatt als datierte Reihen.",
      fr: "Les essais de l’atelier en séries datées.",
      es: "Los ensayos del taller como series fechadas.",
    },
    none: {
      en: "No trial is on record as a series. A trial is a file in trials/.",
      de: "Es ist kein Versuch als Reihe aufgezeichnet. Jeder Versuch ist eine Datei in trials/.",
      fr: "Aucun essai n’est consigné en série. Un essai est un fichier dans trials/.",
      es: "No hay ningún ensayo registrado como serie. Un ensayo es un archivo en trials/.",
    },
    due: {
      en: "Due next",
      de: "Als Nächstes fällig",
      fr: "Prochaines échéances",
      es: "Próximos vencimientos",
    },
    dueCaption: {
      en: "When to look again",
      de: "Wann wieder nachzusehen ist",
      fr: "Quand regarder de nouveau",
      es: "Cuándo volver a mirar",
    },
    dueColumns: {
      what: { en: "Trial", de: "Versuch", fr: "Essai", es: "Ensayo" },
      date: { en: "Look on", de: "Nachsehen am", fr: "Regarder le", es: "Mirar el" },
    },
    ended: { en: "Ended", de: "Beendet", fr: "Terminé", es: "Terminado" },
    exposure: (colour: string, form: string) => ({
      en: `${colour}, ${form}, exposed`,
      de: `${colour}, ${form === "masstone" ? "Vollton" : form === "tint" ? "Aufhellung" : form}, belichtet`,
      fr: `${colour}, ${wordOf(FORMS, form, "fr")}, exposé`,
      es: `${colour}, ${wordOf(FORMS, form, "es")}, expuesto`,
    }),
    drying: (colour: string) => ({
      en: `${colour}, drying`,
      de: `${colour}, Trocknung`,
      fr: `${colour}, séchage`,
      es: `${colour}, secado`,
    }),
    soFar: (category: string, deltaEab: string, days: number) => ({
      en: `Category ${category} so far: \u0394E*ab ${deltaEab} after ${days} ${days === 1 ? "day" : "days"}. It says nothing of what is to come.`,
      de: `Bisher Kategorie\u00a0${category}: \u0394E*ab ${deltaEab} nach ${days} ${days === 1 ? "Tag" : "Tagen"}. Über den weiteren Verlauf sagt das nichts.`,
      fr: `Catégorie\u00a0${category} jusqu’ici\u202f: \u0394E*ab ${deltaEab} après ${days} ${days === 1 ? "jour" : "jours"}. Cela ne dit rien de la suite.`,
      es: `Categoría\u00a0${category} hasta ahora: \u0394E*ab ${deltaEab} ${days === 1 ? "al cabo de 1 día" : `a los ${days} días`}. No dice nada de lo que vendrá.`,
    }),
    over: (category: string, deltaEab: string, days: number) => ({
      en: `Category ${category}: \u0394E*ab ${deltaEab} after ${days} ${days === 1 ? "day" : "days"}.`,
      de: `Kategorie\u00a0${category}: \u0394E*ab ${deltaEab} nach ${days} ${days === 1 ? "Tag" : "Tagen"}.`,
      fr: `Catégorie\u00a0${category}\u202f: \u0394E*ab ${deltaEab} après ${days} ${days === 1 ? "jour" : "jours"}.`,
      es: `Categoría\u00a0${category}: \u0394E*ab ${deltaEab} ${days === 1 ? "al cabo de 1 día" : `a los ${days} días`}.`,
    }),
    unread: {
      en: "Not read yet.",
      de: "Noch nicht gemessen.",
      fr: "Pas encore mesuré.",
      es: "Aún no medido.",
    },
    touch: (from: number, to: number) => ({
      en: `Dry to the touch between day ${from} and day ${to}.`,
      de: `Grifftrocken zwischen Tag ${from} und Tag ${to}.`,
      fr: `Sec au toucher entre le jour ${from} et le jour ${to}.`,
      es: `Seco al tacto entre el día ${from} y el día ${to}.`,
    }),
    through: (from: number, to: number) => ({
      en: `Dry through between day ${from} and day ${to}.`,
      de: `Durchgetrocknet zwischen Tag ${from} und Tag ${to}.`,
      fr: `Sec à cœur entre le jour ${from} et le jour ${to}.`,
      es: `Seco en profundidad entre el día ${from} y el día ${to}.`,
    }),
    notYet: {
      en: "Not dry to the touch yet.",
      de: "Noch nicht grifftrocken.",
      fr: "Pas encore sec au toucher.",
      es: "Aún no seco al tacto.",
    },
    never: {
      en: "Not dry to the touch when it ended.",
      de: "Bei Versuchsende nicht grifftrocken.",
      fr: "Pas sec au toucher à la fin de l’essai.",
      es: "No seco al tacto al terminar.",
    },
    day: {
      en: "Days from the start",
      de: "Tage seit Beginn",
      fr: "Jours depuis le début",
      es: "Días desde el comienzo",
    },
    change: {
      en: "\u0394E*ab from the half kept dark",
      de: "\u0394E*ab zur dunkel gehaltenen Hälfte",
      fr: "\u0394E*ab par rapport à la moitié gardée à l’obscurité",
      es: "\u0394E*ab respecto a la mitad guardada a oscuras",
    },
    state: {
      en: "Wet 0, tacky 1, dry to the touch 2, through 3",
      de: "Nass 0, klebrig 1, grifftrocken 2, durchgetrocknet 3",
      fr: "Humide 0, collant 1, sec au toucher 2, à cœur 3",
      es: "Húmedo 0, pegajoso 1, seco al tacto 2, en profundidad 3",
    },
    /** What a finger finds. */
    touches: {
      wet: { en: "wet", de: "nass", fr: "humide", es: "húmedo" },
      tacky: { en: "tacky", de: "klebrig", fr: "collant", es: "pegajoso" },
      "touch dry": {
        en: "touch dry",
        de: "grifftrocken",
        fr: "sec au toucher",
        es: "seco al tacto",
      },
      "through dry": {
        en: "through dry",
        de: "durchgetrocknet",
        fr: "sec à cœur",
        es: "seco en profundidad",
      },
    },
    limit: (category: string) => ({
      en: `end of ${category}`,
      de: `Ende von ${category}`,
      fr: `fin de ${category}`,
      es: `fin de ${category}`,
    }),
    next: (date: string) => ({
      en: `Look again on ${date}.`,
      de: `Wieder nachsehen am ${date}.`,
      fr: `Regarder de nouveau le ${date}.`,
      es: `Volver a mirar el ${date}.`,
    }),
    table: { en: "Each reading", de: "Jede Messung", fr: "Chaque mesure", es: "Cada medición" },
    columns: {
      date: { en: "Date", de: "Datum", fr: "Date", es: "Fecha" },
      day: { en: "Day", de: "Tag", fr: "Jour", es: "Día" },
      found: { en: "Found", de: "Gefunden", fr: "Trouvé", es: "Hallado" },
    },
  },
} satisfies Texts;

function itsLabels(number: string, howMany: string) {
  return {
    text: {
      en: "Its labels:",
      de: "Ihre Etiketten:",
      fr: "Ses étiquettes\u202f:",
      es: "Sus etiquetas:",
    },
    code: alike(`npm run labels -- --lot ${number} ${howMany}`),
  };
}
