import { describe, expect, it } from 'vitest';

import {
  SpeechRecognitionErrorEvent,
  SpeechRecognitionEvent,
} from '../../../client/recogniser/events.ts';
import { SpeechGrammar, SpeechGrammarList } from '../../../client/recogniser/grammars.ts';
import { SpeechRecognitionPhrase } from '../../../client/recogniser/phrase.ts';
import {
  makeAlternative,
  makeResult,
  makeResultList,
  SpeechRecognitionAlternative,
  SpeechRecognitionResult,
  SpeechRecognitionResultList,
} from '../../../client/recogniser/results.ts';
import { createBench } from '../harness.ts';
import { attributesOf, enumValues, INTERFACES, requiredMembers } from './published-idl.ts';
import { call, descriptorOf, get, make, printed } from './untyped.ts';

const results = makeResultList([
  makeResult([makeAlternative('head', 0.5), makeAlternative('bed', 0.25)], true),
  makeResult([makeAlternative(' box', 0)], false),
]);
const [first] = results;

/** One of each, by the name of its interface. */
const MADE: Readonly<Record<string, object | undefined>> = {
  SpeechRecognition: createBench().recognition,
  SpeechRecognitionErrorEvent: new SpeechRecognitionErrorEvent('error', { error: 'network' }),
  SpeechRecognitionAlternative: first?.[0],
  SpeechRecognitionResult: first,
  SpeechRecognitionResultList: results,
  SpeechRecognitionEvent: new SpeechRecognitionEvent('result', { results }),
  SpeechGrammar: new SpeechGrammar(),
  SpeechGrammarList: new SpeechGrammarList(),
  SpeechRecognitionPhrase: new SpeechRecognitionPhrase('head'),
};

const CLASSES: Readonly<Record<string, unknown>> = {
  SpeechRecognitionResultList,
  SpeechGrammarList,
};

/** Whether a value is of a type of the published text. */
function isOf(type: string, value: unknown): boolean {
  if (type === 'DOMString') return typeof value === 'string';
  if (type === 'boolean') return typeof value === 'boolean';
  if (type === 'unsigned long') return Number.isInteger(value) && Number(value) >= 0;
  if (type === 'float') return typeof value === 'number' && Math.fround(value) === value;
  if (type === 'EventHandler') return value === null;
  if (type === 'SpeechRecognitionErrorCode') return enumValues(type).includes(String(value));
  if (type === 'ObservableArray') return Array.isArray(value);
  const face = CLASSES[type];
  return typeof face === 'function' && value instanceof face;
}

describe.each(INTERFACES)('an object of $name', (published) => {
  const made = MADE[published.name];

  it('prints by its name and has each attribute in its type', () => {
    if (made === undefined) throw new Error('none was made');
    expect(printed(made)).toBe(`[object ${published.name}]`);
    for (const { name, idlType } of attributesOf(published)) {
      const type = typeof idlType.idlType === 'string' ? idlType.idlType : idlType.generic;
      expect(Object.hasOwn(made, name)).toBe(false);
      expect([name, isOf(type, get(made, name))]).toEqual([name, true]);
    }
  });
});

const typeError: unknown = expect.any(TypeError);
const setting = (object: object, name: string) => (value: unknown) =>
  Reflect.set(object, name, value);

