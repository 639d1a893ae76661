/**
 * Words that a sheet never prints on its own authority, per language: claims that
 * only a dated review may make. Each row is a pattern within word boundaries and
 * the uses in which the same letters claim nothing.
 *
 * @source practice-hazard
 */
import type { StatementLanguage } from "../texts/statement-texts.ts";

export const CLAIM_KINDS = [
  "conformity",
  "non-toxic",
  "safe",
  "harmless",
  "eco",
  "archival",
  "seal",
] as const;
export type ClaimKind = (typeof CLAIM_KINDS)[number];

export interface ForbiddenWord {
  readonly claim: ClaimKind;
  /** Source of a regular expression, read without regard to case, between word boundaries. A space or hyphen in a word: `~`. */
  readonly pattern: string;
  /** Whole phrases around the word that are no claim; same notation. */
  readonly allowed?: readonly string[];
}

/** The standards of art materials and their toxicological review, however written. */
const STANDARD = "(?:astm~)?d~?4(?:236|302)";

/** A verb of conformity and one of the standards within one sentence, in either order. */
function conformity(verbs: string): ForbiddenWord {
  const between = String.raw`(?![\p{L}\p{N}])[^.!?;]{0,60}?(?<![\p{L}\p{N}])`;
  return {
    claim: "conformity",
    pattern: `(?:${verbs})${between}${STANDARD}|${STANDARD}${between}(?:${verbs})`,
  };
}

