import type { Known, LeftRow, MovedRow } from '../../../advice/verdict.ts';
import { PROCEDURES } from '../../../terms/procedures.ts';
import type { Amount } from '../../../units/amount.ts';
import { counted } from '../../amounts.ts';
import { designation } from '../../designation.ts';
import { leftWords } from '../../left-open-sentences.ts';
import { plain } from '../../said.ts';
import { together } from './settling.ts';
import { amountSlot, listSlot, wordSlot, type Told } from './told.ts';

interface LeftOpen {
  readonly left: readonly LeftRow[];
  readonly questions: number;
}

export function leftOpenTold({ left, questions }: LeftOpen): Told {
  return together([
    left.length === 0
      ? {
          fields: ['nothing'],
          must: [
            '[nothing|nothing that] you told me [of|about|] is [left|still] open|nothing [is left|left] open that you told me [of|about|]|by what you told me , nothing is [left|still] open',
          ],
        }
      : {
          fields: ['open'],
          slots: { left: listSlot(left.map((row) => plain(leftWords(row)))) },
          must: [
            '[still open|left open|left so|still to be put back|not put back [yet|]|to put back|to put right] [:|,|] {left}|{left} : [still open|left open|not put back yet|still to be put back]',
          ],
        },
    questions === 0
      ? { fields: ['noQuestions'], must: [] }
      : {
          fields: ['questions'],
          slots: { questions: wordSlot(counted(questions, 'question')) },
          must: [
            '[and|] {questions} [besides|as well|too|open besides|still open too]|besides that , {questions}|[then|] {questions} still to settle',
          ],
        },
  ]);
}

interface Moved {
  readonly rows: readonly MovedRow[];
  readonly charge: Amount | null;
}

const ROWS = ['none', 'one', 'two'] as const;
const NTH = ['', 'Second', 'Third', 'Fourth'] as const;

export function movedTold({ rows, charge }: Moved): Told {
  if (rows.length === 0) {
    return {
      fields: ['none'],
      slots: {},
      must: [
        'no refrigerant [has been|was|] weighed in or out yet|nothing [has been|was|] weighed in or out yet|[no|not an ounce of] refrigerant in or out yet by the scale|no weights in or out yet',
      ],
    };
  }
  return together([
    { fields: [ROWS[rows.length] ?? 'more'], must: [] },
    ...rows.map((row, index) => rowPiece(row, NTH[index] ?? String(index))),
    charge === null
      ? null
      : {
          fields: ['charge'],
          slots: { charge: amountSlot(charge) },
          must: [
            'the [nameplate|plate] [charge|] [is|says] {charge}|{charge} is the nameplate charge|{charge} by the [plate|nameplate]|nameplate charge {charge}',
          ],
        },
  ]);
}

/** One refrigerant in one wording, so that the sums of two are never crossed. */
function rowPiece(row: MovedRow, nth: string) {
  const { refrigerant, unit, net, lost, unweighed } = row;
  const of = (value: number) => amountSlot({ value, unit });
  const way = netWay(net);
  const at = (role: string): string => `{${role}${nth}}`;
  const more = { more: '[more in it|more in|up]', less: '[less in it|down]', even: '' }[way];
  const balance =
    way === 'even'
      ? '[even|it comes out even|as much in as out|it is even]'
      : `[it has|] ${at('net')} ${more}`;
  const sums = `[in ${at('in')}|${at('in')} in] [,|and|, and] [out ${at('out')}|${at('out')} out]`;
  const lostWords = lost === 0 ? '' : ` [,|and|, and] [lost ${at('lost')}|${at('lost')} lost]`;
  const missing = unweighed === 0 ? '' : ` [, and|and|,] ${at('missing')} not weighed`;
  return {
    fields: [
      `${way}${nth}`,
      ...(lost === 0 ? [] : ['lost']),
      ...(unweighed === 0 ? [] : ['unweighed']),
    ],
    slots: {
      [`refrigerant${nth}`]:
        refrigerant === null ? wordSlot('refrigerant') : wordSlot(designation(refrigerant)),
      [`in${nth}`]: of(row.in),
      [`out${nth}`]: of(row.out),
      ...(way === 'even' ? {} : { [`net${nth}`]: of(Math.abs(net)) }),
      ...(lost === 0 ? {} : { [`lost${nth}`]: of(lost) }),
      ...(unweighed === 0 ? {} : { [`missing${nth}`]: wordSlot(counted(unweighed, 'movement')) }),
    },
    must: [
      `${at('refrigerant')} [:|,|] ${balance} [:|, with|, by|.|,] ${sums}${lostWords}${missing}|${balance} [of|on] ${at('refrigerant')} [:|, with|, by|.|,] ${sums}${lostWords}${missing}|${at('refrigerant')} [:|,|] ${sums}${lostWords} [:|, so|, which leaves it|: that is|, that is] ${balance}${missing}`,
    ],
  };
}

function netWay(net: number): 'more' | 'less' | 'even' {
  if (Math.abs(net) < 1e-9) return 'even';
  return net > 0 ? 'more' : 'less';
}

export function stepsDoneTold({
  procedure,
}: Pick<Extract<Known, { answer: 'stepsDone' }>, 'procedure'>): Told {
  return {
    fields: [],
    slots: { procedure: wordSlot(PROCEDURES[procedure].name) },
    must: [
      '{procedure} [:|,] [that was the last step|that was the last of it|all steps told|no more steps|the steps are done]|that was the last step [of|for] [the|] {procedure}|[no more steps|no steps left] [for|to] [the|] {procedure}|that was the last step [:|,] {procedure}',
    ],
  };
}
