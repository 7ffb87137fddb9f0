/** The part of Eleventy 3's programmatic interface that is used here; the package ships no types. */
declare module '@11ty/eleventy' {
  export interface EleventyConfig {
    addFilter(name: string, filter: (...args: never[]) => unknown): void
    addTransform(name: string, transform: (html: string) => string): void
    addGlobalData(name: string, value: unknown): void
    /** Times of filters, which the quiet mode does not silence. */
    readonly benchmarks: { readonly config: { setIsVerbose(isVerbose: boolean): void } }
  }
  export default class Eleventy {
    constructor(input: string, output: string, options: { configPath: string; quietMode: boolean; config: (config: EleventyConfig) => void })
    disableLogger(): void
    write(): Promise<unknown>
  }
}
