import type { Range } from '@kneewall/project';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/resultBase.ts';

export type PaperKind = 'permit' | 'inspection' | 'warranty' | 'insurance' | 'quote' | 'incentive';
export type PaperStatus = 'open' | 'asked' | 'granted' | 'refused';
export type YesNo = 'yes' | 'no' | 'unknown';

/** Work that laws, makers and insurers usually keep for licensed people. */
export const licensedWorks = ['refrigerant', 'electrical', 'gas', 'startUp'] as const;
export type LicensedWork = (typeof licensedWorks)[number];

/** One paper as it was entered. */
export type Paper = {
  readonly id: string;
  readonly name: string;
  readonly kind: PaperKind;
  readonly asker?: string;
  readonly status: PaperStatus;
  /** A day of the calendar; `dueWrong` where what was entered is none. */
  readonly due?: string;
  readonly dueWrong: boolean;
  /** The day on which it was asked for, or is to be, and how many days that takes. */
  readonly asked?: string;
  readonly waits?: number;
  readonly evidence: boolean;
  readonly amount?: Range;
  readonly licence: YesNo;
  /** The work it keeps for licensed people; all of it where it says yes and nothing more. */
  readonly works: readonly LicensedWork[];
};

/** A kind of work, who is to do it, and what the papers of the law say of that. */
export type WorkRow = {
  readonly work: LicensedWork;
  readonly hands?: 'us' | 'licensed';
  /** Ids of permits, inspections and insurances that want a licensed person, that do not, and that do not say. */
  readonly wanted: readonly string[];
  readonly free: readonly string[];
  readonly silent: readonly string[];
};

/** What a warranty or an incentive says, held against the plan: terms that are broken, and fields that nobody filled in. */
export type Terms = { readonly broken: readonly string[]; readonly open: readonly string[] };

/** The parts of the job that quotes are brought to. */
export const quoteScopes = [
  'unit',
  'ducts',
  'electrical',
  'removal',
  'permit',
  'condensate',
  'lineset',
  'startUp',
] as const;
export type QuoteScope = (typeof quoteScopes)[number];

/** A quote, what it leaves out, and what it comes to with that. Money. */
export type QuoteRow = {
  readonly id: string;
  readonly name: string;
  readonly amount?: Range;
  readonly holds: readonly QuoteScope[];
  readonly missing: readonly { readonly scope: QuoteScope; readonly price?: Range; readonly path: string }[];
  readonly left: Outcome<Range>;
  readonly total: Outcome<Range>;
  readonly warrantyYears?: number;
};

export const questionIds = [
  'permit',
  'inspections',
  'owner-work',
  'refrigerant',
  'electrical',
  'utility',
  'noise',
  'old-materials',
  'flue',
  'insurer',
  'warranty',
  'incentive',
] as const;
export type QuestionId = (typeof questionIds)[number];

/** What to ask before deciding; `open` while no paper answers it. */
export type Question = { readonly id: QuestionId; readonly open: boolean };

/** Days of work as the windows and the last day name them. */
export type WorkDays = { readonly first: string; readonly last: string };

/** A permit or inspection that work waits for, and the day on which it comes, counted from 1970. */
export type Awaited = {
  readonly id: string;
  readonly name: string;
  readonly kind: 'permit' | 'inspection';
  readonly comes: number;
};

export type PaperworkResult = ResultBase & {
  /** By the day they are due, those without one last. */
  readonly papers: readonly Paper[];
  readonly works: readonly WorkRow[];
  readonly warranties: Readonly<Record<string, Terms>>;
  readonly incentives: Readonly<Record<string, Terms & { readonly first: YesNo }>>;
  readonly insurances: Readonly<Record<string, YesNo>>;
  readonly quotes: readonly QuoteRow[];
  readonly questions: readonly Question[];
  readonly days: Outcome<WorkDays>;
  /** How far the unit has come that papers have to come before. */
  readonly unit: 'open' | 'ordered' | 'fitted';
  /** Days within which a warranty is to be registered, by paper. */
  readonly registers: Readonly<Record<string, number>>;
  readonly awaited: readonly Awaited[];
  /** The last day to order with the delivery that brings the unit, or what is missing to know it. */
  readonly orderDay: Outcome<string>;
};
