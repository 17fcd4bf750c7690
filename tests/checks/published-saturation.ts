/** Saturation pairs printed elsewhere: refrigerant, line, °C, kPa absolute, grouped by where they stand. */
import type { Phase } from '../../core/fluids/fluid.ts';
import type { RefrigerantId } from '../../core/terms/refrigerants.ts';
import type { Standing } from '../../core/calculations/formula.ts';

/** °C and kPa absolute. */
export type SaturationPair = readonly [RefrigerantId, Phase, number, number];

export interface PublishedSaturation {
  readonly source: string;
  readonly standing: Standing;
  /** The steps of the print: zero for the column that a table is ordered by. */
  readonly printed: { readonly tempC: number; readonly kPa: number };
  /** What the source is good to, where it is an equation and not a print. */
  readonly uncertaintyPercent?: number;
  readonly pairs: readonly SaturationPair[];
}

export const PUBLISHED_SATURATION: readonly PublishedSaturation[] = [
  {
    source:
      'Moran & Shapiro, Fundamentals of Engineering Thermodynamics, Table A-7, studmed.ru/view/moran-mj-shapiro-hn-fundamentals-of-engineering-thermodynamics_ed2d0c55b26.html?page=92',
    standing: 'published',
    printed: { tempC: 0, kPa: 0.01 },
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
    printed: { tempC: 0.01, kPa: 0.0 },
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
    printed: { tempC: 0.01, kPa: 0.01 },
    pairs: [['R-134a', 'bubble', -26.06, 101.33]],
  },
  {
    source:
      'CoolProp issue #2425 quoting Moran & Shapiro tables, github.com/CoolProp/CoolProp/issues/2425',
    standing: 'published',
    printed: { tempC: 0.1, kPa: 0 },
    pairs: [['R-134a', 'bubble', -36.95, 60]],
  },
  {
    source:
      'Ohio University R744 saturation table (from NIST WebBook), people.ohio.edu/trembly/mechanical/thermo/property_tables/CO2/CO2_TempSat1.html',
    standing: 'published',
    printed: { tempC: 0, kPa: 0.1 },
    pairs: [
      ['R-744', 'bubble', -20, 1969.6],
      ['R-744', 'bubble', -10, 2648.7],
      ['R-744', 'bubble', 0, 3485.1],
    ],
  },
  {
    source: 'REFPROP 9.1 output in CoolProp issue #683, github.com/CoolProp/CoolProp/issues/683',
    standing: 'published',
    printed: { tempC: 0.01, kPa: 0 },
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
    printed: { tempC: 0, kPa: 1 },
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
    printed: { tempC: 0, kPa: 20 },
    pairs: [['R-407C', 'bubble', 20, 1038]],
  },
  {
    source: 'Wikipedia R-407C, wiki.inamatrix.xyz/content/wikipedia_en_all_maxi_2022-05/A/R-407c',
    standing: 'published',
    printed: { tempC: 0.1, kPa: 0 },
    pairs: [['R-407C', 'bubble', -43.8, 101.33]],
  },
  {
    source:
      'Fujitsu AUXB12GA-H service manual, R410A saturation table p.223, www.easymanua.ls/fujitsu/auxb12ga-h/manual?p=223',
    standing: 'published',
    printed: { tempC: 0, kPa: 0.1 },
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
    printed: { tempC: 0.01, kPa: 0 },
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
    printed: { tempC: 0, kPa: 0.7 },
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
    printed: { tempC: 0, kPa: 0.7 },
    pairs: [['R-448A', 'bubble', 42.222, 1982.9]],
  },
  {
    source:
      'DuPont XP40.MIX in REFPROP, CoolProp issue #698 ("the correct one"), github.com/CoolProp/CoolProp/issues/698',
    standing: 'published',
    printed: { tempC: 0, kPa: 0.07 },
    pairs: [['R-449A', 'dew', 0, 512.99]],
  },
  {
    source: 'REFPROP (R449A.mix), CoolProp issue #921, github.com/CoolProp/CoolProp/issues/921',
    standing: 'published',
    printed: { tempC: 0, kPa: 0.5 },
    pairs: [['R-449A', 'dew', -40, 101.33]],
  },
  {
    source:
      'REFPROP (updated parameters), maintainer comment, CoolProp issue #683, github.com/CoolProp/CoolProp/issues/683',
    standing: 'published',
    printed: { tempC: 0.01, kPa: 0 },
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
    printed: { tempC: 0, kPa: 0.1 },
    pairs: [
      ['R-290', 'bubble', -50, 70.398],
      ['R-290', 'bubble', -30, 167.63],
    ],
  },
  {
    source:
      'Flame Engineering propane vapour pressure chart (100 % propane), flameengineering.com/pages/propane-information',
    standing: 'published',
    printed: { tempC: 0, kPa: 0.7 },
    pairs: [
      ['R-290', 'bubble', -17.778, 270.25],
      ['R-290', 'bubble', 21.111, 859.75],
    ],
  },
  {
    source:
      'NIST REFPROP fluid file R1234ZEE.FLD, normal boiling point 254.177 K, trc.nist.gov/refprop/FAQ/R1234ZEE.FLD',
    standing: 'published',
    printed: { tempC: 0.001, kPa: 0 },
    pairs: [['R-1234zeE', 'bubble', -18.973, 101.325]],
  },
  {
    source:
      'NIST REFPROP fluid file r125.fld, normal boiling point 225.06 K, www.eeworm.com/read/292883/8327441',
    standing: 'published',
    printed: { tempC: 0.01, kPa: 0 },
    pairs: [['R-125', 'bubble', -48.09, 101.325]],
  },
  {
    source:
      'NIST REFPROP fluid file r32.fld, normal boiling point 221.499 K, www.eeworm.com/read/292883/8327431',
    standing: 'published',
    printed: { tempC: 0.001, kPa: 0 },
    pairs: [['R-32', 'bubble', -51.651, 101.325]],
  },
  {
    source:
      'Lemmon, Int. J. Thermophys. 24 (2003) 991, pseudo-pure equations: normal boiling points 226.93, 229.52 and 226.41 K in the R404A, R407C and R507A files of NIST REFPROP 10, www.orpaon.com:7004/TyroneGit/CapMachine, CapMachine.Wpf/PPCalculation/REFPROP/FLUIDS',
    standing: 'published',
    printed: { tempC: 0.01, kPa: 0 },
    pairs: [
      ['R-404A', 'bubble', -46.22, 101.325],
      ['R-407C', 'bubble', -43.63, 101.325],
      ['R-507A', 'bubble', -46.74, 101.325],
    ],
  },
  {
    source:
      'J. Chem. Eng. Data 41 (1996) 1477, measured normal boiling point of R-143a, 225.90 ± 0.01 K, 694600.ngqmh.asia/research/tech/periodicals/view.php?seq=111212 (abstract)',
    standing: 'published',
    printed: { tempC: 0.02, kPa: 0 },
    pairs: [['R-143a', 'bubble', -47.25, 101.325]],
  },
  {
    source:
      'Characteristics of R32 on the saturation line, allchemi.com/eng/refregerants/appendix9.html',
    standing: 'published',
    printed: { tempC: 0, kPa: 0.1 },
    pairs: [
      ['R-32', 'bubble', -50, 110.6],
      ['R-32', 'bubble', -30, 273.7],
      ['R-32', 'bubble', -10, 583.1],
      ['R-32', 'bubble', 10, 1108.1],
      ['R-32', 'bubble', 30, 1928.3],
      ['R-32', 'bubble', 50, 3140.3],
    ],
  },
  {
    source:
      'Moran & Shapiro, Fundamentals of Engineering Thermodynamics, Table A-7, more rows, studmed.ru/view/moran-mj-shapiro-hn-fundamentals-of-engineering-thermodynamics_ed2d0c55b26.html?page=92',
    standing: 'published',
    printed: { tempC: 0, kPa: 0.01 },
    pairs: [
      ['R-22', 'bubble', -40, 105.22],
      ['R-22', 'bubble', -30, 163.89],
      ['R-22', 'bubble', -10, 354.85],
      ['R-22', 'bubble', 2, 531.33],
    ],
  },
  {
    source:
      "Mechanical Engineers' Handbook, vol. 4, Table 14, saturated refrigerant 134a, digilib.universitaspertamina.ac.id/ebook/Mechanical%20Engineers'%20Handbook%20(Volume%204)/files/basic-html/page33.html",
    standing: 'published',
    printed: { tempC: 0.01, kPa: 0 },
    pairs: [
      ['R-134a', 'bubble', 8.86, 400],
      ['R-134a', 'bubble', 15.68, 500],
      ['R-134a', 'bubble', 21.54, 600],
      ['R-134a', 'bubble', 31.35, 800],
      ['R-134a', 'bubble', 39.41, 1000],
      ['R-134a', 'bubble', 46.36, 1200],
    ],
  },
  {
    source:
      'tabulated R12 of OpenFOAM-dev, commit 6b4b81b, github.com/OpenFOAM/OpenFOAM-dev/commit/6b4b81b838db5551c630dd74b67acce8b17a389b',
    standing: 'published',
    printed: { tempC: 0.001, kPa: 0 },
    pairs: [
      ['R-12', 'bubble', 56.201, 1400],
      ['R-12', 'bubble', 56.84, 1420],
      ['R-12', 'bubble', 57.473, 1440],
    ],
  },
  {
    source: 'table of saturated R717, fr.scribd.com/document/551370461/r717-Sat-Iir',
    standing: 'published',
    printed: { tempC: 0, kPa: 0.01 },
    pairs: [
      ['R-717', 'bubble', -45, 54.5],
      ['R-717', 'bubble', -40, 71.71],
      ['R-717', 'bubble', -30, 119.46],
      ['R-717', 'bubble', -25, 151.5],
      ['R-717', 'bubble', -20, 190.11],
    ],
  },
  {
    source:
      'Ohio University R744 saturation table, more rows, people.ohio.edu/trembly/mechanical/thermo/property_tables/CO2/CO2_TempSat1.html',
    standing: 'published',
    printed: { tempC: 0, kPa: 0.1 },
    pairs: [
      ['R-744', 'bubble', -15, 2290.8],
      ['R-744', 'bubble', -5, 3045.9],
      ['R-744', 'bubble', 1, 3578.3],
    ],
  },
  {
    source: 'isobutane, CRC Handbook boiling point, sagapedia.com/en/Isobutane',
    standing: 'published',
    printed: { tempC: 0.1, kPa: 0 },
    pairs: [['R-600a', 'bubble', -11.7, 101.325]],
  },
  {
    source: 'isobutane, GESTIS vapour pressures, wap.bdmobi.com/view_html.php?lang=pl&q=Izobutan',
    standing: 'published',
    printed: { tempC: 0, kPa: 0.1 },
    pairs: [
      ['R-600a', 'bubble', 20, 301.9],
      ['R-600a', 'bubble', 50, 677.8],
    ],
  },
  {
    source:
      'IUPAC International Thermodynamic Tables 7, Propylene (1980), boiling point 225.46 K, www.thermopedia.com/ru/content/1065/',
    standing: 'published',
    printed: { tempC: 0.01, kPa: 0 },
    pairs: [['R-1270', 'bubble', -47.69, 101.325]],
  },
  {
    source:
      'vapour pressure of HFO-1234yf at 70 and 130 °F as safety sheets give it, hmong.in.th/wiki/2,3,3,3-tetrafluoropropene',
    standing: 'published',
    printed: { tempC: 0.1, kPa: 0.1 },
    pairs: [
      ['R-1234yf', 'bubble', 21.1, 606.7],
      ['R-1234yf', 'bubble', 54.4, 1420.3],
    ],
  },
  {
    source:
      "R-454B fact sheet, the maker's boiling point, refrigeranthq.com/r-454b-xl41-refrigerant-fact-info-sheet",
    standing: 'published',
    printed: { tempC: 0.1, kPa: 0 },
    pairs: [['R-454B', 'bubble', -50.9, 101.325]],
  },
  {
    source:
      'R407A fact sheet, both boiling points, refrigeranthq.com/r407a-refrigerant-fact-info-sheet',
    standing: 'published',
    printed: { tempC: 0.1, kPa: 0 },
    pairs: [
      ['R-407A', 'bubble', -45.2, 101.33],
      ['R-407A', 'dew', -38.7, 101.33],
    ],
  },
  {
    source:
      'R407A fact sheet, vapour pressure, refrigeranthq.com/r407a-refrigerant-fact-info-sheet',
    standing: 'published',
    printed: { tempC: 0, kPa: 1 },
    pairs: [['R-407A', 'dew', 25, 1093]],
  },
  {
    source: 'Freon 507 product information, the maker’s boiling point, docslib.org/doc/9466606',
    standing: 'published',
    printed: { tempC: 0.1, kPa: 0 },
    pairs: [['R-507A', 'bubble', -46.7, 101.325]],
  },
  {
    source: 'R407C data, mutkar.com/en/r407c-2: 11.7 bar at 25 °C',
    standing: 'published',
    printed: { tempC: 0, kPa: 10 },
    pairs: [['R-407C', 'bubble', 25, 1170]],
  },
];