describe('attributes', () => {
  it('take what is given as their type', () => {
    const { recognition } = createBench();
    const cases: readonly [string, unknown, unknown][] = [
      ['maxAlternatives', -1, 2 ** 32 - 1],
      ['maxAlternatives', 2 ** 32 + 3, 3],
      ['maxAlternatives', '7', 7],
      ['maxAlternatives', 2.9, 2],
      ['maxAlternatives', 'many', 0],
      ['maxAlternatives', Infinity, 0],
      ['lang', null, 'null'],
      ['lang', undefined, 'undefined'],
      ['lang', 5, '5'],
      ['continuous', 'no', true],
      ['continuous', '', false],
      ['interimResults', 1, true],
      ['unspokenPunctuation', {}, true],
      ['processLocally', null, false],
    ];
    for (const [name, given, kept] of cases) {
      setting(recognition, name)(given);
      expect([name, given, Reflect.get(recognition, name)]).toEqual([name, given, kept]);
    }
  });

  it('refuse what cannot be made their type', () => {
    const { recognition } = createBench();
    expect(() => setting(recognition, 'lang')(Symbol('en'))).toThrow(typeError);
    expect(() => setting(recognition, 'maxAlternatives')(3n)).toThrow(typeError);
    expect(() => setting(recognition, 'grammars')({ length: 0 })).toThrow(typeError);
    expect(() => setting(recognition, 'grammars')(null)).toThrow(typeError);
    const grammar = new SpeechGrammar();
    for (const weight of [NaN, Infinity, 1e39, 'heavy']) {
      expect(() => setting(grammar, 'weight')(weight)).toThrow(typeError);
    }
    grammar.weight = 0.1;
    expect(grammar.weight).toBe(Math.fround(0.1));
  });

  it('of phrases are an array that takes phrases alone and has no holes', () => {
    const { recognition } = createBench();
    const head = new SpeechRecognitionPhrase('head', 2);
    const { phrases } = recognition;
    expect(Array.isArray(phrases)).toBe(true);
    phrases.push(head);
    expect(recognition.phrases).toBe(phrases);
    expect(() => setting(phrases, '1')({ phrase: 'box', boost: 1 })).toThrow(typeError);
    expect(setting(phrases, '2')(head)).toBe(false);
    expect(setting(phrases, 'length')(5)).toBe(false);
    expect(() => setting(phrases, 'length')(-1)).toThrow(RangeError);
    expect(Reflect.deleteProperty(phrases, '5')).toBe(true);
    expect(Object.isExtensible(Object.seal(Object.create(phrases)))).toBe(false);
    expect(() => Object.preventExtensions(phrases)).toThrow(typeError);
    recognition.phrases = [head, head];
    expect([recognition.phrases === phrases, phrases.length]).toEqual([true, 2]);
    expect(Reflect.deleteProperty(phrases, '0')).toBe(false);
    expect(Reflect.deleteProperty(phrases, '1')).toBe(true);
    expect(phrases).toEqual([head]);
    expect(() => setting(recognition, 'phrases')([head, 'box'])).toThrow(typeError);
    expect(() => setting(recognition, 'phrases')(null)).toThrow(typeError);
    expect(phrases).toEqual([head]);
    setting(recognition, 'phrases')(new Set([head, head]));
    expect(phrases).toHaveLength(1);
    phrases.length = 0;
    expect(recognition.phrases).toEqual([]);
  });

  it('of handlers keep any object, call what can be called, and take the rest for none', async () => {
    const { recognition, settle } = createBench();
    const idle = {};
    setting(recognition, 'onstart')(idle);
    expect(recognition.onstart).toBe(idle);
    const called: unknown[] = [];
    recognition.onend = function (this: unknown) {
      called.push(this);
    };
    recognition.start();
    recognition.stop();
    await settle();
    expect(called).toEqual([recognition]);
    setting(recognition, 'onend')('none');
    expect(recognition.onend).toBeNull();
  });

  it('of a handler given up and set anew put it behind the others', async () => {
    const { recognition, settle } = createBench();
    const order: string[] = [];
    recognition.onstart = () => order.push('first');
    recognition.addEventListener('start', () => order.push('second'));
    recognition.onstart = null;
    recognition.onstart = () => order.push('third');
    recognition.start();
    await settle();
    expect(order).toEqual(['second', 'third']);
  });
});

