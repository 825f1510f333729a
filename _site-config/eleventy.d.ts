/** The part of Eleventy that we use; its root export comes without types. */
declare module "@11ty/eleventy" {
  export type UserConfig = {
    addExtension(extensions: string[], options: { key: string }): void;
    addGlobalData(name: string, value: unknown): void;
    addTransform(name: string, transform: (this: { page: { url: string } }, content: string) => string): void;
    setTemplateFormats(formats: string[]): void;
    setDataFileSuffixes(suffixes: string[]): void;
    setUseGitIgnore(use: boolean): void;
    setFrontMatterParsingOptions(options: { engines: Record<string, () => never> }): void;
  };

  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: { quietMode?: boolean; configPath?: string; config?: (userConfig: UserConfig) => void | Promise<void> },
    );
    disableLogger(): void;
    write(): Promise<unknown>;
  }
}
