/** What is used of pngjs, which brings no types of its own. */
declare module "pngjs" {
  export class PNG {
    constructor(options: { readonly width: number; readonly height: number })
    readonly width: number
    readonly height: number
    /** Red, green, blue and how opaque, a byte each. */
    readonly data: Buffer
    static readonly sync: {
      read(file: Uint8Array): PNG
      /** Colour type 0 is grey, 2 colours. */
      write(image: PNG, options?: { readonly colorType?: 0 | 2; readonly inputHasAlpha?: boolean }): Buffer
    }
  }
}
