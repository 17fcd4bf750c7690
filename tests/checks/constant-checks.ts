/** Critical and triple points, molar masses, warming potentials and safety groups, printed elsewhere. */
import type { Fluid } from '../../core/fluids/fluid.ts';
import { FLUIDS } from '../../core/fluids/fluids.ts';
import type { RefrigerantId } from '../../core/terms/refrigerants.ts';
import type { ValueCheck } from './check-row.ts';

type Constant = 'criticalC' | 'criticalKPa' | 'tripleC' | 'tripleKPa' | 'molarMass' | 'gwp';

const READ: Record<Constant, (fluid: Fluid) => number> = {
  criticalC: ({ critical }) => critical.temperature,
  criticalKPa: ({ critical }) => critical.pressure,
  tripleC: ({ triple }) => triple?.temperature ?? NaN,
  tripleKPa: ({ triple }) => triple?.pressure ?? NaN,
  molarMass: ({ molarMass }) => molarMass,
  gwp: ({ gwp }) => gwp.value,
};

/** Constant, value, and how far off it may be: half the print's last digit unless a measurement says more. */
type Row = readonly [Constant, number, number];

interface Printed {
  readonly refrigerant: RefrigerantId;
  readonly source: string;
  readonly rows: readonly Row[];
}

const kelvin = (value: number): number => value - 273.15;
const CFR =
  '40 CFR 98 Table A-1, govregs.com/regulations/title40_chapterI-i22_part98_subpartA_appendix';
const CENGEL =
  'Çengel & Boles, Thermodynamics, Table A-1, studylib.net/doc/25617324 (older measurements: 1 K and 1 %)';
const UK = 'gov.uk/guidance/checking-f-gas-equipment-for-leaks';

