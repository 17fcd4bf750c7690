import type { ProcedureStepId } from '../../terms/procedures.ts';
import type { CautionId } from '../verdict.ts';

export interface StepData {
  /** For the screen: how, and what to look for. */
  readonly detail: string;
  readonly source: string;
  /** Said before the step, every time: this is where it can hurt. */
  readonly caution: CautionId | null;
}

const CUSTOM = 'common practice';
const VALVE_MANUAL =
  'manualarchiveguide.com, a transport refrigeration maker’s manual 69NT40-541-306, page 89';
const MANIFOLD_MANUAL =
  'manualarchiveguide.com, a transport refrigeration maker’s manual GR-45, page 35';
const PUMP_DOWN_MANUAL = 'airconditioningmanuals.tpub.com, TM 5-4110-234-14';
const LEVELS = '40 CFR 82.156: verify with the authority in force';
const HOSE_RELEASES =
  '40 CFR 82.154 and EPA’s stationary refrigeration page, “Prohibition on Venting Refrigerants”: only the least that connecting and disconnecting hoses lets go';

/** What stands behind each step. The maker’s own procedure comes first. */
export const STEPS: Record<ProcedureStepId, StepData> = {
  protectYourself: {
    detail: 'Hoses and gauges rated for this refrigerant’s pressure, with low-loss ends.',
    source: CUSTOM,
    caution: 'liquidBurns',
  },
  backSeatBoth: {
    detail:
      'Stem turned out, counter-clockwise, to the stop: the line is open and the gauge port shut. Loosen the packing gland a quarter turn first where it binds.',
    source: VALVE_MANUAL,
    caution: null,
  },
  closeHands: {
    detail: 'Both turned in. With both open, high side runs into low side.',
    source: MANIFOLD_MANUAL,
    caution: null,
  },
  screwHosesOn: {
    detail: 'High hose to the discharge port, low hose to the suction port, centre hose capped.',
    source: MANIFOLD_MANUAL,
    caution: null,
  },
  purgeFromTheUnit: {
    detail:
      'Crack the stem, let one breath push the air to the loose end at the manifold, and tighten it. Pulling the hoses down with a pump first lets nothing go. Never more than that breath.',
    source: HOSE_RELEASES,
    caution: null,
  },
  crackBoth: {
    detail:
      'A quarter to half a turn in from the back seat opens the port and leaves the line open.',
    source: VALVE_MANUAL,
    caution: null,
  },
  pullHosesDown: {
    detail:
      'End valves shut, centre hose to the vacuum pump, both hand valves open; then shut them. No pump: purge one breath at the loose manifold end.',
    source: HOSE_RELEASES,
    caution: null,
  },
  screwEndsOn: {
    detail: 'Low-loss or ball-valve ends, valve shut, until the core is pressed.',
    source: CUSTOM,
    caution: null,
  },
  openEnds: {
    detail:
      'A piercing valve is opened by its own stem, and is replaced by a brazed fitting at the next repair.',
    source: CUSTOM,
    caution: null,
  },
  keepItRunning: {
    detail:
      'Only while it runs is suction low enough to take it. The suction line must not be frosted at the compressor, and nothing else may be in the hoses.',
    source: 'direction of flow: maker’s manual GR-45, page 35; the rest is common practice',
    caution: null,
  },
  backSeatDischarge: {
    detail:
      'Out, counter-clockwise, to the stop: the port shuts and the hose is cut off from the high side.',
    source: VALVE_MANUAL,
    caution: null,
  },
  shutHighEnd: {
    detail:
      'The ball valve at the fitting, not the one at the manifold: only that keeps the hose’s liquid for the suction. A low-loss end without a valve is screwed off here and shuts itself.',
    source: CUSTOM,
    caution: null,
  },
  drawIntoSuction: {
    detail:
      'High hand valve open, then the low one only cracked. Watch suction and listen: throttle at once if it rises fast or the compressor changes its note.',
    source: `${MANIFOLD_MANUAL}; throttling: common practice`,
    caution: 'liquidToCompressor',
  },
  waitForSuction: {
    detail: 'Both gauges on the same low pressure: what is left in the hoses is a little vapour.',
    source: CUSTOM,
    caution: null,
  },
  backSeatSuction: {
    detail: 'Out, counter-clockwise, to the stop, before the hose is loosened.',
    source: VALVE_MANUAL,
    caution: null,
  },
  shutLowEnd: {
    detail: 'End valve at the fitting first, then both hand valves.',
    source: CUSTOM,
    caution: null,
  },
  hosesOff: {
    detail:
      'Loosen slowly, face away. If it keeps blowing, tighten it again: a seat or a core leaks.',
    source: HOSE_RELEASES,
    caution: 'liquidBurns',
  },
  leakCheckCaps: {
    detail: 'Soap or a detector on each stem, port and core. The cap is the seal, the core is not.',
    source: CUSTOM,
    caution: null,
  },
  receiverHoldsIt: {
    detail:
      'The receiver may be filled to ninety percent at most; read its size against the nameplate charge.',
    source: 'bitzer.de, a receiver table: 90 percent; local codes come first',
    caution: null,
  },
  solenoidOpen: {
    detail: 'Thermostat calling, or its coil held open with the maker’s magnet.',
    source: 'a condensing-unit maker’s manual; common practice',
    caution: 'trappedLiquid',
  },
  lowControlHeld: {
    detail:
      'Where it cuts out too early it is held by hand or jumped out; tell me, and it stays on the list until it is off.',
    source: 'refrigeratordiagrams.com, pumping down',
    caution: null,
  },
  closeKing: {
    detail:
      'Receiver outlet, stem in, clockwise, to the stop. Tell me that it is closed, and I remind you to open it.',
    source: PUMP_DOWN_MANUAL,
    caution: null,
  },
  runToZero: {
    detail:
      'Zero to two psi gauge, by default. Makers differ: some stop higher, and a scroll stops at its own low limit. In a vacuum air is drawn in and hermetic windings can flash over.',
    source: `${PUMP_DOWN_MANUAL}: 0 to 2 psig; refrigeratordiagrams.com: 3 psi; the maker’s figure comes first`,
    caution: null,
  },
  stopAndWatch: {
    detail: 'It will rise as the oil gives off refrigerant.',
    source: PUMP_DOWN_MANUAL,
    caution: null,
  },
  runAgain: {
    detail: 'A rise that never stops is a leaking king valve, solenoid or compressor valve.',
    source: PUMP_DOWN_MANUAL,
    caution: null,
  },
  lockBeforeOpening: {
    detail:
      'Bring it to slightly above atmosphere before anything is opened, so that no air is drawn in.',
    source: 'airconditioningmanuals.tpub.com, TM 5-4120-364-13',
    caution: 'lockOut',
  },
  openKing: {
    detail: 'Slowly, out to the stop: the liquid line fills again.',
    source: VALVE_MANUAL,
    caution: null,
  },
  backSeatAll: {
    detail: 'Out to the stop, discharge first. Only then may it start.',
    source: VALVE_MANUAL,
    caution: 'frontSeatedDischarge',
  },
  snugGlands: {
    detail: 'As they were before the stems were turned.',
    source: 'frojeostern.com, service valve positions',
    caution: null,
  },
  capsOn: {
    detail: 'Stem caps and port caps, each with its gasket or flare seal.',
    source: CUSTOM,
    caution: null,
  },
  controlsBack: {
    detail:
      'Jumpers off, thermostat and pressure controls where they were, panels on, and prove that each safety opens.',
    source: CUSTOM,
    caution: null,
  },
  askWhatIsOpen: {
    detail:
      'Whatever was told as opened, closed, jumped out or taken off, and not told as put back.',
    source: CUSTOM,
    caution: null,
  },
  oneGasCylinder: {
    detail: 'A mixed or unknown gas goes into a cylinder of its own, labelled as mixed.',
    source: 'g-wonlinetextbooks.com, page 285; mixed gas: common practice',
    caution: null,
  },
  cylinderOnScale: {
    detail:
      'Within its test date, rated for this gas, its tare and water capacity read off the collar.',
    source: '49 CFR 173.304a; cylinder plate',
    caution: 'neverOverfill',
  },
  recoveryHoses: {
    detail:
      'Short and wide, valve cores out with a core tool, a filter in front of the machine, hoses pulled down first.',
    source: CUSTOM,
    caution: null,
  },
  liquidFirst: {
    detail:
      'From the receiver or the lowest liquid port; vapour after it. A zeotrope that is to be used again comes out as liquid.',
    source: CUSTOM,
    caution: 'liquidBurns',
  },
  watchTheScale: {
    detail:
      'Net most: 80 percent of water capacity times the liquid’s specific gravity at 77 °F, or what the cylinder rules allow if that is less.',
    source: 'achrnews.com/articles/111771, AHRI Guideline K; 49 CFR 173.304a',
    caution: 'neverOverfill',
  },
  pullToLevel: {
    detail:
      'Machines made since November 15, 1993: very high and high pressure under 200 lb, 0 inches of vacuum; high at or over 200 lb, 10; medium under 200 lb, 10, at or over, 15. Small appliances, 90 percent with the compressor running, 80 without.',
    source: `${LEVELS}; small appliances: from memory`,
    caution: null,
  },
  holdTheLevel: {
    detail: 'Machine off, a few minutes: liquid in oil or in a low spot brings it up again.',
    source: `${LEVELS}; the time is common practice`,
    caution: null,
  },
  weighItOut: {
    detail: 'Shut the cylinder, let the machine clear itself, then read the scale.',
    source: CUSTOM,
    caution: null,
  },
  provenTight: {
    detail: 'Recovered to the level, pressure test held, new drier in.',
    source: CUSTOM,
    caution: null,
  },
  coresOut: {
    detail: 'Both sides; a core chokes more than all of the hose.',
    source: CUSTOM,
    caution: null,
  },
  gaugeFarEnd: {
    detail: 'An electronic micron gauge away from the pump, with a valve of its own.',
    source: 'manualarchiveguide.com, a transport maker’s manual, page 36',
    caution: 'useMicronGauge',
  },
  freshOil: { detail: 'Gas ballast open for the first minutes.', source: CUSTOM, caution: null },
  pullDeep: {
    detail: '500 microns or less, read away from the pump; polyolester oil often wants less.',
    source: 'manualarchiveguide.com, a transport maker’s manual, page 36: 500 microns',
    caution: 'noPowerInVacuum',
  },
  valveOffAndWatch: {
    detail: 'Pump valved off, then off. Ask for a ten minute timer.',
    source: 'a transport maker’s manual: 5 minutes; 10 to 30 minutes is common practice',
    caution: null,
  },
  readTheRise: {
    detail: 'Moisture: break with dry nitrogen and pull again. A leak: back to the pressure test.',
    source: 'a transport maker’s manual 0006188360, pressure rise test',
    caution: null,
  },
  breakWithCharge: {
    detail: 'Weighed in by the nameplate. A zeotrope leaves its cylinder as liquid.',
    source: CUSTOM,
    caution: 'chargeByNameplate',
  },
  nothingLeftIn: {
    detail:
      'Recovered; controls, transducers and valves that cannot take the pressure shut off or taken out.',
    source: 'hvactm.ca, unit 2',
    caution: 'noVenting',
  },
  regulatorAndRelief: {
    detail: 'Two-gauge regulator, fixed relief behind it. A full cylinder holds 2200 psi or more.',
    source: 'manualshive.com, a transport refrigeration maker’s service manual, page 137',
    caution: 'pressureTest',
  },
  lowestRating: {
    detail: 'The lowest of low-side rating, component rating and nameplate.',
    source: 'hvactm.ca, unit 2',
    caution: null,
  },
  raiseInSteps: {
    detail: 'A few psi first and listen, then in steps, with a wait at each.',
    source: 'hvactm.ca, unit 2',
    caution: null,
  },
  soapJoints: {
    detail: 'Every joint, cap and stem; a bubble may take a minute.',
    source: CUSTOM,
    caution: null,
  },
  noteBoth: {
    detail: 'Pressure moves with gas temperature: without it a drop means nothing.',
    source: 'achrnews.com/articles/153295',
    caution: null,
  },
  shutAndWait: {
    detail: 'Cylinder shut and regulator backed off, so that only the unit is tested.',
    source: CUSTOM,
    caution: null,
  },
  letItDown: {
    detail: 'Slowly, to the outdoors, away from people: nitrogen takes the place of the air.',
    source: CUSTOM,
    caution: 'airDisplaced',
  },
};
