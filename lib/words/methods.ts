import type { InOthers } from "./in-each.ts";

/**
 * How figures are found, by the English of sheet.json: a letter in braces stands for a name or a
 * number. `npx vitest run --project units test/words/methods.test.ts` names a method without a row.
 */
export const METHODS: Readonly<Record<string, InOthers>> = {
  "1 - PVC": { de: "1 - PVK", fr: "1 - CPV", es: "1 - PVC" },
  "{a} % of metal in it, as recorded": {
    de: "{a} % Metall darin, wie aufgezeichnet",
    fr: "{a}\u00a0% de métal, selon les relevés",
    es: "{a}\u00a0% de metal, según los registros",
  },
  "10 000 / film that hides [µm] x volume solids": {
    de: "10 000 / deckender Film [µm] x Festkörpervolumen",
    fr: "10 000 / film couvrant [µm] x extrait sec en volume",
    es: "10 000 / película que cubre [µm] x sólidos en volumen",
  },
  "100 g / density": {
    de: "100 g / Dichte",
    fr: "100 g / masse volumique",
    es: "100 g / densidad",
  },
  "{a} ml x density": {
    de: "{a} ml x Dichte",
    fr: "{a} ml x masse volumique",
    es: "{a} ml x densidad",
  },
  "C*ab (D65/10) of that grey": {
    de: "C*ab (D65/10) dieses Graus",
    fr: "C*ab (D65/10) de ce gris",
    es: "C*ab (D65/10) de ese gris",
  },
  "CIE 1976, exposed against kept dark": {
    de: "CIE 1976, belichtet gegen dunkel aufbewahrt",
    fr: "CIE 1976, partie exposée par rapport à la partie gardée à l’obscurité",
    es: "CIE 1976, expuesto frente a guardado a oscuras",
  },
  "CIE 1976, exposed against kept dark, of the form that changed most": {
    de: "CIE 1976, belichtet gegen dunkel aufbewahrt, an der Form, die sich am meisten änderte",
    fr: "CIE 1976, partie exposée par rapport à la partie gardée à l’obscurité, pour la forme qui a le plus changé",
    es: "CIE 1976, expuesto frente a guardado a oscuras, de la forma que más cambió",
  },
  "CIE 1976, mean of {a} exposures": {
    de: "CIE 1976, Mittel aus {a} Belichtungen",
    fr: "CIE 1976, moyenne de {a} expositions",
    es: "CIE 1976, media de {a} exposiciones",
  },
  "CIE sums of {a}, d/8 excluded": {
    de: "CIE-Summen von {a}, d/8 ohne Glanz",
    fr: "sommes CIE de {a}, d/8 reflet exclu",
    es: "sumas CIE de {a}, d/8 brillo excluido",
  },
  "CIE sums of {a}, d/8 included": {
    de: "CIE-Summen von {a}, d/8 mit Glanz",
    fr: "sommes CIE de {a}, d/8 reflet inclus",
    es: "sumas CIE de {a}, d/8 brillo incluido",
  },
  "CIE sums of {a}, 45/0": {
    de: "CIE-Summen von {a}, 45/0",
    fr: "sommes CIE de {a}, 45/0",
    es: "sumas CIE de {a}, 45/0",
  },
  "CIE sums of {a}, {b}, 10 degree observer of CIE 2006": {
    de: "CIE-Summen von {a}, {b}, 10°-Beobachter von CIE 2006",
    fr: "sommes CIE de {a}, {b}, observateur 10° de CIE 2006",
    es: "sumas CIE de {a}, {b}, observador de 10° de CIE 2006",
  },
  "CPVC = 1/(1 + OA rho/93.5)": {
    de: "KPVK = 1/(1 + ÖZ rho/93,5)",
    fr: "CPVC = 1/(1 + PH rho/93,5)",
    es: "CPVC = 1/(1 + AA rho/93,5)",
  },
  "CPVC x dispersion factor": {
    de: "KPVK x Dispergierfaktor",
    fr: "CPVC x facteur de broyage",
    es: "CPVC x factor de molienda",
  },
  "CSS colour from D65/2": {
    de: "CSS-Farbe aus D65/2",
    fr: "couleur CSS depuis D65/2",
    es: "color CSS a partir de D65/2",
  },
  "CSS colour, approximate: adapted from {a}": {
    de: "CSS-Farbe, angenähert: aus {a} angepasst",
    fr: "couleur CSS, approchée\u202f: adaptée de {a}",
    es: "color CSS, aproximado: adaptado de {a}",
  },
  "Delta-E00 of {a} and {b} carried over by CAT16": {
    de: "ΔE00 von {a} und {b}, mit CAT16 übertragen",
    fr: "ΔE00 de {a} et {b}, transposé par CAT16",
    es: "ΔE00 de {a} y {b}, trasladado por CAT16",
  },
  "ISCC-NBS block of the Munsell notation": {
    de: "ISCC-NBS-Block der Munsell-Notation",
    fr: "bloc ISCC-NBS de la notation Munsell",
    es: "bloque ISCC-NBS de la notación Munsell",
  },
  "ISCC-NBS block of the Munsell notation, approximate: adapted from {a}": {
    de: "ISCC-NBS-Block der Munsell-Notation, angenähert: aus {a} angepasst",
    fr: "bloc ISCC-NBS de la notation Munsell, approché\u202f: adapté de {a}",
    es: "bloque ISCC-NBS de la notación Munsell, aproximado: adaptado de {a}",
  },
  "K and S from films of {a} µm over the workshop's own opacity chart as read (Y {b} and {c}, {d})":
    {
      de: "K und S aus Filmen von {a} µm über der eigenen Prüfkarte, wie gemessen (Y {b} und {c}, {d})",
      fr: "K et S d’après des films de {a} µm sur la carte d’opacité de l’atelier, telle que mesurée (Y {b} et {c}, {d})",
      es: "K y S de películas de {a} µm sobre la carta de opacidad del taller, tal como se midió (Y {b} y {c}, {d})",
    },
  "K and S from films of {a} µm over an opacity chart assumed to read {b} and {c}": {
    de: "K und S aus Filmen von {a} µm über einer Prüfkarte, angenommen mit {b} und {c}",
    fr: "K et S d’après des films de {a} µm sur une carte d’opacité supposée de {b} et {c}",
    es: "K y S de películas de {a} µm sobre una carta de opacidad que se supone de {b} y {c}",
  },
  "K and S from its films": {
    de: "K und S aus ihren Filmen",
    fr: "K et S d’après ses films",
    es: "K y S de sus películas",
  },
  "K and S from its let-downs in {a}, those of {b} from its films": {
    de: "K und S aus ihren Aufhellungen in {a}, die von {b} aus dessen Filmen",
    fr: "K et S d’après ses dégradés dans {a}, ceux de {b} d’après ses films",
    es: "K y S según sus rebajes en {a}, los de {b} según sus películas",
  },
  "K and S of its components' own paints, added": {
    de: "K und S der Farben ihrer Komponenten, addiert",
    fr: "K et S des peintures de ses composants, additionnés",
    es: "K y S de las pinturas de sus componentes, sumados",
  },
  "K and S of its components' own paints, one of them less by what it lost": {
    de: "K und S der Farben ihrer Komponenten, eine davon um den Verlust vermindert",
    fr: "K et S des peintures de ses composants, l’une diminuée de ce qu’elle a perdu",
    es: "K y S de las pinturas de sus componentes, una de ellas menos lo que perdió",
  },
  "K and S of {a} from its let-downs in {b}, of {c} and of the medium from their films, mixed by volume":
    {
      de: "K und S von {a} aus den Aufhellungen in {b}, von {c} und dem Streckmedium aus deren Filmen, nach Volumen gemischt",
      fr: "K et S de {a} d’après ses dégradés dans {b}, de {c} et du médium d’après leurs films, mélangés en volume",
      es: "K y S de {a} según sus rebajes en {b}, de {c} y del médium según sus películas, mezclados por volumen",
    },
  "K/S of let-downs equal by mass of dry pigment in {a}, mulled against milled": {
    de: "K/S von Aufhellungen gleicher Masse an trockenem Pigment in {a}, angerieben gegen gewalzt",
    fr: "K/S de dégradés à masse égale de pigment sec dans {a}, broyé à la molette par rapport à broyé à la machine",
    es: "K/S de rebajes a igual masa de pigmento seco en {a}, molido con moleta frente a molido a máquina",
  },
  "K/S of let-downs equal by mass of paint in {a}, against {b} = 1": {
    de: "K/S von Aufhellungen gleicher Farbmasse in {a}, gegen {b} = 1",
    fr: "K/S de dégradés à masse égale de peinture dans {a}, par rapport à {b} = 1",
    es: "K/S de rebajes a igual masa de pintura en {a}, frente a {b} = 1",
  },
  "K/S of let-downs equal by volume of paint in {a}, against {b} = 1": {
    de: "K/S von Aufhellungen gleichen Farbvolumens in {a}, gegen {b} = 1",
    fr: "K/S de dégradés à volume égal de peinture dans {a}, par rapport à {b} = 1",
    es: "K/S de rebajes a igual volumen de pintura en {a}, frente a {b} = 1",
  },
  "Lab as read, {a}": {
    de: "Lab wie gemessen, {a}",
    fr: "Lab tel que mesuré, {a}",
    es: "Lab tal como se midió, {a}",
  },
  "Munsell chip, by eye": {
    de: "Munsell-Muster, nach Augenmaß",
    fr: "échantillon Munsell, à l’œil",
    es: "muestra Munsell, a ojo",
  },
  "PVC / CPVC": { de: "PVK / KPVK", fr: "CPV / CPVC", es: "PVC / CPVC" },
  "PVC = pigment volume / (pigment + oil and medium volume)": {
    de: "PVK = Pigmentvolumen / (Pigment- + Öl- und Malmittelvolumen)",
    fr: "CPV = volume de pigment / (volume de pigment + d’huile et de médium)",
    es: "PVC = volumen de pigmento / (volumen de pigmento + aceite y médium)",
  },
  "PVC = pigment volume / (pigment + oil volume)": {
    de: "PVK = Pigmentvolumen / (Pigment- + Ölvolumen)",
    fr: "CPV = volume de pigment / (volume de pigment + d’huile)",
    es: "PVC = volumen de pigmento / (volumen de pigmento + aceite)",
  },
  "S of its films times {a} µm, averaged over the light that it throws back": {
    de: "S ihrer Filme mal {a} µm, gemittelt über das Licht, das sie zurückwirft",
    fr: "S de ses films fois {a} µm, en moyenne sur la lumière qu’il renvoie",
    es: "S de sus películas por {a} µm, promediada sobre la luz que devuelve",
  },
  "S of its let-downs in units of the white's S, times that of the white's films and {a} µm": {
    de: "S ihrer Aufhellungen in Einheiten des S des Weiß, mal S der Filme des Weiß und {a} µm",
    fr: "S de ses dégradés en unités de la S du blanc, fois celle des films du blanc et {a} µm",
    es: "S de sus rebajes en unidades de la S del blanco, por la de las películas del blanco y {a} µm",
  },
  "as in the category, by colour change alone": {
    de: "wie in der Kategorie, allein nach der Farbänderung",
    fr: "comme dans la catégorie, par le seul changement de couleur",
    es: "como en la categoría, solo por el cambio de color",
  },
  "as recorded": { de: "wie aufgezeichnet", fr: "selon les relevés", es: "según los registros" },
  "as recorded with the readings": {
    de: "wie mit den Messungen aufgezeichnet",
    fr: "selon les relevés, avec les mesures",
    es: "según consta con las mediciones",
  },
  "as seen by the workshop": {
    de: "wie in der Werkstatt gesehen",
    fr: "tel que vu à l’atelier",
    es: "tal como se vio en el taller",
  },
  "as stated for {a}": {
    de: "wie für {a} angegeben",
    fr: "comme indiqué pour {a}",
    es: "según se declara para {a}",
  },
  "as stated for the colour": {
    de: "wie für die Farbe angegeben",
    fr: "comme indiqué pour la couleur",
    es: "según se declara para el color",
  },
  "as stated, on the scale of ISO 105-B02": {
    de: "wie angegeben, nach der Skala von ISO 105-B02",
    fr: "comme indiqué, sur l’échelle d’ISO 105-B02",
    es: "según se declara, en la escala de ISO 105-B02",
  },
  "the weakest of its pigments, as stated, on the scale of ISO 105-B02": {
    de: "das schwächste ihrer Pigmente, wie angegeben, nach der Skala von ISO 105-B02",
    fr: "le plus faible de ses pigments, comme indiqué, sur l’échelle d’ISO 105-B02",
    es: "el más débil de sus pigmentos, según se declara, en la escala de ISO 105-B02",
  },
  "an opacity chart as it is usually printed": {
    de: "eine Prüfkarte, wie sie üblicherweise gedruckt wird",
    fr: "une carte d’opacité telle qu’on l’imprime d’ordinaire",
    es: "una carta de opacidad como se imprime de ordinario",
  },
  "between what its parts take alone, as tried or by the rules, each by its share": {
    de: "zwischen dem, was ihre Teile allein brauchen, wie erprobt oder nach den Regeln, jeder nach seinem Anteil",
    fr: "entre ce que ses parties demandent seules, à l’essai ou selon les règles, chacune selon sa part",
    es: "entre lo que tardan sus partes solas, ensayadas o según las reglas, cada una por su parte",
  },
  "blend by pigment volume": {
    de: "Mischung nach Pigmentvolumen",
    fr: "mélange selon le volume de pigment",
    es: "mezcla por volumen de pigmento",
  },
  "oils of the paints that it was weighed from, by volume": {
    de: "Öle der Farben, aus denen sie gewogen wurde, nach Volumen",
    fr: "huiles des couleurs dont elle a été pesée, selon le volume",
    es: "aceites de los colores de los que se pesó, por volumen",
  },
  "what of the paints that it was weighed from is not pigment": {
    de: "was in den Farben, aus denen sie gewogen wurde, kein Pigment ist",
    fr: "ce qui n’est pas du pigment dans les couleurs dont elle a été pesée",
    es: "lo que no es pigmento en los colores de los que se pesó",
  },
  "blend by volume": {
    de: "Mischung nach Volumen",
    fr: "mélange selon le volume",
    es: "mezcla por volumen",
  },
  "by colour change against the standard's limits": {
    de: "nach der Farbänderung gegen die Grenzen der Norm",
    fr: "par le changement de couleur, au regard des limites de la norme",
    es: "por el cambio de color frente a los límites de la norma",
  },
  "the exposure was another": {
    de: "die Belichtung war eine andere",
    fr: "l’exposition était autre",
    es: "la exposición fue otra",
  },
  "by its Colour Index name": {
    de: "nach seinem Colour-Index-Namen",
    fr: "d’après son nom du Colour Index",
    es: "por su nombre del Colour Index",
  },
  "by its pigments, of which the least lightfast form of the least lightfast decides": {
    de: "nach ihren Pigmenten, von denen die am wenigsten lichtechte Form des am wenigsten lichtechten entscheidet",
    fr: "d’après ses pigments, dont décide la forme la moins solide du moins solide",
    es: "por sus pigmentos, de los que decide la forma menos sólida del menos sólido",
  },
  "class by days to touch dry": {
    de: "Klasse nach Tagen bis grifftrocken",
    fr: "classe selon les jours jusqu’au sec au toucher",
    es: "clase por días hasta seco al tacto",
  },
  "class of oil index": {
    de: "Klasse des Ölindex",
    fr: "classe de l’indice d’huile",
    es: "clase del índice de aceite",
  },
  "clumps hold oil: factor by pigment and dispersion": {
    de: "Agglomerate halten Öl fest: Faktor nach Pigment und Anreiben",
    fr: "les amas retiennent de l’huile\u202f: facteur selon le pigment et le broyage",
    es: "los grumos retienen aceite: factor por pigmento y molienda",
  },
  "condition of the trial": {
    de: "Bedingung des Versuchs",
    fr: "condition de l’essai",
    es: "condición del ensayo",
  },
  "days over days without it": {
    de: "Tage durch Tage ohne es",
    fr: "jours sur jours sans lui",
    es: "días entre días sin él",
  },
  "finish by gloss at 60 degrees": {
    de: "Glanzgrad nach Glanz bei 60°",
    fr: "aspect selon la brillance à 60°",
    es: "acabado por el brillo a 60°",
  },
  "finish expected of reduced PVC": {
    de: "Glanzgrad, wie nach der reduzierten PVK zu erwarten",
    fr: "aspect attendu d’après la CPV réduite",
    es: "acabado que se espera de la PVC reducida",
  },
  "for {a} µm, gloss included": {
    de: "für {a} µm, mit Glanz",
    fr: "pour {a} µm, reflet inclus",
    es: "para {a} µm, brillo incluido",
  },
  "for {a} µm, gloss included: thinnest film of contrast ratio {b}": {
    de: "für {a} µm, mit Glanz: dünnster Film mit Kontrastverhältnis {b}",
    fr: "pour {a} µm, reflet inclus\u202f: film le plus mince de rapport de contraste {b}",
    es: "para {a} µm, brillo incluido: la película más fina con relación de contraste {b}",
  },
  "from Lab": { de: "aus Lab", fr: "depuis Lab", es: "a partir de Lab" },
  "gloss included, D65/10": {
    de: "mit Glanz, D65/10",
    fr: "reflet inclus, D65/10",
    es: "brillo incluido, D65/10",
  },
  "handbook range for {a}": {
    de: "Handbuchbereich für {a}",
    fr: "intervalle des manuels pour {a}",
    es: "intervalo de manual para {a}",
  },
  "how far S of a white's films is trusted": {
    de: "wie weit S aus Filmen eines Weiß gilt",
    fr: "jusqu’où se fier à la S des films d’un blanc",
    es: "hasta dónde se confía en la S de las películas de un blanco",
  },
  "how well the let-downs of both tell it": {
    de: "wie genau die Aufhellungen beider es zeigen",
    fr: "avec quelle précision les dégradés des deux le disent",
    es: "con qué precisión lo dicen los rebajes de ambos",
  },
  "its own K and S, the white's S by what other colours do in both whites": {
    de: "eigenes K und S, das S des Weiß danach, wie sich andere Farben in beiden Weiß verhalten",
    fr: "ses propres K et S, la S du blanc d’après ce que d’autres couleurs font dans les deux blancs",
    es: "sus propias K y S, la S del blanco por lo que otros colores hacen en ambos blancos",
  },
  "linseed oil alone x what oil, pigment, drier, film and room each do": {
    de: "Leinöl allein x was Öl, Pigment, Trockenstoff, Film und Raum je bewirken",
    fr: "huile de lin seule x ce que font huile, pigment, siccatif, film et pièce",
    es: "aceite de linaza solo x lo que hacen aceite, pigmento, secante, película y sala",
  },
  "linseed oil alone, thin film, 20 to 23 degrees C": {
    de: "Leinöl allein, dünner Film, 20 bis 23 °C",
    fr: "huile de lin seule, film mince, 20 à 23 °C",
    es: "aceite de linaza solo, película fina, de 20 a 23 °C",
  },
  "mass / volume of all that is in it": {
    de: "Masse / Volumen all dessen, was darin ist",
    fr: "masse / volume de tout ce qu’il contient",
    es: "masa / volumen de todo lo que contiene",
  },
  "mass of dry pigment / mass of all that is in it": {
    de: "Masse des trockenen Pigments / Masse all dessen, was darin ist",
    fr: "masse de pigment sec / masse de tout ce qu’il contient",
    es: "masa de pigmento seco / masa de todo lo que contiene",
  },
  "mass of dry pigment / volume of all that is in it": {
    de: "Masse des trockenen Pigments / Volumen all dessen, was darin ist",
    fr: "masse de pigment sec / volume de tout ce qu’il contient",
    es: "masa de pigmento seco / volumen de todo lo que contiene",
  },
  "mean square of residual over the noise of reading and weighing": {
    de: "mittleres Quadrat des Rests durch das Rauschen von Messen und Wiegen",
    fr: "carré moyen du résidu sur le bruit de mesure et de pesée",
    es: "cuadrado medio del residuo sobre el ruido de medición y pesada",
  },
  "middle one of the misses of its drawdowns": {
    de: "Median der Abweichungen ihrer Aufstriche",
    fr: "médiane des écarts de ses applications",
    es: "mediana de los errores de sus aplicaciones",
  },
  "of those tried, the pair by which left-out let-downs are predicted best": {
    de: "von den erprobten das Paar, das ausgelassene Aufhellungen am besten vorhersagt",
    fr: "parmi celles essayées, la paire qui prévoit le mieux les dégradés laissés de côté",
    es: "de los pares probados, el que mejor prevé los rebajes apartados",
  },
  "oil added until {a} % of the dry film is oil / volume of the wet paint": {
    de: "zugesetztes Öl, bis {a} % des trockenen Films Öl sind / Volumen der nassen Farbe",
    fr: "huile ajoutée jusqu’à ce que {a}\u00a0% du film sec soit de l’huile / volume de la peinture fraîche",
    es: "aceite añadido hasta que el {a}\u00a0% de la película seca sea aceite / volumen de la pintura húmeda",
  },
  "oil index / 1.1 to 2": {
    de: "Ölindex / 1,1 bis 2",
    fr: "indice d’huile / 1,1 à 2",
    es: "índice de aceite / de 1,1 a 2",
  },
  "oil index x density of the pigment": {
    de: "Ölindex x Dichte des Pigments",
    fr: "indice d’huile x masse volumique du pigment",
    es: "índice de aceite x densidad del pigmento",
  },
  "one over colour to white at L* 50": {
    de: "eins durch Farbe zu Weiß bei L* 50",
    fr: "inverse de couleur sur blanc à L* 50",
    es: "uno entre color y blanco a L* 50",
  },
  "the reference's colour to white at L* 50": {
    de: "Farbe zu Weiß der Bezugsfarbe bei L* 50",
    fr: "couleur sur blanc de la référence à L* 50",
    es: "color a blanco de la referencia a L* 50",
  },
  "opacity of a film of {a} µm, by contrast ratio": {
    de: "Deckvermögen eines Films von {a} µm, nach Kontrastverhältnis",
    fr: "opacité d’un film de {a} µm, par rapport de contraste",
    es: "opacidad de una película de {a} µm, por relación de contraste",
  },
  "opacity of a film of {a} µm, by how much it scatters: it is too dark for the contrast ratio": {
    de: "Deckvermögen eines Films von {a} µm, danach, wie stark er streut: Für das Kontrastverhältnis ist er zu dunkel",
    fr: "opacité d’un film de {a} µm, selon ce qu’il diffuse\u202f: il est trop sombre pour le rapport de contraste",
    es: "opacidad de una película de {a} µm, por cuánto dispersa: es demasiado oscura para la relación de contraste",
  },
  "over white, gloss excluded": {
    de: "über Weiß, ohne Glanz",
    fr: "sur blanc, reflet exclu",
    es: "sobre blanco, brillo excluido",
  },
  "parts by mass, as recorded": {
    de: "Masseteile, wie aufgezeichnet",
    fr: "parties en masse, selon les relevés",
    es: "partes en masa, según los registros",
  },
  "parts of paint by mass, as recorded": {
    de: "Masseteile Farbe, wie aufgezeichnet",
    fr: "parties de peinture en masse, selon les relevés",
    es: "partes de pintura en masa, según los registros",
  },
  "relative standard uncertainty of {a}, by wavelength": {
    de: "relative Standardunsicherheit von {a}, nach Wellenlänge",
    fr: "incertitude type relative de {a}, par longueur d’onde",
    es: "incertidumbre típica relativa de {a}, por longitud de onda",
  },
  "renotation of the chip": {
    de: "Renotation des Musters",
    fr: "renotation de l’échantillon",
    es: "renotación de la muestra",
  },
  "renotation, interpolated in LCHab": {
    de: "Renotation, in LCHab interpoliert",
    fr: "renotation, interpolée en LCHab",
    es: "renotación, interpolada en LCHab",
  },
  "renotation, interpolated in LCHab, approximate: adapted from {a}": {
    de: "Renotation, in LCHab interpoliert, angenähert: aus {a} angepasst",
    fr: "renotation, interpolée en LCHab, approchée\u202f: adaptée de {a}",
    es: "renotación, interpolada en LCHab, aproximada: adaptada de {a}",
  },
  "rub-out figure x 1.1 to 2": {
    de: "Ölzahl (angerieben) x 1,1 bis 2",
    fr: "prise d’huile au couteau x 1,1 à 2",
    es: "absorción a espátula x de 1,1 a 2",
  },
  "share by mass over density": {
    de: "Masseanteil durch Dichte",
    fr: "part en masse sur masse volumique",
    es: "parte en masa entre densidad",
  },
  "share by mass, each pigment with its own paint's oil": {
    de: "Masseanteil, jedes Pigment mit dem Öl seiner eigenen Farbe",
    fr: "part en masse, chaque pigment avec l’huile de sa propre peinture",
    es: "parte en masa, cada pigmento con el aceite de su propia pintura",
  },
  "share of paint by mass at which C*ab is least, at L* 50": {
    de: "Masseanteil der Farbe, bei dem C*ab am kleinsten ist, bei L* 50",
    fr: "part de peinture en masse où C*ab est minimale, à L* 50",
    es: "parte de pintura en masa a la que C*ab es mínima, a L* 50",
  },
  "straight between measured neighbours": {
    de: "gerade zwischen gemessenen Nachbarn",
    fr: "en droite ligne entre voisins mesurés",
    es: "en línea recta entre vecinos medidos",
  },
  "surface light of an oil film taken off and put on": {
    de: "Oberflächenlicht eines Ölfilms abgezogen und zugegeben",
    fr: "lumière de surface d’un film d’huile ôtée et ajoutée",
    es: "luz de superficie de una película de aceite restada y sumada",
  },
  "surface light of an oil film taken off and put on: {a} % of it for satin": {
    de: "Oberflächenlicht eines Ölfilms abgezogen und zugegeben: {a} % davon für seidenmatt",
    fr: "lumière de surface d’un film d’huile ôtée et ajoutée\u202f: {a}\u00a0% pour le satiné",
    es: "luz de superficie de una película de aceite restada y sumada: {a}\u00a0% para el satinado",
  },
  "surface light of an oil film taken off the predicted tint": {
    de: "Oberflächenlicht eines Ölfilms von der vorhergesagten Aufhellung abgezogen",
    fr: "lumière de surface d’un film d’huile ôtée du dégradé prévu",
    es: "luz de superficie de una película de aceite restada del rebaje previsto",
  },
  "surface light of an oil film taken off, D65/10": {
    de: "Oberflächenlicht eines Ölfilms abgezogen, D65/10",
    fr: "lumière de surface d’un film d’huile ôtée, D65/10",
    es: "luz de superficie de una película de aceite restada, D65/10",
  },
  "the dry pigment alone": {
    de: "das trockene Pigment allein",
    fr: "le pigment sec seul",
    es: "el pigmento seco solo",
  },
  "the only pigment": { de: "das einzige Pigment", fr: "le seul pigment", es: "el único pigmento" },
  "the same by volume of paint": {
    de: "dasselbe nach Farbvolumen",
    fr: "de même en volume de peinture",
    es: "lo mismo por volumen de pintura",
  },
  "the same of the dry pigment in the paints": {
    de: "dasselbe für das trockene Pigment in den Farben",
    fr: "de même pour le pigment sec dans les peintures",
    es: "lo mismo del pigmento seco en las pinturas",
  },
  "the same of the paints that hold the pigment": {
    de: "dasselbe für die Farben, die das Pigment enthalten",
    fr: "de même pour les peintures qui contiennent le pigment",
    es: "lo mismo de las pinturas que contienen el pigmento",
  },
  "the same over the density of each paint": {
    de: "dasselbe durch die Dichte jeder Farbe",
    fr: "de même sur la masse volumique de chaque peinture",
    es: "lo mismo entre la densidad de cada pintura",
  },
  "the usual one of its geometry": {
    de: "die übliche für seine Geometrie",
    fr: "l’usuelle de sa géométrie",
    es: "la habitual de su geometría",
  },
  "the workshop's own trial": {
    de: "eigener Versuch der Werkstatt",
    fr: "essai de l’atelier",
    es: "ensayo propio del taller",
  },
  "the workshop's own trial: {a} part to {b} parts of {c}": {
    de: "eigener Versuch der Werkstatt: {a} Teil auf {b} Teile {c}",
    fr: "essai de l’atelier\u202f: {a} partie pour {b} parties de {c}",
    es: "ensayo propio del taller: {a} parte por {b} partes de {c}",
  },
  "the workshop's own trial: {a}": {
    de: "eigener Versuch der Werkstatt: {a}",
    fr: "essai de l’atelier\u202f: {a}",
    es: "ensayo propio del taller: {a}",
  },
  "two-constant fit through all drawdowns": {
    de: "Zwei-Konstanten-Anpassung durch alle Aufstriche",
    fr: "ajustement à deux constantes sur toutes les applications",
    es: "ajuste de dos constantes por todas las aplicaciones",
  },
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of dry pigment, by wavelength":
    {
      de: "Zwei-Konstanten-Anpassung, in Einheiten der Streuung von {a}, auf einen Masseteil trockenes Pigment, nach Wellenlänge",
      fr: "ajustement à deux constantes, en unités de la diffusion de {a}, pour une partie en masse de pigment sec, par longueur d’onde",
      es: "ajuste de dos constantes, en unidades de la dispersión de {a}, por una parte en masa de pigmento seco, por longitud de onda",
    },
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of dry pigment: what S hardly passes (97.5 %), by wavelength":
    {
      de: "Zwei-Konstanten-Anpassung, in Einheiten der Streuung von {a}, auf einen Masseteil trockenes Pigment: was S kaum übersteigt (97,5 %), nach Wellenlänge",
      fr: "ajustement à deux constantes, en unités de la diffusion de {a}, pour une partie en masse de pigment sec\u202f: ce que S ne dépasse guère (97,5\u00a0%), par longueur d’onde",
      es: "ajuste de dos constantes, en unidades de la dispersión de {a}, por una parte en masa de pigmento seco: lo que S apenas supera (97,5\u00a0%), por longitud de onda",
    },
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of paint, by wavelength":
    {
      de: "Zwei-Konstanten-Anpassung, in Einheiten der Streuung von {a}, auf einen Masseteil Farbe, nach Wellenlänge",
      fr: "ajustement à deux constantes, en unités de la diffusion de {a}, pour une partie en masse de peinture, par longueur d’onde",
      es: "ajuste de dos constantes, en unidades de la dispersión de {a}, por una parte en masa de pintura, por longitud de onda",
    },
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of paint: what S hardly passes (97.5 %), by wavelength":
    {
      de: "Zwei-Konstanten-Anpassung, in Einheiten der Streuung von {a}, auf einen Masseteil Farbe: was S kaum übersteigt (97,5 %), nach Wellenlänge",
      fr: "ajustement à deux constantes, en unités de la diffusion de {a}, pour une partie en masse de peinture\u202f: ce que S ne dépasse guère (97,5\u00a0%), par longueur d’onde",
      es: "ajuste de dos constantes, en unidades de la dispersión de {a}, por una parte en masa de pintura: lo que S apenas supera (97,5\u00a0%), por longitud de onda",
    },
  "usual range of {a} oil": {
    de: "üblicher Bereich dieses Öls ({a})",
    fr: "intervalle usuel de cette huile ({a})",
    es: "intervalo habitual de este aceite ({a})",
  },
  "solvents among its components, as many of its volume as of its mass": {
    de: "Lösemittel unter den Bestandteilen, so viel vom Volumen wie von der Masse",
    fr: "solvants parmi ses composants, autant du volume que de la masse",
    es: "disolventes entre sus componentes, tanto del volumen como de la masa",
  },
  "volume of all but thinner / volume of the wet paint": {
    de: "Volumen von allem außer Verdünner / Volumen der nassen Farbe",
    fr: "volume de tout sauf le diluant / volume de la peinture fraîche",
    es: "volumen de todo menos el diluyente / volumen de la pintura húmeda",
  },
  "ΔE00 (D65/10) between the tint at L* 50 and the same after the loss": {
    de: "ΔE00 (D65/10) zwischen der Aufhellung bei L* 50 und derselben nach dem Verlust",
    fr: "ΔE00 (D65/10) entre le dégradé à L* 50 et le même après la perte",
    es: "ΔE00 (D65/10) entre el rebaje a L* 50 y el mismo tras la pérdida",
  },
  "ΔE00 between what its components predict and its own drawdown": {
    de: "ΔE00 zwischen dem, was ihre Komponenten vorhersagen, und ihrem eigenen Aufstrich",
    fr: "ΔE00 entre ce que prévoient ses composants et sa propre application",
    es: "ΔE00 entre lo que prevén sus componentes y su propia aplicación",
  },
  "measured on one lot": {
    de: "an einer Charge gemessen",
    fr: "mesuré sur un lot",
    es: "medido en un lote",
  },
  "median measured on {a} lots": {
    de: "Median aus {a} gemessenen Chargen",
    fr: "médiane mesurée sur {a} lots",
    es: "mediana medida en {a} lotes",
  },
  "density of the paint x share of dry pigment": {
    de: "Dichte der Farbe x Anteil des trockenen Pigments",
    fr: "masse volumique de la peinture x part de pigment sec",
    es: "densidad de la pintura x parte de pigmento seco",
  },
  "what lots lost, least and most": {
    de: "was Chargen verloren, von der geringsten zur größten Menge",
    fr: "ce que des lots ont perdu, du moins au plus",
    es: "lo que perdieron lotes, de menos a más",
  },
};
