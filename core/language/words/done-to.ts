import type { PartId, WorkKindId } from '../../terms/names.ts';

/** Blown, hosed and brushed. */
const OPEN_TO_AIR: readonly PartId[] = [
  ...(['condenser', 'evaporator', 'condenserFan', 'evaporatorFan', 'fan', 'fanBlade'] as const),
  ...(['condenserFanMotor', 'evaporatorFanMotor', 'drainLine', 'drainPan', 'filter'] as const),
  ...(['capillaryTube', 'expansionValve', 'liquidLine', 'suctionLine', 'filterDrier'] as const),
  ...(['accessFitting', 'serviceValve', 'compressor', 'panel', 'hose'] as const),
];

/** Wiped, scraped and polished, too. */
const WIPED: readonly PartId[] = [
  ...OPEN_TO_AIR,
  ...(['doorGasket', 'door', 'contactor', 'terminal', 'sensor', 'sightGlass', 'hinge'] as const),
  ...(['light', 'thermometer', 'wiring', 'joint', 'plug', 'doorSwitch', 'gauges'] as const),
];

const BY_AIR_OR_WATER = /\b(?:bl[eo]w|vacuum|hose|rins|spray|flush|snake|wash|brush)/i;

/** What has a dial, a stem or a menu: "so I set it for every six hours". */
const SETTABLE: readonly PartId[] = [
  ...(['temperatureControl', 'controller', 'defrostTimer', 'defrostTermination'] as const),
  ...(['highPressureSwitch', 'lowPressureSwitch', 'fanControl', 'oilPressureControl'] as const),
  ...(['expansionValve', 'headPressureValve', 'evaporatorPressureRegulator'] as const),
  ...(['crankcaseRegulator', 'waterValve', 'floatSwitch', 'binControl', 'delayRelay'] as const),
  ...(['phaseMonitor', 'speedDrive', 'thermometer', 'dischargeThermostat', 'overload'] as const),
];
const SET = /\bset\b/i;

/** What was plugged in the wrong way round: "swapped them and now it reads right". */
const PLUGGED_IN: readonly PartId[] = ['sensor', 'wiring'];
const SWAPPED_THEM = /\bswapped (?:them|'?em)$/i;

/** What is brazed in, and not mended so: "brazed it, nitrogen flowing" is how the new one was put in. */
const BRAZED_IN: readonly PartId[] = [
  ...(['filterDrier', 'compressor', 'sightGlass', 'receiver', 'accumulator', 'strainer'] as const),
  ...(['expansionValve', 'liquidLineSolenoid', 'oilSeparator', 'checkValve'] as const),
];
const BRAZED = /\b(?:brazed|soldered|sweated|welded)\b/i;

/** Whether that is done to such a part: nobody hoses a relay down, nor sets a sensor, so "it" was something else. */
export function isDoneTo(
  part: PartId,
  { did, words }: { readonly did: WorkKindId; readonly words: string },
): boolean {
  if (did === 'replace' && SWAPPED_THEM.test(words)) return !PLUGGED_IN.includes(part);
  if (did === 'repair' && BRAZED.test(words)) return !BRAZED_IN.includes(part);
  if (did === 'adjust' && SET.test(words)) return SETTABLE.includes(part);
  if (did !== 'clean' && did !== 'wash' && did !== 'brush') return true;
  return (BY_AIR_OR_WATER.test(words) ? OPEN_TO_AIR : WIPED).includes(part);
}
