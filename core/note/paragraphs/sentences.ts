import {
  fillPassage,
  type Passage,
  type PassageField,
  type PassageKind,
  type PassageRole,
} from './passage.ts';

/** The passage in our own words, always there; a model's words stand in its place only if the guard lets them. */
export function passageText(passage: Passage): string {
  return fillPassage(passageSentences(passage), passage);
}

/** The same with its slots by role, as a model writes it. */
export function passageSentences(passage: Passage): string {
  const { reader, kind, fields, slots } = passage;
  return SENTENCES[reader][kind]({
    is: (field) => fields.includes(field),
    has: (role) => role in slots,
  });
}

interface Told {
  readonly is: (field: PassageField) => boolean;
  readonly has: (role: PassageRole) => boolean;
}

type Sentences = Readonly<Record<PassageKind, (told: Told) => string>>;

/** The pieces that there is something to say for, a space between. */
const spaced = (...pieces: readonly (string | false)[]): string =>
  pieces.filter((piece) => piece !== false && piece !== '').join(' ');

const CUSTOMER: Sentences = {
  aim: () => 'we came to {aim}.',
  reason: ({ is, has }) =>
    spaced(
      has('complaint') && 'you called us about {complaint}.',
      is('told') && 'the cause was {cause}.',
      has('found') && (is('told') ? 'we also saw that {found}.' : 'we found that {found}.'),
      is('likely') && 'by what we measured, the most likely cause was {cause}.',
      has('suspects') && 'our electrical measurements point to {suspects}.',
    ),
  meaning: ({ is }) => (is('likely') ? 'if that is so, {effect}.' : 'when that happens, {effect}.'),
  done: ({ is }) => (is('noWork') ? 'no repair was recorded on this visit.' : 'we {work}.'),
  refrigerant: (told) => movedSentences(told, ['we took out {recovered}', 'we put in {added}']),
  charge: () => 'the unit now holds {charge} of refrigerant.',
  box: (told) => {
    const since = told.is('worked') && told.has('before') ? 'since then ' : '';
    return `${since}the temperature inside ${movedWords(told)}${setWords(told, 'it is set for')}.`;
  },
  product: ({ has }) => {
    if (has('remark')) return 'about the product we noted: {remark}.';
    return has('product')
      ? 'the product was at {product} when we measured it.'
      : 'the product was at {productBefore} when we came, and at {productAfter} after that.';
  },
  left: ({ is, has }) =>
    spaced(
      is('off') && 'the unit must not be switched on: {danger}.',
      has('left') && 'as we left it, {left}.',
    ),
  todo: (told) =>
    told.is('several')
      ? 'still to be done: {todo}.'
      : `still to be done: {todo}${timingWords(told)}.`,
  comeBack: (told) => `we will come back${timingWords(told)}.`,
  again: ({ has }) =>
    spaced(
      has('foundBefore') && 'it was the same on {date}: {foundBefore}.',
      has('undone') &&
        (has('foundBefore')
          ? 'what we recommended then was not reported done: {undone}.'
          : 'what we recommended on {date} was not reported done: {undone}.'),
    ),
};

const OFFICE: Sentences = {
  aim: () => 'came to {aim}.',
  reason: ({ is, has }) =>
    spaced(
      has('complaint') && 'called for {complaint}.',
      is('told') && 'cause: {cause}.',
      has('found') && 'found {found}.',
      is('likely') && 'most likely, by the readings before work, {cause}.',
      has('suspects') && 'by the voltages: {suspects}.',
    ),
  meaning: () => '{effect}.',
  done: ({ is, has }) =>
    spaced(
      is('noWork') ? 'no work was recorded.' : '{work}.',
      has('time') && 'on the visit for {time}.',
    ),
  refrigerant: (told) =>
    noneSentence(told) ?? movedSentences(told, ['recovered {recovered}', 'added {added}']),
  charge: ({ is, has }) => {
    const against = is('atPlate')
      ? ', the nameplate charge'
      : is('overPlate')
        ? ', {difference} over the nameplate'
        : is('underPlate')
          ? ', {difference} under the nameplate'
          : '; the nameplate charge was not recorded';
    return spaced(
      `in it now, by the scale, {charge}${against}.`,
      has('missing') && '{missing} was missing when it was recovered.',
    );
  },
  box: (told) => `the box ${movedWords(told)}${setWords(told, 'it is set to')}.`,
  product: CUSTOMER.product,
  left: ({ is, has }) =>
    spaced(is('off') && 'not to be switched on: {danger}.', has('left') && 'left with {left}.'),
  todo: (told) => `to do: {todo}${timingWords(told)}.`,
  comeBack: (told) => `return visit${told.has('when') ? '' : ' due'}${timingWords(told)}.`,
  again: CUSTOMER.again,
};

const SENTENCES: Readonly<Record<Passage['reader'], Sentences>> = {
  customer: CUSTOMER,
  office: OFFICE,
};

function movedWords({ is, has }: Told): string {
  if (!has('before')) return is('same') ? 'stayed at {after}' : 'was at {after}';
  return `${is('up') ? 'went up' : 'came down'} from {before} to {after}`;
}

function setWords({ is, has }: Told, setTo: string): string {
  if (!has('set')) return '';
  if (is('reached')) return `, where it should be: ${setTo} {set}`;
  return is('above') ? `, still above the {set} ${setTo}` : `, below the {set} ${setTo}`;
}

function timingWords({ has }: Told): string {
  return `${has('when') ? ' {when}' : ''}${has('purpose') ? ' {purpose}' : ''}${has('because') ? ', because {because}' : ''}`;
}

function noneSentence({ is }: Told): string | null {
  if (is('noneEitherWay')) return 'no refrigerant was added and none was recovered.';
  if (is('noneAdded')) return 'no refrigerant was added.';
  if (is('noneRecovered')) return 'no refrigerant was recovered.';
  return is('noneMoved') ? 'no refrigerant was recorded in or out.' : null;
}

/** "We took out 6 lb 2 oz and put in 6 lb 4 oz of R-404A." */
function movedSentences({ has }: Told, [recovered, added]: readonly [string, string]): string {
  const both = has('recovered') && has('added');
  const moved = [
    ...(has('recovered') ? [recovered] : []),
    ...(has('added') ? [both ? added.replace(/^we /, '') : added] : []),
  ];
  return spaced(
    moved.length > 0 && `${moved.join(' and ')} of {kind}.`,
    has('lost') && (moved.length > 0 ? '{lost} was lost.' : '{lost} of {kind} was lost.'),
  );
}
