import { quoted } from "./quoted.ts";
import type { Texts } from "../texts.ts";
import { HOW_WE_KNOW, LABEL_TEXT } from "../shared-rows.ts";

/** What stands around and beside the text of every page. */
export const EVERY_PAGE = {
  nav: {
    colours: { en: "Colours", de: "Farben", fr: "Couleurs", es: "Colores" },
    answers: { en: "Questions", de: "Fragen", fr: "Questions", es: "Preguntas" },
    compare: { en: "Compare", de: "Vergleichen", fr: "Comparer", es: "Comparar" },
    mix: { en: "Mix", de: "Mischen", fr: "Mélanger", es: "Mezclar" },
    pigments: { en: "Pigments", de: "Pigmente", fr: "Pigments", es: "Pigmentos" },
    methods: HOW_WE_KNOW,
    label: { en: "Labels", de: "Etiketten", fr: "Étiquettes", es: "Etiquetas" },
    sources: { en: "Sources", de: "Quellen", fr: "Sources", es: "Fuentes" },
    about: { en: "About", de: "Über uns", fr: "À propos", es: "Acerca de" },
  },
  search: {
    text: {
      en: "Find a colour",
      de: "Eine Farbe finden",
      fr: "Trouver une couleur",
      es: "Buscar un color",
    },
    nothing: {
      en: "Nothing found.",
      de: "Nichts gefunden.",
      fr: "Aucun résultat.",
      es: "Ningún resultado.",
    },
    count: {
      en: "{count} found.",
      de: "{count} gefunden.",
      fr: "Résultats\u202f: {count}.",
      es: "Resultados: {count}.",
    },
    kinds: {
      pigment: { en: "Pigment", de: "Pigment", fr: "Pigment", es: "Pigmento" },
      answer: { en: "Question", de: "Frage", fr: "Question", es: "Pregunta" },
      comparison: { en: "Side by side", de: "Nebeneinander", fr: "Côte à côte", es: "Lado a lado" },
    },
  },
  frame: {
    skip: {
      en: "Skip to the text",
      de: "Zum Text springen",
      fr: "Aller au texte",
      es: "Ir al texto",
    },
    mainNavigation: { en: "Site", de: "Seiten", fr: "Site", es: "Sitio" },
    more: { en: "More", de: "Mehr", fr: "Plus", es: "Más" },
    onThisPage: {
      en: "On this page",
      de: "Auf dieser Seite",
      fr: "Sur cette page",
      es: "En esta página",
    },
    toContents: {
      en: "Back to contents",
      de: "Zurück zum Inhalt",
      fr: "Retour au sommaire",
      es: "Volver al contenido",
    },
    property: { en: "Property", de: "Eigenschaft", fr: "Propriété", es: "Propiedad" },
    value: { en: "Value", de: "Wert", fr: "Valeur", es: "Valor" },
    standing: { en: "Standing", de: "Herkunft", fr: "Origine", es: "Origen" },
    method: {
      en: "Method and source",
      de: "Verfahren und Quelle",
      fr: "Méthode et source",
      es: "Método y fuente",
    },
    source: { en: "Source", de: "Quelle", fr: "Source", es: "Fuente" },
    standingsHeading: {
      en: "How each figure is known",
      de: "Woher jeder Wert bekannt ist",
      fr: "D’où l’on tient chaque chiffre",
      es: "Cómo se sabe cada cifra",
    },
    termsHeading: { en: "Terms", de: "Begriffe", fr: "Termes", es: "Términos" },
    downloadsHeading: { en: "Data", de: "Daten", fr: "Données", es: "Datos" },
    handlingLink: {
      en: "All about safety",
      de: "Alles zur Sicherheit",
      fr: "Tout sur la sécurité",
      es: "Todo sobre la seguridad",
    },
    orders: { en: "Order", de: "Reihenfolge", fr: "Ordre", es: "Orden" },
    parts: { en: "Page", de: "Seite", fr: "Page", es: "Página" },
    families: { en: "Family", de: "Familie", fr: "Famille", es: "Familia" },
    coloursMade: {
      en: "Colours made from it",
      de: "Farben daraus",
      fr: "Couleurs qui en sont faites",
      es: "Colores hechos con él",
    },
    languages: { en: "Languages", de: "Sprachen", fr: "Langues", es: "Idiomas" },
  },
  demonstration: {
    en: "Demonstration: everything here is invented.",
    de: "Demonstration: Alles hier ist erfunden.",
    fr: "Démonstration\u202f: tout ici est inventé.",
    es: "Demostración: aquí todo es inventado.",
  },
  ragLine: {
    en: "Rags soaked in drying oil can catch fire by themselves: spread them singly outdoors to dry hard, or soak them in water in a closed metal can. Never in a bin or a heap.",
    de: "Mit trocknendem Öl getränkte Lappen können sich selbst entzünden: einzeln im Freien ausbreiten, bis sie hart trocken sind, oder in Wasser in einer geschlossenen Metalldose aufbewahren. Niemals in den Abfalleimer oder auf einen Haufen.",
    fr: "Les chiffons imbibés d’huile siccative peuvent prendre feu d’eux-mêmes\u202f: les étaler un par un dehors jusqu’à ce qu’ils durcissent, ou les tremper dans l’eau dans un bidon métallique fermé. Jamais à la poubelle ni en tas.",
    es: "Los trapos empapados de aceite secante pueden prenderse solos: extenderlos uno a uno al aire libre hasta que endurezcan, o remojarlos en agua en una lata cerrada. Nunca en la basura ni en un montón.",
  },
  fromPapers: {
    en: "Hazards: from our suppliers\u2019 papers.",
    de: "Gefahrenangaben: nach Unterlagen unserer Lieferanten.",
    fr: "Dangers\u202f: d’après les documents de nos fournisseurs.",
    es: "Peligros: de los documentos de nuestros proveedores.",
  },
  cautionLine: {
    en: "The label, the safety data sheet, your local rules and licensed practice come first.",
    de: "Etikett, Sicherheitsdatenblatt, örtliche Vorschriften und zugelassene Fachleute gehen vor.",
    fr: "L’étiquette, la fiche de données de sécurité, vos règles locales et les pratiques agréées priment.",
    es: "Priman la etiqueta, la ficha de datos de seguridad, sus normas locales y las prácticas autorizadas.",
  },
  build: (date: string | undefined) => ({
    en: date === undefined ? "Built from undated records." : `Built from records to ${date}.`,
    de: date === undefined ? "Aus undatierten Aufzeichnungen." : `Aus Aufzeichnungen bis ${date}.`,
    fr:
      date === undefined
        ? "Établi d’après des relevés sans date."
        : `Établi d’après les relevés jusqu’au ${date}.`,
    es:
      date === undefined
        ? "Hecho a partir de registros sin fecha."
        : `Hecho a partir de los registros hasta el ${date}.`,
  }),
  title: (page: string, workshop: string) => ({
    en: page === workshop ? workshop : `${page} \u2013 ${workshop}`,
    de: page === workshop ? workshop : `${page} \u2013 ${workshop}`,
    fr: page === workshop ? workshop : `${page} \u2013 ${workshop}`,
    es: page === workshop ? workshop : `${page} \u2013 ${workshop}`,
  }),
  sections: {
    reply: { en: "Reply", de: "Antwort", fr: "Réponse", es: "Respuesta" },
    label: LABEL_TEXT,
  },
  downloads: {
    sheet: {
      en: "every figure of this sheet and how it is known",
      de: "jeder Wert dieses Blatts und woher er bekannt ist",
      fr: "chaque chiffre de cette fiche et d’où on le sait",
      es: "cada cifra de esta ficha y cómo se sabe",
    },
    reading: {
      en: "the masstone as read, reflectance factor by wavelength",
      de: "der Vollton wie gemessen, Reflexionsgrad nach Wellenlänge",
      fr: "le ton plein tel que mesuré, facteur de réflectance par longueur d’onde",
      es: "el tono pleno tal como se midió, factor de reflectancia por longitud de onda",
    },
    csv: {
      en: "one line a size, for a shop to load",
      de: "eine Zeile je Größe, zum Einlesen in einen Onlineshop",
      fr: "une ligne par contenance, à charger dans une boutique",
      es: "una línea por tamaño, para cargar en una tienda",
    },
    figures: {
      en: "one line a colour, each figure with its standing",
      de: "eine Zeile je Farbe, jeder Wert mit seiner Herkunft",
      fr: "une ligne par couleur, chaque chiffre avec son origine",
      es: "una línea por color, cada cifra con su origen",
    },
    json: {
      en: "the list of sheets, for programs",
      de: "die Liste der Blätter, für Programme",
      fr: "la liste des fiches, pour des programmes",
      es: "la lista de fichas, para programas",
    },
  },
  parts: {
    heading: (heading: string, page: number, pages: number) => ({
      en: `${heading}, page ${page} of ${pages}`,
      de: `${heading}, Seite ${page} von ${pages}`,
      fr: `${heading}, page ${page} sur ${pages}`,
      es: `${heading}, página ${page} de ${pages}`,
    }),
    onThisPage: (what: string) => ({
      en: `${what}, on this page`,
      de: `${what}, auf dieser Seite`,
      fr: `${what}, sur cette page`,
      es: `${what}, en esta página`,
    }),
    someOf: (shown: number, all: number) => ({
      en: `${shown} of ${all} are shown, taken evenly out of all of them.`,
      de: `${shown} von ${all} sind gezeigt, gleichmäßig aus allen ausgewählt.`,
      fr: `${shown} sur ${all} sont montrées, prises régulièrement parmi toutes.`,
      es: `Se muestran ${shown} de ${all}, tomados de modo uniforme entre todos.`,
    }),
  },
  quoted,
  former: {
    gone: (name: string, date: string | undefined) => ({
      en:
        date === undefined
          ? `${name} is no longer on this site.`
          : `${name} is no longer on this site, since ${date}.`,
      de:
        date === undefined
          ? `${name} gibt es auf dieser Website nicht mehr.`
          : `${name} gibt es auf dieser Website seit dem ${date} nicht mehr.`,
      fr:
        date === undefined
          ? `${name} n\u2019est plus sur ce site.`
          : `${name} n\u2019est plus sur ce site depuis le ${date}.`,
      es:
        date === undefined
          ? `${name} ya no está en este sitio.`
          : `${name} ya no está en este sitio desde el ${date}.`,
    }),
    replacedBy: (name: string) => ({
      en: `In its place: ${name}`,
      de: `Stattdessen: ${name}`,
      fr: `\u00c0 sa place\u202f: ${name}`,
      es: `En su lugar: ${name}`,
    }),
  },
  notFound: {
    heading: {
      en: "No such page",
      de: "Diese Seite gibt es nicht",
      fr: "Page introuvable",
      es: "Página no encontrada",
    },
    lead: {
      en: "There is nothing at this address. A colour may have been renamed or taken out of the range.",
      de: "Unter dieser Adresse ist nichts zu finden. Vielleicht wurde eine Farbe umbenannt oder aus dem Sortiment genommen.",
      fr: "Il n’y a rien à cette adresse. Une couleur a peut-être changé de nom ou quitté la gamme.",
      es: "No hay nada en esta dirección. Puede que un color haya cambiado de nombre o salido de la gama.",
    },
    link: {
      en: "All colours",
      de: "Alle Farben",
      fr: "Toutes les couleurs",
      es: "Todos los colores",
    },
  },
} satisfies Texts;
