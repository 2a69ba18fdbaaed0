export type ZoneOf = (id: string, at: string) => number;
