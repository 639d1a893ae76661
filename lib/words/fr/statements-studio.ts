import { STATED_QUARTZ } from "../../hazard/studio/quartz.ts";
import { hazardEffects } from "../../hazard/texts/hazard-effect.ts";
import type { StudioStatement } from "../../hazard/statements.ts";
import type { BenchTestUse } from "../../hazard/studio/bench-test.ts";
import type { Quantity } from "../../quantities/interval.ts";
import type { WordingsOf } from "../../quantities/statement.ts";
import { METALS, wordOf } from "./closed-words.ts";
import { HAZARD_EFFECTS } from "./hazard-effects.ts";
import {
  bracketed,
  listed,
  micrometres,
  namesWithin,
  significant,
  withUnit,
  of,
} from "./phrases.ts";

const DUSTINESS = {
  "very dusty": "Une poudre très poussiéreuse",
  dusty: "Une poudre poussiéreuse",
  "less dusty": "Une poudre lourde, moins poussiéreuse que la plupart",
  "not known":
    "On n’a pas consigné combien la poudre est poussiéreuse\u202f; la traiter comme très poussiéreuse",
} as const;
const NATURES = {
  "fine carbon": "La poussière de carbone fin peut brûler.",
  organic: "La poussière d’un pigment organique peut brûler.",
  "not known":
    "On ne sait pas si sa poussière peut brûler\u202f; la traiter comme si elle le pouvait.",
} as const;

/** Cautions of studio and workshop, then the reasons that stand after them, each a sentence of its own. */
export const STUDIO_WORDINGS: WordingsOf<StudioStatement> = {
  "captured-exhaust-first": (v) =>
    `Peser et broyer à la molette ${pigments(v)} là où une aspiration capte la poussière, ou sous une cloche\u202f; le masque vient en plus.`,
  "no-draught-across-powder": (v) =>
    `Ni courant d’air ni ventilateur sur la poudre\u202f: ${pigments(v)}.`,
  "respirator-ffp2": (v) =>
    `Pour ${pigments(v)}, porter un masque ajusté FFP2 ou N95 au moins, en plus de l’aspiration et jamais à sa place.`,
  "respirator-p3": (v) =>
    `Pour ${pigments(v)}, porter un appareil respiratoire ajusté à filtre P3 ou P100, ou un masque FFP3, en plus de l’aspiration et jamais à sa place.`,
  "no-ignition-source": (v) =>
    `Ni flamme, ni étincelle, ni autre source d’inflammation à proximité\u202f: ${it(v)}.`,
  gloves: ({ pigments: of }) =>
    of === undefined ? "Porter des gants." : `Porter des gants avec ${namesWithin(of)}.`,
  "eye-protection": (v) => `Se protéger les yeux\u202f: ${it(v)}.`,
  "pregnant-or-nursing-keep-away": (v) =>
    `Quiconque est enceinte, peut le devenir ou allaite se tient à l’écart\u202f: ${it(v)}.`,
  "workplace-lead-rules": (v) =>
    `Les règles du travail sur le plomb s’appliquent (${it(v)})\u202f; les règlements locaux et la pratique habilitée priment.`,
  "work-clothes-apart": (v) =>
    `Les vêtements portés pour ${pigments(v)} restent à l’atelier\u202f: se changer avant de rentrer, les laver à part, et ne pas en secouer ni en souffler la poussière.`,
  "children-keep-away": (v) => `Tenir les enfants à l’écart\u202f: ${it(v)}.`,
  "no-food-in-the-room": (v) =>
    `Ne pas manger, boire ni fumer dans la pièce où se trouve ce produit\u202f: ${it(v)}.`,
  "no-food-no-brush-in-mouth": () =>
    "Ni nourriture ni boisson près de la peinture, et ne pas effiler un pinceau dans la bouche.",
  "not-on-skin-or-food": () =>
    "Non destiné aux enfants\u202f; ni sur la peau, ni sur la nourriture ou ce qui la touche. Refermer.",
  "fresh-air": () => "Aérer la pièce pendant qu’on peint et pendant que la peinture sèche.",
  "no-dry-sanding": () => "Ne pas poncer le film à sec\u202f: le poncer mouillé et l’essuyer.",
  "never-sand-dry": () => "Ne jamais poncer le film à sec.",
  "no-spraying-no-heating": () => "Ne jamais pulvériser, ne jamais chauffer.",
  "spray-only-with-captured-exhaust": () =>
    "Ne pulvériser que là où une aspiration capte le brouillard, et avec un appareil respiratoire ajusté.",
  "no-heating-of-oil": () => "Ne pas chauffer l’huile ni la peinture.",
  "wet-wipe-no-sweeping": () =>
    "Essuyer mouillé\u202f: ni balayage à sec ni aspirateur ménager, seulement un aspirateur à filtre de classe H.",
  "wash-hands": () => "Se laver les mains après le travail et avant de manger.",
  "oily-rags": () =>
    "Les chiffons, papiers et filtres imbibés d’huile siccative peuvent prendre feu d’eux-mêmes\u202f: les étaler un par un dehors jusqu’à ce qu’ils durcissent, ou les tremper dans l’eau dans un bidon métallique fermé, vidé chaque jour\u202f; jamais à la poubelle ni en tas.",
  "not-down-the-drain": () => "Ni peinture, ni huile, ni eaux de rinçage à l’égout.",
  "hazardous-waste": () =>
    "Les restes sont des déchets dangereux\u202f: les remettre selon les règles locales.",

  dustiness: ({
    class: of,
    bulkDensityLooseGPerMl: loose,
    bulkDensityTappedGPerMl: tapped,
    particleSizeUm,
  }) =>
    `${DUSTINESS[of]}${bracketed(bulk(loose, "sans tassement"), bulk(tapped, "après tassement"), grain(particleSizeUm))}.`,
  "nuisance-dust": () => "Toute poussière fine est mauvaise pour les poumons.",
  "dust-can-burn": ({ nature }) => NATURES[nature],
  "dust-goes-up-again": () => "Balayer remet la poussière dans l’air.",
  "film-turns-to-dust": () => "Le ponçage réduit le film en poussière.",
  "droplets-are-breathed-in": () => "Le brouillard de pulvérisation est inhalé.",
  "holds-metal": ({ metals }) => `Contient\u202f: ${listed(metals.map(metalWord))}.`,
  "states-hazard": ({ statements }) => `${sentence(effects(statements))}.`,
  "hazard-data-missing": ({ ingredients }) =>
    `Aucune donnée de danger consignée pour ${namesWithin(ingredients)}\u202f; à traiter comme dangereux.`,
  "holds-sensitiser": ({ names }) =>
    `Contient ${namesWithin(names)}, à quoi la peau peut devenir allergique.`,
  "may-hold-quartz": ({ what }) =>
    what === STATED_QUARTZ
      ? "Selon le document de son fournisseur il contient du quartz alvéolaire, qui lèse les poumons et peut causer un cancer."
      : `C’est ${wordOf(QUARTZ, what)}. Sa poussière peut contenir du quartz alvéolaire, qui lèse les poumons et peut causer un cancer, à moins qu’un document du fournisseur ne dise qu’il n’y en a pas.`,
  "quartz-in-the-paint": ({ pigments: of, known }) =>
    known === "stated"
      ? `Il y a du quartz alvéolaire dans ${namesWithin(of)}\u202f: inhalé, il lèse les poumons et peut causer un cancer.`
      : `Il peut y avoir du quartz alvéolaire dans ${namesWithin(of)}\u202f: inhalé, il lèse les poumons et peut causer un cancer.`,
  "hazard-of-its-dust": ({ pigments: named, statements }) =>
    `La poussière ${of(namesWithin(named))} ${effects(statements)}.`,
  "bench-test-with-care": ({ uses }) =>
    `${uses.map((use) => BENCH_CARE[use]).join(" ")} Une pincée suffit\u202f; yeux protégés, et rien à proximité qui brûle ou qui se mange.`,
  "paint-is-no-food": () => "Ne pas avaler la peinture.",
  "drying-oil": () => "Une huile siccative fixe l’oxygène et s’échauffe d’elle-même.",
  "paint-and-oil-foul-water": () => "La peinture et l’huile polluent l’eau.",
};

