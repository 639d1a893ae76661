import { practised, read, recalled, type Bibliography } from "./source.ts";

/** Texts that label elements, markets and studio cautions rest on. */
export const HAZARD_SOURCES = {
  "clp-1272-2008": read(
    "Regulation (EC) No 1272/2008 on classification, labelling and packaging of substances and mixtures (CLP), consolidated.",
    "The limits of Annex I were held against the text consolidated on 1 July 2026 (02008R1272-20260701). The official text is the Official Journal's.",
    "CLP",
  ),
  "clp-1272-2008-memory": recalled(
    "Regulation (EC) No 1272/2008 (CLP), Annex I: limits and rules recalled without the text at hand.",
    "Precedence of pictograms and statements, flammable liquids, the ozone layer.",
  ),
  "clp-small-packages": read(
    "Regulation (EC) No 1272/2008 (CLP), Article 29(1) and (2), consolidated on 1 September 2025; Annex I, 1.5.1 (fold-out label, tie-on tag, outer packaging) and 1.5.2.1 (contents of at most 125 ml).",
    "Read in public copies, 1.5.1 and the whole list of 1.5.2.1.1 in Czech, the most of both in German. Of 1.5.2.1.2 the two first classes, and those of 1.5.2.1.3, were not seen: nothing of theirs is left out. The official text is the Official Journal's.",
    "CLP, Article 29 and Annex I, 1.5",
  ),
  "clp-annex-2-memory": recalled(
    "Regulation (EC) No 1272/2008 (CLP), Annex II: supplemental statements EUH, recalled without the text at hand.",
    "EUH201 and EUH201A above 0.15 % of lead as metal, EUH208 at the elicitation limit; that EUH210 has trace conditions was read.",
  ),
  "clp-packaging-belgium": read(
    "Federal Public Service Health, Food Chain Safety and Environment, Belgium. Packaging your products: the list after Annex II, part 3, of Regulation (EC) No 1272/2008 (CLP).",
    "Which classes call for a child-resistant fastening and which for a tactile warning of danger; the annex itself was not at hand.",
  ),
  "clp-statements-2025": read(
    "Regulation (EC) No 1272/2008 (CLP), Annexes II to IV: hazard, supplemental and precautionary statements in the languages of the Union, consolidated on 1 September 2025; extraction under CC BY 4.0, (c) European Union.",
    "Read in the extraction that lib/hazard/texts/clp-statements.csv holds; the official text is the Official Journal's.",
    "CLP, Annexes II to IV",
  ),
  "clp-annex-4-2026": read(
    "Regulation (EC) No 1272/2008 (CLP), Annex I (tables of label elements) and Annex IV, Part 1, in the languages of the Union, consolidated on 1 July 2026 (02008R1272-20260701).",
    "Read in public extractions. Of the acts that amended Annex IV the last is Regulation (EU) 2019/521: it changed Part 1 alone, so where the two parts differ its text is in force, and P201, P202 and P308+P313 stand.",
    "CLP, Annexes I and IV",
  ),
  "clp-annex-1-languages-memory": recalled(
    "Regulation (EC) No 1272/2008 (CLP), Annex I, 3.1.3.6.2.2, in French, German and Spanish, without the text at hand.",
    "Translated in this project; to be replaced by the official sentence.",
  ),
  "label-lines-own": practised(
    "Lines of this project for a label: what it contains, and what to leave.",
    "English first, translated in this project; to be reviewed by somebody who speaks the language.",
  ),
  "substance-names-memory": recalled(
    "Names of substances in French, German and Spanish, recalled.",
    "The names of the EC inventory and of CLP Annex VI come first; to be reviewed before they go on a label.",
  ),
  "harmonized-system-32": read(
    "World Customs Organization, Harmonized System, headings 3208, 3209 (paints and varnishes based on synthetic polymers) and 3213 (artists', students' or signboard painters' colours, in tubes, jars and similar packings).",
    "Headings read in national tariffs that repeat them.",
    "Harmonized System, chapter 32",
  ),
  "clp-new-classes-2023": read(
    "Commission Delegated Regulation (EU) 2023/707 of 19 December 2022: endocrine disruption, PBT, vPvB, PMT and vPvM. OJ L 93, 31.3.2023, p. 7.",
    "New mixtures since 1 May 2026, all from 1 May 2028. Read: classes, statements and dates; that they bear a signal word and no pictogram is from memory.",
    "Regulation (EU) 2023/707",
  ),
  "colour-index-memory": recalled(
    "Colour Index generic names and CAS numbers with what they stand for, recalled.",
    "Tells which metal a pigment holds; the supplier's paper decides.",
    "Colour Index and CAS numbers",
  ),
  "clp-annex-4-memory": recalled(
    "Regulation (EC) No 1272/2008 (CLP), Annexes III and IV: hazard and precautionary statements recalled without the text at hand.",
    "The United Nations' own statements; to be reviewed before they are printed on a label.",
  ),
  "clp-annex-6-memory": recalled(
    "Regulation (EC) No 1272/2008 (CLP), Annex VI: harmonised classifications recalled without the text at hand.",
    "Manganese dioxide, zinc oxide, 2-ethylhexanoic acid and its salts (limits applied to the sum, in force since 1 February 2025).",
  ),
  "clp-article-9": recalled(
    "Regulation (EC) No 1272/2008 (CLP), Article 9(5): the form in which the substance or mixture is placed on the market and used.",
    "Why inhalation of dust does not classify a paste.",
    "CLP, Article 9",
  ),
  "clp-article-28": read(
    "Regulation (EC) No 1272/2008 (CLP), Article 28: not more than six precautionary statements unless necessary to reflect the nature and the severity of the hazards; what is clearly redundant is omitted; one on disposal for the public.",
    "Read in a public copy. The official text is the Official Journal's.",
    "CLP, Article 28",
  ),
  "clp-article-45": recalled(
    "Regulation (EC) No 1272/2008 (CLP), Article 45 and Annex VIII: notice to poison centres and the unique formula identifier.",
    undefined,
    "CLP, Article 45",
  ),
  "clp-article-48": recalled(
    "Regulation (EC) No 1272/2008 (CLP), Article 48: offers that the public can buy from unseen name the hazards.",
    "The wording is being revised.",
    "CLP, Article 48",
  ),
  "un-ghs-rev-11": recalled(
    "United Nations (2025). Globally Harmonized System of Classification and Labelling of Chemicals (GHS), eleventh revised edition. ST/SG/AC.10/30/Rev.11.",
    "That precautionary statements were renumbered in Rev. 10 was read; which replaces which is from memory.",
    "UN GHS Rev. 11",
  ),
  "unece-acute-2008": read(
    "UNECE (2008). Guidance on acute toxicity of mixtures, worked examples. ST/SG/AC.10/C.4/2008/23, Annex 2.",
    "Four worked examples, recomputed.",
    "UNECE 2008",
  ),
  "echa-label-guidance-memory": recalled(
    "European Chemicals Agency. Guidance on Labelling and Packaging, recalled without the text at hand.",
    "Choice of precautionary statements: highly recommended, recommended, optional.",
  ),
  "reach-annex-17": read(
    "Regulation (EC) No 1907/2006 (REACH), Annex XVII, entries 16 (lead carbonates) and 17 (lead sulphates).",
    "Not to be placed on the market or used as paint; Member States may permit the restoration of works of art and historic buildings.",
    "REACH, Annex XVII",
  ),
  "reach-annex-17-cadmium": read(
    "Regulation (EC) No 1907/2006 (REACH), Annex XVII, entry 23 (cadmium), paragraph 2, as amended by Regulation (EU) 2016/217.",
    "Paints of the tariff codes 3208 and 3209, below 0.01 % of cadmium.",
    "REACH, Annex XVII, 23",
  ),
  "reach-candidate-list": read(
    "European Chemicals Agency. Candidate list of substances of very high concern (REACH, Article 59), export of 9 October 2026.",
    "Read in a public copy. Basic lead carbonate, lead monoxide, lead tetroxide and lead antimonate since 19 December 2012; lead chromate and its pigments since 13 January 2010.",
    "REACH candidate list",
  ),
  "directive-2024-869": read(
    "Directive (EU) 2024/869 of 13 March 2024 amending Directives 2004/37/EC and 98/24/EC: limit values for lead and its inorganic compounds. OJ L, 2024/869, 19.3.2024.",
    "Air 0.03 mg/m3 over eight hours; blood 30 ug/100 ml until 31 December 2028, 15 from then on. Read in public summaries.",
    "Directive (EU) 2024/869",
  ),
  "si-2008-2852": read(
    "The REACH Enforcement Regulations 2008 (SI 2008/2852), Schedule 5: marketing and use of leaded paints (Great Britain).",
    "Declaration, notification and three weeks were read in the Schedule; the year 1992 and the grades of listed buildings on the public page of England's heritage body.",
    "SI 2008/2852, Schedule 5",
  ),
  "reach-annex-17-cmr": read(
    "Regulation (EC) No 1907/2006 (REACH), Annex XVII, entries 28 to 30 (carcinogens, mutagens, toxicants for reproduction).",
    "Not for the general public above the limit. That paragraph 2(d) exempts artists' paints is from memory.",
    "REACH, Annex XVII, 28-30",
  ),
  "reach-annex-14-memory": recalled(
    "Regulation (EC) No 1907/2006 (REACH), Annex XIV: lead chromate, lead sulfochromate yellow, lead chromate molybdate sulfate red.",
    "Sunset dates 21 May 2015 (lead chromate pigments) and 22 January 2019 (strontium and zinc potassium chromates). Read elsewhere: uses of lead sulfochromate yellow were authorised until 21 May 2022 (OJ C 337, 14.9.2016, p. 3).",
  ),
  "uk-reach-annex-17-memory": recalled(
    "UK REACH (retained Regulation (EC) No 1907/2006), Annex 17, entries 16, 17 and 28 to 30.",
    "Retained from EU law at the end of 2020; hold it against the current text before a sale.",
    "UK REACH, Annex 17",
  ),
  "uk-reach-annex-14-memory": recalled(
    "UK REACH (retained Regulation (EC) No 1907/2006), Annex 14: list of substances subject to authorisation.",
    "Retained from EU law at the end of 2020; hold it against the current text before a sale.",
  ),
  "gb-mcl-memory": recalled(
    "GB mandatory classification and labelling list (Health and Safety Executive).",
    "Titanium dioxide taken off on 26 June 2024.",
    "GB list of classifications",
  ),
  "cjeu-titanium-dioxide": read(
    "General Court of the European Union, 23 November 2022 (T-279/20, T-283/20, T-288/20), and Court of Justice, 1 August 2025 (C-71/23 P, C-82/23 P): titanium dioxide.",
    "The entry Carc. 2, H351 (inhalation) was annulled and the appeals were dismissed; the numbers of the first cases are from memory.",
    "EU courts on titanium dioxide",
  ),
  "16-cfr-1303-memory": recalled(
    "16 CFR 1303. Ban of lead-containing paint and certain consumer products bearing lead-containing paint (US).",
    "Above 0.009 % of lead in the dry film; artists' paints exempt, labelling still due.",
  ),
  "16-cfr-1500-memory": recalled(
    "16 CFR 1500.14(b)(8). Labeling of art materials presenting chronic hazards (US).",
    "Calls for a toxicologist's review of every art material.",
  ),
  "proposition-65-memory": recalled(
    "California Health and Safety Code 25249.5 and following (Proposition 65), list of chemicals.",
    "Lists lead, cadmium, hexavalent chromium, airborne carbon black and airborne titanium dioxide.",
    "Proposition 65",
  ),
  "reach-dossier-manganese-dioxide": read(
    "REACH registration dossier of manganese dioxide, 1313-13-9.",
    "Oral LD50 over 2000 mg/kg; STOT RE 2 proposed, by inhaled dust.",
    "REACH dossier of manganese dioxide",
  ),
  "29-cfr-1926-252": read(
    "29 CFR 1926.252(e). Disposal of waste materials: covered containers for oily rags (US).",
  ),
  "iupac-atomic-weights": recalled(
    "IUPAC Commission on Isotopic Abundances and Atomic Weights. Standard atomic weights, abridged.",
    "For the share of metal in a compound of known formula.",
    "IUPAC atomic weights",
  ),
  "haz-map-ultramarine": read(
    "Haz-Map, Information on Hazardous Chemicals and Occupational Diseases. Ultramarine blue.",
    "After Ullmann's Encyclopedia: hydrogen sulphide after contact with acid. How strong the acid is, it does not say.",
  ),
  "uebele-1913": read(
    "Uebele, C. L. (1913). Paint Making and Color Grinding. New York: The Trade Papers Publishing Company.",
    "Lithopone wetted with dilute hydrochloric acid gives off sulphuretted hydrogen at once, and zinc oxide nothing. Read in a public copy; its year is from memory.",
  ),
  "practice-hazard": practised(
    "Common practice of colour-making studios and workshops; no text.",
    "Cautions by operation and the limits of dustiness; local codes and licensed practice come first.",
  ),
} as const satisfies Bibliography;
