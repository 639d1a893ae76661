import { es, fr } from "../phrases-in-each.ts";
import { alike, type Texts } from "../texts.ts";
import { NOT_READ_YET, PRECAUTIONS, SIGNAL_WORD, SIZES_AND_PRICES } from "../shared-rows.ts";

/** What a shelf card says beside what its sheet says, and the page of all cards. */
export const CARDS = {
  /** Under a tint, where its neighbours are whites as well. */
  white: (name: string) => ({
    en: name.replace(/\s+white$/i, ""),
    de: name.replace(/\s+white$/i, ""),
    fr: fr.shortWhite(name),
    es: es.shortWhite(name),
  }),
  tint: (white: string, level: string) => alike(`${white}, ${level}`),
  masstone: { en: "Masstone", de: "Vollton", fr: "Ton plein", es: "Tono pleno" },
  noColour: NOT_READ_YET,
  chip: {
    en: "painted drawdown",
    de: "gemalter Aufstrich",
    fr: "application peinte",
    es: "aplicación pintada",
  },
  extender: {
    en: "An extender medium.",
    de: "Ein Streckmedium.",
    fr: "Un médium de charge.",
    es: "Un médium de carga.",
  },
  isWhite: (count: number) => ({
    en:
      count === 1
        ? "A white: one colour of the range was let down in it."
        : `A white: ${count} colours of the range were let down in it.`,
    de:
      count === 1
        ? "Ein Weiß: Eine Farbe des Sortiments wurde darin aufgehellt."
        : `Ein Weiß: ${count} Farben des Sortiments wurden darin aufgehellt.`,
    fr:
      count === 1
        ? "Un blanc\u202f: une couleur de la gamme y a été essayée."
        : `Un blanc\u202f: ${count} couleurs de la gamme y ont été essayées.`,
    es:
      count === 1
        ? "Un blanco: se rebajó con él un color de la gama."
        : `Un blanco: se rebajaron con él ${count} colores de la gama.`,
  }),
  /** Of a white: parts of it that bring one of the reference to a middle tone. */
  whitens: (parts: string, reference: string) => ({
    en: `${parts} parts to 1 of ${reference}`,
    de: `${parts} Teile auf 1 Teil ${reference}`,
    fr: `${parts} parts pour 1 ${fr.of(reference)}`,
    es: `${parts} partes por 1 de ${reference}`,
  }),
  asStrongAs: (percent: string, reference: string) => ({
    en: `${percent} as strong as ${reference}`,
    de: `${percent} so stark wie ${reference}`,
    fr: `${percent} de la force ${fr.of(reference)}`,
    es: `${percent} de la fuerza de ${reference}`,
  }),
  /** On a swatch that was read in a layer thicker than any coat. */
  thickLayer: {
    en: "In a thick layer: a coat of it lets what is below show.",
    de: "Nur dick aufgetragen: Ein gewöhnlicher Auftrag lässt den Grund durchscheinen.",
    fr: "En couche épaisse\u202f: une couche ordinaire laisse voir le fond.",
    es: "En capa gruesa: una capa normal deja ver el fondo.",
  },
  overleaf: {
    en: "Statements overleaf.",
    de: "Hinweise umseitig.",
    fr: "Mentions au verso.",
    es: "Indicaciones al dorso.",
  },
  ragLead: {
    en: "Oily rags can catch fire by themselves: see overleaf.",
    de: "Mit Öl getränkte Lappen können sich selbst entzünden: siehe Rückseite.",
    fr: "Les chiffons gras peuvent prendre feu d’eux-mêmes\u202f: voir au verso.",
    es: "Los trapos con aceite pueden prenderse solos: véase al dorso.",
  },
  ragShort: {
    en: "Oily rags can self-ignite.",
    de: "Ölige Lappen: selbstentzündlich.",
    fr: "Les chiffons gras peuvent s’enflammer seuls.",
    es: "Los trapos con aceite pueden prenderse solos.",
  },
  basisWorkedOut: (frame: string, edition: string) => ({
    en: `Label by ${frame}: ${edition}.`,
    de: `Etikett nach ${frame}: ${edition}.`,
    fr: `Étiquette selon ${frame}\u202f: ${edition}.`,
    es: `Etiqueta según ${frame}: ${edition}.`,
  }),
  drawdown: {
    en: "Printed colour only comes near: a painted drawdown rules.",
    de: "Der Druck kommt der Farbe nur nahe: Es gilt der gemalte Aufstrich.",
    fr: "La couleur imprimée n’est qu’approchante\u202f: c’est l’application peinte qui fait foi.",
    es: "El color impreso es solo aproximado: vale la aplicación pintada.",
  },
  approximateNote: {
    en: "This one was read under another light and adapted.",
    de: "Diese wurde unter anderem Licht gemessen und angepasst.",
    fr: "Celle-ci a été mesurée sous une autre lumière et adaptée.",
    es: "Este se midió bajo otra luz y se adaptó.",
  },
  lot: (number: string) => ({
    en: `Lot\u00a0${number}`,
    de: `Charge\u00a0${number}`,
    fr: `Lot\u00a0${number}`,
    es: `Lote\u00a0${number}`,
  }),
  revision: (revision: string) => ({
    en: `Card\u00a0${revision}`,
    de: `Karte\u00a0${revision}`,
    fr: `Carte\u00a0${revision}`,
    es: `Tarjeta\u00a0${revision}`,
  }),
  address: (address: string) => ({
    en: `QR code of the sheet\u2019s address, ${address}`,
    de: `QR-Code der Adresse des Blatts, ${address}`,
    fr: `Code QR de l’adresse de la fiche, ${address}`,
    es: `Código QR de la dirección de la ficha, ${address}`,
  }),
  continued: (name: string) => ({
    en: `${name}, continued`,
    de: `${name}, Fortsetzung`,
    fr: `${name}, suite`,
    es: `${name}, continuación`,
  }),
  document: {
    title: (workshop: string, size: string) => ({
      en: `${workshop}: shelf cards, ${size}`,
      de: `${workshop}: Regalkarten, ${size}`,
      fr: `${workshop}\u202f: cartes de rayon, ${size}`,
      es: `${workshop}: tarjetas de estante, ${size}`,
    }),
    subject: (count: number) => ({
      en: `${count} shelf card${count === 1 ? "" : "s"}`,
      de: `${count} Regalkarte${count === 1 ? "" : "n"}`,
      fr: `${count} carte${count === 1 ? "" : "s"} de rayon`,
      es: `${count} tarjeta${count === 1 ? "" : "s"} de estante`,
    }),
    card: (name: string) => ({
      en: `Card of ${name}`,
      de: `Karte: ${name}`,
      fr: `Carte ${fr.of(name)}`,
      es: `Tarjeta de ${name}`,
    }),
  },
  page: {
    heading: {
      en: "Shelf cards",
      de: "Regalkarten",
      fr: "Cartes de rayon",
      es: "Tarjetas de estante",
    },
    lead: (name: string, width: string, height: string) => {
      const measures = `${width}\u00a0\u00d7\u00a0${height}\u00a0mm`;
      // A size that is called by its measures is not told twice.
      const size = name === `${width}x${height}` ? measures : `${name}, ${measures}`;
      return {
        en: `Every card as it prints in the size ${size}, front and back. Colours on screen and on paper only come near the paint.`,
        de: `Jede Karte, wie sie in der Größe ${size} gedruckt wird, vorn und hinten. Bildschirm und Druck kommen der Farbe nur nahe.`,
        fr: `Chaque carte telle qu’elle s’imprime au format ${size}, recto et verso. L’écran et l’impression ne font qu’approcher la peinture.`,
        es: `Cada tarjeta tal como se imprime en el tamaño ${size}, anverso y dorso. La pantalla y la impresión solo se acercan a la pintura.`,
      };
    },
    sizes: { en: "Sizes", de: "Größen", fr: "Formats", es: "Tamaños" },
    front: { en: "front", de: "vorn", fr: "recto", es: "anverso" },
    back: { en: "back", de: "hinten", fr: "verso", es: "dorso" },
    leaf: (leaf: number, side: string) => ({
      en: `leaf ${leaf}, ${side}`,
      de: `Blatt ${leaf}, ${side}`,
      fr: `feuillet ${leaf}, ${side}`,
      es: `hoja ${leaf}, ${side}`,
    }),
    withoutHeading: { en: "Without a card", de: "Ohne Karte", fr: "Sans carte", es: "Sin tarjeta" },
    without: (markets: readonly string[]) => ({
      en: `may be sold in ${markets.join(", ")} on a legal basis alone, or not at all: no card, no price`,
      de: `darf nur mit einer Rechtsgrundlage oder gar nicht verkauft werden (${markets.join(", ")}): keine Karte, kein Preis`,
      fr: `vente permise sur base légale seulement, ou interdite (marchés\u202f: ${markets.join(", ")})\u202f; ni carte, ni prix`,
      es: `venta permitida solo con base legal, o prohibida (mercados: ${markets.join(", ")}); ni tarjeta, ni precio`,
    }),
    lacks: (lacks: readonly ("colour" | "price")[]) => ({
      en: lacks.map((lack) => (lack === "colour" ? "no colour read yet" : "no price")).join(", "),
      de: lacks
        .map((lack) => (lack === "colour" ? "noch keine Farbe gemessen" : "kein Preis"))
        .join(", "),
      fr: lacks
        .map((lack) => (lack === "colour" ? "aucune couleur encore mesurée" : "pas de prix"))
        .join(", "),
      es: lacks
        .map((lack) => (lack === "colour" ? "ningún color medido aún" : "sin precio"))
        .join(", "),
    }),
    notClassified: {
      en: "is not classified yet, for want of a safety data sheet, and so is not for sale: no card, no price",
      de: "ist noch nicht eingestuft, weil ein Sicherheitsdatenblatt fehlt, und daher nicht im Verkauf: keine Karte, kein Preis",
      fr: "n’est pas encore classé, faute de fiche de données de sécurité, et n’est donc pas en vente\u202f: ni carte, ni prix",
      es: "aún no está clasificado, por falta de una ficha de datos de seguridad, así que no está a la venta: ni tarjeta, ni precio",
    },
    pdf: (size: string) => ({
      en: `these cards to print and cut, ${size}`,
      de: `diese Karten zum Drucken und Ausschneiden, ${size}`,
      fr: `ces cartes à imprimer et à couper, ${size}`,
      es: `estas tarjetas para imprimir y cortar, ${size}`,
    }),
    link: {
      en: "shelf cards, each as it prints",
      de: "Regalkarten, jede so, wie sie gedruckt wird",
      fr: "cartes de rayon, chacune telle qu’elle s’imprime",
      es: "tarjetas de estante, cada una tal como se imprime",
    },
  },

  /** The list of reprints. */
  reprint: {
    fresh: {
      en: "a new card",
      de: "eine neue Karte",
      fr: "une nouvelle carte",
      es: "una tarjeta nueva",
    },
    gone: {
      en: "no card any more: take it off the shelf",
      de: "keine Karte mehr: aus dem Regal nehmen",
      fr: "il n’y a plus de carte\u202f: la retirer du rayon",
      es: "ya no hay tarjeta: retírela del estante",
    },
    changed: (what: string, before: string, now: string) => ({
      en: `${what}: \u201c${before}\u201d is now \u201c${now}\u201d`,
      de: `${what}: „${before}“ ist jetzt „${now}“`,
      fr: `${what}\u202f: «\u202f${before}\u202f» devient «\u202f${now}\u202f»`,
      es: `${what}: «${before}» es ahora «${now}»`,
    }),
    added: (what: string, now: string) => ({
      en: `${what}: now \u201c${now}\u201d`,
      de: `${what}: jetzt „${now}“`,
      fr: `${what}\u202f: maintenant «\u202f${now}\u202f»`,
      es: `${what}: ahora «${now}»`,
    }),
    removed: (what: string, before: string) => ({
      en: `${what}: no longer \u201c${before}\u201d`,
      de: `${what}: nicht mehr „${before}“`,
      fr: `${what}\u202f: n’est plus «\u202f${before}\u202f»`,
      es: `${what}: ya no «${before}»`,
    }),
  },

  /** Names of what a card states, as the list of reprints has them. */
  states: {
    name: { en: "Name", de: "Name", fr: "Nom", es: "Nombre" },
    madeOf: { en: "Made of", de: "Besteht aus", fr: "Composition", es: "Composición" },
    masstone: { en: "Masstone", de: "Vollton", fr: "Ton plein", es: "Tono pleno" },
    tints: { en: "Tints", de: "Aufhellungen", fr: "Dégradés", es: "Rebajes" },
    sentence: { en: "In the whites", de: "In Weiß", fr: "Dans les blancs", es: "En los blancos" },
    lightfastness: { en: "Lasts", de: "Lichtechtheit", fr: "Tenue", es: "Solidez" },
    opacity: { en: "Opacity", de: "Deckvermögen", fr: "Opacité", es: "Opacidad" },
    drying: { en: "Dries", de: "Trocknet", fr: "Sèche", es: "Seca" },
    strength: { en: "Strength", de: "Farbstärke", fr: "Force", es: "Fuerza" },
    layers: { en: "Layers", de: "Schichten", fr: "Couches", es: "Capas" },
    signalWord: SIGNAL_WORD,
    pictograms: { en: "Pictograms", de: "Piktogramme", fr: "Pictogrammes", es: "Pictogramas" },
    statements: { en: "Statements", de: "Gefahrenhinweise", fr: "Mentions", es: "Indicaciones" },
    precautions: PRECAUTIONS,
    unknown: {
      en: "Contents and hazard data",
      de: "Inhalt und Gefahrendaten",
      fr: "Composition et données de danger",
      es: "Contenido y datos de peligro",
    },
    rags: { en: "Rags", de: "Lappen", fr: "Chiffons", es: "Trapos" },
    sizes: SIZES_AND_PRICES,
    poisonCentre: {
      en: "Poison centre",
      de: "Giftinformationszentrum",
      fr: "Centre antipoison",
      es: "Centro de toxicología",
    },
    basis: {
      en: "Ground of the label",
      de: "Grundlage des Etiketts",
      fr: "Fondement de l’étiquette",
      es: "Fundamento de la etiqueta",
    },
    address: { en: "Address", de: "Adresse", fr: "Adresse", es: "Dirección" },
    lot: { en: "Lot", de: "Charge", fr: "Lot", es: "Lote" },
    imprint: { en: "Imprint", de: "Impressum", fr: "Mentions légales", es: "Datos del editor" },
  },
} satisfies Texts;
