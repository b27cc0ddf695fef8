export declare const BROWSER_ARGS: string[];
/** Either a browser with its `path` and the environment it needs, or `missing`: why there is none. */
export declare function findBrowser(): Promise<{
  from?: string;
  path?: string;
  env?: Record<string, string>;
  missing?: string;
}>;
