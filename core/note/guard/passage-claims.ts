import type { Passage, PassageField } from '../paragraphs/passage.ts';

/**
 * What a passage with a field must say, in one of these wordings: how sure, how strong, which way. The mark at an end
 * (`|`) must follow: "must not be switched on when we left" would end a prohibition with the visit.
 */
const WORDINGS: Readonly<Partial<Record<PassageField, readonly string[]>>> = {
  likely: ['likely', 'if', 'where that is so', 'should that be'],
  noWork: [
    'no repair was recorded on this visit',
    'no repair was recorded',
    'no repair of the unit was recorded',
    'no repair recorded on this visit',
    'no work on the unit was recorded on this visit',
    'no work was recorded',
    'no work recorded',
    'work : none recorded',
  ],
  noneMoved: [
    'no refrigerant was recorded in or out',
    'in or out , no refrigerant was recorded',
    'no refrigerant recorded in or out',
    'refrigerant : none recorded in or out',
    'on refrigerant , none recorded in or out',
  ],
  noneAdded: ['no refrigerant was added', 'no refrigerant added'],
  noneRecovered: ['no refrigerant was recovered', 'no refrigerant recovered'],
  noneEitherWay: [
    'no refrigerant was added and none was recovered',
    'no refrigerant added and none recovered',
  ],
  noPlate: ['nameplate charge was not recorded', 'nameplate charge not recorded'],
  atPlate: [
    'the nameplate charge',
    'to the nameplate',
    'as on the nameplate',
    'as the nameplate has it',
  ],
  off: [
    'the unit must not be switched on |',
    'it must not be switched on |',
    '^ must not be switched on |',
    ', must not be switched on |',
    'not to be switched on |',
    'do not switch the unit on |',
    'do not switch it on |',
    'do not switch on |',
    'the unit must stay off |',
    'it must stay off |',
    '^ must stay off |',
    '^ keep the unit off |',
    '^ keep it off |',
    '^ nobody may switch the unit on |',
    '^ nobody may switch it on |',
  ],
};

/** How a reading stands to what it is set for is said only where that was set. */
const AGAINST_SET: Readonly<Partial<Record<PassageField, readonly string[]>>> = {
  reached: ['where it should be', 'where it belongs'],
  above: [
    'above the {set}',
    'warmer than the {set}',
    'above the set point of {set}',
    'over the set point of {set}',
    '{set} , so it is still above that',
  ],
  below: [
    'below the {set}',
    'colder than the {set}',
    'below the set point of {set}',
    'under the set point of {set}',
    '{set} , so it is below that',
  ],
};

const UNDONE = ['not reported done', 'was not reported done'];
const COMES_BACK = ['come back', 'be back', 'another visit', 'next visit', 'return visit'];

/** Each group must be said in one of its wordings. */
export function claimsOf({ kind, fields, slots }: Passage): readonly (readonly string[])[] {
  const ofFields = fields.flatMap((field) => {
    const own = WORDINGS[field];
    const against = slots.set === undefined ? undefined : AGAINST_SET[field];
    return [own, against].filter((wordings) => wordings !== undefined);
  });
  const undone = slots.undone === undefined ? [] : [UNDONE];
  return [...ofFields, ...undone, ...(kind === 'comeBack' ? [COMES_BACK] : [])];
}

const NEGATION = /(?:^| )(?:not|no|none|nothing|nobody|never|nor|without|[a-z]+n't)(?= |$)/;

/** A "not" that belongs to no wording of the passage's own denies something. */
export function deniesMore(reading: string, claims: readonly (readonly string[])[]): boolean {
  const bare = claims
    .flat()
    .toSorted((one, other) => other.length - one.length)
    .reduce((so, wording) => so.replaceAll(plain(wording), ' '), reading);
  return NEGATION.test(bare);
}

const plain = (wording: string): string => wording.replace(/^\^ | \|$/g, '');
