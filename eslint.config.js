import boundaries from 'eslint-plugin-boundaries';
import { importX } from 'eslint-plugin-import-x';
import tseslint from 'typescript-eslint';

/**
 * Who may import whom in core, besides `core` itself (core/unreachable.ts), which all may: `values` whole, `types`
 * only with `import type`. DEVELOPERS.md shows it as a table: `npm run readme` writes that, a test compares.
 */
export const ARROWS = {
  terms: { values: [], types: ['units'] },
  units: { values: [], types: [] },
  grammar: { values: [], types: [] },
  fluids: { values: ['units'], types: ['terms'] },
  calculations: { values: ['units', 'fluids', 'terms'], types: [] },
  language: { values: ['grammar', 'units', 'terms'], types: [] },
  hearing: { values: [], types: [] },
  visit: { values: ['units', 'terms'], types: ['language'] },
  advice: { values: ['visit', 'calculations', 'fluids', 'units', 'terms'], types: ['language'] },
  replies: { values: ['units', 'terms'], types: ['advice', 'visit', 'language'] },
  note: { values: ['visit', 'advice', 'replies', 'units', 'terms'], types: ['language'] },
  turn: {
    values: ['language', 'visit', 'advice', 'replies', 'note', 'units', 'terms'],
    types: [],
  },
  wire: { values: ['units', 'terms'], types: ['language', 'visit'] },
  core: { values: [], types: [] },
};
const ROOMS = Object.keys(ARROWS);
const OUTSIDE = ['prompts', 'server', 'client', 'recogniser', 'tests'];

const OWN_FEET = 'core stands on its own feet: its only outside dependency is zod, in core/wire.';

const allow = (from, to, kind) => ({
  from: { element: { type: from } },
  allow: { to: { element: { type: to } }, ...(kind ? { dependency: { kind } } : {}) },
});

const roomPolicies = ROOMS.flatMap((room) => [
  allow(room, [room, 'core', ...ARROWS[room].values]),
  ...(ARROWS[room].types.length > 0 ? [allow(room, ARROWS[room].types, 'type')] : []),
]);

export default tseslint.config(
  { ignores: ['build/**', 'node_modules/**', '.cache/**'] },
  ...tseslint.configs.strictTypeChecked,
  {
    languageOptions: {
      parserOptions: {
        project: ['core', 'prompts', 'server', 'client', 'client/workers', 'tests'].map(
          (room) => `./${room}/tsconfig.json`,
        ),
        tsconfigRootDir: import.meta.dirname,
      },
    },
    plugins: { boundaries, 'import-x': importX },
    settings: {
      'import/resolver': { typescript: { alwaysTryTypes: true } },
      'import-x/resolver': { typescript: true },
      'boundaries/elements': [
        // First, and by the whole path: tests/server is a test, not the server.
        { type: 'tests', pattern: 'tests/**', partialMatch: false },
        ...ROOMS.filter((room) => room !== 'core').map((room) => ({
          type: room,
          pattern: `core/${room}`,
        })),
        { type: 'core', pattern: 'core' },
        { type: 'recogniser', pattern: 'client/recogniser' },
        ...OUTSIDE.filter((room) => room !== 'recogniser' && room !== 'tests').map((room) => ({
          type: room,
          pattern: room,
        })),
      ],
    },
    rules: {
      'boundaries/dependencies': [
        'error',
        {
          default: 'disallow',
          policies: [
            ...roomPolicies,
            allow('prompts', ['prompts', ...ROOMS]),
            allow('server', ['server', 'prompts', ...ROOMS]),
            allow('client', ['client', 'recogniser', 'prompts', ...ROOMS]),
            allow('recogniser', ['recogniser', 'hearing']),
            allow('tests', [...OUTSIDE, ...ROOMS]),
          ],
        },
      ],
      'import-x/no-cycle': 'error',
      'import-x/no-default-export': 'error',
      'max-lines': ['error', { max: 400, skipBlankLines: true, skipComments: true }],
      'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
      'max-params': ['error', 3],
      'max-depth': ['error', 3],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { ignoreRestSiblings: true }],
      '@typescript-eslint/consistent-type-assertions': ['error', { assertionStyle: 'never' }],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
    },
  },
  {
    files: ['core/units/**', 'core/wire/**'],
    rules: { '@typescript-eslint/consistent-type-assertions': 'off' },
  },
  {
    files: ['core/**', 'prompts/**'],
    rules: {
      'no-restricted-globals': [
        'error',
        'Date',
        'performance',
        'crypto',
        'fetch',
        'setTimeout',
        'console',
      ],
      'no-restricted-properties': ['error', { object: 'Math', property: 'random' }],
      'no-restricted-imports': ['error', { patterns: [{ regex: '^[^.]', message: OWN_FEET }] }],
    },
  },
  {
    files: ['core/wire/**'],
    rules: {
      'no-restricted-imports': [
        'error',
        { patterns: [{ regex: '^(?!zod$)[^.]', message: OWN_FEET }] },
      ],
    },
  },
  {
    // A test's describe block is one function however many cases it holds.
    files: ['tests/**'],
    rules: { 'max-lines-per-function': 'off' },
  },
  {
    files: ['*.config.{js,ts}', '**/*.mjs', '**/*.js'],
    ...tseslint.configs.disableTypeChecked,
    rules: { ...tseslint.configs.disableTypeChecked.rules, 'import-x/no-default-export': 'off' },
  },
);
