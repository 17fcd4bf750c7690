import { readdirSync, readFileSync } from 'node:fs';
import { type Context, EMPTY_CONTEXT } from '../../core/language/context.ts';
import {
  equipmentId,
  partId,
  placeId,
  quantityId,
  refrigerantId,
  stateId,
} from '../../core/language/slots.ts';

/** A line of a table: what is said, what it means in short form, and what was settled before. */
export interface CorpusLine {
  readonly said: string;
  readonly meant: string;
  readonly context: Context;
  /** Table and line, to find it by. */
  readonly where: string;
}

const FOLDER = new URL('.', import.meta.url);

export function readCorpus(): readonly CorpusLine[] {
  const tables = readdirSync(FOLDER).filter((name) => name.endsWith('.tsv'));
  return tables.flatMap(readTable);
}

/** One table, by its path from this folder. */
export const readTable = (table: string): readonly CorpusLine[] =>
  readFileSync(new URL(table, FOLDER), 'utf8')
    .split('\n')
    .flatMap((line, index) =>
      line === '' || line.startsWith('#') ? [] : [readLine(line, `${table}:${index + 1}`)],
    );

function readLine(line: string, where: string): CorpusLine {
  const [said, meant, settled = ''] = line.split('\t');
  if (said === undefined || meant === undefined) throw new Error(`${where} lacks a tab`);
  const pairs = settled.split(' ').filter((pair) => pair !== '');
  const context = pairs.reduce((before, pair) => settle(before, pair, where), EMPTY_CONTEXT);
  return { said, meant, context, where };
}

function settle(context: Context, pair: string, where: string): Context {
  const [key = '', value = ''] = pair.split('=');
  switch (key) {
    case 'units':
      return { ...context, units: value === 'si' ? 'si' : 'us' };
    case 'refrigerant':
      return { ...context, refrigerant: refrigerantId(value) };
    case 'equipment':
      return { ...context, equipment: equipmentId(value) };
    case 'asked':
      return { ...context, asked: quantityId(value) };
    case 'askedAbout':
      return { ...context, askedAbout: quantityId(value) };
    case 'askedPlace':
      return { ...context, askedPlace: placeId(value) };
    case 'lastQuantity':
      return { ...context, lastQuantity: quantityId(value) };
    case 'isAtCondensingUnit':
      return { ...context, isAtCondensingUnit: value === 'yes' };
    case 'onlyFan':
      return { ...context, onlyFan: partId(value) };
    case 'lastPart':
      return { ...context, lastPart: partId(value) };
    case 'foundBad':
      return { ...context, foundBad: partId(value) };
    case 'lastFan':
      return { ...context, lastFan: partId(value) };
    case 'toReplace':
      return { ...context, toReplace: partId(value) };
    case 'dirtyCoil':
      return { ...context, dirtyCoil: partId(value) };
    case 'openFan':
      return { ...context, openFan: stateId(value) };
    case 'lastPlace':
      return { ...context, lastPlace: placeId(value) };
    case 'unitless': {
      const [quantity, amount] = value.split(':');
      const known = quantityId(quantity);
      return { ...context, unitless: known && { quantity: known, value: Number(amount) } };
    }
    case 'open':
      return { ...context, openNumber: Number(value) };
    case 'asksYes':
      return { ...context, asksYes: value === 'yes' };
    case 'stepping':
      return { ...context, stepping: value === 'yes' };
    case 'head':
      return { ...context, headPressure: { value: Number(value), unit: 'psi' } };
    case 'suction':
      return { ...context, suctionPressure: { value: Number(value), unit: 'psi' } };
    case 'workBegun':
      return { ...context, workBegun: value === 'yes' };
    case 'plateCharge':
      return { ...context, plateCharge: { value: Number(value), unit: 'oz' } };
    case 'turnedTo': {
      const [words = '', part] = value.split(':');
      return { ...context, turnedTo: { words: words.replaceAll('_', ' '), part: partId(part) } };
    }
    case 'scaleShows':
      return {
        ...context,
        scaleShows: {
          unit: value.startsWith('kg') ? 'kg' : 'lb',
          tenths: value.endsWith('tenths'),
        },
      };
    case 'weighsInOunces':
      return { ...context, weighsInOunces: value === 'yes' };
    case 'holding': {
      const [quantity, amount] = value.split(':');
      const isTest = quantity === 'testPressure' || quantity === 'vacuum';
      return { ...context, holding: isTest ? { quantity, value: Number(amount) } : null };
    }
    case 'cylinderLost':
      return { ...context, cylinderLost: Number(value) };
    case 'movedLast': {
      const known = quantityId(value);
      const isMoved = known === 'refrigerantAdded' || known === 'refrigerantRecovered';
      return { ...context, movedLast: isMoved ? { quantity: known, unit: 'oz' } : null };
    }
    case 'powerIsOff':
      return { ...context, powerIsOff: value === 'yes' };
    case 'timing':
      return { ...context, timing: value === 'yes' };
    default:
      throw new Error(`${where} settles ${key}, which no context holds`);
  }
}
