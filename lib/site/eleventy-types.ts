/** The part of Eleventy that is used; the package has no types. */
export interface EleventyConfig {
  readonly setLibrary: (engine: "njk", environment: unknown) => void;
  readonly addGlobalData: (name: string, value: () => unknown) => void;
  readonly setUseGitIgnore: (use: boolean) => void;
  /** What it times of the configuration and its plugins, and tells on standard error of slow ones. */
  readonly benchmarkManager: {
    readonly get: (group: "Configuration") => {
      readonly setIsVerbose: (isVerbose: boolean) => void;
    };
  };
  readonly ignores: { readonly delete: (glob: string) => boolean };
}

export interface EleventyRun {
  /** Not a word to the terminal: errors are thrown as well. */
  readonly disableLogger: () => void;
  /** Every page as it would be written. */
  readonly toJSON: () => Promise<
    readonly {
      /** From the folder that the program runs in. */
      readonly outputPath: string;
      readonly content: string;
    }[]
  >;
}

export interface EleventyOptions {
  readonly quietMode?: boolean;
  readonly configPath?: string | false;
  readonly source?: "cli" | "script";
  readonly runMode?: "build";
  readonly config: (config: EleventyConfig) => unknown;
}