export const FORBIDDEN_WORDS: Readonly<Record<StatementLanguage, readonly ForbiddenWord[]>> = {
  en: [
    conformity(
      "conforms?|conforming|conformity|conformance|meets?|meeting|met|compl(?:y|ies|ied|ying|iant|iance)|satisf(?:y|ies|ied|ying)|fulfil(?:s|led|ling)?|(?:in )?accordance|certified|approved|passes|passed",
    ),
    {
      claim: "non-toxic",
      pattern:
        "non~?toxic|not toxic|not hazardous|no hazards? (?:is )?classified|not classified as hazardous|free (?:of|from) toxins?|toxin~free|non~?hazardous|non~?poisonous",
    },
    {
      claim: "safe",
      pattern: "safe|safer|safest|child~safe|food~safe",
      allowed: [
        "not safe",
        "never safe",
        "no safe",
        "if safe to do so",
        "is (?:it|this|that|any of it) safe",
        "safe (?:distance|place|disposal|storage|handling|limit|working|use of)",
        "fail~safe",
        "safe from (?:children|frost|heat|light|damp)",
      ],
    },
    {
      claim: "harmless",
      pattern: "harmless(?:ly)?|innocuous|no health hazards?|risk~free|hazard~free",
      allowed: ["not harmless", "never harmless"],
    },
    {
      claim: "eco",
      pattern: String.raw`eco~(?:\p{L}+)|eco(?:friendly|logical(?:ly)?)|environmentally~(?:friendly|sound)|environment~friendly|planet~friendly`,
      allowed: ["ecological (?:damage|harm|hazard)"],
    },
    {
      claim: "archival",
      pattern: "archival(?:ly)?|archive~quality|museum~quality",
      allowed: [
        "not archival",
        "archival (?:research|sources?|records?|documents?|box|boxes|store)",
      ],
    },
    {
      claim: "seal",
      pattern:
        "seals? of approval|(?:approval|approved product|cautionary|certification|quality|safety|health) (?:seal|label mark)s?|certification marks?",
    },
  ],
  fr: [
    conformity(
      "conformes?(?: (?:à|aux?))?|conformité|conformément|répond(?:ent)?|répondant|satisfait|satisfont|satisfaisant|respecte(?:nt)?|certifiée?s?|homologuée?s?",
    ),
    {
      claim: "non-toxic",
      pattern:
        "non~toxiques?|atoxiques?|pas toxiques?|sans toxicité|ne sont pas toxiques|(?:non~|pas )dangereu(?:x|ses?)|non~classée?s?(?: comme)? dangereu(?:x|ses?)|aucun danger(?: n['’]est)? classé",
    },
    {
      claim: "safe",
      pattern: "sûre?s?|en toute sécurité|sans (?:danger|risque)s?",
      allowed: [
        "bien sûr",
        "à coup sûr",
        "pas sûre?s?",
        "(?:lieu|endroit) sûr",
        "(?:pas|jamais) sans (?:danger|risque)s?",
        "sûr(?:e|s)? (?:que|de)",
      ],
    },
    {
      claim: "harmless",
      pattern: "inoffensi(?:f|fs|ve|ves)|anodine?s?",
      allowed: ["pas inoffensi(?:f|fs|ve|ves)"],
    },
    {
      claim: "eco",
      pattern: String.raw`[ée]co~\p{L}+|[ée]coresponsables?|[ée]cologiques?|respectueu(?:x|ses?) de l['’]environnement`,
      allowed: ["dommages? écologiques?", "risques? écologiques?"],
    },
    {
      claim: "archival",
      pattern: "qualité (?:archives?|musée|d['’]archivage)|d['’]archivage|archivables?",
      allowed: ["boîtes? d['’]archivage", "documents? d['’]archivage"],
    },
    {
      claim: "seal",
      pattern:
        "(?:sceau|label|marque) (?:de qualité|d['’]approbation|de conformité|de certification|de sécurité)",
    },
  ],
  de: [
    conformity(
      "entspr(?:icht|echen|echend)|konform|konformität|erfüll(?:t|en|end)|gemäß|genügt|zertifiziert|zugelassen|geprüft nach",
    ),
    {
      claim: "non-toxic",
      pattern:
        "ungiftig(?:e[mnrs]?)?|nicht~?giftig(?:e[mnrs]?)?|untoxisch(?:e[mnrs]?)?|atoxisch(?:e[mnrs]?)?|nicht~?toxisch(?:e[mnrs]?)?|giftfrei(?:e[mnrs]?)?|nicht als gefährlich eingestuft|keine gefahr(?:en)? eingestuft|schadstofffrei(?:e[mnrs]?)?|nicht (?:gesundheits)?gefährlich(?:e[mnrs]?)?",
    },
    {
      claim: "safe",
      pattern: String.raw`sicher(?:e[mnrs]?|er|ste[mnrs]?)?|kindersicher(?:e[mnrs]?)?|gefahrlos(?:e[mnrs]?)?`,
      allowed: [
        "nicht (?:ganz |völlig )?sicher(?:e[mnrs]?)?",
        "sicherer? (?:abstand|ort|entsorgung)",
        "sicheren? (?:abstand|ort|entsorgung)",
        "sicher (?:verschlossen|aufbewahren|entsorgen)",
      ],
    },
    {
      claim: "harmless",
      pattern:
        "harmlos(?:e[mnrs]?)?|unbedenklich(?:e[mnrs]?)?|unschädlich(?:e[mnrs]?)?|ungefährlich(?:e[mnrs]?)?",
      allowed: ["nicht (?:harmlos|unbedenklich|unschädlich|ungefährlich)(?:e[mnrs]?)?"],
    },
    {
      claim: "eco",
      pattern: String.raw`öko~?\p{L}+|umwelt~?(?:freundlich|schonend|verträglich)(?:e[mnrs]?)?`,
      allowed: ["ökologische[rn]? (?:schäden|schaden)", "ökonom\\p{L}*"],
    },
    {
      claim: "archival",
      pattern:
        "archiv~?(?:fest|beständig|tauglich|sicher)(?:e[mnrs]?)?|archiv~?qualität|museums~?qualität",
    },
    { claim: "seal", pattern: "(?:prüf|güte|qualitäts|zulassungs|umwelt)~?siegel" },
  ],
  es: [
    conformity(
      "conformes?(?: (?:a|con))?|conformidad|cumple[n]?(?: con)?|cumpliendo|satisface[n]?|se ajusta[n]?|certificad[oa]s?|homologad[oa]s?|aprobad[oa]s?",
    ),
    {
      claim: "non-toxic",
      pattern:
        "no t[óo]xic[oa]s?|no es t[óo]xic[oa]|no son t[óo]xic[oa]s|at[óo]xic[oa]s?|sin toxicidad|no (?:es |son )?peligros[oa]s?|no clasificad[oa]s? como peligros[oa]s?|ningún peligro clasificado",
    },
    {
      claim: "safe",
      pattern: "segur[oa]s?|sin (?:peligro|riesgo)s?",
      allowed: [
        "no (?:es |son )?segur[oa]s?",
        "(?:lugar|sitio|distancia) segur[oa]",
        "segur[oa]s? (?:de|que)",
        "a buen seguro",
        "de seguro",
        "no (?:está |están )?sin (?:peligro|riesgo)s?",
      ],
    },
    {
      claim: "harmless",
      pattern: "inofensiv[oa]s?|inocu[oa]s?",
      allowed: ["no (?:es |son )?(?:inofensiv|inocu)[oa]s?"],
    },
    {
      claim: "eco",
      pattern: String.raw`eco~\p{L}+|ecol[óo]gic[oa]s?|ecoamigables?|respetuos[oa]s? con el medio ambiente`,
      allowed: ["daños? ecol[óo]gicos?"],
    },
    {
      claim: "archival",
      pattern: "(?:calidad|grado) (?:de )?(?:archivo|museo)|de archivo",
      allowed: ["documentos? de archivo", "cajas? de archivo"],
    },
    {
      claim: "seal",
      pattern: "(?:sello|marca) de (?:calidad|aprobación|conformidad|certificación|seguridad)",
    },
  ],
};
