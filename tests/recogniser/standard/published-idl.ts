import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import {
  parse,
  type DictionaryType,
  type EnumType,
  type IDLRootType,
  type InterfaceType,
  type OperationMemberType,
} from 'webidl2';

/** The Web Speech API's interfaces as the W3C publishes them (npm @webref/idl), those of the recogniser. */
const PATH = createRequire(import.meta.url).resolve('@webref/idl/speech-api.idl');
const PUBLISHED: readonly IDLRootType[] = parse(readFileSync(PATH, 'utf8'));

export const INTERFACES: readonly InterfaceType[] = PUBLISHED.filter(
  (each): each is InterfaceType =>
    each.type === 'interface' && !each.partial && !each.name.startsWith('SpeechSynthesis'),
);

const DICTIONARIES = PUBLISHED.filter((each): each is DictionaryType => each.type === 'dictionary');
const ENUMS = PUBLISHED.filter((each): each is EnumType => each.type === 'enum');

export function requiredMembers(dictionary: string): readonly string[] {
  const found = DICTIONARIES.find(({ name }) => name === dictionary);
  return (found?.members ?? []).filter(({ required }) => required).map(({ name }) => name);
}

export function enumValues(name: string): readonly string[] {
  return (ENUMS.find((each) => each.name === name)?.values ?? []).map(({ value }) => value);
}

export const attributesOf = ({ members }: InterfaceType) =>
  members.filter((member) => member.type === 'attribute');

/** Each by its name once, with the fewest arguments that any of its overloads takes. */
export function operationsOf({ members }: InterfaceType): readonly Operation[] {
  const overloads = members
    .filter((member): member is OperationMemberType => member.type === 'operation')
    .map((member) => ({
      name: member.name ?? '',
      isStatic: member.special === 'static',
      isPromised: member.idlType?.generic === 'Promise',
      fewest: fewest(member.arguments),
    }));
  return [...new Set(overloads.map(({ name }) => name))].flatMap((name) => {
    const same = overloads.filter((each) => each.name === name);
    const [first] = same;
    return first ? [{ ...first, fewest: Math.min(...same.map((each) => each.fewest)) }] : [];
  });
}

export interface Operation {
  readonly name: string;
  readonly isStatic: boolean;
  readonly isPromised: boolean;
  readonly fewest: number;
}

/** Null where there is no constructor. */
export function constructorLength({ members }: InterfaceType): number | null {
  const constructors = members.filter((member) => member.type === 'constructor');
  return constructors.length === 0
    ? null
    : Math.min(...constructors.map((each) => fewest(each.arguments)));
}

const fewest = (given: readonly { readonly optional: boolean }[]): number =>
  given.filter(({ optional }) => !optional).length;

export const hasNumberedProperties = ({ members }: InterfaceType): boolean =>
  members.some((member) => member.type === 'operation' && member.special === 'getter');

export const isSecureOnly = ({ extAttrs }: InterfaceType): boolean =>
  extAttrs.some(({ name }) => name === 'SecureContext');
