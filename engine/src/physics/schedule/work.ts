/** Minutes from the start of the plan, from `from` to before `to`. */
export type Span = { readonly from: number; readonly to: number };

/** Least, likeliest and most minutes that a piece of work takes. */
export type ThreePoint = { readonly low: number; readonly likely: number; readonly high: number };

/** What work needs while it is done and others then cannot have: people, a place, a tool. */
export type WorkResource = {
  readonly id: string;
  /** How many there are at the most: 2 people, 1 attic, 1 hoist. */
  readonly units: number;
  /** When they are there; left out: always. Free time of the crew is given here. */
  readonly there?: readonly Span[];
  /** When fewer are there: the helper comes on Saturday only. */
  readonly fewer?: readonly (Span & { readonly units: number })[];
};

/** When a task may be worked at: quiet hours, power and water, daylight, heat. Several hold at once. */
export type WorkCalendar = {
  readonly id: string;
  /** The only times that are open; left out: all of them. */
  readonly open?: readonly Span[];
  readonly shut?: readonly Span[];
  /** Minutes of work that an hour leaves, 0 to 60: the rest is for cooling down, and the piece takes longer on the clock. */
  readonly heat?: readonly (Span & { readonly minutesAnHour: number })[];
};

/** Work between two safe stops: once begun it is finished, within one window. */
export type WorkPiece = {
  readonly id: string;
  /** Minutes at full pace; of three points the mean is planned with. */
  readonly minutes: number | ThreePoint;
  /** Minutes it is planned with in place of the mean: a margin, so that it seldom runs past its window. */
  readonly planned?: number;
  /** Minutes between the end of the piece before and this one, when nobody is needed: drying, curing. */
  readonly wait?: number;
  /** Ticked off: it ended then, which may be before the plan's start. Nothing before or in it is planned. */
  readonly doneAt?: number;
  /** Running or agreed on: it keeps these times, to the nearest tick. */
  readonly pinned?: Span;
};

export type WorkTask = {
  readonly id: string;
  /** One after the other; the ends between them are its safe stops. */
  readonly pieces: readonly WorkPiece[];
  readonly needs: readonly { readonly resource: string; readonly units: number }[];
  readonly calendars?: readonly string[];
  /** Tasks that are finished first, with minutes to wait after their end. */
  readonly after?: readonly { readonly task: string; readonly wait?: number }[];
  /** Not before: a delivery. */
  readonly release?: number;
  /** Finished by. */
  readonly deadline?: number;
  /** Of tasks that could both come first, the greater one does where that costs nothing. */
  readonly priority?: number;
};

/** Everything to be planned. All times are whole or broken minutes from one start; the plan keeps to `step`. */
export type WorkSpec = {
  /** How far calendars are known, minutes. */
  readonly horizon: number;
  /** Nothing is planned before; default 0. */
  readonly now?: number;
  /** Minutes to a tick: lengths, waits and releases round up, windows inwards. Default 5. */
  readonly step?: number;
  readonly resources: readonly WorkResource[];
  readonly calendars: readonly WorkCalendar[];
  readonly tasks: readonly WorkTask[];
};

/**
 * What is wrong, and where. `refused`: nothing can be planned until it is mended. `late`: a plan is given that misses it.
 * `names` are ids of tasks, resources or calendars in question, a circle's in its order; `minutes` as each code says.
 */
export type WorkProblem = {
  readonly code:
    | 'bad-number'
    | 'named-twice'
    | 'unknown-name'
    /** Tasks wait for each other: each of `names` has to come after the one before it, the first after the last. */
    | 'circle'
    /** More units are needed than there ever are: `minutes` has no meaning. */
    | 'not-enough'
    /** No window from when it may start is long enough: `minutes` is the longest, at full pace; `needed` the piece's. */
    | 'no-window'
    /** Pinned pieces contradict what comes before them, their windows or each other. */
    | 'pinned-clash'
    /** Work does not fit before the horizon: `names` are tasks that found no place. */
    | 'does-not-fit'
    /** More than is planned at once: `minutes` has no meaning. */
    | 'too-large'
    /** Comes after its deadline: `minutes` is when it comes. */
    | 'release-after-deadline'
    /** What comes before and the windows alone make it late: `minutes` is the earliest it can be finished. */
    | 'deadline-too-early';
  readonly grade: 'refused' | 'late';
  readonly task?: string;
  readonly piece?: string;
  readonly names: readonly string[];
  readonly minutes?: number;
  readonly needed?: number;
};
