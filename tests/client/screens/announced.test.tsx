import { isValidElement, type VNode } from 'preact';
import { describe, expect, it } from 'vitest';
import { FieldText } from '../../../client/screens/field-text.tsx';
import { judgeOf } from '../../../client/screens/judge.ts';
import { SheetTab } from '../../../client/screens/sheet-tab.tsx';
import { type Session, sleepingSession } from '../../../client/state/session.ts';
import type { Reply } from '../../../core/replies/reply.ts';
import { EMPTY_VISIT } from '../../../core/visit/empty-visit.ts';
import type { VisitState } from '../../../core/visit/state.ts';

interface Drawn {
  readonly name: string;
  readonly props: Record<string, unknown>;
  /** The way to it from the root: what each step is and which of its siblings, as Preact tells them apart. */
  readonly path: string;
}

/** Every element that is drawn by components without hooks; those that are `left` are not gone into. */
function drawn(node: unknown, left: readonly string[] = [], path = ''): readonly Drawn[] {
  if (Array.isArray(node)) {
    return node.flatMap((each, index) => drawn(each, left, `${path}/${index}`));
  }
  if (!isValidElement(node)) return [];
  const { type, props }: VNode<Record<string, unknown>> = node;
  const key: unknown = node.key;
  const name = typeof type === 'string' ? type : type.name;
  const here = `${path} ${name}${key == null ? '' : `#${JSON.stringify(key)}`}`;
  if (left.includes(name)) return [];
  if (typeof type !== 'string') return drawn(Reflect.apply(type, undefined, [props]), left, here);
  return [{ name, props, path: here }, ...drawn(props['children'], left, here)];
}

function wordsIn(node: unknown): string {
  if (Array.isArray(node)) return node.map(wordsIn).join('');
  if (typeof node === 'string') return node;
  if (!isValidElement(node)) return '';
  const { type, props }: VNode<Record<string, unknown>> = node;
  return wordsIn(
    typeof type === 'string' ? props['children'] : Reflect.apply(type, undefined, [props]),
  );
}

const FRESH = sleepingSession(EMPTY_VISIT);
const QUESTION = {
  kind: 'leftOver',
  of: { id: '01KAXE0000000000000000000A', at: 0, digits: '146', words: '146' },
} as const;
const replied = (text: string, large: Reply['large'] = null): Session['memory'] => ({
  ...FRESH.memory,
  lastReply: { text, spoken: text, large, earcon: 'answer' },
});
const LARGE = { name: 'head', value: '146', unit: 'psi' };

const SESSIONS: Record<string, Session> = {
  asleep: FRESH,
  opening: { ...FRESH, mode: { kind: 'opening' } },
  'listening for the first time': { ...FRESH, mode: { kind: 'listening' } },
  answered: { ...FRESH, mode: { kind: 'listening' }, memory: replied('Kept.') },
  'answered with a figure': {
    ...FRESH,
    mode: { kind: 'listening' },
    memory: replied('Head is 146 psi. It is as it should be.', LARGE),
  },
  asked: { ...FRESH, mode: { kind: 'asking', question: QUESTION, ear: { kind: 'open' } } },
  'on hold': { ...FRESH, mode: { kind: 'paused', by: 'press' }, memory: replied('Kept.') },
  'not kept': { ...FRESH, notice: { kind: 'unread', what: 'all' } },
};

describe('what is announced', () => {
  const announced = (session: Session): Drawn => {
    const [found, ...others] = drawn(
      <FieldText session={session} onPress={() => undefined} />,
    ).filter(({ props }) => props['role'] === 'status');
    if (found === undefined || others.length > 0) throw new Error('one thing is announced');
    return found;
  };

  it.each(Object.entries(SESSIONS))(
    'stays where it was and changes its words: %s',
    (_, session) => {
      expect(announced(session).path).toBe(announced(FRESH).path);
    },
  );

  it('tells what each is', () => {
    const words = Object.values(SESSIONS).map((each) => wordsIn(announced(each).props['children']));
    expect(words[3]).toBe('Kept. ');
    expect(words[6]).toBe('Press here to go on.');
    expect(words.every((each) => each !== '')).toBe(true);
  });
});

describe('the sheet of readings', () => {
  const headings = (visit: VisitState): readonly string[] =>
    drawn(
      <SheetTab visit={visit} judge={judgeOf} send={() => undefined} onWords={() => undefined} />,
      ['Sheet'],
    )
      .filter(({ name }) => name === 'h2')
      .map(({ props }) => wordsIn(props['children']));

  it('has a heading for every section of it', () => {
    expect(headings(EMPTY_VISIT)).toEqual(['Readings']);
    expect(headings({ ...EMPTY_VISIT, leftOver: [QUESTION.of] })).toEqual([
      'Still open',
      'Readings',
    ]);
  });
});
