import { defineConfig } from 'vitest/config';
import { ClosingLine } from './support/closing-line.ts';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/support/fast-check.ts'],
    reporters: ['default', new ClosingLine()],
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
