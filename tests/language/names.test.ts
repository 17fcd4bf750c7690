import { describe, expect, it } from 'vitest';
import { readCorpus } from '../corpus/corpus.ts';

/** The names that others read our objects by, written here by hand: the language's own tables are not asked. */
const NAMES = {
  quantities:
    'headPressure suctionPressure condensingTemp evaporatingTemp ambientTemp condenserLeavingAirTemp outdoorTemp boxTemp supplyAirTemp productTemp setpointTemp suctionLineTemp liquidLineTemp dischargeLineTemp superheat subcooling highCutoutPressure lowCutoutPressure lowCutinPressure voltage current resistance insulationResistance capacitance power refrigerantAdded refrigerantRecovered refrigerantCharge cylinderWeight vacuum testPressure enteringWaterTemp leavingWaterTemp split temperatureDifference compressionRatio',
  units: 'psi inHg kPa bar degF degC dF dC V A ohm Mohm uF W oz lb g kg micron',
  places:
    '@highPressureSwitch @lowPressureSwitch @contactor @lineSide @loadSide @compressor @condenserFan @evaporatorFan @temperatureControl @defrostTimer @overload @startRelay @startCapacitor @runCapacitor @liquidLineSolenoid @doorSwitch @commonStart @commonRun @runStart @commonGround @startGround @runGround @lineOne @lineTwo @lineThree @lineOneTwo @lineTwoThree @lineOneThree',
  facts:
    'refrigerant metering sightGlass equipment nameplate unit site txv capTube eev orifice clear bubbling empty reachIn walkInCooler walkInFreezer prepTable displayCase iceMachine condensingUnit remote selfContained doors=2',
  states:
    'dirty plugged iced notRunning running tripped open closed leaking hot noisy loose burnt missing failed ok wet oily warm cold shortCycling hunting unresolved',
  work: 'clean reset replace adjust repair tighten remove add recover evacuate pressureTest leakCheck brush wash defrost restore isolate order comeBack',
  questions:
    '?target ?value ?compare ?saturation ?margin ?switch ?causes ?nextCheck ?limit ?safety ?eta ?before ?beforeAfter ?readback ?note ?working ?trend ?timeLeft ?history',
  commands:
    '!timer !undo !amend !markBefore !markAfter !repeat !pause !resume !yes !no !newVisit !finish !help',
  marks: 'hedged OL event=tripped when=arrival after=5min gas=65degF of=R-134a',
  doubts: '(outOfRange) (againstSibling) (noUnit) (hearsay)',
} as const;

const PARTS =
  'compressor condenser condenserFan condenserFanMotor evaporator evaporatorFan evaporatorFanMotor highPressureSwitch lowPressureSwitch temperatureControl controller contactor startRelay startCapacitor runCapacitor overload defrostTimer defrostHeater defrostTermination drainPan drainLine doorGasket door doorHeater doorSwitch hinge light thermometer sensor expansionValve expansionValveBulb capillaryTube filterDrier sightGlass receiver accumulator oilSeparator liquidLine suctionLine dischargeLine liquidLineSolenoid headPressureValve evaporatorPressureRegulator crankcaseHeater serviceValve kingValve accessFitting joint hose wiring terminal fuse breaker disconnect plug transformer fanBlade filter product';

const corpus = readCorpus();
const meant = new Set(corpus.flatMap((line) => line.meant.split(/[ ;]/)));
/** What stands behind "finding", "work clean" or "recommend replace": a place or a question can have the same name. */
const parts = new Set(
  corpus.flatMap((line) =>
    [...line.meant.matchAll(/(?:finding|work \w+|recommend \w+) (\w+)/g)].map(([, part]) => part),
  ),
);

describe('the corpus', () => {
  it.each(Object.entries(NAMES))('says every name at least once: %s', (_, names) => {
    expect(names.split(' ').filter((name) => !meant.has(name))).toEqual([]);
  });

  it('finds, mends or recommends something of every part', () => {
    expect(PARTS.split(' ').filter((part) => !parts.has(part))).toEqual([]);
  });
});
