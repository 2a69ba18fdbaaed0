/** A building that cannot be computed, where, and why. */
export class BuildingRefused extends RangeError {
  readonly at: string;
  constructor(at: string, why: string) {
    super(why);
    this.at = at;
  }
}
