import { defineConfig, globalIgnores } from 'eslint/config';
import { fileURLToPath } from 'node:url';
import tseslint from 'typescript-eslint';

export default defineConfig(
  globalIgnores(['node_modules/', 'site/', '.cache/', 'content/']),
  tseslint.configs.strictTypeChecked,
  {
    languageOptions: { parserOptions: { project: ['tsconfig.json'], tsconfigRootDir: fileURLToPath(new URL('..', import.meta.url)) } },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      eqeqeq: 'error',
      'no-console': 'error',
      'no-control-regex': 'error',
      'no-empty': 'error',
      'no-fallthrough': 'error',
      'no-self-compare': 'error',
      'no-unsafe-finally': 'error',
      'no-useless-escape': 'error',
      'no-irregular-whitespace': 'error',
      'no-unreachable': 'error',
      'prefer-const': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      // The compiler's noPropertyAccessFromIndexSignature asks for the brackets that this rule would take away.
      '@typescript-eslint/dot-notation': 'off',
      // Off, because it takes `undefined` for void: a reader that tells a finding and answers `undefined` in one line is the house's way.
      '@typescript-eslint/no-confusing-void-expression': 'off',
      // A finding that needs no facts has `Record<never, never>` for them, which the rule takes for a slip.
      '@typescript-eslint/no-generated-empty-object-type': 'off',
      // Off, because they cost half as much as all other rules together: our versions are exact, so nothing becomes deprecated by itself, and enums and classes are not the house's way.
      '@typescript-eslint/no-deprecated': 'off',
      '@typescript-eslint/no-unsafe-enum-assignment': 'off',
      '@typescript-eslint/no-unsafe-class-instance-assignment': 'off',
      // Letters of words and digits of numbers are counted by code point on purpose; no emoji is split.
      '@typescript-eslint/no-misused-spread': ['error', { allow: ['string'] }],
    },
  },
  // The command line and the tests' own reports speak to a person at a terminal.
  { files: ['src/cli/**', 'test/run.ts', 'test/prove.ts', 'test/speed/**', 'test/outside/**'], rules: { 'no-console': 'off' } },
  // Messages of tests and reports may hold a number as it is.
  { files: ['test/**'], rules: { '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }] } },
  // Plain JavaScript that has to run before anything is installed. The compiler checks it (checkJs); the typed rules would ask for marks that JavaScript cannot write.
  { files: ['**/*.js'], extends: [tseslint.configs.disableTypeChecked] },
);
