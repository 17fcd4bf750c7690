/** Catalogue entries of flammable charges, gas in a room, carbon dioxide and ammonia. */
import { fromBase } from '../units/convert.ts';
import * as values from '../units/quantity-values.ts';
import { carbonDioxide, carbonDioxideFormula } from './carbon-dioxide.ts';
import {
  answer,
  both,
  GAUGE,
  plain,
  refrigerantOf,
  temperatureIfGiven,
} from './catalogue-entry.ts';
import type { Entry } from './catalogue-entry.ts';
import { choiceOf, needBase, needChoice, needPressure } from './catalogue-inputs.ts';
import { ALTITUDE, choice, counted, mass, optional, pressure } from './catalogue-keys.ts';
import { REFRIGERANT, temperature, volume } from './catalogue-keys.ts';
import { EXPOSED_GASES } from './exposure-limits.ts';
import { CABINETS, CHARGE_RULES, flammableChargeLimit } from './flammable-charge.ts';
import { flammableChargeLimitFormula } from './flammable-charge.ts';
import { gasExposure, gasExposureFormula, roomConcentration } from './gas-in-air.ts';
import { roomConcentrationFormula, shareOfAir, shareOfAirFormula } from './gas-in-air.ts';

const CONCENTRATION = { us: 'lbPerMcf', si: 'gPerM3' } as const;

const AIR: readonly Entry[] = [
  {
    formula: shareOfAirFormula,
    keys: [REFRIGERANT, counted('concentration', 'concentration', 'gPerM3')],
    units: both('ppm'),
    run: (inputs) =>
      plain(
        shareOfAir({
          refrigerant: refrigerantOf(inputs),
          concentration: values.concentration(needBase(inputs, 'concentration')),
        }),
      ),
  },
  {
    formula: roomConcentrationFormula,
    keys: [
      ...[REFRIGERANT, mass('charge'), volume('volume')],
      optional(choice('occupancy', ['ordinary', 'institutional'])),
    ],
    units: CONCENTRATION,
    run: (inputs) => {
      const found = roomConcentration({
        refrigerant: refrigerantOf(inputs),
        charge: values.mass(needBase(inputs, 'charge')),
        room: values.volume(needBase(inputs, 'volume')),
        institutional: choiceOf(inputs, 'occupancy', ['institutional']) !== undefined,
      });
      return answer(
        found,
        ({ concentration, limit, verdict, ofFlammable, otherSource, ...on }) => ({
          base: concentration,
          also: { limit },
          findings: { verdict },
          ...(ofFlammable === null
            ? {}
            : { beside: { ofLowerFlammableLimit: fromBase(ofFlammable, 'percent') } }),
          ...(otherSource === null ? {} : { otherSource }),
          ...on,
        }),
      );
    },
  },
  {
    formula: gasExposureFormula,
    keys: [choice('refrigerant', EXPOSED_GASES), counted('concentration', 'ratio', 'ppm')],
    units: both('ppm'),
    run: (inputs) => {
      const found = gasExposure({
        refrigerant: needChoice(inputs, 'refrigerant', EXPOSED_GASES),
        share: values.ratio(needBase(inputs, 'concentration')),
      });
      return answer(found, ({ passed, next }) => ({
        base: (passed?.ppm ?? 0) / 1e6,
        findings: { passed: passed?.id ?? 'none', next: next?.id ?? 'none' },
        ...(passed === null ? {} : { source: passed.source, standing: passed.standing }),
      }));
    },
  },
];

const FLAMMABLE: readonly Entry[] = [
  {
    formula: flammableChargeLimitFormula,
    keys: [REFRIGERANT, choice('rule', CHARGE_RULES), choice('cabinet', CABINETS)],
    units: both('g'),
    run: (inputs) => {
      const found = flammableChargeLimit({
        refrigerant: refrigerantOf(inputs),
        rule: needChoice(inputs, 'rule', CHARGE_RULES),
        cabinet: needChoice(inputs, 'cabinet', CABINETS),
      });
      return answer(found, ({ limit, ...on }) => ({ base: limit, ...on }));
    },
  },
];

const CARBON_DIOXIDE: readonly Entry[] = [
  {
    formula: carbonDioxideFormula,
    keys: [pressure('pressure'), optional(temperature('temperature')), ALTITUDE],
    units: GAUGE,
    run: (inputs) => {
      const at = temperatureIfGiven(inputs, 'temperature');
      const found = carbonDioxide({
        pressure: needPressure(inputs, 'pressure'),
        ...(at === undefined ? {} : { temperature: at }),
      });
      return answer(found, ({ margin, state }) => ({ base: margin, findings: { state } }));
    },
  },
];

export const SAFETY_ENTRIES: readonly Entry[] = [...FLAMMABLE, ...AIR, ...CARBON_DIOXIDE];
