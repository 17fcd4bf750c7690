/** Where the fluids' values come from. Here once, since repeated in thirty files they were a quarter of the whole. */

const LIBRARY = 'CoolProp 8.0.1dev, commit ea27c6394887390270a03dcd0ad00a1274be4efc (2026-07-23)';
export const PURE_FLUID = `HEOS pure fluid, ${LIBRARY}`;
export const MULTI_FLUID = `HEOS multi-fluid mixture, ${LIBRARY}`;

export const SAFETY_FROM_MEMORY = 'ANSI/ASHRAE Standard 34, from memory: verify';
export const SAFETY_READ =
  'ANSI/ASHRAE Standard 34 as quoted by processconvert.pages.dev/substances/r-404a (R-404A), the maker’s guide de.scribd.com/document/328857966 (R-448A), refrigeranthq.com/r-454b-xl41-refrigerant-fact-info-sheet (R-454B) and gesonchiller.com/?p=6489 (R-513A)';

/** 40 CFR 98, and AR4 behind it: the basis of the EU's and UK's thresholds too, so blends are weighed on one basis. */
export const WARMING_CFR =
  '40 CFR 98 Table A-1 (IPCC AR4), read in a copy from before its amendment of 25 April 2024 at govregs.com/regulations/title40_chapterI-i22_part98_subpartA_appendix';
export const WARMING_AR4 = 'IPCC AR4 (2007), from memory: verify';
export const WARMING_EU = 'EU 517/2014 Annexes II and IV, from memory: verify';
export const WARMING_BULLETIN =
  'a compressor maker’s bulletin 93-11 (IPCC AR4), quoted at huggingface.co/datasets/referencesource/hvac-component-refrigerant-compatibility';
export const WARMING_BLEND = `weighed by mass; components by ${WARMING_CFR}`;
export const WARMING_BLEND_EU = `${WARMING_BLEND}; others by ${WARMING_EU}`;

export const BOILING_POINTS =
  'boiling points listed for the blend in ANSI/ASHRAE Standard 34, to 0.1 °C';
