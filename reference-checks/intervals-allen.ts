/**
 * Published facts about Allen's interval algebra.
 *
 * Source: J. F. Allen, "Maintaining knowledge about temporal intervals", Communications of the ACM
 * 26(11), 1983, 832–843: the relations (Fig. 2) and the transitivity table (Fig. 4, which leaves the row
 * and the column of "equal" out and writes < and > for before and after).
 *
 * Origin: the relations and their symbols are from memory of Fig. 2. The rows of the table and the pairs
 * are recomputed (Python, brute force over all triples of proper intervals with whole ends from 0 to 7),
 * not copied from Fig. 4. The counts 97 and 409 are from memory.
 */

export type Ends = readonly [from: number, to: number];

export interface RelationCase {
  readonly symbol: string;
  readonly name: string;
  /** Symbol of the converse. */
  readonly converse: string;
  readonly a: Ends;
  readonly b: Ends;
}

export const relationCases: readonly RelationCase[] = [
  { symbol: "b", name: "before", converse: "bi", a: [1, 3], b: [4, 8] },
  { symbol: "m", name: "meets", converse: "mi", a: [1, 4], b: [4, 8] },
  { symbol: "o", name: "overlaps", converse: "oi", a: [2, 6], b: [4, 8] },
  { symbol: "s", name: "starts", converse: "si", a: [4, 6], b: [4, 8] },
  { symbol: "d", name: "during", converse: "di", a: [5, 7], b: [4, 8] },
  { symbol: "f", name: "finishes", converse: "fi", a: [6, 8], b: [4, 8] },
  { symbol: "e", name: "equals", converse: "e", a: [4, 8], b: [4, 8] },
  { symbol: "fi", name: "finished-by", converse: "f", a: [2, 8], b: [4, 8] },
  { symbol: "di", name: "contains", converse: "d", a: [2, 9], b: [4, 8] },
  { symbol: "si", name: "started-by", converse: "s", a: [4, 10], b: [4, 8] },
  { symbol: "oi", name: "overlapped-by", converse: "o", a: [6, 10], b: [4, 8] },
  { symbol: "mi", name: "met-by", converse: "m", a: [8, 10], b: [4, 8] },
  { symbol: "bi", name: "after", converse: "b", a: [9, 10], b: [4, 8] },
];

/** Rows of the transitivity table by symbol: in row r1, column r2 stand the relations that r1 then r2 allow. */
export const compositionRows: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  m: {
    b: "b",
    m: "b",
    o: "b",
    s: "m",
    d: "o s d",
    f: "o s d",
    e: "m",
    fi: "b",
    di: "b",
    si: "m",
    oi: "o s d",
    mi: "f e fi",
    bi: "di si oi mi bi",
  },
  o: {
    b: "b",
    m: "b",
    o: "b m o",
    s: "o",
    d: "o s d",
    f: "o s d",
    e: "o",
    fi: "b m o",
    di: "b m o fi di",
    si: "o fi di",
    oi: "o s d f e fi di si oi",
    mi: "di si oi",
    bi: "di si oi mi bi",
  },
  d: {
    b: "b",
    m: "b",
    o: "b m o s d",
    s: "d",
    d: "d",
    f: "d",
    e: "d",
    fi: "b m o s d",
    di: "b m o s d f e fi di si oi mi bi",
    si: "d f oi mi bi",
    oi: "d f oi mi bi",
    mi: "bi",
    bi: "bi",
  },
  f: {
    b: "b",
    m: "m",
    o: "o s d",
    s: "d",
    d: "d",
    f: "f",
    e: "f",
    fi: "f e fi",
    di: "di si oi mi bi",
    si: "oi mi bi",
    oi: "oi mi bi",
    mi: "bi",
    bi: "bi",
  },
  fi: {
    b: "b",
    m: "m",
    o: "o",
    s: "o",
    d: "o s d",
    f: "f e fi",
    e: "fi",
    fi: "fi",
    di: "di",
    si: "di",
    oi: "di si oi",
    mi: "di si oi",
    bi: "di si oi mi bi",
  },
  di: {
    b: "b m o fi di",
    m: "o fi di",
    o: "o fi di",
    s: "o fi di",
    d: "o s d f e fi di si oi",
    f: "di si oi",
    e: "di",
    fi: "di",
    di: "di",
    si: "di",
    oi: "di si oi",
    mi: "di si oi",
    bi: "di si oi mi bi",
  },
  oi: {
    b: "b m o fi di",
    m: "o fi di",
    o: "o s d f e fi di si oi",
    s: "d f oi",
    d: "d f oi",
    f: "oi",
    e: "oi",
    fi: "di si oi",
    di: "di si oi mi bi",
    si: "oi mi bi",
    oi: "oi mi bi",
    mi: "bi",
    bi: "bi",
  },
  mi: {
    b: "b m o fi di",
    m: "s e si",
    o: "d f oi",
    s: "d f oi",
    d: "d f oi",
    f: "mi",
    e: "mi",
    fi: "mi",
    di: "bi",
    si: "bi",
    oi: "bi",
    mi: "bi",
    bi: "bi",
  },
};

