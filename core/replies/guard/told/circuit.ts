import type {
  NextPlaceAnswer,
  SwitchAnswer,
  SwitchState,
  LeadsAt,
} from '../../../advice/circuit/circuit-verdict.ts';
import type { FaultMode } from '../../../advice/circuit/circuit.ts';
import { PLACES } from '../../../terms/names.ts';
import {
  leadsWords,
  START_GEAR,
  SUSPECTS,
  suspectsSaid,
  WHY_OPEN,
} from '../../circuit-sentences.ts';
import { together } from './settling.ts';
import { sentenceSlot } from './timed.ts';
import { amountSlot, wordSlot, type Told } from './told.ts';

const ACROSS =
  '{across} across [the|your] {place}|[the|] {place} [reads|has|drops|shows] {across} across it|{across} [over|between the ends of] the {place}';
const POWERED = '[with|and] power at the line [side|]|[the line|the line side] [is live|has power]';
const IS_OPEN = '[it|the {place}|that one|that] is open|[an|] open {place}|open';

const SWITCH_WAYS: Record<SwitchState, readonly string[]> = {
  open: [ACROSS, POWERED, IS_OPEN],
  passing: [
    'the {place} [passes power|lets power through|is passing power|is closed and passes power]',
    'what is behind it [gets|has] its voltage|[what is behind it|the part behind it] is [fed|getting its voltage]',
  ],
  undetermined: [
    'zero [there|] [settles|proves|tells] nothing|[nothing|zero] across it [settles|proves|tells] nothing',
    'another one open [reads|would read] the same|[it|that] reads the same with another one open|[one|another] open somewhere else reads the same',
  ],
  partial: [
    '{across} at the {place} is only [part|some] of it|only [part|some] of it [gets to|is at|reaches] the {place} : {across}',
    '[that is|either|] a burnt contact [, or|or] a ghost [on the meter|]',
    '[read|measure|take] it again with a low-impedance meter|a low-impedance meter [will tell|tells them apart] [:|,|, so] [read|measure|take] it again',
  ],
  noPath: ['no path through the {place}|[the|] {place} has no path through it', IS_OPEN],
  path: [
    '{ohms} through the {place}|the {place} reads {ohms} [through|]',
    '[it is|] closed now',
    'if nothing beside it bridges it|unless something beside it bridges it|provided nothing beside it bridges it',
  ],
  ohmsRead: [
    '{ohms} through the {place}|the {place} reads {ohms} [through|]',
    'neither open nor a clean contact|not open , and not a clean contact [either|]',
    "[compare it with|check it against|hold it against|go by] [the maker's|the maker's figure|the maker's sheet]",
  ],
  noSupply: [
    '[there is|] no power at the line side|the line side [is dead|has no power]',
    "the {place} [cannot|can't] be judged|[no judging|there is no judging] the {place} [yet|until there is|]",
    '[look at|check] the plug , the breaker and the fuses|[look at|check] [plug , breaker and fuses|plug , breaker , fuses] [first|]',
  ],
  fed: [
    '{across} at the {place}|the {place} [has|gets] {across}',
    'power gets there|[it|the {place}] [has|gets] power|power [reaches|gets to] it',
    "if it does nothing , [it is|it's|that is] the {culprit}|if it [stands still|does not run] , [it is|it's|that is] the {culprit}|[doing nothing|standing still] , it is the {culprit}|it is the {culprit} if it [does nothing|stands still|does not run]",
  ],
  notFed: [
    'no power [gets to|reaches|at|gets as far as] the {place}|the {place} [gets|has] no power',
    'something before it is open|[look for|find] what is open before it|[the|an] open one is before it',
  ],
};

export function switchTold({ place, state, across, ohms, next }: SwitchAnswer): Told {
  return together([
    {
      fields: [state],
      slots: {
        place: wordSlot(PLACES[place]),
        across: amountSlot({ value: across, unit: 'V' }),
        ohms: amountSlot({ value: ohms ?? 0, unit: 'ohm' }),
        culprit: wordSlot(`${PLACES[place]} itself${START_GEAR[place] ?? ''}`),
      },
      must: SWITCH_WAYS[state],
    },
    IS_OPENED.has(state) ? whyPiece(WHY_OPEN[place]) : null,
    ASKS_ON.has(state) ? leadsPiece(next) : null,
  ]);
}

const IS_OPENED: ReadonlySet<SwitchState> = new Set<SwitchState>(['open', 'noPath']);
const ASKS_ON: ReadonlySet<SwitchState> = new Set<SwitchState>(['undetermined', 'notFed']);

/** What an open one wants looked at is advice that can hurt to lose: word for word, and never left out. */
const whyPiece = (why: string | undefined) =>
  why === undefined
    ? { fields: ['noWhy'], must: [] }
    : { fields: ['why'], slots: { why: sentenceSlot(why) }, must: ['{why}'] };

