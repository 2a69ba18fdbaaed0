/** What of the line-breaking library is used; it brings no types of its own. */
declare module 'linebreak' {
  export default class LineBreaker {
    constructor(text: string);
    /** Where the next line may begin, in order; null behind the last. */
    nextBreak(): { readonly position: number; readonly required: boolean } | null;
  }
}
