export type PassageKind = 'hatch' | 'door' | 'stair' | 'crawl';
