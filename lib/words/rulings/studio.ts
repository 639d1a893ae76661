import type { StudioStatement } from "../../hazard/statements.ts";
import { STATED_QUARTZ } from "../../hazard/studio/quartz.ts";
import { upperFirst } from "../letter-case.ts";
import { QUARTZ, wordOf } from "../closed-sets.ts";
import {
  it,
  DUSTINESS,
  dustFacts,
  gasSentences,
  NATURES,
  metalWord,
  effects,
  BENCH_CARE,
  powder,
  germanCaution,
} from "./studio-phrases.ts";
import { de, en, es, fr, inEach } from "../phrases-in-each.ts";
import type { RulingsInEach } from "./rulings-in-each.ts";

/** Cautions of studio and workshop, then the reasons that stand after them, each a sentence of its own. */
export const STUDIO_RULINGS: RulingsInEach<StudioStatement> = {
  "captured-exhaust-first": (v) => ({
    en: `Weigh and mull ${powder(v).en} where an extractor catches the dust, or under a cover; a mask comes on top of that.`,
    de: germanCaution(
      v,
      "nur dort abwiegen und anreiben, wo eine Absaugung den Staub erfasst, oder unter einer Abdeckung; eine Maske kommt noch dazu",
    ),
    fr: `Peser et broyer à la molette ${powder(v).fr} là où une aspiration capte la poussière, ou sous une cloche\u202f; le masque vient en plus.`,
    es: `Pesar y moler con moleta ${powder(v).es} donde un extractor capte el polvo, o bajo una campana; la mascarilla viene además de eso.`,
  }),
  "no-draught-across-powder": (v) => ({
    en: `No draught and no fan across the powder of ${powder(v).en}.`,
    de: germanCaution(v, "keine Zugluft und kein Ventilator über dem Pulver"),
    fr: `Ni courant d’air ni ventilateur sur la poudre${v.pigments === undefined ? "" : `\u202f: ${fr.namesWithin(v.pigments)}`}.`,
    es: `Ni corrientes de aire ni ventiladores sobre el polvo${v.pigments === undefined ? "" : `: ${es.namesWithin(v.pigments)}`}.`,
  }),
  "respirator-ffp2": (v) => ({
    en: `For ${powder(v).en} wear a fitted mask of FFP2 or N95 at least, as well as the extractor and never in its place.`,
    de: germanCaution(
      v,
      "eine dicht sitzende Maske tragen, mindestens FFP2 oder N95, zusätzlich zur Absaugung und nie an ihrer Stelle",
    ),
    fr: `Pour ${powder(v).fr}, porter un masque ajusté FFP2 ou N95 au moins, en plus de l’aspiration et jamais à sa place.`,
    es: `Con ${powder(v).es}, llevar una mascarilla bien ajustada, FFP2 o N95 como mínimo, además del extractor y nunca en su lugar.`,
  }),
  "respirator-p3": (v) => ({
    en: `For ${powder(v).en} wear a fitted respirator with a P3 or P100 filter, or a mask of FFP3, as well as the extractor and never in its place.`,
    de: germanCaution(
      v,
      "ein dicht sitzendes Atemschutzgerät mit P3- oder P100-Filter oder eine Maske FFP3 tragen, zusätzlich zur Absaugung und nie an ihrer Stelle",
    ),
    fr: `Pour ${powder(v).fr}, porter un appareil respiratoire ajusté à filtre P3 ou P100, ou un masque FFP3, en plus de l’aspiration et jamais à sa place.`,
    es: `Con ${powder(v).es}, llevar un equipo respiratorio ajustado con filtro P3 o P100, o una mascarilla FFP3, además del extractor y nunca en su lugar.`,
  }),
  "no-ignition-source": (v) => ({
    en: `No flame, spark or other source of ignition near ${it(v).en}.`,
    de: germanCaution(v, "keine Flamme, keine Funken und keine andere Zündquelle in der Nähe"),
    fr: `Ni flamme, ni étincelle, ni autre source d’inflammation à proximité ${fr.of(it(v).fr)}.`,
    es: `Ninguna llama, chispa ni otra fuente de ignición cerca de ${it(v).es}.`,
  }),
  gloves: (v) => ({
    en:
      v.pigments === undefined ? "Wear gloves." : `Wear gloves with ${en.namesWithin(v.pigments)}.`,
    de: germanCaution(v, "Handschuhe tragen"),
    fr:
      v.pigments === undefined
        ? "Porter des gants."
        : `Porter des gants avec ${fr.namesWithin(v.pigments)}.`,
    es:
      v.pigments === undefined
        ? "Llevar guantes."
        : `Llevar guantes con ${es.namesWithin(v.pigments)}.`,
  }),
  "eye-protection": (v) => ({
    en: `Protect the eyes from ${it(v).en}.`,
    de: germanCaution(v, "die Augen schützen"),
    fr: `Se protéger les yeux ${fr.of(it(v).fr)}.`,
    es: `Protegerse los ojos de ${it(v).es}.`,
  }),
  "pregnant-or-nursing-keep-away": (v) => ({
    en: `Anyone who is or may become pregnant, or is nursing, keeps away from ${it(v).en}.`,
    de: germanCaution(v, "Wer schwanger ist oder sein kann oder stillt, hält sich fern"),
    fr: `Quiconque est enceinte, peut le devenir ou allaite se tient à l’écart ${fr.of(it(v).fr)}.`,
    es: `Quien esté o pueda quedar embarazada, o dé el pecho, se mantiene alejada de ${it(v).es}.`,
  }),
  "workplace-lead-rules": (v) => ({
    en: `The workplace rules on lead apply to ${it(v).en}; local codes and licensed practice come first.`,
    de: `Es gelten die Arbeitsschutzvorschriften für Blei (${it(v).de}); örtliche Vorschriften und zugelassene Fachleute gehen vor.`,
    fr: `Les règles du travail sur le plomb s’appliquent (${it(v).fr})\u202f; les règlements locaux et les pratiques agréées priment.`,
    es: `Rigen las normas laborales sobre el plomo (${it(v).es}); los reglamentos locales y las prácticas autorizadas tienen prioridad.`,
  }),
  "work-clothes-apart": (v) => ({
    en: `Clothes worn for ${powder(v).en} stay in the workshop: change before going home, wash them apart, and neither shake nor blow the dust out.`,
    de: germanCaution(
      v,
      "Arbeitskleidung bleibt in der Werkstatt: vor dem Heimgehen umziehen, sie getrennt waschen und den Staub weder ausschütteln noch ausblasen",
    ),
    fr: `Les vêtements portés pour ${powder(v).fr} restent à l’atelier\u202f: se changer avant de rentrer, les laver à part, et ne pas les secouer ni en chasser la poussière à l’air.`,
    es: `La ropa llevada para ${powder(v).es} se queda en el taller: cambiarse antes de ir a casa, lavarla aparte, y no sacudirla ni quitarle el polvo con aire.`,
  }),
  "children-keep-away": (v) => ({
    en: `Keep children away from ${it(v).en}.`,
    de: germanCaution(v, "Kinder fernhalten"),
    fr: `Tenir les enfants à l’écart ${fr.of(it(v).fr)}.`,
    es: `Mantener a los niños alejados de ${it(v).es}.`,
  }),
  "no-food-in-the-room": (v) => ({
    en: `No eating, drinking or smoking in the room with ${it(v).en}.`,
    de: germanCaution(v, "im selben Raum nicht essen, trinken oder rauchen"),
    fr: `Ne pas manger, boire ni fumer dans la même pièce ${fr.than(it(v).fr)}.`,
    es: `No comer, beber ni fumar en la misma sala que ${it(v).es}.`,
  }),
  "no-food-no-brush-in-mouth": {
    en: "No food or drink beside the paint, and do not point a brush in the mouth.",
    de: "Neben der Farbe weder essen noch trinken, und den Pinsel nicht mit dem Mund anspitzen.",
    fr: "Ni nourriture ni boisson près de la peinture, et ne pas effiler un pinceau avec la bouche.",
    es: "Ni comida ni bebida junto a la pintura, y no afinar el pincel con la boca.",
  },
  "not-on-skin-or-food": {
    en: "Not for a child's use; not on skin, not on food or what touches food. Put the lid on.",
    de: "Nicht für den Gebrauch durch Kinder; nicht auf die Haut, nicht auf Lebensmittel oder auf das, was mit Lebensmitteln in Berührung kommt. Deckel schließen.",
    fr: "Non destiné aux enfants\u202f; ni sur la peau, ni sur la nourriture ou ce qui la touche. Refermer.",
    es: "No es para niños; ni en la piel, ni en la comida o lo que toca la comida. Tapar.",
  },
  "fresh-air": {
    en: "Air the room while you paint and while the paint dries.",
    de: "Den Raum lüften, während Sie malen und während die Farbe trocknet.",
    fr: "Aérer la pièce pendant qu’on peint et pendant que la peinture sèche.",
    es: "Ventilar la sala mientras se pinta y mientras la pintura seca.",
  },
  "no-dry-sanding": {
    en: "Do not sand the film dry: sand it wet and wipe it up.",
    de: "Den Film nicht trocken schleifen: nass schleifen und aufwischen.",
    fr: "Ne pas poncer le film à sec\u202f: le poncer mouillé et l’essuyer.",
    es: "No lijar la película en seco: lijarla mojada y recoger con un paño.",
  },
  "never-sand-dry": {
    en: "Never sand the film dry.",
    de: "Den Film niemals trocken schleifen.",
    fr: "Ne jamais poncer le film à sec.",
    es: "No lijar nunca la película en seco.",
  },
  "no-spraying-no-heating": {
    en: "Never spray it, and never heat it.",
    de: "Niemals sprühen und niemals erhitzen.",
    fr: "Ne jamais pulvériser, ne jamais chauffer.",
    es: "No pulverizar nunca, y no calentar nunca.",
  },
  "spray-only-with-captured-exhaust": {
    en: "Spray it only where an extractor catches the mist, with a fitted respirator as well.",
    de: "Nur sprühen, wo eine Absaugung den Nebel erfasst, und zusätzlich mit dicht sitzendem Atemschutz.",
    fr: "Ne pulvériser que là où une aspiration capte le brouillard, et avec un appareil respiratoire ajusté.",
    es: "Pulverizar solo donde un extractor capte la niebla, y además con un equipo respiratorio ajustado.",
  },
  "no-heating-of-oil": {
    en: "Do not heat the oil or the paint.",
    de: "Weder Öl noch Farbe erhitzen.",
    fr: "Ne pas chauffer l’huile ni la peinture.",
    es: "No calentar el aceite ni la pintura.",
  },
  "wet-wipe-no-sweeping": {
    en: "Wipe up wet: no dry sweeping and no household vacuum, only one with a class H filter.",
    de: "Nass aufwischen: nicht trocken fegen und keinen Haushaltsstaubsauger verwenden, nur einen mit Filter der Klasse H.",
    fr: "Nettoyer à l’humide\u202f: ni balayage à sec ni aspirateur ménager, seulement un aspirateur à filtre de classe H.",
    es: "Limpiar en húmedo: ni barrer en seco ni aspirador doméstico, solo uno con filtro de clase H.",
  },
  "no-acid": {
    en: "Keep paint and pigment away from acid: no descaler, no vinegar, no acid cleaner.",
    de: "Farbe und Pigment von Säure fernhalten: kein Entkalker, kein Essig, kein saurer Reiniger.",
    fr: "Tenir peinture et pigment loin des acides\u202f: ni détartrant, ni vinaigre, ni nettoyant acide.",
    es: "Mantener pintura y pigmento lejos de los ácidos: ni desincrustante, ni vinagre, ni limpiador ácido.",
  },
  "wash-hands": {
    en: "Wash hands after work and before eating.",
    de: "Nach der Arbeit und vor dem Essen Hände waschen.",
    fr: "Se laver les mains après le travail et avant de manger.",
    es: "Lavarse las manos después del trabajo y antes de comer.",
  },
  "oily-rags": {
    en: "Rags, paper and filters soaked in drying oil can catch fire by themselves: spread them singly outdoors to dry hard, or soak them in water in a closed metal can that is emptied daily; never in a bin or a heap.",
    de: "Mit trocknendem Öl getränkte Lappen, Papiere und Filter können sich selbst entzünden: einzeln im Freien ausbreiten, bis sie hart trocken sind, oder in Wasser in einer geschlossenen Metalldose aufbewahren, die täglich geleert wird; niemals in den Abfalleimer oder auf einen Haufen.",
    fr: "Les chiffons, papiers et filtres imbibés d’huile siccative peuvent prendre feu d’eux-mêmes\u202f: les étaler un par un dehors jusqu’à ce qu’ils durcissent, ou les tremper dans l’eau dans un bidon métallique fermé, vidé chaque jour\u202f; jamais à la poubelle ni en tas.",
    es: "Los trapos, papeles y filtros empapados de aceite secante pueden prenderse solos: extenderlos uno a uno al aire libre hasta que endurezcan, o remojarlos en agua en una lata cerrada que se vacía a diario; nunca en la basura ni en un montón.",
  },
  "not-down-the-drain": {
    en: "Neither paint nor oil nor rinsings go down the drain.",
    de: "Weder Farbe noch Öl noch Spülwasser gehören in den Ausguss.",
    fr: "Ni peinture, ni huile, ni eaux de rinçage à l’égout.",
    es: "Ni pintura, ni aceite, ni aguas de enjuague por el desagüe.",
  },
  "hazardous-waste": {
    en: "Leftovers are hazardous waste: hand them in by local rules.",
    de: "Reste sind gefährlicher Abfall: nach den örtlichen Vorschriften abgeben.",
    fr: "Les restes sont des déchets dangereux\u202f: les remettre selon les règles locales.",
    es: "Los restos son residuos peligrosos: entregarlos según las normas locales.",
  },

  dustiness: ({ class: of, ...facts }) => {
    const told = dustFacts(facts);
    return inEach((_, language) => `${DUSTINESS[of][language]}${told[language]}.`);
  },
  "nuisance-dust": {
    en: "Any fine dust is bad for the lungs.",
    de: "Jeder Feinstaub schadet der Lunge.",
    fr: "Toute poussière fine est mauvaise pour les poumons.",
    es: "Todo polvo fino es malo para los pulmones.",
  },
  "dust-can-burn": ({ nature }) => NATURES[nature],
  "gives-off-gas": ({ gases }) => gasSentences(gases),
  "dust-goes-up-again": {
    en: "Sweeping puts the dust back into the air.",
    de: "Fegen bringt den Staub wieder in die Luft.",
    fr: "Balayer remet la poussière dans l’air.",
    es: "Barrer devuelve el polvo al aire.",
  },
  "film-turns-to-dust": {
    en: "Sanding turns the film to dust.",
    de: "Beim Schleifen wird der Film zu Staub.",
    fr: "Le ponçage réduit le film en poussière.",
    es: "Lijar convierte la película en polvo.",
  },
  "droplets-are-breathed-in": {
    en: "Spray is breathed in.",
    de: "Sprühnebel wird eingeatmet.",
    fr: "Le brouillard de pulvérisation est inhalé.",
    es: "La niebla de pulverizar se inhala.",
  },
  "holds-metal": ({ metals }) => ({
    en: `It holds ${en.listed(metals.map((one) => metalWord(one).en))}.`,
    de: `Enthält ${de.listed(metals.map((one) => metalWord(one).de))}.`,
    fr: `Contient\u202f: ${fr.listed(metals.map((one) => metalWord(one).fr))}.`,
    es: `Contiene ${es.listed(metals.map((one) => metalWord(one).es))}.`,
  }),
  "states-hazard": ({ statements }) => ({
    en: `It ${effects(statements).en}.`,
    de: `${upperFirst(effects(statements).de)}.`,
    fr: `${upperFirst(effects(statements).fr)}.`,
    es: `${upperFirst(effects(statements).es)}.`,
  }),
  "hazard-data-missing": ({ ingredients }) => ({
    en: `No hazard data recorded for ${en.namesWithin(ingredients)}; treat as hazardous.`,
    de: `Keine Gefahrendaten aufgezeichnet für ${de.namesWithin(ingredients)}; als gefährlich behandeln.`,
    fr: `Aucune donnée de danger consignée pour ${fr.namesWithin(ingredients)}\u202f; à traiter comme dangereux.`,
    es: `No hay datos de peligro registrados para ${es.namesWithin(ingredients)}; tratar como peligroso.`,
  }),
  "holds-sensitiser": ({ names }) => ({
    en: `It holds ${en.namesWithin(names)}, to which skin can become allergic.`,
    de: `Enthält ${de.namesWithin(names)}; das kann allergische Hautreaktionen auslösen.`,
    fr: `Contient ${fr.namesWithin(names)}, qui peut causer une allergie de la peau.`,
    es: `Contiene ${es.namesWithin(names)}, que puede causar alergia en la piel.`,
  }),
  "may-hold-quartz": ({ what }) => ({
    en:
      what === STATED_QUARTZ
        ? "By its supplier's paper it holds respirable quartz, which scars the lungs and can cause cancer."
        : `It is ${wordOf(QUARTZ, what, "en")}. Its dust may hold respirable quartz, which scars the lungs and can cause cancer, unless its supplier's paper says that there is none.`,
    de:
      what === STATED_QUARTZ
        ? "Nach den Unterlagen des Lieferanten enthält das Pigment alveolengängigen Quarzstaub, der die Lunge vernarbt und Krebs erzeugen kann."
        : `Das ist ${wordOf(QUARTZ, what, "de")}. Wenn die Unterlagen des Lieferanten nicht ausdrücklich sagen, dass keiner darin ist, kann der Staub alveolengängigen Quarz enthalten, der die Lunge vernarbt und Krebs erzeugen kann.`,
    fr:
      what === STATED_QUARTZ
        ? "Selon le document de son fournisseur, il contient du quartz alvéolaire, qui lèse les poumons et peut causer un cancer."
        : `C’est ${wordOf(QUARTZ, what, "fr")}. Sa poussière peut contenir du quartz alvéolaire, qui lèse les poumons et peut causer un cancer, à moins qu’un document du fournisseur ne dise qu’il n’y en a pas.`,
    es:
      what === STATED_QUARTZ
        ? "Según el documento de su proveedor, contiene cuarzo respirable, que daña los pulmones y puede causar cáncer."
        : `Es ${wordOf(QUARTZ, what, "es")}. Su polvo puede contener cuarzo respirable, que daña los pulmones y puede causar cáncer, salvo que un documento del proveedor diga que no lo hay.`,
  }),
  "quartz-in-the-paint": ({ pigments: of, known }) => ({
    en:
      known === "stated"
        ? `There is respirable quartz in ${en.namesWithin(of)}: breathed in, it scars the lungs and can cause cancer.`
        : `There may be respirable quartz in ${en.namesWithin(of)}: breathed in, it scars the lungs and can cause cancer.`,
    de:
      known === "stated"
        ? de.sentence(
            `${de.namesWithin(of)} ${of.length > 1 ? "enthalten" : "enthält"} alveolengängigen Quarz: Eingeatmet vernarbt er die Lunge und kann Krebs erzeugen`,
          )
        : de.sentence(
            `${de.namesWithin(of)} ${of.length > 1 ? "können" : "kann"} alveolengängigen Quarz enthalten: Eingeatmet vernarbt er die Lunge und kann Krebs erzeugen`,
          ),
    fr:
      known === "stated"
        ? `Il y a du quartz alvéolaire dans ${fr.namesWithin(of)}\u202f: inhalé, il lèse les poumons et peut causer un cancer.`
        : `Il peut y avoir du quartz alvéolaire dans ${fr.namesWithin(of)}\u202f: inhalé, il lèse les poumons et peut causer un cancer.`,
    es:
      known === "stated"
        ? `Hay cuarzo respirable en ${es.namesWithin(of)}: inhalado, daña los pulmones y puede causar cáncer.`
        : `Puede haber cuarzo respirable en ${es.namesWithin(of)}: inhalado, daña los pulmones y puede causar cáncer.`,
  }),
  "hazard-of-its-dust": ({ pigments, statements }) => ({
    en: `The dust of ${en.namesWithin(pigments)} ${effects(statements).en}.`,
    de: de.sentence(`${de.namesWithin(pigments)}: Der Staub ${effects(statements).de}`),
    fr: `La poussière ${fr.of(fr.namesWithin(pigments))} ${effects(statements).fr}.`,
    es: `El polvo de ${es.namesWithin(pigments)} ${effects(statements).es}.`,
  }),
  "bench-test-with-care": ({ uses }) => ({
    en: `${uses.map((use) => BENCH_CARE[use].en).join(" ")} A pinch is enough; eye protection, and nothing near that burns or is eaten.`,
    de: `${uses.map((use) => BENCH_CARE[use].de).join(" ")} Eine Prise genügt; Augenschutz, und nichts in der Nähe, was brennt oder gegessen wird.`,
    fr: `${uses.map((use) => BENCH_CARE[use].fr).join(" ")} Une pincée suffit\u202f; yeux protégés, et rien à proximité qui brûle ou qui se mange.`,
    es: `${uses.map((use) => BENCH_CARE[use].es).join(" ")} Basta una pizca; ojos protegidos, y nada cerca que arda o se coma.`,
  }),
  "paint-is-no-food": {
    en: "Do not swallow paint.",
    de: "Farbe nicht verschlucken.",
    fr: "Ne pas avaler la peinture.",
    es: "No tragar pintura.",
  },
  "drying-oil": {
    en: "A drying oil takes up oxygen and grows warm by itself.",
    de: "Ein trocknendes Öl nimmt Sauerstoff auf und erwärmt sich von selbst.",
    fr: "Une huile siccative fixe l’oxygène et s’échauffe d’elle-même.",
    es: "Un aceite secante toma oxígeno y se calienta por sí solo.",
  },
  "paint-and-oil-foul-water": {
    en: "Paint and oil foul water.",
    de: "Farbe und Öl verschmutzen das Wasser.",
    fr: "La peinture et l’huile polluent l’eau.",
    es: "La pintura y el aceite contaminan el agua.",
  },
};
