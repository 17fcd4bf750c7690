import { describe, expect, it } from 'vitest';

import { installSpeechRecognition } from '../../../client/recogniser/install-speech-recognition.ts';
import { createBench } from '../harness.ts';
import {
  attributesOf,
  constructorLength,
  hasNumberedProperties,
  INTERFACES,
  isSecureOnly,
  operationsOf,
} from './published-idl.ts';
import { call, descriptorOf, get, make, printed } from './untyped.ts';

const target: object = { isSecureContext: true };
installSpeechRecognition(target, createBench().SpeechRecognition);

function interfaceObject(name: string): Face {
  const found = get(target, name);
  if (typeof found !== 'function') throw new Error(`${name} is not installed`);
  const prototype = get(found, 'prototype');
  if (typeof prototype !== 'object' || prototype === null) {
    throw new Error(`${name} has no prototype`);
  }
  return { found, prototype };
}

interface Face {
  readonly found: object;
  readonly prototype: object;
}

const shapeOf = (value: unknown): readonly unknown[] =>
  typeof value === 'function' ? [value.length, value.name] : ['no function'];
const typeError: unknown = expect.any(TypeError);

it('are all the published ones of the recogniser', () => {
  expect(INTERFACES.map(({ name }) => name)).toEqual([
    'SpeechRecognition',
    'SpeechRecognitionErrorEvent',
    'SpeechRecognitionAlternative',
    'SpeechRecognitionResult',
    'SpeechRecognitionResultList',
    'SpeechRecognitionEvent',
    'SpeechGrammar',
    'SpeechGrammarList',
    'SpeechRecognitionPhrase',
  ]);
});

describe.each(INTERFACES)('$name', (published) => {
  const { name, inheritance } = published;
  const { found, prototype } = interfaceObject(name);

  it('stands on the global as interfaces do', () => {
    expect(descriptorOf(target, name)).toEqual({
      value: found,
      writable: true,
      enumerable: false,
      configurable: true,
    });
  });

  it('has the published constructor', () => {
    const length = constructorLength(published);
    expect(descriptorOf(found, 'length')).toEqual({
      value: length ?? 0,
      writable: false,
      enumerable: false,
      configurable: true,
    });
    expect(descriptorOf(found, 'name')).toEqual({
      value: name,
      writable: false,
      enumerable: false,
      configurable: true,
    });
    expect(() => call(found, undefined, [])).toThrow(typeError);
    // The one departure: the published tests and every browser make a SpeechGrammar, the text does not.
    const isMadeByNew = length === 0 || name === 'SpeechGrammar';
    if (isMadeByNew) expect(Object.getPrototypeOf(make(found, []))).toBe(prototype);
    else expect(() => make(found, [])).toThrow(typeError);
  });

  it('has its parent and its prototype in their places', () => {
    const parent = inheritance === null ? null : get(globalThis, inheritance);
    expect(Object.getPrototypeOf(found)).toBe(parent ?? Function.prototype);
    expect(Object.getPrototypeOf(prototype)).toBe(
      typeof parent === 'function' ? get(parent, 'prototype') : Object.prototype,
    );
    const { value, ...rest } = descriptorOf(found, 'prototype');
    expect(value === prototype).toBe(true);
    expect(rest).toEqual({
      writable: false,
      enumerable: false,
      configurable: false,
    });
    expect(descriptorOf(prototype, 'constructor')).toEqual({
      value: found,
      writable: true,
      enumerable: false,
      configurable: true,
    });
    expect(descriptorOf(prototype, Symbol.toStringTag)).toEqual({
      value: name,
      writable: false,
      enumerable: false,
      configurable: true,
    });
    expect(printed(prototype)).toBe(`[object ${name}]`);
  });

  it('has the published members and no others', () => {
    const operations = operationsOf(published);
    const attributes = attributesOf(published).map((attribute) => attribute.name);
    const methods = operations.filter(({ isStatic }) => !isStatic).map((each) => each.name);
    const statics = operations.filter(({ isStatic }) => isStatic).map((each) => each.name);
    expect(Object.getOwnPropertyNames(prototype).sort()).toEqual(
      ['constructor', ...attributes, ...methods].sort(),
    );
    expect(Object.getOwnPropertyNames(found).sort()).toEqual(
      ['length', 'name', 'prototype', ...statics].sort(),
    );
    expect(Object.getOwnPropertySymbols(prototype)).toEqual(
      hasNumberedProperties(published)
        ? expect.arrayContaining([Symbol.toStringTag, Symbol.iterator])
        : [Symbol.toStringTag],
    );
  });

  if (hasNumberedProperties(published)) {
    it('is walked as an array is', () => {
      expect(descriptorOf(prototype, Symbol.iterator)).toEqual({
        value: Array.prototype[Symbol.iterator],
        writable: true,
        enumerable: false,
        configurable: true,
      });
    });
  }

  for (const attribute of attributesOf(published)) {
    it(`has ${attribute.name} as the text says`, () => {
      const held = descriptorOf(prototype, attribute.name);
      expect(held).toMatchObject({ enumerable: true, configurable: true });
      expect(shapeOf(held.get)).toEqual([0, `get ${attribute.name}`]);
      expect(() => call(held.get, {}, [])).toThrow(typeError);
      expect(() => get(prototype, attribute.name)).toThrow(typeError);
      if (attribute.readonly) {
        expect(held.set).toBeUndefined();
      } else {
        expect(shapeOf(held.set)).toEqual([1, `set ${attribute.name}`]);
        expect(() => call(held.set, {}, [null])).toThrow(typeError);
      }
    });
  }

  for (const operation of operationsOf(published)) {
    it(`has ${operation.name}() as the text says`, async () => {
      const holder = operation.isStatic ? found : prototype;
      const held = descriptorOf(holder, operation.name);
      expect(held).toMatchObject({ writable: true, enumerable: true, configurable: true });
      expect(shapeOf(held.value)).toEqual([operation.fewest, operation.name]);
      const full = Array.from({ length: operation.fewest }, () => 0);
      if (operation.isPromised) {
        await expect(call(held.value, found, [])).rejects.toThrow(TypeError);
      } else {
        expect(() => call(held.value, {}, full)).toThrow(typeError);
        expect(() => call(held.value, null, full)).toThrow(typeError);
      }
    });
  }
});

it('outside a secure context are those that the text lets out', () => {
  const plain = { isSecureContext: false };
  installSpeechRecognition(plain, createBench().SpeechRecognition);
  const installed = Object.getOwnPropertyNames(plain).filter((name) => name.startsWith('Speech'));
  const open = INTERFACES.filter((each) => !isSecureOnly(each)).map(({ name }) => name);
  expect(installed.sort()).toEqual(open.sort());
});

it('take the place of the names with a prefix', () => {
  const old = { webkitSpeechRecognition: () => undefined, webkitSpeechGrammarList: 1 };
  installSpeechRecognition(old, createBench().SpeechRecognition);
  expect(Object.keys(old)).toEqual([]);
});
