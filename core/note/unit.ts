import type { NameplateItem } from '../language/utterance.ts';
import { figureText, weightText } from '../replies/amounts.ts';
import {
  CONDENSERS,
  CONDENSING_UNITS,
  equipmentName,
  HEAD_CONTROLS,
  HEATERS,
  METERING_DEVICES,
  PLACES,
} from '../terms/names.ts';
import { QUANTITIES, SETTINGS } from '../terms/quantities.ts';
import type { Amount } from '../units/amount.ts';
import type { VisitState } from '../visit/state.ts';
import { latestAmount } from '../visit/views.ts';
import { unitMemos } from './complaint.ts';
import { asPrinted } from './plate-letters.ts';
import { nameWritten, sentence, valueWritten } from './wording.ts';

export function unitLines(state: VisitState): readonly string[] {
  const { name, site, refrigerant } = state.unit;
  return [
    ...(site === null ? [] : [sentence(`Site: ${site}`)]),
    ...(name === null ? [] : [sentence(`Unit: ${name}`)]),
    ...kindLines(state),
    refrigerant === null ? 'The refrigerant was not stated.' : `Refrigerant ${refrigerant}.`,
    ...nameplateLines(state),
    ...heaterLines(state),
    ...settingLines(state),
    ...new Set(unitMemos(state).map(({ memo }) => sentence(asPrinted(memo)))),
  ];
}

function kindLines({ unit }: VisitState): readonly string[] {
  const { name, equipment, freezer, doors, metering, condenser, condensingUnit, headControl } =
    unit;
  // A remote condensing unit has its condenser with it.
  const isSaid = condenser === 'remote' && condensingUnit === 'remote';
  const counted = doors === null ? '' : `${doors}-door `;
  const isCalledSo =
    equipment !== null && doors === null && name === equipmentName(equipment, freezer);
  const kind = [
    ...(equipment === null || isCalledSo ? [] : [`${counted}${equipmentName(equipment, freezer)}`]),
    ...(condensingUnit === null ? [] : [CONDENSING_UNITS[condensingUnit]]),
    ...(metering === null ? [] : [METERING_DEVICES[metering]]),
    ...(condenser === null || isSaid ? [] : [CONDENSERS[condenser]]),
    ...(headControl === null ? [] : [HEAD_CONTROLS[headControl]]),
  ];
  return kind.length === 0 ? [] : [sentence(kind.join(', '))];
}

const ITEMS: Record<NameplateItem, string> = {
  charge: 'charge',
  voltage: 'voltage',
  upperVoltage: 'or',
  ratedLoadAmps: 'rated load',
  lockedRotorAmps: 'locked rotor',
  minimumCircuitAmps: 'minimum circuit',
  maximumFuse: 'maximum fuse',
  highSide: 'high side',
  lowSide: 'low side',
};

const isItem = (id: string): id is NameplateItem => id in ITEMS;

/** As plates print it and as scales show it. */
function amountText(amount: Amount): string {
  const [plain, weight] = [figureText(amount), weightText(amount)];
  return plain === weight ? plain : `${plain} (${weight})`;
}

/** Told with its volts: "two oh eight to two thirty, three phase". */
function phasesOf({ history }: VisitState): readonly string[] {
  const told = history.flatMap((event) => {
    if (event.type !== 'factStated' || event.fact.fact !== 'nameplate') return [];
    return /\b(three|single|3|1)[ -]phase\b/i.exec(event.fact.words)?.slice(1, 2) ?? [];
  });
  const last = told.at(-1)?.toLowerCase();
  if (last === undefined) return [];
  return [last === 'three' || last === '3' ? 'three phase' : 'single phase'];
}

function nameplateLines(state: VisitState): readonly string[] {
  const { nameplate } = state.unit;
  const items = Object.keys(ITEMS)
    .filter(isItem)
    .flatMap((item) => {
      const amount = nameplate[item];
      return amount ? [`${ITEMS[item]} ${amountText(amount)}`] : [];
    });
  const all = items.length === 0 ? [] : [...items, ...phasesOf(state)];
  return all.length === 0 ? [] : [sentence(`Nameplate: ${all.join(', ')}`)];
}

const heaterLines = ({ unit: { heaters } }: VisitState): readonly string[] =>
  HEATERS.flatMap((heater) => {
    const amount = heaters[heater];
    return amount ? [sentence(`${PLACES[heater]} rated ${figureText(amount)}`)] : [];
  });

function settingLines(state: VisitState): readonly string[] {
  const items = SETTINGS.flatMap((quantity) => {
    const amount = latestAmount(state, quantity);
    if (amount) return [`${QUANTITIES[quantity].name} ${figureText(amount)}`];
    // "Marked 189 to 227": a start capacitor is printed with both ends.
    const band = state.readings.findLast(({ reading }) => reading.quantity === quantity)?.reading;
    return band?.low === undefined ? [] : [`${nameWritten(band)} ${valueWritten(band)}`];
  });
  return items.length === 0 ? [] : [sentence(`Settings: ${items.join(', ')}`)];
}
