/**
 * Hazard classes with their categories, and what each puts on a label.
 *
 * @source clp-1272-2008 : Annex I, label elements of each class
 * @source un-ghs-rev-11 : the categories that only the UN frame has
 * @source clp-new-classes-2023 : endocrine disruption, persistence and mobility: signal word and no pictogram
 */
import { isOneOf } from "../../quantities/members.ts";
import type { HazardFrame } from "./frame.ts";

export const SIGNAL_WORDS = ["Danger", "Warning"] as const;
export type SignalWord = (typeof SIGNAL_WORDS)[number];
export const PICTOGRAM_CODES = [
  "GHS01",
  "GHS02",
  "GHS03",
  "GHS04",
  "GHS05",
  "GHS06",
  "GHS07",
  "GHS08",
  "GHS09",
] as const;
export type PictogramCode = (typeof PICTOGRAM_CODES)[number];

export function isPictogramCode(text: unknown): text is PictogramCode {
  return isOneOf(PICTOGRAM_CODES, text);
}

export interface ClassElements {
  /** Classes of one family exclude each other: the lowest rank stays. */
  readonly family: string;
  readonly rank: number;
  readonly signalWord?: SignalWord;
  readonly pictogram?: PictogramCode;
  /** How grave, 1 (a remote effect) to 8 (death, cancer, an unborn child): weighs precautionary statements. */
  readonly gravity: number;
  /** Set when only one frame knows the category. */
  readonly frame?: HazardFrame;
}

function row(
  family: string,
  rank: number,
  signalWord: SignalWord | undefined,
  pictogram: PictogramCode | undefined,
  gravity: number,
  frame?: HazardFrame,
): ClassElements {
  return {
    family,
    rank,
    gravity,
    ...(signalWord !== undefined && { signalWord }),
    ...(pictogram !== undefined && { pictogram }),
    ...(frame !== undefined && { frame }),
  };
}

const D = "Danger",
  W = "Warning",
  EU = "EU CLP";

