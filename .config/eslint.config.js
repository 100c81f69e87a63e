import js from '@eslint/js';
import prettier from 'eslint-config-prettier';
import tseslint from 'typescript-eslint';

const machineNames = [
  'Date',
  'process',
  'console',
  'performance',
  'setTimeout',
  'setInterval',
];

export default tseslint.config(
  { ignores: ['dist/', 'node_modules/', '.docs/', 'tests/**/*.js', 'tests/**/*.py'] },
  js.configs.recommended,
  ...tseslint.configs.strictTypeChecked,
  ...tseslint.configs.stylisticTypeChecked,
  {
    languageOptions: {
      parserOptions: {
        // The tests' settings take in the sources too: one program is checked, not two.
        project: ['./tests/tsconfig.json'],
        tsconfigRootDir: new URL('..', import.meta.url).pathname,
      },
    },
    rules: {
      '@typescript-eslint/no-inferrable-types': 'off',
      '@typescript-eslint/restrict-template-expressions': [
        'error',
        { allowNumber: true },
      ],
      // There are no classes of our own and no enums, and looking for them takes a third of the time.
      '@typescript-eslint/no-unsafe-class-instance-assignment': 'off',
      '@typescript-eslint/no-unsafe-enum-assignment': 'off',
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-confusing-void-expression': [
        'error',
        { ignoreArrowShorthand: true },
      ],
      'max-lines': ['error', { max: 250, skipBlankLines: true, skipComments: true }],
      'max-lines-per-function': [
        'error',
        { max: 60, skipBlankLines: true, skipComments: true },
      ],
      complexity: ['error', 12],
      'max-params': ['error', 4],
      'no-restricted-exports': ['error', { restrictDefaultExports: { direct: true } }],
    },
  },
  {
    files: ['src/**/*.ts'],
    ignores: ['src/world/**', 'src/cli/**'],
    rules: {
      'no-restricted-globals': ['error', ...machineNames],
      'no-restricted-properties': ['error', { object: 'Math', property: 'random' }],
    },
  },
  {
    files: ['tests/**/*.ts'],
    rules: {
      'max-lines': 'off',
      'max-lines-per-function': 'off',
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
    },
  },
  {
    files: ['.config/*.ts'],
    rules: { 'no-restricted-exports': 'off' },
  },
  prettier,
);
