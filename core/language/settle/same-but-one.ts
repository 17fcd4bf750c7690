import type {
  Command,
  Fact,
  Finding,
  Reading,
  Recommendation,
  Utterance,
  Work,
} from '../utterance.ts';
import { meaningOf } from './meaning.ts';

/** One thing that was told, of the kinds that few words put right. */
export type ToldItem =
  | { readonly of: 'finding'; readonly finding: Finding }
  | { readonly of: 'work'; readonly work: Work }
  | { readonly of: 'reading'; readonly reading: Reading }
  | { readonly of: 'fact'; readonly fact: Fact }
  | { readonly of: 'recommendation'; readonly recommendation: Recommendation }
  | { readonly of: 'command'; readonly command: Command };

export interface Changed {
  readonly was: ToldItem;
  readonly is: ToldItem;
}

/** All that can be put right, in one order. */
const toldIn = (said: Utterance): readonly ToldItem[] => [
  ...said.readings.map((reading): ToldItem => ({ of: 'reading', reading })),
  ...said.facts.map((fact): ToldItem => ({ of: 'fact', fact })),
  ...said.recommendations.map((each): ToldItem => ({ of: 'recommendation', recommendation: each })),
  ...said.commands.map((command): ToldItem => ({ of: 'command', command })),
];

/** The rest, which must stay as it was. */
const restOf = (said: Utterance): string =>
  meaningOf({ ...said, text: '', readings: [], facts: [], recommendations: [], commands: [] });

/** The one thing that is told otherwise, everything else being told as before; `null` where it is none, or more. */
export function changedIn(before: Utterance, after: Utterance): Changed | null {
  if (restOf(before) !== restOf(after)) return null;
  const [were, are] = [toldIn(before), toldIn(after)];
  const others = were.flatMap((was, at): readonly Changed[] => {
    const is = are[at];
    return is === undefined || bare(was) === bare(is) ? [] : [{ was, is }];
  });
  const [only, ...more] = others;
  if (were.length !== are.length || only === undefined || more.length > 0) return null;
  return sameKind(only.was, only.is) && !isSameValue(only) ? only : null;
}

/** "About forty" for "forty" puts no number right. */
const isSameValue = ({ was, is }: Changed): boolean =>
  was.of === 'reading' && is.of === 'reading' && was.reading.value === is.reading.value;

/** Of one quantity at one place, one line of a plate, one job: only how much, when or which is another. */
export const sameKind = (one: ToldItem, other: ToldItem): boolean => kindOf(one) === kindOf(other);

function kindOf(told: ToldItem): string {
  switch (told.of) {
    case 'reading': {
      const { quantity, place, event = '', when = '' } = told.reading;
      return ['reading', quantity, place, event, when].join(' ');
    }
    case 'fact':
      return told.fact.fact === 'nameplate'
        ? `nameplate ${told.fact.item}`
        : `${told.fact.fact} ${keysOf(told.fact)}`;
    case 'recommendation': {
      const { do: what, part, called = '', reason = '' } = told.recommendation;
      return [what, part, called, reason, keysOf(told.recommendation)].join(' ');
    }
    case 'finding':
      return `finding ${told.finding.part}`;
    case 'work':
      return `work ${told.work.did} ${told.work.part ?? ''}`;
    case 'command':
      return told.command.do === 'timer'
        ? `timer ${told.command.about ?? ''}`
        : JSON.stringify(told.command);
  }
}

const keysOf = (told: object): string => Object.keys(told).toSorted().join(' ');

const bare = (told: ToldItem): string =>
  JSON.stringify(told, (key, value: unknown) => (key === 'words' ? undefined : value));
