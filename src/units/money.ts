/** An amount of money in whole hundredths of the currency (cents): sums of prices are exact. */
export type Money = number;

/** The most that one price or sum may be: a hundred million. */
export const MOST_MONEY: Money = 10_000_000_000;