describe('numbered properties', () => {
  it('are read by number and by item(), which differ beyond the end', () => {
    expect([results.length, results[1], results[2]]).toEqual([2, results.item(1), undefined]);
    expect([results.item(2), results.item(-1), results.item(2 ** 32 + 1)]).toEqual([
      null,
      null,
      results[1],
    ]);
    expect([0 in results, 2 in results, 'item' in results]).toEqual([true, false, true]);
    expect(Object.keys(results)).toEqual(['0', '1']);
    expect([...results]).toEqual([results[0], results[1]]);
    expect(descriptorOf(results, '0')).toEqual({
      value: results[0],
      writable: false,
      enumerable: true,
      configurable: true,
    });
  });

  it('cannot be changed', () => {
    expect(Reflect.set(results, '0', null)).toBe(false);
    expect(Reflect.set(results, '7', null)).toBe(false);
    expect(Reflect.defineProperty(results, '7', { value: 1 })).toBe(false);
    expect(Reflect.deleteProperty(results, '0')).toBe(false);
    expect(Reflect.deleteProperty(results, '7')).toBe(true);
    expect(() => Object.freeze(results)).toThrow(typeError);
    expect(Reflect.set(results, 'mine', 1)).toBe(true);
    expect(Object.keys(results)).toEqual(['0', '1', 'mine']);
    expect(Reflect.deleteProperty(results, 'mine')).toBe(true);
  });

  it('of a list of grammars grow with it', () => {
    const list = new SpeechGrammarList();
    list.addFromUri('good.jsgf');
    list.addFromString('#JSGF V1.0; grammar é; public <é> = a;', 0.5);
    expect([...list].map(({ src, weight }) => [src.slice(0, 9), weight])).toEqual([
      ['good.jsgf', 1],
      ['data:appl', 0.5],
    ]);
    expect([list[1], list[2], list.item(2)]).toEqual([list.item(1), undefined, null]);
    expect(() => call(get(list, 'addFromUri'), list, [])).toThrow(typeError);
    expect(() => call(get(list, 'addFromUri'), list, ['x', 'heavy'])).toThrow(typeError);
    expect(list).toHaveLength(2);
  });
});

describe('what a page may make', () => {
  const making = (face: unknown, given: readonly unknown[]) => () => make(face, given);

  it('needs the members that the text calls required', () => {
    expect(requiredMembers('SpeechRecognitionErrorEventInit')).toEqual(['error']);
    expect(requiredMembers('SpeechRecognitionEventInit')).toEqual(['results']);
    for (const init of [undefined, null, {}, { message: 'why' }, 5]) {
      expect(making(SpeechRecognitionErrorEvent, ['error', init])).toThrow(typeError);
    }
    for (const init of [undefined, {}, { results: null }, { results: [] }]) {
      expect(making(SpeechRecognitionEvent, ['result', init])).toThrow(typeError);
    }
  });

  it('is an error event of each published code and of no other', () => {
    for (const error of enumValues('SpeechRecognitionErrorCode')) {
      const event = make(SpeechRecognitionErrorEvent, ['x', { error, message: 7 }]);
      expect(event).toMatchObject({ type: 'x', error, message: '7', bubbles: false });
    }
    for (const error of ['bad-grammar', '', null]) {
      expect(making(SpeechRecognitionErrorEvent, ['error', { error }])).toThrow(typeError);
    }
  });

  it('is a result event with the standard’s conversions and defaults', () => {
    const init = { results, resultIndex: -1, bubbles: true, cancelable: 1 };
    expect(make(SpeechRecognitionEvent, ['r', init])).toMatchObject({
      resultIndex: 2 ** 32 - 1,
      results,
      bubbles: true,
      cancelable: true,
    });
    expect(new SpeechRecognitionEvent('r', { results }).resultIndex).toBe(0);
  });

  it('is no result, even by another’s constructor', () => {
    for (const face of [
      SpeechRecognitionAlternative,
      SpeechRecognitionResult,
      SpeechRecognitionResultList,
    ]) {
      expect(() => make(face, [Symbol('internal')])).toThrow('Illegal constructor');
      expect(() => make(face, [])).toThrow(typeError);
    }
  });

  it('is a phrase with a boost of 0 to 10', () => {
    expect(new SpeechRecognitionPhrase('head')).toMatchObject({ phrase: 'head', boost: 1 });
    expect(make(SpeechRecognitionPhrase, [undefined])).toMatchObject({ phrase: 'undefined' });
    for (const boost of [-0.1, 10.1]) {
      expect(() => new SpeechRecognitionPhrase('head', boost)).toThrow(
        expect.objectContaining({ name: 'SyntaxError' }),
      );
    }
    for (const given of [[], ['head', NaN], ['head', 'much']]) {
      expect(making(SpeechRecognitionPhrase, given)).toThrow(typeError);
    }
  });
});