/** What may hold respirable quartz, with its article. */
const QUARTZ: Readonly<Record<string, string>> = {
  "natural sienna or umber": "une terre de Sienne ou d’ombre naturelle",
  "natural ochre": "une ocre naturelle",
  "natural red earth": "une terre rouge naturelle",
  "green earth": "une terre verte",
  "natural chalk or limestone": "de la craie ou du calcaire naturels",
  kaolin: "du kaolin",
  mica: "du mica",
  gypsum: "du gypse",
  talc: "du talc",
  silica: "de la silice",
};

/** What makes each kind of test hold no harm. */
const BENCH_CARE: Readonly<Record<BenchTestUse, string>> = {
  heat: "À la chaleur\u202f: sous aspiration à la source ou dehors, sur une cuiller métallique tenue à la pince, et jamais avec un pigment de plomb, cadmium, mercure, arsenic, chromate, antimoine ou cuivre.",
  acid: "À l’acide\u202f: une goutte et pas plus, à l’air libre, avec des gants\u202f; jamais sur un sulfure, un cyanure ou un pigment d’arsenic, en quelque quantité que ce soit.",
  lye: "À la soude caustique ou au carbonate de soude\u202f: avec des gants, et loin des yeux.",
  peroxide:
    "À l’eau oxygénée\u202f: à trois pour cent et pas plus forte, avec des gants, jamais dans un récipient fermé.",
  solvent: "Au solvant\u202f: à l’air libre, et aucune flamme dans la pièce.",
};

/** What the hazards of a label do, after a subject. */
function effects(statements: readonly string[]): string {
  return listed(hazardEffects(statements).map((effect) => HAZARD_EFFECTS[effect]));
}

function sentence(words: string): string {
  return words.charAt(0).toLocaleUpperCase("fr") + words.slice(1);
}

interface OfPigments {
  readonly pigments?: readonly string[];
}

function pigments({ pigments: of }: OfPigments): string {
  return of === undefined ? "le pigment" : namesWithin(of);
}

/** The pigments that a caution names, or the paint when it names none. */
function it({ pigments: of }: OfPigments): string {
  return of === undefined ? "la peinture" : namesWithin(of);
}

/** As a reader knows it. */
export function metalWord(metal: string): string {
  return wordOf(METALS, metal);
}

function bulk(density: Quantity | undefined, how: string): string | undefined {
  return density === undefined ? undefined : `${withUnit(significant(density, 2), "g/ml")} ${how}`;
}

function grain(um: Quantity | undefined): string | undefined {
  return um === undefined ? undefined : `grain ${micrometres(um)}`;
}
