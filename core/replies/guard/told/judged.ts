import type { JudgedFindings } from '../../../advice/judged/judged-verdict.ts';
import type { Members } from '../../../advice/by-kind.ts';
import type { Known } from '../../../advice/verdict.ts';
import { JUDGED, type JudgedId } from '../../../terms/judged.ts';
import {
  COMPRESSOR_CURRENT,
  CURRENT_IMBALANCE,
  INSULATION,
  RUN_CAPACITOR,
  START_CAPACITOR,
  SUPPLY_VOLTAGE,
  VOLTAGE_IMBALANCE,
  WINDINGS,
} from './judged-electrical.ts';
import {
  CONTROL,
  DISCHARGE_LINE,
  FOOD_JUDGED,
  HEATER,
  LEAK_RATE,
  NON_CONDENSABLES,
  PRESSURE_JUDGED,
} from './judged-rest.ts';
import { amountSlot, wordSlot, type Told, type ToldSlot, type Ways } from './told.ts';

type JudgedWays = { readonly [J in JudgedId]: Record<JudgedFindings[J], Ways> };

const WAYS: JudgedWays = {
  runCapacitor: RUN_CAPACITOR,
  startCapacitor: START_CAPACITOR,
  windings: WINDINGS,
  insulation: INSULATION,
  compressorCurrent: COMPRESSOR_CURRENT,
  supplyVoltage: SUPPLY_VOLTAGE,
  voltageImbalance: VOLTAGE_IMBALANCE,
  currentImbalance: CURRENT_IMBALANCE,
  nonCondensables: NON_CONDENSABLES,
  food: FOOD_JUDGED,
  pressureTest: PRESSURE_JUDGED,
  highPressureSwitch: CONTROL,
  lowPressureSwitch: CONTROL,
  dischargeLine: DISCHARGE_LINE,
  leakRate: LEAK_RATE,
  defrostHeater: HEATER,
  doorHeater: HEATER,
};

type Judged = Members<Known, 'answer'>['judged'];
type Figures = Pick<Judged, 'value' | 'unit' | 'limit' | 'read'>;

export function judgedTold<J extends JudgedId>(
  known: { readonly about: J; readonly finding: JudgedFindings[J] } & Figures,
): Told {
  const { about, finding, limit, read } = known;
  const ways: Record<JudgedFindings[J], Ways> = WAYS[about];
  return {
    ...ways[finding],
    fields: [about, finding],
    slots: {
      about: wordSlot(JUDGED[about]),
      value: valueSlot(known),
      ...(limit ? { limit: amountSlot(limit) } : {}),
      ...(read ? { read: amountSlot(read) } : {}),
    },
  };
}

const valueSlot = ({ value, unit }: Figures): ToldSlot =>
  value === null ? wordSlot('over the meter’s limit') : amountSlot({ value, unit });
