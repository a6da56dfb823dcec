import js from '@eslint/js';
import globals from 'globals';

// The theme's scripts are classic scripts of a page, but for the one that is a service worker.
export default [{
  ...js.configs.recommended,
  languageOptions: { sourceType: 'script', ecmaVersion: 2022, globals: { ...globals.browser, ...globals.serviceworker } },
  linterOptions: { reportUnusedDisableDirectives: 'error' },
  rules: { ...js.configs.recommended.rules, curly: ['error', 'multi-line'], eqeqeq: 'error', 'no-shadow': 'error', 'no-var': 'error', 'prefer-const': 'error' },
}];
