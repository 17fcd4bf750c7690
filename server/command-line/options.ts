import { parseArgs } from 'node:util';
import type { ParseArgsConfig } from 'node:util';

type OptionTable = NonNullable<ParseArgsConfig['options']>;
type Parsed<Table extends OptionTable> = ReturnType<
  typeof parseArgs<{ options: Table; allowPositionals: true; strict: true }>
>;

/** A command's words, sorted, or the one line that says what is wrong with them. */
export type Options<Table extends OptionTable> =
  | {
      readonly kind: 'options';
      readonly values: Parsed<Table>['values'];
      readonly words: readonly string[];
    }
  | { readonly kind: 'unusable'; readonly why: string };

export function parseOptions<Table extends OptionTable>(
  args: readonly string[],
  table: Table,
): Options<Table> {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      options: table,
      allowPositionals: true,
      strict: true,
    });
    return { kind: 'options', values, words: positionals };
  } catch (fault) {
    return { kind: 'unusable', why: fault instanceof Error ? firstSentence(fault) : String(fault) };
  }
}

/** node:util adds a paragraph on `--` after its first sentence; one line is enough here. */
const firstSentence = (fault: Error): string => fault.message.split(/\. |\n/)[0] ?? fault.message;

export const unusable = (why: string) => ({ kind: 'unusable', why }) as const;
