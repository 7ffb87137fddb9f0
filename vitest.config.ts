import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // Eleventy resolves its folders from the working directory, which only a process of its own can change.
    pool: 'forks',
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
})
