import type { CautionId } from './verdict.ts';

export interface CautionData {
  /** For the screen and the note: what to do about it. */
  readonly detail: string;
  readonly source: string;
}

const CUSTOM = 'common practice';

/** What stands behind each caution. The nameplate, the maker, local codes and licensed practice come first. */
export const CAUTIONS: Record<CautionId, CautionData> = {
  flammable: {
    detail:
      'Ventilate; gas monitor first; switch power off from outside the zone; cut joints, never torch them out; evacuate and purge with inert gas before opening; charge by the nameplate with a one-gram scale; never convert a unit made for another refrigerant.',
    source:
      'achrnews.com/articles/166073, service tips for R-290; cabinet makers’ manuals; safety group by ANSI/ASHRAE Standard 34',
  },
  mayBurn: {
    detail:
      'The nameplate and the labels on the unit and the cylinder say what is in it. Until they are read, ventilate and keep sparks and flames away.',
    source: CUSTOM,
  },
  highPressureCarbonDioxide: {
    detail:
      'Use gauges and hoses rated for it. Charge vapour until above the triple-point pressure before any liquid, or dry ice plugs the line. Any liquid shut between two valves needs a relief.',
    source:
      'triple and critical point: freezeoil.com, liquid carbon dioxide; charging order: from memory',
  },
  toxicAmmonia: {
    detail:
      'Breathing protection at hand, a way out known, a second person outside. It burns as well, in high concentrations.',
    source: 'mda.state.mn.us, anhydrous ammonia exposure limits',
  },
  liquidMayReturn: {
    detail:
      'The superheat is within what gauge and clamp together may be off by. Check both, then the feed, the airflow and the charge, before the compressor is left running.',
    source: CUSTOM,
  },
  flashGas: {
    detail:
      'The subcooling is within what gauge and clamp together may be off by: vapour in the liquid line starves the valve.',
    source: CUSTOM,
  },
  glideBasis: {
    detail:
      'A blend boils and condenses over a range. Superheat is counted from dew, subcooling from bubble, split and temperature difference from the middle of the two.',
    source: 'definition; the middle for coils is usual practice, from memory',
  },
  chartsDiffer: {
    detail: 'Trade charts and the equation of state differ by about a degree for this refrigerant.',
    source: 'comparison of published chart points with the equation of state',
  },
  designTableOnly: {
    detail:
      'The target comes from a general figure for this kind of equipment. The nameplate and the maker’s sheet come first.',
    source: CUSTOM,
  },
  designLoadOnly: {
    detail:
      'With a capillary tube or fixed orifice the evaporating temperature floats with load and head: the target holds at the set point and design head only.',
    source: CUSTOM,
  },
  pullDown: {
    detail:
      'Well above its set point a box pulls down with a larger temperature difference than at design. Read again near the set point.',
    source: CUSTOM,
  },
  compressionRatioHigh: {
    detail:
      'A single stage is advised to stay below about ten to twelve to one: the discharge runs hot and the oil with it.',
    source: CUSTOM,
  },
  idealGas: {
    detail:
      'Worked by the ideal gas law at 25 °C and one atmosphere: a heavy vapour is a percent or two denser.',
    source: 'densities at 25 °C and 101.325 kPa by CoolProp 8.0.0: 0.5 to 3 % above the ideal gas',
  },
  aboveCompressorLimit: {
    detail: 'Compressor makers set their own limit: find it on the sheet for this model.',
    source: 'from memory of compressor makers’ bulletins',
  },
  doNotOperate: {
    detail: 'Shut down and isolate until the cause is found.',
    source: 'midtennrses.net, voltage imbalance; NEMA MG 1 as cited there',
  },
  liveWork: {
    detail:
      'De-energise unless the test itself needs power. Lock and tag, relieve stored energy, prove the meter on a known source before and after. Bleed capacitors with a resistor, wait, measure; never by shorting. Never energise a compressor with its terminal cover off.',
    source:
      '29 CFR 1910.147 and 1910.333; capacitor and terminal practice: makers’ manuals and common practice',
  },
  verifyWithAuthority: {
    detail: 'Rules differ by place and change: verify with the authority in force.',
    source: CUSTOM,
  },
  neverOverfill: {
    detail:
      'A refillable cylinder is filled by weight to the share its rules allow; liquid needs room to expand.',
    source: '49 CFR 173.304a; cylinder plate',
  },
  wetOrWrongRefrigerant: {
    detail:
      'A line colder than dew means liquid, a wrong refrigerant, a gauge off, or a clamp that does not touch the pipe.',
    source: CUSTOM,
  },
  liquidAboveBubble: {
    detail:
      'A liquid line warmer than bubble means vapour in it, a wrong refrigerant, a gauge off, or a clamp that reads the air.',
    source: CUSTOM,
  },
  brazing: {
    detail:
      'Recover, sweep with nitrogen as a vented trickle and never as a sealed pressure, keep it flowing while brazing. Regulator with relief; never oxygen. Fumes of burnt refrigerant are poisonous.',
    source:
      'manufacturers’ service manuals (order of work); trickle: common practice; fumes: from memory',
  },
  openingTheSystem: {
    detail:
      'Recover to the level the law sets, bring it to slightly above atmosphere so that no air is drawn in, wear gloves and goggles, keep the room aired.',
    source: '40 CFR 82.156; airconditioningmanuals.tpub.com, TM 5-4120-364-13',
  },
  chargeByNameplate: {
    detail:
      'The nameplate charge is the most the unit may hold. Weigh it in, and find the leak before adding.',
    source: CUSTOM,
  },
  chargeOffPlate: {
    detail:
      'What the scale says is in it differs from the nameplate by more than 5 %. Check the scale and the tare first; long piping takes more than the plate, by the maker’s allowance.',
    source: CUSTOM,
  },
  noVenting: {
    detail:
      'Venting is forbidden for most refrigerants; an exemption goes by the substance and by its use together.',
    source: 'achrnews.com/articles/166073; Clean Air Act section 608, from memory',
  },
  repeatedReset: {
    detail:
      'A manual-reset safety opened for a reason. Read head as it runs, look at the condenser, its fan and the charge, and only then reset it, watched.',
    source: CUSTOM,
  },
  noBypass: {
    detail:
      'A pressure switch or an overload is the last thing between a fault and a burst or a burnt winding. Find it open with a meter; a wire across it is forgotten there.',
    source: CUSTOM,
  },
  pressureTest: {
    detail:
      'Two-gauge regulator and a fixed relief downstream, always. Dry nitrogen only: never oxygen, acetylene or shop air. Raise it in steps to no more than the lowest of low-side rating, component rating and nameplate; isolate controls and transducers. The figures for one refrigerant are no default for another.',
    source:
      'manualshive.com, a transport refrigeration maker’s service manual, page 137; hvactm.ca, unit 2',
  },
  testAboveRating: {
    detail:
      'The lowest of low-side rating, component rating and nameplate is the most a test may reach. Let it down slowly, and look over what it has loaded before it is trusted.',
    source: 'hvactm.ca, unit 2, for the limit; the rest is common practice',
  },
  useMicronGauge: {
    detail:
      'All of a deep vacuum lies within the last half inch of a dial. Read an electronic gauge at the far end, with the pump valved off.',
    source: 'arithmetic; manualarchiveguide.com, a transport maker’s manual, page 36',
  },
  iceInSystem: {
    detail:
      'Below the triple point water is ice and leaves only by subliming. Break the vacuum with dry nitrogen, warm the cold spots without a flame, and evacuate again.',
    source: 'IAPWS R14-08; triple evacuation: ref-wiki.com, evacuation',
  },
  noPowerInVacuum: {
    detail:
      'In a vacuum the windings flash over at a fraction of their rating: no insulation tester, no start, until it is charged.',
    source: 'from memory of compressor makers’ manuals',
  },
  recoverFirst: {
    detail:
      'Reach the level and wait a few minutes with the machine off: it must hold. A leaking system is recovered as far as it can be without drawing in air.',
    source: '40 CFR 82.156, read 2026-11: verify with the authority; holding: common practice',
  },
  scaleTooCoarse: {
    detail:
      'A tenth of an ounce is nearly two percent of a small propane charge: use a one-gram scale.',
    source: 'arithmetic',
  },
  gasPoolsLow: {
    detail:
      'Sample low, ventilate low, mind pits and cellars. A detector is set at no more than a quarter of the lower flammable limit; below 19.5 % oxygen nobody stays.',
    source: 'manualslib.fr, an appliance maker’s manual, page 17; oxygen: OSHA, from memory',
  },
  dryIce: {
    detail:
      'Below 75 psia there is no liquid carbon dioxide, only vapour and dry ice. Break a vacuum and start a charge with vapour until well above that, and never let a vessel with liquid fall below it.',
    source: 'triple point by the equation of state of Span and Wagner; order: from memory',
  },
  toxicGas: {
    detail:
      'Above the immediate-danger level nobody goes in without self-contained breathing apparatus; above the short-term limit minutes count.',
    source: 'NIOSH and OSHA limits as given in mda.state.mn.us and engineeringtoolbox.com',
  },
  probeTheProduct: {
    detail:
      'Defrosts and door openings move the air by many degrees while the product hardly changes: probe the product or a simulator.',
    source: CUSTOM,
  },
  operatorDecides: {
    detail:
      'Write down when and what was read. Release or discard is decided by the operator under the local food code.',
    source: CUSTOM,
  },
  householdGuidance: {
    detail:
      'Hours for a closed refrigerator or freezer are written for homes; retail follows the local code and its emergency plan.',
    source: 'FDA emergency guidance as given by cobbanddouglaspublichealth.com',
  },
  steamBurns: {
    detail:
      'Hold the probe in the rolling water clear of the bottom, with a clamp rather than a hand.',
    source: CUSTOM,
  },
  workBeforeBaseline: {
    detail:
      'Without readings from before the work nothing shows what the work changed. Whatever is read now is read after it.',
    source: CUSTOM,
  },
  pressureLimit: {
    detail:
      'A cut-out stands below every component’s rating and below the relief valve, and above what the hottest day makes. Where both cannot be had, the condenser is at fault or too small, not the setting.',
    source:
      'limit below the relief setting: ANSI/ASHRAE Standard 15, from memory; the rest is common practice',
  },
  pullsVacuum: {
    detail:
      'Below atmosphere a leak takes in air and water instead of showing itself. Many hermetics and scrolls may not be pulled into a vacuum.',
    source: CUSTOM,
  },
  coldStart: {
    detail:
      'An outdoor unit is as cold as the weather. Use a thermostat with pump-down, or a cut-in below what the coldest day leaves.',
    source: CUSTOM,
  },
  tripsLate: {
    detail:
      'Check the gauge first, then replace or recalibrate the control, and prove that it opens.',
    source: CUSTOM,
  },
  coldHeadStarves: {
    detail:
      'Without a head pressure control, cold air pulls head below what the expansion valve was sized for: the coil starves though nothing is broken. A low head and a high superheat are then the weather, not the charge.',
    source: 'coloradocomfortair.com, low head pressure',
  },
  resetAgain: {
    detail:
      'A manual-reset safety is made so that somebody looks: every reset runs the unit again at the pressure or heat that opened it. With the cause found, reset it once and watch the gauge until it has settled.',
    source: CUSTOM,
  },
  winterCharge: {
    detail:
      'With the valve holding head in cold weather, a high split and a high subcooling are the valve at work, not an overcharge.',
    source: CUSTOM,
  },
  zeroProvesNothing: {
    detail:
      'With no supply, or with another switch open in the same path, an open switch shows nothing across it either.',
    source:
      'machineryequipmentonline.com, the hopscotch method: another open device hides this one',
  },
  notProvenDead: {
    detail:
      'A reading to ground says what stands between that point and ground, no more: both sides of a single open leg can show the same volts, and a floating point can show none.',
    source:
      'hvacrassets.net, electric troubleshooting page: 115 V to ground on both sides of a break',
  },
  ghostVoltage: {
    detail:
      'A contact that drops a few percent under load is burnt; a volt or two through a long parallel wire is a ghost and goes away under a low-impedance meter.',
    source: CUSTOM,
  },
  outsideNameplateVoltage: {
    detail:
      'Measure at the motor’s terminals, at the disconnect and at the panel, standing still and starting: a drop shows where it is lost.',
    source:
      'NEMA MG 1: ten percent either way, as cited by ja.scribd.com/document/161814729; the order of work is common practice',
  },
  deadAndDisconnected: {
    detail:
      'A meter on ohms in a live circuit is destroyed and so may be its holder. A damaged terminal can blow out with burning oil: never with the cover off under power.',
    source:
      'aircold.fergusonhvac.com, compressor common, run, start; manualslib.com/manual/806562, a compressor maker’s service handbook',
  },
  overloadMayBeOpen: {
    detail:
      'Common open to both others, with run to start reading normally, is the overload in the common leg. A shell too hot to touch says the same.',
    source:
      'aircold.fergusonhvac.com, compressor common, run, start; an ice machine maker’s manual 80-0111-9, page 176',
  },
  sumDoesNotAdd: {
    detail:
      'Run to start goes through both windings in series, so it is the sum of the other two within what the meter resolves.',
    source: 'aircold.fergusonhvac.com, compressor common, run, start',
  },
  capacitorCharge: {
    detail:
      'Five time constants leave less than one part in a hundred; then measure, because a bleed can be broken. A short circuit welds and throws metal.',
    source:
      'five time constants: electriciantraining.tpub.com/14179, NEETS module; never by shorting: common practice',
  },
  insulationTest: {
    detail:
      'In a vacuum the terminals arc over at a fraction of the test voltage, and the tester’s voltage destroys electronics.',
    source: 'electronics: manualsdump.com, a chiller maker’s 17-19EX page 141; vacuum: from memory',
  },
  groundFault: {
    detail: 'Tag it, tape the leads, and replace it; clean the system up after a burn-out.',
    source: 'manualslib.com/manual/806562, a compressor maker’s service handbook, page 49',
  },
  notRunningAmps: {
    detail:
      'Compare amps with the maker’s curve at the suction, the head and the voltage it has now.',
    source: 'achrnews.com, Determining compressor amperage ratings',
  },
  fanStaysLive: {
    detail:
      'Disable the compressor at its own contactor coil or leads, keep hands and clothes off the fan, and treat the panel as live.',
    source: CUSTOM,
  },
  hotSurface: {
    detail:
      'A discharge line stands above 140 °F in ordinary running and above 200 °F in a hot one.',
    source: 'burns above 140 °F: from memory',
  },
  liquidBurns: {
    detail:
      'Liquid refrigerant boils on the skin far below freezing. Thaw a burn with lukewarm water, do not rub it, and see a doctor.',
    source: 'from memory of safety data sheets',
  },
  liquidToCompressor: {
    detail:
      'Crack the valve, wait, crack it again. A change of note or a sweating shell is liquid.',
    source: CUSTOM,
  },
  lockOut: {
    detail:
      'Know every source, tell people, shut down, isolate, lock and tag, let stored energy go (capacitors, springs, pressure, heat), then verify. A cord in your own hand needs no lock.',
    source: '29 CFR 1910.147 and 1910.333',
  },
  frontSeatedDischarge: {
    detail:
      'Turned in, the stem shuts the line: there is no relief between the piston and that valve, and the high-pressure control may be cut off too. See it open before power.',
    source:
      'valve positions: manualarchiveguide.com, 69NT40-541-306, page 89; the danger from memory of makers’ manuals',
  },
  airDisplaced: {
    detail:
      'Refrigerant and nitrogen both push the air out; most refrigerants pool low, in pits and walk-ins. Below 19.5 % oxygen nobody stays. Prop the door, run the fans, and have somebody outside.',
    source: 'hpac.com, Applying refrigerant codes; 19.5 %: OSHA, from memory',
  },
  compressorTerminals: {
    detail:
      'A damaged terminal can vent burning oil. Read ohms at the far ends of the leads where you can. A grounded compressor stays off.',
    source: 'manualslib.com/manual/806562, a compressor maker’s service handbook, page 49',
  },
  openUnderVacuum: {
    detail: 'Break it with dry nitrogen or the unit’s own vapour to a slight pressure.',
    source: 'airconditioningmanuals.tpub.com, TM 5-4120-364-13',
  },
  heatedCylinder: {
    detail:
      'A cylinder is never warmed above 125 °F; one that is full of liquid bursts long before it is hot to the hand.',
    source: '49 CFR 173.304a for liquid full; 125 °F: from memory',
  },
  bypassedSafety: {
    detail:
      'For a test only, with the gauge in sight and a hand on the disconnect. It stays on the list of what is left open until you tell that it is off.',
    source: CUSTOM,
  },
  neverOxygen: {
    detail:
      'Oil and oxygen under pressure go off without a flame. The regulator’s thread is made so that it does not fit: never adapt it.',
    source:
      'manualshive.com, a transport refrigeration maker’s service manual, page 137; hvactm.ca, unit 2',
  },
  trappedLiquid: {
    detail:
      'A closed king valve with a closed solenoid after it traps liquid. Never leave a pumped-down receiver or condenser without room above the liquid.',
    source: 'a condensing-unit maker’s manual; common practice',
  },
};
