import type { HistoryAnswer } from '../../../advice/history-verdict.ts';
import { dateWords } from '../../dates.ts';
import { foundSaid, lastVisitTail } from '../../history-sentences.ts';
import { plain, type Said } from '../../said.ts';
import { workDone } from '../../work-words.ts';
import { together } from './settling.ts';
import { listSlot, wordSlot, type Told } from './told.ts';

type Of<A extends HistoryAnswer['answer']> = Extract<HistoryAnswer, { readonly answer: A }>;

const LAST_TIME =
  '[the|] last [time|visit|here] [was|was on|:|,] {on}|[on|] {on} [was|is] the last [time|visit]|last here [on|] {on}|[it was|] {on} [,|:] [last time|the last visit|the last time]';

export function lastVisitTold({ on, today, found, did, left, moved }: Of<'lastVisit'>): Told {
  const pieces = [
    listPiece('found', found.map(foundSaid), FOUND),
    listPiece(
      'did',
      did.map((each) => plain(workDone(each.did, each.part))),
      DONE,
    ),
  ];
  const tail = lastVisitTail({ moved, left, today });
  const isListed = pieces.some((piece) => piece !== null);
  const isBare = tail.text === '' && !isListed;
  return together(
    [
      { fields: [], slots: { on: wordSlot(dateWords(on, today)) }, must: [LAST_TIME] },
      ...pieces,
      isBare ? { fields: ['nothingKept'], must: [NOTHING_KEPT] } : null,
      !isBare && !isListed ? { fields: ['bare'], must: [] } : null,
    ],
    tail,
  );
}

const FOUND =
  '[found|found then|what was found] [:|,|was|] {found}|{found} [found|was found|were found] [then|]';
const DONE = '[done|done then|work done|what was done] [:|,|was|] {did}';
const NOTHING_KEPT =
  'nothing found or done was kept [of it|]|[there is|] nothing kept of what was found or done|no record of what was found or done';

function listPiece(role: string, items: readonly Said[], way: string) {
  if (items.length === 0) return null;
  return { fields: [role], slots: { [role]: listSlot(items) }, must: [way] };
}

export function lastDoneTold({ did, part, on, since, today }: Of<'lastDone'>): Told {
  const work = wordSlot(workDone(did, part));
  if (on !== null) {
    return {
      fields: ['done'],
      slots: { work, on: wordSlot(dateWords(on, today)) },
      must: [
        '{work} [on|, on|last on|, last on|:] {on}|[on|] {on} [:|,|] {work}|{work} , and that was [on|] {on}|[last|last time] {work} [on|:] {on}',
      ],
    };
  }
  return together([
    {
      fields: ['notDone'],
      slots: { work },
      must: [
        'not on any visit I have [:|] {work}|{work} is not on any visit I have|no visit I have [has|shows|tells of] {work}|none of the visits I have [has|shows] {work}|I have no visit with {work}|{work} : not on any visit I have|not on any [of the visits|visit] kept here [:|] {work}|{work} is on none of the visits kept here|{work} : on none of the visits kept here|[no visit|none of the visits] kept here [has|shows] {work}|no [record|trace] of {work} on any visit kept here|no visit with {work} is kept here|{work} , not on any visit kept here',
      ],
    },
    since === null
      ? null
      : {
          fields: ['since'],
          slots: { since: wordSlot(dateWords(since, today)) },
          must: [
            'they [go|reach] back to {since}|[the visits|mine|my visits] [go|reach] back to {since}|[the first|the first of them] [is|was] [on|] {since}',
          ],
        },
  ]);
}

export function seenBeforeTold({ rows, last, today }: Of<'seenBefore'>): Told {
  const on = wordSlot(dateWords(last, today));
  if (rows.length === 0) {
    return {
      fields: ['new'],
      slots: { on },
      must: [
        'nothing found today was found last time [, on|on|,|:] {on}|nothing of today was found on {on}|[on|] {on} [had|showed] none of [this|what was found today]|none of [this|what was found today] was found [last time , |] on {on}',
      ],
    };
  }
  return {
    fields: ['again'],
    slots: { on, found: listSlot(rows.map(foundSaid)) },
    must: [
      'the same on {on} [:|,|] {found}|{found} [on {on} too|, the same on {on}|, as on {on}|, just as on {on}|: the same on {on}|: that was so on {on} too]|[on|] {on} [had|showed|was] the same [:|,|] {found}|[seen before|not new] [:|,] {found} [, on|on] {on} [too|]',
    ],
  };
}
