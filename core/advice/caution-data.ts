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
    detail: 'Worked by the ideal gas law; real nitrogen differs by a little more at high pressure.',
    source: 'comparison with the equation of state of nitrogen',
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
  workBeforeBaseline: {
    detail:
      'Without readings from before the work nothing shows what the work changed. Whatever is read now is read after it.',
    source: CUSTOM,
  },
};
