/** The chance between two ends, from the tails that are nearer; a length that is known exactly is inside or not. */
export function inside(n: number): string {
  return (
    `CASE WHEN s${n} = 0E0 THEN CASE WHEN ${isBelow(n)} OR ${isAbove(n)} THEN 0E0 ELSE 1E0 END\n` +
    `    WHEN z_from${n} >= 0E0 THEN tail_from${n} - tail_to${n}\n` +
    `    WHEN z_to${n} <= 0E0 THEN tail_to${n} - tail_from${n}\n` +
    `    ELSE 5E-1 - tail_to${n} + (5E-1 - tail_from${n}) END`
  );
}

function isBelow(n: number): string {
  return `m${n} < from${n} OR (m${n} = from${n} AND from${n}_in = 0)`;
}

function isAbove(n: number): string {
  return `m${n} > to${n} OR (m${n} = to${n} AND to${n}_in = 0)`;
}

/** The chance that a length lies below a size. */
export function below(n: number): string {
  return (
    `CASE WHEN s${n} = 0E0 THEN CASE WHEN ${isBelow(n)} THEN 1E0 ELSE 0E0 END\n` +
    `    WHEN z_from${n} > 0E0 THEN 1E0 - tail_from${n} ELSE tail_from${n} END`
  );
}

/** The chance that it lies above. */
export function above(n: number): string {
  return (
    `CASE WHEN s${n} = 0E0 THEN CASE WHEN ${isAbove(n)} THEN 1E0 ELSE 0E0 END\n` +
    `    WHEN z_to${n} > 0E0 THEN tail_to${n} ELSE 1E0 - tail_to${n} END`
  );
}

/** E[max(0, from − X)] + E[max(0, X − to)]: with z the distance in units of s, each is s (z F(z) + f(z)). */
export function misfit(n: number): string {
  const rest = (end: string) => {
    const short = `density_${end} - ABS(z_${end}) * tail_${end}`;
    return `CASE WHEN ${short} > 0E0 THEN s${n} * (${short}) ELSE 0E0 END`;
  };
  const exactly = `CASE WHEN m${n} < from${n} THEN from${n} - m${n} WHEN m${n} > to${n} THEN m${n} - to${n} ELSE 0E0 END`;
  return (
    `CASE WHEN s${n} IS NULL THEN NULL WHEN s${n} = 0E0 THEN ${exactly}\n` +
    `    ELSE ${rest(`from${n}`)} + CASE WHEN z_from${n} > 0E0 THEN from${n} - m${n} ELSE 0E0 END\n` +
    `      + ${rest(`to${n}`)} + CASE WHEN z_to${n} < 0E0 THEN m${n} - to${n} ELSE 0E0 END END`
  );
}
