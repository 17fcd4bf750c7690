const RULES = /\/core\/language\/.*\.ts$/;

/**
 * Leaves the examples of the language's rules out of the built page: the tests, the sampler and who reads the code need
 * them, and no answer does.
 *
 * @returns {import('vite').Plugin}
 */
export function withoutExamples() {
  return {
    name: 'without-examples',
    apply: 'build',
    transform: {
      filter: { id: RULES, code: 'examples: [' },
      handler(code) {
        return { code: withEmptied(this.parse(code), code), map: null };
      },
    },
  };
}

/** @returns {string} The code with every list named `examples` emptied. */
function withEmptied(program, code) {
  const lists = [];
  const visit = (node) => {
    if (Array.isArray(node)) node.forEach(visit);
    if (typeof node?.type !== 'string') return;
    if (isExamples(node)) lists.push(node.value);
    else Object.values(node).forEach(visit);
  };
  visit(program.body);
  return lists.reduceRight(
    (text, { start, end }) => `${text.slice(0, start)}[]${text.slice(end)}`,
    code,
  );
}

const isExamples = ({ type, key, value }) =>
  type === 'Property' && key.name === 'examples' && value.type === 'ArrayExpression';
