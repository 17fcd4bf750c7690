import type { Expectation } from './context.ts';

export function recogniserGrammar(expectation: Expectation): string {
  return expectation;
}