const leadsPiece = (next: LeadsAt | null) =>
  next === null
    ? { fields: ['noNext'], must: [] }
    : {
        fields: ['next'],
        slots: { next: wordSlot(leadsWords(next)) },
        must: ['[next|then|now] [,|:|] {next}|{next} next'],
      };

const ONLY_FIELD: Record<FaultMode, string> = { open: 'open', burnt: 'burnt', dead: 'dead' };

/** More than this in one breath is a list that nobody keeps. */
const MOST_NAMED = 3;

export function nextPlaceTold(answer: NextPlaceAnswer): Told {
  switch (answer.found) {
    case 'searching':
      return searchingTold(answer);
    case 'suspects':
      return suspectsTold(answer);
    case 'sound':
      return told('sound', [
        'power gets everywhere [it should|that it should]|[everything|all of it] [gets|has] its power|power is everywhere it should be',
        '[if something|what|whatever] [still|] [stands still|does not run] [,|] [it is|is] [that load|the load|the load itself] or its start gear|if something still stands still , [it is|blame|look at] that load or its start gear',
      ]);
    case 'contradiction':
      return told('contradiction', [
        "those voltages [do not|don't] fit [one|a single] circuit|no one circuit [fits|gives] those voltages",
        'prove the meter',
        'read the line side again|[take|measure] the line side again',
        '[and|] walk it from there|[and|] go on from there',
      ]);
  }
}

const told = (field: string, must: readonly string[]): Told => ({
  fields: [field],
  slots: {},
  must,
});

function searchingTold({ suspects, together: both, next }: NextPlaceAnswer): Told {
  return together([
    { fields: ['searching'], must: [] },
    both
      ? {
          fields: ['together'],
          must: [
            'no single fault reads like that|no one fault reads like that|that is more than one fault',
            'two things are wrong|[there are|it is] two things wrong',
          ],
        }
      : { fields: ['oneFault'], must: [] },
    suspects.length > MOST_NAMED
      ? { fields: ['many'], must: [] }
      : {
          fields: ['named'],
          slots: { suspects: wordSlot(suspectsSaid(suspects, both)) },
          must: [
            '[it|that] [can|may|could] be {suspects}|[still|] possible : {suspects}|[it|that] may still be {suspects}',
          ],
        },
    leadsPiece(next),
  ]);
}

const LOCK =
  '[lock out|lock it out] , [leads off|take the leads off] [, and|and|, then] read the ohms';

function suspectsTold({ suspects, together: both }: NextPlaceAnswer): Told {
  const [only] = suspects;
  const slots = { suspects: wordSlot(suspectsSaid(suspects, both)) };
  if (!only || suspects.length !== 1) {
    return {
      fields: ['several', both ? 'together' : 'oneOf'],
      slots,
      must: [
        'it is {suspects}',
        "voltage [cannot|can't] tell them apart|[there is|] no telling them apart by voltage|by voltage they [cannot|can't] be told apart",
        LOCK,
      ],
    };
  }
  const gear = START_GEAR[only.of];
  if (gear !== undefined) {
    return {
      fields: ['load'],
      slots: {
        suspects: wordSlot(SUSPECTS[only.of]),
        culprit: wordSlot(`${SUSPECTS[only.of]} itself${gear}`),
      },
      must: [
        'power [gets to|reaches] {suspects}|{suspects} [gets|has] [its|] power',
        "it draws nothing|it [does not|doesn't] draw [anything|a thing]|draws nothing",
        'it is {culprit}|[the fault|that] is {culprit}',
        '[lock out|lock it out] , bleed the capacitors [, and|and|, then] read the ohms',
      ],
    };
  }
  const why = only.mode === 'open' ? WHY_OPEN[only.of] : undefined;
  return together([
    { fields: [ONLY_FIELD[only.mode]], slots: { suspects: slots.suspects }, must: ONLY[only.mode] },
    whyPiece(why),
  ]);
}

const ONLY: Record<FaultMode, readonly string[]> = {
  open: [
    'it is {suspects} : open|{suspects} is open|[the fault is|the open one is] {suspects} [: open|]',
  ],
  burnt: [
    '[it is|that is|] a burnt contact in {suspects}|{suspects} has a burnt contact',
    '[it|that|which] drops part of the voltage|part of the voltage [drops|is lost] there',
    '[lock out|lock it out] before you [look at it|open it]|before you look at it , lock [it|] out',
  ],
  dead: [
    '[there is|] no power at {suspects}|{suspects} [is dead|has no power]',
    '[look at|check] the plug , the breaker and the fuses|[look at|check] [plug , breaker and fuses|plug , breaker , fuses] [first|]',
  ],
};
