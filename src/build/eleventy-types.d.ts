/** The part of Eleventy that the build uses; the package ships no types. */
declare module '@11ty/eleventy' {
  interface VirtualTemplate<Data> {
    readonly data: Readonly<Record<string, unknown>>;
    readonly render: (data: Data) => string;
  }
  interface Config {
    setUseGitIgnore(use: boolean): void;
    setQuietMode(quiet: boolean): void;
    setTemplateFormats(formats: readonly string[]): void;
    addTemplate<Data>(path: string, template: VirtualTemplate<Data>): void;
  }
  export default class Eleventy {
    constructor(input: string, output: string, options: { readonly quietMode: boolean; readonly configPath: false; readonly config: (config: Config) => void });
    disableLogger(): void;
    write(): Promise<unknown>;
    toJSON(): Promise<readonly { readonly url: string; readonly content: string }[]>;
  }
}
