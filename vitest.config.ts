import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('.', import.meta.url));
const alias = { '@': root };

/** `unit` needs nothing but Node; `media` needs FFmpeg; `app` drives the built server and Chromium. */
export default defineConfig({
  test: {
    projects: [
      {
        resolve: { alias },
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/media/**', 'tests/http/**', 'tests/browser/**'],
          // No test here replaces a module, so each worker reads them once: that saves more than a minute.
          isolate: false,
          testTimeout: 30_000,
        },
      },
      {
        resolve: { alias },
        test: {
          name: 'media',
          include: ['tests/media/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 240_000,
          pool: 'forks',
          fileParallelism: false,
        },
      },
      {
        resolve: { alias },
        test: {
          name: 'app',
          include: ['tests/http/**/*.test.ts', 'tests/browser/**/*.test.ts'],
          isolate: false,
          testTimeout: 120_000,
          hookTimeout: 240_000,
          // A busy machine takes its time; what never comes about still fails.
          expect: { poll: { timeout: 10_000 } },
          fileParallelism: false,
        },
      },
    ],
  },
});