export const HAZARD_CLASSES = {
  "Flam. Liq. 1": row("flammable liquid", 1, D, "GHS02", 6),
  "Flam. Liq. 2": row("flammable liquid", 2, D, "GHS02", 6),
  "Flam. Liq. 3": row("flammable liquid", 3, W, "GHS02", 4),
  "Flam. Liq. 4": row("flammable liquid", 4, W, undefined, 2, "UN GHS"),
  "Flam. Sol. 1": row("flammable solid", 1, D, "GHS02", 6),
  "Flam. Sol. 2": row("flammable solid", 2, W, "GHS02", 4),
  "Self-heat. 1": row("self-heating", 1, D, "GHS02", 6),
  "Self-heat. 2": row("self-heating", 2, W, "GHS02", 4),
  "Water-react. 1": row("water-reactive", 1, D, "GHS02", 6),
  "Water-react. 2": row("water-reactive", 2, D, "GHS02", 5),
  "Water-react. 3": row("water-reactive", 3, W, "GHS02", 4),
  "Ox. Sol. 1": row("oxidising solid", 1, D, "GHS03", 6),
  "Ox. Sol. 2": row("oxidising solid", 2, D, "GHS03", 5),
  "Ox. Sol. 3": row("oxidising solid", 3, W, "GHS03", 4),
  "Met. Corr. 1": row("corrosive to metals", 1, W, "GHS05", 1),
  "Acute Tox. 1": row("acute toxicity", 1, D, "GHS06", 8),
  "Acute Tox. 2": row("acute toxicity", 2, D, "GHS06", 8),
  "Acute Tox. 3": row("acute toxicity", 3, D, "GHS06", 6),
  "Acute Tox. 4": row("acute toxicity", 4, W, "GHS07", 3),
  "Acute Tox. 5": row("acute toxicity", 5, W, undefined, 1, "UN GHS"),
  "Asp. Tox. 1": row("aspiration", 1, D, "GHS08", 6),
  "Asp. Tox. 2": row("aspiration", 2, W, "GHS08", 4, "UN GHS"),
  "Skin Corr. 1": row("skin", 1, D, "GHS05", 8),
  "Skin Corr. 1A": row("skin", 1, D, "GHS05", 8),
  "Skin Corr. 1B": row("skin", 1, D, "GHS05", 8),
  "Skin Corr. 1C": row("skin", 1, D, "GHS05", 8),
  "Skin Irrit. 2": row("skin", 2, W, "GHS07", 3),
  "Skin Irrit. 3": row("skin", 3, W, undefined, 1, "UN GHS"),
  "Skin Sens. 1": row("skin sensitisation", 1, W, "GHS07", 4),
  "Skin Sens. 1A": row("skin sensitisation", 1, W, "GHS07", 4),
  "Skin Sens. 1B": row("skin sensitisation", 1, W, "GHS07", 4),
  "Eye Dam. 1": row("eye", 1, D, "GHS05", 6),
  "Eye Irrit. 2": row("eye", 2, W, "GHS07", 3),
  "Eye Irrit. 2B": row("eye", 3, W, undefined, 2, "UN GHS"),
  "Resp. Sens. 1": row("respiratory sensitisation", 1, D, "GHS08", 8),
  "Resp. Sens. 1A": row("respiratory sensitisation", 1, D, "GHS08", 8),
  "Resp. Sens. 1B": row("respiratory sensitisation", 1, D, "GHS08", 8),
  "STOT SE 1": row("organs, single exposure", 1, D, "GHS08", 8),
  "STOT SE 2": row("organs, single exposure", 2, W, "GHS08", 4),
  "STOT SE 3": row("airways and drowsiness", 3, W, "GHS07", 3),
  "Muta. 1": row("mutagenicity", 1, D, "GHS08", 8),
  "Muta. 1A": row("mutagenicity", 1, D, "GHS08", 8),
  "Muta. 1B": row("mutagenicity", 1, D, "GHS08", 8),
  "Muta. 2": row("mutagenicity", 2, W, "GHS08", 4),
  "Carc. 1": row("carcinogenicity", 1, D, "GHS08", 8),
  "Carc. 1A": row("carcinogenicity", 1, D, "GHS08", 8),
  "Carc. 1B": row("carcinogenicity", 1, D, "GHS08", 8),
  "Carc. 2": row("carcinogenicity", 2, W, "GHS08", 4),
  "Repr. 1": row("reproduction", 1, D, "GHS08", 8),
  "Repr. 1A": row("reproduction", 1, D, "GHS08", 8),
  "Repr. 1B": row("reproduction", 1, D, "GHS08", 8),
  "Repr. 2": row("reproduction", 2, W, "GHS08", 4),
  "Lact.": row("lactation", 1, undefined, undefined, 4),
  "STOT RE 1": row("organs, repeated exposure", 1, D, "GHS08", 8),
  "STOT RE 2": row("organs, repeated exposure", 2, W, "GHS08", 4),
  "Aquatic Acute 1": row("aquatic, acute", 1, W, "GHS09", 3),
  "Aquatic Acute 2": row("aquatic, acute", 2, undefined, undefined, 1, "UN GHS"),
  "Aquatic Acute 3": row("aquatic, acute", 3, undefined, undefined, 1, "UN GHS"),
  "Aquatic Chronic 1": row("aquatic, chronic", 1, W, "GHS09", 3),
  "Aquatic Chronic 2": row("aquatic, chronic", 2, undefined, "GHS09", 2),
  "Aquatic Chronic 3": row("aquatic, chronic", 3, undefined, undefined, 1),
  "Aquatic Chronic 4": row("aquatic, chronic", 4, undefined, undefined, 1),
  "Aerosol 1": row("aerosol", 1, D, "GHS02", 6),
  "Aerosol 2": row("aerosol", 2, W, "GHS02", 4),
  "Aerosol 3": row("aerosol", 3, W, undefined, 2),
  "Press. Gas": row("gas under pressure", 1, W, "GHS04", 4),
  "Ozone 1": row("ozone layer", 1, W, "GHS07", 2),
  "ED HH 1": row("endocrine disruption, health", 1, D, undefined, 8, EU),
  "ED HH 2": row("endocrine disruption, health", 2, W, undefined, 4, EU),
  "ED ENV 1": row("endocrine disruption, environment", 1, D, undefined, 3, EU),
  "ED ENV 2": row("endocrine disruption, environment", 2, W, undefined, 2, EU),
  PBT: row("persistence, bioaccumulation and toxicity", 1, D, undefined, 3, EU),
  vPvB: row("great persistence and bioaccumulation", 1, D, undefined, 3, EU),
  PMT: row("persistence, mobility and toxicity", 1, D, undefined, 3, EU),
  vPvM: row("great persistence and mobility", 1, D, undefined, 3, EU),
} as const satisfies Record<string, ClassElements>;

export type HazardClass = keyof typeof HAZARD_CLASSES;
export const HAZARD_CLASS_NAMES = Object.keys(HAZARD_CLASSES) as readonly HazardClass[];

export function isHazardClass(text: unknown): text is HazardClass {
  return typeof text === "string" && Object.hasOwn(HAZARD_CLASSES, text);
}

/** What a class puts on a label. */
export function classElements(hazardClass: HazardClass): ClassElements {
  return HAZARD_CLASSES[hazardClass];
}

/** Whether two classes belong to one family and are equally severe: "Repr. 1" and "Repr. 1B". */
export function sameSeverity(one: HazardClass, other: HazardClass): boolean {
  return (
    HAZARD_CLASSES[one].family === HAZARD_CLASSES[other].family &&
    HAZARD_CLASSES[one].rank === HAZARD_CLASSES[other].rank
  );
}
