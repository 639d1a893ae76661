import { STATED_QUARTZ } from "../../hazard/studio/quartz.ts";
import { hazardEffects } from "../../hazard/texts/hazard-effect.ts";
import type { StudioStatement } from "../../hazard/statements.ts";
import type { BenchTestUse } from "../../hazard/studio/bench-test.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { METALS, wordOf } from "./closed-words.ts";
import { HAZARD_EFFECTS } from "./hazard-effects.ts";
import { bracketed, listed, micrometres, namesWithin, significant, withUnit } from "./phrases.ts";

const DUSTINESS = {
  "very dusty": "Un polvo muy pulverulento",
  dusty: "Un polvo pulverulento",
  "less dusty": "Un polvo pesado, menos pulverulento que la mayoría",
  "not known": "No está registrado cuán pulverulento es el polvo; tratarlo como muy pulverulento",
} as const;
const NATURES = {
  "fine carbon": "El polvo de carbono fino puede arder.",
  organic: "El polvo de un pigmento orgánico puede arder.",
  "not known": "No se sabe si su polvo puede arder; tratarlo como si pudiera.",
} as const;

/** Cautions of studio and workshop, then the reasons that stand after them, each a sentence of its own. */
export const STUDIO_WORDINGS: WordingsOf<StudioStatement> = {
  "captured-exhaust-first": (v) =>
    `Pesar y moler con moleta ${pigments(v)} donde un extractor capte el polvo, o bajo una campana; la mascarilla viene además de eso.`,
  "no-draught-across-powder": (v) =>
    `Ni corrientes de aire ni ventiladores sobre el polvo: ${pigments(v)}.`,
  "respirator-ffp2": (v) =>
    `Con ${pigments(v)}, llevar una mascarilla ajustada FFP2 o N95 como mínimo, además del extractor y nunca en su lugar.`,
  "respirator-p3": (v) =>
    `Con ${pigments(v)}, llevar un equipo respiratorio ajustado con filtro P3 o P100, o una mascarilla FFP3, además del extractor y nunca en su lugar.`,
  "no-ignition-source": (v) => `Ninguna llama, chispa ni otra fuente de ignición cerca: ${it(v)}.`,
  gloves: ({ pigments: of }) =>
    of === undefined ? "Llevar guantes." : `Llevar guantes con ${namesWithin(of)}.`,
  "eye-protection": (v) => `Protegerse los ojos: ${it(v)}.`,
  "pregnant-or-nursing-keep-away": (v) =>
    `Quien esté o pueda quedar embarazada, o dé el pecho, se mantiene alejada: ${it(v)}.`,
  "workplace-lead-rules": (v) =>
    `Rigen las normas laborales sobre el plomo (${it(v)}); los reglamentos locales y la práctica autorizada tienen prioridad.`,
  "work-clothes-apart": (v) =>
    `La ropa llevada para ${pigments(v)} se queda en el taller: cambiarse antes de ir a casa, lavarla aparte, y no sacudir ni soplar el polvo.`,
  "children-keep-away": (v) => `Mantener alejados a los niños: ${it(v)}.`,
  "no-food-in-the-room": (v) =>
    `No comer, beber ni fumar en la sala donde esté este producto: ${it(v)}.`,
  "no-food-no-brush-in-mouth": () =>
    "Ni comida ni bebida junto a la pintura, y no afilar el pincel en la boca.",
  "not-on-skin-or-food": () =>
    "No es para niños; ni en la piel, ni en la comida o lo que toca la comida. Tapar.",
  "fresh-air": () => "Ventilar la sala mientras se pinta y mientras la pintura seca.",
  "no-dry-sanding": () => "No lijar la película en seco: lijarla mojada y recoger con un paño.",
  "never-sand-dry": () => "No lijar nunca la película en seco.",
  "no-spraying-no-heating": () => "No pulverizar nunca, y no calentar nunca.",
  "spray-only-with-captured-exhaust": () =>
    "Pulverizar solo donde un extractor capte la niebla, y además con un equipo respiratorio ajustado.",
  "no-heating-of-oil": () => "No calentar el aceite ni la pintura.",
  "wet-wipe-no-sweeping": () =>
    "Limpiar en mojado: ni barrer en seco ni aspirador doméstico, solo uno con filtro de clase H.",
  "wash-hands": () => "Lavarse las manos después del trabajo y antes de comer.",
  "oily-rags": () =>
    "Los trapos, papeles y filtros empapados de aceite secante pueden prenderse solos: extenderlos uno a uno al aire libre hasta que endurezcan, o remojarlos en agua en una lata metálica cerrada que se vacía a diario; nunca en la basura ni en un montón.",
  "not-down-the-drain": () => "Ni pintura, ni aceite, ni aguas de enjuague por el desagüe.",
  "hazardous-waste": () =>
    "Los restos son residuos peligrosos: entregarlos según las normas locales.",

  dustiness: ({
    class: of,
    bulkDensityLooseGPerMl: loose,
    bulkDensityTappedGPerMl: tapped,
    particleSizeUm,
  }) =>
    `${DUSTINESS[of]}${bracketed(bulk(loose, "sin compactar"), bulk(tapped, "compactado"), grain(particleSizeUm))}.`,
  "nuisance-dust": () => "Todo polvo fino es malo para los pulmones.",
  "dust-can-burn": ({ nature }) => NATURES[nature],
  "dust-goes-up-again": () => "Barrer devuelve el polvo al aire.",
  "film-turns-to-dust": () => "Lijar convierte la película en polvo.",
  "droplets-are-breathed-in": () => "La niebla de pulverizar se inhala.",
  "holds-metal": ({ metals }) => `Contiene ${listed(metals.map(metalWord))}.`,
  "states-hazard": ({ statements }) => `${sentence(effects(statements))}.`,
  "hazard-data-missing": ({ ingredients }) =>
    `No hay datos de peligro registrados para ${namesWithin(ingredients)}; tratar como peligroso.`,
  "holds-sensitiser": ({ names }) =>
    `Contiene ${namesWithin(names)}, a lo que la piel puede hacerse alérgica.`,
  "may-hold-quartz": ({ what }) =>
    what === STATED_QUARTZ
      ? "Según el documento de su proveedor contiene cuarzo respirable, que daña los pulmones y puede causar cáncer."
      : `Es ${wordOf(QUARTZ, what)}. Su polvo puede contener cuarzo respirable, que daña los pulmones y puede causar cáncer, salvo que un documento del proveedor diga que no lo hay.`,
  "quartz-in-the-paint": ({ pigments: of, known }) =>
    known === "stated"
      ? `Hay cuarzo respirable en ${namesWithin(of)}: inhalado, daña los pulmones y puede causar cáncer.`
      : `Puede haber cuarzo respirable en ${namesWithin(of)}: inhalado, daña los pulmones y puede causar cáncer.`,
  "hazard-of-its-dust": ({ pigments: of, statements }) =>
    `El polvo de ${namesWithin(of)} ${effects(statements)}.`,
  "bench-test-with-care": ({ uses }) =>
    `${uses.map((use) => BENCH_CARE[use]).join(" ")} Basta una pizca; ojos protegidos, y nada cerca que arda o se coma.`,
  "paint-is-no-food": () => "No tragar pintura.",
  "drying-oil": () => "Un aceite secante toma oxígeno y se calienta solo.",
  "paint-and-oil-foul-water": () => "La pintura y el aceite contaminan el agua.",
};

