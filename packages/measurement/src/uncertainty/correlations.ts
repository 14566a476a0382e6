import { InvalidArgumentError } from "@tapewise/outcome";

/** How strongly two inputs go together. */
export interface InputCorrelation {
  /** The names of the two. */
  readonly between: readonly [string, string];
  /** Correlation coefficient, −1 to 1. */
  readonly coefficient: number;
}

/** The correlation matrix of named inputs, row by row; what is not stated is uncorrelated. */
export function correlationMatrix(
  names: readonly string[],
  correlations: readonly InputCorrelation[],
): readonly Float64Array[] {
  const positions = new Map(names.map((name, position) => [name, position]));
  if (positions.size !== names.length) {
    throw new InvalidArgumentError("inputs", names.join(", "), "inputs with a name of their own each");
  }
  const matrix = names.map((_, row) => Float64Array.from(names, (_, column) => (row === column ? 1 : 0)));
  const stated = new Set<string>();
  for (const { between, coefficient } of correlations) {
    const [row, column] = between.map((name) => {
      const position = positions.get(name);
      if (position === undefined) {
        throw new InvalidArgumentError("correlations.between", name, "the name of an input");
      }
      return position;
    }) as [number, number];
    if (!(coefficient >= -1 && coefficient <= 1)) {
      throw new InvalidArgumentError("correlations.coefficient", coefficient, "a number from -1 to 1");
    }
    const pair = `${Math.min(row, column)} ${Math.max(row, column)}`;
    if (row === column || stated.has(pair)) {
      const expected = "two different inputs, each pair stated once";
      throw new InvalidArgumentError("correlations.between", between.join(", "), expected);
    }
    stated.add(pair);
    (matrix[row] as Float64Array)[column] = coefficient;
    (matrix[column] as Float64Array)[row] = coefficient;
  }
  return matrix;
}

/** Leading parts below this are rounding: a matrix of whole correlations has rank to lose. */
const ROUNDING = 1e-12;

/**
 * The lower triangle whose product with its own transpose is the matrix (Cholesky); a correlation of one
 * leaves an empty column. Refuses a matrix that no set of quantities can have.
 */
export function choleskyOf(matrix: readonly Float64Array[]): readonly Float64Array[] {
  const triangle = matrix.map((row) => new Float64Array(row.length));
  matrix.forEach((given, i) => {
    const row = triangle[i] as Float64Array;
    for (let j = 0; j <= i; j += 1) {
      const other = triangle[j] as Float64Array;
      let rest = given[j] as number;
      for (let k = 0; k < j; k += 1) rest -= (row[k] as number) * (other[k] as number);
      const pivot = other[j] as number;
      const isImpossible = i === j ? rest < -ROUNDING : pivot === 0 && Math.abs(rest) > Math.sqrt(ROUNDING);
      if (isImpossible) {
        throw new InvalidArgumentError("correlations", rest, "correlations that can hold together");
      }
      if (i === j) row[j] = rest > ROUNDING ? Math.sqrt(rest) : 0;
      else row[j] = pivot === 0 ? 0 : rest / pivot;
    }
  });
  return triangle;
}
