/**
 * Precautionary statements that the range needs: the hazards each one answers,
 * how strongly it is recommended for them, and its edition.
 *
 * @source clp-1272-2008-memory : Annex I label tables and Annex IV
 * @source echa-label-guidance-memory : how strongly each is recommended
 * @source un-ghs-rev-11 : renumbered statements
 */
import type { HazardFrame, PaintForm } from "../classify/frame.ts";

/** 3 highly recommended, 2 recommended, 1 optional, 0 assigned to the class but for disposal alone. */
export type Recommendation = 0 | 1 | 2 | 3;

export interface Precaution {
  /** Class families, or single classes, that it answers; "any" is for general statements, which only fill what is left. */
  readonly answers: Readonly<Record<string, Recommendation>>;
  /** Set when only one kind of buyer meets it on a label. */
  readonly buyer?: "public" | "trade";
  /** Set when only some forms make sense of it: nobody breathes in a paste. */
  readonly forms?: readonly PaintForm[];
  /** In the frame's current edition this code stands instead. */
  readonly replacedIn?: Readonly<Partial<Record<HazardFrame, string>>>;
  /** Set when only one frame has the code. */
  readonly frame?: HazardFrame;
}

const CMR = { carcinogenicity: 3, mutagenicity: 3, reproduction: 3 } as const;
const ACUTE_SWALLOWED = { "acute toxicity oral": 2 } as const;
const REV_10 = "UN GHS" as const;

/** In the order of a label: general, prevention, response, storage, disposal. */
export const PRECAUTIONS = {
  P101: { answers: { any: 1 }, buyer: "public" },
  P102: { answers: { any: 3 }, buyer: "public" },
  P103: { answers: { any: 1 }, buyer: "public" },
  P201: { answers: { ...CMR, lactation: 2 }, replacedIn: { [REV_10]: "P203" } },
  P202: {
    answers: { carcinogenicity: 2, mutagenicity: 2, reproduction: 2 },
    buyer: "trade",
    replacedIn: { [REV_10]: "P203" },
  },
  P203: { answers: { ...CMR, lactation: 2 }, frame: REV_10 },
  P210: {
    answers: {
      "flammable liquid": 3,
      "flammable solid": 3,
      "self-heating": 2,
      "oxidising solid": 3,
    },
  },
  P220: { answers: { "oxidising solid": 3 } },
  P232: { answers: { "water-reactive": 3 } },
  P233: { answers: { "flammable liquid": 1 } },
  P260: {
    answers: {
      "organs, repeated exposure": 3,
      "organs, single exposure": 3,
      "Acute Tox. 1 inhalation": 3,
      "Acute Tox. 2 inhalation": 3,
    },
    forms: ["powder", "liquid"],
  },
  P261: {
    answers: {
      "respiratory sensitisation": 3,
      "skin sensitisation": 2,
      "airways and drowsiness": 3,
      "Acute Tox. 3 inhalation": 3,
      "Acute Tox. 4 inhalation": 3,
    },
    forms: ["powder", "liquid"],
  },
  P263: { answers: { lactation: 3 } },
  P264: { answers: { "acute toxicity oral": 1, "acute toxicity dermal": 1, skin: 1, eye: 1 } },
  P270: { answers: { ...ACUTE_SWALLOWED, "STOT RE 1": 1, "organs, single exposure": 1 } },
  P271: { answers: { "acute toxicity inhalation": 2, "airways and drowsiness": 2 } },
  P272: { answers: { "skin sensitisation": 1 }, buyer: "trade" },
  P273: { answers: { "aquatic, acute": 3, "aquatic, chronic": 3 } },
  P280: {
    answers: {
      carcinogenicity: 2,
      mutagenicity: 2,
      reproduction: 2,
      skin: 2,
      eye: 2,
      "skin sensitisation": 3,
      "acute toxicity dermal": 2,
      "Skin Corr. 1": 3,
      "Eye Dam. 1": 3,
    },
  },
  P284: {
    answers: {
      "respiratory sensitisation": 2,
      "Acute Tox. 1 inhalation": 2,
      "Acute Tox. 2 inhalation": 2,
    },
  },
  "P301+P310": {
    answers: {
      aspiration: 3,
      "Acute Tox. 1 oral": 3,
      "Acute Tox. 2 oral": 3,
      "Acute Tox. 3 oral": 3,
    },
    replacedIn: { [REV_10]: "P301+P316" },
  },
  "P301+P312": { answers: { "Acute Tox. 4 oral": 2 }, replacedIn: { [REV_10]: "P301+P317" } },
  "P301+P316": {
    answers: {
      aspiration: 3,
      "Acute Tox. 1 oral": 3,
      "Acute Tox. 2 oral": 3,
      "Acute Tox. 3 oral": 3,
    },
    frame: REV_10,
  },
  "P301+P317": { answers: { "Acute Tox. 4 oral": 2, "Acute Tox. 5 oral": 1 }, frame: REV_10 },
  "P301+P330+P331": { answers: { "Skin Corr. 1": 3 } },
  "P302+P352": {
    answers: { "acute toxicity dermal": 3, "Skin Irrit. 2": 2, "skin sensitisation": 2 },
  },
  "P303+P361+P353": {
    answers: { "Skin Corr. 1": 3, "Flam. Liq. 1": 1, "Flam. Liq. 2": 1, "Flam. Liq. 3": 1 },
  },
  "P304+P340": {
    answers: {
      "acute toxicity inhalation": 2,
      "respiratory sensitisation": 2,
      "airways and drowsiness": 1,
    },
  },
  "P305+P351+P338": { answers: { eye: 3, "Skin Corr. 1": 3 } },
  "P308+P313": { answers: CMR, replacedIn: { [REV_10]: "P318" } },
  P318: { answers: CMR, frame: REV_10 },
  P310: {
    answers: {
      "Skin Corr. 1": 3,
      "Eye Dam. 1": 3,
      "Acute Tox. 1 inhalation": 3,
      "Acute Tox. 2 inhalation": 3,
    },
    replacedIn: { [REV_10]: "P316" },
  },
  P316: {
    answers: {
      "Skin Corr. 1": 3,
      "Eye Dam. 1": 3,
      "Acute Tox. 1 inhalation": 3,
      "Acute Tox. 2 inhalation": 3,
    },
    frame: REV_10,
  },
  P312: {
    answers: {
      "acute toxicity inhalation": 1,
      "acute toxicity dermal": 1,
      "airways and drowsiness": 1,
    },
    replacedIn: { [REV_10]: "P317" },
  },
  P317: {
    answers: {
      "acute toxicity inhalation": 1,
      "acute toxicity dermal": 1,
      "airways and drowsiness": 1,
      "Eye Dam. 1": 1,
    },
    frame: REV_10,
  },
  P314: { answers: { "organs, repeated exposure": 2 }, replacedIn: { [REV_10]: "P319" } },
  P319: { answers: { "organs, repeated exposure": 2 }, frame: REV_10 },
  P331: { answers: { aspiration: 3 } },
  "P332+P313": { answers: { "Skin Irrit. 2": 1 }, replacedIn: { [REV_10]: "P332+P317" } },
  "P332+P317": { answers: { "Skin Irrit. 2": 1 }, frame: REV_10 },
  "P333+P313": { answers: { "skin sensitisation": 3 }, replacedIn: { [REV_10]: "P333+P317" } },
  "P333+P317": { answers: { "skin sensitisation": 3 }, frame: REV_10 },
  "P337+P313": { answers: { "Eye Irrit. 2": 2 }, replacedIn: { [REV_10]: "P337+P317" } },
  "P337+P317": { answers: { "Eye Irrit. 2": 2 }, frame: REV_10 },
  "P342+P311": {
    answers: { "respiratory sensitisation": 3 },
    replacedIn: { [REV_10]: "P342+P316" },
  },
  "P342+P316": { answers: { "respiratory sensitisation": 3 }, frame: REV_10 },
  "P362+P364": { answers: { "Skin Irrit. 2": 1, "skin sensitisation": 1 } },
  P363: { answers: { "Skin Corr. 1": 1 } },
  P391: { answers: { "aquatic, acute": 2, "Aquatic Chronic 1": 2, "Aquatic Chronic 2": 2 } },
  "P403+P233": {
    answers: {
      "airways and drowsiness": 1,
      "Acute Tox. 1 inhalation": 1,
      "Acute Tox. 2 inhalation": 1,
      "Acute Tox. 3 inhalation": 1,
    },
  },
  "P403+P235": { answers: { "flammable liquid": 2 } },
  P405: {
    answers: {
      carcinogenicity: 1,
      mutagenicity: 1,
      reproduction: 1,
      aspiration: 2,
      "Skin Corr. 1": 1,
      "Acute Tox. 1": 2,
      "Acute Tox. 2": 2,
      "Acute Tox. 3": 2,
    },
    buyer: "public",
  },
  P501: {
    answers: {
      "aquatic, acute": 2,
      "aquatic, chronic": 2,
      carcinogenicity: 0,
      mutagenicity: 0,
      reproduction: 0,
      "acute toxicity": 0,
      aspiration: 0,
      "organs, repeated exposure": 0,
      "organs, single exposure": 0,
      "Skin Corr. 1": 0,
      "flammable liquid": 0,
      "skin sensitisation": 0,
    },
  },
} as const satisfies Record<string, Precaution>;

