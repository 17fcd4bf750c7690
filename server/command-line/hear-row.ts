import type { Rejection } from '../../core/hearing/hearing.ts';
import type { Alternative } from '../../core/language/choose-understanding.ts';
import type { Context } from '../../core/language/context.ts';
import { meaningOf } from '../../core/language/settle/meaning.ts';
import { understand } from '../../core/language/understand.ts';
import type { Utterance } from '../../core/language/utterance.ts';
import { readingSaid } from '../../core/replies/readings.ts';
import { takeIn, type TakenIn } from '../../core/turn/take-in.ts';
import type { UnitHabit } from '../../core/units/shown-unit.ts';
import { alternativesToActOn, type Recording } from './player.ts';

/** What the page does with what was heard. */
type Doing = 'takes' | 'asks' | 'saysAgain';

/** What hear tells of one sentence, or of a recording that gave none. */
export type HeardRow = HeardSentence | { readonly file: string; readonly error: string };

export interface HeardSentence {
  readonly file: string;
  /** Where in the file a voice was noticed, and where the wait after it was over. */
  readonly startS?: number;
  readonly endS?: number;
  readonly words: string;
  readonly alternatives: readonly Alternative[];
  readonly confidence: number;
  readonly because?: string;
  readonly rejected?: Rejection;
  readonly snrDb: number | null;
  readonly does: Doing;
  readonly checked: readonly object[];
  readonly understood: Utterance;
}

export function toRow(file: string, recording: Recording, context: Context): HeardRow {
  if (recording.kind === 'unreadable') return { file, error: recording.why };
  const { alternatives, rejected, noise, span } = recording;
  const takenIn = takeIn(alternativesToActOn(recording), context, []);
  const { choice, checked } = takenIn;
  const taken = choice?.chosen ?? alternatives[0];
  return {
    file,
    ...(span === undefined ? {} : { startS: span.noticedMs / 1000, endS: span.toMs / 1000 }),
    words: taken?.words ?? '',
    alternatives,
    confidence: taken?.confidence ?? 0,
    ...(choice?.chosen ? { because: choice.because } : {}),
    ...(rejected === null ? {} : { rejected }),
    snrDb: noise.snrDb === null ? null : Math.round(noise.snrDb * 10) / 10,
    does: whatItDoes(takenIn, context),
    checked: checked.map(({ reading: { quantity, value }, certainty, readBack, rival }) => ({
      ...{ quantity, value, certainty, readBack, rival },
    })),
    understood: choice?.chosen?.utterance ?? understand('', context),
  };
}

function whatItDoes({ choice, utterance }: TakenIn, context: Context): Doing {
  const nothing = meaningOf(understand('', context));
  const heard = choice?.chosen?.utterance;
  if (heard === undefined) return 'saysAgain';
  if (utterance.doubts.length + utterance.unclaimed.length > 0) return 'asks';
  return meaningOf(utterance) === nothing && meaningOf(heard) !== nothing ? 'saysAgain' : 'takes';
}

const DOING: Readonly<Record<Doing, string>> = {
  takes: 'takes',
  asks: 'asks',
  saysAgain: 'says again',
};

/** The same for a reader: "1:07  takes  head one ninety two: head 192 psi". */
export function toLine(row: HeardRow, units: UnitHabit): string {
  if ('error' in row) return row.error;
  const { startS = 0, does, words, understood } = row;
  const readings = does === 'saysAgain' ? [] : understood.readings;
  const values = readings.map((reading) => readingSaid(reading, units).text).join(', ');
  const said = [words || 'nothing of ours', values].filter((part) => part !== '');
  return `${clock(startS).padStart(6)}  ${DOING[does].padEnd(10)}  ${said.join(': ')}`;
}

const clock = (seconds: number): string =>
  `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, '0')}`;
