import type { Known } from '../../advice/verdict.ts';
import { REFRIGERANTS } from '../../terms/refrigerants.ts';
import { formatAmount, sayAmount } from '../../units/format-amount.ts';
import { unitRow } from '../../units/units.ts';
import { saidWithIt } from '../answers.ts';
import { designation } from '../designation.ts';
import { claimsOf, type Claims, type Slot } from './claims.ts';
import { toldOf } from './told/told-of.ts';
import type { Told } from './told/told.ts';

/**
 * A sentence that the guard let through, as a synthesiser should say it: "-4 inHg" is read "4 inches of
 * vacuum" and "R-134a" "R one thirty four A", whoever wrote the sentence.
 */
export function readAloud(sentence: string, verdict: Known): string {
  const claims = claimsOf(verdict);
  const told = toldOf(verdict);
  const forms = [
    ...(claims ? [...claims.slots.map(amountForm), ...designationForms(claims)] : []),
    ...(told ? toldForms(told) : []),
  ];
  const own = saidWithIt(verdict) ?? told?.tail ?? null;
  const whole = own === null ? sentence : sentence.replace(own.text, () => own.spoken);
  return forms
    .reduce(
      (text, { written, spoken }) => text.replace(written, (found) => startedAs(found, spoken)),
      whole,
    )
    .replace(/(?<![\w.])-(?=\d)/g, 'minus ');
}

interface Form {
  readonly written: RegExp;
  readonly spoken: string;
}

/** The guard takes a unit as its symbol or as its spoken words, with a space before it or without. */
function amountForm(slot: Slot): Form {
  const { digits, symbol } = formatAmount(slot);
  const { one, many } = unitRow(slot.unit).spoken;
  const units = [symbol, many, one].map(literally).join('|');
  return {
    written: new RegExp(`(?<![\\w.-])${literally(digits)} *(?:${units})(?![A-Za-z0-9])`, 'g'),
    spoken: sayAmount(slot),
  };
}

/** A list or a change may start its sentence; a number and a designation have no small letter. */
function startedAs(found: string, spoken: string): string {
  const isCapital = found.charAt(0) !== found.charAt(0).toLowerCase();
  return isCapital ? spoken.charAt(0).toUpperCase() + spoken.slice(1) : spoken;
}

/** The longest first: "up 12 psi" before the "12 psi" of another slot. */
function toldForms({ slots }: Told): readonly Form[] {
  return Object.values(slots)
    .filter(({ text, spoken }) => text !== spoken)
    .toSorted((one, other) => other.text.length - one.text.length)
    .map(({ text, also, spoken }) => ({
      written: new RegExp(
        `(?<![\\w.-])(?:${[text, ...also].map(literally).join('|')})(?![A-Za-z0-9])`,
        'gi',
      ),
      spoken,
    }));
}

function designationForms({ names }: Claims): readonly Form[] {
  return REFRIGERANTS.filter((id) => names.some((own) => own === id)).map((id) => ({
    written: new RegExp(`${literally(id)}(?![a-z0-9-])`, 'gi'),
    spoken: designation(id).spoken,
  }));
}

function literally(words: string): string {
  return words.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);
}
