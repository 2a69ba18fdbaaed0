/** A drawing of the plan on a sheet of its own. */
export type Sheet = { readonly file: string; readonly title: string; readonly svg: string };
