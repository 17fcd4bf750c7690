import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import type { Context } from '../../core/language/context.ts';
import { namesIn, NO_NAMES } from '../../core/language/names/known-names.ts';
import { QUANTITIES } from '../../core/terms/quantities.ts';
import type { QuantityId } from '../../core/terms/quantities.ts';
import { REFRIGERANTS } from '../../core/terms/refrigerants.ts';
import type { RefrigerantId } from '../../core/terms/refrigerants.ts';
import type { UnitSystem } from '../../core/units/units.ts';
import { parseOptions, unusable } from './options.ts';

/** The options that `understand` and `hear` share: what is settled before a sentence is read. */
const OPTIONS = {
  refrigerant: { type: 'string' },
  units: { type: 'string' },
  asked: { type: 'string' },
  parts: { type: 'string' },
} as const;

export const LANGUAGE_OPTIONS_USAGE = `  --refrigerant NAME   the refrigerant in the unit, as R-134a
  --units us|si        what a bare number means: us unless given
  --asked QUANTITY     the quantity just asked for, as headPressure: a bare number answers it
  --parts NAMES        parts by names of their own, as "Copperline 012 contactor, Bellweir relay"`;

export type LanguageCall =
  | { readonly kind: 'call'; readonly context: Context; readonly words: readonly string[] }
  | { readonly kind: 'unusable'; readonly why: string };

export interface UnderstandingOptions {
  readonly explain?: boolean;
  readonly grammar?: string | undefined;
}

export function parseUnderstandingOptions(
  args: readonly string[],
): LanguageCall & UnderstandingOptions {
  const parsed = parseOptions(args, {
    ...OPTIONS,
    explain: { type: 'boolean', default: false },
    grammar: { type: 'string' },
  });
  if (parsed.kind === 'unusable') return parsed;
  const { explain, grammar } = parsed.values;
  return { ...languageCall(parsed), explain, grammar };
}

export interface HearingOptions {
  readonly engine?: string | undefined;
  readonly model?: string | undefined;
  readonly voice?: string | undefined;
  readonly whole?: boolean;
  readonly lines?: boolean;
}

export function parseHearingOptions(args: readonly string[]): LanguageCall & HearingOptions {
  const parsed = parseOptions(args, {
    ...OPTIONS,
    engine: { type: 'string' },
    model: { type: 'string' },
    voice: { type: 'string' },
    whole: { type: 'boolean', default: false },
    lines: { type: 'boolean', default: false },
  });
  if (parsed.kind === 'unusable') return parsed;
  const { engine, model, voice, whole, lines } = parsed.values;
  return { ...languageCall(parsed), engine, model, voice, whole, lines };
}

/** What may be said next, by what was just asked for. */
export const expectation = ({ asked }: Context): 'anything' | 'number' =>
  asked === null ? 'anything' : 'number';

interface ParsedOptions {
  readonly values: {
    readonly refrigerant?: string | undefined;
    readonly units?: string | undefined;
    readonly asked?: string | undefined;
    readonly parts?: string | undefined;
  };
  readonly words: readonly string[];
}

function languageCall(parsed: ParsedOptions): LanguageCall {
  const { refrigerant = null, units = 'us', asked = null, parts = '' } = parsed.values;
  const known = refrigerant === null ? null : findRefrigerant(refrigerant);
  if (known === undefined) {
    return unusable(
      `--refrigerant does not know "${refrigerant}"; it knows ${REFRIGERANTS.join(' ')}`,
    );
  }
  if (!isUnitSystem(units)) return unusable(`--units takes us or si, not "${units}"`);
  if (asked !== null && !isQuantity(asked)) {
    return unusable(
      `--asked does not know "${asked}"; it knows ${Object.keys(QUANTITIES).join(' ')}`,
    );
  }
  const names = { ...NO_NAMES, parts: namesIn(parts.replaceAll(',', '\n')) };
  const context = { ...EMPTY_CONTEXT, refrigerant: known, units, asked, names };
  return { kind: 'call', context, words: parsed.words };
}

const findRefrigerant = (text: string): RefrigerantId | undefined =>
  REFRIGERANTS.find((id) => id.toLowerCase() === text.toLowerCase());

const isUnitSystem = (text: string): text is UnitSystem => text === 'us' || text === 'si';
const isQuantity = (text: string): text is QuantityId => Object.hasOwn(QUANTITIES, text);
