/** The part of Eleventy that is used; the package has no types. */
export interface EleventyConfig {
  readonly setNunjucksEnvironmentOptions: (options: Readonly<Record<string, boolean>>) => void;
  readonly addGlobalData: (name: string, value: () => unknown) => void;
  readonly setUseGitIgnore: (use: boolean) => void;
  readonly setServerOptions: (options: Readonly<Record<string, unknown>>) => void;
  readonly addWatchTarget: (path: string) => void;
  readonly on: (event: string, listener: (details: unknown) => unknown) => void;
  readonly ignores: { readonly delete: (glob: string) => boolean };
}

export interface EleventyRun {
  readonly write: () => Promise<unknown>;
  readonly watch: () => Promise<unknown>;
  readonly serve: (port: number) => Promise<unknown>;
}

export interface EleventyOptions {
  readonly quietMode?: boolean;
  readonly configPath?: string | false;
  readonly source?: "cli" | "script";
  readonly runMode?: "build" | "serve" | "watch";
  readonly config: (config: EleventyConfig) => unknown;
}

/** Relative to Eleventy's input, as it wants them. */
export const ELEVENTY_DIR = { includes: "..", layouts: "../layouts", data: "../data" } as const;
