/** As much of jsdom's window as the fake host uses: the package comes without types. */
declare module "jsdom" {
  export class JSDOM {
    constructor(html: string, options: { readonly url: string; readonly runScripts: "outside-only" });
    readonly window: Window & typeof globalThis;
  }
}
