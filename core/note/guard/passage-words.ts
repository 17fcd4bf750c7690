import type { Passage, PassageField, PassageKind } from '../paragraphs/passage.ts';

const words = (all: string): ReadonlySet<string> => new Set(all.split(/\s+/));

/**
 * The words that a passage of a kind may be made of, besides its slots. None of them carries a fact: what was found,
 * done, read or meant stands in slots alone. No "not", no "about", no "should" among them.
 */
const PASSAGE_WORDS: Readonly<Record<PassageKind, ReadonlySet<string>>> = {
  aim: words(
    `a agreed and as be before came come for here is it job of on our out planned purpose reason so that the there this
    time to today visit was we were what`,
  ),
  reason: words(
    `a about also and asked at because behind by call called came cause caused circuit come comes complaint
    customer's down electrical findings followed for found from going got in into it looked measured measurements
    of on our out over point points power saw that the there through to told traced unit us voltages was we went
    were what when which you come itself turned`,
  ),
  meaning: words(
    `as because does for happens in is it like long matters means of once reason so state that the trouble unit
    what when with you left be`,
  ),
  done: words(
    `a all an and as at because billable by did done for here in is it of on our put repair right so technician
    that the there this time to today visit site we went were what while with work`,
  ),
  refrigerant: words(
    `a added and away billable by came charged filled from got in it kind lost of on out put recovered refrigerant
    scale taken the took unit was we weight went`,
  ),
  charge: words(
    `a and as by charge charged from has holds in is it nameplate now of on recovered scale the to was weight when
    which with`,
  ),
  box: words(
    `a after and as at before box came cooled from in inside is it measured now of point read set so temperature that
    the to was we when which with for has`,
  ),
  product: words(
    `a about after and at came down first for gave in it itself later measured note noted of on our product
    reading that the was we what when wrote your`,
  ),
  left: words(
    `a as at because end for how is it know left like next note now of our please so stands still that the this unit
    visit was we when with you`,
  ),
  todo: words(
    `a advice advise an and are as be because comes do done following follow-up left quoted for from here is it left needs next
    on one our quote reason recommend recommendation recommendations recommended step steps still the these thing
    things this to visit we what work you`,
  ),
  comeBack: words(
    `a another as back be because come due for have is needed next our reason return schedule scheduled the there
    to visit we will`,
  ),
  again: words(
    `already and back before come date found has it of on open recommended repeat same saw seen since so that the
    then this to too was we what which`,
  ),
};

/** What a fact lets be said besides: the way it went, and how sure it is. */
const FIELD_WORDS: Readonly<Record<PassageField, ReadonlySet<string>>> = {
  told: words('them'),
  likely: words('likely most readings by going make took the as before work'),
  noWork: words('no nothing none recorded record repaired there was unit is'),
  following: words('that'),
  worked: words('since then after that with done gone work has'),
  down: words('down came cooled fell dropped went pulled come'),
  up: words('up went gone rose climbed warmed'),
  same: words('stayed held remained'),
  reached: words('where should be belongs'),
  above: words('above over still warmer than'),
  below: words('below under colder than'),
  noneMoved: words('no none recorded record there or is'),
  noneAdded: words('no'),
  noneRecovered: words('no'),
  noneEitherWay: words('no none'),
  atPlate: words('as'),
  overPlate: words('over above'),
  underPlate: words('under below short'),
  noPlate: words('not recorded'),
  off: words('must not be to switched switch on do stay off keep nobody may'),
  single: words('when'),
  several: words('following'),
};

/** What a slot lets be said besides. */
const SLOT_WORDS: Readonly<Partial<Record<string, ReadonlySet<string>>>> = {
  undone: words('not reported done'),
  missing: words('missing short'),
};

/** What such a fault does is told of one that is only likely behind an "if". */
const IF_WORDS = words('if is so that should be where right was it cause');

/** All the words that a passage may be made of. */
export function wordsOf({ kind, fields, slots }: Passage): readonly ReadonlySet<string>[] {
  const isOpen = kind === 'meaning' && fields.includes('likely');
  return [
    PASSAGE_WORDS[kind],
    ...fields.map((field) => FIELD_WORDS[field]),
    ...Object.keys(slots).flatMap((role) => SLOT_WORDS[role] ?? []),
    ...(isOpen ? [IF_WORDS] : []),
  ];
}
