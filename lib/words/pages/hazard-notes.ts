import { fr } from "../phrases-in-each.ts";
import { NAMES_OF_LANGUAGES } from "../language-names.ts";
import { alike } from "../texts.ts";
import type { InEach } from "../in-each.ts";
import type { Language } from "../../quantities/languages.ts";

/** A note, without a full stop, and what holds until somebody has seen to it. */
export interface HazardNote {
  readonly message: string;
  readonly hint: string;
}
type Note = Readonly<Record<Language, HazardNote>>;

/** What labels still want of a workshop's records: told by the command and on the workshop's own pages. */
export const HAZARD_NOTES = {
  supplierIncomplete: (key: "address" | "telephone"): Note => ({
    en: {
      message: `A label has to give its supplier's ${key}, and workshop.yaml has none`,
      hint: "the label text leaves it out until then",
    },
    de: {
      message: `Ein Etikett muss ${key === "address" ? "die Anschrift" : "die Telefonnummer"} seines Lieferanten nennen, und in workshop.yaml steht keine (${key})`,
      hint: "bis dahin fehlt sie im Etikettentext",
    },
    fr: {
      message: `Une étiquette doit donner ${key === "address" ? "l’adresse" : "le téléphone"} de son fournisseur, et workshop.yaml n’en a pas (${key})`,
      hint: "le texte d’étiquette s’en passe jusque-là",
    },
    es: {
      message: `Una etiqueta debe dar ${key === "address" ? "la dirección" : "el teléfono"} de su proveedor, y workshop.yaml no ${key === "address" ? "la" : "lo"} tiene (${key})`,
      hint: "hasta entonces falta en el texto de la etiqueta",
    },
  }),
  tradeName: (name: string): Note => ({
    en: {
      message: `A label would name ${name}, a trade name, where the substance itself is wanted: give its CAS number, or its components`,
      hint: "a trade name tells nobody what is in it",
    },
    de: {
      message: `Ein Etikett würde ${name} nennen, einen Handelsnamen, wo der Stoff selbst verlangt ist: casNumber oder components angeben`,
      hint: "ein Handelsname sagt niemandem, was darin ist",
    },
    fr: {
      message: `Une étiquette nommerait ${name}, un nom commercial, là où c’est la substance qui est demandée\u202f: donner casNumber, ou components`,
      hint: "un nom commercial ne dit à personne ce qu’il contient",
    },
    es: {
      message: `Una etiqueta nombraría ${name}, un nombre comercial, donde se pide la propia sustancia: dar casNumber, o components`,
      hint: "un nombre comercial no dice a nadie lo que contiene",
    },
  }),
  earthNotTold: (name: string): Note => ({
    en: {
      message: `${name} may be a sienna, with about 1 % of manganese dioxide, or an umber, with 5 to 20 %: give manganeseDioxideFraction, or earth`,
      hint: "its hazard is that of an umber until then",
    },
    de: {
      message: `${name} kann eine Siena sein, mit etwa 1\u00a0% Mangandioxid, oder eine Umbra, mit 5 bis 20\u00a0%: manganeseDioxideFraction oder earth angeben`,
      hint: "bis dahin gilt die Gefahr einer Umbra",
    },
    fr: {
      message: `${name} peut être une terre de Sienne, à environ 1\u202f% de dioxyde de manganèse, ou une terre d’ombre, de 5 à 20\u202f%\u202f: donner manganeseDioxideFraction, ou earth`,
      hint: "jusque-là, son danger est celui d’une terre d’ombre",
    },
    es: {
      message: `${name} puede ser una tierra de Siena, con cerca del 1\u00a0% de dióxido de manganeso, o una tierra de sombra, con un 5 a 20\u00a0%: dar manganeseDioxideFraction, o earth`,
      hint: "hasta entonces su peligro es el de una tierra de sombra",
    },
  }),
  noData: (whose: string): Note => ({
    en: {
      message: `The record is silent about the hazards of ${whose}: give hazards, or an empty list where the supplier states none`,
      hint: "treated as hazardous until then",
    },
    de: {
      message: `Die Aufzeichnung schweigt über die Gefahren (${whose}): hazards angeben oder eine leere Liste, wo der Lieferant keine nennt`,
      hint: "bis dahin wie ein gefährlicher Stoff behandelt",
    },
    fr: {
      message: `Le relevé ne dit rien des dangers ${fr.of(whose)}\u202f: donner hazards, ou une liste vide si le fournisseur n’en déclare aucun`,
      hint: "traité comme dangereux jusque-là",
    },
    es: {
      message: `El registro no dice nada de los peligros de ${whose}: dar hazards, o una lista vacía si el proveedor no declara ninguno`,
      hint: "hasta entonces se trata como peligroso",
    },
  }),
  shortOfTheWhole: (total: number): Note => ({
    en: {
      message: `The components add up to ${total}, not to 1`,
      hint: "what is left is treated as hazardous",
    },
    de: {
      message: `Die Bestandteile ergeben zusammen ${withComma(total)} und nicht 1`,
      hint: "was übrig bleibt, wird wie ein gefährlicher Stoff behandelt",
    },
    fr: {
      message: `La somme des composants est ${withComma(total)}, et non 1`,
      hint: "le reste est traité comme dangereux",
    },
    es: {
      message: `Los componentes suman ${withComma(total)}, y no 1`,
      hint: "lo que queda se trata como peligroso",
    },
  }),
  /** A substance, with the key of the record that would name it. */
  namedIn: (name: string, language: Language, record: string) => ({
    en: `${name} (translations.${language}.name of ${record})`,
    de: `${name} (translations.${language}.name von ${record})`,
    fr: `${name} (translations.${language}.name de ${record})`,
    es: `${name} (translations.${language}.name de ${record})`,
  }),
  nameMissing: (language: Language, names: string): Note => ({
    en: {
      message: `No ${inWords(language).en} name is known here for ${names}: a label has to name its substances in the language of its market`,
      hint: "printed as the record names it until the record gives that name; of a component by its CAS number alone",
    },
    de: {
      message: `Kein Name auf ${inWords(language).de} ist hier bekannt für ${names}: Ein Etikett muss seine Stoffe in der Sprache seines Marktes nennen`,
      hint: "gedruckt, wie die Aufzeichnung ihn nennt, bis sie diesen Namen angibt; bei einem Bestandteil geht es nur über seine CAS-Nummer",
    },
    fr: {
      message: `Aucun nom en ${inWords(language).fr} n’est connu ici pour ${names}\u202f: une étiquette doit nommer ses substances dans la langue de son marché`,
      hint: "imprimé comme le relevé le nomme jusqu’à ce qu’il donne ce nom\u202f; pour un composant, par son seul numéro CAS",
    },
    es: {
      message: `Aquí no se conoce ningún nombre en ${inWords(language).es} para ${names}: una etiqueta debe nombrar sus sustancias en la lengua de su mercado`,
      hint: "se imprime como lo nombra el registro hasta que este dé ese nombre; de un componente, solo por su número CAS",
    },
  }),
  nameToReview: (language: Language, names: readonly string[]): Note => ({
    en: {
      message: `The ${inWords(language).en} ${names.length === 1 ? "name" : "names"} of ${names.join("; ")} ${names.length === 1 ? "is" : "are"} from memory: the names of the EC inventory come first`,
      hint: "review them before they go on a label",
    },
    de: {
      message: `${names.length === 1 ? "Der Name" : "Die Namen"} auf ${inWords(language).de} (${names.join("; ")}) ${names.length === 1 ? "stammt" : "stammen"} aus dem Gedächtnis: Die Namen des EG-Verzeichnisses gehen vor`,
      hint: "vor dem Druck auf ein Etikett prüfen",
    },
    fr: {
      message: `${names.length === 1 ? "Le nom" : "Les noms"} en ${inWords(language).fr} de ${names.join("\u202f; ")} ${names.length === 1 ? "est donné" : "sont donnés"} de mémoire\u202f: ceux de l’inventaire CE priment`,
      hint: "à vérifier avant d’aller sur une étiquette",
    },
    es: {
      message: `${names.length === 1 ? "El nombre" : "Los nombres"} en ${inWords(language).es} de ${names.join("; ")} ${names.length === 1 ? "es" : "son"} de memoria: los del inventario CE tienen prioridad`,
      hint: "revisar antes de que vaya a una etiqueta",
    },
  }),
  textMissing: (language: Language, codes: readonly string[]): Note => ({
    en: {
      message: `No ${inWords(language).en} text is known for ${quoted(codes, "“", "”")}: the wording is that of the Official Journal`,
      hint: "printed in English until then",
    },
    de: {
      message: `Kein Text auf ${inWords(language).de} ist bekannt für ${quoted(codes, "„", "“")}: Es gilt der Wortlaut des Amtsblatts`,
      hint: "bis dahin auf Englisch gedruckt",
    },
    fr: {
      message: `Aucun texte en ${inWords(language).fr} n’est connu pour ${quoted(codes, "«\u202f", "\u202f»")}\u202f: le libellé est celui du Journal officiel`,
      hint: "imprimé en anglais jusque-là",
    },
    es: {
      message: `No se conoce ningún texto en ${inWords(language).es} para ${quoted(codes, "«", "»")}: la redacción es la del Diario Oficial`,
      hint: "hasta entonces se imprime en inglés",
    },
  }),
  textToReview: (language: Language, codes: readonly string[]): Note => ({
    en: {
      message: `The ${inWords(language).en} ${codes.length === 1 ? "text" : "texts"} of ${quoted(codes, "“", "”")} ${codes.length === 1 ? "is" : "are"} from memory or ours: where the Official Journal has a wording, that comes first`,
      hint: "review them before they go on a label",
    },
    de: {
      message: `${codes.length === 1 ? "Der Text" : "Die Texte"} auf ${inWords(language).de} zu ${quoted(codes, "„", "“")} ${codes.length === 1 ? "stammt" : "stammen"} aus dem Gedächtnis oder von uns: Hat das Amtsblatt einen Wortlaut, so geht dieser vor`,
      hint: "vor dem Druck auf ein Etikett prüfen",
    },
    fr: {
      message: `${codes.length === 1 ? "Le texte" : "Les textes"} en ${inWords(language).fr} de ${quoted(codes, "«\u202f", "\u202f»")} ${codes.length === 1 ? "est donné" : "sont donnés"} de mémoire ou par nous\u202f: là où le Journal officiel a un libellé, celui-ci prime`,
      hint: "à vérifier avant d’aller sur une étiquette",
    },
    es: {
      message: `${codes.length === 1 ? "El texto" : "Los textos"} en ${inWords(language).es} de ${quoted(codes, "«", "»")} ${codes.length === 1 ? "es de memoria o nuestro" : "son de memoria o nuestros"}: donde el Diario Oficial tenga una redacción, esta tiene prioridad`,
      hint: "revisar antes de que vaya a una etiqueta",
    },
  }),
  textCompleted: (language: Language, codes: readonly string[]): Note => ({
    en: {
      message: `The ${inWords(language).en} ${codes.length === 1 ? "text" : "texts"} of ${quoted(codes, "“", "”")} ${codes.length === 1 ? "is" : "are"} official, with a gap that it leaves to the supplier filled here`,
      hint: "see that it says what holds for you",
    },
    de: {
      message: `${codes.length === 1 ? "Der Text" : "Die Texte"} auf ${inWords(language).de} zu ${quoted(codes, "„", "“")} ${codes.length === 1 ? "ist" : "sind"} amtlich; eine Lücke, die dem Lieferanten überlassen ist, ist hier ausgefüllt`,
      hint: "nachsehen, ob dasteht, was für Sie gilt",
    },
    fr: {
      message: `${codes.length === 1 ? "Le texte" : "Les textes"} en ${inWords(language).fr} de ${quoted(codes, "«\u202f", "\u202f»")} ${codes.length === 1 ? "est officiel" : "sont officiels"}, un blanc laissé au fournisseur y étant rempli ici`,
      hint: "vérifier qu’il dit ce qui vaut pour vous",
    },
    es: {
      message: `${codes.length === 1 ? "El texto" : "Los textos"} en ${inWords(language).es} de ${quoted(codes, "«", "»")} ${codes.length === 1 ? "es oficial" : "son oficiales"}, con un hueco que se deja al proveedor rellenado aquí`,
      hint: "comprobar que dice lo que vale para usted",
    },
  }),
};

/** What a language is called in each language. */
function inWords(language: Language): InEach {
  return NAMES_OF_LANGUAGES[language] ?? alike(language);
}

/** Codes as they are, lines that have none between quotation marks: "P501, “do not sand dry”". */
function quoted(texts: readonly string[], opening: string, closing: string): string {
  return texts.map((text) => (/\d/.test(text) ? text : `${opening}${text}${closing}`)).join(", ");
}

function withComma(total: number): string {
  return String(total).replace(".", ",");
}
