import { moneyFormat } from "../money-format.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import { NAMES_OF_LANGUAGES } from "../language-names.ts";
import { alike, type Texts } from "../texts.ts";
import type { InEach } from "../in-each.ts";
import { dryPigment, PRECAUTIONS, TREAT_AS_HAZARDOUS } from "../shared-rows.ts";

/** What a sheet says of handling that no ruling says. */
export const HANDLING = {
  stated: {
    en: "As the maker states them",
    de: "Nach Angabe des Herstellers",
    fr: "Selon la déclaration du fabricant",
    es: "Según declara el fabricante",
  },
  workedOut: {
    en: "Worked out from suppliers' data",
    de: "Errechnet aus den Daten der Lieferanten",
    fr: "Calculé d’après les données des fournisseurs",
    es: "Calculado a partir de los datos de los proveedores",
  },
  notClassified: {
    en: "Not yet classified",
    de: "Noch nicht eingestuft",
    fr: "Pas encore classé",
    es: "Aún sin clasificar",
  },
  precautions: PRECAUTIONS,
  markets: {
    en: "Where it may be sold",
    de: "Wo sie verkauft werden darf",
    fr: "Où la vente est permise",
    es: "Dónde puede venderse",
  },
  nothing: {
    en: "Keep dry pigment and sanding dust out of the air and out of the lungs, and paint out of mouths. Our suppliers' papers ask for no warning on the label; that does not mean it can do no harm.",
    de: "Trockenes Pigment und Schleifstaub aus der Luft und aus der Lunge halten, Farbe aus dem Mund. Die Unterlagen unserer Lieferanten verlangen keinen Warnhinweis auf dem Etikett; das heißt nicht, dass die Farbe nicht schaden kann.",
    fr: "Tenir le pigment sec et la poussière de ponçage hors de l’air et des poumons, et la peinture hors de la bouche. Les documents de nos fournisseurs ne demandent aucun avertissement sur l’étiquette\u202f; cela ne veut pas dire que le produit ne peut pas nuire.",
    es: "Mantener el pigmento seco y el polvo de lijado fuera del aire y de los pulmones, y la pintura fuera de la boca. Los documentos de nuestros proveedores no piden ninguna advertencia en la etiqueta; eso no quiere decir que no pueda hacer daño.",
  },
  nothingStated: {
    en: "Keep dry pigment and sanding dust out of the air and out of the lungs, and paint out of mouths. The maker's label states no hazard; that does not mean it can do no harm.",
    de: "Trockenes Pigment und Schleifstaub aus der Luft und aus der Lunge halten, Farbe aus dem Mund. Das Etikett des Herstellers gibt keine Gefahr an; das heißt nicht, dass die Farbe nicht schaden kann.",
    fr: "Tenir le pigment sec et la poussière de ponçage hors de l’air et des poumons, et la peinture hors de la bouche. L’étiquette du fabricant ne déclare aucun danger\u202f; cela ne veut pas dire que le produit ne peut pas nuire.",
    es: "Mantener el pigmento seco y el polvo de lijado fuera del aire y de los pulmones, y la pintura fuera de la boca. La etiqueta del fabricante no declara ningún peligro; eso no quiere decir que no pueda hacer daño.",
  },
  unknownInShort: TREAT_AS_HAZARDOUS,
  basisStated: (frame: string, date: string) => ({
    en: `As the maker states them, ${frame}, ${date}.`,
    de: `Nach Angabe des Herstellers, ${frame}, ${date}.`,
    fr: `Selon la déclaration du fabricant, ${frame}, ${date}.`,
    es: `Según declara el fabricante, ${frame}, ${date}.`,
  }),
  basisUnknown: {
    en: "Not yet classified: no label can be worked out before that paper is here.",
    de: "Noch nicht eingestuft: Solange das Sicherheitsdatenblatt fehlt, lässt sich kein Etikett errechnen.",
    fr: "Pas encore classé\u202f: sans ce document, aucune étiquette ne peut être calculée.",
    es: "Aún sin clasificar: sin ese documento no puede calcularse ninguna etiqueta.",
  },
  basisWorkedOut: (frame: string, edition: string) => ({
    en: `Worked out from the suppliers' data by ${frame} (${edition}). The label on the package comes first.`,
    de: `Errechnet aus den Daten der Lieferanten nach ${frame} (${edition}). Das Etikett auf der Packung geht vor.`,
    fr: `Calculé d’après les données des fournisseurs selon ${frame} (${edition}). L’étiquette de l’emballage prévaut.`,
    es: `Calculado a partir de los datos de los proveedores según ${frame} (${edition}). Prevalece la etiqueta del envase.`,
  }),
  classification: (classes: readonly string[]) => ({
    en: `Classified as ${en.listed(classes)}.`,
    de: `Eingestuft als ${de.listed(classes)}.`,
    fr: `Classement\u202f: ${fr.listed(classes)}.`,
    es: `Clasificado como ${es.listed(classes)}.`,
  }),
  dryPigment: dryPigment,
  dryNothing: {
    en: "Keep its dust out of the air and out of the lungs. The supplier's paper classifies nothing; that does not mean it can do no harm.",
    de: "Den Staub aus der Luft und aus der Lunge halten. Nach den Unterlagen des Lieferanten ist nichts eingestuft; das heißt nicht, dass das Pigment nicht schaden kann.",
    fr: "Tenir sa poussière hors de l’air et des poumons. Le document du fournisseur ne donne aucun classement\u202f; cela ne veut pas dire que le produit ne peut pas nuire.",
    es: "Mantener su polvo fuera del aire y de los pulmones. El documento del proveedor no da ninguna clasificación; eso no quiere decir que no pueda hacer daño.",
  },

  /** @param isGrave whether its dust calls for more than the mask that does for any pigment. */
  general: (isGrave: boolean) => ({
    en: `As with every colour: treat the dry pigment as very dusty. Catch the dust with an extractor first, and wear a mask as well: ${isGrave ? "with this one FFP3, P3 or P100" : "FFP2 at least"}. No food beside it, no brush in the mouth, not for a child's use. Do not sand it dry; wipe up wet; pour nothing down the drain. Rags soaked in oil can catch fire by themselves: spread them singly outdoors, or keep them in water in a closed metal can.`,
    de: `Wie bei jeder Farbe: Das trockene Pigment als stark staubend behandeln. Den Staub zuerst absaugen und zusätzlich eine Maske tragen: ${isGrave ? "bei diesem Pigment FFP3, P3 oder P100" : "mindestens FFP2"}. Kein Essen daneben, kein Pinsel im Mund, nicht für den Gebrauch durch Kinder. Nicht trocken schleifen; nass aufwischen; nichts in den Ausguss gießen. Mit Öl getränkte Lappen können sich selbst entzünden: einzeln im Freien ausbreiten oder in Wasser in einer geschlossenen Metalldose aufbewahren.`,
    fr: `Comme pour toute couleur\u202f: traiter le pigment sec comme s’il dégageait beaucoup de poussière. Aspirer d’abord la poussière, et porter en plus un masque\u202f: ${isGrave ? "pour celui-ci FFP3, P3 ou P100" : "FFP2 au moins"}. Pas de nourriture à côté, pas de pinceau dans la bouche, pas d’usage par un enfant. Ne pas poncer à sec\u202f; nettoyer à l’humide\u202f; ne rien verser à l’égout. Les chiffons imbibés d’huile peuvent prendre feu d’eux-mêmes\u202f: les étaler un par un dehors, ou les garder dans l’eau dans un bidon métallique fermé.`,
    es: `Como con todo color: tratar el pigmento seco como si levantara mucho polvo. Captar primero el polvo con un extractor y llevar además mascarilla: ${isGrave ? "con este, FFP3, P3 o P100" : "FFP2 como mínimo"}. Ni comida al lado, ni pincel en la boca, ni uso por niños. No lijarlo en seco; limpiar en húmedo; no verter nada por el desagüe. Los trapos empapados de aceite pueden prenderse solos: extenderlos uno a uno al aire libre, o guardarlos en agua en una lata cerrada.`,
  }),
  generalLink: {
    en: "What holds for every colour, and why",
    de: "Was für jede Farbe gilt und warum",
    fr: "Ce qui vaut pour toute couleur, et pourquoi",
    es: "Lo que vale para todo color, y por qué",
  },
  addition: (name: string) => ({
    en: `${name}, before it is in the paint`,
    de: `${name}, bevor es in der Farbe ist`,
    fr: `${name}, avant d’être dans la peinture`,
    es: `${name}, antes de estar en la pintura`,
  }),
  why: {
    en: "Why each statement stands here",
    de: "Warum jeder Hinweis hier steht",
    fr: "Pourquoi chaque mention est là",
    es: "Por qué está aquí cada indicación",
  },
  leftOut: {
    en: "What suppliers state and this label does not carry",
    de: "Was Lieferanten angeben und auf diesem Etikett nicht steht",
    fr: "Ce que les fournisseurs déclarent et que cette étiquette ne porte pas",
    es: "Lo que declaran los proveedores y esta etiqueta no lleva",
  },
  languages: (languages: readonly string[]) => ({
    en: `The same in ${en.listed(languages.map((language) => NAMES_OF_LANGUAGES[language]?.en ?? language))}`,
    de: `Dasselbe auf ${de.listed(languages.map((language) => NAMES_OF_LANGUAGES[language]?.de ?? language))}`,
    fr: `Les mêmes en ${fr.listed(languages.map((language) => NAMES_OF_LANGUAGES[language]?.fr ?? language))}`,
    es: `Lo mismo en ${es.listed(languages.map((language) => NAMES_OF_LANGUAGES[language]?.es ?? language))}`,
  }),
  languageNames: alike<Readonly<Record<string, string>>>({
    en: "English",
    fr: "Fran\u00e7ais",
    de: "Deutsch",
    es: "Espa\u00f1ol",
  }),
  languageNote: {
    en: "The official wording is the Official Journal's; these texts were read in an extraction from it, and what an official text leaves open is completed here. What is marked is to be reviewed before it goes on a label.",
    de: "Amtlich ist der Wortlaut im Amtsblatt. Diese Texte sind nach einem Auszug daraus wiedergegeben; was ein amtlicher Text offenlässt, ist hier ergänzt. Was markiert ist, muss geprüft werden, bevor es auf ein Etikett kommt.",
    fr: "Le texte officiel est celui du Journal officiel\u202f; ces textes ont été lus dans un extrait qui en est tiré, et ce qu’un texte officiel laisse ouvert est complété ici. Ce qui est marqué est à vérifier avant d’aller sur une étiquette.",
    es: "El texto oficial es el del Diario Oficial; estos textos se leyeron en un extracto de él, y lo que un texto oficial deja abierto se completa aquí. Lo marcado debe revisarse antes de ir a una etiqueta.",
  },

  /** In the language whose text is missing, for whoever reads its block. */
  toReview: alike<Readonly<Record<string, string>>>({
    fr: "traduction à vérifier",
    de: "Übersetzung zu prüfen",
    es: "traducción por revisar",
  }),
  toReviewPlain: {
    en: "translation to be reviewed",
    de: "Übersetzung zu prüfen",
    fr: "traduction à vérifier",
    es: "traducción por revisar",
  },
  checks: {
    en: "Where the maker's label and our own working differ",
    de: "Wo das Etikett des Herstellers und unsere Berechnung voneinander abweichen",
    fr: "En quoi l’étiquette du fabricant et notre calcul diffèrent",
    es: "En qué difieren la etiqueta del fabricante y nuestro cálculo",
  },
  ufi: (ufi: string) => ({
    en: `Unique formula identifier (UFI): ${ufi}`,
    de: `Eindeutiger Rezepturidentifikator (UFI): ${ufi}`,
    fr: `Identifiant unique de formulation (UFI)\u202f: ${ufi}`,
    es: `Identificador único de fórmula (UFI): ${ufi}`,
  }),
  review: (by: string, date: string) => ({
    en: `Reviewed by ${by}, ${date}.`,
    de: `Geprüft von ${by}, ${date}.`,
    fr: `Revu par ${by}, ${date}.`,
    es: `Revisado por ${by}, ${date}.`,
  }),
  dataSheet: (date: string | undefined) => ({
    en: date === undefined ? "Safety data sheet" : `Safety data sheet of ${date}`,
    de: date === undefined ? "Sicherheitsdatenblatt" : `Sicherheitsdatenblatt vom ${date}`,
    fr:
      date === undefined
        ? "Fiche de données de sécurité"
        : `Fiche de données de sécurité du ${date}`,
    es:
      date === undefined
        ? "Ficha de datos de seguridad"
        : `Ficha de datos de seguridad del ${date}`,
  }),
  poisonCentre: (line: string) => ({
    en: `If it is swallowed or breathed in: ${line}${/[.!?]$/.test(line) ? "" : "."}`,
    de: `Bei Verschlucken oder Einatmen: ${line}${/[.!?]$/.test(line) ? "" : "."}`,
    fr: `En cas d’ingestion ou d’inhalation\u202f: ${line}${/[.!?]$/.test(line) ? "" : "."}`,
    es: `Si se traga o se inhala: ${line}${/[.!?]$/.test(line) ? "" : "."}`,
  }),
  noPoisonCentre: {
    en: "If it is swallowed or breathed in, ask the poison centre of your country or a doctor.",
    de: "Bei Verschlucken oder Einatmen das Giftinformationszentrum Ihres Landes anrufen oder einen Arzt fragen.",
    fr: "En cas d’ingestion ou d’inhalation, appeler le centre antipoison de votre pays ou un médecin.",
    es: "Si se traga o se inhala, consulte al centro de toxicología de su país o a un médico.",
  },
  marketNames: {
    EU: {
      en: "European Union",
      de: "Europäische Union",
      fr: "Union européenne",
      es: "Unión Europea",
    },
    GB: { en: "Great Britain", de: "Großbritannien", fr: "Grande-Bretagne", es: "Gran Bretaña" },
    NI: {
      en: "Northern Ireland",
      de: "Nordirland",
      fr: "Irlande du Nord",
      es: "Irlanda del Norte",
    },
    US: { en: "United States", de: "Vereinigte Staaten", fr: "États-Unis", es: "Estados Unidos" },
    other: { en: "Elsewhere", de: "Anderswo", fr: "Ailleurs", es: "En otros lugares" },
  } as Readonly<Record<string, InEach>>,
  offer: {
    price: (amount: number, currency: string) => ({
      en: moneyFormat("en-GB", currency).format(amount),
      de: moneyFormat("de-DE", currency).format(amount),
      fr: moneyFormat("fr-FR", currency).format(amount),
      es: moneyFormat("es-ES", currency).format(amount),
    }),
    markets: {
      EU: {
        en: "the European Union",
        de: "Europäische Union",
        fr: "l’Union européenne",
        es: "la Unión Europea",
      },
      GB: {
        en: "Great Britain",
        de: "Großbritannien",
        fr: "la Grande-Bretagne",
        es: "Gran Bretaña",
      },
      NI: {
        en: "Northern Ireland",
        de: "Nordirland",
        fr: "l’Irlande du Nord",
        es: "Irlanda del Norte",
      },
      US: {
        en: "the United States",
        de: "Vereinigte Staaten",
        fr: "les États-Unis",
        es: "los Estados Unidos",
      },
      other: {
        en: "other countries",
        de: "andere Länder",
        fr: "d’autres pays",
        es: "otros países",
      },
    } as Readonly<Record<string, InEach>>,
  },
} satisfies Texts;