export type PrecautionaryCode = keyof typeof PRECAUTIONS;

/** Codes that a maker's label may state and that are never chosen here; each has its English text. */
export const STATED_PRECAUTIONS = [
  "P211",
  "P231",
  "P235",
  "P240",
  "P241",
  "P242",
  "P243",
  "P251",
  "P262",
  "P301+P330",
  "P304+P312",
  "P308+P311",
  "P311",
  "P313",
  "P315",
  "P330",
  "P361+P364",
  "P370+P378",
  "P402",
  "P403",
  "P404",
  "P410+P412",
  "P502",
] as const;
export type StatedPrecautionaryCode = PrecautionaryCode | (typeof STATED_PRECAUTIONS)[number];

/** Every precautionary code with a text here, in the order of a label. */
export const PRECAUTIONARY_CODES = (
  [...Object.keys(PRECAUTIONS), ...STATED_PRECAUTIONS] as StatedPrecautionaryCode[]
).sort() as readonly StatedPrecautionaryCode[];

export function isPrecautionaryCode(text: unknown): text is StatedPrecautionaryCode {
  return (PRECAUTIONARY_CODES as readonly unknown[]).includes(text);
}

/** The codes that can be chosen, in the order of a label. */
export const CHOOSABLE_PRECAUTIONS = (
  Object.keys(PRECAUTIONS) as PrecautionaryCode[]
).sort() as readonly PrecautionaryCode[];

export function precaution(code: PrecautionaryCode): Precaution {
  return PRECAUTIONS[code];
}

/** Code that stands in a frame's edition instead of one that is older than it; undefined for a current code. */
export function replacement(code: StatedPrecautionaryCode, frame: HazardFrame): string | undefined {
  return code in PRECAUTIONS
    ? precaution(code as PrecautionaryCode).replacedIn?.[frame]
    : undefined;
}
