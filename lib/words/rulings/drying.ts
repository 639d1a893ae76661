import type { DryingStatement } from "../../drying/statements.ts";
import { ends } from "../../quantities/interval.ts";
import { DRYING_CLASSES, METALS, OILS, NOT_DRY } from "../closed-sets.ts";
import {
  classed,
  oilShare,
  speeds,
  pigmentShare,
  theWhite,
  slows,
  takesNoPart,
  alone,
  partShare,
  drier,
  ACTS,
  film,
  room,
  trial,
  CONDITIONS,
  beside,
  CHANGES,
  oilOfFilm,
} from "./drying-phrases.ts";
import { de, en, es, fr, sentences } from "../phrases-in-each.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

/** Days to touch dry, layers, and the film with age. */
export const DRYING_RULINGS: RulingsInEach<DryingStatement> = {
  "drying-class": ({ dryingClass, ...days }) =>
    sentences({
      en: `${dryingClass}: ${classed(days).en}`,
      de: `${DRYING_CLASSES[dryingClass].de}: ${classed(days).de}`,
      fr: `${DRYING_CLASSES[dryingClass].fr}\u202f: ${classed(days).fr}`,
      es: `${DRYING_CLASSES[dryingClass].es}: ${classed(days).es}`,
    }),
  "drying-class-over-several": ({ spans, ...days }) =>
    sentences({
      en: `${outermost(spans).join(" to ")}: ${classed(days).en}`,
      de: `${outermost(spans)
        .map((each) => DRYING_CLASSES[each].de)
        .join(" bis ")}: ${classed(days).de}`,
      fr: `${fr.listed(
        spans.map((each) => DRYING_CLASSES[each].fr),
        "or",
      )}\u202f: ${classed(days).fr}`,
      es: `${es.listed(
        spans.map((each) => DRYING_CLASSES[each].es),
        "or",
      )}: ${classed(days).es}`,
    }),
  "pigment-chemistry-unknown": ({ pigments }) => ({
    en:
      pigments.length === 0
        ? "No pigment is recorded, so we cannot work out its drying."
        : `We do not know what ${en.namesWithin(pigments)} ${pigments.length > 1 ? "do" : "does"} to the drying of oil.`,
    de:
      pigments.length === 0
        ? "Es ist kein Pigment aufgezeichnet; die Trocknung lässt sich daher nicht errechnen."
        : `Wie ${de.namesWithin(pigments)} auf die Trocknung des Öls ${pigments.length > 1 ? "wirken" : "wirkt"}, wissen wir nicht.`,
    fr:
      pigments.length === 0
        ? "Aucun pigment n’est consigné, et nous ne pouvons calculer son séchage."
        : `Nous ne savons pas ce que ${pigments.length > 1 ? "font" : "fait"} ${fr.namesWithin(pigments)} au séchage de l’huile.`,
    es:
      pigments.length === 0
        ? "No hay ningún pigmento registrado, así que no podemos calcular su secado."
        : `No sabemos qué ${pigments.length > 1 ? "hacen" : "hace"} ${es.namesWithin(pigments)} al secado del aceite.`,
  }),
  "linseed-oil-alone": ({ days }) => ({
    en: `Linseed oil alone is touch dry in ${en.dayCount(days)}.`,
    de: `Leinöl allein ist in ${de.dayCount(days, "dative")} grifftrocken.`,
    fr: `L’huile de lin seule est sèche au toucher en ${fr.dayCount(days)}.`,
    es: `El aceite de linaza solo está seco al tacto en ${es.dayCount(days)}.`,
  }),
  "linseed-sets-the-days": (oil) =>
    sentences({
      en: `${oilShare(oil).en} sets the days`,
      de: `${oilShare(oil).de} gibt die Tage vor`,
      fr: `base du calcul\u202f: ${oilShare(oil).fr}`,
      es: `base del cálculo: ${oilShare(oil).es}`,
    }),
  "oil-slower-than-linseed": ({ days, acting, ...oil }) => ({
    en: `${en.sentence(`${oilShare(oil).en} dries slower than linseed oil (alone ${en.dayCount(days)})`)}${acting === undefined ? "" : ` Of that slowing ${en.percent(acting)} is counted: its pigments slow the paint already, and the two do not multiply.`}`,
    de: `${de.sentence(`${oilShare(oil).de} trocknet langsamer als Leinöl (allein ${de.dayCount(days)})`)}${acting === undefined ? "" : ` Von dieser Verzögerung zählen ${de.percent(acting)}: Die Pigmente verlangsamen die Trocknung schon, und beides multipliziert sich nicht.`}`,
    fr: `${fr.sentence(
      `${oilShare(oil).fr}\u202f: sèche plus lentement que l’huile de lin (seule, ${fr.dayCount(days)})`,
    )}${acting === undefined ? "" : ` Cet effet n’est compté qu’à ${fr.percent(acting)}\u202f: les pigments ralentissent déjà la peinture, et les deux effets ne se multiplient pas.`}`,
    es: `${es.sentence(`${oilShare(oil).es}: seca más despacio que el de linaza (solo, ${es.dayCount(days)})`)}${acting === undefined ? "" : ` Este efecto solo se cuenta al ${es.percent(acting)}: los pigmentos ya retrasan la pintura, y los dos efectos no se multiplican.`}`,
  }),
  "vehicle-not-stated": ({ factor }) => ({
    en: `The oil is not recorded: linseed is the fastest, and the slowest makes it ${en.timesTheDays(factor)}.`,
    de: `Das Öl ist nicht aufgezeichnet: Leinöl trocknet am schnellsten, und das langsamste Öl braucht ${de.timesTheDays(factor)}.`,
    fr: `L’huile n’est pas consignée\u202f: l’huile de lin est la plus rapide, et avec la plus lente il faut ${fr.timesTheDays(factor)}.`,
    es: `El aceite no está registrado: el de linaza es el más rápido, y con el más lento hace falta ${es.timesTheDays(factor)}.`,
  }),
  "pigment-speeds-drying": (v) => speeds(pigmentShare(v), v),
  "white-speeds-drying": (v) => speeds(theWhite(v), v),
  "pigment-slows-drying": (v) => slows(pigmentShare(v), v),
  "white-slows-drying": (v) => slows(theWhite(v), v),
  "pigment-takes-no-part-in-drying": (v) => takesNoPart(pigmentShare(v), v),
  "white-takes-no-part-in-drying": (v) => takesNoPart(theWhite(v), v),
  "brown-earth-not-told": (v) =>
    sentences({
      en: `${pigmentShare(v).en} may be an umber or a sienna, and its manganese, which dries oil, is not recorded: the days cover both (${alone(v).en})`,
      de: `${pigmentShare(v).de} kann eine Umbra oder eine Siena sein, und ob Mangan darin ist, das Öl trocknet, ist nicht aufgezeichnet: Die Tage umfassen beides (${alone(v).de})`,
      fr: `${pigmentShare(v).fr} peut être une terre d’ombre ou une terre de Sienne, et son manganèse, qui fait sécher l’huile, n’est pas consigné\u202f: les jours couvrent les deux cas (${alone(v).fr})`,
      es: `${pigmentShare(v).es} puede ser una sombra o una siena, y su manganeso, que seca el aceite, no está registrado: los días abarcan los dos casos (${alone(v).es})`,
    }),
  "pigment-parts-not-recorded": ({ pigments, daysInLinseed }) => ({
    en: `How much there is of ${en.namesWithin(pigments)} is not recorded: the days run from those of the faster alone to those of the slower (in linseed oil ${en.dayCount(daysInLinseed)}).`,
    de: `Die Anteile (${de.namesWithin(pigments)}) sind nicht aufgezeichnet: Die Tage reichen von denen des schnelleren Pigments allein bis zu denen des langsameren (in Leinöl ${de.dayCount(daysInLinseed)}).`,
    fr: `La part ${fr.of(fr.namesWithin(pigments))} n’est pas consignée\u202f: les jours vont de ceux du plus rapide seul à ceux du plus lent (dans l’huile de lin, ${fr.dayCount(daysInLinseed)}).`,
    es: `No está registrado cuánto hay de ${es.namesWithin(pigments)}: los días van de los del más rápido solo a los del más lento (en aceite de linaza, ${es.dayCount(daysInLinseed)}).`,
  }),
  "part-as-tried": (v) =>
    sentences({
      en: `${partShare(v).en}: touch dry alone in ${en.dayCount(v.daysAlone)}, as tried here`,
      de: `${partShare(v).de}: allein in ${de.dayCount(v.daysAlone, "dative")} grifftrocken, wie hier erprobt`,
      fr: `${partShare(v).fr}\u202f: seul, sec au toucher en ${fr.dayCount(v.daysAlone)}, d’après notre essai`,
      es: `${partShare(v).es}: solo, seco al tacto en ${es.dayCount(v.daysAlone)}, según nuestro ensayo`,
    }),
  "part-by-the-rules": (v) =>
    sentences({
      en: `${partShare(v).en}: touch dry alone in ${en.dayCount(v.daysAlone)}, by rule of thumb`,
      de: `${partShare(v).de}: allein in ${de.dayCount(v.daysAlone, "dative")} grifftrocken, nach Faustregel`,
      fr: `${partShare(v).fr}\u202f: seul, sec au toucher en ${fr.dayCount(v.daysAlone)}, selon la règle empirique`,
      es: `${partShare(v).es}: solo, seco al tacto en ${es.dayCount(v.daysAlone)}, según la regla práctica`,
    }),
  "added-drier": (v) =>
    sentences({
      en: `${drier(v).en} ${ACTS[v.acts].en}`,
      de: `${drier(v).de} ${ACTS[v.acts].de}`,
      fr: `${drier(v).fr} ${ACTS[v.acts].fr}`,
      es: `${drier(v).es} ${ACTS[v.acts].es}`,
    }),
  "carbon-takes-up-drier": (v) =>
    sentences({
      en: `${drier(v).en} ${ACTS[v.acts].en}, but carbon takes up to half of it`,
      de: `${drier(v).de} ${ACTS[v.acts].de}, doch Kohlenstoff nimmt bis zur Hälfte davon auf`,
      fr: `${drier(v).fr} ${ACTS[v.acts].fr}, mais le carbone en retient jusqu’à la moitié`,
      es: `${drier(v).es} ${ACTS[v.acts].es}, pero el carbono retiene hasta la mitad`,
    }),
  "film-as-classed": ({ filmThicknessUm }) => ({
    en: `Worked out for a wet film of ${en.micrometres(filmThicknessUm)}.`,
    de: `Errechnet für einen Nassfilm von ${de.micrometres(filmThicknessUm)}.`,
    fr: `Calculé pour un film humide de ${fr.micrometres(filmThicknessUm)}.`,
    es: `Calculado para una película húmeda de ${es.micrometres(filmThicknessUm)}.`,
  }),
  "thick-film-slows": (v) => film(v),
  "thin-film-speeds": (v) => film(v),
  "temperature-as-classed": ({ temperatureC }) => ({
    en: `Worked out for ${en.degrees(temperatureC)}.`,
    de: `Errechnet für ${de.degrees(temperatureC)}.`,
    fr: `Calculé pour ${fr.degrees(temperatureC)}.`,
    es: `Calculado para ${es.degrees(temperatureC)}.`,
  }),
  "cold-slows": (v) => room(v),
  "warmth-speeds": (v) => room(v),
  "trial-decides": (v) => sentences(trial(v)),
  "trial-decides-for-its-own-film": (v) =>
    sentences({
      en: `${trial(v).en}; it holds for that film and room`,
      de: `${trial(v).de}; gilt für diesen Film und diesen Raum`,
      fr: `${trial(v).fr}\u202f; il vaut pour ce film et cette pièce`,
      es: `${trial(v).es}; vale para esa película y esa sala`,
    }),
  "trial-without-conditions": (v) =>
    sentences({
      en: `${trial(v).en}; ${en.listed(v.wanting.map((key) => CONDITIONS[key].en))} not recorded, so we do not know what it holds for`,
      de: `${trial(v).de}; ${de.listed(v.wanting.map((key) => CONDITIONS[key].de))} nicht aufgezeichnet, daher wissen wir nicht, wofür das gilt`,
      fr: `${trial(v).fr}\u202f; sans ${fr.listed(v.wanting.map((key) => CONDITIONS[key].fr))}, non ${v.wanting.length > 1 ? "consignées" : "consignée"}, nous ne savons pas pour quoi il vaut`,
      es: `${trial(v).es}; sin ${es.listed(v.wanting.map((key) => CONDITIONS[key].es))} en el registro, no sabemos para qué vale`,
    }),
  "film-wet-beyond-record": ({ found, day, recordedDays }) => ({
    en: `Another film of ours, as thick and in as warm a room, was still ${NOT_DRY[found].en} on day ${day}: touch dry in ${en.dayCount(recordedDays)} is in doubt.`,
    de: `Ein anderer Film von uns, ebenso dick und in einem ebenso warmen Raum, war am Tag\u00a0${day} noch ${NOT_DRY[found].de}: Ob die Farbe in ${de.dayCount(recordedDays, "dative")} grifftrocken ist, ist fraglich.`,
    fr: `Un autre de nos films, aussi épais et dans une pièce aussi chaude, était encore ${NOT_DRY[found].fr} au jour\u00a0${day}\u202f: «\u202fsec au toucher en ${fr.dayCount(recordedDays)}\u202f» est douteux.`,
    es: `Otra de nuestras películas, igual de gruesa y en una sala igual de cálida, seguía ${NOT_DRY[found].es} el día\u00a0${day}: «seca al tacto en ${es.dayCount(recordedDays)}» es dudoso.`,
  }),
  "trial-slower-than-expected": (v) => ({
    en: `The trial was slower than the rule of thumb: ${beside(v).en}.`,
    de: `Der Versuch war langsamer als die Faustregel: ${beside(v).de}.`,
    fr: `L’essai a été plus lent que la règle empirique\u202f: ${beside(v).fr}.`,
    es: `El ensayo fue más lento que la regla práctica: ${beside(v).es}.`,
  }),
  "trial-faster-than-expected": (v) => ({
    en: `The trial was faster than the rule of thumb: ${beside(v).en}.`,
    de: `Der Versuch war schneller als die Faustregel: ${beside(v).de}.`,
    fr: `L’essai a été plus rapide que la règle empirique\u202f: ${beside(v).fr}.`,
    es: `El ensayo fue más rápido que la regla práctica: ${beside(v).es}.`,
  }),
  "touch-dry-is-not-through-dry": ({ monthsBeforeVarnish }) => ({
    en: `By custom a painting waits ${en.significant(monthsBeforeVarnish, 2)} months for its varnish, and even then it has not stopped changing.`,
    de: `Üblich ist, mit dem Firnis ${de.significant(monthsBeforeVarnish, 2)} Monate zu warten. Auch dann verändert sich das Bild noch.`,
    fr: `L’usage veut qu’un tableau attende son vernis ${fr.significant(monthsBeforeVarnish, 2)}\u00a0mois. Même alors, il n’a pas fini de changer.`,
    es: `Por costumbre un cuadro espera su barniz ${es.significant(monthsBeforeVarnish, 2)}\u00a0meses. Ni siquiera entonces ha dejado de cambiar.`,
  }),
  "skins-and-stays-soft": (v) =>
    sentences({
      en: `${pigmentShare(v).en} skins over and stays soft below, so a thick stroke may wrinkle`,
      de: `${pigmentShare(v).de} bildet eine Haut und bleibt darunter weich; dick aufgetragen kann die Farbe daher runzelig auftrocknen`,
      fr: `${pigmentShare(v).fr} forme une peau et reste mou dessous\u202f: une touche épaisse peut se rider`,
      es: `${pigmentShare(v).es} forma piel y queda blando debajo, así que una pincelada gruesa puede arrugarse`,
    }),
  "driers-customary": ({ pigment }) => ({
    en: `Makers often add a drier to ${en.within(pigment)}; none is recorded in this paint.`,
    de: de.sentence(
      `${de.within(pigment)}: Hersteller setzen hier oft Sikkativ zu; in dieser Farbe ist keines aufgezeichnet`,
    ),
    fr: `Les fabricants ajoutent souvent un siccatif à ${fr.within(pigment)}\u202f; aucun n’est consigné dans cette peinture.`,
    es: `Los fabricantes suelen añadir un secante a ${es.within(pigment)}; en esta pintura no hay ninguno registrado.`,
  }),
  "drier-is-lost-in-the-tube": ({ metals }) => ({
    en: `In the tube carbon goes on taking up drier (${en.listed(metals)}): paint that has lain for long may dry slower than fresh paint.`,
    de: `In der Tube nimmt Kohlenstoff weiter Sikkativ auf (${de.listed(metals.map((metal) => METALS[metal].de))}): Lange gelagerte Farbe kann langsamer trocknen als frische.`,
    fr: `Dans le tube, le carbone continue à retenir du siccatif (${fr.listed(metals.map((metal) => METALS[metal].fr))})\u202f: une peinture longtemps gardée peut sécher plus lentement qu’une peinture fraîche.`,
    es: `En el tubo el carbono sigue reteniendo secante (${es.listed(metals.map((metal) => METALS[metal].es))}): una pintura guardada mucho tiempo puede secar más despacio que una fresca.`,
  }),
  "holds-medium-not-known": ({ mediums, changes }) => ({
    en: `We do not know what ${en.namesWithin(mediums)} ${mediums.length > 1 ? "do" : "does"} to ${CHANGES[changes].en}.`,
    de: `Wie sich ${de.namesWithin(mediums)} auf ${CHANGES[changes].de} ${mediums.length > 1 ? "auswirken" : "auswirkt"}, wissen wir nicht.`,
    fr: `Nous ne savons pas ce que ${mediums.length > 1 ? "font" : "fait"} ${fr.namesWithin(mediums)} ${CHANGES[changes].fr}.`,
    es: `No sabemos qué ${mediums.length > 1 ? "hacen" : "hace"} ${es.namesWithin(mediums)} ${CHANGES[changes].es}.`,
  }),

  "lean-film": (v) => ({
    en: `Lean${oilOfFilm(v).en}.`,
    de: `Mager${oilOfFilm(v).de}.`,
    fr: `Maigre${oilOfFilm(v).fr}.`,
    es: `Magra${oilOfFilm(v).es}.`,
  }),
  "medium-fat-film": (v) => ({
    en: `Medium fat${oilOfFilm(v).en}.`,
    de: `Mittelfett${oilOfFilm(v).de}.`,
    fr: `Moyennement gras${oilOfFilm(v).fr}.`,
    es: `Medianamente grasa${oilOfFilm(v).es}.`,
  }),
  "fat-film": (v) => ({
    en: `Fat${oilOfFilm(v).en}.`,
    de: `Fett${oilOfFilm(v).de}.`,
    fr: `Gras${oilOfFilm(v).fr}.`,
    es: `Grasa${oilOfFilm(v).es}.`,
  }),
  "fatness-not-told": ({ oilVolumeFraction }) => ({
    en: `We cannot say whether it is lean or fat: oil is ${en.percent(oilVolumeFraction)} of the dry film by volume.`,
    de: `Ob die Farbe mager oder fett ist, lässt sich nicht sagen: Nach Volumen macht Öl ${de.percent(oilVolumeFraction)} des trockenen Films aus.`,
    fr: `Nous ne pouvons dire si elle est maigre ou grasse\u202f: l’huile fait ${fr.percent(oilVolumeFraction)} du film sec en volume.`,
    es: `No podemos decir si es magra o grasa: el aceite es el ${es.percent(oilVolumeFraction)} de la película seca en volumen.`,
  }),
  "zinc-out-of-underlayers": {
    en: "Not for underlayers; in the upper layers, thinly.",
    de: "Nicht für untere Schichten; in den oberen Schichten dünn auftragen.",
    fr: "Pas dans les couches du dessous\u202f; dans celles du dessus, en couche mince.",
    es: "No para las capas de debajo; en las de encima, en capa fina.",
  },
  "fast-and-fat-thinly-below": {
    en: "For lower layers, thinly: it dries fast but is fat, so what goes over it must be as fat or fatter.",
    de: "Für untere Schichten, dünn: Die Farbe trocknet schnell, ist aber fett; was darüber kommt, muss ebenso fett oder fetter sein.",
    fr: "Pour les couches du dessous, en couche mince\u202f: elle sèche vite mais elle est grasse, et ce qui vient par-dessus doit être aussi gras ou plus gras.",
    es: "Para las capas de debajo, en capa fina: seca deprisa pero es grasa, y lo que vaya encima debe ser igual de graso o más.",
  },
  "fast-for-lower-layers": {
    en: "For lower layers: it dries fast.",
    de: "Für untere Schichten: Die Farbe trocknet schnell.",
    fr: "Pour les couches du dessous\u202f: elle sèche vite.",
    es: "Para las capas de debajo: seca deprisa.",
  },
  "medium-for-any-layer": {
    en: "For any layer over dry paint. Where the paint below is fatter, and only there, stir in a little medium.",
    de: "Für jede Schicht über trockener Farbe. Ist die Farbe darunter fetter, und nur dann, etwas Malmittel einrühren.",
    fr: "Pour toute couche, sur une peinture sèche. Si celle du dessous est plus grasse, et seulement alors, y mêler un peu de médium.",
    es: "Para cualquier capa sobre pintura seca. Si la de debajo es más grasa, y solo entonces, mezclarle un poco de médium.",
  },
  "stirred-into-any-layer": {
    en: "It may be stirred into the paint of any layer: what goes over that must be as fat or fatter.",
    de: "Lässt sich in die Farbe jeder Schicht einrühren: Was darüber kommt, muss ebenso fett oder fetter sein.",
    fr: "Peut se mêler à la peinture de toute couche\u202f: ce qui vient par-dessus doit être aussi gras ou plus gras.",
    es: "Puede mezclarse con la pintura de cualquier capa: lo que vaya encima debe ser igual de graso o más.",
  },
  "slow-but-lean-dry-it-through": {
    en: "For upper layers: let it dry through before you paint over it. When it goes over fatter paint, stir in a little medium.",
    de: "Für obere Schichten: durchtrocknen lassen, bevor darüber gemalt wird. Kommt sie über fettere Farbe, etwas Malmittel einrühren.",
    fr: "Pour les couches du dessus\u202f: la laisser sécher à cœur avant de peindre par-dessus. Si elle vient sur une peinture plus grasse, y mêler un peu de médium.",
    es: "Para las capas de encima: dejarla secar en profundidad antes de pintar sobre ella. Si va sobre pintura más grasa, mezclarle un poco de médium.",
  },
  "slow-for-last-layers": {
    en: "For the last layers: do not cover it with a faster paint before it is dry through.",
    de: "Für die letzten Schichten: erst mit schneller trocknender Farbe übermalen, wenn die Schicht durchgetrocknet ist.",
    fr: "Pour les dernières couches\u202f: ne pas la couvrir d’une peinture plus rapide avant qu’elle soit sèche à cœur.",
    es: "Para las últimas capas: no cubrirla con una pintura que seque más deprisa antes de que esté seca en profundidad.",
  },
  "oil-over-acrylic-ground": {
    en: "Let an acrylic ground dry for some days before you paint on it in oil; dry to the touch is not enough.",
    de: "Einen Acrylgrund einige Tage trocknen lassen, bevor Sie in Öl darauf malen; grifftrocken genügt nicht.",
    fr: "Laisser une préparation acrylique sécher quelques jours avant d’y peindre à l’huile\u202f; sèche au toucher ne suffit pas.",
    es: "Dejar secar una imprimación acrílica algunos días antes de pintar al óleo sobre ella; seca al tacto no basta.",
  },
  "never-acrylic-over-oil": {
    en: "Never paint acrylic over oil.",
    de: "Niemals Acryl über Öl malen.",
    fr: "Ne jamais peindre à l’acrylique sur de l’huile.",
    es: "No pintar nunca con acrílico sobre óleo.",
  },
  "oil-ground-through-dry-first": {
    en: "Let an oil ground dry through before you paint on it.",
    de: "Einen Ölgrund durchtrocknen lassen, bevor Sie darauf malen.",
    fr: "Laisser une préparation à l’huile sécher à cœur avant d’y peindre.",
    es: "Dejar que una imprimación al óleo seque en profundidad antes de pintar sobre ella.",
  },
  "absorbent-ground-draws-oil": {
    en: "A ground of glue and chalk draws oil out of the paint, and the colour sinks in.",
    de: "Ein Grund aus Leim und Kreide zieht Öl aus der Farbe, und die Farbe schlägt ein.",
    fr: "Une préparation à la colle et à la craie boit l’huile de la peinture, et la couleur s’emboit.",
    es: "Una imprimación de cola y creta absorbe el aceite de la pintura, y el color se rechupa.",
  },
  "rigid-support-for-brittle-ground": {
    en: "A ground of glue and chalk is brittle: use it on a rigid support.",
    de: "Ein Grund aus Leim und Kreide ist spröde: nur auf einem starren Bildträger verwenden.",
    fr: "Une préparation à la colle et à la craie est cassante\u202f: l’employer sur un support rigide.",
    es: "Una imprimación de cola y creta es quebradiza: usarla sobre un soporte rígido.",
  },

  "zinc-makes-brittle": (v) =>
    sentences({
      en: `${pigmentShare(v).en} makes the film brittle with age`,
      de: `${pigmentShare(v).de} macht den Film mit dem Alter spröde`,
      fr: `${pigmentShare(v).fr} rend le film cassant avec l’âge`,
      es: `${pigmentShare(v).es} vuelve quebradiza la película con la edad`,
    }),
  "zinc-soaps-may-part-layers": (v) =>
    sentences({
      en: `${pigmentShare(v).en} forms soaps with the oil, and paint over zinc underlayers has cracked and come away`,
      de: `${pigmentShare(v).de} bildet mit dem Öl Seifen, und über unteren Schichten mit Zink ist Farbe schon gerissen und abgeblättert`,
      fr: `${pigmentShare(v).fr} forme des savons avec l’huile, et des peintures sur des couches de zinc ont craqué et se sont décollées`,
      es: `${pigmentShare(v).es} forma jabones con el aceite, y pinturas sobre capas de cinc se han agrietado y desprendido`,
    }),
  "lead-makes-tough": (v) =>
    sentences({
      en: `${pigmentShare(v).en} makes a tough, flexible film`,
      de: `${pigmentShare(v).de} macht den Film zäh und biegsam`,
      fr: `${pigmentShare(v).fr} donne un film résistant et souple`,
      es: `${pigmentShare(v).es} da una película tenaz y flexible`,
    }),
  "lead-soaps": (v) =>
    sentences({
      en: `${pigmentShare(v).en} forms soaps with the oil, which may make the film more transparent with age, push up grains through it or cloud it with a white haze`,
      de: `${pigmentShare(v).de} bildet mit dem Öl Seifen, die den Film mit dem Alter durchscheinender machen, Körner durch ihn treiben oder ihn mit einem weißen Schleier trüben können`,
      fr: `${pigmentShare(v).fr} forme des savons avec l’huile, qui peuvent rendre le film plus transparent avec l’âge, y faire pousser des grains ou le voiler de blanc`,
      es: `${pigmentShare(v).es} forma jabones con el aceite, que pueden hacer más transparente la película con la edad, hacer brotar granos en ella o velarla de blanco`,
    }),
  "oil-rich-wrinkles-when-thick": ({ oilVolumeFraction, from }) => ({
    en: `${ends(oilVolumeFraction)[0] < from ? "It may be rich in oil" : "Rich in oil"} (${en.percent(oilVolumeFraction)} of the dry film by volume): from ${en.percent(from)} on a thick stroke may wrinkle.`,
    de: `${ends(oilVolumeFraction)[0] < from ? "Die Farbe kann reich an Öl sein" : "Reich an Öl"} (${de.percent(oilVolumeFraction)} des trockenen Films nach Volumen): Ab ${de.percent(from)} kann die Farbe, dick aufgetragen, runzelig auftrocknen.`,
    fr: `${ends(oilVolumeFraction)[0] < from ? "Peut être riche en huile" : "Riche en huile"} (${fr.percent(oilVolumeFraction)} du film sec en volume)\u202f: à partir de ${fr.percent(from)} une touche épaisse peut se rider.`,
    es: `${ends(oilVolumeFraction)[0] < from ? "Puede ser rica en aceite" : "Rica en aceite"} (${es.percent(oilVolumeFraction)} de la película seca en volumen): desde el ${es.percent(from)} una pincelada gruesa puede arrugarse.`,
  }),
  "sinks-in-on-absorbent-ground-alone": ({ oilToSpare }) => ({
    en: `It sinks in only on an absorbent ground: it has oil to spare (${en.percent(oilToSpare)} of the dry film).`,
    de: `Die Farbe schlägt nur auf saugendem Grund ein: Sie hat Öl übrig (${de.percent(oilToSpare)} des trockenen Films).`,
    fr: `Ne s’emboit que sur une préparation absorbante\u202f: elle a de l’huile en réserve (${fr.percent(oilToSpare)} du film sec).`,
    es: `Solo se rechupa sobre una imprimación absorbente: le sobra aceite (${es.percent(oilToSpare)} de la película seca).`,
  }),
  "sinks-in-easily": ({ oilToSpare }) => ({
    en: `It sinks in easily, in dull patches: its pigment holds nearly all the oil (only ${en.percent(oilToSpare)} of the dry film is to spare).`,
    de: `Die Farbe schlägt leicht ein, in matten Flecken: Das Pigment hält fast das ganze Öl fest (übrig sind nur ${de.percent(oilToSpare)} des trockenen Films).`,
    fr: `S’emboit facilement, par taches ternes\u202f: son pigment retient presque toute l’huile (il n’en reste que ${fr.percent(oilToSpare)} du film sec).`,
    es: `Se rechupa con facilidad, en manchas apagadas: su pigmento retiene casi todo el aceite (solo sobra un ${es.percent(oilToSpare)} de la película seca).`,
  }),
  "may-sink-in": ({ oilToSpare }) => ({
    en: `It may sink in, in dull patches, if as little oil is to spare as the estimate allows (${en.percent(oilToSpare)} of the dry film).`,
    de: `Die Farbe kann in matten Flecken einschlagen, wenn so wenig Öl übrig ist, wie die Schätzung zulässt (${de.percent(oilToSpare)} des trockenen Films).`,
    fr: `Peut s’emboire, par taches ternes, s’il reste aussi peu d’huile que l’estimation le permet (${fr.percent(oilToSpare)} du film sec).`,
    es: `Puede rechuparse, en manchas apagadas, si sobra tan poco aceite como permite la estimación (${es.percent(oilToSpare)} de la película seca).`,
  }),
  "dull-of-itself": {
    en: `It is matte by nature: oiling out will not make it glossy.`,
    de: `Die Farbe ist von Natur aus matt: Einölen macht sie nicht glänzend.`,
    fr: `Mate de nature\u202f: la nourrir d’huile ne la rendra pas brillante.`,
    es: `Es mate por naturaleza: nutrirla con aceite no la hará brillante.`,
  },
  "may-be-dull-of-itself": {
    en: `It may be matte by nature, and then oiling out will not make it glossy, if it holds as little oil as the estimate allows.`,
    de: `Die Farbe kann von Natur aus matt sein, wenn sie so wenig Öl enthält, wie die Schätzung zulässt; dann macht Einölen sie nicht glänzend.`,
    fr: `Peut être mate de nature, et alors la nourrir d’huile ne la rendra pas brillante, si elle a aussi peu d’huile que l’estimation le permet.`,
    es: `Puede ser mate por naturaleza, y entonces nutrirla con aceite no la hará brillante, si tiene tan poco aceite como permite la estimación.`,
  },
  "oiling-out": {
    en: "Where it has sunk in while you paint, oiling out brings back the depth: rub a little oil over the dry film and wipe it off. Do not finish a picture that way; use varnish.",
    de: "Wo die Farbe beim Malen eingeschlagen ist, bringt Einölen die Tiefe zurück: ein wenig Öl auf den trockenen Film reiben und abwischen. Ein fertiges Bild nicht einölen, sondern firnissen.",
    fr: "Là où la couleur s’est embue pendant le travail, un peu d’huile frottée sur le film sec, puis essuyée, rend la profondeur. Ne pas finir un tableau ainsi\u202f; employer un vernis.",
    es: "Donde se haya rechupado mientras se pinta, un poco de aceite frotado sobre la película seca y limpiado después devuelve la profundidad. No acabar así un cuadro; usar barniz.",
  },
  "yellows-most": ({ oil }) => ({
    en: `Of the drying oils, ${OILS[oil].en} yellows most, and it makes the toughest film.`,
    de: `${OILS[oil].de} vergilbt von den trocknenden Ölen am meisten und gibt den zähesten Film.`,
    fr: fr.sentence(
      `${OILS[oil].fr}\u202f: c’est l’huile siccative qui jaunit le plus, et qui donne le film le plus résistant`,
    ),
    es: es.sentence(
      `${OILS[oil].es}: el que más amarillea de los aceites secantes, y el que da la película más tenaz`,
    ),
  }),
  "yellows-less": ({ oil }) => ({
    en: en.sentence(`${OILS[oil].en} yellows less than plain linseed oil`),
    de: `${OILS[oil].de} vergilbt weniger als gewöhnliches Leinöl.`,
    fr: fr.sentence(`${OILS[oil].fr}\u202f: jaunit moins que l’huile de lin ordinaire`),
    es: es.sentence(`${OILS[oil].es}: amarillea menos que el aceite de linaza corriente`),
  }),
  "yellows-least": ({ oil }) => ({
    en: en.sentence(
      `${OILS[oil].en} is among the oils that yellow least, and makes a weaker, slower film`,
    ),
    de: `${OILS[oil].de} gehört zu den Ölen, die am wenigsten vergilben, und gibt einen schwächeren, langsamer trocknenden Film.`,
    fr: fr.sentence(
      `${OILS[oil].fr}\u202f: l’une des huiles qui jaunissent le moins, mais son film est plus faible et plus lent à sécher`,
    ),
    es: es.sentence(
      `${OILS[oil].es}: uno de los aceites que menos amarillean, pero su película es más débil y seca más despacio`,
    ),
  }),
  "drier-above-customary": ({ metal, percentOnOil, customaryPercent }) => ({
    en: `${en.withUnit(en.significant(percentOnOil, 2), "%")} ${metal} on oil is more than the customary ${en.withUnit(en.significant(customaryPercent, 2), "%")}: the film may skin over and wrinkle.`,
    de: `${de.withUnit(de.significant(percentOnOil, 2), "%")} ${METALS[metal].de} auf Öl sind mehr als die üblichen ${de.withUnit(de.significant(customaryPercent, 2), "%")}: Der Film kann eine Haut bilden und runzelig auftrocknen.`,
    fr: `${fr.withUnit(fr.significant(percentOnOil, 2), "%")} de ${METALS[metal].fr} sur l’huile, c’est plus que les ${fr.withUnit(fr.significant(customaryPercent, 2), "%")} d’usage\u202f: le film peut former une peau et se rider.`,
    es: `Un ${es.withUnit(es.significant(percentOnOil, 2), "%")} de ${METALS[metal].es} sobre el aceite es más que el ${es.withUnit(es.significant(customaryPercent, 2), "%")} usual: la película puede formar piel y arrugarse.`,
  }),
  "surface-drier-alone": ({ metals }) => ({
    en: en.sentence(
      `${en.listed(metals)} ${metals.length > 1 ? "dry" : "dries"} from the surface with no through drier beside it: a thick stroke may wrinkle`,
    ),
    de: `${de.listed(metals.map((metal) => METALS[metal].de))} ${metals.length > 1 ? "trocknen" : "trocknet"} von der Oberfläche her, und ein Sikkativ, das durchtrocknet, fehlt: Dick aufgetragen kann die Farbe runzelig auftrocknen.`,
    fr: fr.sentence(
      `${fr.listed(metals.map((metal) => METALS[metal].fr))} ${metals.length > 1 ? "sèchent" : "sèche"} par la surface, sans siccatif à cœur à côté\u202f: une touche épaisse peut se rider`,
    ),
    es: es.sentence(
      `${es.listed(metals.map((metal) => METALS[metal].es))} ${metals.length > 1 ? "secan" : "seca"} por la superficie, sin otro secante que seque en profundidad: una pincelada gruesa puede arrugarse`,
    ),
  }),
};

/** Of several in order the first and the last. */
function outermost<T>(all: readonly T[]): readonly T[] {
  return all.filter((_, i) => i === 0 || i === all.length - 1);
}