/** How many of the table's entries hold that many relations, and how many relations stand in it in all. */
export const compositionCounts: {
  readonly byLength: Readonly<Record<number, number>>;
  readonly total: number;
} = {
  byLength: { 1: 97, 3: 42, 5: 24, 9: 3, 13: 3 },
  total: 409,
};

/** Two closed intervals, their relation, and the lengths of overlap, gap and union. */
export interface PairCase {
  readonly a: Ends;
  readonly b: Ends;
  readonly relation: string;
  readonly overlap: number;
  readonly hull: Ends;
  readonly gap: number;
  readonly union: number;
}

export const pairCases: readonly PairCase[] = [
  { a: [0, 1], b: [2, 4], relation: "b", overlap: 0, hull: [0, 4], gap: 1, union: 3 },
  { a: [0, 1], b: [0, 6], relation: "s", overlap: 1, hull: [0, 6], gap: 0, union: 6 },
  { a: [0, 1], b: [1, 3], relation: "m", overlap: 0, hull: [0, 3], gap: 0, union: 3 },
  { a: [0, 4], b: [2, 4], relation: "fi", overlap: 2, hull: [0, 4], gap: 0, union: 4 },
  { a: [0, 4], b: [4, 5], relation: "m", overlap: 0, hull: [0, 5], gap: 0, union: 5 },
  { a: [0, 4], b: [1, 3], relation: "di", overlap: 2, hull: [0, 4], gap: 0, union: 4 },
  { a: [1, 3], b: [0, 6], relation: "d", overlap: 2, hull: [0, 6], gap: 0, union: 6 },
  { a: [1, 3], b: [4, 5], relation: "b", overlap: 0, hull: [1, 5], gap: 1, union: 3 },
  { a: [2, 4], b: [2, 4], relation: "e", overlap: 2, hull: [2, 4], gap: 0, union: 2 },
  { a: [2, 4], b: [0, 6], relation: "d", overlap: 2, hull: [0, 6], gap: 0, union: 6 },
  { a: [2, 4], b: [1, 3], relation: "oi", overlap: 1, hull: [1, 4], gap: 0, union: 3 },
  { a: [3, 5], b: [2, 4], relation: "oi", overlap: 1, hull: [2, 5], gap: 0, union: 3 },
  { a: [3, 5], b: [4, 5], relation: "fi", overlap: 1, hull: [3, 5], gap: 0, union: 2 },
  { a: [3, 5], b: [1, 3], relation: "mi", overlap: 0, hull: [1, 5], gap: 0, union: 4 },
  { a: [4, 6], b: [0, 6], relation: "f", overlap: 2, hull: [0, 6], gap: 0, union: 6 },
  { a: [4, 6], b: [4, 5], relation: "si", overlap: 1, hull: [4, 6], gap: 0, union: 2 },
  { a: [0, 6], b: [2, 4], relation: "di", overlap: 2, hull: [0, 6], gap: 0, union: 6 },
  { a: [0, 6], b: [0, 6], relation: "e", overlap: 6, hull: [0, 6], gap: 0, union: 6 },
  { a: [0, 6], b: [1, 3], relation: "di", overlap: 2, hull: [0, 6], gap: 0, union: 6 },
  { a: [2, 3], b: [2, 4], relation: "s", overlap: 1, hull: [2, 4], gap: 0, union: 2 },
  { a: [2, 3], b: [4, 5], relation: "b", overlap: 0, hull: [2, 5], gap: 1, union: 2 },
  { a: [2, 3], b: [1, 3], relation: "f", overlap: 1, hull: [1, 3], gap: 0, union: 2 },
];
