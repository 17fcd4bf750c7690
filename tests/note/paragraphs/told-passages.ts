import type { Passage } from '../../../core/note/paragraphs/passage.ts';

/** Passages with invented facts, by a short name. */
export const PASSAGES = {
  found: of(['customer', 'reason'], [], {
    complaint: '"warm lettuce since this morning"',
    found: 'the door seal had failed',
  }),
  told: of(['customer', 'reason'], ['told'], {
    complaint: '"it will not get below forty"',
    cause: 'air in the refrigerant piping',
  }),
  toldSeen: of(['customer', 'reason'], ['told'], {
    complaint: '"it will not get below forty"',
    cause: 'a defrost that did not work',
    found: 'the cooling coil was covered in ice',
  }),
  likely: of(['customer', 'reason'], ['likely'], {
    complaint: '"it runs all day"',
    cause: 'too much refrigerant in the unit',
  }),
  likelySeen: of(['customer', 'reason'], ['likely'], {
    cause: 'a blockage in the refrigerant line or its filter',
    found: 'the filter in the refrigerant line was wet',
  }),
  suspects: of(['customer', 'reason'], [], {
    complaint: '"unit dead"',
    suspects: 'the high-pressure switch',
  }),
  means: of(['customer', 'meaning'], ['told'], {
    effect: 'the heat cannot get out, so the unit cools poorly',
  }),
  maybe: of(['customer', 'meaning'], ['likely'], {
    effect: 'the pressure rises, so the unit works harder and cools less',
  }),
  work: of(['customer', 'done'], ['following'], { work: 'brushed and washed that coil' }),
  noWork: of(['customer', 'done'], ['noWork'], {}),
  moved: of(['customer', 'refrigerant'], [], {
    recovered: '1 lb 11 oz',
    added: '7 lb 8 oz',
    kind: 'R-448A',
  }),
  lost: of(['office', 'refrigerant'], [], { added: '12 oz', lost: '4 oz', kind: 'R-134a' }),
  box: of(['customer', 'box'], ['worked', 'down', 'above'], {
    before: '51 °F',
    after: '38 °F',
    set: '36 °F',
  }),
  boxUp: of(['customer', 'box'], ['up'], { before: '38 °F', after: '41 °F' }),
  boxReached: of(['office', 'box'], ['worked', 'down', 'reached'], {
    before: '52 °F',
    after: '38 °F',
    set: '38 °F',
  }),
  boxRead: of(['customer', 'box'], [], { after: '-4 °F' }),
  product: of(['customer', 'product'], [], { productBefore: '44 °F', productAfter: '39 °F' }),
  remark: of(['customer', 'product'], [], {
    remark: '"vaccine was moved to the second fridge before i got here"',
  }),
  off: of(['customer', 'left'], ['off'], {
    left: 'the power switch of the unit is locked off',
    danger: 'the windings of the compressor are in contact with its metal housing',
  }),
  offOffice: of(['office', 'left'], ['off'], { danger: 'a compressor winding is grounded' }),
  left: of(['customer', 'left'], [], {
    left: 'the switch that stops it at low pressure is bypassed',
  }),
  todo: of(['customer', 'todo'], ['single'], {
    todo: 'replace the door seal',
    when: 'by Friday, December 25, 2026',
    because: "it's torn",
  }),
  several: of(['office', 'todo'], ['several'], {
    todo: 'replace the compressor, replace the filter drier and replace the contactor',
  }),
  comeBack: of(['customer', 'comeBack'], [], {
    when: 'on Tuesday, December 8, 2026',
    purpose: 'to check the charge',
  }),
  again: of(['customer', 'again'], [], {
    date: 'August 3, 2026',
    foundBefore: 'the coil that gets rid of the heat was clogged',
    undone: 'clean the coil that gets rid of the heat',
  }),
  job: of(['office', 'reason'], [], {
    complaint: '"top shelf is warm"',
    found: 'condenser plugged and high-pressure switch tripped',
  }),
  jobTold: of(['office', 'reason'], ['told'], {
    complaint: '"top shelf is warm"',
    cause: 'a failed defrost',
  }),
  jobLikely: of(['office', 'reason'], ['likely'], {
    complaint: '"top shelf is warm"',
    cause: 'a dirty condenser',
  }),
  billed: of(['office', 'done'], [], {
    work: 'replaced the filter drier and evacuated the system',
    time: '3 h 47 min',
  }),
  atPlate: of(['office', 'charge'], ['atPlate'], { charge: '7 lb 8 oz', missing: '5 lb 13 oz' }),
  overPlate: of(['office', 'charge'], ['overPlate'], { charge: '160 g', difference: '10 g' }),
  noPlate: of(['office', 'charge'], ['noPlate'], { charge: '6 lb 4 oz' }),
} as const satisfies Record<string, Passage>;

export type PassageName = keyof typeof PASSAGES;

function of(
  [reader, kind]: readonly [Passage['reader'], Passage['kind']],
  fields: Passage['fields'],
  slots: Passage['slots'],
): Passage {
  return { reader, kind, fields, slots };
}
