import type { CauseRow, Known, NextCheck } from '../../../advice/verdict.ts';
import { CAUSE_PHRASES } from '../../cause-phrases.ts';
import {
  evidenceSaid,
  leadingOf,
  reasonsOf,
  MOST_AGAINST,
  MOST_UNREAD,
  nextSaid,
  othersOf,
} from '../../causes.ts';
import { CHECK_SENTENCES } from '../../check-sentences.ts';
import { SHORT_NAMES } from '../../names.ts';
import { NEED_SENTENCES } from '../../refusals.ts';
import { plain } from '../../said.ts';
import { together } from './settling.ts';
import { sentenceSlot } from './timed.ts';
import { listSlot, wordSlot, type Told } from './told.ts';

type Causes = Extract<Known, { answer: 'causes' }>;

/** A cause is never said but in its standing, with what marks it in the same wording. */
export function causesTold({ causes, notRead, next }: Causes): Told {
  const leading = leadingOf(causes);
  const unread = notRead.slice(0, MOST_UNREAD).map((id) => SHORT_NAMES[id]);
  const isOpen = leading.length === 0 && unread.length > 0;
  const step = nextSaid(next, leading[0]?.cause ?? null);
  return together([
    ...(causes.length === 0 ? [NONE_WEIGHED] : leadingPieces(leading)),
    othersPiece(causes, leading.length > 0),
    isOpen
      ? {
          fields: ['unread'],
          slots: { unread: listSlot(unread.map(plain)) },
          must: [
            'not read [yet|] [:|] {unread}|[still|] unread : {unread}|{unread} [not read yet|still to be read|still unread]',
          ],
        }
      : null,
    {
      fields: [],
      slots: { next: sentenceSlot(step) },
      must: ['[now|] {next}'],
    },
  ]);
}

const NONE_WEIGHED = { fields: ['noneWeighed'], must: [] };

const LEADS =
  '[most likely|likeliest|likeliest is|most likely it is|the likeliest is|it is most likely|that is most likely|it looks most like|looks most like|likeliest of all] [:|,|] {lead}|{lead} [is the likeliest|is most likely|leads so far|, most likely|is what it looks most like|most likely]';

const SPEAKS_FOR =
  '[: |, by|by|, because of|, as|going by|on|for it :|, for it :|what speaks for it :|:|,] {for}|{for} [, so|: so|, which makes it|: that makes it|: that points that way|, all of it for that]';

function leadingPieces(leading: readonly CauseRow[]) {
  const [first] = leading;
  if (!first) {
    return [
      {
        fields: ['nothingLeads'],
        must: [
          'nothing leads [yet|so far]|no [one cause|cause] leads [yet|so far]|nothing stands out [yet|so far]',
        ],
      },
    ];
  }
  const reasons = reasonsOf(leading).map(evidenceSaid);
  const forSlot = reasons.length === 0 ? {} : { for: listSlot(reasons) };
  if (first.cause === 'nothingWrong') {
    return [
      {
        fields: ['nothingWrong'],
        slots: forSlot,
        must: [
          'nothing is off so far|nothing off so far|so far nothing is off',
          ...(reasons.length === 0 ? [] : ['[: |, by|by|going by|] {for}']),
        ],
      },
    ];
  }
  const names = leading.map(({ cause }) => CAUSE_PHRASES[cause]).join(', or ');
  const against = first.against.slice(0, MOST_AGAINST).map(evidenceSaid);
  return [
    {
      fields: ['leads', leading.length === 1 ? 'one' : 'several'],
      slots: { lead: wordSlot(names), ...forSlot },
      must: [LEADS, ...(reasons.length === 0 ? [] : [SPEAKS_FOR])],
    },
    against.length === 0
      ? null
      : {
          fields: ['against'],
          slots: { against: listSlot(against) },
          must: [
            '[against it|against that|speaking against it|what speaks against it] [:|,|is|] {against}|{against} [speaks|speak] against it',
          ],
        },
  ];
}

/** Without a leader it is a list of what may be; with one, what else may be. */
function othersPiece(causes: readonly CauseRow[], isLed: boolean) {
  const others = othersOf(causes);
  if (others.length === 0) return null;
  return {
    fields: [isLed ? 'alsoPossible' : 'possible'],
    slots: { others: listSlot(others.map((cause) => plain(CAUSE_PHRASES[cause]))) },
    must: [
      isLed
        ? '[also possible|it may also be|it could also be|possible too|less likely but possible|else it may be] [:|] {others}|{others} [is possible too|are possible too|may be it too]'
        : '[possible|it may be|it could be|what it can be] [:|] {others}|{others} [is possible|are possible]',
    ],
  };
}

/** A step of the standing order is whole as it stands, and so is a check that tells nothing apart: null. */
export function nextCheckTold(next: NextCheck): Told | null {
  if (next.next === 'step' || next.between.length === 0) return null;
  const does = next.next === 'check' ? CHECK_SENTENCES[next.check] : NEED_SENTENCES[next.need];
  const [one, other] = next.between;
  return together([
    {
      fields: [next.next],
      slots: { does: sentenceSlot(does) },
      must: ['{does}|next [:|,] {does}'],
    },
    one === undefined
      ? null
      : {
          fields: [other === undefined ? 'confirms' : 'tellsApart'],
          slots: {
            one: wordSlot(CAUSE_PHRASES[one]),
            ...(other === undefined ? {} : { other: wordSlot(CAUSE_PHRASES[other]) }),
          },
          must: [other === undefined ? CONFIRMS : TELLS_APART],
        },
  ]);
}

const CONFIRMS =
  '[it|that|this] confirms {one}|[it|that|this] [is what confirms|is how you confirm] {one}|to confirm {one}|[it|that] settles whether it is {one}|to be sure of {one}';
const TELLS_APART =
  '[it|that|this] [tells|parts|separates] {one} from {other}|to tell {one} from {other}|[it|that|this] [tells|shows] whether it is {one} or {other}|to [see|know|tell] whether it is {one} or {other}|[is it|either] {one} or {other} : [it|that] tells';
