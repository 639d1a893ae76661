import type { Texts } from "../texts.ts";

/** Of labels to stick: why one is not printed, and what is to be known of one that is. Parts of a line, without their stop. */
export const LABEL_REMARKS = {
  refused: (label: string, why: string) => ({
    en: `${label}: no label. ${why}`,
    de: `${label}: kein Etikett. ${why}`,
    fr: `${label}\u202f: pas d’étiquette. ${why}`,
    es: `${label}: sin etiqueta. ${why}`,
  }),
  noSupplier: {
    address: {
      en: "workshop.yaml gives no address, which a label has to have",
      de: "workshop.yaml nennt keine Anschrift (address), die ein Etikett haben muss",
      fr: "workshop.yaml ne donne pas d’adresse (address), que toute étiquette doit porter",
      es: "workshop.yaml no da dirección (address), que toda etiqueta debe llevar",
    },
    telephone: {
      en: "workshop.yaml gives no telephone, which a label has to have",
      de: "workshop.yaml nennt kein Telefon (telephone), das ein Etikett haben muss",
      fr: "workshop.yaml ne donne pas de téléphone (telephone), que toute étiquette doit porter",
      es: "workshop.yaml no da teléfono (telephone), que toda etiqueta debe llevar",
    },
    both: {
      en: "workshop.yaml gives no address and no telephone, which a label has to have",
      de: "workshop.yaml nennt weder Anschrift (address) noch Telefon (telephone), die ein Etikett haben muss",
      fr: "workshop.yaml ne donne ni adresse (address) ni téléphone (telephone), que toute étiquette doit porter",
      es: "workshop.yaml no da ni dirección (address) ni teléfono (telephone), que toda etiqueta debe llevar",
    },
  },
  noText: (language: string) => ({
    en: `a statement has no text in ${language}`,
    de: `ein Hinweis hat keinen Text auf ${language}`,
    fr: `une mention n’a pas de texte en ${language}`,
    es: `una indicación no tiene texto en ${language}`,
  }),
  tooSmall: (measures: string, languages: string, xHeight: string, tube: string) => ({
    en: `${measures} mm are too small for it in ${languages} with letters of ${xHeight} mm: ${tube}`,
    de: `${measures}\u00a0mm sind auf ${languages} mit Buchstaben von ${xHeight}\u00a0mm zu klein: ${tube}`,
    fr: `${measures}\u00a0mm ne suffisent pas en ${languages} avec des lettres de ${xHeight}\u00a0mm\u202f: ${tube}`,
    es: `${measures}\u00a0mm no bastan en ${languages} con letras de ${xHeight}\u00a0mm: ${tube}`,
  }),
  largerTube: (ml: string, measures: string) => ({
    en: `the smallest tube that would hold it is one of ${ml} ml, ${measures} mm`,
    de: `Die kleinste Tube, auf die es passt, ist eine von ${ml}\u00a0ml, ${measures}\u00a0mm`,
    fr: `le plus petit tube qui suffirait est de ${ml}\u00a0ml, ${measures}\u00a0mm`,
    es: `el tubo más pequeño que bastaría es de ${ml}\u00a0ml, ${measures}\u00a0mm`,
  }),
  noTube: {
    en: "no tube to 200 ml would hold it either",
    de: "Es passt auf keine Tube bis 200\u00a0ml",
    fr: "aucun tube jusqu’à 200\u00a0ml ne suffirait",
    es: "ningún tubo de hasta 200\u00a0ml bastaría",
  },
  noHazards: {
    en: "It bears no hazards, so that no law sets its letters: fewer languages of this label or a lower xHeightMm may find room",
    de: "Das Etikett trägt keine Gefahrenhinweise, daher schreibt kein Gesetz die Größe seiner Buchstaben vor: Mit weniger Sprachen oder einem kleineren xHeightMm kann das Etikett Platz finden",
    fr: "Elle ne porte aucun danger, et aucune loi ne fixe ses lettres\u202f: moins de langues sur cette étiquette ou un xHeightMm plus petit peuvent suffire",
    es: "No lleva peligros, y ninguna ley fija sus letras: con menos idiomas en esta etiqueta o un xHeightMm menor puede caber",
  },
  elsewhere: {
    en: "A fold-out label, a tie-on tag or a box may bear the whole instead (CLP, Annex I, 1.5.1)",
    de: "Ein Faltetikett, ein Anhängeetikett oder eine äußere Verpackung darf stattdessen das Ganze tragen (CLP, Anhang I, 1.5.1)",
    fr: "Une étiquette dépliante, une étiquette volante ou un emballage extérieur peut porter le tout à la place (CLP, annexe I, 1.5.1)",
    es: "Una etiqueta desplegable, una etiqueta colgada o un envase exterior puede llevar el conjunto en su lugar (CLP, anexo I, 1.5.1)",
  },
  elsewhereFolded: (paper: string) => ({
    en: `A fold-out label on ${paper} does not hold it either; a tie-on tag or a box may bear the whole instead (CLP, Annex I, 1.5.1)`,
    de: `Auch auf ein Faltetikett auf ${paper} passt es nicht; ein Anhängeetikett oder eine äußere Verpackung darf stattdessen das Ganze tragen (CLP, Anhang I, 1.5.1)`,
    fr: `Une étiquette dépliante sur ${paper} ne suffit pas non plus\u202f; une étiquette volante ou un emballage extérieur peut porter le tout à la place (CLP, annexe I, 1.5.1)`,
    es: `Tampoco basta una etiqueta desplegable en ${paper}; una etiqueta colgada o un envase exterior puede llevar el conjunto en su lugar (CLP, anexo I, 1.5.1)`,
  }),
  wouldFoldOut: (pages: number) => ({
    en: `With foldOut: true of this label in workshop.yaml it is printed as a fold-out label of ${pages} pages`,
    de: `Mit foldOut: true bei diesem Etikett in workshop.yaml wird es als Faltetikett mit ${pages} Seiten gedruckt`,
    fr: `Avec foldOut: true pour cette étiquette dans workshop.yaml, elle est imprimée en étiquette dépliante de ${pages} pages`,
    es: `Con foldOut: true de esta etiqueta en workshop.yaml se imprime como etiqueta desplegable de ${pages} páginas`,
  }),
  wouldReduce: (statements: string) => ({
    en: `Where none of these can be had, give this label reduced: true in workshop.yaml: it is then printed without ${statements} (1.5.2)`,
    de: `Wo nichts davon möglich ist, diesem Etikett in workshop.yaml reduced: true geben: Es wird dann ohne ${statements} gedruckt (1.5.2)`,
    fr: `Si rien de cela n’est possible, donner à cette étiquette reduced: true dans workshop.yaml\u202f: elle est alors imprimée sans ${statements} (1.5.2)`,
    es: `Si nada de eso es posible, dar a esta etiqueta reduced: true en workshop.yaml: entonces se imprime sin ${statements} (1.5.2)`,
  }),
  foldedOut: (pages: number) => ({
    en: `as a fold-out label of ${pages} pages (CLP, Annex I, 1.2.1.6): cut at the marks, fold in turn, the first fold backwards, stick down the last page alone and hold the front page with a strip that can be lifted; ask the authority of the country of sale whether the whole surface has to be used first`,
    de: `als Faltetikett mit ${pages} Seiten (CLP, Anhang I, 1.2.1.6): an den Marken schneiden, der Reihe nach falten, den ersten Falz nach hinten, nur die letzte Seite aufkleben und die Vorderseite mit einem Streifen halten, der sich abheben lässt; bei der Behörde des Verkaufslandes erfragen, ob zuerst die ganze Fläche zu nutzen ist`,
    fr: `en étiquette dépliante de ${pages} pages (CLP, annexe I, 1.2.1.6)\u202f: couper aux repères, plier dans l’ordre, le premier pli en arrière, ne coller que la dernière page et tenir la première par une bande qui se soulève\u202f; demander à l’autorité du pays de vente si toute la surface doit d’abord être utilisée`,
    es: `como etiqueta desplegable de ${pages} páginas (CLP, anexo I, 1.2.1.6): cortar por las marcas, doblar por orden, el primer pliegue hacia atrás, pegar solo la última página y sujetar la primera con una tira que se pueda levantar; preguntar a la autoridad del país de venta si antes debe usarse toda la superficie`,
  }),
  leftOut: (statements: string, ml: string) => ({
    en: `without ${statements}, which a package of ${ml} ml may leave out where no fold-out label, tie-on tag or box can bear the whole (CLP, Article 29 and Annex I, 1.5.2)`,
    de: `ohne ${statements}, was bei einer Packung von ${ml}\u00a0ml wegbleiben darf, wo kein Faltetikett, Anhängeetikett und keine äußere Verpackung das Ganze tragen kann (CLP, Artikel 29 und Anhang I, 1.5.2)`,
    fr: `sans ${statements}, qu’un emballage de ${ml}\u00a0ml peut omettre là où ni étiquette dépliante, ni étiquette volante, ni emballage extérieur ne peut porter le tout (CLP, article 29 et annexe I, 1.5.2)`,
    es: `sin ${statements}, que un envase de ${ml}\u00a0ml puede omitir donde ni etiqueta desplegable, ni etiqueta colgada, ni envase exterior puede llevar el conjunto (CLP, artículo 29 y anexo I, 1.5.2)`,
  }),
  smallPictograms: (mm: string, wanted: string) => ({
    en: `pictograms of ${mm} mm, as ${wanted} mm found no room`,
    de: `Piktogramme von ${mm}\u00a0mm, da ${wanted}\u00a0mm keinen Platz fanden`,
    fr: `pictogrammes de ${mm}\u00a0mm, faute de place pour ${wanted}\u00a0mm`,
    es: `pictogramas de ${mm}\u00a0mm, pues ${wanted}\u00a0mm no cabían`,
  }),
  noEan: {
    en: "no EAN is recorded of this size, so its label has none",
    de: "für diese Größe ist keine EAN aufgezeichnet, ihr Etikett hat daher keine",
    fr: "aucun EAN n’est consigné pour cette contenance, et son étiquette n’en a pas",
    es: "no hay EAN registrado de este tamaño, y su etiqueta no lo lleva",
  },
  noAddress: {
    en: "workshop.yaml gives no siteAddress, so the label has no QR code",
    de: "workshop.yaml nennt keine siteAddress, das Etikett hat daher keinen QR-Code",
    fr: "workshop.yaml ne donne pas de siteAddress, et l’étiquette n’a pas de code QR",
    es: "workshop.yaml no da siteAddress, y la etiqueta no lleva código QR",
  },
  smallLabel: (measures: string, least: string) => ({
    en: `${measures} mm is less than the ${least} mm that the label of a classified paint has where that is possible (CLP, Annex I, 1.2.1.4)`,
    de: `${measures}\u00a0mm sind weniger als die ${least}\u00a0mm, die das Etikett einer eingestuften Farbe haben muss, wo das möglich ist (CLP, Anhang I, 1.2.1.4)`,
    fr: `${measures}\u00a0mm, c’est moins que les ${least}\u00a0mm que l’étiquette d’une peinture classée mesure si possible (CLP, annexe I, 1.2.1.4)`,
    es: `${measures}\u00a0mm es menos que los ${least}\u00a0mm que tiene, si es posible, la etiqueta de una pintura clasificada (CLP, anexo I, 1.2.1.4)`,
  }),
  smallLetters: (xHeight: string, least: string, from: string) => ({
    en: `letters of ${xHeight} mm are below the ${least} mm that Regulation (EU) 2024/2865 asks for from ${from}`,
    de: `Buchstaben von ${xHeight}\u00a0mm liegen unter den ${least}\u00a0mm, die die Verordnung (EU) 2024/2865 ab ${from} verlangt`,
    fr: `les lettres de ${xHeight}\u00a0mm sont au-dessous des ${least}\u00a0mm que demande le règlement (UE) 2024/2865 à partir du ${from}`,
    es: `las letras de ${xHeight}\u00a0mm están por debajo de los ${least}\u00a0mm que pide el Reglamento (UE) 2024/2865 desde el ${from}`,
  }),
} satisfies Texts;