const PRINTED: readonly Printed[] = [
  {
    refrigerant: 'R-32',
    source: 'NIST REFPROP fluid file r32.fld, www.eeworm.com/read/292883/8327431',
    rows: [
      ['criticalC', kelvin(351.255), 0.0005],
      // At its own critical temperature and density the equation gives 5782.6.
      ['criticalKPa', 5782, 1],
      ['tripleC', kelvin(136.34), 0.005],
      ['molarMass', 52.024, 0.0005],
    ],
  },
  {
    refrigerant: 'R-125',
    source: 'NIST REFPROP fluid file r125.fld, www.eeworm.com/read/292883/8327441',
    rows: [
      ['criticalKPa', 3617.7, 1],
      ['tripleC', kelvin(172.52), 0.005],
      ['molarMass', 120.0214, 0.00005],
    ],
  },
  {
    refrigerant: 'R-1234zeE',
    source: 'NIST REFPROP fluid file R1234ZEE.FLD, trc.nist.gov/refprop/FAQ/R1234ZEE.FLD',
    rows: [
      ['criticalC', kelvin(382.513), 0.0005],
      ['criticalKPa', 3634.9, 0.05],
      ['tripleC', kelvin(168.62), 0.005],
      ['molarMass', 114.0416, 0.00005],
    ],
  },
  {
    refrigerant: 'R-404A',
    source: 'NIST REFPROP file R404A.PPF, www.orpaon.com:7004/TyroneGit/CapMachine',
    rows: [['molarMass', 97.6038, 0.00005]],
  },
  {
    refrigerant: 'R-407C',
    source: 'NIST REFPROP file R407C.PPF, www.orpaon.com:7004/TyroneGit/CapMachine',
    rows: [['molarMass', 86.2036, 0.00005]],
  },
  {
    refrigerant: 'R-507A',
    source: 'NIST REFPROP file R507A.PPF, www.orpaon.com:7004/TyroneGit/CapMachine',
    rows: [['molarMass', 98.8592, 0.00005]],
  },
  {
    refrigerant: 'R-134a',
    source:
      'Freon 134a Refrigerant Thermodynamic Properties (SI), maker bulletin, pdfcoffee.com/freon-134a-si-thermodynamic-properties-pdf-free.html',
    rows: [
      ['criticalC', 101.08, 0.03],
      ['criticalKPa', 4060.3, 3],
      ['molarMass', 102.03, 0.005],
    ],
  },
  {
    refrigerant: 'R-143a',
    source:
      'J. Chem. Eng. Data 43 (1998), measured critical point ± 6 mK and ± 2.6 kPa, www.osti.gov/biblio/599802; the equation’s own point is unsure by 10 mK',
    rows: [
      ['criticalC', kelvin(345.861), 0.016],
      ['criticalKPa', 3763.9, 5],
    ],
  },
  {
    refrigerant: 'R-143a',
    source: 'NIST Chemistry WebBook, webbook.nist.gov/cgi/cbook.cgi?ID=C420462',
    rows: [['molarMass', 84.0404, 0.001]],
  },
  {
    refrigerant: 'R-600a',
    source: 'NIST Chemistry WebBook, webbook.nist.gov/cgi/cbook.cgi?ID=C75285',
    rows: [['molarMass', 58.1222, 0.00005]],
  },
  {
    refrigerant: 'R-600a',
    source: 'isobutane, GESTIS, wap.bdmobi.com/view_html.php?lang=pl&q=Izobutan',
    rows: [
      ['criticalC', 135, 0.5],
      ['tripleC', -159.6, 0.2],
    ],
  },
  {
    refrigerant: 'R-290',
    source: 'Lemmon & McLinden 2009 as in fchartsoftware.com/ees/eeshelp/propane_or_r290.htm',
    rows: [
      ['tripleC', kelvin(85.525), 0.0005],
      ['molarMass', 44.095, 0.001],
    ],
  },
  {
    refrigerant: 'R-1270',
    source: 'fchart.com/ees/eeshelp/propylene.htm',
    rows: [['molarMass', 42.08, 0.005]],
  },
  {
    refrigerant: 'R-454A',
    source: 'fchartsoftware.com/ees/eeshelp/hs788.htm',
    rows: [['molarMass', 80.47, 0.005]],
  },
  {
    refrigerant: 'R-454B',
    source: 'fchartsoftware.com/ees/eeshelp/hs782.htm',
    rows: [['molarMass', 62.6, 0.05]],
  },
  {
    refrigerant: 'R-448A',
    source: 'fchartsoftware.com/ees/eeshelp/hs776.htm',
    rows: [['molarMass', 86.3, 0.05]],
  },
  {
    refrigerant: 'R-12',
    source: 'PROPATH, CFC-12 (Japanese Association of Refrigeration), paperzz.com/doc/9424413',
    rows: [
      ['criticalC', 111.8, 0.2],
      ['molarMass', 120.9138, 0.001],
    ],
  },
  {
    refrigerant: 'R-744',
    source: 'freezeoil.com/liquid-carbon-dioxide',
    rows: [
      ['tripleC', -56.6, 0.05],
      ['tripleKPa', 518, 0.5],
      ['criticalC', 31.1, 0.15],
      ['criticalKPa', 7380, 5],
    ],
  },
  {
    refrigerant: 'R-717',
    source: CENGEL,
    rows: [
      ['criticalC', kelvin(405.5), 1],
      ['criticalKPa', 11280, 113],
      ['molarMass', 17.03, 0.005],
    ],
  },
  {
    refrigerant: 'R-744',
    source: CENGEL,
    rows: [
      ['criticalC', kelvin(304.2), 1],
      ['criticalKPa', 7390, 74],
      ['molarMass', 44.01, 0.005],
    ],
  },
  { refrigerant: 'R-32', source: CFR, rows: [['gwp', 675, 0]] },
  { refrigerant: 'R-125', source: CFR, rows: [['gwp', 3500, 0]] },
  { refrigerant: 'R-134a', source: CFR, rows: [['gwp', 1430, 0]] },
  { refrigerant: 'R-143a', source: CFR, rows: [['gwp', 4470, 0]] },
  { refrigerant: 'R-152a', source: CFR, rows: [['gwp', 124, 0]] },
  {
    refrigerant: 'R-407A',
    source: 'R407A fact sheet, refrigeranthq.com/r407a-refrigerant-fact-info-sheet',
    rows: [
      ['gwp', 2107, 0.5],
      ['molarMass', 90.1, 0.05],
    ],
  },
  {
    refrigerant: 'R-407C',
    source: 'R407C data, mutkar.com/en/r407c-2',
    rows: [['gwp', 1774, 0.5]],
  },
  {
    refrigerant: 'R-404A',
    source: `${UK} (also the EPA’s Technology Transitions table, processconvert.pages.dev/substances/r-404a)`,
    rows: [['gwp', 3922, 0.5]],
  },
  { refrigerant: 'R-410A', source: UK, rows: [['gwp', 2088, 0.5]] },
  {
    refrigerant: 'R-448A',
    source:
      'the maker’s guide, GWP by AR4 1387, de.scribd.com/document/328857966/Solstice-N40-R-448A-Retrofit',
    rows: [['gwp', 1387, 0.5]],
  },
  {
    refrigerant: 'R-12',
    source:
      'a compressor maker’s bulletin 93-11, huggingface.co/datasets/referencesource/hvac-component-refrigerant-compatibility',
    rows: [['gwp', 10900, 0]],
  },
  {
    refrigerant: 'R-513A',
    source: 'gesonchiller.com/?p=6489: GWP 631',
    rows: [['gwp', 631, 0.5]],
  },
];

export const CONSTANT_CHECKS: readonly ValueCheck[] = PRINTED.flatMap(
  ({ refrigerant, source, rows }) =>
    rows.map(([constant, gives, within]): ValueCheck => ({
      about: 'fluid',
      title: `${refrigerant} ${constant}`,
      gives,
      within: within + 1e-9,
      found: () => READ[constant](FLUIDS[refrigerant]),
      source,
      standing: 'published',
    })),
);
