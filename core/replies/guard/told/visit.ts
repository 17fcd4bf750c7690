import type { Known, LeftRow, MovedRow } from '../../../advice/verdict.ts';
import { PROCEDURES } from '../../../terms/procedures.ts';
import {
  cylinderSaid,
  leftWords,
  movedTail,
  questionsSaid,
  refrigerantSaid,
  sumsSaid,
} from '../../left-open-sentences.ts';
import { plain } from '../../said.ts';
import { together } from './settling.ts';
import { amountSlot, listSlot, wordSlot, type Told } from './told.ts';

interface LeftOpen {
  readonly left: readonly LeftRow[];
  readonly questions: number;
}

export function leftOpenTold({ left, questions }: LeftOpen): Told {
  const open =
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
        };
  return together([open], questionsSaid(questions));
}

type Moved = Pick<Extract<Known, { answer: 'moved' }>, 'rows' | 'charge' | 'cylinder'>;

export function movedTold({ rows, charge, cylinder }: Moved): Told {
  const [first, ...others] = rows;
  if (!first) return together([NONE_MOVED], cylinderSaid(cylinder));
  return together([rowPiece(first)], movedTail({ rows: others, charge, cylinder }));
}

const NONE_MOVED = {
  fields: ['none'],
  slots: {},
  must: [
    'no refrigerant [has been|was|] weighed in or out yet|nothing [has been|was|] weighed in or out yet|[no|not an ounce of] refrigerant in or out yet by the scale|no weights in or out yet',
  ],
};

const BALANCE = {
  more: '[it has|] {net} [more in it|more in|up]',
  less: '[it has|] {net} [less in it|down]',
  even: '[even|it comes out even|as much in as out|it is even]',
} as const;

/** One wording for all of it, so that a balance never comes to stand by another's sums. */
function rowPiece(row: MovedRow) {
  const { unit, net } = row;
  const way = netWay(net);
  const balance = BALANCE[way];
  return {
    fields: [way],
    slots: {
      refrigerant: wordSlot(refrigerantSaid(row)),
      sums: wordSlot(sumsSaid(row)),
      ...(way === 'even' ? {} : { net: amountSlot({ value: Math.abs(net), unit }) }),
    },
    must: [
      `{refrigerant} [:|,|] ${balance} [:|, with|with|, by|by|.|,] {sums}|${balance} [of|on] {refrigerant} [:|, with|with|, by|by|.|,] {sums}|{refrigerant} [:|,|] {sums} [:|, so|, which leaves it|: that is|, that is] ${balance}`,
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
