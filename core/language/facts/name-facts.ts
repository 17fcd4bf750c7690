import { knownName, type KnownNames } from '../names/known-names.ts';
import { type Frame, heardRule, type Means, type Rule, rule } from '../rule.ts';
import { equipmentFact, spanIn } from '../slots.ts';
import type { Command, Fact } from '../utterance.ts';

type NamedFact = Extract<Fact, { fact: 'unit' | 'site' }>;

const LIST_OF = { unit: 'units', site: 'sites' } as const satisfies Record<
  NamedFact['fact'],
  keyof KnownNames
>;

function knownFact(fact: NamedFact['fact'], said: unknown, frame: Frame): NamedFact | null {
  if (typeof said !== 'string') return null;
  const value = knownName(LIST_OF[fact], said, frame.context.names);
  return value === null ? null : { fact, value, words: frame.wordsOf(frame.span) };
}

const known =
  (fact: NamedFact['fact']): Means =>
  (tags, frame) => {
    const found = knownFact(fact, tags[fact], frame);
    return found === null ? null : { facts: [found] };
  };

const NEXT: Command = { do: 'newVisit' };

const nextKnown: Means = (tags, frame) => {
  const found = knownFact('unit', tags['unit'], frame);
  return found === null ? null : { commands: [NEXT], facts: [found] };
};

/** A name that nobody knows yet is kept in the words it was said in. */
const nextNamed: Means = (tags, frame) => {
  const span = spanIn(tags['clause']);
  const value = span === null ? '' : frame.wordsOf(span).replace(/^(?:the|a|an)\s+/i, '');
  if (value === '') return null;
  // "New unit, same store"
  if (SAME_SITE.test(value)) return { commands: [NEXT] };
  const fact: Fact = { fact: 'unit', value, words: frame.wordsOf(frame.span) };
  return { commands: [NEXT], facts: [fact] };
};

const SAME_SITE =
  /^(?:at )?(?:the )?same (?:store|site|place|customer|building|address|location|stop|kitchen)$/i;

/** "Next unit's a three door reach in": what it is, which is no name. */
const nextIsA: Means = (tags, frame) => {
  const equipment = equipmentFact(tags, frame.wordsOf(frame.span));
  return equipment === null ? null : { commands: [NEXT], facts: [equipment] };
};

/** Called by what it is, and where it stands. */
const nextOfKind: Means = (_tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const value = words.replace(
    /^.*?\b(?:unit|to|starting (?:in )?on)\s+(?:(?:the|a|an|their|our)\s+)?/i,
    '',
  );
  return { commands: [NEXT], facts: [{ fact: 'unit', value, words }] };
};

/** Sites and units by their names: those of earlier visits wherever they are said, new ones where they must be. */
export const NAME_RULES: readonly Rule[] = [
  heardRule(
    '(at|~(here|back|over|i am|we are|i am here|i am back|working|job is|the job is|site is|the site is|on site|just got here) at|~site is|~the site is|~this is) [the] <knownSite>',
    known('site'),
  ),
  rule('[the] <knownSite>', known('site'), { alone: true }),
  heardRule(
    '(this is|on|~(it is|unit is|the unit is|working on|i am on|we are on|i am at|now|i am looking at|looking at|back on|back at|moving to|over to)) [(the|~a|~their)] <knownUnit>',
    known('unit'),
  ),
  rule('[the] <knownUnit>', known('unit'), { alone: true }),
  heardRule('next unit [(is|~is the|~the)] <knownUnit>', nextKnown),
  rule(
    '(next|new) (unit|one) is (a|an) <count:doors> (door|section) (<equipment>|<doored>)',
    nextIsA,
    {
      unheard: true,
      examples: ['next unit is a three door reach in'],
    },
  ),
  rule('(next|new) unit is [called] (<rest>|<clause>)', nextNamed, {
    yields: 'name',
    examples: ['next unit is called prep table two'],
  }),
  rule('(next|new) unit <pause> <rest>', nextNamed),
  rule(
    '((next|new) unit|(switch|switching|move|moving) [(on|over)] to) [(the|a|an|their|our)] <equipment> [(in|by|at|on|near|under|behind|next to|across from|out) <clause>]',
    nextOfKind,
    { examples: ['switch to the prep table', 'new unit walk in freezer'] },
  ),
  rule(
    '[(i am|we are)] [now] (starting [in] on|going over to|on to) [(the|a|an|their)] <equipment>',
    nextOfKind,
    {
      unheard: true,
      alone: true,
      examples: ['starting on the walk in freezer'],
    },
  ),
];
