import type { MethodTexts } from "../en/methods.ts";

export const METHODS: MethodTexts = {
  "1 - PVC": "1 - CPV",
  "{a} % of metal in it, as recorded": "{a} % de métal, selon les relevés",
  "10 000 / film that hides [µm] x volume solids":
    "10 000 / film couvrant [µm] x extrait sec en volume",
  "100 g / density": "100 g / masse volumique",
  "{a} ml x density": "{a} ml x masse volumique",
  "C*ab (D65/10) of that grey": "C*ab (D65/10) de ce gris",
  "CIE 1976, exposed against kept dark":
    "CIE 1976, partie exposée par rapport à la partie gardée à l’obscurité",
  "CIE 1976, exposed against kept dark, of the form that changed most":
    "CIE 1976, partie exposée par rapport à la partie gardée à l’obscurité, pour la forme qui a le plus changé",
  "CIE 1976, mean of {a} exposures": "CIE 1976, moyenne de {a} expositions",
  "CIE sums of {a}, d/8 excluded": "sommes CIE de {a}, d/8 reflet exclu",
  "CIE sums of {a}, d/8 included": "sommes CIE de {a}, d/8 reflet inclus",
  "CIE sums of {a}, 45/0": "sommes CIE de {a}, 45/0",
  "CIE sums of {a}, {b}, 10 degree observer of CIE 2006":
    "sommes CIE de {a}, {b}, observateur 10° de CIE 2006",
  "CPVC = 1/(1 + OA rho/93.5)": "CPVC = 1/(1 + PH rho/93.5)",
  "CPVC x dispersion factor": "CPVC x facteur de broyage",
  "CSS colour from D65/2": "couleur CSS depuis D65/2",
  "CSS colour, approximate: adapted from {a}": "couleur CSS, approchée : adaptée de {a}",
  "Delta-E00 of {a} and {b} carried over by CAT16": "ΔE00 de {a} et {b}, transposé par CAT16",
  "ISCC-NBS block of the Munsell notation": "bloc ISCC-NBS de la notation Munsell",
  "ISCC-NBS block of the Munsell notation, approximate: adapted from {a}":
    "bloc ISCC-NBS de la notation Munsell, approché : adapté de {a}",
  "K and S from films of {a} µm over the workshop's own opacity chart as read (Y {b} and {c}, {d})":
    "K et S d’après des films de {a} µm sur la carte d’opacité de l’atelier, telle que mesurée (Y {b} et {c}, {d})",
  "K and S from films of {a} µm over an opacity chart assumed to read {b} and {c}":
    "K et S d’après des films de {a} µm sur une carte d’opacité supposée de {b} et {c}",
  "K and S from its films": "K et S d’après ses films",
  "K and S from its let-downs in {a}, those of {b} from its films":
    "K et S d’après ses dégradés dans {a}, ceux de {b} d’après ses films",
  "K and S of its components' own paints, added":
    "K et S des peintures de ses composants, additionnés",
  "K and S of its components' own paints, one of them less by what it lost":
    "K et S des peintures de ses composants, l’une diminuée de ce qu’elle a perdu",
  "K and S of {a} from its let-downs in {b}, of {c} and of the medium from their films, mixed by volume":
    "K et S de {a} d’après ses dégradés dans {b}, de {c} et du médium d’après leurs films, mélangés en volume",
  "K/S of let-downs equal by mass of dry pigment in {a}, mulled against milled":
    "K/S de dégradés à masse égale de pigment sec dans {a}, broyé à la molette par rapport à broyé à la machine",
  "K/S of let-downs equal by mass of paint in {a}, against {b} = 1":
    "K/S de dégradés à masse égale de peinture dans {a}, par rapport à {b} = 1",
  "K/S of let-downs equal by volume of paint in {a}, against {b} = 1":
    "K/S de dégradés à volume égal de peinture dans {a}, par rapport à {b} = 1",
  "Lab as read, {a}": "Lab tel que mesuré, {a}",
  "Munsell chip, by eye": "échantillon Munsell, à l’œil",
  "PVC / CPVC": "CPV / CPVC",
  "PVC = pigment volume / (pigment + oil and medium volume)":
    "CPV = volume de pigment / (volume de pigment + d’huile et de médium)",
  "PVC = pigment volume / (pigment + oil volume)":
    "CPV = volume de pigment / (volume de pigment + d’huile)",
  "S of its films times {a} µm, averaged over the light that it throws back":
    "S de ses films fois {a} µm, en moyenne sur la lumière qu’il renvoie",
  "S of its let-downs in units of the white's S, times that of the white's films and {a} µm":
    "S de ses dégradés en unités de la S du blanc, fois celle des films du blanc et {a} µm",
  "as in the category, by colour change alone":
    "comme dans la catégorie, par le seul changement de couleur",
  "as recorded": "selon les relevés",
  "as recorded with the readings": "selon les relevés, avec les mesures",
  "as seen by the workshop": "tel que vu à l’atelier",
  "as stated for {a}": "comme indiqué pour {a}",
  "as stated for the colour": "comme indiqué pour la couleur",
  "as stated, on the scale of ISO 105-B02": "comme indiqué, sur l’échelle d’ISO 105-B02",
  "the weakest of its pigments, as stated, on the scale of ISO 105-B02":
    "le plus faible de ses pigments, comme indiqué, sur l’échelle d’ISO 105-B02",
  "an opacity chart as it is usually printed":
    "une carte d’opacité telle qu’on l’imprime d’ordinaire",
  "between what its parts take alone, as tried or by the rules, each by its share":
    "entre ce que ses parties demandent seules, à l’essai ou selon les règles, chacune selon sa part",
  "blend by pigment volume": "mélange selon le volume de pigment",
  "blend by volume": "mélange selon le volume",
  "by colour change against the standard's limits":
    "par le changement de couleur, au regard des limites de la norme",
  "the exposure was another": "l’exposition était autre",
  "by its Colour Index name": "d’après son nom du Colour Index",
  "by its pigments, of which the least lightfast form of the least lightfast decides":
    "d’après ses pigments, dont décide la forme la moins solide du moins solide",
  "class by days to touch dry": "classe selon les jours jusqu’au sec au toucher",
  "class of oil index": "classe de l’indice d’huile",
  "clumps hold oil: factor by pigment and dispersion":
    "les amas retiennent de l’huile : facteur selon le pigment et le broyage",
  "condition of the trial": "condition de l’essai",
  "days over days without it": "jours sur jours sans lui",
  "finish by gloss at 60 degrees": "aspect selon la brillance à 60°",
  "finish expected of reduced PVC": "aspect attendu d’après la CPV réduite",
  "for {a} µm, gloss included": "pour {a} µm, reflet inclus",
  "for {a} µm, gloss included: thinnest film of contrast ratio {b}":
    "pour {a} µm, reflet inclus : film le plus mince de rapport de contraste {b}",
  "from Lab": "depuis Lab",
  "gloss included, D65/10": "reflet inclus, D65/10",
  "handbook range for {a}": "intervalle des manuels pour {a}",
  "how far S of a white's films is trusted": "jusqu’où se fier à la S des films d’un blanc",
  "how well the let-downs of both tell it": "avec quelle précision les dégradés des deux le disent",
  "its own K and S, the white's S by what other colours do in both whites":
    "ses propres K et S, la S du blanc d’après ce que d’autres couleurs font dans les deux blancs",
  "linseed oil alone x what oil, pigment, drier, film and room each do":
    "huile de lin seule x ce que font huile, pigment, siccatif, film et pièce",
  "linseed oil alone, thin film, 20 to 23 degrees C": "huile de lin seule, film mince, 20 à 23 °C",
  "mass / volume of all that is in it": "masse / volume de tout ce qu’il contient",
  "mass of dry pigment / mass of all that is in it":
    "masse de pigment sec / masse de tout ce qu’il contient",
  "mass of dry pigment / volume of all that is in it":
    "masse de pigment sec / volume de tout ce qu’il contient",
  "mean square of residual over the noise of reading and weighing":
    "carré moyen du résidu sur le bruit de mesure et de pesée",
  "middle one of the misses of its drawdowns": "médiane des écarts de ses applications",
  "of those tried, the pair by which left-out let-downs are predicted best":
    "parmi celles essayées, la paire qui prévoit le mieux les dégradés laissés de côté",
  "oil added until {a} % of the dry film is oil / volume of the wet paint":
    "huile ajoutée jusqu’à ce que {a} % du film sec soit de l’huile / volume de la peinture fraîche",
  "oil index / 1.1 to 2": "indice d’huile / 1.1 à 2",
  "oil index x density of the pigment": "indice d’huile x masse volumique du pigment",
  "one over colour to white at L* 50": "inverse de couleur sur blanc à L* 50",
  "the reference's colour to white at L* 50": "couleur sur blanc de la référence à L* 50",
  "opacity of a film of {a} µm, by contrast ratio":
    "opacité d’un film de {a} µm, par rapport de contraste",
  "opacity of a film of {a} µm, by how much it scatters: it is too dark for the contrast ratio":
    "opacité d’un film de {a} µm, selon ce qu’il diffuse : il est trop sombre pour le rapport de contraste",
  "over white, gloss excluded": "sur blanc, reflet exclu",
  "parts by mass, as recorded": "parties en masse, selon les relevés",
  "parts of paint by mass, as recorded": "parties de peinture en masse, selon les relevés",
  "relative standard uncertainty of {a}, by wavelength":
    "incertitude type relative de {a}, par longueur d’onde",
  "renotation of the chip": "renotation de l’échantillon",
  "renotation, interpolated in LCHab": "renotation, interpolée en LCHab",
  "renotation, interpolated in LCHab, approximate: adapted from {a}":
    "renotation, interpolée en LCHab, approchée : adaptée de {a}",
  "rub-out figure x 1.1 to 2": "prise d’huile au couteau x 1.1 à 2",
  "share by mass over density": "part en masse sur masse volumique",
  "share by mass, each pigment with its own paint's oil":
    "part en masse, chaque pigment avec l’huile de sa propre peinture",
  "share of paint by mass at which C*ab is least, at L* 50":
    "part de peinture en masse où C*ab est minimale, à L* 50",
  "straight between measured neighbours": "en droite ligne entre voisins mesurés",
  "surface light of an oil film taken off and put on":
    "lumière de surface d’un film d’huile ôtée et ajoutée",
  "surface light of an oil film taken off and put on: {a} % of it for satin":
    "lumière de surface d’un film d’huile ôtée et ajoutée : {a} % pour le satiné",
  "surface light of an oil film taken off the predicted tint":
    "lumière de surface d’un film d’huile ôtée du dégradé prévu",
  "surface light of an oil film taken off, D65/10":
    "lumière de surface d’un film d’huile ôtée, D65/10",
  "the dry pigment alone": "le pigment sec seul",
  "the only pigment": "le seul pigment",
  "the same by volume of paint": "de même en volume de peinture",
  "the same of the dry pigment in the paints": "de même pour le pigment sec dans les peintures",
  "the same of the paints that hold the pigment":
    "de même pour les peintures qui contiennent le pigment",
  "the same over the density of each paint": "de même sur la masse volumique de chaque peinture",
  "the usual one of its geometry": "l’usuelle de sa géométrie",
  "the workshop's own trial": "essai de l’atelier",
  "the workshop's own trial: {a} part to {b} parts of {c}":
    "essai de l’atelier : {a} partie pour {b} parties de {c}",
  "the workshop's own trial: {a}": "essai de l’atelier : {a}",
  "two-constant fit through all drawdowns":
    "ajustement à deux constantes sur toutes les applications",
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of dry pigment, by wavelength":
    "ajustement à deux constantes, en unités de la diffusion de {a}, pour une partie en masse de pigment sec, par longueur d’onde",
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of dry pigment: what S hardly passes (97.5 %), by wavelength":
    "ajustement à deux constantes, en unités de la diffusion de {a}, pour une partie en masse de pigment sec : ce que S ne dépasse guère (97.5 %), par longueur d’onde",
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of paint, by wavelength":
    "ajustement à deux constantes, en unités de la diffusion de {a}, pour une partie en masse de peinture, par longueur d’onde",
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of paint: what S hardly passes (97.5 %), by wavelength":
    "ajustement à deux constantes, en unités de la diffusion de {a}, pour une partie en masse de peinture : ce que S ne dépasse guère (97.5 %), par longueur d’onde",
  "usual range of {a} oil": "intervalle usuel de cette huile ({a})",
  "solvents among its components, as many of its volume as of its mass":
    "solvants parmi ses composants, autant du volume que de la masse",
  "volume of all but thinner / volume of the wet paint":
    "volume de tout sauf le diluant / volume de la peinture fraîche",
  "ΔE00 (D65/10) between the tint at L* 50 and the same after the loss":
    "ΔE00 (D65/10) entre le dégradé à L* 50 et le même après la perte",
  "ΔE00 between what its components predict and its own drawdown":
    "ΔE00 entre ce que prévoient ses composants et sa propre application",
  "measured on one lot": "mesuré sur un lot",
  "median measured on {a} lots": "médiane mesurée sur {a} lots",
  "density of the paint x share of dry pigment":
    "masse volumique de la peinture x part de pigment sec",
  "what lots lost, least and most": "ce que des lots ont perdu, du moins au plus",
};
