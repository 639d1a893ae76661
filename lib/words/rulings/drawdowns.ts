import type { DrawdownStatement } from "../../optics/statements.ts";
import { GEOMETRIES, wordOf } from "../closed-sets.ts";
import { de, en, es, fr } from "../phrases-in-each.ts";
import { letDown, luminances, drawdown, wavelengths } from "./drawdown-phrases.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

/** Why drawdowns carry no fit, or less than one would like; which are doubtful; how far a ladder reaches. */
export const DRAWDOWN_RULINGS: RulingsInEach<DrawdownStatement> = {
  "pigment-fluoresces": (v) => ({
    en: `What it does in mixtures and in whites is not predicted: it holds a fluorescent pigment (${en.listed(v.pigments)}), which takes light in at one wavelength and gives it out at another, so that no reading tells what is absorbed and scattered. Under a lamp that excites it otherwise it is another colour.`,
    de: `Das Verhalten in Mischungen und in Weiß wird nicht vorhergesagt: Die Farbe enthält ein fluoreszierendes Pigment (${de.listed(v.pigments)}), das Licht bei einer Wellenlänge aufnimmt und bei einer anderen abgibt, sodass keine Messung sagt, was absorbiert und gestreut wird. Unter einer Lampe, die das Pigment anders anregt, sieht die Farbe anders aus.`,
    fr: `Ce qu’elle donne en mélange et dans les blancs n’est pas prévu\u202f: elle contient un pigment fluorescent (${fr.listed(v.pigments)}), qui absorbe la lumière à une longueur d’onde et la rend à une autre, si bien qu’aucune mesure ne dit ce qui est absorbé et diffusé. Sous une lampe qui l’excite autrement, c’est une autre couleur.`,
    es: `No se prevé cómo queda en mezclas y en blancos: contiene un pigmento fluorescente (${es.listed(v.pigments)}), que absorbe la luz a una longitud de onda y la devuelve a otra, de modo que ninguna medición dice qué se absorbe y qué se dispersa. Bajo una lámpara que lo excite de otro modo es otro color.`,
  }),
  "pigment-is-flakes": (v) => ({
    en: `What it does in mixtures and in whites is not predicted: it holds a pigment of flakes (${en.listed(v.pigments)}), which mirror light, where theory counts only what is absorbed and what is scattered alike in all directions. A reading holds for its own angles alone.`,
    de: `Das Verhalten in Mischungen und in Weiß wird nicht vorhergesagt: Die Farbe enthält ein Pigment aus Plättchen (${de.listed(v.pigments)}), die spiegeln, während die Theorie nur zählt, was absorbiert und was nach allen Seiten gleich gestreut wird. Eine Messung gilt nur für ihre eigenen Winkel.`,
    fr: `Ce qu’elle donne en mélange et dans les blancs n’est pas prévu\u202f: elle contient un pigment en paillettes (${fr.listed(v.pigments)}), qui font miroir, alors que la théorie ne compte que ce qui est absorbé et ce qui est diffusé également dans tous les sens. Une mesure ne vaut que pour ses propres angles.`,
    es: `No se prevé cómo queda en mezclas y en blancos: contiene un pigmento en laminillas (${es.listed(v.pigments)}), que hacen de espejo, y la teoría solo cuenta lo que se absorbe y lo que se dispersa por igual en todas direcciones. Una medición solo vale para sus propios ángulos.`,
  }),
  "white-not-predicted": (v) => ({
    en: `${letDown(v).en} is not fitted: its white fluoresces or is made of flakes, for which theory does not hold.`,
    de: `${letDown(v).de} geht nicht in die Anpassung ein: Ihr Weiß fluoresziert oder besteht aus Plättchen, und dafür gilt die Theorie nicht.`,
    fr: `${letDown(v).fr} n’est pas ajusté\u202f: son blanc est fluorescent ou en paillettes, et la théorie ne vaut alors pas.`,
    es: `${letDown(v).es} no se ajusta: su blanco es fluorescente o está formado por laminillas, y entonces la teoría no vale.`,
  }),
  "no-masstone": {
    en: "The masstone has not been read; let-downs alone do not tell what a colour absorbs from what it scatters.",
    de: "Der Vollton wurde nicht gemessen; Aufhellungen allein sagen nicht, was eine Farbe absorbiert und was sie streut.",
    fr: "Le ton plein n’a pas été mesuré\u202f; les dégradés seuls ne disent pas ce qu’une couleur absorbe et ce qu’elle diffuse.",
    es: "El tono pleno no se ha medido; los rebajes por sí solos no dicen qué absorbe un color y qué dispersa.",
  },
  "no-tint": {
    en: "No let-down in a white has been read, and a masstone alone predicts none.",
    de: "Keine Aufhellung in einem Weiß wurde gemessen, und ein Vollton allein sagt keine vorher.",
    fr: "Aucun dégradé dans un blanc n’a été mesuré, et un ton plein seul ne permet d’en prévoir aucun.",
    es: "No se ha medido ningún rebaje en un blanco, y un tono pleno por sí solo no permite prever ninguno.",
  },
  "masstone-without-spectrum": {
    en: "Nothing is fitted: the masstone was read without a spectrum, and absorption and scattering need one.",
    de: "Keine Anpassung: Der Vollton wurde ohne Spektrum gemessen, und für Absorption und Streuung ist eines nötig.",
    fr: "Rien n’est ajusté\u202f: le ton plein a été mesuré sans spectre, et il en faut un pour l’absorption et la diffusion.",
    es: "No se ajusta nada: el tono pleno se midió sin espectro, y la absorción y la dispersión necesitan uno.",
  },
  "tint-without-spectrum": (v) => ({
    en: `${letDown(v).en} is not fitted: it was read without a spectrum.`,
    de: `${letDown(v).de} geht nicht in die Anpassung ein: Sie wurde ohne Spektrum gemessen.`,
    fr: `${letDown(v).fr} n’est pas ajusté\u202f: mesuré sans spectre.`,
    es: `${letDown(v).es} no se ajusta: se midió sin espectro.`,
  }),
  "white-without-masstone": (v) => ({
    en: `${letDown(v).en} is not fitted: no spectrum of its white by itself is recorded.`,
    de: `${letDown(v).de} geht nicht in die Anpassung ein: Vom Weiß allein ist kein Spektrum aufgezeichnet.`,
    fr: `${letDown(v).fr} n’est pas ajusté\u202f: aucun spectre de son blanc seul n’est consigné.`,
    es: `${letDown(v).es} no se ajusta: no hay registrado ningún espectro de su blanco solo.`,
  }),
  "ratio-kind-missing": (v) => ({
    en: `${letDown(v).en} is not fitted: whether dry pigment or paint was weighed is not recorded.`,
    de: `${letDown(v).de} geht nicht in die Anpassung ein: Ob trockenes Pigment oder Farbe gewogen wurde, ist nicht aufgezeichnet.`,
    fr: `${letDown(v).fr} n’est pas ajusté\u202f: on n’a pas consigné si l’on a pesé du pigment sec ou de la peinture.`,
    es: `${letDown(v).es} no se ajusta: no está registrado si se pesó pigmento seco o pintura.`,
  }),
  "ratio-kinds-mixed": (v) => ({
    en: `${letDown(v).en} is not fitted: of the let-downs in that white some were weighed as dry pigment and some as paint.`,
    de: `${letDown(v).de} geht nicht in die Anpassung ein: Von den Aufhellungen in diesem Weiß wurden einige als trockenes Pigment und einige als Farbe gewogen.`,
    fr: `${letDown(v).fr} n’est pas ajusté\u202f: des dégradés dans ce blanc, les uns ont été pesés en pigment sec et les autres en peinture.`,
    es: `${letDown(v).es} no se ajusta: de los rebajes en ese blanco, unos se pesaron como pigmento seco y otros como pintura.`,
  }),
  "ratio-not-positive": (v) => ({
    en: `${letDown(v).en} is not fitted: its ratio of colour to white is not above 0.`,
    de: `${letDown(v).de} geht nicht in die Anpassung ein: Ihr Verhältnis von Farbe zu Weiß liegt nicht über 0.`,
    fr: `${letDown(v).fr} n’est pas ajusté\u202f: son rapport couleur/blanc n’est pas supérieur à 0.`,
    es: `${letDown(v).es} no se ajusta: su proporción color/blanco no es mayor que 0.`,
  }),
  "masstone-lighter-than-tint": (v) => ({
    en: `${letDown(v).en} is not fitted: it reads darker than the masstone (${luminances(v.tintY, v.masstoneY).en}), which nothing let down in a white can.`,
    de: `${letDown(v).de} geht nicht in die Anpassung ein: Gemessen ist sie dunkler als der Vollton (${luminances(v.tintY, v.masstoneY).de}), und das kann keine Aufhellung in einem Weiß.`,
    fr: `${letDown(v).fr} n’est pas ajusté\u202f: il est, à la mesure, plus sombre que le ton plein (${luminances(v.tintY, v.masstoneY).fr}), ce qui est impossible dans un blanc.`,
    es: `${letDown(v).es} no se ajusta: resulta más oscuro que el tono pleno (${luminances(v.tintY, v.masstoneY).es}), lo que es imposible en un blanco.`,
  }),
  "tint-lighter-than-white": (v) => ({
    en: `${letDown(v).en} is not fitted: it reads lighter than its white (${luminances(v.tintY, v.whiteY).en}), which nothing let down in it can.`,
    de: `${letDown(v).de} geht nicht in die Anpassung ein: Gemessen ist sie heller als ihr Weiß (${luminances(v.tintY, v.whiteY).de}), und das kann keine Aufhellung darin.`,
    fr: `${letDown(v).fr} n’est pas ajusté\u202f: il est, à la mesure, plus clair que son blanc (${luminances(v.tintY, v.whiteY).fr}), ce qui est impossible dans ce blanc.`,
    es: `${letDown(v).es} no se ajusta: resulta más claro que su blanco (${luminances(v.tintY, v.whiteY).es}), lo que es imposible en él.`,
  }),
  "white-lighter-than-tint": (v) => ({
    en: `${letDown(v).en} is not fitted: it reads darker than its white (${luminances(v.tintY, v.whiteY).en}), though the colour is the lighter of the two.`,
    de: `${letDown(v).de} geht nicht in die Anpassung ein: Gemessen ist sie dunkler als ihr Weiß (${luminances(v.tintY, v.whiteY).de}), obwohl die Farbe die hellere der beiden ist.`,
    fr: `${letDown(v).fr} n’est pas ajusté\u202f: il est, à la mesure, plus sombre que son blanc (${luminances(v.tintY, v.whiteY).fr}), alors que la couleur est la plus claire des deux.`,
    es: `${letDown(v).es} no se ajusta: resulta más oscuro que su blanco (${luminances(v.tintY, v.whiteY).es}), aunque el color es el más claro de los dos.`,
  }),
  "tint-lighter-than-masstone": (v) => ({
    en: `${letDown(v).en} is not fitted: it reads lighter than the masstone (${luminances(v.tintY, v.masstoneY).en}), though its white is the darker of the two.`,
    de: `${letDown(v).de} geht nicht in die Anpassung ein: Gemessen ist sie heller als der Vollton (${luminances(v.tintY, v.masstoneY).de}), obwohl ihr Weiß das dunklere der beiden ist.`,
    fr: `${letDown(v).fr} n’est pas ajusté\u202f: il est, à la mesure, plus clair que le ton plein (${luminances(v.tintY, v.masstoneY).fr}), alors que son blanc est le plus sombre des deux.`,
    es: `${letDown(v).es} no se ajusta: resulta más claro que el tono pleno (${luminances(v.tintY, v.masstoneY).es}), aunque su blanco es el más oscuro de los dos.`,
  }),
  "geometry-mixed": (v) => ({
    en: `The drawdowns were read in different geometries (${en.listed(v.geometries)}), and the surface constants recorded do not bring them together.`,
    de: `Die Aufstriche wurden in verschiedenen Geometrien gemessen (${de.listed(v.geometries.map((one) => wordOf(GEOMETRIES, one, "de")))}), und mit den aufgezeichneten Oberflächenkonstanten lassen sie sich nicht zusammenführen.`,
    fr: `Les applications ont été mesurées dans des géométries différentes (${fr.listed(v.geometries.map((one) => wordOf(GEOMETRIES, one, "fr")))}), et les constantes de surface consignées ne les ramènent pas l’une à l’autre.`,
    es: `Las aplicaciones se midieron en geometrías distintas (${es.listed(v.geometries.map((one) => wordOf(GEOMETRIES, one, "es")))}), y las constantes de superficie registradas no las concilian.`,
  }),
  "geometry-needs-surface": (v) => ({
    en: `Without constants of its surface, a reading (${v.from}) does not tell what gloss adds to it.`,
    de: `Ohne Oberflächenkonstanten lässt sich einer Messung (${GEOMETRIES[v.from].de}) nicht entnehmen, was der Glanz hinzufügt.`,
    fr: `Sans les constantes de sa surface, une mesure (${wordOf(GEOMETRIES, v.from, "fr")}) ne dit pas ce que le reflet y ajoute.`,
    es: `Sin las constantes de su superficie, una medición (${wordOf(GEOMETRIES, v.from, "es")}) no dice lo que el brillo le añade.`,
  }),
  "surfaces-differ": {
    en: "The drawdowns are recorded with different surface constants, so they are not fitted together.",
    de: "Die Aufstriche sind mit verschiedenen Oberflächenkonstanten aufgezeichnet, daher werden sie nicht zusammen angepasst.",
    fr: "Les applications sont consignées avec des constantes de surface différentes, et ne sont pas ajustées ensemble.",
    es: "Las aplicaciones están registradas con constantes de superficie distintas, y no se ajustan juntas.",
  },
  "reflectance-not-above-surface": (v) => ({
    en: `Nothing is fitted: the reading of ${drawdown(v.drawdown).en} is no more than its surface reflects (${en.percent(v.reflectance)} at ${en.decimals(v.wavelengthNm, 0)}\u00a0nm, k1 ${en.decimals(v.k1, 3)}), so its geometry or its surface is not as recorded.`,
    de: `Keine Anpassung: Die Messung ${drawdown(v.drawdown).de} liegt nicht über dem, was die Oberfläche zurückwirft (${de.percent(v.reflectance)} bei ${de.decimals(v.wavelengthNm, 0)}\u00a0nm, k1 ${de.decimals(v.k1, 3)}); Geometrie oder Oberfläche sind also nicht wie aufgezeichnet.`,
    fr: `Rien n’est ajusté\u202f: ${drawdown(v.drawdown).fr} ne renvoie pas plus que sa surface (${fr.percent(v.reflectance)} à ${fr.decimals(v.wavelengthNm, 0)}\u00a0nm, k1 ${fr.decimals(v.k1, 3)})\u202f; sa géométrie ou sa surface n’est donc pas celle qui est consignée.`,
    es: `No se ajusta nada: ${drawdown(v.drawdown).es} no devuelve más que su superficie (${es.percent(v.reflectance)} a ${es.decimals(v.wavelengthNm, 0)}\u00a0nm, k1 ${es.decimals(v.k1, 3)}), así que su geometría o su superficie no es la registrada.`,
  }),
  "masstone-not-told-from-surface": (v) => ({
    en: `At ${wavelengths(v.wavelengths).en} the masstone reads no more than its surface reflects (k1 ${en.decimals(v.k1, 3)}), so we cannot say what lies under the surface there.`,
    de: `Bei ${wavelengths(v.wavelengths).de} wirft der Vollton nicht mehr zurück als die Oberfläche (k1 ${de.decimals(v.k1, 3)}); was dort unter der Oberfläche liegt, lässt sich nicht sagen.`,
    fr: `À ${wavelengths(v.wavelengths).fr} le ton plein ne renvoie pas plus que sa surface (k1 ${fr.decimals(v.k1, 3)}), et nous ne pouvons dire ce qu’il y a dessous.`,
    es: `En ${wavelengths(v.wavelengths).es} el tono pleno no devuelve más que su superficie (k1 ${es.decimals(v.k1, 3)}), y no podemos decir qué hay debajo.`,
  }),
  "masstone-near-its-surface": (v) => ({
    en: `Read with its gloss included, the masstone lies so near what the surface alone throws back (k1 ${en.decimals(v.k1, 3)}) that we cannot say how deep it is without gloss.`,
    de: `Mit Glanz gemessen, liegt der Vollton so nah an dem, was die Oberfläche allein zurückwirft (k1 ${de.decimals(v.k1, 3)}), dass sich nicht sagen lässt, wie tief er ohne Glanz ist.`,
    fr: `Mesuré avec son reflet, le ton plein est si près de ce que la surface seule renvoie (k1 ${fr.decimals(v.k1, 3)}) que nous ne pouvons dire s’il est profond sans reflet.`,
    es: `Medido con su brillo, el tono pleno está tan cerca de lo que devuelve la sola superficie (k1 ${es.decimals(v.k1, 3)}) que no podemos decir si es profundo sin brillo.`,
  }),

  "suspect-drawdown": (v) => ({
    en: `${letDown(v).en} is doubtful: it lies ${en.deltaE00Text(v.leaveOneOutDeltaE00)} from what the others lead us to expect (${en.decimals(v.limit, 1)} is the limit)${v.othersDeltaE00 === undefined ? "" : `, and the others agree among themselves within ${en.decimals(v.othersDeltaE00, 1)}`}; it is not used.`,
    de: `${letDown(v).de} ist zweifelhaft: Sie liegt ${de.deltaE00Text(v.leaveOneOutDeltaE00)} von dem, was nach den anderen zu erwarten ist (Grenze ${de.decimals(v.limit, 1)})${v.othersDeltaE00 === undefined ? "" : `, und die anderen stimmen untereinander auf ${de.decimals(v.othersDeltaE00, 1)} überein`}; sie wird nicht verwendet.`,
    fr: `${letDown(v).fr} est douteux\u202f: il est à ${fr.deltaE00Text(v.leaveOneOutDeltaE00)} de ce que les autres font attendre (la limite est ${fr.decimals(v.limit, 1)})${v.othersDeltaE00 === undefined ? "" : `, alors que les autres s’accordent entre eux à ${fr.decimals(v.othersDeltaE00, 1)} près`}\u202f; il n’est pas employé.`,
    es: `${letDown(v).es} es dudoso: está a ${es.deltaE00Text(v.leaveOneOutDeltaE00)} de lo que los demás hacen esperar (el límite es ${es.decimals(v.limit, 1)})${v.othersDeltaE00 === undefined ? "" : `, mientras que los demás concuerdan entre sí con un margen de ${es.decimals(v.othersDeltaE00, 1)}`}; no se usa.`,
  }),
  "drawdowns-disagree": (v) => ({
    en: `${letDown(v).en} and the other in that white contradict each other (${en.deltaE00Text(v.leaveOneOutDeltaE00)}; ${en.decimals(v.limit, 1)} is the limit), and nothing tells which is wrong.`,
    de: `${letDown(v).de} und die andere in diesem Weiß widersprechen sich (${de.deltaE00Text(v.leaveOneOutDeltaE00)}; Grenze ${de.decimals(v.limit, 1)}), und nichts sagt, welche falsch ist.`,
    fr: `${letDown(v).fr} et l’autre dans ce blanc se contredisent (${fr.deltaE00Text(v.leaveOneOutDeltaE00)}\u202f; la limite est ${fr.decimals(v.limit, 1)}), et rien ne dit lequel est faux.`,
    es: `${letDown(v).es} y el otro en ese blanco se contradicen (${es.deltaE00Text(v.leaveOneOutDeltaE00)}; el límite es ${es.decimals(v.limit, 1)}), y nada dice cuál es el erróneo.`,
  }),
  "fit-needs-masstone": {
    en: "The masstone cannot be left out, since the fit rests on it.",
    de: "Der Vollton lässt sich nicht weglassen, denn auf ihm beruht die Anpassung.",
    fr: "Le ton plein ne peut être écarté, puisque l’ajustement repose sur lui.",
    es: "El tono pleno no puede dejarse fuera, puesto que el ajuste se apoya en él.",
  },
  "only-let-down-in-its-white": (v) => ({
    en: `The only let-down in ${en.within(v.white)}: left out, nothing would predict it.`,
    de: `Die einzige Aufhellung in ${de.within(v.white)}: Ohne sie ließe sich dort nichts vorhersagen.`,
    fr: `Le seul dégradé dans ${fr.within(v.white)}\u202f: si on l’écarte, rien ne le prévoit.`,
    es: `El único rebaje en ${es.within(v.white)}: si se deja fuera, nada lo prevé.`,
  }),
  "surface-stated": (v) => ({
    en: `Surface taken off by the constants recorded with the readings (${en.surfaceConstants(v)}).`,
    de: `Anteil der Oberfläche abgezogen, nach den Konstanten, die mit den Messungen aufgezeichnet sind (${de.surfaceConstants(v)}).`,
    fr: `Surface ôtée d’après les constantes consignées avec les mesures (${fr.surfaceConstants(v)}).`,
    es: `Superficie descontada según las constantes registradas con las mediciones (${es.surfaceConstants(v)}).`,
  }),
  "surface-by-leave-one-out": (v) => ({
    en: `Surface taken off as an oil film's (${en.surfaceConstants(v)}): by these constants let-downs that are left out, of all colours read alike, are predicted better than by none.`,
    de: `Anteil der Oberfläche abgezogen wie bei einem Ölfilm (${de.surfaceConstants(v)}): So werden weggelassene Aufhellungen aller gleich gemessenen Farben besser vorhergesagt als ohne.`,
    fr: `Surface ôtée comme celle d’un film d’huile (${fr.surfaceConstants(v)})\u202f: avec ces constantes, les dégradés écartés tour à tour, de toutes les couleurs mesurées de même, sont mieux prévus que sans.`,
    es: `Superficie descontada como la de una película de aceite (${es.surfaceConstants(v)}): con estas constantes los rebajes que se dejan fuera, de todos los colores medidos igual, se prevén mejor que sin ninguna.`,
  }),
  "surface-by-default": (v) => ({
    en: `Surface taken off as an oil film's (${en.surfaceConstants(v)}), as is usual for the geometry.`,
    de: `Anteil der Oberfläche abgezogen wie bei einem Ölfilm (${de.surfaceConstants(v)}), für diese Geometrie üblich.`,
    fr: `Surface ôtée comme celle d’un film d’huile (${fr.surfaceConstants(v)}), comme il est d’usage dans cette géométrie.`,
    es: `Superficie descontada como la de una película de aceite (${es.surfaceConstants(v)}), como es usual en esta geometría.`,
  }),
  "surface-under-darkest": (v) => ({
    en: `Surface taken off as an oil film's, its share of outer light kept under the darkest reading of the workshop (${en.surfaceConstants(v)}).`,
    de: `Anteil der Oberfläche abgezogen wie bei einem Ölfilm, ihr Beitrag zum äußeren Licht unter der dunkelsten Messung der Werkstatt gehalten (${de.surfaceConstants(v)}).`,
    fr: `Surface ôtée comme celle d’un film d’huile, sa part de lumière extérieure tenue au-dessous de la mesure la plus sombre de l’atelier (${fr.surfaceConstants(v)}).`,
    es: `Superficie descontada como la de una película de aceite, con su parte de luz exterior por debajo de la medición más oscura del taller (${es.surfaceConstants(v)}).`,
  }),
  "no-surface-by-leave-one-out": (v) => ({
    en: `No surface taken off (${en.surfaceConstants(v)}): so let-downs that are left out, of all colours read alike, are predicted better than with an oil film's constants.`,
    de: `Kein Anteil der Oberfläche abgezogen (${de.surfaceConstants(v)}): So werden weggelassene Aufhellungen aller gleich gemessenen Farben besser vorhergesagt als mit den Konstanten eines Ölfilms.`,
    fr: `Aucune surface ôtée (${fr.surfaceConstants(v)})\u202f: ainsi les dégradés écartés tour à tour, de toutes les couleurs mesurées de même, sont mieux prévus qu’avec les constantes d’un film d’huile.`,
    es: `Ninguna superficie descontada (${es.surfaceConstants(v)}): así los rebajes que se dejan fuera, de todos los colores medidos igual, se prevén mejor que con las constantes de una película de aceite.`,
  }),
  "no-surface-by-default": (v) => ({
    en: `No surface taken off (${en.surfaceConstants(v)}), as is usual with gloss excluded; no let-down could be left out to try others.`,
    de: `Kein Anteil der Oberfläche abgezogen (${de.surfaceConstants(v)}), wie ohne Glanz üblich; keine Aufhellung ließ sich weglassen, um andere Konstanten zu erproben.`,
    fr: `Aucune surface ôtée (${fr.surfaceConstants(v)}), comme il est d’usage reflet exclu\u202f; aucun dégradé ne pouvait être écarté pour en essayer d’autres.`,
    es: `Ninguna superficie descontada (${es.surfaceConstants(v)}), como es usual con el brillo excluido; ningún rebaje podía dejarse fuera para probar otras.`,
  }),
  "fit-has-none-to-spare": {
    en: "Each white has one let-down, so the fit passes through all of them and nothing tells how good it is.",
    de: "In jedem Weiß gibt es nur eine Aufhellung: Die Anpassung geht durch alle, und nichts sagt, wie gut sie ist.",
    fr: "Chaque blanc n’a qu’un dégradé\u202f: l’ajustement passe par tous, et rien ne dit ce qu’il vaut.",
    es: "Cada blanco tiene un solo rebaje: el ajuste pasa por todos, y nada dice cuánto vale.",
  },
  "fit-within-noise": (v) => ({
    en: `The fit meets the drawdowns as well as reading and weighing allow (weighted residual ${en.significant(v.weightedResidual, 2)}).`,
    de: `Die Anpassung trifft die Aufstriche so gut, wie Messen und Wiegen zulassen (gewichtete Abweichung ${de.significant(v.weightedResidual, 2)}).`,
    fr: `L’ajustement retrouve les applications aussi bien que le permettent la mesure et la pesée (résidu pondéré ${fr.significant(v.weightedResidual, 2)}).`,
    es: `El ajuste reproduce las aplicaciones tan bien como permiten la medición y la pesada (residuo ponderado ${es.significant(v.weightedResidual, 2)}).`,
  }),
  "fit-misses-more-than-noise": (v) => ({
    en: `The fit misses the drawdowns by more than reading and weighing explain (weighted residual ${en.significant(v.weightedResidual, 2)}; near 1 would be theirs alone).`,
    de: `Die Anpassung verfehlt die Aufstriche um mehr, als Messen und Wiegen erklären (gewichtete Abweichung ${de.significant(v.weightedResidual, 2)}; nahe 1 läge es an ihnen allein).`,
    fr: `L’ajustement s’écarte des applications plus que ne l’expliquent la mesure et la pesée (résidu pondéré ${fr.significant(v.weightedResidual, 2)}\u202f; près de 1, elles seules seraient en cause).`,
    es: `El ajuste se aparta de las aplicaciones más de lo que explican la medición y la pesada (residuo ponderado ${es.significant(v.weightedResidual, 2)}; cerca de 1 se debería solo a ellas).`,
  }),
  "scattering-known": (v) => ({
    en: `How much it scatters beside its whites is known to about ${en.percent(v.relativeUncertainty, 1)}.`,
    de: `Wie stark die Farbe im Vergleich zum Weiß streut, ist auf etwa ${de.percent(v.relativeUncertainty, 1)} genau bekannt.`,
    fr: `Ce qu’elle diffuse par rapport à ses blancs est connu à environ ${fr.percent(v.relativeUncertainty, 1)} près.`,
    es: `Lo que dispersa en comparación con sus blancos se conoce con un error de alrededor del ${es.percent(v.relativeUncertainty, 1)}.`,
  }),
  "scattering-is-bound": (v) => ({
    en: `We know only a bound of how much it scatters: the masstone reflects ${en.percent(v.masstoneY)}, and the fit leaves it open to \u00b1\u00a0${en.percent(v.relativeUncertainty, 1)}.`,
    de: `Bekannt ist nur eine Grenze dafür, wie stark die Farbe streut: Der Vollton reflektiert ${de.percent(v.masstoneY)}, und die Anpassung lässt es auf \u00b1\u00a0${de.percent(v.relativeUncertainty, 1)} offen.`,
    fr: `Nous ne connaissons qu’une borne de ce qu’elle diffuse\u202f: le ton plein renvoie ${fr.percent(v.masstoneY)}, et l’ajustement laisse une marge de \u00b1\u00a0${fr.percent(v.relativeUncertainty, 1)}.`,
    es: `Solo conocemos una cota de lo que dispersa: el tono pleno devuelve el ${es.percent(v.masstoneY)}, y el ajuste deja un margen de \u00b1\u00a0${es.percent(v.relativeUncertainty, 1)}.`,
  }),

  "ladder-does-not-reach": (v) => ({
    en:
      "palest" in v
        ? `No let-down reaches L* ${en.decimals(v.L, 0)}: the ladder runs from L* ${en.decimals(v.darkest, 0)} to ${en.decimals(v.palest, 0)}.`
        : `No let-down reaches L* ${en.decimals(v.L, 0)}: none is recorded.`,
    de:
      "palest" in v
        ? `Keine Aufhellung erreicht L* ${de.decimals(v.L, 0)}: Die Reihe geht von L* ${de.decimals(v.darkest, 0)} bis ${de.decimals(v.palest, 0)}.`
        : `Keine Aufhellung erreicht L* ${de.decimals(v.L, 0)}: Es ist keine aufgezeichnet.`,
    fr:
      "palest" in v
        ? `Aucun dégradé n’atteint L* ${fr.decimals(v.L, 0)}\u202f: l’échelle va de L* ${fr.decimals(v.darkest, 0)} à ${fr.decimals(v.palest, 0)}.`
        : `Aucun dégradé n’atteint L* ${fr.decimals(v.L, 0)}\u202f: aucun n’est consigné.`,
    es:
      "palest" in v
        ? `Ningún rebaje llega a L* ${es.decimals(v.L, 0)}: la escala va de L* ${es.decimals(v.darkest, 0)} a ${es.decimals(v.palest, 0)}.`
        : `Ningún rebaje llega a L* ${es.decimals(v.L, 0)}: no hay ninguno registrado.`,
  }),
  "neighbours-too-far-apart": (v) => ({
    en: `L* ${en.decimals(v.L, 0)} lies between let-downs ${en.decimals(v.gap, 0)} of L* apart; more than ${en.decimals(v.limit, 0)} is not bridged without a fit.`,
    de: `L* ${de.decimals(v.L, 0)} liegt zwischen Aufhellungen, die um ${de.decimals(v.gap, 0)} in L* auseinanderliegen; mehr als ${de.decimals(v.limit, 0)} wird ohne Anpassung nicht überbrückt.`,
    fr: `L* ${fr.decimals(v.L, 0)} tombe entre deux dégradés distants de ${fr.decimals(v.gap, 0)} en L*\u202f; au-delà de ${fr.decimals(v.limit, 0)} on ne comble pas l’intervalle sans ajustement.`,
    es: `L* ${es.decimals(v.L, 0)} cae entre rebajes que distan ${es.decimals(v.gap, 0)} de L*; sin un ajuste no se salva una distancia mayor de ${es.decimals(v.limit, 0)}.`,
  }),
  "film-needs-masstone-or-two-grounds": {
    en: "One film by itself does not tell what it absorbs from what it scatters: a masstone, or films over two grounds, would.",
    de: "Ein Film allein sagt nicht, was er absorbiert und was er streut: Ein Vollton oder Filme über zwei Gründen würden es zeigen.",
    fr: "Un film seul ne dit pas ce qu’il absorbe et ce qu’il diffuse\u202f: un ton plein, ou des films sur deux fonds, le diraient.",
    es: "Una película sola no dice qué absorbe y qué dispersa: lo diría un tono pleno, o películas sobre dos fondos.",
  },
  "film-tells-nothing": (v) => ({
    en: `At ${wavelengths(v.wavelengths).en} the film changes its ground too little to tell what it absorbs and scatters.`,
    de: `Bei ${wavelengths(v.wavelengths).de} ändert der Film seinen Grund zu wenig, um zu sagen, was er absorbiert und streut.`,
    fr: `À ${wavelengths(v.wavelengths).fr} le film change trop peu son fond pour dire ce qu’il absorbe et ce qu’il diffuse.`,
    es: `En ${wavelengths(v.wavelengths).es} la película cambia su fondo demasiado poco para decir qué absorbe y qué dispersa.`,
  }),
  "no-such-white": (v) => ({
    en: `Nothing was let down in ${en.within(v.white)}.`,
    de: `In ${de.within(v.white)} wurde nichts aufgehellt.`,
    fr: `Rien n’a été coupé avec ${fr.within(v.white)}.`,
    es: `No se rebajó nada con ${es.within(v.white)}.`,
  }),
};
