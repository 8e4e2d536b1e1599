import type { CourseModel, Quantity } from './contract.js';

const DAY_MS = 86_400_000;
const YEAR_DAYS = 365.25;

const dayOf = (date: string): number => Date.parse(`${date}T00:00:00Z`) / DAY_MS;

export interface Tick {
  at: number;
  label: string;
  /** Drawn as a line through the lanes. */
  strong?: boolean;
}

/** Days across, in screen pixels. */
export class TimeScale {
  private readonly first: number;
  private readonly perDay: number;

  constructor(
    private readonly model: CourseModel,
    readonly left: number,
    readonly right: number,
    /** Too narrow for names beside the lanes. */
    readonly narrow: boolean,
  ) {
    this.first = dayOf(model.from);
    this.perDay = (right - left) / Math.max(1, dayOf(model.to) - this.first);
  }

  x(date: string): number {
    return this.left + (dayOf(date) - this.first) * this.perDay;
  }

  /** Birthdays, as many as can be read. */
  ages(yearsOf: (years: number) => string): Tick[] {
    const [year, ...rest] = this.model.birth.split('-');
    // A child born on a leap day is drawn a year older on 1 March.
    const monthAndDay = rest.join('-') === '02-29' ? '03-01' : rest.join('-');
    const every = this.everyYears(34);
    return this.within(
      Array.from({ length: 30 }, (_, age) => age).filter(age => age % every === 0),
      age => `${Number(year) + age}-${monthAndDay}`,
      yearsOf,
    );
  }

  /** First days of years, or of quarters when the time shown is short. */
  dates(locale: string): Tick[] {
    const firstYear = Number(this.model.from.slice(0, 4));
    const lastYear = Number(this.model.to.slice(0, 4));
    const years = Array.from({ length: lastYear - firstYear + 1 }, (_, i) => firstYear + i);
    if (this.perDay * YEAR_DAYS >= 260) {
      const month = new Intl.DateTimeFormat(locale, { month: 'short', year: 'numeric', timeZone: 'UTC' });
      const starts = years.flatMap(year => ['01', '04', '07', '10'].map(m => `${year}-${m}-01`));
      return this.within(starts, start => start, start => month.format(new Date(`${start}T00:00:00Z`)));
    }
    const every = this.everyYears(44);
    return this.within(years.filter(year => year % every === 0), year => `${year}-01-01`, String);
  }

  private everyYears(leastPixels: number): number {
    return Math.max(1, Math.ceil(leastPixels / (this.perDay * YEAR_DAYS)));
  }

  private within<T>(values: T[], dateOf: (value: T) => string, labelOf: (value: T) => string): Tick[] {
    return values
      .map(value => ({ at: this.x(dateOf(value)), label: labelOf(value) }))
      .filter(({ at }) => at >= this.left && at <= this.right);
  }
}

const STEPS = [1, 2, 5, 10, 20, 50, 100];
const LEAST_TICK_PX = 24;

/** A quantity from its lane's foot to its top; varus is up whichever way the number runs. */
export class ValueScale {
  constructor(
    private readonly quantity: Quantity,
    readonly top: number,
    readonly bottom: number,
  ) {}

  y(value: number): number {
    const { min, max, varus } = this.quantity;
    const share = (value - min) / (max - min);
    const way = share * (this.bottom - this.top);
    return varus === 'HIGHER' ? this.bottom - way : this.top + way;
  }

  ticks(): Tick[] {
    const { min, max, unit } = this.quantity;
    const pixels = (this.bottom - this.top) / (max - min);
    const step = STEPS.find(one => one * pixels >= LEAST_TICK_PX) ?? STEPS[STEPS.length - 1];
    const first = Math.ceil(min / step) * step;
    const count = Math.floor((max - first) / step) + 1;
    return Array.from({ length: count }, (_, i) => first + i * step).map(value => ({
      at: this.y(value),
      label: String(value).replace('-', '−') + unit,
      strong: value === 0,
    }));
  }
}
