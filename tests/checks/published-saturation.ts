/** Saturation pairs printed elsewhere: refrigerant, line, °C, kPa absolute, grouped by where they stand. */
import type { Phase } from '../../core/fluids/fluid.ts';
import type { RefrigerantId } from '../../core/terms/refrigerants.ts';
import type { Standing } from '../../core/calculations/formula.ts';

export interface PublishedSaturation {
  readonly source: string;
  readonly standing: Standing;
  /** What the print's rounding and its mixing parameters leave between it and an equation of state, in K. */
  readonly withinK: number;
  readonly pairs: readonly (readonly [RefrigerantId, Phase, number, number])[];
}

export const PUBLISHED_SATURATION: readonly PublishedSaturation[] = [
  {
    source:
      'Moran & Shapiro, Fundamentals of Engineering Thermodynamics, Table A-7, studmed.ru/view/moran-mj-shapiro-hn-fundamentals-of-engineering-thermodynamics_ed2d0c55b26.html?page=92',
    standing: 'published',
    withinK: 0.05,
    pairs: [
      ['R-22', 'bubble', -50, 64.51],
      ['R-22', 'bubble', -20, 245.34],
      ['R-22', 'bubble', 0, 498.11],
    ],
  },
  {
    source:
      'eCourses thermodynamics tables, R-134a superheat headings (Tsat at p), ecoursesbook.com/cgi-bin/ebook.cgi?topic=th&chap_sec=Refrigerant_134a&page=&appendix=thermotables',
    standing: 'published',
    withinK: 0.15,
    pairs: [
      ['R-134a', 'bubble', -37.07, 60],
      ['R-134a', 'bubble', -18.8, 140],
      ['R-134a', 'bubble', -5.37, 240],
    ],
  },
  {
    source:
      'Freon 134a Refrigerant Thermodynamic Properties (SI), maker bulletin, pdfcoffee.com/freon-134a-si-thermodynamic-properties-pdf-free.html',
    standing: 'published',
    withinK: 0.05,
    pairs: [['R-134a', 'bubble', -26.06, 101.33]],
  },
  {
    source:
      'CoolProp issue #2425 quoting Moran & Shapiro tables, github.com/CoolProp/CoolProp/issues/2425',
    standing: 'published',
    withinK: 0.05,
    pairs: [['R-134a', 'bubble', -36.95, 60]],
  },
  {
    source:
      'Ohio University R744 saturation table (from NIST WebBook), people.ohio.edu/trembly/mechanical/thermo/property_tables/CO2/CO2_TempSat1.html',
    standing: 'published',
    withinK: 0.01,
    pairs: [
      ['R-744', 'bubble', -20, 1969.6],
      ['R-744', 'bubble', -10, 2648.7],
      ['R-744', 'bubble', 0, 3485.1],
    ],
  },
  {
    source: 'REFPROP 9.1 output in CoolProp issue #683, github.com/CoolProp/CoolProp/issues/683',
    standing: 'published',
    withinK: 0.02,
    pairs: [
      ['R-404A', 'bubble', -46.5, 100],
      ['R-404A', 'bubble', -37.68, 150],
      ['R-404A', 'bubble', -30.93, 200],
      ['R-404A', 'bubble', -20.63, 300],
    ],
  },
  {
    source:
      'Liebert equipment manual Table 33 (R407C liquid), office.manualsonline.com/manuals/mfg/liebert/itr.html?p=63',
    standing: 'published',
    withinK: 0.65,
    pairs: [
      ['R-407C', 'bubble', 4.444, 645.33],
      ['R-407C', 'bubble', 21.111, 1055.3],
      ['R-407C', 'bubble', 48.889, 2130.3],
    ],
  },
  {
    source:
      'refprop-rs test file (REFPROP value, tolerance 0.1 bar), docs.rs/crate/refprop-rs/latest/source/',
    standing: 'published',
    withinK: 0.05,
    pairs: [['R-407C', 'bubble', 20, 1038]],
  },
  {
    source: 'Wikipedia R-407C, wiki.inamatrix.xyz/content/wikipedia_en_all_maxi_2022-05/A/R-407c',
    standing: 'published',
    withinK: 0.3,
    pairs: [['R-407C', 'bubble', -43.8, 101.33]],
  },
  {
    source:
      'Fujitsu AUXB12GA-H service manual, R410A saturation table p.223, www.easymanua.ls/fujitsu/auxb12ga-h/manual?p=223',
    standing: 'published',
    withinK: 0.4,
    pairs: [
      ['R-410A', 'bubble', -30, 273.52],
      ['R-410A', 'bubble', -10, 578.93],
      ['R-410A', 'bubble', 25, 1664.3],
      ['R-410A', 'dew', -30, 273.02],
      ['R-410A', 'dew', 40, 2424.3],
    ],
  },
  {
    source:
      'Chemours values quoted in REFPROP-issues #402, github.com/usnistgov/REFPROP-issues/issues/402',
    standing: 'published',
    withinK: 0.2,
    pairs: [
      ['R-410A', 'dew', 42.82, 2580],
      ['R-410A', 'dew', 43.14, 2600],
      ['R-410A', 'dew', 44.73, 2700],
    ],
  },
  {
    source:
      'npm coolprop-node 1.0.20, refData.js: a psig chart transcribed to 0.1 psi, app.unpkg.com/coolprop-node@1.0.20/files/src/refData.js',
    standing: 'published',
    withinK: 0.4,
    pairs: [
      ['R-448A', 'bubble', -40, 135.14],
      ['R-448A', 'dew', -40, 101.35],
      ['R-448A', 'bubble', 4.44, 714.99],
      ['R-448A', 'dew', 4.44, 598.46],
      ['R-448A', 'bubble', 37.78, 1783.7],
      ['R-448A', 'dew', 37.78, 1576.8],
      ['R-448A', 'bubble', 60, 2955.8],
      ['R-448A', 'dew', 60, 2714.5],
    ],
  },
  {
    source:
      'REFPROP 9.1 (updated HMX) in REFPROP-issues #177, github.com/usnistgov/REFPROP-issues/issues/177',
    standing: 'published',
    withinK: 0.1,
    pairs: [['R-448A', 'bubble', 42.222, 1982.9]],
  },
  {
    source:
      'DuPont XP40.MIX in REFPROP, CoolProp issue #698 ("the correct one"), github.com/CoolProp/CoolProp/issues/698',
    standing: 'published',
    withinK: 0.2,
    pairs: [['R-449A', 'dew', 0, 512.99]],
  },
  {
    source: 'REFPROP (R449A.mix), CoolProp issue #921, github.com/CoolProp/CoolProp/issues/921',
    standing: 'published',
    withinK: 0.2,
    pairs: [['R-449A', 'dew', -40, 101.33]],
  },
  {
    source:
      'REFPROP (updated parameters), maintainer comment, CoolProp issue #683, github.com/CoolProp/CoolProp/issues/683',
    standing: 'published',
    withinK: 0.2,
    pairs: [
      ['R-449A', 'bubble', -45.99, 100],
      ['R-449A', 'bubble', -44.01, 110],
      ['R-449A', 'bubble', -42.16, 120],
      ['R-449A', 'bubble', -40.43, 130],
    ],
  },
  {
    source:
      'AMETEK 241CE II manual, propane Antoine eq. (ref 2), www.easymanua.ls/ametek/241ce-ii/manual/802159?p=154',
    standing: 'published',
    withinK: 0.1,
    pairs: [
      ['R-290', 'bubble', -50, 70.398],
      ['R-290', 'bubble', -30, 167.63],
    ],
  },
  {
    source:
      'Flame Engineering propane vapour pressure chart (100 % propane), flameengineering.com/pages/propane-information',
    standing: 'published',
    withinK: 0.65,
    pairs: [
      ['R-290', 'bubble', -17.778, 270.25],
      ['R-290', 'bubble', 21.111, 859.75],
    ],
  },
  {
    source: 'ANSI/ASHRAE 34 blend table, bubble point at 1 atm',
    standing: 'from memory',
    withinK: 0.7,
    pairs: [
      ['R-404A', 'bubble', -46.6, 101.33],
      ['R-407A', 'bubble', -45.2, 101.33],
      ['R-407C', 'bubble', -43.8, 101.33],
      ['R-407F', 'bubble', -46.1, 101.33],
      ['R-410A', 'bubble', -51.6, 101.33],
      ['R-422D', 'bubble', -43.2, 101.33],
      ['R-448A', 'bubble', -45.9, 101.33],
      ['R-449A', 'bubble', -46, 101.33],
      ['R-450A', 'bubble', -23.4, 101.33],
      ['R-452A', 'bubble', -47, 101.33],
      ['R-454A', 'bubble', -48.4, 101.33],
      ['R-454B', 'bubble', -50.9, 101.33],
      ['R-454C', 'bubble', -46, 101.33],
      ['R-455A', 'bubble', -51.6, 101.33],
      ['R-513A', 'bubble', -29.2, 101.33],
      ['R-507A', 'bubble', -47.1, 101.33],
    ],
  },
  {
    source: 'ANSI/ASHRAE 34 blend table, dew point at 1 atm',
    standing: 'from memory',
    withinK: 0.7,
    pairs: [
      ['R-404A', 'dew', -45.8, 101.33],
      ['R-407A', 'dew', -38.7, 101.33],
      ['R-407C', 'dew', -36.7, 101.33],
      ['R-407F', 'dew', -39.7, 101.33],
      ['R-410A', 'dew', -51.5, 101.33],
      ['R-422D', 'dew', -38.4, 101.33],
      ['R-448A', 'dew', -39.8, 101.33],
      ['R-449A', 'dew', -39.9, 101.33],
      ['R-450A', 'dew', -22.8, 101.33],
      ['R-452A', 'dew', -43.2, 101.33],
      ['R-454A', 'dew', -41.6, 101.33],
      ['R-454B', 'dew', -50, 101.33],
      ['R-454C', 'dew', -37.8, 101.33],
      ['R-455A', 'dew', -39.1, 101.33],
      ['R-513A', 'dew', -29.1, 101.33],
      ['R-507A', 'dew', -47.1, 101.33],
    ],
  },
];
