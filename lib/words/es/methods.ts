import type { MethodTexts } from "../en/methods.ts";

export const METHODS: MethodTexts = {
  "1 - PVC": "1 - PVC",
  "{a} % of metal in it, as recorded": "{a} % de metal, según los registros",
  "10 000 / film that hides [µm] x volume solids":
    "10 000 / película que cubre [µm] x sólidos en volumen",
  "100 g / density": "100 g / densidad",
  "{a} ml x density": "{a} ml x densidad",
  "C*ab (D65/10) of that grey": "C*ab (D65/10) de ese gris",
  "CIE 1976, exposed against kept dark": "CIE 1976, expuesto frente a guardado a oscuras",
  "CIE 1976, exposed against kept dark, of the form that changed most":
    "CIE 1976, expuesto frente a guardado a oscuras, de la forma que más cambió",
  "CIE 1976, mean of {a} exposures": "CIE 1976, media de {a} exposiciones",
  "CIE sums of {a}, d/8 excluded": "sumas CIE de {a}, d/8 brillo excluido",
  "CIE sums of {a}, d/8 included": "sumas CIE de {a}, d/8 brillo incluido",
  "CIE sums of {a}, 45/0": "sumas CIE de {a}, 45/0",
  "CIE sums of {a}, {b}, 10 degree observer of CIE 2006":
    "sumas CIE de {a}, {b}, observador de 10° de CIE 2006",
  "CPVC = 1/(1 + OA rho/93.5)": "CPVC = 1/(1 + AA rho/93.5)",
  "CPVC x dispersion factor": "CPVC x factor de molienda",
  "CSS colour from D65/2": "color CSS a partir de D65/2",
  "CSS colour, approximate: adapted from {a}": "color CSS, aproximado: adaptado de {a}",
  "Delta-E00 of {a} and {b} carried over by CAT16": "ΔE00 de {a} y {b}, trasladado por CAT16",
  "ISCC-NBS block of the Munsell notation": "bloque ISCC-NBS de la notación Munsell",
  "ISCC-NBS block of the Munsell notation, approximate: adapted from {a}":
    "bloque ISCC-NBS de la notación Munsell, aproximado: adaptado de {a}",
  "K and S from films of {a} µm over the workshop's own opacity chart as read (Y {b} and {c}, {d})":
    "K y S de películas de {a} µm sobre la carta de opacidad del taller, tal como se midió (Y {b} y {c}, {d})",
  "K and S from films of {a} µm over an opacity chart assumed to read {b} and {c}":
    "K y S de películas de {a} µm sobre una carta de opacidad que se supone de {b} y {c}",
  "K and S from its films": "K y S de sus películas",
  "K and S from its let-downs in {a}, those of {b} from its films":
    "K y S según sus rebajes en {a}, los de {b} según sus películas",
  "K and S of its components' own paints, added":
    "K y S de las pinturas de sus componentes, sumados",
  "K and S of its components' own paints, one of them less by what it lost":
    "K y S de las pinturas de sus componentes, una de ellas menos lo que perdió",
  "K and S of {a} from its let-downs in {b}, of {c} and of the medium from their films, mixed by volume":
    "K y S de {a} según sus rebajes en {b}, de {c} y del médium según sus películas, mezclados por volumen",
  "K/S of let-downs equal by mass of dry pigment in {a}, mulled against milled":
    "K/S de rebajes a igual masa de pigmento seco en {a}, molido con moleta frente a molido a máquina",
  "K/S of let-downs equal by mass of paint in {a}, against {b} = 1":
    "K/S de rebajes a igual masa de pintura en {a}, frente a {b} = 1",
  "K/S of let-downs equal by volume of paint in {a}, against {b} = 1":
    "K/S de rebajes a igual volumen de pintura en {a}, frente a {b} = 1",
  "Lab as read, {a}": "Lab tal como se midió, {a}",
  "Munsell chip, by eye": "muestra Munsell, a ojo",
  "PVC / CPVC": "PVC / CPVC",
  "PVC = pigment volume / (pigment + oil and medium volume)":
    "PVC = volumen de pigmento / (volumen de pigmento + aceite y médium)",
  "PVC = pigment volume / (pigment + oil volume)":
    "PVC = volumen de pigmento / (volumen de pigmento + aceite)",
  "S of its films times {a} µm, averaged over the light that it throws back":
    "S de sus películas por {a} µm, promediada sobre la luz que devuelve",
  "S of its let-downs in units of the white's S, times that of the white's films and {a} µm":
    "S de sus rebajes en unidades de la S del blanco, por la de las películas del blanco y {a} µm",
  "as in the category, by colour change alone": "como en la categoría, solo por el cambio de color",
  "as recorded": "según los registros",
  "as recorded with the readings": "según consta con las mediciones",
  "as seen by the workshop": "tal como se vio en el taller",
  "as stated for {a}": "según se declara para {a}",
  "as stated for the colour": "según se declara para el color",
  "as stated, on the scale of ISO 105-B02": "según se declara, en la escala de ISO 105-B02",
  "the weakest of its pigments, as stated, on the scale of ISO 105-B02":
    "el más débil de sus pigmentos, según se declara, en la escala de ISO 105-B02",
  "an opacity chart as it is usually printed": "una carta de opacidad como se imprime de ordinario",
  "between what its parts take alone, as tried or by the rules, each by its share":
    "entre lo que tardan sus partes solas, ensayadas o según las reglas, cada una por su parte",
  "blend by pigment volume": "mezcla por volumen de pigmento",
  "blend by volume": "mezcla por volumen",
  "by colour change against the standard's limits":
    "por el cambio de color frente a los límites de la norma",
  "the exposure was another": "la exposición fue otra",
  "by its Colour Index name": "por su nombre del Colour Index",
  "by its pigments, of which the least lightfast form of the least lightfast decides":
    "por sus pigmentos, de los que decide la forma menos sólida del menos sólido",
  "class by days to touch dry": "clase por días hasta seco al tacto",
  "class of oil index": "clase del índice de aceite",
  "clumps hold oil: factor by pigment and dispersion":
    "los grumos retienen aceite: factor por pigmento y molienda",
  "condition of the trial": "condición del ensayo",
  "days over days without it": "días entre días sin él",
  "finish by gloss at 60 degrees": "acabado por el brillo a 60°",
  "finish expected of reduced PVC": "acabado que se espera de la PVC reducida",
  "for {a} µm, gloss included": "para {a} µm, brillo incluido",
  "for {a} µm, gloss included: thinnest film of contrast ratio {b}":
    "para {a} µm, brillo incluido: la película más fina con relación de contraste {b}",
  "from Lab": "a partir de Lab",
  "gloss included, D65/10": "brillo incluido, D65/10",
  "handbook range for {a}": "intervalo de manual para {a}",
  "how far S of a white's films is trusted":
    "hasta dónde se confía en la S de las películas de un blanco",
  "how well the let-downs of both tell it": "con qué precisión lo dicen los rebajes de ambos",
  "its own K and S, the white's S by what other colours do in both whites":
    "sus propias K y S, la S del blanco por lo que otros colores hacen en ambos blancos",
  "linseed oil alone x what oil, pigment, drier, film and room each do":
    "aceite de linaza solo x lo que hacen aceite, pigmento, secante, película y sala",
  "linseed oil alone, thin film, 20 to 23 degrees C":
    "aceite de linaza solo, película fina, de 20 a 23 °C",
  "mass / volume of all that is in it": "masa / volumen de todo lo que contiene",
  "mass of dry pigment / mass of all that is in it":
    "masa de pigmento seco / masa de todo lo que contiene",
  "mass of dry pigment / volume of all that is in it":
    "masa de pigmento seco / volumen de todo lo que contiene",
  "mean square of residual over the noise of reading and weighing":
    "cuadrado medio del residuo sobre el ruido de medición y pesada",
  "middle one of the misses of its drawdowns": "mediana de los errores de sus aplicaciones",
  "of those tried, the pair by which left-out let-downs are predicted best":
    "de los pares probados, el que mejor prevé los rebajes apartados",
  "oil added until {a} % of the dry film is oil / volume of the wet paint":
    "aceite añadido hasta que el {a} % de la película seca sea aceite / volumen de la pintura húmeda",
  "oil index / 1.1 to 2": "índice de aceite / de 1.1 a 2",
  "oil index x density of the pigment": "índice de aceite x densidad del pigmento",
  "one over colour to white at L* 50": "uno entre color y blanco a L* 50",
  "the reference's colour to white at L* 50": "color a blanco de la referencia a L* 50",
  "opacity of a film of {a} µm, by contrast ratio":
    "opacidad de una película de {a} µm, por relación de contraste",
  "opacity of a film of {a} µm, by how much it scatters: it is too dark for the contrast ratio":
    "opacidad de una película de {a} µm, por cuánto dispersa: es demasiado oscura para la relación de contraste",
  "over white, gloss excluded": "sobre blanco, brillo excluido",
  "parts by mass, as recorded": "partes en masa, según los registros",
  "parts of paint by mass, as recorded": "partes de pintura en masa, según los registros",
  "relative standard uncertainty of {a}, by wavelength":
    "incertidumbre típica relativa de {a}, por longitud de onda",
  "renotation of the chip": "renotación de la muestra",
  "renotation, interpolated in LCHab": "renotación, interpolada en LCHab",
  "renotation, interpolated in LCHab, approximate: adapted from {a}":
    "renotación, interpolada en LCHab, aproximada: adaptada de {a}",
  "rub-out figure x 1.1 to 2": "absorción a espátula x de 1.1 a 2",
  "share by mass over density": "parte en masa entre densidad",
  "share by mass, each pigment with its own paint's oil":
    "parte en masa, cada pigmento con el aceite de su propia pintura",
  "share of paint by mass at which C*ab is least, at L* 50":
    "parte de pintura en masa a la que C*ab es mínima, a L* 50",
  "straight between measured neighbours": "en línea recta entre vecinos medidos",
  "surface light of an oil film taken off and put on":
    "luz de superficie de una película de aceite restada y sumada",
  "surface light of an oil film taken off and put on: {a} % of it for satin":
    "luz de superficie de una película de aceite restada y sumada: {a} % para el satinado",
  "surface light of an oil film taken off the predicted tint":
    "luz de superficie de una película de aceite restada del rebaje previsto",
  "surface light of an oil film taken off, D65/10":
    "luz de superficie de una película de aceite restada, D65/10",
  "the dry pigment alone": "el pigmento seco solo",
  "the only pigment": "el único pigmento",
  "the same by volume of paint": "lo mismo por volumen de pintura",
  "the same of the dry pigment in the paints": "lo mismo del pigmento seco en las pinturas",
  "the same of the paints that hold the pigment":
    "lo mismo de las pinturas que contienen el pigmento",
  "the same over the density of each paint": "lo mismo entre la densidad de cada pintura",
  "the usual one of its geometry": "la habitual de su geometría",
  "the workshop's own trial": "ensayo propio del taller",
  "the workshop's own trial: {a} part to {b} parts of {c}":
    "ensayo propio del taller: {a} parte por {b} partes de {c}",
  "the workshop's own trial: {a}": "ensayo propio del taller: {a}",
  "two-constant fit through all drawdowns": "ajuste de dos constantes por todas las aplicaciones",
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of dry pigment, by wavelength":
    "ajuste de dos constantes, en unidades de la dispersión de {a}, por una parte en masa de pigmento seco, por longitud de onda",
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of dry pigment: what S hardly passes (97.5 %), by wavelength":
    "ajuste de dos constantes, en unidades de la dispersión de {a}, por una parte en masa de pigmento seco: lo que S apenas supera (97.5 %), por longitud de onda",
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of paint, by wavelength":
    "ajuste de dos constantes, en unidades de la dispersión de {a}, por una parte en masa de pintura, por longitud de onda",
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of paint: what S hardly passes (97.5 %), by wavelength":
    "ajuste de dos constantes, en unidades de la dispersión de {a}, por una parte en masa de pintura: lo que S apenas supera (97.5 %), por longitud de onda",
  "usual range of {a} oil": "intervalo habitual de este aceite ({a})",
  "solvents among its components, as many of its volume as of its mass":
    "disolventes entre sus componentes, tanto del volumen como de la masa",
  "volume of all but thinner / volume of the wet paint":
    "volumen de todo menos el diluyente / volumen de la pintura húmeda",
  "ΔE00 (D65/10) between the tint at L* 50 and the same after the loss":
    "ΔE00 (D65/10) entre el rebaje a L* 50 y el mismo tras la pérdida",
  "ΔE00 between what its components predict and its own drawdown":
    "ΔE00 entre lo que prevén sus componentes y su propia aplicación",
  "measured on one lot": "medido en un lote",
  "median measured on {a} lots": "mediana medida en {a} lotes",
  "density of the paint x share of dry pigment": "densidad de la pintura x parte de pigmento seco",
  "what lots lost, least and most": "lo que perdieron lotes, de menos a más",
};
