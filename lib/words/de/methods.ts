import type { MethodTexts } from "../en/methods.ts";

export const METHODS: MethodTexts = {
  "1 - PVC": "1 - PVK",
  "{a} % of metal in it, as recorded": "{a} % Metall darin, wie aufgezeichnet",
  "10 000 / film that hides [µm] x volume solids":
    "10 000 / deckender Film [µm] x Festkörpervolumen",
  "100 g / density": "100 g / Dichte",
  "{a} ml x density": "{a} ml x Dichte",
  "C*ab (D65/10) of that grey": "C*ab (D65/10) dieses Graus",
  "CIE 1976, exposed against kept dark": "CIE 1976, belichtet gegen dunkel aufbewahrt",
  "CIE 1976, exposed against kept dark, of the form that changed most":
    "CIE 1976, belichtet gegen dunkel aufbewahrt, an der Form, die sich am meisten änderte",
  "CIE 1976, mean of {a} exposures": "CIE 1976, Mittel aus {a} Belichtungen",
  "CIE sums of {a}, d/8 excluded": "CIE-Summen von {a}, d/8 ohne Glanz",
  "CIE sums of {a}, d/8 included": "CIE-Summen von {a}, d/8 mit Glanz",
  "CIE sums of {a}, 45/0": "CIE-Summen von {a}, 45/0",
  "CIE sums of {a}, {b}, 10 degree observer of CIE 2006":
    "CIE-Summen von {a}, {b}, 10°-Beobachter von CIE 2006",
  "CPVC = 1/(1 + OA rho/93.5)": "KPVK = 1/(1 + ÖZ rho/93.5)",
  "CPVC x dispersion factor": "KPVK x Dispergierfaktor",
  "CSS colour from D65/2": "CSS-Farbe aus D65/2",
  "CSS colour, approximate: adapted from {a}": "CSS-Farbe, angenähert: aus {a} angepasst",
  "Delta-E00 of {a} and {b} carried over by CAT16": "ΔE00 von {a} und {b}, mit CAT16 übertragen",
  "ISCC-NBS block of the Munsell notation": "ISCC-NBS-Block der Munsell-Notation",
  "ISCC-NBS block of the Munsell notation, approximate: adapted from {a}":
    "ISCC-NBS-Block der Munsell-Notation, angenähert: aus {a} angepasst",
  "K and S from films of {a} µm over the workshop's own opacity chart as read (Y {b} and {c}, {d})":
    "K und S aus Filmen von {a} µm über der eigenen Prüfkarte, wie gemessen (Y {b} und {c}, {d})",
  "K and S from films of {a} µm over an opacity chart assumed to read {b} and {c}":
    "K und S aus Filmen von {a} µm über einer Prüfkarte, angenommen mit {b} und {c}",
  "K and S from its films": "K und S aus ihren Filmen",
  "K and S from its let-downs in {a}, those of {b} from its films":
    "K und S aus ihren Aufhellungen in {a}, die von {b} aus dessen Filmen",
  "K and S of its components' own paints, added": "K und S der Farben ihrer Komponenten, addiert",
  "K and S of its components' own paints, one of them less by what it lost":
    "K und S der Farben ihrer Komponenten, eine davon um den Verlust vermindert",
  "K and S of {a} from its let-downs in {b}, of {c} and of the medium from their films, mixed by volume":
    "K und S von {a} aus den Aufhellungen in {b}, von {c} und dem Streckmedium aus deren Filmen, nach Volumen gemischt",
  "K/S of let-downs equal by mass of dry pigment in {a}, mulled against milled":
    "K/S von Aufhellungen gleicher Masse an trockenem Pigment in {a}, angerieben gegen gewalzt",
  "K/S of let-downs equal by mass of paint in {a}, against {b} = 1":
    "K/S von Aufhellungen gleicher Farbmasse in {a}, gegen {b} = 1",
  "K/S of let-downs equal by volume of paint in {a}, against {b} = 1":
    "K/S von Aufhellungen gleichen Farbvolumens in {a}, gegen {b} = 1",
  "Lab as read, {a}": "Lab wie gemessen, {a}",
  "Munsell chip, by eye": "Munsell-Muster, nach Augenmaß",
  "PVC / CPVC": "PVK / KPVK",
  "PVC = pigment volume / (pigment + oil and medium volume)":
    "PVK = Pigmentvolumen / (Pigment- + Öl- und Malmittelvolumen)",
  "PVC = pigment volume / (pigment + oil volume)": "PVK = Pigmentvolumen / (Pigment- + Ölvolumen)",
  "S of its films times {a} µm, averaged over the light that it throws back":
    "S ihrer Filme mal {a} µm, gemittelt über das Licht, das sie zurückwirft",
  "S of its let-downs in units of the white's S, times that of the white's films and {a} µm":
    "S ihrer Aufhellungen in Einheiten des S des Weiß, mal S der Filme des Weiß und {a} µm",
  "as in the category, by colour change alone":
    "wie in der Kategorie, allein nach der Farbänderung",
  "as recorded": "wie aufgezeichnet",
  "as recorded with the readings": "wie mit den Messungen aufgezeichnet",
  "as seen by the workshop": "wie in der Werkstatt gesehen",
  "as stated for {a}": "wie für {a} angegeben",
  "as stated for the colour": "wie für die Farbe angegeben",
  "as stated, on the scale of ISO 105-B02": "wie angegeben, nach der Skala von ISO 105-B02",
  "the weakest of its pigments, as stated, on the scale of ISO 105-B02":
    "das schwächste ihrer Pigmente, wie angegeben, nach der Skala von ISO 105-B02",
  "an opacity chart as it is usually printed":
    "eine Prüfkarte, wie sie üblicherweise gedruckt wird",
  "between what its parts take alone, as tried or by the rules, each by its share":
    "zwischen dem, was ihre Teile allein brauchen, wie erprobt oder nach den Regeln, jeder nach seinem Anteil",
  "blend by pigment volume": "Mischung nach Pigmentvolumen",
  "blend by volume": "Mischung nach Volumen",
  "by colour change against the standard's limits":
    "nach der Farbänderung gegen die Grenzen der Norm",
  "the exposure was another": "die Belichtung war eine andere",
  "by its Colour Index name": "nach seinem Colour-Index-Namen",
  "by its pigments, of which the least lightfast form of the least lightfast decides":
    "nach ihren Pigmenten, von denen die am wenigsten lichtechte Form des am wenigsten lichtechten entscheidet",
  "class by days to touch dry": "Klasse nach Tagen bis grifftrocken",
  "class of oil index": "Klasse des Ölindex",
  "clumps hold oil: factor by pigment and dispersion":
    "Agglomerate halten Öl fest: Faktor nach Pigment und Anreiben",
  "condition of the trial": "Bedingung des Versuchs",
  "days over days without it": "Tage durch Tage ohne es",
  "finish by gloss at 60 degrees": "Glanzgrad nach Glanz bei 60\u00b0",
  "finish expected of reduced PVC": "Glanzgrad, wie nach der reduzierten PVK zu erwarten",
  "for {a} µm, gloss included": "für {a} µm, mit Glanz",
  "for {a} µm, gloss included: thinnest film of contrast ratio {b}":
    "für {a} µm, mit Glanz: dünnster Film mit Kontrastverhältnis {b}",
  "from Lab": "aus Lab",
  "gloss included, D65/10": "mit Glanz, D65/10",
  "handbook range for {a}": "Handbuchbereich für {a}",
  "how far S of a white's films is trusted": "wie weit S aus Filmen eines Weiß gilt",
  "how well the let-downs of both tell it": "wie genau die Aufhellungen beider es zeigen",
  "its own K and S, the white's S by what other colours do in both whites":
    "eigenes K und S, das S des Weiß danach, wie sich andere Farben in beiden Weiß verhalten",
  "linseed oil alone x what oil, pigment, drier, film and room each do":
    "Leinöl allein x was Öl, Pigment, Trockenstoff, Film und Raum je bewirken",
  "linseed oil alone, thin film, 20 to 23 degrees C": "Leinöl allein, dünner Film, 20 bis 23 °C",
  "mass / volume of all that is in it": "Masse / Volumen all dessen, was darin ist",
  "mass of dry pigment / mass of all that is in it":
    "Masse des trockenen Pigments / Masse all dessen, was darin ist",
  "mass of dry pigment / volume of all that is in it":
    "Masse des trockenen Pigments / Volumen all dessen, was darin ist",
  "mean square of residual over the noise of reading and weighing":
    "mittleres Quadrat des Rests durch das Rauschen von Messen und Wiegen",
  "middle one of the misses of its drawdowns": "Median der Abweichungen ihrer Aufstriche",
  "of those tried, the pair by which left-out let-downs are predicted best":
    "von den erprobten das Paar, das ausgelassene Aufhellungen am besten vorhersagt",
  "oil added until {a} % of the dry film is oil / volume of the wet paint":
    "zugesetztes Öl, bis {a} % des trockenen Films Öl sind / Volumen der nassen Farbe",
  "oil index / 1.1 to 2": "Ölindex / 1.1 bis 2",
  "oil index x density of the pigment": "Ölindex x Dichte des Pigments",
  "one over colour to white at L* 50": "eins durch Farbe zu Weiß bei L* 50",
  "the reference's colour to white at L* 50": "Farbe zu Weiß der Bezugsfarbe bei L* 50",
  "opacity of a film of {a} µm, by contrast ratio":
    "Deckvermögen eines Films von {a} µm, nach Kontrastverhältnis",
  "opacity of a film of {a} µm, by how much it scatters: it is too dark for the contrast ratio":
    "Deckvermögen eines Films von {a} µm, danach, wie stark er streut: Für das Kontrastverhältnis ist er zu dunkel",
  "over white, gloss excluded": "über Weiß, ohne Glanz",
  "parts by mass, as recorded": "Masseteile, wie aufgezeichnet",
  "parts of paint by mass, as recorded": "Masseteile Farbe, wie aufgezeichnet",
  "relative standard uncertainty of {a}, by wavelength":
    "relative Standardunsicherheit von {a}, nach Wellenlänge",
  "renotation of the chip": "Renotation des Musters",
  "renotation, interpolated in LCHab": "Renotation, in LCHab interpoliert",
  "renotation, interpolated in LCHab, approximate: adapted from {a}":
    "Renotation, in LCHab interpoliert, angenähert: aus {a} angepasst",
  "rub-out figure x 1.1 to 2": "Ölzahl (angerieben) x 1.1 bis 2",
  "share by mass over density": "Masseanteil durch Dichte",
  "share by mass, each pigment with its own paint's oil":
    "Masseanteil, jedes Pigment mit dem Öl seiner eigenen Farbe",
  "share of paint by mass at which C*ab is least, at L* 50":
    "Masseanteil der Farbe, bei dem C*ab am kleinsten ist, bei L* 50",
  "straight between measured neighbours": "gerade zwischen gemessenen Nachbarn",
  "surface light of an oil film taken off and put on":
    "Oberflächenlicht eines Ölfilms abgezogen und zugegeben",
  "surface light of an oil film taken off and put on: {a} % of it for satin":
    "Oberflächenlicht eines Ölfilms abgezogen und zugegeben: {a} % davon für seidenmatt",
  "surface light of an oil film taken off the predicted tint":
    "Oberflächenlicht eines Ölfilms von der vorhergesagten Aufhellung abgezogen",
  "surface light of an oil film taken off, D65/10":
    "Oberflächenlicht eines Ölfilms abgezogen, D65/10",
  "the dry pigment alone": "das trockene Pigment allein",
  "the only pigment": "das einzige Pigment",
  "the same by volume of paint": "dasselbe nach Farbvolumen",
  "the same of the dry pigment in the paints": "dasselbe für das trockene Pigment in den Farben",
  "the same of the paints that hold the pigment":
    "dasselbe für die Farben, die das Pigment enthalten",
  "the same over the density of each paint": "dasselbe durch die Dichte jeder Farbe",
  "the usual one of its geometry": "die übliche für seine Geometrie",
  "the workshop's own trial": "eigener Versuch der Werkstatt",
  "the workshop's own trial: {a} part to {b} parts of {c}":
    "eigener Versuch der Werkstatt: {a} Teil auf {b} Teile {c}",
  "the workshop's own trial: {a}": "eigener Versuch der Werkstatt: {a}",
  "two-constant fit through all drawdowns": "Zwei-Konstanten-Anpassung durch alle Aufstriche",
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of dry pigment, by wavelength":
    "Zwei-Konstanten-Anpassung, in Einheiten der Streuung von {a}, auf einen Masseteil trockenes Pigment, nach Wellenlänge",
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of dry pigment: what S hardly passes (97.5 %), by wavelength":
    "Zwei-Konstanten-Anpassung, in Einheiten der Streuung von {a}, auf einen Masseteil trockenes Pigment: was S kaum übersteigt (97.5 %), nach Wellenlänge",
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of paint, by wavelength":
    "Zwei-Konstanten-Anpassung, in Einheiten der Streuung von {a}, auf einen Masseteil Farbe, nach Wellenlänge",
  "two-constant fit, in units of the scattering of {a} to one part of it by mass of paint: what S hardly passes (97.5 %), by wavelength":
    "Zwei-Konstanten-Anpassung, in Einheiten der Streuung von {a}, auf einen Masseteil Farbe: was S kaum übersteigt (97.5 %), nach Wellenlänge",
  "usual range of {a} oil": "üblicher Bereich dieses Öls ({a})",
  "solvents among its components, as many of its volume as of its mass":
    "Lösemittel unter den Bestandteilen, so viel vom Volumen wie von der Masse",
  "volume of all but thinner / volume of the wet paint":
    "Volumen von allem außer Verdünner / Volumen der nassen Farbe",
  "ΔE00 (D65/10) between the tint at L* 50 and the same after the loss":
    "ΔE00 (D65/10) zwischen der Aufhellung bei L* 50 und derselben nach dem Verlust",
  "ΔE00 between what its components predict and its own drawdown":
    "ΔE00 zwischen dem, was ihre Komponenten vorhersagen, und ihrem eigenen Aufstrich",
  "measured on one lot": "an einer Charge gemessen",
  "median measured on {a} lots": "Median aus {a} gemessenen Chargen",
  "density of the paint x share of dry pigment": "Dichte der Farbe x Anteil des trockenen Pigments",
  "what lots lost, least and most": "was Chargen verloren, von der geringsten zur größten Menge",
};