/** What may hold respirable quartz, with its article. */
const QUARTZ: Readonly<Record<string, string>> = {
  "natural sienna or umber": "una siena o sombra natural",
  "natural ochre": "un ocre natural",
  "natural red earth": "una tierra roja natural",
  "green earth": "tierra verde",
  "natural chalk or limestone": "creta o caliza natural",
  kaolin: "caolín",
  mica: "mica",
  gypsum: "yeso",
  talc: "talco",
  silica: "sílice",
};

/** What makes each kind of test hold no harm. */
const BENCH_CARE: Readonly<Record<BenchTestUse, string>> = {
  heat: "Con calor: bajo extracción localizada o al aire libre, en una cuchara metálica sujeta con pinzas, y nunca con un pigmento de plomo, cadmio, mercurio, arsénico, cromato, antimonio o cobre.",
  acid: "Con ácido: una gota y no más, al aire libre, con guantes; nunca sobre un sulfuro, un cianuro o un pigmento de arsénico, en ninguna cantidad.",
  lye: "Con sosa cáustica o carbonato sódico: con guantes, y lejos de los ojos.",
  peroxide:
    "Con peróxido: al tres por ciento y no más fuerte, con guantes, nunca en un recipiente cerrado.",
  solvent: "Con un disolvente: al aire libre, y sin llamas en la sala.",
};

/** What the hazards of a label do, after a subject. */
function effects(statements: readonly string[]): string {
  return listed(hazardEffects(statements).map((effect) => HAZARD_EFFECTS[effect]));
}

function sentence(words: string): string {
  return words.charAt(0).toLocaleUpperCase("es") + words.slice(1);
}

interface OfPigments {
  readonly pigments?: readonly string[];
}

function pigments({ pigments: of }: OfPigments): string {
  return of === undefined ? "el pigmento" : namesWithin(of);
}

/** The pigments that a caution names, or the paint when it names none. */
function it({ pigments: of }: OfPigments): string {
  return of === undefined ? "la pintura" : namesWithin(of);
}

/** As a reader knows it. */
export function metalWord(metal: string): string {
  return wordOf(METALS, metal);
}

function bulk(density: Quantity | undefined, how: string): string | undefined {
  return density === undefined ? undefined : `${withUnit(significant(density, 2), "g/ml")} ${how}`;
}

function grain(um: Quantity | undefined): string | undefined {
  return um === undefined ? undefined : `grano ${micrometres(um)}`;
}
